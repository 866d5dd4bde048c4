// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/statistics.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numeric>

namespace plateau::quality {

namespace {

bool isConstant(std::span<const double> values)
{
    return std::all_of(values.begin(), values.end(), [&](double v) { return v == values.front(); });
}

double sumOfSquaredDeviations(std::span<const double> values, double centre)
{
    double sum = 0;
    for (const double value : values)
        sum += (value - centre) * (value - centre);
    return sum;
}

} // namespace

std::optional<double> mean(std::span<const double> values)
{
    if (values.empty())
        return std::nullopt;
    const auto n = static_cast<double>(values.size());
    const double first = std::accumulate(values.begin(), values.end(), 0.0) / n;
    // The second pass takes back what the long sum lost to rounding: three readings of 0.1 average to 0.1.
    double remainder = 0;
    for (const double value : values)
        remainder += value - first;
    return first + remainder / n;
}

std::optional<double> standardDeviation(std::span<const double> values)
{
    if (values.size() < 2)
        return std::nullopt;
    if (isConstant(values))
        return 0;
    return std::sqrt(sumOfSquaredDeviations(values, *mean(values)) / static_cast<double>(values.size() - 1));
}

double range(std::span<const double> values)
{
    if (values.empty())
        return 0;
    const auto [smallest, largest] = std::minmax_element(values.begin(), values.end());
    return *largest - *smallest;
}

std::optional<double> lag1Autocorrelation(std::span<const double> values)
{
    if (values.empty() || isConstant(values))
        return std::nullopt;
    const double centre = *mean(values);
    double products = 0;
    for (std::size_t i = 0; i + 1 < values.size(); ++i)
        products += (values[i] - centre) * (values[i + 1] - centre);
    return products / sumOfSquaredDeviations(values, centre);
}

} // namespace plateau::quality
