// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checkfacts.h"

#include "core/evaluation/format.h"
#include "core/evaluation/sampleview.h"
#include "core/evaluation/standardage.h"
#include "core/quality/distributions.h"
#include "core/quality/statistics.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

/// Nearer than 1 is within: how much of the room between the middle and its limits is taken.
double strainIn(double value, double lower, double upper)
{
    const double half = (upper - lower) / 2;
    return half > 0 ? std::abs(value - (lower + half)) / half : 0;
}

CheckFact recovered(double recovery_percent, const assay::Interval &limits, LimitOrigin origin)
{
    const QStringList texts = comparedTexts(recovery_percent, {limits.lower, limits.upper}, 1);
    return {withUnit(texts[0], u"%"_s), CheckText::tr("%1 to %2").arg(texts[1], withUnit(texts[2], u"%"_s)),
            origin, strainIn(recovery_percent, limits.lower, limits.upper)};
}

} // namespace

LimitOrigin originOf(bool isUsual)
{
    return isUsual ? LimitOrigin::CommonPractice : LimitOrigin::Laboratory;
}

CheckFact upTo(double value, double limit, int decimals, const QString &unit, LimitOrigin origin)
{
    const QStringList texts = comparedTexts(value, {limit}, decimals);
    const auto written = [&](const QString &number) {
        return unit.isEmpty() ? number : withUnit(number, unit);
    };
    return {written(texts[0]), CheckText::tr("at most %1").arg(written(texts[1])), origin,
            limit > 0 ? std::abs(value) / limit : std::optional<double>()};
}

CheckFact agreementFact(const CheckContext &context, const Check &check, size_t measurand)
{
    const QString id = context.layout.method().measurands[measurand].id;
    const auto result = std::ranges::find_if(context.evaluation.results, [&](const Result &r) {
        return r.sample == check.scope.id && r.measurand == id;
    });
    std::map<double, std::vector<double>> byVolume;
    std::vector<double> values;
    for (const int tube : check.tubes) {
        const TubeValue &value = context.value(tube, measurand);
        if (!value.concentration_g_per_L)
            continue;
        values.push_back(*value.concentration_g_per_L);
        byVolume[value.sampleVolume_mL].push_back(*value.concentration_g_per_L);
    }
    if (check.id == CheckId::VolumeProportionality) {
        values.clear();
        for (const auto &[volume_mL, group] : byVolume)
            values.push_back(*quality::mean(group));
    }
    if (result == context.evaluation.results.end() || values.size() < 2)
        return {};
    const SampleView view = viewOf(context, *result);
    const double mean = *quality::mean(values);
    const int n = static_cast<int>(values.size());
    const double limit = rangeLimit(view, mean, n, check.tubes).first;
    const double relative = context.rules.relativeRepeatability;
    const double own =
        relative * std::abs(mean) * quality::criticalRangeFactor(n) / quality::criticalRangeFactor(2);
    LimitOrigin origin = originOf(relative == Rules{}.relativeRepeatability);
    if (context.layout.method().acceptance.repeatability)
        origin = LimitOrigin::Method;
    else if (limit > own * (1 + 1e-9))
        origin = LimitOrigin::Noise;
    return upTo(quality::range(values), limit, decimalsFor(limit, 3), u"g/L"_s, origin);
}

CheckFact standardFact(const CheckContext &context, const Check &check, size_t measurand)
{
    const QString id = context.layout.method().measurands[measurand].id;
    const auto found = std::ranges::find_if(context.evaluation.standards, [&](const StandardRecovery &s) {
        return s.standard == check.scope.id && s.measurand == id;
    });
    const auto &limits = context.layout.method().acceptance.standardRecovery_percent;
    if (found == context.evaluation.standards.end() || !found->recovery_percent || !limits)
        return {};
    CheckFact fact = recovered(*found->recovery_percent, *limits, LimitOrigin::Method);
    fact.found = CheckText::tr("%1 of %2")
                     .arg(fact.found, withUnit(significantText(found->expected_g_per_L, 3), u"g/L"_s));
    return fact;
}

CheckFact spikeFact(const CheckContext &context, const Check &check, size_t measurand)
{
    const QString id = context.layout.method().measurands[measurand].id;
    const auto found = std::ranges::find_if(context.evaluation.spikes, [&](const SpikeRecovery &s) {
        return s.sample == check.scope.id && s.measurand == id;
    });
    if (found == context.evaluation.spikes.end() || !found->recovery_percent)
        return {};
    const auto &own = context.layout.method().acceptance.spikeRecovery_percent;
    return recovered(*found->recovery_percent, own.value_or(context.rules.spikeRecovery_percent),
                     own ? LimitOrigin::Method
                         : originOf(context.rules.spikeRecovery_percent == Rules{}.spikeRecovery_percent));
}

CheckFact ageFact(const CheckContext &context, const Check &check)
{
    const run::Standard *standard = run::findStandard(context.layout.run(), check.scope.id);
    const Rules &rules = context.rules;
    const auto age = standard ? ageOf(*standard, context.layout.run(), rules) : std::nullopt;
    if (!age)
        return {};
    const Rules usual;
    return {CheckText::tr("%1, %2 left")
                .arg(withUnit(significantText(age->age_h, 3), u"h"_s),
                     withUnit(significantText(100 * age->remaining, 3), u"%"_s)),
            CheckText::tr("at most %1, at least %2 left")
                .arg(withUnit(plainText(rules.maxStandardAge_h), u"h"_s),
                     withUnit(plainText(100 * rules.minStandardRemaining), u"%"_s)),
            originOf(rules.maxStandardAge_h == usual.maxStandardAge_h &&
                     rules.minStandardRemaining == usual.minStandardRemaining),
            std::max(age->age_h / rules.maxStandardAge_h,
                     age->remaining > 0 ? rules.minStandardRemaining / age->remaining : 2)};
}

} // namespace plateau::evaluation
