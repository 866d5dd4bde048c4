// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"

namespace plateau::notebook {

/// All runs, newest first; or the one.
std::vector<RunSummary> loadSummaries(const Database &database);
/// As in its summary.
int readingsTaken(const Database &database, RunId run);
RunSummary loadSummary(const Database &database, RunId run);

} // namespace plateau::notebook
