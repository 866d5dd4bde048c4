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

/// Decisions say in rows of their own which samples are to be repeated. A repeat that was made in the same
/// run speaks for the sample it repeats.
void addNoted(const Database &database, std::vector<Candidate> &candidates)
{
    Statement query(
        database,
        u"SELECT sample.run, sample.name, method.method_id FROM decision_repeat "
        "JOIN decision ON decision.id = decision_repeat.decision "
        "JOIN sample ON sample.run = decision.run AND sample.name = coalesce(("
        "SELECT other.name FROM sample AS own JOIN sample_repeat ON sample_repeat.sample = own.id "
        "JOIN sample AS other ON other.id = sample_repeat.repeats "
        "WHERE own.run = decision.run AND own.name = decision_repeat.sample), decision_repeat.sample) %1 "
        "WHERE decision.id NOT IN (SELECT decision FROM reopening) AND %2"_s.arg(runOfSample, isOpen()));
    query.run();
    while (query.next())
        candidates.push_back({{query.integer(0)}, query.text(1), query.text(2)});
}

/// Of those made before there were such rows (schema 3) the evaluation says it. The first entry of the trail
/// tells whether there can be any.
void addOlder(const Database &database, std::vector<Candidate> &candidates)
{
    Statement decisions(
        database,
        u"SELECT DISTINCT decision.run FROM audit CROSS JOIN audit_record ON audit_record.audit = audit.id "
        "CROSS JOIN decision ON decision.id = audit_record.record_id WHERE audit_record.record_table = "
        "'decision' "
        "AND audit.id < coalesce((SELECT id FROM audit WHERE schema_version >= 3 ORDER BY id LIMIT 1), 9e18) "
        "AND decision.id NOT IN (SELECT decision FROM reopening) "
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

/// The sample and those of its run that repeat it, in the order they came.
QStringList repeatsWith(const Database &database, const Candidate &candidate)
{
    Statement query(database, u"SELECT own.name FROM sample_repeat JOIN sample AS own ON own.id = "
                              "sample_repeat.sample JOIN sample AS other ON other.id = sample_repeat.repeats "
                              "WHERE other.run = ? AND other.name = ? ORDER BY own.position"_s);
    query.run(candidate.run.value, candidate.sample);
    QStringList names{candidate.sample};
    while (query.next())
        names.append(query.text(0));
    return names;
}

/// Whether whatever one of them leaves to be repeated is reportable of another.
bool isSettled(const evaluation::Evaluation &evaluation, const QStringList &samples)
{
    std::set<QString> open;
    std::set<QString> reportable;
    for (const evaluation::Result &result : evaluation.results) {
        if (!samples.contains(result.sample))
            continue;
        if (result.verdict == evaluation::Verdict::Repeat)
            open.insert(result.measurand);
        if (result.verdict == evaluation::Verdict::Reportable)
            reportable.insert(result.measurand);
    }
    return std::ranges::includes(reportable, open);
}

bool isSettledAtTheBench(const Database &database, const Candidate &candidate)
{
    const QStringList samples = repeatsWith(database, candidate);
    if (samples.size() == 1)
        return false;
    const DecisionRow decision = loadDecisions(database, candidate.run).back();
    const bool somebodyWantsIt =
        std::ranges::any_of(decision.decision.samples, [&](const SampleDecision &own) {
            return own.kind == SampleDecisionKind::Repeat && samples.contains(own.sample);
        });
    return decision.decision.kind == DecisionKind::Accepted && !somebodyWantsIt &&
           isSettled(evaluationAt(database, candidate.run, decision), samples);
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
    std::erase_if(newest,
                  [&](const Candidate &candidate) { return isSettledAtTheBench(database, candidate); });
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

/// Of those that repeat each other, the last one that is to be repeated.
QString lastToRepeat(const evaluation::Evaluation &evaluation, const QStringList &samples)
{
    const QStringList all = repeatsOf(evaluation);
    const auto found = std::find_if(samples.rbegin(), samples.rend(),
                                    [&](const QString &sample) { return all.contains(sample); });
    return found == samples.rend() ? samples.front() : *found;
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

std::vector<AdvisedRepeat::Of> lastAdvice(const evaluation::Evaluation &evaluation,
                                          const QStringList &samples)
{
    return adviceIn(evaluation, lastToRepeat(evaluation, samples));
}

/// What somebody said of the last of them that is to be repeated; the end where nobody said anything.
std::vector<SampleDecision>::const_iterator lastWish(const std::vector<SampleDecision> &own,
                                                     const QStringList &samples)
{
    for (auto sample = samples.rbegin(); sample != samples.rend(); ++sample) {
        const auto said = std::ranges::find_if(own, [&](const SampleDecision &decided) {
            return decided.sample == *sample && decided.kind == SampleDecisionKind::Repeat;
        });
        if (said != own.end())
            return said;
    }
    return own.end();
}

/// What a person said of how to repeat it comes before what the evaluation says.
AdvisedRepeat repeatOf(const Database &database, const Candidate &candidate)
{
    const DecisionRow decision = loadDecisions(database, candidate.run).back();
    AdvisedRepeat repeat{candidate.run, candidate.method, {}, {}};
    const QStringList samples = repeatsWith(database, candidate);
    const auto &own = decision.decision.samples;
    const auto said = lastWish(own, samples);
    if (said != own.end())
        repeat.reason = said->reason;
    if (said != own.end() && said->advice)
        repeat.advice = {{{}, *said->advice}};
    else
        repeat.advice = lastAdvice(evaluationAt(database, candidate.run, decision), samples);
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
