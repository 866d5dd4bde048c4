// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

/// With the runs that are on the bench.
void storeClockJump(Act &act, qint64 shift_ms);
/// While the run was on the bench, oldest first.
std::vector<ClockJump> loadClockJumps(const Database &database, RunId run);

} // namespace plateau::notebook
