// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/chartbasis.h"

#include <algorithm>
#include <cmath>

namespace plateau::charts {

namespace {

/// The size of the group whose range is plotted: two follow each other, or were measured side by side.
int rangeSize(const Settings &settings)
{
    return settings.kind == Kind::MeanAndRange ? settings.subgroup : 2;
}

Baselines fixedBaselines(const FixedLimits &limits, const Settings &settings,
                         const quality::ChartConstants &constants)
{
    Baselines baselines;
    baselines.basis.isFixed = true;
    baselines.basis.centre = limits.centre;
    baselines.basis.deviation = limits.deviation;
    const int size = settings.kind == Kind::MeanAndRange ? settings.subgroup : 1;
    if (settings.kind != Kind::Ranges)
        baselines.values = quality::fixedBaselineOfMeans(limits.centre, limits.deviation, size);
    baselines.ranges = quality::fixedBaselineOfRanges(limits.deviation, constants);
    return baselines;
}

/// The values of the earlier runs, and the runs they begin and end with.
std::vector<double> earlierValues(const Series &whole, const EarlierRuns &earlier, Basis &basis)
{
    const auto isFirst = [&](const Point &point) { return point.run->run == earlier.firstRun; };
    const auto isLater = [&](const Point &point) { return point.run->run > earlier.firstRun; };
    auto point = whole.begin();
    if (earlier.firstRun != 0)
        point = std::ranges::find_if(whole, isFirst);
    if (point == whole.end())
        point = std::ranges::find_if(whole, isLater);
    std::vector<double> values;
    for (; point != whole.end() && static_cast<int>(values.size()) < earlier.values; ++point) {
        if (point->omission || !point->isAccepted)
            continue;
        if (values.empty())
            basis.firstRun = point->run->run;
        basis.lastRun = point->run->run;
        values.push_back(point->value);
    }
    basis.values = static_cast<int>(values.size());
    basis.isIncomplete = basis.values < earlier.values;
    return values;
}

std::optional<Baselines> earlierBaselines(const Series &whole, const EarlierRuns &earlier,
                                          const Settings &settings, const quality::ChartConstants &constants)
{
    Baselines baselines;
    const std::vector<double> values = earlierValues(whole, earlier, baselines.basis);
    if (baselines.basis.values < valuesForLimits(settings))
        return std::nullopt;
    baselines.basis.isProvisional = baselines.basis.values < valuesForVerdict(settings);
    if (settings.kind == Kind::Ranges) {
        baselines.ranges = quality::baselineOfRanges(values, constants);
        if (!baselines.ranges)
            return std::nullopt;
        baselines.basis.centre = baselines.ranges->centre;
        baselines.basis.deviation = baselines.ranges->centre / constants.d2;
        return baselines;
    }
    if (settings.kind == Kind::MeanAndRange) {
        const auto ranges = quality::subgroupRanges(values, settings.subgroup);
        baselines.values =
            quality::baselineOfMeans(quality::subgroupMeans(values, settings.subgroup), ranges, constants);
        baselines.ranges = quality::baselineOfRanges(ranges, constants);
    } else {
        baselines.values = quality::baselineOfValues(values, earlier.spread, constants);
        baselines.ranges = quality::baselineOfRanges(quality::movingRanges(values), constants);
    }
    if (!baselines.values)
        return std::nullopt;
    baselines.basis.centre = baselines.values->centre;
    baselines.basis.deviation = settings.kind == Kind::MeanAndRange
                                    ? baselines.values->deviation * std::sqrt(settings.subgroup)
                                    : baselines.values->deviation;
    return baselines;
}

} // namespace

std::optional<Baselines> baselinesOf(const Series &whole, const Settings &settings)
{
    const auto constants = constantsOf(settings.constants, rangeSize(settings));
    if (!constants)
        return std::nullopt;
    if (const auto *fixed = std::get_if<FixedLimits>(&settings.limits))
        return fixedBaselines(*fixed, settings, *constants);
    return earlierBaselines(whole, std::get<EarlierRuns>(settings.limits), settings, *constants);
}

} // namespace plateau::charts
