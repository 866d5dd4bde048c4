// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/distributions.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace plateau::quality {

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

/// Another form of the same distribution (over all values that are not the largest), by another quadrature.
double partOfRangesUpTo(double w, int n)
{
    const boost::math::normal normal;
    const auto integrand = [&](double largest) {
        return n * pdf(normal, largest) * std::pow(cdf(normal, largest) - cdf(normal, largest - w), n - 1);
    };
    double sum = 0;
    for (int from = -9; from < 9; ++from)
        sum += boost::math::quadrature::gauss_kronrod<double, 31>::integrate(integrand, from, from + 1, 5,
                                                                             1e-13);
    return sum;
}

} // namespace

TEST(StudentAbove, IsTheOtherWayRoundOfTheTwoSidedPoint)
{
    for (const double degreesOfFreedom : {1.0, 4.5, 30.0, infinity}) {
        for (const double coverage : {0.1, 0.9, 0.9545, 0.999}) {
            const double t = studentTwoSided(coverage, degreesOfFreedom);
            EXPECT_NEAR(studentAbove(t, degreesOfFreedom), (1 - coverage) / 2, 1e-12);
            EXPECT_NEAR(studentAbove(-t, degreesOfFreedom), (1 + coverage) / 2, 1e-12);
        }
        EXPECT_DOUBLE_EQ(studentAbove(0, degreesOfFreedom), 0.5);
        EXPECT_EQ(studentAbove(infinity, degreesOfFreedom), 0);
        EXPECT_EQ(studentAbove(-infinity, degreesOfFreedom), 1);
    }
    EXPECT_TRUE(std::isnan(studentAbove(1, 0)));
    EXPECT_TRUE(std::isnan(studentAbove(std::nan(""), 4)));
}

TEST(StudentTwoSided, TakesDegreesOfFreedomThatAreNotWhole)
{
    const double below = studentTwoSided(0.9545, 16);
    const double between = studentTwoSided(0.9545, 16.66);
    const double above = studentTwoSided(0.9545, 17);
    EXPECT_LT(between, below);
    EXPECT_GT(between, above);
}

TEST(StudentTwoSided, WithOneDegreeOfFreedomIsCauchys)
{
    // t = tan(pi coverage / 2)
    for (const double coverage : {0.5, 0.9, 0.9545, 0.999})
        EXPECT_NEAR(studentTwoSided(coverage, 1) / std::tan(std::acos(-1.0) * coverage / 2), 1, 1e-13)
            << coverage;
}

TEST(StudentTwoSided, WithTwoDegreesOfFreedomHasAClosedForm)
{
    // coverage = t / sqrt(2 + t^2)
    for (const double coverage : {0.5, 0.9, 0.9545, 0.999})
        EXPECT_NEAR(studentTwoSided(coverage, 2), coverage * std::sqrt(2 / (1 - coverage * coverage)), 1e-12)
            << coverage;
}

TEST(StudentTwoSided, WithInfiniteDegreesOfFreedomIsNormal)
{
    EXPECT_NEAR(studentTwoSided(0.9545, infinity), 2.0000024438996027, 1e-12);
    EXPECT_NEAR(studentTwoSided(0.95, infinity), 1.9599639845400545, 1e-14);
    EXPECT_NEAR(studentTwoSided(0.95, 1e12), 1.9599639845400545, 1e-9);
    EXPECT_NEAR(studentTwoSided(0.95, 1e300), 1.9599639845400545, 1e-9);
    // So few degrees of freedom that the tail is enormous: still a number, and a large one.
    EXPECT_GT(studentTwoSided(0.95, 0.05), 1e20);
}

TEST(StudentTwoSided, OfNonsenseIsNotANumber)
{
    for (const double coverage : {0.0, 1.0, -0.5, 1.5, std::nan("")})
        EXPECT_TRUE(std::isnan(studentTwoSided(coverage, 10))) << coverage;
    for (const double degreesOfFreedom : {0.0, -1.0, -infinity, std::nan("")})
        EXPECT_TRUE(std::isnan(studentTwoSided(0.95, degreesOfFreedom))) << degreesOfFreedom;
}

TEST(StudentisedRange, OfTwoIsRootTwoTimesTheNormalPoint)
{
    for (const double coverage : {0.5, 0.9, 0.95, 0.99, 0.999})
        EXPECT_NEAR(studentisedRange(coverage, 2), std::sqrt(2.0) * studentTwoSided(coverage, infinity),
                    1e-11)
            << coverage;
}

TEST(StudentisedRange, HoldsAgainstAnotherIntegration)
{
    for (const int n : {2, 3, 5, 10, 30, 100})
        for (const double coverage : {0.9, 0.95, 0.99})
            EXPECT_NEAR(partOfRangesUpTo(studentisedRange(coverage, n), n), coverage, 1e-11) << n;
}

TEST(StudentisedRange, OfNonsenseIsNotANumber)
{
    EXPECT_TRUE(std::isnan(studentisedRange(0.95, 1)));
    EXPECT_TRUE(std::isnan(studentisedRange(1, 3)));
}

TEST(CriticalRangeFactor, TableAgreesWithTheIntegration)
{
    for (int n = 2; n <= 30; ++n)
        EXPECT_NEAR(criticalRangeFactor(n), studentisedRange(0.95, n), 1e-11) << n;
}

TEST(CriticalRangeFactor, GrowsOnBeyondTheTable)
{
    for (int n = 3; n <= 100; ++n)
        EXPECT_GT(criticalRangeFactor(n), criticalRangeFactor(n - 1)) << n;
    EXPECT_NEAR(partOfRangesUpTo(criticalRangeFactor(100), 100), 0.95, 1e-11);
}

TEST(CriticalRangeFactor, OfFewerThanTwoIsNotANumber)
{
    EXPECT_TRUE(std::isnan(criticalRangeFactor(1)));
    EXPECT_TRUE(std::isnan(criticalRangeFactor(-3)));
}

} // namespace plateau::quality
