// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/rackrepeat.h"

#include "core/evaluation/format.h"
#include "core/planning/dilutionsearch.h"
#include "core/planning/glassfor.h"
#include "core/planning/glassware.h"
#include "core/planning/slack.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace plateau::planning {

namespace {

struct RackRepeatWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::RackRepeat)
};

/// Less is not diluted with care at the bench (common practice, no source).
constexpr double leastDiluted_mL = 0.1;

/// The step with the smallest glass of the laboratory that makes exactly that factor; the volume taken as
/// large as a pipette allows.
std::optional<run::DilutionStep> oneStep(double factor, const Glassware &glassware)
{
    std::vector<double> flasks_mL;
    for (const Flask &flask : glassware.flasks)
        flasks_mL.push_back(flask.volume_mL);
    std::ranges::sort(flasks_mL);
    for (const double flask_mL : flasks_mL) {
        const double take_mL = flask_mL / factor;
        const run::DilutionStep step{take_mL, flask_mL};
        if (take_mL >= leastDiluted_mL - slack && glassFor(step, glassware))
            return step;
    }
    return std::nullopt;
}

/// The best chain of the laboratory's glass whose factor lies between the two, of as few steps as it takes and no more
/// than longest; empty where none does.
std::vector<run::DilutionStep> chainBetween(double least, double most, const Glassware &glassware, int longest)
{
    DilutionTarget target;
    target.lowest = target.middle = std::log10(least);
    target.highest = std::log10(most);
    const std::vector<PossibleStep> steps = possibleSteps(glassware, leastDiluted_mL);
    const std::vector<PossibleStep> simple = simpleOnes(steps);
    for (int length = 1; length <= longest; ++length) {
        for (const auto *from : {&simple, &steps}) {
            const std::vector<RankedProposal> best = bestChains({target}, *from, length);
            if (best.empty())
                continue;
            std::vector<run::DilutionStep> chain;
            for (const ChainStep &step : best.front().proposal.chain)
                chain.push_back(step.step);
            return chain;
        }
    }
    return {};
}

/// What the sample gave in the tubes that count: the smallest net signal, and at which volume.
struct Given {
    double netSignal = 0;
    double sampleVolume_mL = 0;
};

std::optional<Given> smallestSignal(const assay::Method &method, const run::Run &run, const QString &sample)
{
    std::optional<Given> smallest;
    for (const evaluation::TubeValue &value : evaluation::evaluate(method, run).tubes) {
        const run::Tube &tube = run.tubes[static_cast<std::size_t>(value.index)];
        const bool counts = tube.role == run::Role::Sample && tube.sample == sample && tube.spoilt.isEmpty();
        if (counts && value.netSignal && (!smallest || *value.netSignal < smallest->netSignal))
            smallest = Given{*value.netSignal, value.sampleVolume_mL};
    }
    return smallest;
}

/// Where the glass makes no such factor, a stronger one that still leaves a signal to measure.
double mostDiluted(const assay::Method &method, const run::Run &run, const run::Sample &sample, double factor)
{
    const std::optional<Given> given = smallestSignal(method, run, sample.id);
    if (!given || method.window.minSignal <= 0)
        return factor;
    return std::max(factor, run::dilutionFactor(sample.dilution) * given->netSignal / method.window.minSignal);
}

std::vector<run::DilutionStep> chainOf(const assay::Method &method, const run::Run &run, const run::Sample &sample,
                                       const evaluation::Advice &advice, const Glassware &glassware)
{
    if (advice.factor <= 1 + slack)
        return {};
    // What the sentence of the check says is done, as long as there is the glass for it.
    const bool isAtHand = std::ranges::all_of(
        advice.steps, [&](const run::DilutionStep &step) { return glassFor(step, glassware).has_value(); });
    const bool isListed = !glassware.pipettes.empty() && !glassware.flasks.empty();
    if (!isListed || (isAtHand && !advice.steps.empty()))
        return advice.steps;
    if (const auto step = oneStep(advice.factor, glassware))
        return {*step};
    // A third step costs more than a little more dilution does.
    for (const int longest : {2, 3}) {
        for (const double most : {advice.factor, mostDiluted(method, run, sample, advice.factor)}) {
            if (auto chain = chainBetween(advice.factor, most, glassware, longest); !chain.empty())
                return chain;
        }
    }
    return advice.steps;
}

/// The largest volume up to the advised one that a pipette delivers, and the diluent beside it, too; as advised
/// where there is none that is more than the sample had and leaves a signal to measure.
double deliveredVolume_mL(const assay::Method &method, const run::Run &run, const QString &sample, double advised_mL,
                          const Glassware &glassware)
{
    const auto fits = [&](double volume_mL) {
        return isDelivered(volume_mL, glassware) && isDelivered(diluentBeside_mL(method, volume_mL), glassware);
    };
    if (glassware.pipettes.empty() || fits(advised_mL))
        return advised_mL;
    const std::optional<Given> given = smallestSignal(method, run, sample);
    std::optional<double> best_mL;
    for (const Pipette &pipette : glassware.pipettes) {
        for (const double volume_mL : settableVolumes_mL(pipette)) {
            if (volume_mL > advised_mL * (1 + slack) || (best_mL && volume_mL <= *best_mL) || !fits(volume_mL))
                continue;
            const bool isMore = !given || volume_mL > given->sampleVolume_mL * (1 + slack);
            const bool isMeasured = !given || given->sampleVolume_mL <= 0 || given->netSignal <= 0 ||
                                    given->netSignal * volume_mL / given->sampleVolume_mL >= method.window.minSignal;
            if (isMore && isMeasured)
                best_mL = volume_mL;
        }
    }
    return best_mL.value_or(advised_mL);
}

/// The advice as the laboratory's glass can carry it out.
evaluation::Advice delivered(const assay::Method &method, const run::Run &run, const run::Sample &sample,
                             evaluation::Advice advice, const Glassware &glassware)
{
    if (advice.kind == evaluation::Advice::Kind::IncreaseVolume) {
        advice.sampleVolume_mL = deliveredVolume_mL(method, run, sample.id, advice.sampleVolume_mL, glassware);
        return advice;
    }
    advice.steps = chainOf(method, run, sample, advice, glassware);
    if (const double factor = run::dilutionFactor(advice.steps); std::abs(factor / advice.factor - 1) > slack)
        advice.factor = factor;
    return advice;
}

QString nameOf(const run::Run &run, const QString &sample, const evaluation::Advice &advice)
{
    const QString how = advice.kind == evaluation::Advice::Kind::Dilute
                            ? RackRepeatWords::tr("%1-fold").arg(evaluation::plainText(advice.factor))
                            : RackRepeatWords::tr("%1 mL").arg(evaluation::plainText(advice.sampleVolume_mL));
    const QString name = RackRepeatWords::tr("%1, %2").arg(sample, how);
    QString free = name;
    for (int number = 2; run::findSample(run, free); ++number)
        free = RackRepeatWords::tr("%1 (%2)").arg(name).arg(number);
    return free;
}

std::vector<run::Tube> tubesLike(const run::Run &run, const QString &sample, const QString &repeat,
                                 const evaluation::Advice &advice)
{
    std::vector<run::Tube> tubes;
    for (const run::Tube &tube : run.tubes) {
        const bool repeated = tube.role == run::Role::Sample || tube.role == run::Role::SampleBlank;
        if (tube.sample != sample || !repeated || !tube.spoilt.isEmpty())
            continue;
        run::Tube again;
        again.role = tube.role;
        again.sample = repeat;
        again.sampleVolume_mL = advice.kind == evaluation::Advice::Kind::IncreaseVolume
                                    ? std::optional(advice.sampleVolume_mL)
                                    : tube.sampleVolume_mL;
        tubes.push_back(std::move(again));
    }
    return tubes;
}

} // namespace

std::optional<RackRepeat> repeatInRack(const assay::Method &method, const run::Run &run, const QString &sample,
                                       const evaluation::Advice &advised, const Glassware &glassware,
                                       const PlanRecord *plan)
{
    const run::Sample *original = run::findSample(run, sample);
    if (!original)
        return std::nullopt;
    const evaluation::Advice advice = delivered(method, run, *original, advised, glassware);
    RackRepeat repeat;
    repeat.sample = *original;
    repeat.sample.id = nameOf(run, sample, advice);
    repeat.sample.repeats = original->repeats.isEmpty() ? sample : original->repeats;
    if (advice.kind == evaluation::Advice::Kind::Dilute)
        repeat.sample.dilution = advice.steps;
    for (run::DilutionStep &step : repeat.sample.dilution) {
        const auto glass = glassFor(step, glassware);
        step.uncertainty_percent = glass ? std::optional(glass->uncertainty_percent) : std::nullopt;
        repeat.planned.glass.push_back(glass ? StepGlass{glass->pipette, glass->flask} : StepGlass{});
    }
    repeat.tubes = tubesLike(run, sample, repeat.sample.id, advice);
    if (plan) {
        const auto known = std::ranges::find(plan->samples, sample,
                                             [](const PlannedSample &planned) { return planned.sample.id; });
        if (known != plan->samples.end())
            repeat.planned.sample = known->sample;
    }
    repeat.planned.sample.id = repeat.sample.id;
    repeat.planned.sample.form = repeat.sample.form;
    return repeat;
}

std::optional<evaluation::Advice> openAdvice(const run::Run &run, const evaluation::Evaluation &evaluation,
                                             const QString &sample)
{
    if (std::ranges::any_of(run.samples,
                            [&sample](const run::Sample &other) { return other.repeats == sample; }))
        return std::nullopt;
    for (const evaluation::Check &check : evaluation.checks) {
        if (!check.passed && check.advice && check.scope.kind == evaluation::Scope::Kind::Sample &&
            check.scope.id == sample)
            return check.advice;
    }
    return std::nullopt;
}

QString repeatedBy(const run::Run &run, const evaluation::Evaluation &evaluation, const evaluation::Result &result)
{
    const run::Sample *own = run::findSample(run, result.sample);
    if (!own || result.verdict != evaluation::Verdict::Repeat)
        return {};
    const QString origin = own->repeats.isEmpty() ? own->id : own->repeats;
    for (const evaluation::Result &other : evaluation.results) {
        const run::Sample *sample = run::findSample(run, other.sample);
        if (sample && sample != own && sample->repeats == origin && other.measurand == result.measurand &&
            other.value && other.verdict == evaluation::Verdict::Reportable)
            return other.sample;
    }
    return {};
}

} // namespace plateau::planning
