// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/storedrun.h"

#include "core/notebook/clockjumps.h"
#include "core/notebook/companions.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/dilutionmarkstore.h"
#include "core/notebook/inputs.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/planstore.h"
#include "core/notebook/runfinder.h"
#include "core/notebook/runlist.h"
#include "core/notebook/sentence.h"

#include <algorithm>

namespace plateau::notebook {

namespace {

RunState stateAfter(const Decision &decision)
{
    return decision.kind == DecisionKind::Accepted ? RunState::Accepted : RunState::Rejected;
}

/// What a list of runs would have said then.
void tellAsDecided(RunSummary &summary, const Decision &decision, const run::Run &run,
                   const assay::Method &method)
{
    summary.state = stateAfter(decision);
    summary.decidedBy = decision.person;
    summary.decidedAt = decision.at;
    summary.acceptable = decision.acceptable;
    summary.isSigned = decision.signedAs.has_value();
    summary.samplesRejected =
        int(std::ranges::count(decision.samples, SampleDecisionKind::Rejected, &SampleDecision::kind));
    summary.samplesToRepeat = int(decision.repeats.size());
    summary.samples.clear();
    for (const run::Sample &sample : run.samples)
        summary.samples.append(sample.id);
    summary.tubes = int(run.tubes.size());
    summary.readingsTaken = 0;
    summary.readingsPlanned = 0;
    for (const run::Tube &tube : run.tubes) {
        if (!tube.spoilt.isEmpty())
            continue;
        summary.readingsTaken += int(tube.readings.size());
        summary.readingsPlanned += int(assay::readingsInOrder(method).size());
    }
}

void takeCompanions(StoredRun &stored, const Database &database, const std::vector<CompanionRow> &rows,
                    std::optional<qint64> decisionRow)
{
    stored.companions = loadCompanions(database, rows, decisionRow);
    stored.companionRuns.clear();
    for (const CompanionRow &row : rows)
        stored.companionRuns.push_back(row.run);
}

} // namespace

StoredRun loadStored(const Database &database, RunId run)
{
    const Inputs inputs = loadInputs(database, run);
    const std::vector<DecisionRow> decisions = loadDecisions(database, run);
    StoredRun stored;
    stored.summary = loadSummary(database, run);
    stored.run = inputs.run();
    stored.method = inputs.method;
    if (stored.summary.state == RunState::OnBench)
        takeCompanions(stored, database, findCompanions(database, run, inputs), std::nullopt);
    else
        takeCompanions(stored, database, loadCompanionRows(database, decisions.back().id),
                       decisions.back().id);
    stored.runCode = runCodeOf(inputs);
    stored.plannedSamples = inputs.planned.samples;
    stored.plannedTubes = inputs.planned.tubes;
    stored.clock = inputs.clock().timeline();
    stored.clockJumps = loadClockJumps(database, run);
    stored.plan = loadPlanRecord(database, run);
    stored.readings = inputs.readings;
    stored.marks = inputs.marks;
    stored.dilutionMarks = loadDilutionMarks(database, run);
    for (const DecisionRow &row : decisions)
        stored.decisions.push_back(row.decision);
    stored.reopenings = loadReopenings(database, run);
    return stored;
}

StoredRun loadStoredRevision(const Database &database, RunId run, int revision)
{
    StoredRun stored = loadStored(database, run);
    if (revision < 1 || revision > int(stored.decisions.size()))
        throw refused(Sentence::tr("Run %1 has no revision %2: choose one of 1 to %3.")
                          .arg(run.value)
                          .arg(revision)
                          .arg(stored.decisions.size()));
    const DecisionRow decision = loadDecisions(database, run)[std::size_t(revision - 1)];
    const Seen &seen = decision.lastSeen;
    stored.run = loadInputs(database, run).runAsOf(seen);
    takeCompanions(stored, database, loadCompanionRows(database, decision.id), decision.id);
    std::erase_if(stored.readings, [&](const StoredReading &reading) { return reading.id > seen.reading; });
    std::erase_if(stored.marks, [&](const StoredMark &mark) { return mark.id > seen.mark; });
    // No decision rests on them, so none keeps which was the newest.
    std::erase_if(stored.dilutionMarks,
                  [&](const StoredDilutionMark &mark) { return mark.at > decision.decision.at; });
    stored.decisions.erase(stored.decisions.begin() + revision, stored.decisions.end());
    std::erase_if(stored.reopenings,
                  [&](const Reopening &reopening) { return reopening.decision >= revision - 1; });
    stored.plannedSamples = std::min(stored.plannedSamples, int(stored.run.samples.size()));
    stored.plannedTubes = std::min(stored.plannedTubes, int(stored.run.tubes.size()));
    stored.summary.revision = revision;
    tellAsDecided(stored.summary, decision.decision, stored.run, stored.method);
    return stored;
}

} // namespace plateau::notebook
