// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

struct DecisionRow {
    qint64 id = 0;
    /// The run's newest reading at that moment; 0 for none.
    ReadingId lastReading;
    Decision decision;
};
std::vector<DecisionRow> loadDecisions(const Database &database, RunId run);
std::vector<Reopening> loadReopenings(const Database &database, RunId run);
/// The row it was stored in.
qint64 storeDecision(Act &act, RunId run, const Decision &decision, ReadingId lastReading);
void storeReopening(Act &act, qint64 decisionRow, const QString &reason);

/// The state follows from the records: on the bench without a decision, or with the last one taken back.
RunState stateOf(const Database &database, RunId run);
/// Throws Failure(Refused) unless the run is on the bench.
void requireOnBench(const Database &database, RunId run);

/// SHA-256 of what is reviewed: the run with its method, as plateau-run/1.
QString reviewHash(const run::Run &run, const assay::Method &method);

} // namespace plateau::notebook
