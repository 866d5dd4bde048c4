// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/evaluation.h"

#include "core/evaluation/layout.h"
#include "tests/core/evaluation/found.h"
#include "tests/support/benches.h"

#include <gtest/gtest.h>

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
                    ->message.contains(u"15:00\u00a0min late"_s));
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
