// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/rackrepeat.h"

#include "core/evaluation/format.h"
#include "core/planning/glassfor.h"
#include "core/planning/slack.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace plateau::planning {

namespace {

struct RackRepeatWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::RackRepeat)
};


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
        // Less than a tenth of a millilitre is not diluted with care at the bench (common practice, no
        // source).
        if (take_mL >= 0.1 - slack && glassFor(step, glassware))
            return step;
    }
    return std::nullopt;
}

std::vector<run::DilutionStep> chainOf(const evaluation::Advice &advice, const Glassware &glassware)
{
    if (advice.factor <= 1 + slack)
        return {};
    // What the sentence of the check says is done, as long as there is the glass for it.
    const bool isAtHand = std::ranges::all_of(
        advice.steps, [&](const run::DilutionStep &step) { return glassFor(step, glassware).has_value(); });
    if (isAtHand && !advice.steps.empty())
        return advice.steps;
    if (const auto step = oneStep(advice.factor, glassware))
        return {*step};
    return advice.steps;
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

std::optional<RackRepeat> repeatInRack(const run::Run &run, const QString &sample,
                                       const evaluation::Advice &advice, const Glassware &glassware,
                                       const PlanRecord *plan)
{
    const run::Sample *original = run::findSample(run, sample);
    if (!original)
        return std::nullopt;
    RackRepeat repeat;
    repeat.sample = *original;
    repeat.sample.id = nameOf(run, sample, advice);
    repeat.sample.repeats = original->repeats.isEmpty() ? sample : original->repeats;
    if (advice.kind == evaluation::Advice::Kind::Dilute)
        repeat.sample.dilution = chainOf(advice, glassware);
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
