// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/controlbaseline.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace plateau::quality {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

namespace {

/// Mean and standard deviation of the range of n normal values, by another way than the table was made: the
/// mean as an integral over 1 - cdf^n - (1 - cdf)^n, the square over the joint density of the two ends.
struct Moments {
    double mean = 0;
    double deviation = 0;
};

double below(double z)
{
    return std::erfc(-z / std::numbers::sqrt2) / 2;
}

double density(double z)
{
    return std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi);
}

Moments momentsOfRange(int n)
{
    constexpr double step = 1.0 / 64;
    constexpr double end = 8.5;
    Moments moments;
    for (double z = -end; z <= end; z += step)
        moments.mean += step * (1 - std::pow(below(z), n) - std::pow(1 - below(z), n));
    double squares = 0;
    constexpr double coarse = 1.0 / 32;
    for (double low = -end; low <= end; low += coarse) {
        for (double high = low; high <= end; high += coarse) {
            const double joint =
                n * (n - 1) * std::pow(below(high) - below(low), n - 2) * density(low) * density(high);
            squares += coarse * coarse * (high - low) * (high - low) * joint;
        }
    }
    moments.deviation = std::sqrt(squares - moments.mean * moments.mean);
    return moments;
}

} // namespace

TEST(ChartConstants, OfRangesAgreeWithAnotherIntegration)
{
    for (const int n : {2, 3, 5, 10, 25}) {
        const Moments moments = momentsOfRange(n);
        const ChartConstants constants = chartConstants(n).value();
        EXPECT_NEAR(constants.d2, moments.mean, 1e-9) << n;
        EXPECT_NEAR(constants.d3, moments.deviation, 2e-4) << n;
    }
}

TEST(ChartConstants, OfTwoHaveAClosedForm)
{
    const ChartConstants constants = chartConstants(2).value();
    EXPECT_NEAR(constants.d2, 2 / std::sqrt(std::numbers::pi), 1e-14);
    EXPECT_NEAR(constants.d3, std::sqrt(2 - 4 / std::numbers::pi), 1e-13);
    EXPECT_NEAR(constants.c4, std::sqrt(2 / std::numbers::pi), 1e-14);
    EXPECT_EQ(constants.lowerD3, 0);
}

TEST(ChartConstants, AreOfSubgroupsThatThereAre)
{
    EXPECT_FALSE(chartConstants(1));
    EXPECT_TRUE(chartConstants(25));
    EXPECT_FALSE(chartConstants(26));
    EXPECT_FALSE(printedChartConstants(1));
    EXPECT_TRUE(printedChartConstants(10));
    EXPECT_FALSE(printedChartConstants(11));
}

TEST(ControlBaseline, HasItsLinesAndItsFloor)
{
    const ControlBaseline values{10, 2};
    EXPECT_EQ(values.line(3), 16);
    EXPECT_EQ(values.line(-2), 6);
    EXPECT_EQ(values.deviationsOf(7), -1.5);
    const ControlBaseline ranges{1, 0.5, 0};
    EXPECT_EQ(ranges.line(-3), 0);
    EXPECT_EQ(ranges.line(3), 2.5);
}

TEST(ControlBaseline, WithoutScatterTellsOnlyTheCentreFromTheRest)
{
    const ControlBaseline baseline{10, 0};
    EXPECT_EQ(baseline.deviationsOf(10), 0);
    EXPECT_EQ(baseline.deviationsOf(10.1), std::numeric_limits<double>::infinity());
    EXPECT_EQ(baseline.deviationsOf(9), -std::numeric_limits<double>::infinity());
}

TEST(Subgroups, LeaveOutWhatMakesNone)
{
    const std::vector<double> values{1, 3, 5, 9, 100};
    EXPECT_THAT(subgroupMeans(values, 2), ElementsAre(2, 7));
    EXPECT_THAT(subgroupRanges(values, 2), ElementsAre(2, 4));
    EXPECT_THAT(movingRanges(values), ElementsAre(2, 2, 4, 91));
    EXPECT_THAT(subgroupMeans(values, 6), IsEmpty());
    EXPECT_THAT(movingRanges(std::vector<double>{1}), IsEmpty());
}

TEST(Baselines, ComeFromNothingOnlyAsNothing)
{
    const ChartConstants two = chartConstants(2).value();
    EXPECT_FALSE(baselineOfValues(std::vector<double>{1}, SpreadFrom::MovingRange, two));
    EXPECT_FALSE(baselineOfMeans({}, {}, two));
    EXPECT_FALSE(baselineOfMeans(std::vector<double>{1, 2}, std::vector<double>{1}, two));
    EXPECT_FALSE(baselineOfRanges({}, two));
}

TEST(Baselines, BySpreadOfAllValuesSeeASlowDrift)
{
    const ChartConstants two = chartConstants(2).value();
    const std::vector<double> drifting{1, 2, 3, 4, 5};
    EXPECT_DOUBLE_EQ(baselineOfValues(drifting, SpreadFrom::MovingRange, two)->deviation, 1 / two.d2);
    EXPECT_DOUBLE_EQ(baselineOfValues(drifting, SpreadFrom::StandardDeviation, two)->deviation,
                     std::sqrt(2.5));
}

TEST(Baselines, FixedByTheLaboratoryFollowTheSubgroup)
{
    EXPECT_EQ(fixedBaselineOfMeans(100, 2, 4), (ControlBaseline{100, 1}));
    const ChartConstants five = chartConstants(5).value();
    const ControlBaseline ranges = fixedBaselineOfRanges(2, five);
    EXPECT_DOUBLE_EQ(ranges.centre, 2 * five.d2);
    EXPECT_DOUBLE_EQ(ranges.line(3), 2 * (five.d2 + 3 * five.d3));
    EXPECT_EQ(ranges.line(-3), 0);
}

} // namespace plateau::quality
