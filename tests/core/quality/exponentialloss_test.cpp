// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/exponentialloss.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <limits>

namespace plateau::quality {

namespace {

constexpr std::array<double, 8> ages{0.5, 1, 2, 3.5, 5, 6, 7.5, 9};
constexpr std::array<double, 8> recoveries{99.6, 98.1, 97.2, 93.9, 91.8, 90.1, 87.0, 84.9};
constexpr std::array<double, 8> uncertainties{0.8, 0.8, 1.2, 0.8, 1.0, 0.8, 1.5, 0.9};

std::vector<AgedValue> values(bool withUncertainties)
{
    std::vector<AgedValue> all;
    for (std::size_t i = 0; i < ages.size(); ++i) {
        all.push_back({ages[i], recoveries[i]});
        if (withUncertainties)
            all.back().standardUncertainty = uncertainties[i];
    }
    return all;
}

} // namespace

// Expected values of the next two: uncentred normal equations in forty decimal digits, in another language,
// with t = 2.446911851144969.
TEST(ExponentialLoss, OfValuesAlikeAgreesWithAnIndependentComputation)
{
    const auto loss = fitExponentialLoss(values(false));
    ASSERT_TRUE(loss);
    EXPECT_FALSE(loss->isWeighted);
    EXPECT_NEAR(loss->lossPerHour, 0.01849714142867994, 1e-14);
    EXPECT_NEAR(loss->atStart, 100.4614487529887527, 1e-11);
    EXPECT_NEAR(loss->standardUncertainty.value(), 0.00045238091114189860, 1e-14);
    EXPECT_NEAR(loss->interval95->lowest, 0.01738958078145045, 1e-13);
    EXPECT_NEAR(loss->interval95->highest, 0.01960345367617407, 1e-13);
    EXPECT_NEAR(loss->relativeScatter.value(), 0.0037718012363284947, 1e-14);
    EXPECT_EQ(loss->degreesOfFreedom, 6);
}

TEST(ExponentialLoss, OfWeightedValuesAgreesWithAnIndependentComputation)
{
    const auto loss = fitExponentialLoss(values(true));
    ASSERT_TRUE(loss);
    EXPECT_TRUE(loss->isWeighted);
    EXPECT_NEAR(loss->lossPerHour, 0.0182111260355677157, 1e-14);
    EXPECT_NEAR(loss->atStart, 100.3358394726262316, 1e-11);
    EXPECT_NEAR(loss->standardUncertainty.value(), 0.00043749983635044999, 1e-14);
    EXPECT_NEAR(loss->interval95->lowest, 0.01714001864989735, 1e-13);
    EXPECT_NEAR(loss->interval95->highest, 0.0192810661430363, 1e-13);
    EXPECT_NEAR(loss->relativeScatter.value(), 0.003547822567592128, 1e-14);
}

TEST(ExponentialLoss, OfExactValuesIsTheLossTheyWereMadeWith)
{
    std::vector<AgedValue> exact;
    for (const double age : {0.0, 1.0, 3.0, 10.0})
        exact.push_back({age, 0.2 * std::pow(0.97, age)});
    const auto loss = fitExponentialLoss(exact);
    ASSERT_TRUE(loss);
    EXPECT_NEAR(loss->lossPerHour, 0.03, 1e-14);
    EXPECT_NEAR(loss->atStart, 0.2, 1e-14);
    EXPECT_LT(loss->standardUncertainty.value(), 1e-14);
    EXPECT_EQ(loss->youngest_h, 0);
    EXPECT_EQ(loss->oldest_h, 10);
}

TEST(ExponentialLoss, OfValuesThatRiseIsBelowZero)
{
    const auto loss = fitExponentialLoss(std::vector<AgedValue>{{0, 100}, {1, 102}, {2, 103}});
    ASSERT_TRUE(loss);
    EXPECT_LT(loss->lossPerHour, 0);
}

TEST(ExponentialLoss, OfTwoValuesHasNoUncertainty)
{
    const auto loss = fitExponentialLoss(std::vector<AgedValue>{{0, 100}, {2, 81}});
    ASSERT_TRUE(loss);
    EXPECT_NEAR(loss->lossPerHour, 0.1, 1e-14);
    EXPECT_FALSE(loss->standardUncertainty);
    EXPECT_FALSE(loss->interval95);
}

TEST(ExponentialLoss, IsNotFittedToWhatCannotBe)
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const std::vector<std::vector<AgedValue>> impossible{
        {},
        {{1, 100}},
        {{1, 100}, {1, 99}, {1, 98}},
        {{0, 100}, {1, 0}},
        {{0, -1}, {1, 5}},
        {{0, 100}, {nan, 99}},
        {{0, 100, 0.0}, {1, 99, 1.0}},
    };
    for (const auto &list : impossible)
        EXPECT_FALSE(fitExponentialLoss(list)) << list.size();
}

} // namespace plateau::quality
