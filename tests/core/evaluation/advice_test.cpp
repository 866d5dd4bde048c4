// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/advice.h"

#include "tests/support/benches.h"

#include <gtest/gtest.h>

using namespace plateau;

TEST(DilutionChain, MakesEveryPreferredFactorExactly)
{
    for (const double factor :
         {2., 4., 5., 10., 20., 25., 50., 100., 200., 250., 500., 1000., 40., 2000., 10000., 2.5}) {
        const auto chain = evaluation::dilutionChain(factor);
        ASSERT_TRUE(chain) << factor;
        EXPECT_NEAR(run::dilutionFactor(*chain), factor, 1e-9 * factor);
        for (const run::DilutionStep &step : *chain) {
            EXPECT_GE(step.take_mL, 1);
            EXPECT_LE(step.makeUpTo_mL, 100);
        }
    }
}

TEST(DilutionChain, TenfoldTakesFiveToFifty)
{
    EXPECT_EQ(evaluation::dilutionChain(10), (std::vector<run::DilutionStep>{{5, 50}}));
}

TEST(DilutionChain, NothingToDoAndNothingPossible)
{
    EXPECT_EQ(evaluation::dilutionChain(1), std::vector<run::DilutionStep>{});
    EXPECT_FALSE(evaluation::dilutionChain(3));
    EXPECT_FALSE(evaluation::dilutionChain(0.5));
}

TEST(Advice, OddDilutionIsKeptAndDilutedOn)
{
    evaluation::TubeState tube;
    tube.netSignal = 1.3;
    const auto advice = evaluation::diluteAdvice(test::risingMethod(), test::liquid("S", {{3, 10}}), tube);
    EXPECT_NEAR(advice.factor, 2 * 10 / 3.0, 1e-12);
    ASSERT_EQ(advice.steps.size(), 2U);
    EXPECT_EQ(advice.steps[0], (run::DilutionStep{3, 10}));
    EXPECT_NEAR(run::dilutionFactor(advice.steps), advice.factor, 1e-9);
}

TEST(Advice, FallingReagentHasToStayAboveItsReserve)
{
    evaluation::TubeState tube;
    tube.netSignal = 0.75; // halved it would be well inside the window of 1.0
    tube.remainingWithoutSample = 0.30;
    tube.remaining = -0.45;
    // 0.30 - 0.75 / f has to be 0.1 at least: f = 3.75
    EXPECT_EQ(evaluation::strongerDilution(test::fallingMethod(), tube), 4);
}

TEST(Advice, PhotometersLimitCountsForTheDilution)
{
    evaluation::TubeState tube;
    tube.netSignal = 0.5;
    tube.largestReading = 4.0;
    tube.blankAtLargest = 0.2; // 0.2 + 3.8 / f at most 2.0: f = 2.11
    EXPECT_EQ(evaluation::strongerDilution(test::risingMethod(), tube), 4);
}

TEST(Advice, LargerVolumeDoesNotOvershoot)
{
    assay::Method method = test::risingMethod();
    method.window = {0.4, 0.6, {}, {}};
    evaluation::TubeState tube;
    tube.netSignal = 0.3;
    tube.sampleVolume_mL = 0.1;
    const auto advice = evaluation::strengthenAdvice(method, test::liquid("S"), tube);
    ASSERT_TRUE(advice);
    EXPECT_EQ(advice->sampleVolume_mL, 0.15); // 0.1 x 0.48 / 0.3 = 0.16, by 0.05 mL: signal 0.45
    tube.netSignal = 0.36; // 0.133: by 0.05 mL it would be no more than it had
    EXPECT_EQ(evaluation::strengthenAdvice(method, test::liquid("S"), tube)->sampleVolume_mL, 0.13);
}

TEST(Advice, ALargerVolumeLeavesASimpleVolumeOfDiluent)
{
    // 0.1 mL in 2.5 mL of water, net signal 0.19: 0.8 at 0.421 mL, which would leave 2.18 mL of water.
    assay::Method method = test::risingMethod();
    method.components[1].volume_mL = 2.5;
    method.window = {0.2, 1.0, {}, {}};
    evaluation::TubeState tube;
    tube.netSignal = 0.19;
    tube.sampleVolume_mL = 0.1;
    EXPECT_EQ(evaluation::strengthenAdvice(method, test::liquid("S"), tube)->sampleVolume_mL, 0.4);
}

TEST(DilutionChain, TwoHundredfoldTakesTwoStepsWithUsualFlasks)
{
    EXPECT_EQ(evaluation::dilutionChain(200), (std::vector<run::DilutionStep>{{5, 50}, {5, 100}}));
}
