// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"

#include <functional>

namespace plateau::notebook {

/// The search_ tables hold what runs are found by. They follow from the records and from nothing else: every
/// act on a run brings its rows up to date before it commits, and they may be made anew at any time. None of these
/// functions begins a transaction.
void refreshSearch(const Database &database, RunId run);
/// The same after nothing but a first reading was stored by the person: at the bench that is most of the acts, and nothing
/// that is found by depends on the value before the run is decided.
void countReading(const Database &database, RunId run, const QString &person);
/// progress: runs done and runs in all, now and then.
void rebuildSearch(const Database &database, const std::function<void(int, int)> &progress = {});
/// False after a migration that was cut short: some runs are not in it.
bool searchKnowsAllRuns(const Database &database);

/// Where it is not as the records would have it. Reads every run.
std::vector<Finding> searchFindings(const Database &database);

} // namespace plateau::notebook
