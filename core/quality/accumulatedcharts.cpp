// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/accumulatedcharts.h"

#include <algorithm>
#include <cmath>

namespace plateau::quality {

std::vector<WeightedAverage> weightedAverages(std::span<const double> values, const ControlBaseline &baseline,
                                              double lambda, double width)
{
    std::vector<WeightedAverage> averages;
    averages.reserve(values.size());
    double average = baseline.centre;
    double forgotten = 1; // (1 - lambda)^(2i)
    for (const double value : values) {
        average = lambda * value + (1 - lambda) * average;
        forgotten *= (1 - lambda) * (1 - lambda);
        const double aside = width * baseline.deviation * std::sqrt(lambda / (2 - lambda) * (1 - forgotten));
        averages.push_back({average, baseline.centre - aside, baseline.centre + aside});
    }
    return averages;
}

std::vector<CumulativeSum> cumulativeSums(std::span<const double> values, double centre, double k)
{
    std::vector<CumulativeSum> sums;
    sums.reserve(values.size());
    CumulativeSum sum;
    for (const double value : values) {
        sum.above = std::max(0.0, sum.above + value - centre - k);
        sum.below = std::max(0.0, sum.below + centre - k - value);
        sum.plain += value - centre;
        sums.push_back(sum);
    }
    return sums;
}

} // namespace plateau::quality
