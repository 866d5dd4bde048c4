// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/decisionstore.h"

#include "core/exchange/contenthash.h"
#include "core/exchange/readers.h"
#include "core/notebook/sampledecisions.h"
#include "core/notebook/sentence.h"
#include "core/notebook/words.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QStringList loadRepeats(const Database &database, qint64 decisionRow)
{
    Statement query(database, u"SELECT sample FROM decision_repeat WHERE decision = ? ORDER BY id"_s);
    query.run(decisionRow);
    QStringList samples;
    while (query.next())
        samples.append(query.text(0));
    return samples;
}

} // namespace

std::vector<DecisionRow> loadDecisions(const Database &database, RunId run)
{
    Statement query(database,
                    u"SELECT decision.id, last_reading, kind, decision.person, reason, decision.at_utc, "
                    "decision.at_offset_min, content_hash, evaluation, acceptable, program_version, "
                    "coalesce(last_mark, 0), role, samples, tubes FROM decision "
                    "LEFT JOIN decision_mark ON decision_mark.decision = decision.id AND decision_mark.run = "
                    "decision.run "
                    "LEFT JOIN decision_size ON decision_size.decision = decision.id AND decision_size.run = "
                    "decision.run "
                    "LEFT JOIN decision_signature ON decision_signature.decision = decision.id "
                    "LEFT JOIN person_version ON person_version.id = decision_signature.person_version "
                    "WHERE decision.run = ? ORDER BY decision.id"_s);
    query.run(run.value);
    std::vector<DecisionRow> rows;
    while (query.next()) {
        rows.push_back({query.integer(0),
                        {{query.integer(1)}, {query.integer(11)}, rackSizeAt(query, 13)},
                        {decisionKindOf(query.text(2)), query.text(3), query.text(4), query.time(5),
                         query.text(7), query.text(8).toUtf8(), query.integer(9) != 0, query.text(10)}});
        Decision &decision = rows.back().decision;
        decision.samples = loadSampleDecisions(database, rows.back().id);
        decision.repeats = loadRepeats(database, rows.back().id);
        if (!query.isNull(12))
            decision.signedAs = personRoleOf(query.text(12));
    }
    return rows;
}

std::vector<Reopening> loadReopenings(const Database &database, RunId run)
{
    const std::vector<DecisionRow> decisions = loadDecisions(database, run);
    Statement query(
        database,
        u"SELECT decision, reopening.person, reopening.reason, reopening.at_utc, reopening.at_offset_min, "
        "role FROM reopening JOIN decision ON decision.id = reopening.decision "
        "LEFT JOIN reopening_signature ON reopening_signature.reopening = reopening.id "
        "LEFT JOIN person_version ON person_version.id = reopening_signature.person_version "
        "WHERE run = ? ORDER BY reopening.id"_s);
    query.run(run.value);
    std::vector<Reopening> reopenings;
    while (query.next()) {
        const auto decision = std::ranges::find(decisions, query.integer(0), &DecisionRow::id);
        reopenings.push_back(
            {int(decision - decisions.begin()), query.text(1), query.text(2), query.time(3)});
        if (!query.isNull(5))
            reopenings.back().signedAs = personRoleOf(query.text(5));
    }
    return reopenings;
}

void storeSeen(Act &act, qint64 decisionRow, RunId run, const Seen &seen)
{
    Statement insert(act.database(),
                     u"INSERT INTO decision_mark (decision, run, last_mark) VALUES (?, ?, ?)"_s);
    insert.run(decisionRow, run.value, seen.mark.value);
    act.covers(u"decision_mark"_s, insert.insertedId());
    if (!seen.rack)
        return;
    Statement insertSize(act.database(),
                         u"INSERT INTO decision_size (decision, run, samples, tubes) VALUES (?, ?, ?, ?)"_s);
    insertSize.run(decisionRow, run.value, seen.rack->samples, seen.rack->tubes);
    act.covers(u"decision_size"_s, insertSize.insertedId());
}

std::optional<RackSize> rackSizeAt(const Statement &row, int column)
{
    if (row.isNull(column))
        return std::nullopt;
    return RackSize{static_cast<int>(row.integer(column)), static_cast<int>(row.integer(column + 1))};
}

qint64 storeDecision(Act &act, RunId run, const Decision &decision, const Seen &seen,
                     const QStringList &repeats)
{
    Statement insert(act.database(),
                     u"INSERT INTO decision (run, kind, person, reason, at_utc, at_offset_min, last_reading, "
                     "content_hash, acceptable, evaluation, program_version) "
                     "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(run.value, decisionWord(decision.kind), decision.person, decision.reason, act.at(),
               seen.reading.value, decision.contentHash, int(decision.acceptable),
               QString::fromUtf8(decision.evaluation), decision.programVersion);
    const qint64 row = insert.insertedId();
    act.covers(u"decision"_s, row);
    storeSeen(act, row, run, seen);
    Statement insertRepeat(act.database(), u"INSERT INTO decision_repeat (decision, sample) VALUES (?, ?)"_s);
    for (const QString &sample : repeats) {
        insertRepeat.run(row, sample);
        act.covers(u"decision_repeat"_s, insertRepeat.insertedId());
    }
    return row;
}

void storeSignature(Act &act, qint64 decisionRow, qint64 personVersion)
{
    Statement insert(act.database(),
                     u"INSERT INTO decision_signature (decision, person_version) VALUES (?, ?)"_s);
    insert.run(decisionRow, personVersion);
    act.covers(u"decision_signature"_s, insert.insertedId());
}

void storeReopening(Act &act, qint64 decisionRow, const QString &reason, std::optional<qint64> personVersion)
{
    Statement insert(
        act.database(),
        u"INSERT INTO reopening (decision, person, reason, at_utc, at_offset_min) VALUES (?, ?, ?, ?, ?)"_s);
    insert.run(decisionRow, act.person(), reason, act.at());
    const qint64 row = insert.insertedId();
    act.covers(u"reopening"_s, row);
    if (!personVersion)
        return;
    Statement sign(act.database(),
                   u"INSERT INTO reopening_signature (reopening, person_version) VALUES (?, ?)"_s);
    sign.run(row, *personVersion);
    act.covers(u"reopening_signature"_s, sign.insertedId());
}

RunState stateOf(const Database &database, RunId run)
{
    Statement query(
        database,
        u"SELECT kind FROM decision WHERE run = ? AND id NOT IN (SELECT decision FROM reopening)"_s);
    query.run(run.value);
    if (!query.next())
        return RunState::OnBench;
    return decisionKindOf(query.text(0)) == DecisionKind::Accepted ? RunState::Accepted : RunState::Rejected;
}

void requireOnBench(const Database &database, RunId run)
{
    const RunState state = stateOf(database, run);
    if (state == RunState::OnBench)
        return;
    const QString sentence = state == RunState::Accepted
                                 ? Sentence::tr("Run %1 is accepted and takes no change; nothing was stored: "
                                                "reopen it with a reason first.")
                                 : Sentence::tr("Run %1 is rejected and takes no change; nothing was stored: "
                                                "reopen it with a reason first.");
    throw Failure(Failure::Kind::Refused, sentence.arg(run.value));
}

std::vector<evaluation::Result> resultsOnRecord(const DecisionRow &decision)
{
    auto read = exchange::readEvaluation(decision.decision.evaluation);
    return read.value ? std::move(read.value->results) : std::vector<evaluation::Result>{};
}

QStringList repeatsOf(const std::vector<evaluation::Result> &results)
{
    QStringList samples;
    for (const evaluation::Result &result : results) {
        if (result.verdict == evaluation::Verdict::Repeat && !samples.contains(result.sample))
            samples.append(result.sample);
    }
    return samples;
}

QString reviewHash(const run::Run &run, const assay::Method &method)
{
    return exchange::runContentHash(run, method);
}

} // namespace plateau::notebook
