// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/uncertainty.h"
#include "core/evaluation/wideuncertainty.h"

#include "tests/core/evaluation/found.h"
#include "tests/support/benches.h"
#include "tests/support/random.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <vector>

using namespace plateau;
using namespace Qt::StringLiterals;

namespace {

evaluation::Result resultOf(const run::Run &run)
{
    return evaluation::evaluate(test::risingMethod(), run).results.at(0);
}

run::Run statedRun()
{
    run::Run run = test::plainRun();
    run.uncertainty = test::uncertainties();
    return run;
}

} // namespace

TEST(Uncertainty, ReadingsAverageOverReplicatesAndTheBlankDoesNot)
{
    const evaluation::Result result = resultOf(statedRun());
    // two readings a tube, two tubes: u = 0.002 x sqrt(2) / sqrt(2); the one blank: 0.002 x sqrt(2)
    EXPECT_NEAR(test::termOf(result, u"repeatability"_s), 0.002 * test::risingFactor_g_per_L, 1e-12);
    EXPECT_NEAR(test::termOf(result, u"blank"_s), 0.002 * std::sqrt(2.0) * test::risingFactor_g_per_L, 1e-12);
}

TEST(Uncertainty, RelativeTermsScaleWithTheResult)
{
    const evaluation::Result result = resultOf(statedRun());
    EXPECT_NEAR(test::termOf(result, u"absorptivity"_s), *result.value * 0.005, 1e-12);
    EXPECT_NEAR(test::termOf(result, u"path length"_s), *result.value * 0.002, 1e-12);
    EXPECT_NEAR(test::termOf(result, u"total volume"_s), *result.value * 0.005, 1e-12);
    EXPECT_NEAR(test::termOf(result, u"sample volume"_s), *result.value * 0.008, 1e-12);
}

TEST(Uncertainty, EveryDilutionStepAndTheExtractHaveTheirTerm)
{
    run::Run run = statedRun();
    run.samples[0] = test::solid("S", 5, 100, {{5, 50}, {10, 25}});
    const evaluation::Result result = resultOf(run);
    EXPECT_NEAR(test::termOf(result, u"dilution step 1 (5 mL to 50 mL)"_s), *result.value * 0.004, 1e-12);
    EXPECT_NEAR(test::termOf(result, u"dilution step 2 (10 mL to 25 mL)"_s), *result.value * 0.004, 1e-12);
    EXPECT_NEAR(test::termOf(result, u"extract"_s), *result.value * 0.002, 1e-12);
}

TEST(Uncertainty, AStepsOwnUncertaintyComesBeforeTheRuns)
{
    run::Run run = statedRun();
    run.samples[0].dilution = {{5, 50, 0.15}, {10, 25}, {1, 10, 0.0}};
    const evaluation::Result result = resultOf(run);
    EXPECT_NEAR(test::termOf(result, u"dilution step 1 (5 mL to 50 mL)"_s), *result.value * 0.0015, 1e-12);
    EXPECT_NEAR(test::termOf(result, u"dilution step 2 (10 mL to 25 mL)"_s), *result.value * 0.004, 1e-12);
    EXPECT_EQ(test::termOf(result, u"dilution step 3 (1 mL to 10 mL)"_s), 0);

    // Independent of each other: the variance is the sum of the squares.
    run::Run less = run;
    less.samples[0].dilution = {{5, 50, 0.0}, {10, 25}, {1, 10, 0.0}};
    const evaluation::Result without = resultOf(less);
    const double u = *result.expandedUncertainty / *result.coverageFactor;
    const double uWithout = *without.expandedUncertainty / *without.coverageFactor;
    EXPECT_NEAR(u * u - uWithout * uWithout, std::pow(*result.value * 0.0015, 2), 1e-12);
}

TEST(Uncertainty, AStepsOwnUncertaintySaysNothingWhereTheRunStatesNone)
{
    run::Run run = test::plainRun();
    run.samples[0].dilution = {{5, 50, 0.15}};
    EXPECT_FALSE(resultOf(run).expandedUncertainty);
    EXPECT_TRUE(resultOf(run).budget.empty());
}

TEST(Uncertainty, ScatterOfTheReplicatesTakesOverWhenItIsLarger)
{
    run::Run run = statedRun();
    run.tubes[2] = test::sampleTube("S", 0.120, 0.650); // 0.020 apart
    const evaluation::Result result = resultOf(run);
    // s / sqrt(2) of two values d apart is d / 2
    EXPECT_NEAR(test::termOf(result, u"repeatability"_s), 0.010 * test::risingFactor_g_per_L, 1e-12);
    EXPECT_LT(*result.degreesOfFreedom, 30);
    EXPECT_GT(*result.coverageFactor, 2);
}

TEST(WideUncertainty, IsExplainedOfDuplicatesThatDisagreeAndOfNothingElse)
{
    run::Run run = statedRun();
    run.tubes[2] =
        test::sampleTube("S", 0.120, 0.670); // 0.040 apart: their scatter is nearly all of the budget
    evaluation::Result result = resultOf(run);
    ASSERT_LT(*result.degreesOfFreedom, 1.3);
    ASSERT_GT(*result.coverageFactor, 8);
    const QString said = evaluation::wideUncertaintyText(result);
    EXPECT_TRUE(said.startsWith(u"The uncertainty is wide because it rests on the scatter of only 2 tubes"_s))
        << said.toStdString();
    EXPECT_EQ(evaluation::narrowerUncertaintyText(result),
              u"A repeat of the sample with more tubes would narrow it."_s);
    run.tubes[2] = test::sampleTube("S", 0.120, 0.642); // 0.012 apart
    result = resultOf(run);
    ASSERT_LT(*result.coverageFactor, 4);
    EXPECT_EQ(evaluation::wideUncertaintyText(result), QString());
    EXPECT_EQ(evaluation::wideUncertaintyText(resultOf(test::plainRun())), QString())
        << "no uncertainty is stated";
}

TEST(WideUncertainty, BeginsAtTwiceTheUsualFactorAndNamesTheLargestPart)
{
    evaluation::Result result;
    result.value = 0.11;
    result.n = 2;
    result.expandedUncertainty = 0.14;
    result.coverageFactor = 4;
    result.budget = {{u"standard"_s, 0.03, 0.9}, {u"repeatability"_s, 0.01, 0.1}};
    EXPECT_TRUE(evaluation::wideUncertaintyText(result).contains(u"its largest part (standard)"_s));
    EXPECT_EQ(evaluation::narrowerUncertaintyText(result), u"More tubes of what that part comes from would narrow it."_s);
    result.coverageFactor = 3.99;
    EXPECT_EQ(evaluation::wideUncertaintyText(result), QString());
    result.coverageFactor = 13.9;
    result.lessThan = 0.05;
    EXPECT_EQ(evaluation::wideUncertaintyText(result), QString()) << "a bound has no uncertainty";
}

// What the sentence says of the largest part holds by the formula of Welch and Satterthwaite: a part that is
// known well and is the largest leaves four degrees of freedom at least.
TEST(WideUncertainty, IsSaidOnlyWhereTheLargestPartHasOneOrTwoDegreesOfFreedom)
{
    int wide = 0;
    for (unsigned seed = 1; seed <= 20000; ++seed) {
        test::Random random(seed);
        std::vector<evaluation::UncertaintyTerm> terms;
        for (int i = random.whole(1, 6); i > 0; --i)
            terms.push_back({{},
                             random.magnitude(0.01, 1),
                             random.oneOf(std::vector<double>{1, 1, 2, 3, 5, 10,
                                                              std::numeric_limits<double>::infinity()})});
        if (evaluation::coverageFactor(evaluation::effectiveDegreesOfFreedom(terms)) < 4)
            continue;
        ++wide;
        const auto largest =
            std::ranges::max_element(terms, {}, &evaluation::UncertaintyTerm::standardUncertainty);
        ASSERT_LE(largest->degreesOfFreedom, 2) << "seed " << seed;
    }
    EXPECT_GT(wide, 1000);
}

TEST(Uncertainty, BudgetIsSortedAndSharesAddUp)
{
    const evaluation::Result result = resultOf(statedRun());
    double sum = 0;
    double variance = 0;
    for (size_t i = 0; i < result.budget.size(); ++i) {
        sum += result.budget[i].share;
        variance += result.budget[i].standardUncertainty * result.budget[i].standardUncertainty;
        if (i > 0) {
            EXPECT_GE(result.budget[i - 1].standardUncertainty, result.budget[i].standardUncertainty);
        }
    }
    EXPECT_NEAR(sum, 1, 1e-12);
    EXPECT_EQ(*result.coverageFactor, 2);
    EXPECT_NEAR(*result.expandedUncertainty, 2 * std::sqrt(variance), 1e-14);
}

TEST(Uncertainty, WhatTheStandardSharesWithTheSampleCancels)
{
    run::Run run = statedRun();
    run.calibration = run::Calibration::Standard;
    run.standards = {{u"STD"_s, 0.2, {}, {}, {}, 0}};
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.71));
    const evaluation::Result result = resultOf(run);
    for (const QString &name : {u"absorptivity"_s, u"path length"_s, u"total volume"_s, u"sample volume"_s})
        EXPECT_EQ(test::termOf(result, name), 0) << name.toStdString();
    // value x u(dA_std) / dA_std with two readings
    EXPECT_NEAR(test::termOf(result, u"standard"_s), *result.value * 0.002 * std::sqrt(2.0) / 0.6, 1e-12);
    // the blank is taken off both: dc/dblank = -c (1/dA - 1/dA_std)
    EXPECT_NEAR(test::termOf(result, u"blank"_s),
                *result.value * (1 / 0.5 - 1 / 0.6) * 0.002 * std::sqrt(2.0), 1e-12);
}

TEST(Uncertainty, TheStandardsOwnConcentrationCountsOnlyWhereItCalibrates)
{
    run::Run run = statedRun();
    run.standards = {{u"STD"_s, 0.2, {}, {}, {}, 0, 1.5}};
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.71));
    EXPECT_EQ(test::termOf(resultOf(run), u"concentration of the standard"_s), 0);
    run.calibration = run::Calibration::Standard;
    const evaluation::Result result = resultOf(run);
    EXPECT_NEAR(test::termOf(result, u"concentration of the standard"_s), *result.value * 0.015, 1e-12);
    // The sample is diluted, read and blanked apart from it: the variances add up.
    run.standards[0].uncertainty_percent.reset();
    const evaluation::Result without = resultOf(run);
    EXPECT_EQ(test::termOf(without, u"concentration of the standard"_s), 0);
    const double u = *result.expandedUncertainty / *result.coverageFactor;
    const double uWithout = *without.expandedUncertainty / *without.coverageFactor;
    EXPECT_NEAR(u * u - uWithout * uWithout, std::pow(*result.value * 0.015, 2), 1e-12);
    // The second standard of a run does not calibrate, and says nothing.
    run.standards.push_back({u"CHECK"_s, 0.2, {}, {}, {}, 0, 5});
    run.tubes.push_back(test::standardTube("CHECK", 0.1, 0.70));
    EXPECT_EQ(test::termOf(resultOf(run), u"concentration of the standard"_s), 0);
}

TEST(Uncertainty, LevelsOfOneStockAreOffTogether)
{
    run::Run run = statedRun();
    run.calibration = run::Calibration::Line;
    for (int level = 1; level <= 4; ++level) {
        const QString id = u"L%1"_s.arg(level);
        run.standards.push_back({id, 0.05 * level, {}, {}, {}, 0, 1.5});
        run.tubes.push_back(test::standardTube(id.toLatin1().constData(), 0.1, 0.110 + 0.15 * level));
    }
    const evaluation::Result result = resultOf(run);
    // Every amount is off by the same part, and so is what is read back from the line: no averaging over
    // levels.
    EXPECT_NEAR(test::termOf(result, u"concentration of the standard"_s), *result.value * 0.015, 1e-12);
}

TEST(Uncertainty, LineTakesTheLargerOfScatterAndPropagatedReadings)
{
    run::Run run = statedRun();
    run.calibration = run::Calibration::Line;
    run.standards = {
        {u"L1"_s, 0.05, {}, {}, {}, 0}, {u"L2"_s, 0.10, {}, {}, {}, 0}, {u"L3"_s, 0.20, {}, {}, {}, 0}};
    const std::vector<double> amounts{0.005, 0.010, 0.020};
    const std::vector<double> signals{0.164, 0.314, 0.584}; // off the line by far more than 0.002
    for (size_t i = 0; i < 3; ++i)
        run.tubes.push_back(
            test::standardTube(run.standards[i].id.toLatin1().constData(), 0.1, 0.1 + 0.010 + signals[i]));
    const evaluation::Result result = resultOf(run);

    const double xMean = (0.005 + 0.010 + 0.020) / 3;
    const double yMean = std::accumulate(signals.begin(), signals.end(), 0.0) / 3;
    double sxx = 0;
    double sxy = 0;
    for (size_t i = 0; i < 3; ++i) {
        sxx += (amounts[i] - xMean) * (amounts[i] - xMean);
        sxy += (amounts[i] - xMean) * (signals[i] - yMean);
    }
    const double b = sxy / sxx;
    const double a = yMean - b * xMean;
    double residuals = 0;
    for (size_t i = 0; i < 3; ++i)
        residuals += std::pow(signals[i] - a - b * amounts[i], 2);
    const double s = std::sqrt(residuals / 1);
    const double x0 = (0.5 - a) / b;
    const double expected = s / b * std::sqrt(1.0 / 3 + (x0 - xMean) * (x0 - xMean) / sxx) / 0.1;
    EXPECT_NEAR(test::termOf(result, u"calibration line"_s), expected, 1e-10);
    EXPECT_NEAR(test::termOf(result, u"blank"_s), 0, 1e-12); // the intercept takes it up
}

TEST(Uncertainty, RunWithoutStatedUncertaintiesStatesNone)
{
    const evaluation::Result result = resultOf(test::plainRun());
    EXPECT_FALSE(result.expandedUncertainty);
    EXPECT_FALSE(result.coverageFactor);
    EXPECT_TRUE(result.budget.empty());
}

TEST(Uncertainty, EverythingStatedAsZeroIsZero)
{
    run::Run run = test::plainRun();
    run.uncertainty = run::UncertaintyInputs{};
    run.tubes[2] = run.tubes[1];
    const evaluation::Result result = resultOf(run);
    EXPECT_EQ(*result.expandedUncertainty, 0);
    EXPECT_EQ(*result.coverageFactor, 2);
}

TEST(CoverageFactor, TwoFromThirtyDegreesOfFreedomAndStudentBelow)
{
    EXPECT_EQ(evaluation::coverageFactor(std::numeric_limits<double>::infinity()), 2);
    EXPECT_EQ(evaluation::coverageFactor(30), 2);
    EXPECT_GT(evaluation::coverageFactor(29.9), 2.08);
    EXPECT_NEAR(evaluation::coverageFactor(1), 13.968, 5e-3); // JCGM 100, table G.2, prints 13.97
}

TEST(DegreesOfFreedom, WelchSatterthwaite)
{
    const std::vector<evaluation::UncertaintyTerm> equal{{{}, 1, 10}, {{}, 1, 10}, {{}, 1, 10}, {{}, 1, 10}};
    EXPECT_NEAR(evaluation::effectiveDegreesOfFreedom(equal), 40, 1e-12);
    const double infinite = std::numeric_limits<double>::infinity();
    const std::vector<evaluation::UncertaintyTerm> mixed{{{}, 3, infinite}, {{}, 4, 5}};
    EXPECT_NEAR(evaluation::combinedStandardUncertainty(mixed), 5, 1e-15);
    EXPECT_NEAR(evaluation::effectiveDegreesOfFreedom(mixed), 625.0 / (256.0 / 5), 1e-12);
}
