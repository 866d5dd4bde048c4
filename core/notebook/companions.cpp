// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/companions.h"

#include "core/notebook/decisionstore.h"
#include "core/notebook/sampledecisions.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

constexpr int furthestApart_days = 7;

QStringList otherMethods(const assay::Method &method)
{
    QStringList ids;
    for (const assay::Derived &derived : method.derived) {
        for (const assay::DerivedTerm &term : derived.terms) {
            if (!term.method.isEmpty() && term.method != method.id && !ids.contains(term.method))
                ids.append(term.method);
        }
    }
    return ids;
}

std::vector<RunId> runsOf(const Database &database, const QString &methodId, RunId besides)
{
    Statement query(
        database,
        u"SELECT run.id FROM run JOIN method ON method.id = run.method JOIN run AS this ON this.id = ? "
        "WHERE method.method_id = ? AND run.id <> this.id "
        "AND abs(julianday(run.created_utc) - julianday(this.created_utc)) <= ? "
        "AND EXISTS (SELECT 1 FROM sample AS own JOIN sample AS other ON other.name = own.name "
        "WHERE own.run = this.id AND other.run = run.id) ORDER BY run.id DESC"_s);
    query.run(besides.value, methodId, furthestApart_days);
    std::vector<RunId> runs;
    while (query.next())
        runs.push_back({query.integer(0)});
    return runs;
}

void takeAway(run::Run &run, const QStringList &samples)
{
    std::erase_if(run.tubes, [&](const run::Tube &tube) { return samples.contains(tube.sample); });
    std::erase_if(run.samples, [&](const run::Sample &sample) { return samples.contains(sample.id); });
}

} // namespace

std::vector<CompanionRow> findCompanions(const Database &database, RunId run, const Inputs &inputs)
{
    std::vector<CompanionRow> rows;
    for (const QString &methodId : otherMethods(inputs.method)) {
        for (const RunId other : runsOf(database, methodId, run)) {
            if (stateOf(database, other) == RunState::Accepted)
                rows.push_back({other, loadDecisions(database, other).back().lastSeen});
        }
    }
    return rows;
}

std::vector<CompanionRow> loadCompanionRows(const Database &database, qint64 decisionRow)
{
    Statement query(database,
                    u"SELECT decision_companion.run, last_reading, coalesce(last_mark, 0), samples, tubes "
                    "FROM decision_companion "
                    "LEFT JOIN decision_mark ON decision_mark.decision = decision_companion.decision "
                    "AND decision_mark.run = decision_companion.run "
                    "LEFT JOIN decision_size ON decision_size.decision = decision_companion.decision "
                    "AND decision_size.run = decision_companion.run WHERE decision_companion.decision = ? "
                    "ORDER BY position"_s);
    query.run(decisionRow);
    std::vector<CompanionRow> rows;
    while (query.next())
        rows.push_back({{query.integer(0)}, {{query.integer(1)}, {query.integer(2)}, rackSizeAt(query, 3)}});
    return rows;
}

void storeCompanions(Act &act, qint64 decisionRow, const std::vector<CompanionRow> &companions)
{
    int position = 0;
    for (const CompanionRow &companion : companions) {
        Statement insert(act.database(),
                         u"INSERT INTO decision_companion (decision, position, run, last_reading) "
                         "VALUES (?, ?, ?, ?)"_s);
        insert.run(decisionRow, position++, companion.run.value, companion.newest.reading.value);
        act.covers(u"decision_companion"_s, insert.insertedId());
        storeSeen(act, decisionRow, companion.run, companion.newest);
    }
}

std::vector<evaluation::Companion> loadCompanions(const Database &database,
                                                  const std::vector<CompanionRow> &rows,
                                                  std::optional<qint64> decisionRow)
{
    std::vector<evaluation::Companion> companions;
    for (const CompanionRow &row : rows) {
        const Inputs inputs = loadInputs(database, row.run);
        companions.push_back({inputs.method, inputs.runAsOf(row.newest)});
        takeAway(companions.back().run, withdrawnSamples(database, row.run, decisionRow));
    }
    return companions;
}

evaluation::Evaluation evaluationAt(const Database &database, RunId run, const DecisionRow &decision)
{
    const Inputs inputs = loadInputs(database, run);
    return evaluation::evaluate(
        inputs.method, inputs.runAsOf(decision.lastSeen), {},
        loadCompanions(database, loadCompanionRows(database, decision.id), decision.id));
}

evaluation::Evaluation evaluationOf(const StoredRun &stored)
{
    return evaluation::evaluate(stored.method, stored.run, {}, stored.companions);
}

} // namespace plateau::notebook
