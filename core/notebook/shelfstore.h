// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/shelf.h"

namespace plateau::notebook {

/// SQL: whether that run (a column) stands rejected, or that sample of it (a column) by itself; what is
/// rejected settles nothing.
QString isRejected(const QString &run, const QString &sample);

ShelfId storeRegistration(Act &act);
void storeShelfVersion(Act &act, ShelfId id, const planning::ShelfSample &sample);
void storeWithdrawal(Act &act, ShelfId id, const QString &reason);
void storeWaiver(Act &act, RunId run, const QString &sample, const QString &reason);

struct ShelfState {
    planning::ShelfSample sample;
    bool withdrawn = false;
    /// A run that came after the registration holds it, rejected or not.
    bool inRun = false;
};
/// Throws Failure(Refused) if there is no such registration.
ShelfState loadShelfState(const Database &database, ShelfId id);

struct ShelfEntry {
    ShelfId id;
    planning::ShelfSample sample;
};
/// Those that wait, in the order they came; or only those of a name.
std::vector<ShelfEntry> loadWaiting(const Database &database, const std::optional<QString> &name = {});
/// What the shelf last told of a sample of that id; nothing where nobody registered it.
std::optional<planning::ShelfSample> loadLastTold(const Database &database, const QString &sample);
/// Shelf::takenBy.
std::optional<planning::ShelfSample> loadTakenBy(const Database &database, RunId run, const QString &sample);

/// Shelf::waiting and Shelf::lastResults.
std::vector<WaitingSample> allWaiting(const Database &database);
std::vector<PastResult> pastResults(const Database &database, const QString &product,
                                    const QString &measurand, int most);
/// Whether that standing decision asks for a repeat of the sample that is neither made nor waived.
bool asksForRepeat(const Database &database, RunId run, const QString &sample);

} // namespace plateau::notebook
