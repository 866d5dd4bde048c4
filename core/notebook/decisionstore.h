// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

struct DecisionRow {
    qint64 id = 0;
    /// What it rested on.
    Seen lastSeen;
    Decision decision;
};
std::vector<DecisionRow> loadDecisions(const Database &database, RunId run);
std::vector<Reopening> loadReopenings(const Database &database, RunId run);
/// The row it was stored in.
/// With what it rests on: the newest reading and mark of its run, and the samples it says are to be repeated.
qint64 storeDecision(Act &act, RunId run, const Decision &decision, const Seen &seen,
                     const QStringList &repeats);
/// The newest mark and the size of the rack, of the decision's own run or of one that its derived results
/// come from.
void storeSeen(Act &act, qint64 decisionRow, RunId run, const Seen &seen);
/// From two columns; nothing where they are NULL.
std::optional<RackSize> rackSizeAt(const Statement &row, int column);
/// personVersion: the name and role that it was signed with.
void storeSignature(Act &act, qint64 decisionRow, qint64 personVersion);
/// personVersion: as for storeSignature; nothing where nobody signs.
void storeReopening(Act &act, qint64 decisionRow, const QString &reason, std::optional<qint64> personVersion);

/// The state follows from the records: on the bench without a decision, or with the last one taken back.
RunState stateOf(const Database &database, RunId run);
/// Throws Failure(Refused) unless the run is on the bench.
void requireOnBench(const Database &database, RunId run);

/// The samples that are to be repeated, each once.
QStringList repeatsOf(const std::vector<evaluation::Result> &results);
/// Of the evaluation as it was stored with the decision; none where that cannot be read any more.
std::vector<evaluation::Result> resultsOnRecord(const DecisionRow &decision);

/// SHA-256 of what is reviewed: the run with its method, as plateau-run/1.
QString reviewHash(const run::Run &run, const assay::Method &method);

} // namespace plateau::notebook
