// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checks.h"

#include "core/evaluation/format.h"

#include <algorithm>
#include <cmath>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

constexpr int tubeDecimals = 3;

/// The absorbance the calculation rests on: the reading itself, or the last of a series.
double shownAbsorbance(const run::Reading &reading)
{
    const auto *series = std::get_if<run::ReadingSeries>(&reading);
    return series ? series->back().absorbance : std::get<double>(reading);
}

/// All that the calculation takes from a reading: more than one where a series is extrapolated.
std::vector<double> usedAbsorbances(const assay::Method &method, const QString &name,
                                    const run::Reading &reading)
{
    const auto *series = std::get_if<run::ReadingSeries>(&reading);
    if (!series || !method.extrapolate || method.extrapolate->reading != name)
        return {shownAbsorbance(reading)};
    const size_t used = std::min(static_cast<size_t>(method.extrapolate->lastReadings), series->size());
    std::vector<double> absorbances;
    for (size_t i = series->size() - used; i < series->size(); ++i)
        absorbances.push_back((*series)[i].absorbance);
    return absorbances;
}

/// Calls back with (tube, reading name, reading) for every reading of the group's measurand.
template <class Visitor>
void forEachReading(const CheckContext &context, const TubeGroup &group, Visitor visit)
{
    const assay::Measurand &measurand = *context.layout.measurands()[group.measurand].measurand;
    for (const int index : group.tubes) {
        const auto &readings = context.tube(index).readings;
        for (const QString &name : assay::readingsOf(measurand.signal)) {
            if (!group.reading.isEmpty() && name != group.reading)
                continue;
            const auto found = readings.find(name);
            visit(index, name, found == readings.end() ? nullptr : &found->second);
        }
    }
}

/// The tubes that count, and those of the group that are spoilt.
struct Parted {
    TubeGroup counted;
    std::vector<int> spoilt;
};

Parted parted(const CheckContext &context, const TubeGroup &group)
{
    Parted parts{{group.scope, group.measurand, {}, group.reading}, {}};
    for (const int tube : group.tubes)
        (context.term(tube, group.measurand).spoilt ? parts.spoilt : parts.counted.tubes).push_back(tube);
    return parts;
}

/// Spoilt tubes that no other stands in for: a sample blank does not stand in for the sample.
std::vector<int> withoutSubstitute(const CheckContext &context, const Parted &parts)
{
    const auto isBlank = [&](int tube) { return context.tube(tube).role == run::Role::SampleBlank; };
    std::vector<int> alone;
    for (const int tube : parts.spoilt) {
        if (std::ranges::none_of(parts.counted.tubes,
                                 [&](int other) { return isBlank(other) == isBlank(tube); }))
            alone.push_back(tube);
    }
    return alone;
}

Check missingReadings(const CheckContext &context, const TubeGroup &group)
{
    const Parted parts = parted(context, group);
    CheckBuilder check(CheckId::ReadingMissing, group,
                       parts.spoilt.empty()
                           ? CheckText::tr("Every reading is there.")
                           : CheckText::tr("Every reading that counts is there: without %1, spoilt.")
                                 .arg(tubeNames(parts.spoilt)));
    forEachReading(context, parts.counted, [&](int tube, const QString &name, const run::Reading *reading) {
        if (!reading)
            check.fail(tube, CheckText::tr("%1 is missing").arg(name));
    });
    const bool unread = check.failed();
    const std::vector<int> alone = withoutSubstitute(context, parts);
    for (const int tube : alone)
        check.fail(tube, CheckText::tr("spoilt (%1)").arg(context.tube(tube).spoilt));
    const QString read = CheckText::tr("Read and key what is missing.");
    const QString again = CheckText::tr("No other tube stands in for it: pipette it again.");
    if (unread && !alone.empty())
        return check.finish({}, inARow(again, read));
    return check.finish({}, alone.empty() ? read : again);
}

Check implausibleReadings(const CheckContext &context, const TubeGroup &group)
{
    const assay::Interval &plausible = context.rules.plausibleAbsorbance;
    CheckBuilder check(CheckId::ReadingImplausible, group,
                       CheckText::tr("Every reading is one that a photometer can show."));
    forEachReading(context, group, [&](int tube, const QString &name, const run::Reading *reading) {
        if (!reading)
            return;
        for (const double absorbance : usedAbsorbances(context.layout.method(), name, *reading)) {
            if (absorbance < plausible.lower || absorbance > plausible.upper)
                check.fail(tube, CheckText::tr("%1 is %2, outside %3 to %4")
                                     .arg(name, absorbanceText(absorbance), plainText(plausible.lower),
                                          plainText(plausible.upper)));
        }
    });
    return check.finish({}, CheckText::tr("Read the tube again; look for a slipped decimal point."));
}

Check highAbsorbances(const CheckContext &context, const TubeGroup &group, double limit)
{
    CheckBuilder check(
        CheckId::AbsorbanceHigh, group,
        CheckText::tr("No reading is above the photometer's limit of %1.").arg(absorbanceText(limit)));
    forEachReading(context, group, [&](int tube, const QString &name, const run::Reading *reading) {
        if (!reading || shownAbsorbance(*reading) <= limit)
            return;
        const QStringList texts = comparedTexts(shownAbsorbance(*reading), {limit}, tubeDecimals);
        check.fail(
            tube,
            CheckText::tr("%1 is %2, above the photometer's limit of %3").arg(name, texts[0], texts[1]));
    });
    return check.finish(CheckText::tr("An absorbance that high is not proportional to concentration."), {});
}

Check lowReserve(const CheckContext &context, const TubeGroup &group, double reserve)
{
    const QString later = assay::laterReading(context.layout.measurands()[group.measurand].measurand->signal);
    CheckBuilder check(
        CheckId::ReserveLow, group,
        CheckText::tr("Enough of the falling reagent is left (%1 or more).").arg(absorbanceText(reserve)));
    forEachReading(context, group, [&](int tube, const QString &name, const run::Reading *reading) {
        if (!reading || name != later || shownAbsorbance(*reading) >= reserve)
            return;
        const QStringList texts = comparedTexts(shownAbsorbance(*reading), {reserve}, tubeDecimals);
        check.fail(
            tube, CheckText::tr("%1 is %2, less than the %3 that must remain").arg(name, texts[0], texts[1]));
    });
    return check.finish(CheckText::tr("The reagent was used up: the true value is only known to be larger."),
                        {});
}

Check sampleVolumes(const CheckContext &context, const TubeGroup &group, const assay::Interval &range_mL)
{
    CheckBuilder check(CheckId::SampleVolumeOutsideRange, group,
                       CheckText::tr("Every sample volume is one the method allows."));
    for (const int tube : group.tubes) {
        // The range is that of the sample: a standard has its levels.
        if (context.layout.run().tubes[static_cast<size_t>(tube)].sample.isEmpty())
            continue;
        const double volume_mL = context.value(tube, group.measurand).sampleVolume_mL;
        if (volume_mL < range_mL.lower * (1 - 1e-9) || volume_mL > range_mL.upper * (1 + 1e-9))
            check.fail(tube, CheckText::tr("%1 of sample, outside %2 to %3")
                                 .arg(withUnit(plainText(volume_mL), u"mL"_s), plainText(range_mL.lower),
                                      withUnit(plainText(range_mL.upper), u"mL"_s)));
    }
    return check.finish({}, CheckText::tr("Pipette a volume within the method's range."));
}

Check finishedCheck(const CheckContext &context, const TubeGroup &group)
{
    CheckBuilder check(CheckId::ReactionUnfinished, group,
                       CheckText::tr("Every reaction followed as a series has ended."));
    const std::vector<QString> readings =
        assay::readingsOf(context.layout.measurands()[group.measurand].measurand->signal);
    for (const SeriesFit &fit : context.evaluation.series) {
        if (fit.ended || std::ranges::find(group.tubes, fit.tube) == group.tubes.end() ||
            std::ranges::find(readings, fit.reading) == readings.end())
            continue;
        check.fail(fit.tube, CheckText::tr("%1 still changes (%2 per minute over the last %3 readings)")
                                 .arg(fit.reading, significantText(fit.slope_per_min, 2))
                                 .arg(fit.points));
    }
    return check.finish({}, CheckText::tr("Read on until the change from reading to reading is constant."));
}

/// A check of signals says nothing, not "passed", while there are none.
bool hasSignal(const CheckContext &context, const TubeGroup &group)
{
    return std::ranges::any_of(
        group.tubes, [&](int tube) { return context.value(tube, group.measurand).netSignal.has_value(); });
}

bool hasSeries(const CheckContext &context, const TubeGroup &group)
{
    bool found = false;
    forEachReading(context, group, [&](int, const QString &, const run::Reading *reading) {
        found = found || (reading && std::holds_alternative<run::ReadingSeries>(*reading));
    });
    return found;
}

} // namespace

TubeGroup trusted(const CheckContext &context, const TubeGroup &group)
{
    TubeGroup judged = group;
    std::erase_if(judged.tubes, [&](int tube) { return !context.term(tube, group.measurand).trusted(); });
    return judged;
}

std::vector<Check> readingChecks(const CheckContext &context, const TubeGroup &group)
{
    const assay::Method &method = context.layout.method();
    std::vector<Check> checks;
    checks.push_back(missingReadings(context, group));
    const TubeGroup counted = parted(context, group).counted;
    if (counted.tubes.empty())
        return checks;
    checks.push_back(implausibleReadings(context, counted));
    const TubeGroup judged = trusted(context, counted);
    if (method.window.maxAbsorbance && !judged.tubes.empty())
        checks.push_back(highAbsorbances(context, judged, *method.window.maxAbsorbance));
    if (method.direction == assay::Direction::Falling && method.window.reserveAbsorbance &&
        !judged.tubes.empty())
        checks.push_back(lowReserve(context, judged, *method.window.reserveAbsorbance));
    const assay::Component *sample = assay::findComponent(method, method.sample);
    if (sample && sample->range_mL && group.scope.kind != Scope::Kind::Run)
        checks.push_back(sampleVolumes(context, counted, *sample->range_mL));
    return checks;
}

std::vector<Check> directionChecks(const CheckContext &context, const TubeGroup &group)
{
    if (!hasSignal(context, group))
        return {};
    const bool rising = context.layout.method().direction == assay::Direction::Rising;
    CheckBuilder check(CheckId::WrongDirection, group,
                       rising ? CheckText::tr("Absorbance rose, as it should.")
                              : CheckText::tr("Absorbance fell, as it should."));
    for (const int tube : group.tubes) {
        if (!context.term(tube, group.measurand).wrongDirection)
            continue;
        const QString change = absorbanceText(-*context.value(tube, group.measurand).signal);
        check.fail(tube, rising ? CheckText::tr("absorbance fell by %1 where it should rise").arg(change)
                                : CheckText::tr("absorbance rose by %1 where it should fall").arg(change));
    }
    return {check.finish({}, CheckText::tr("Look for swapped readings, a wrong tube or a missing addition."))};
}

std::vector<Check> windowChecks(const CheckContext &context, const TubeGroup &group)
{
    const TubeGroup judged = trusted(context, group);
    if (!hasSignal(context, judged))
        return {};
    const assay::Window &window = context.layout.method().window;
    constexpr double slack = 1e-12; // 0.6 - 0.5 is a hair below 0.1
    CheckBuilder low(CheckId::SignalLow, group,
                     CheckText::tr("Net signal is at least %1.").arg(absorbanceText(window.minSignal)));
    CheckBuilder high(CheckId::SignalHigh, group,
                      CheckText::tr("Net signal is at most %1.").arg(absorbanceText(window.maxSignal)));
    const auto against = [](const QString &sentence, double net, double limit) {
        const QStringList texts = comparedTexts(net, {limit}, tubeDecimals);
        return sentence.arg(texts[0], texts[1]);
    };
    for (const int tube : judged.tubes) {
        const std::optional<double> net = context.value(tube, group.measurand).netSignal;
        if (net && *net < window.minSignal - slack)
            low.fail(tube, against(CheckText::tr("net signal %1 is below %2"), *net, window.minSignal));
        if (net && *net > window.maxSignal + slack)
            high.fail(tube, against(CheckText::tr("net signal %1 is above %2"), *net, window.maxSignal));
    }
    std::vector<Check> checks;
    checks.push_back(low.finish(CheckText::tr("Too little to be measured well."), {}));
    checks.push_back(high.finish(CheckText::tr("More than the assay measures in proportion."), {}));
    return checks;
}

std::vector<Check> seriesChecks(const CheckContext &context, const TubeGroup &group)
{
    const TubeGroup judged = trusted(context, parted(context, group).counted);
    return hasSeries(context, judged) ? std::vector{finishedCheck(context, judged)} : std::vector<Check>{};
}

} // namespace plateau::evaluation
