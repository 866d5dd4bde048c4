// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"

namespace plateau::notebook {

/// The audit entries of one run, and those of clock jumps while it was on the bench, oldest first.
std::vector<AuditEntry> loadHistory(const Database &database, RunId run);

} // namespace plateau::notebook
