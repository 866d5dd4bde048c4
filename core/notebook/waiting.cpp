// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/companions.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/openrepeats.h"
#include "core/notebook/planstore.h"
#include "core/notebook/runstore.h"
#include "core/notebook/shelfstore.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

planning::ShelfSample toldOf(const Database &database, const OpenRepeat &repeat)
{
    if (const auto plan = loadPlanRecord(database, repeat.run)) {
        for (const planning::PlannedSample &planned : plan->samples) {
            if (planned.sample.id == repeat.sample)
                return planned.sample;
        }
    }
    if (const auto taken = loadTakenBy(database, repeat.run, repeat.sample))
        return *taken;
    if (auto told = loadLastTold(database, repeat.sample)) {
        // Samples of one name are alike, but another one came on another day.
        told->receivedAt.reset();
        told->receivedFrom.clear();
        return *told;
    }
    planning::ShelfSample bare;
    bare.id = repeat.sample;
    const run::Run run = loadPlan(database, repeat.run);
    if (const run::Sample *sample = run::findSample(run, repeat.sample))
        bare.form = sample->form;
    return bare;
}

/// Of those that repeat each other, the last one that is to be repeated.
QString lastToRepeat(const evaluation::Evaluation &evaluation, const QStringList &samples)
{
    const QStringList all = repeatsOf(evaluation.results);
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

std::vector<evaluation::CheckId> failedIn(const evaluation::Evaluation &evaluation, const QString &sample)
{
    std::vector<evaluation::CheckId> failed;
    for (const evaluation::Result &result : evaluation.results) {
        if (result.sample != sample || result.verdict != evaluation::Verdict::Repeat || !result.terms.empty())
            continue;
        for (const evaluation::Check &check : result.checks) {
            if (check.advice && std::ranges::find(failed, check.id) == failed.end())
                failed.push_back(check.id);
        }
    }
    return failed;
}

std::map<QString, double> foundIn(const evaluation::Evaluation &evaluation, const QString &sample)
{
    std::map<QString, double> found;
    for (const evaluation::Result &result : evaluation.results) {
        const std::optional<double> value = result.greaterThan ? result.greaterThan : result.value;
        if (result.sample == sample && result.terms.empty() && value && *value > 0)
            found[result.measurand] = *value;
    }
    return found;
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

/// Nothing where the run cannot be worked out any more: that is for a verification to say, and the sample waits all
/// the same.
void takeComputed(const Database &database, const DecisionRow &decision, const QStringList &samples,
                  AdvisedRepeat &repeat)
{
    try {
        const evaluation::Evaluation evaluation = evaluationAt(database, repeat.run, decision);
        const QString sample = lastToRepeat(evaluation, samples);
        repeat.advice = adviceIn(evaluation, sample);
        repeat.found = foundIn(evaluation, sample);
        repeat.failed = failedIn(evaluation, sample);
    } catch (const Failure &failure) {
        if (failure.kind() == Failure::Kind::Storage)
            throw;
    }
}

void takeHowItWasRun(const run::Run &run, const QString &sample, AdvisedRepeat &repeat)
{
    if (const run::Sample *had = run::findSample(run, sample))
        repeat.dilution = had->dilution;
    const auto tube = std::ranges::find_if(run.tubes, [&](const run::Tube &each) {
        return each.role == run::Role::Sample && each.sample == sample;
    });
    if (tube != run.tubes.end())
        repeat.sampleVolume_mL = tube->sampleVolume_mL;
}

/// What a person said of how to repeat it comes before what the evaluation says.
AdvisedRepeat repeatOf(const Database &database, const OpenRepeat &open)
{
    const DecisionRow decision = loadDecisions(database, open.run).back();
    AdvisedRepeat repeat{open.run, open.method, {}, {}, {}, {}, {}, {}};
    const QStringList samples = repeatsWith(database, open.run, open.sample);
    const auto &own = decision.decision.samples;
    const auto said = lastWish(own, samples);
    takeComputed(database, decision, samples, repeat);
    takeHowItWasRun(loadPlan(database, open.run), open.sample, repeat);
    if (said != own.end())
        repeat.reason = said->reason;
    if (said != own.end() && said->advice)
        repeat.advice = {{{}, *said->advice}};
    return repeat;
}

/// Of whom nobody told when it was received comes last.
bool comesBefore(const ShelfEntry &one, const ShelfEntry &other)
{
    const std::optional<QDateTime> &mine = one.sample.receivedAt;
    const std::optional<QDateTime> &others = other.sample.receivedAt;
    return mine && others ? *mine < *others : mine && !others;
}

} // namespace

std::vector<WaitingSample> allWaiting(const Database &database)
{
    std::vector<ShelfEntry> entries = loadWaiting(database);
    std::ranges::stable_sort(entries, comesBefore);
    std::vector<WaitingSample> waiting;
    for (const OpenRepeat &open : openRepeats(database)) {
        WaitingSample sample{toldOf(database, open), std::nullopt, repeatOf(database, open)};
        const auto entry = std::ranges::find_if(
            entries, [&](const ShelfEntry &other) { return other.sample.id == open.sample; });
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
    return std::ranges::any_of(openRepeats(database), [&](const OpenRepeat &repeat) {
        return repeat.run == run && repeat.sample == sample;
    });
}

} // namespace plateau::notebook
