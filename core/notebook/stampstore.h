// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

/// That it was made at the bench, and when by the clock that nobody can set.
void storeStamp(Act &act, ReadingId reading);
void storeStamp(Act &act, MarkId mark);

/// What a run says of its own times, as a file brings it: addedAt_min and readAt_min of its tubes, which
/// stand in the notebook already.
void storeTimes(Act &act, RunId run, const std::vector<run::Tube> &tubes);
/// The same, put into the tubes.
void loadTimes(const Database &database, RunId run, std::vector<run::Tube> &tubes);

} // namespace plateau::notebook
