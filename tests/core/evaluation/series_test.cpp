// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/evaluation.h"

#include "core/evaluation/layout.h"
#include "tests/core/evaluation/found.h"
#include "tests/support/benches.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace plateau;
using namespace Qt::StringLiterals;
using evaluation::CheckId;

namespace {

assay::Method creeping()
{
    assay::Method method = test::risingMethod();
    method.extrapolate = assay::Extrapolation{u"A2"_s, 4};
    return method;
}

run::Run withSeries(const run::ReadingSeries &series)
{
    run::Run run = test::plainRun();
    run.tubes.pop_back();
    run.tubes[1].readings[u"A2"_s] = series;
    return run;
}

} // namespace

TEST(Series, CreepIsExtrapolatedToTheStarter)
{
    // ends at 10 min, then creeps by 0.002 a minute from 0.600 at the start
    const run::Run run =
        withSeries({{5, 0.450}, {10, 0.615}, {15, 0.630}, {20, 0.640}, {25, 0.650}, {30, 0.660}});
    const auto evaluation = evaluation::evaluate(creeping(), run);
    EXPECT_NEAR(*evaluation.tubes[1].signal, 0.600 - 0.120, 1e-12);
    ASSERT_EQ(evaluation.series.size(), 1U);
    EXPECT_NEAR(evaluation.series[0].slope_per_min, 0.002, 1e-12);
    EXPECT_NEAR(evaluation.series[0].atStart, 0.600, 1e-12);
    EXPECT_EQ(evaluation.series[0].points, 4);
    EXPECT_TRUE(evaluation.series[0].ended);
    EXPECT_TRUE(evaluation.acceptable);
}

TEST(Series, ReactionThatStillSlowsDownHasNotEnded)
{
    const run::Run run = withSeries({{15, 0.500}, {20, 0.560}, {25, 0.590}, {30, 0.605}});
    const auto evaluation = evaluation::evaluate(creeping(), run);
    EXPECT_FALSE(evaluation.series[0].ended);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::ReactionUnfinished, u"sample S"_s)->passed);
    EXPECT_EQ(evaluation.results[0].verdict, evaluation::Verdict::Investigate);
}

TEST(Series, TooFewReadingsCannotShowAnEnd)
{
    const auto evaluation = evaluation::evaluate(creeping(), withSeries({{15, 0.630}, {20, 0.640}}));
    EXPECT_FALSE(evaluation.series[0].ended);
    EXPECT_NEAR(*evaluation.tubes[1].signal, 0.600 - 0.120, 1e-12);
}

TEST(Series, WithoutExtrapolationTheLastReadingCounts)
{
    const run::Run run = withSeries({{5, 0.450}, {10, 0.628}, {15, 0.630}, {20, 0.630}, {25, 0.631}});
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(*evaluation.tubes[1].signal, 0.631 - 0.120, 1e-12);
    EXPECT_TRUE(evaluation.series[0].ended);
}

TEST(Series, WithoutExtrapolationACreepMeansUnfinished)
{
    const run::Run run = withSeries({{15, 0.630}, {20, 0.640}, {25, 0.650}, {30, 0.660}});
    EXPECT_FALSE(evaluation::evaluate(test::risingMethod(), run).series[0].ended);
}

TEST(Series, EarlyAndLateAreJudgedByTheMethodsWait)
{
    const auto early = evaluation::evaluate(test::risingMethod(), withSeries({{10, 0.630}, {12, 0.630}}));
    EXPECT_FALSE(test::find(early.checks, CheckId::ReadingEarly, u"sample S"_s)->passed);
    EXPECT_TRUE(test::find(early.checks, CheckId::ReadingLate, u"sample S"_s)->passed);
    const auto late = evaluation::evaluate(test::risingMethod(), withSeries({{20, 0.630}, {55, 0.630}}));
    EXPECT_TRUE(test::find(late.checks, CheckId::ReadingEarly, u"sample S"_s)->passed);
    EXPECT_FALSE(test::find(late.checks, CheckId::ReadingLate, u"sample S"_s)->passed);
    EXPECT_TRUE(test::find(late.checks, CheckId::ReadingLate, u"sample S"_s)
                    ->message().contains(u"15:00\u00a0min late"_s));
}

TEST(Series, ASingleReadingNeedsNoSeriesChecks)
{
    const auto evaluation = evaluation::evaluate(creeping(), test::plainRun());
    EXPECT_EQ(test::find(evaluation.checks, CheckId::ReactionUnfinished, u"sample S"_s), nullptr);
}

TEST(Series, WeightsReadALineAtTimeZero)
{
    const std::vector<double> times{15, 20, 25, 30};
    const std::vector<double> weights = evaluation::extrapolationWeights(times);
    double atZero = 0;
    for (size_t i = 0; i < times.size(); ++i)
        atZero += weights[i] * (0.6 + 0.002 * times[i]);
    EXPECT_NEAR(atZero, 0.6, 1e-13);
}

namespace {

/// extrapolated over so many readings; 0: not at all.
evaluation::SeriesFit fitOf(const run::ReadingSeries &series, int extrapolated, double absorbance = 0.002)
{
    assay::Method method = test::risingMethod();
    if (extrapolated > 0)
        method.extrapolate = assay::Extrapolation{u"A2"_s, extrapolated};
    run::Run run = withSeries(series);
    run.uncertainty = run::UncertaintyInputs{};
    run.uncertainty->absorbance = absorbance;
    return evaluation::evaluate(method, run).series.at(0);
}

} // namespace

TEST(Series, OneReadingShowsNoEnd)
{
    for (const int extrapolated : {0, 2, 4}) {
        const evaluation::SeriesFit fit = fitOf({{20, 0.630}}, extrapolated);
        EXPECT_FALSE(fit.ended);
        EXPECT_EQ(fit.points, 1);
        EXPECT_EQ(fit.atStart, 0.630);
        EXPECT_EQ(fit.slope_per_min, 0);
        EXPECT_FALSE(fit.slopeStandardError_per_min);
    }
}

TEST(Series, TwoReadingsEndWhereTheyAreLevelWithinNoise)
{
    // 2 x 1.414 x 0.002 = 0.00566
    EXPECT_TRUE(fitOf({{15, 0.630}, {20, 0.6356}}, 0).ended);
    EXPECT_FALSE(fitOf({{15, 0.630}, {20, 0.6357}}, 0).ended);
    EXPECT_TRUE(fitOf({{15, 0.630}, {20, 0.6244}}, 0).ended);
    EXPECT_FALSE(fitOf({{15, 0.630}, {20, 0.6356}}, 0, 0.001).ended) << "a quieter photometer sees more";
    const evaluation::SeriesFit fit = fitOf({{15, 0.630}, {20, 0.640}}, 0);
    EXPECT_NEAR(fit.slope_per_min, 0.002, 1e-15);
    EXPECT_NEAR(fit.atStart, 0.600, 1e-12);
    EXPECT_FALSE(fit.slopeStandardError_per_min) << "a line through two points leaves nothing over";
}

TEST(Series, ACreepIsToldFromAReactionByTwoChangesAtLeast)
{
    EXPECT_FALSE(fitOf({{15, 0.630}, {20, 0.640}}, 2).ended) << "one change is like no other";
    EXPECT_TRUE(fitOf({{15, 0.630}, {20, 0.640}, {25, 0.650}}, 2).ended);
    EXPECT_FALSE(fitOf({{15, 0.610}, {20, 0.640}, {25, 0.650}}, 2).ended);
    // The value is that of the last two, as the method says.
    EXPECT_NEAR(fitOf({{15, 0.610}, {20, 0.640}, {25, 0.650}}, 2).atStart, 0.600, 1e-12);
    EXPECT_FALSE(fitOf({{15, 0.630}, {20, 0.640}, {25, 0.650}}, 4).ended) << "the method wants four";
    EXPECT_TRUE(fitOf({{15, 0.630}, {20, 0.640}, {25, 0.650}, {30, 0.660}}, 4).ended);
}

TEST(Series, ChangesAreConstantWithinTheNoiseOfTwoReadings)
{
    // The third of four is off the creep by x: the line takes 0.1 x of it a step, the changes show 0.9 x and
    // 1.1 x.
    const auto ended = [](double x) {
        return fitOf({{15, 0.630}, {20, 0.640}, {25, 0.650 + x}, {30, 0.660}}, 4).ended;
    };
    EXPECT_TRUE(ended(0.0051));
    EXPECT_FALSE(ended(0.0052));
    EXPECT_TRUE(ended(-0.0051));
    EXPECT_FALSE(ended(-0.0052));
}

TEST(Series, UnevenIntervalsAreNoUnsteadiness)
{
    EXPECT_TRUE(fitOf({{15, 0.630}, {16, 0.632}, {26, 0.652}, {30, 0.660}}, 4).ended);
    EXPECT_TRUE(fitOf({{12, 0.520}, {15, 0.630}, {16, 0.630}, {26, 0.631}, {30, 0.630}}, 0).ended);
}

TEST(Series, ASlowReactionThatIsLevelFromReadingToReadingHasNotEnded)
{
    // Each change is within the noise, the drift over four is not.
    EXPECT_FALSE(fitOf({{15, 0.630}, {16, 0.633}, {17, 0.636}, {18, 0.639}}, 0).ended);
    EXPECT_FALSE(fitOf({{15, 0.639}, {16, 0.636}, {17, 0.633}, {18, 0.630}}, 0).ended);
    EXPECT_TRUE(fitOf({{15, 0.630}, {16, 0.631}, {17, 0.632}, {18, 0.633}}, 0).ended);
}

TEST(Series, TheSlopeHasItsStandardError)
{
    // By hand: residuals 1/60, -1/30, 1/60; s^2 = 1/600; divided by the sum of squares 2.
    const evaluation::SeriesFit fit = fitOf({{0, 0.1}, {1, 0.2}, {2, 0.4}}, 0);
    EXPECT_NEAR(fit.slope_per_min, 0.15, 1e-15);
    EXPECT_NEAR(*fit.slopeStandardError_per_min, std::sqrt(1.0 / 1200), 1e-12);
    EXPECT_NEAR(fit.atStart, 0.25 / 3, 1e-12);
}
