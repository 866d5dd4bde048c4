// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"

#include <tuple>

namespace plateau::notebook {

/// A sample that the standing decision of a run wants repeated by the run's method, which was neither done without nor run
/// again since. Of several runs that want it the newest.
struct OpenRepeat {
    RunId run;
    QString sample;
    /// The method's id.
    QString method;

    bool operator==(const OpenRepeat &) const = default;
    bool operator<(const OpenRepeat &other) const
    {
        return std::tie(run, sample, method) < std::tie(other.run, other.sample, other.method);
    }
};

/// As the table search_repeat keeps them, by run and place in it: to ask the records takes half a second for a hundred
/// thousand runs, and the first page asks at every start.
std::vector<OpenRepeat> openRepeats(const Database &database);
/// Brings the table up to date after an act on the run that added samples to it, decided it, reopened it or did without a
/// repeat. Only samples of its own can have changed.
void refreshOpenRepeats(const Database &database, RunId run);
/// Whether an act that stored a row of that table may change what is open.
bool bearsOnRepeats(const QString &table);
void rebuildOpenRepeats(const Database &database);

/// The same from the records alone, of all runs; sorted. What was found is taken from the evaluation that is stored with the
/// decision, so that no other version of the program and no damage to another row of the run answers otherwise.
std::vector<OpenRepeat> derivedOpenRepeats(const Database &database);
/// Where the table is otherwise.
std::vector<Finding> openRepeatFindings(const Database &database);

/// Whether the sample was run again within the run, and what is to be repeated of the one is reportable of the other.
bool isSettledAtTheBench(const Database &database, const OpenRepeat &repeat);
/// The sample and those of its run that repeat it, in the order they came.
QStringList repeatsWith(const Database &database, RunId run, const QString &sample);
/// What the standing decision of the run wants repeated, where it is so old that it has no rows of its own for that.
QStringList olderRepeats(const Database &database, RunId run);

} // namespace plateau::notebook
