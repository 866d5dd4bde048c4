// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/line.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace plateau::quality {

namespace {

const std::vector x{1.0, 2.0, 3.0, 4.0};
const std::vector y{2.1, 3.9, 6.2, 7.8};

} // namespace

TEST(FitLine, GivesTheHandCalculatedFigures)
{
    // Means 2.5 and 5.0; Sxx 5, Sxy 9.7, Syy 18.9; residuals 0.01 -0.13 0.23 -0.11.
    const auto line = fitLine(x, y);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->n, 4);
    EXPECT_DOUBLE_EQ(line->xMean, 2.5);
    EXPECT_DOUBLE_EQ(line->yMean, 5.0);
    EXPECT_DOUBLE_EQ(line->sxx, 5.0);
    EXPECT_NEAR(line->slope, 1.94, 1e-14);
    EXPECT_NEAR(line->intercept, 0.15, 1e-14);
    EXPECT_NEAR(line->residualSumOfSquares, 0.082, 1e-14);
    EXPECT_NEAR(line->residualStandardDeviation.value(), std::sqrt(0.041), 1e-14);
    EXPECT_NEAR(line->slopeStandardError.value(), std::sqrt(0.041 / 5), 1e-14);
    EXPECT_NEAR(line->interceptStandardError.value(), std::sqrt(0.041 * (0.25 + 6.25 / 5)), 1e-14);
    EXPECT_NEAR(line->rSquared.value(), 1 - 0.082 / 18.9, 1e-14);
}

TEST(FitLine, RefusesWhatHasNoLine)
{
    EXPECT_FALSE(fitLine({}, {}));
    EXPECT_FALSE(fitLine(std::vector{1.0}, std::vector{2.0}));
    EXPECT_FALSE(fitLine(x, std::vector{1.0, 2.0, 3.0}));
    // Three times 0.1 does not add up to 0.3 in binary; it is still one and the same x.
    EXPECT_FALSE(fitLine(std::vector{0.1, 0.1, 0.1}, std::vector{1.0, 2.0, 3.0}));
}

TEST(FitLine, ThroughTwoPointsHasNoStandardErrors)
{
    const auto line = fitLine(std::vector{0.0, 2.0}, std::vector{1.0, 5.0});
    ASSERT_TRUE(line);
    EXPECT_DOUBLE_EQ(line->slope, 2.0);
    EXPECT_DOUBLE_EQ(line->intercept, 1.0);
    EXPECT_FALSE(line->residualStandardDeviation);
    EXPECT_FALSE(line->slopeStandardError);
    EXPECT_FALSE(line->interceptStandardError);
}

TEST(FitLine, ThroughALevelSeriesHasNoRSquared)
{
    const auto line = fitLine(x, std::vector<double>(4, 0.1));
    ASSERT_TRUE(line);
    EXPECT_NEAR(line->slope, 0, 1e-15);
    EXPECT_FALSE(line->rSquared);
}

TEST(FitLineThroughOrigin, GivesTheHandCalculatedFigures)
{
    // Sum x^2 30, sum xy 59.7: slope 1.99; residuals 0.11 -0.08 0.23 -0.16, squares 0.097.
    const auto line = fitLineThroughOrigin(x, y);
    ASSERT_TRUE(line);
    EXPECT_TRUE(line->throughOrigin);
    EXPECT_EQ(line->intercept, 0);
    EXPECT_NEAR(line->slope, 1.99, 1e-14);
    EXPECT_NEAR(line->residualSumOfSquares, 0.097, 1e-13);
    EXPECT_NEAR(line->slopeStandardError.value(), std::sqrt(0.097 / 3 / 30), 1e-14);
    EXPECT_FALSE(line->interceptStandardError);
}

TEST(FitLineThroughOrigin, NeedsOnePointAwayFromIt)
{
    EXPECT_FALSE(fitLineThroughOrigin({}, {}));
    EXPECT_FALSE(fitLineThroughOrigin(std::vector{0.0, 0.0}, std::vector{1.0, 2.0}));
    const auto line = fitLineThroughOrigin(std::vector{2.0}, std::vector{3.0});
    ASSERT_TRUE(line);
    EXPECT_EQ(line->slope, 1.5);
    EXPECT_FALSE(line->residualStandardDeviation);
}

TEST(ReadBack, WidensAwayFromTheMiddleAndNarrowsWithReadings)
{
    const auto line = fitLine(x, y);
    ASSERT_TRUE(line);
    const double sOverB = std::sqrt(0.041) / 1.94;
    const auto middle = readBack(*line, 5.0, 1);
    ASSERT_TRUE(middle);
    EXPECT_NEAR(middle->x, 2.5, 1e-14);
    EXPECT_NEAR(middle->standardUncertainty.value(), sOverB * std::sqrt(1 + 0.25), 1e-14);
    const auto edge = readBack(*line, 0.15 + 1.94 * 4, 2);
    EXPECT_NEAR(edge->standardUncertainty.value(), sOverB * std::sqrt(0.5 + 0.25 + 2.25 / 5), 1e-14);
}

TEST(ReadBack, WithoutReadingsGivesTheLinesOwnPart)
{
    const auto line = fitLine(x, y);
    EXPECT_NEAR(readBack(*line, 5.0, 0)->standardUncertainty.value(), std::sqrt(0.041) / 1.94 * 0.5, 1e-14);
}

TEST(ReadBack, ThroughTheOriginIsCertainAtTheOrigin)
{
    const auto line = fitLineThroughOrigin(x, y);
    EXPECT_EQ(readBack(*line, 0, 0)->standardUncertainty, 0.0);
    const double s = std::sqrt(0.097 / 3);
    EXPECT_NEAR(readBack(*line, 1.99 * 3, 1)->standardUncertainty.value(), s / 1.99 * std::sqrt(1 + 9.0 / 30),
                1e-14);
}

TEST(ReadBack, OnAFallingLineHasAPositiveUncertainty)
{
    const auto line = fitLine(x, std::vector{7.8, 6.2, 3.9, 2.1});
    EXPECT_GT(readBack(*line, 5.0, 1)->standardUncertainty.value(), 0);
}

TEST(ReadBack, OnALevelLineIsNothing)
{
    Line level;
    level.n = 3;
    EXPECT_FALSE(readBack(level, 1.0, 1));
}

TEST(ReadBack, OnALineThroughTwoPointsHasNoUncertainty)
{
    const auto line = fitLine(std::vector{0.0, 2.0}, std::vector{1.0, 5.0});
    const auto back = readBack(*line, 3.0, 1);
    ASSERT_TRUE(back);
    EXPECT_DOUBLE_EQ(back->x, 1.0);
    EXPECT_FALSE(back->standardUncertainty);
}

} // namespace plateau::quality
