// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/companions.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/planstore.h"
#include "core/notebook/runstore.h"
#include "core/notebook/shelfstore.h"

#include <algorithm>
#include <set>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// What makes a repeat of the row of sample, its run and the run's method wait still.
QString isOpen()
{
    return u"NOT EXISTS (SELECT 1 FROM repeat_waiver WHERE repeat_waiver.run = sample.run "
           "AND repeat_waiver.sample = sample.name) AND NOT EXISTS ("
           "SELECT 1 FROM sample AS later JOIN run AS later_run ON later_run.id = later.run "
           "JOIN method AS later_method ON later_method.id = later_run.method "
           "WHERE later.name = sample.name AND later.run > sample.run "
           "AND later_method.method_id = method.method_id AND NOT %1)"_s.arg(
               isRejected(u"later.run"_s, u"later.name"_s));
}

constexpr auto runOfSample = "JOIN run ON run.id = sample.run JOIN method ON method.id = run.method"_L1;

struct Candidate {
    RunId run;
    QString sample;
    QString method;
};

/// Decisions say in rows of their own which samples are to be repeated.
void addNoted(const Database &database, std::vector<Candidate> &candidates)
{
    Statement query(
        database,
        u"SELECT sample.run, sample.name, method.method_id FROM decision_repeat "
        "JOIN decision ON decision.id = decision_repeat.decision "
        "JOIN sample ON sample.run = decision.run AND sample.name = decision_repeat.sample %1 "
        "WHERE decision.id NOT IN (SELECT decision FROM reopening) AND %2"_s.arg(runOfSample, isOpen()));
    query.run();
    while (query.next())
        candidates.push_back({{query.integer(0)}, query.text(1), query.text(2)});
}

/// Those made before there were such rows have no decision_mark either; their evaluation says it.
void addOlder(const Database &database, std::vector<Candidate> &candidates)
{
    Statement decisions(
        database,
        u"SELECT DISTINCT run FROM decision WHERE id NOT IN (SELECT decision FROM reopening) AND NOT EXISTS ("
        "SELECT 1 FROM decision_mark WHERE decision_mark.decision = decision.id) "
        "AND instr(evaluation, '\"verdict\": \"repeat\"') > 0"_s);
    decisions.run();
    Statement open(database,
                   u"SELECT method.method_id FROM sample %1 WHERE sample.run = ? AND sample.name = ? "
                   "AND %2"_s.arg(runOfSample, isOpen()));
    while (decisions.next()) {
        const RunId run{decisions.integer(0)};
        const DecisionRow decision = loadDecisions(database, run).back();
        for (const QString &sample : repeatsOf(evaluationAt(database, run, decision))) {
            open.run(run.value, sample);
            while (open.next())
                candidates.push_back({run, sample, open.text(0)});
        }
    }
}

/// The newest run of each sample and method.
std::vector<Candidate> candidatesIn(const Database &database)
{
    std::vector<Candidate> all;
    addNoted(database, all);
    addOlder(database, all);
    std::ranges::stable_sort(all, std::ranges::greater(), &Candidate::run);
    std::vector<Candidate> newest;
    std::set<std::pair<QString, QString>> seen;
    for (const Candidate &candidate : all) {
        if (seen.insert({candidate.sample, candidate.method}).second)
            newest.push_back(candidate);
    }
    std::ranges::reverse(newest);
    return newest;
}

planning::ShelfSample toldOf(const Database &database, const Candidate &candidate)
{
    if (const auto plan = loadPlanRecord(database, candidate.run)) {
        for (const planning::PlannedSample &planned : plan->samples) {
            if (planned.sample.id == candidate.sample)
                return planned.sample;
        }
    }
    if (const auto told = loadLastTold(database, candidate.sample))
        return *told;
    planning::ShelfSample bare;
    bare.id = candidate.sample;
    const run::Run run = loadPlan(database, candidate.run);
    if (const run::Sample *sample = run::findSample(run, candidate.sample))
        bare.form = sample->form;
    return bare;
}

std::vector<AdvisedRepeat::Of> adviceIn(const evaluation::Evaluation &evaluation, const QString &sample)
{
    std::vector<AdvisedRepeat::Of> advice;
    for (const evaluation::Result &result : evaluation.results) {
        // A derived quantity only says again what its terms say.
        if (result.sample != sample || result.verdict != evaluation::Verdict::Repeat || !result.terms.empty())
            continue;
        for (const evaluation::Check &check : result.checks) {
            if (!check.advice)
                continue;
            const AdvisedRepeat::Of of{result.measurand, *check.advice};
            if (std::ranges::find(advice, of) == advice.end())
                advice.push_back(of);
        }
    }
    return advice;
}

/// What a person said of how to repeat it comes before what the evaluation says.
AdvisedRepeat repeatOf(const Database &database, const Candidate &candidate)
{
    const DecisionRow decision = loadDecisions(database, candidate.run).back();
    AdvisedRepeat repeat{candidate.run, candidate.method, {}, {}};
    const auto &own = decision.decision.samples;
    const auto said = std::ranges::find(own, candidate.sample, &SampleDecision::sample);
    if (said != own.end())
        repeat.reason = said->reason;
    if (said != own.end() && said->advice)
        repeat.advice = {{{}, *said->advice}};
    else
        repeat.advice = adviceIn(evaluationAt(database, candidate.run, decision), candidate.sample);
    return repeat;
}

} // namespace

std::vector<WaitingSample> allWaiting(const Database &database)
{
    std::vector<ShelfEntry> entries = loadWaiting(database);
    std::vector<WaitingSample> waiting;
    for (const Candidate &candidate : candidatesIn(database)) {
        WaitingSample sample{toldOf(database, candidate), std::nullopt, repeatOf(database, candidate)};
        const auto entry = std::ranges::find_if(
            entries, [&](const ShelfEntry &other) { return other.sample.id == candidate.sample; });
        if (entry != entries.end()) {
            sample.sample = entry->sample;
            sample.shelf = entry->id;
            entries.erase(entry);
        }
        waiting.push_back(std::move(sample));
    }
    for (const ShelfEntry &entry : entries)
        waiting.push_back({entry.sample, entry.id, std::nullopt});
    return waiting;
}

bool asksForRepeat(const Database &database, RunId run, const QString &sample)
{
    return std::ranges::any_of(candidatesIn(database), [&](const Candidate &candidate) {
        return candidate.run == run && candidate.sample == sample;
    });
}

} // namespace plateau::notebook
