// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/published/montecarlo.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>

namespace plateau::published {

namespace {

constexpr double tail = 0.02275; // on either side of 95.45 %

double quantile(std::vector<double> &values, double part)
{
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(part * static_cast<double>(values.size()));
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

} // namespace

Distribution propagate(const HandCalculation &calculation, int draws, unsigned seed)
{
    Inputs inputs(seed);
    std::vector<double> values;
    values.reserve(static_cast<std::size_t>(draws));
    for (int i = 0; i < draws; ++i)
        values.push_back(calculation(inputs));
    const double n = draws;
    Distribution result;
    for (const double value : values)
        result.mean += value / n;
    double second = 0;
    double fourth = 0;
    for (const double value : values) {
        const double square = (value - result.mean) * (value - result.mean);
        second += square / n;
        fourth += square * square / n;
    }
    result.standardDeviation = std::sqrt(second * n / (n - 1));
    result.standardError = std::sqrt((fourth - second * second) / n) / (2 * result.standardDeviation);
    result.lower = quantile(values, tail);
    result.upper = quantile(values, 1 - tail);
    const double density = 0.05399; // of the normal distribution at 2
    result.endStandardError = std::sqrt(tail * (1 - tail) / n) / density * result.standardDeviation;
    return result;
}

void expectSameUncertainty(const evaluation::Result &result, const HandCalculation &calculation)
{
    Inputs stated;
    const double value = calculation(stated);
    ASSERT_TRUE(result.value && result.expandedUncertainty && result.coverageFactor);
    EXPECT_NEAR(*result.value, value, 1e-12 * std::abs(value));
    EXPECT_EQ(result.coverageFactor, 2);
    EXPECT_EQ(result.degreesOfFreedom, std::numeric_limits<double>::infinity());

    const double u = *result.expandedUncertainty / *result.coverageFactor;
    const Distribution drawn = propagate(calculation, 200000, 20260302);
    EXPECT_NEAR(u, drawn.standardDeviation, 4 * drawn.standardError);
    const double curvature = 0.05 * u;
    const double tolerance = curvature + 4 * drawn.endStandardError;
    EXPECT_NEAR(*result.value - *result.expandedUncertainty, drawn.lower, tolerance);
    EXPECT_NEAR(*result.value + *result.expandedUncertainty, drawn.upper, tolerance);

    double variance = 0;
    double shares = 0;
    for (const evaluation::BudgetTerm &term : result.budget) {
        variance += term.standardUncertainty * term.standardUncertainty;
        shares += term.share;
    }
    EXPECT_NEAR(std::sqrt(variance), u, 1e-12 * u);
    EXPECT_NEAR(shares, 1, 1e-12);
}

} // namespace plateau::published
