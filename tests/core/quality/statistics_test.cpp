// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/statistics.h"

#include <gtest/gtest.h>

#include <vector>

namespace plateau::quality {

TEST(Mean, OfNothingIsNothing)
{
    EXPECT_FALSE(mean({}).has_value());
}

TEST(Mean, OfEqualValuesIsThatValueToTheLastBit)
{
    EXPECT_EQ(mean(std::vector{0.1, 0.1, 0.1}), 0.1);
    EXPECT_EQ(mean(std::vector<double>(7, 0.512)), 0.512);
}

TEST(Mean, KeepsTheSmallPartBesideALargeOffset)
{
    EXPECT_DOUBLE_EQ(*mean(std::vector{1e9 + 0.25, 1e9 + 0.5, 1e9 + 0.75}), 1e9 + 0.5);
}

TEST(StandardDeviation, NeedsTwoValues)
{
    EXPECT_FALSE(standardDeviation({}).has_value());
    EXPECT_FALSE(standardDeviation(std::vector{0.3}).has_value());
    EXPECT_TRUE(standardDeviation(std::vector{0.3, 0.4}).has_value());
}

TEST(StandardDeviation, DividesByOneLessThanTheCount)
{
    // Deviations -3 -1 1 3: the sum of squares is 20, 20 / 3 is the variance.
    EXPECT_DOUBLE_EQ(*standardDeviation(std::vector{2.0, 4.0, 6.0, 8.0}), 2.581988897471611);
}

TEST(StandardDeviation, OfEqualValuesIsExactlyZero)
{
    EXPECT_EQ(standardDeviation(std::vector{0.1, 0.1, 0.1}), 0.0);
}

TEST(StandardDeviation, OfAPairIsItsDifferenceOverRootTwo)
{
    EXPECT_NEAR(*standardDeviation(std::vector{0.360, 0.368}), 0.008 / 1.4142135623730951, 1e-16);
}

TEST(Range, IsLargestLessSmallestInAnyOrder)
{
    EXPECT_EQ(range({}), 0);
    EXPECT_EQ(range(std::vector{4.0}), 0);
    EXPECT_EQ(range(std::vector{3.0, -1.5, 2.0}), 4.5);
}

TEST(Lag1Autocorrelation, OfAnAlternatingSeriesIsNegative)
{
    // Deviations 1 -1 1 -1: products -1 three times over a sum of squares of 4.
    EXPECT_DOUBLE_EQ(*lag1Autocorrelation(std::vector{2.0, 0.0, 2.0, 0.0}), -0.75);
}

TEST(Lag1Autocorrelation, OfASteadyRiseIsPositive)
{
    // Deviations -1.5 -0.5 0.5 1.5: (0.75 - 0.25 + 0.75) / 5.
    EXPECT_DOUBLE_EQ(*lag1Autocorrelation(std::vector{1.0, 2.0, 3.0, 4.0}), 0.25);
}

TEST(Lag1Autocorrelation, IsNothingWhereNothingVaries)
{
    EXPECT_FALSE(lag1Autocorrelation({}).has_value());
    EXPECT_FALSE(lag1Autocorrelation(std::vector{0.1, 0.1, 0.1}).has_value());
}

} // namespace plateau::quality
