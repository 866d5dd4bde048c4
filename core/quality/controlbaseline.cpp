// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/controlbaseline.h"

#include "core/quality/statistics.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace plateau::quality {

namespace {

template <class Summary>
std::vector<double> ofSubgroups(std::span<const double> values, int size, const Summary &summary)
{
    const auto step = static_cast<std::size_t>(std::max(size, 1));
    std::vector<double> results;
    results.reserve(values.size() / step);
    for (std::size_t first = 0; first + step <= values.size(); first += step)
        results.push_back(summary(values.subspan(first, step)));
    return results;
}

} // namespace

double ControlBaseline::line(double deviations) const
{
    return std::max(centre + deviations * deviation, lowest);
}

double ControlBaseline::deviationsOf(double value) const
{
    return value == centre ? 0 : (value - centre) / deviation;
}

std::vector<double> movingRanges(std::span<const double> values)
{
    std::vector<double> ranges;
    for (std::size_t i = 1; i < values.size(); ++i)
        ranges.push_back(std::abs(values[i] - values[i - 1]));
    return ranges;
}

std::vector<double> subgroupMeans(std::span<const double> values, int size)
{
    return ofSubgroups(values, size, [](std::span<const double> group) { return *mean(group); });
}

std::vector<double> subgroupRanges(std::span<const double> values, int size)
{
    return ofSubgroups(values, size, [](std::span<const double> group) { return range(group); });
}

std::optional<ControlBaseline> baselineOfValues(std::span<const double> values, SpreadFrom spread,
                                                const ChartConstants &constants)
{
    if (values.size() < 2)
        return std::nullopt;
    const double deviation = spread == SpreadFrom::MovingRange ? *mean(movingRanges(values)) / constants.d2
                                                               : *standardDeviation(values);
    return ControlBaseline{*mean(values), deviation};
}

std::optional<ControlBaseline> baselineOfMeans(std::span<const double> means, std::span<const double> ranges,
                                               const ChartConstants &constants)
{
    if (means.empty() || means.size() != ranges.size())
        return std::nullopt;
    return ControlBaseline{*mean(means), constants.a2 * *mean(ranges) / 3};
}

std::optional<ControlBaseline> baselineOfRanges(std::span<const double> ranges,
                                                const ChartConstants &constants)
{
    if (ranges.empty())
        return std::nullopt;
    const double centre = *mean(ranges);
    return ControlBaseline{centre, (constants.upperD4 - 1) * centre / 3, 0};
}

ControlBaseline fixedBaselineOfMeans(double centre, double deviation, int size)
{
    return {centre, deviation / std::sqrt(size)};
}

ControlBaseline fixedBaselineOfRanges(double deviation, const ChartConstants &constants)
{
    return {constants.d2 * deviation, constants.d3 * deviation, 0};
}

} // namespace plateau::quality
