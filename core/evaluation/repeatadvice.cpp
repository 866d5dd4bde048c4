// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/sampleview.h"

#include "core/evaluation/advice.h"
#include "core/evaluation/format.h"
#include "core/quality/statistics.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace plateau::evaluation {

namespace {

double lastAbsorbance(const run::Tube &tube, const QString &name)
{
    const run::Reading &reading = tube.readings.at(name);
    const auto *series = std::get_if<run::ReadingSeries>(&reading);
    return series ? series->back().absorbance : std::get<double>(reading);
}

double meanBlankReading(const SampleView &view, const QString &name)
{
    std::vector<double> readings;
    for (const int blank : view.context.layout.measurands()[view.measurand].blanks)
        readings.push_back(lastAbsorbance(view.context.tube(blank), name));
    return quality::mean(readings).value_or(0);
}

TubeState stateOf(const SampleView &view, int tube, bool usedUp)
{
    const CheckContext &context = view.context;
    const assay::Measurand &measurand = *context.layout.measurands()[view.measurand].measurand;
    TubeState state;
    state.netSignal = context.value(tube, view.measurand).netSignal.value_or(0);
    state.sampleVolume_mL = context.value(tube, view.measurand).sampleVolume_mL;
    state.usedUp = usedUp;
    state.largestReading = -1;
    for (const QString &name : assay::readingsOf(measurand.signal)) {
        const double absorbance = lastAbsorbance(context.tube(tube), name);
        if (absorbance > state.largestReading) {
            state.largestReading = absorbance;
            state.blankAtLargest = meanBlankReading(view, name);
        }
    }
    state.remaining = lastAbsorbance(context.tube(tube), assay::laterReading(measurand.signal));
    state.remainingWithoutSample = state.remaining + state.netSignal;
    return state;
}

/// Of two advices of one kind the careful one: the stronger dilution, the smaller of larger volumes.
bool isMoreCareful(const Advice &advice, const Advice &other)
{
    if (advice.kind != other.kind)
        return false;
    return advice.kind == Advice::Kind::Dilute ? advice.factor > other.factor
                                               : advice.sampleVolume_mL < other.sampleVolume_mL;
}

void keepMoreCareful(std::optional<Advice> &kept, const Advice &advice)
{
    const bool atLeast = advice.atLeast || (kept && kept->atLeast);
    if (!kept || isMoreCareful(advice, *kept))
        kept = advice;
    kept->atLeast = atLeast;
}

void keepMoreCarefulDilution(const SampleView &view, const std::vector<int> &usedUp, const Check &check,
                             std::optional<Advice> &kept)
{
    for (const int tube : check.tubes) {
        const bool result = std::ranges::find(view.resultTubes, tube) != view.resultTubes.end();
        if (!result || !view.context.value(tube, view.measurand).netSignal)
            continue;
        const bool exhausted = std::ranges::find(usedUp, tube) != usedUp.end();
        keepMoreCareful(
            kept, diluteAdvice(view.context.layout.method(), view.sample, stateOf(view, tube, exhausted)));
    }
}

/// The highest of the tubes' limits, which holds for all of them, in the result's unit.
std::optional<double> quantificationLimit(const SampleView &view, const Check &low)
{
    std::optional<double> limit;
    for (const int tube : low.tubes) {
        const auto &own = view.context.value(tube, view.measurand).quantificationLimit_g_per_L;
        if (own)
            limit = std::max(limit.value_or(0), *own * run::reportedPer_g_per_L(view.sample));
    }
    return limit;
}

void adviseStrengthening(const SampleView &view, Check &check)
{
    for (const int tube : check.tubes) {
        const auto advice =
            strengthenAdvice(view.context.layout.method(), view.sample, stateOf(view, tube, false));
        if (advice)
            keepMoreCareful(check.advice, *advice);
    }
    if (check.advice) {
        const QString how = check.advice->kind == Advice::Kind::IncreaseVolume
                                ? CheckText::tr("with %1").arg(adviceText(*check.advice))
                                : adviceText(*check.advice);
        check.whatToDo = CheckText::tr("Repeat %1.").arg(how);
    } else {
        const std::optional<double> limit = quantificationLimit(view, check);
        check.whatToDo = limit ? CheckText::tr("Report as below the limit of quantification, %1.")
                                     .arg(withUnit(significantText(*limit, 2), view.unit))
                               : CheckText::tr("Report as below the limit of quantification.");
    }
}

/// Low in one replicate only, and far from the other: an addition may be missing, which more sample won't
/// mend.
bool isLowInPart(const SampleView &view, const Check &low, const std::vector<Check> &checks)
{
    return std::ranges::any_of(checks, [&](const Check &check) {
        return check.id == CheckId::DuplicateSpread && !check.passed &&
               std::ranges::any_of(check.tubes, [&](int tube) {
                   return view.context.value(tube, view.measurand).netSignal &&
                          std::ranges::find(low.tubes, tube) == low.tubes.end();
               });
    });
}

} // namespace

std::optional<double> lessThan(const SampleView &view, const Result &result)
{
    const auto low = std::ranges::find_if(
        result.checks, [](const Check &c) { return c.id == CheckId::SignalLow && !c.passed && !c.advice; });
    if (low == result.checks.end() || !result.value)
        return std::nullopt;
    const std::optional<double> limit = quantificationLimit(view, *low);
    return limit && *result.value < *limit ? limit : std::nullopt;
}

std::optional<double> greaterThan(const Result &result)
{
    const bool usedUp = std::ranges::any_of(
        result.checks, [](const Check &c) { return !c.passed && c.advice && c.advice->atLeast; });
    return usedUp ? result.value : std::nullopt;
}

void addAdvice(const SampleView &view, std::vector<Check> &checks)
{
    std::vector<int> usedUp;
    for (const Check &check : checks) {
        if (check.id == CheckId::ReserveLow)
            usedUp = check.tubes;
    }
    // One sample is repeated once: every tube that lies too high has its say, the most careful wins.
    const auto asksForDilution = [](const Check &check) {
        return !check.passed && (check.id == CheckId::SignalHigh || check.id == CheckId::AbsorbanceHigh ||
                                 check.id == CheckId::ReserveLow);
    };
    std::optional<Advice> dilution;
    for (const Check &check : checks) {
        if (asksForDilution(check))
            keepMoreCarefulDilution(view, usedUp, check, dilution);
    }
    bool said = false;
    for (Check &check : checks) {
        if (dilution && asksForDilution(check)) {
            check.advice = dilution;
            if (!std::exchange(said, true))
                check.whatToDo = CheckText::tr("Repeat %1.").arg(adviceText(*dilution));
        } else if (check.id == CheckId::SignalLow && !check.passed && !dilution) {
            if (isLowInPart(view, check, checks))
                check.whatToDo =
                    CheckText::tr("Another tube of the sample is not: look for a missing addition.");
            else
                adviseStrengthening(view, check);
        }
    }
}

} // namespace plateau::evaluation
