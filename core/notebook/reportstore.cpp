// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/reportstore.h"

#include "core/exchange/readers.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/methodstore.h"
#include "core/notebook/notebook.h"
#include "core/notebook/runstore.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"
#include "core/notebook/words.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

struct Found {
    qint64 decision = 0;
    AcceptedResult result;
};

std::vector<evaluation::Result> resultsIn(RunId run, const Decision &decision)
{
    exchange::Read<std::vector<evaluation::Result>> read = exchange::readResults(decision.evaluation);
    if (!read.value)
        throw Failure(Failure::Kind::Damaged,
                      Sentence::tr("The evaluation that run %1 was decided on is damaged: have the notebook "
                                   "verified and go back to the latest backup.")
                          .arg(run.value),
                      exchange::problemLine(u"evaluation"_s, read.problems.front()));
    return std::move(*read.value);
}

bool saysSomething(const evaluation::Result &result)
{
    return result.value || result.lessThan || result.greaterThan;
}

/// Of the one decision that stands.
void addResults(const Database &database, RunId run, const SampleRuns &sample, const QString &measurand,
                std::vector<Found> &found)
{
    if (stateOf(database, run) != RunState::Accepted)
        return;
    const run::Run plan = loadPlan(database, run);
    const std::vector<DecisionRow> decisions = loadDecisions(database, run);
    const DecisionRow &row = decisions.back();
    const assay::Method method = loadMethod(database, methodRowOf(database, run));
    for (const evaluation::Result &result : resultsIn(run, row.decision)) {
        const run::Sample *held = run::findSample(plan, result.sample);
        const bool isIt =
            held && (comparisonKey(held->id) == sample.key || comparisonKey(held->repeats) == sample.key);
        if (!isIt || result.measurand != measurand || !saysSomething(result) ||
            !acceptsResult(row.decision, result))
            continue;
        found.push_back({row.id,
                         {{run, int(decisions.size()), held->id},
                          method.id,
                          method.version,
                          row.decision.at,
                          row.decision.person,
                          row.decision.signedAs.has_value(),
                          run::dilutionFactor(held->dilution),
                          result}});
    }
}

std::optional<ResultSource> sourceOf(const Database &database, qint64 decision, const QString &sample)
{
    Statement query(database, u"SELECT run, (SELECT count(*) FROM decision AS earlier WHERE earlier.run = "
                              "decision.run AND earlier.id <= decision.id) FROM decision WHERE id = ?"_s);
    query.run(decision);
    if (!query.next())
        return std::nullopt;
    return ResultSource{{query.integer(0)}, int(query.integer(1)), sample};
}

std::optional<ReportChoice> loadChoice(const Database &database, const SampleRuns &sample,
                                       const QString &measurand, const std::vector<Found> &found)
{
    Statement query(database, u"SELECT rule, named, named_sample, last_decision, reason, person, at_utc, "
                              "at_offset_min, person_version FROM report_choice WHERE sample_key = ? "
                              "AND measurand = ? AND since_run = ? ORDER BY id DESC LIMIT 1"_s);
    query.run(sample.key, measurand, sample.sinceRun);
    if (!query.next())
        return std::nullopt;
    ReportChoice choice;
    choice.rule = reportRuleOf(query.text(0));
    if (!query.isNull(1))
        choice.named = sourceOf(database, query.integer(1), query.text(2));
    choice.reason = query.text(4);
    choice.person = query.text(5);
    choice.at = query.time(6);
    choice.isSigned = !query.isNull(8);
    choice.olderThanResults = std::ranges::any_of(
        found, [newest = query.integer(3)](const Found &one) { return one.decision > newest; });
    return choice;
}

} // namespace

SampleResults loadSampleResults(const Database &database, const QString &sample, const QString &measurand,
                                std::optional<RunId> of)
{
    const SampleRuns held = sampleRuns(database, sample, of);
    std::vector<Found> found;
    for (const RunId run : held.runs)
        addResults(database, run, held, measurand, found);
    std::ranges::stable_sort(found, {}, &Found::decision);
    SampleResults results;
    results.sample = sample;
    results.product = held.product;
    results.measurand = measurand;
    results.choice = loadChoice(database, held, measurand, found);
    if (results.choice)
        results.rule = results.choice->rule;
    for (Found &one : found)
        results.accepted.push_back(std::move(one.result));
    followRule(results);
    return results;
}

void storeReportChoice(Act &act, const SampleRuns &sample, const QString &measurand,
                       const WantedChoice &choice, std::optional<qint64> personVersion)
{
    std::optional<qint64> named;
    std::optional<QString> namedSample;
    if (choice.rule == ReportRule::Named) {
        const std::vector<DecisionRow> decisions = loadDecisions(act.database(), choice.named->run);
        named = decisions[std::size_t(choice.named->revision - 1)].id;
        namedSample = choice.named->sample;
    }
    Statement insert(
        act.database(),
        u"INSERT INTO report_choice (sample_key, since_run, measurand, rule, named, named_sample, "
        "last_decision, reason, person, person_version, at_utc, at_offset_min) "
        "SELECT ?, ?, ?, ?, ?, ?, coalesce(max(id), 0), ?, ?, ?, ?, ? FROM decision"_s);
    insert.run(sample.key, sample.sinceRun, measurand, reportRuleWord(choice.rule), named, namedSample,
               choice.reason, act.person(), personVersion, act.at());
    act.covers(u"report_choice"_s, insert.insertedId());
}

} // namespace plateau::notebook
