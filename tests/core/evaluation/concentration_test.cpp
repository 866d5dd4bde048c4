// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/evaluation.h"

#include "tests/core/evaluation/found.h"
#include "tests/support/benches.h"

#include <gtest/gtest.h>

using namespace plateau;
using namespace Qt::StringLiterals;

TEST(Concentration, FactorIsWorthOneUnitOfSignal)
{
    const auto evaluation = evaluation::evaluate(test::risingMethod(), test::plainRun());
    ASSERT_EQ(evaluation.factors.size(), 1U);
    EXPECT_NEAR(evaluation.factors[0].factor_g_per_L, test::risingFactor_g_per_L, 1e-15);
}

TEST(Concentration, FactorFollowsWavelengthPathAndStoichiometry)
{
    assay::Method method = test::risingMethod();
    method.measurands[0].chromophorePerMolecule = 2;
    run::Run run = test::plainRun();
    run.wavelength_nm = 365;
    run.pathLength_mm = 5;
    const auto evaluation = evaluation::evaluate(method, run);
    EXPECT_NEAR(evaluation.factors[0].factor_g_per_L, 2.12 * 100 / (3400 * 0.5 * 0.1 * 2), 1e-14);
}

TEST(Concentration, NetSignalIsLessTheMeanBlank)
{
    run::Run run = test::plainRun();
    run.tubes.push_back(test::blank(0.100, 0.114)); // blanks 0.010 and 0.014
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    ASSERT_EQ(evaluation.blanks.size(), 1U);
    EXPECT_NEAR(*evaluation.blanks[0].mean, 0.012, 1e-15);
    EXPECT_EQ(evaluation.blanks[0].n, 2);
    EXPECT_NEAR(*evaluation.tubes[1].signal, 0.510, 1e-15);
    EXPECT_NEAR(*evaluation.tubes[1].netSignal, 0.498, 1e-15);
    EXPECT_NEAR(*evaluation.tubes[1].concentration_g_per_L, 0.498 * test::risingFactor_g_per_L, 1e-15);
    EXPECT_FALSE(evaluation.tubes[0].netSignal);
}

TEST(Concentration, NegativeBlankAddsToTheResult)
{
    run::Run run = test::plainRun();
    run.tubes[0] = test::blank(0.110, 0.100);
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(*evaluation.tubes[1].netSignal, 0.520, 1e-15);
}

TEST(Concentration, FallingSignalIsEarlierLessLater)
{
    run::Run run = test::plainRun();
    run.tubes = {test::blank(1.500, 1.490), test::sampleTube("S", 1.500, 0.990)};
    const auto evaluation = evaluation::evaluate(test::fallingMethod(), run);
    EXPECT_NEAR(*evaluation.tubes[1].netSignal, 0.500, 1e-15);
    EXPECT_NEAR(*evaluation.results[0].value, 0.500 * test::risingFactor_g_per_L, 1e-15);
}

TEST(Concentration, DilutionStepsMultiply)
{
    run::Run run = test::plainRun();
    run.samples[0].dilution = {{5, 50}, {10, 25}};
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(*evaluation.tubes[1].pipetted_g_per_L, 0.5 * test::risingFactor_g_per_L, 1e-15);
    EXPECT_NEAR(*evaluation.tubes[1].concentration_g_per_L, 25 * 0.5 * test::risingFactor_g_per_L, 1e-13);
    EXPECT_NEAR(*evaluation.results[0].value, 25 * 0.5 * test::risingFactor_g_per_L, 1e-13);
}

TEST(Concentration, SolidIsReportedPerHundredGrams)
{
    run::Run run = test::plainRun();
    run.samples[0] = test::solid("S", 5.0, 100, {{10, 50}});
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    const double extract_g_per_L = 5 * 0.5 * test::risingFactor_g_per_L;
    EXPECT_EQ(evaluation.results[0].unit, u"g/100 g"_s);
    EXPECT_NEAR(*evaluation.tubes[1].concentration_g_per_L, extract_g_per_L, 1e-14);
    EXPECT_NEAR(*evaluation.results[0].value, extract_g_per_L * 0.1 / 5.0 * 100, 1e-13);
}

TEST(Concentration, LargerSampleVolumeCountsLessPerSignal)
{
    run::Run run = test::plainRun();
    run.tubes[2].sampleVolume_mL = 0.2;
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(*evaluation.tubes[2].concentration_g_per_L, 0.5 * test::risingFactor_g_per_L / 2, 1e-15);
}

TEST(Concentration, TubeWhoseDiluentRanOutUsesItsOwnVolume)
{
    run::Run run = test::plainRun();
    run.tubes[2].sampleVolume_mL = 1.3; // V grows from 2.12 to 2.32
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(evaluation.tubes[2].totalVolume_mL, 2.32, 1e-12);
    EXPECT_NEAR(*evaluation.tubes[2].concentration_g_per_L, 0.5 * 2.32 * 100 / (6300 * 1.3), 1e-14);
}

TEST(Concentration, VolumeCorrectionBringsReadingsToTheFinalVolume)
{
    assay::Method method = test::risingMethod();
    method.volumeCorrection = assay::VolumeCorrection::ToFinalVolume;
    run::Run run = test::plainRun();
    run.tubes = {test::blank(0.100, 0.110), test::sampleTube("S", 0.400, 0.900)};
    const auto evaluation = evaluation::evaluate(method, run);
    const double ratio = 2.10 / 2.12;
    EXPECT_NEAR(*evaluation.tubes[0].signal, 0.110 - 0.100 * ratio, 1e-14);
    EXPECT_NEAR(*evaluation.tubes[1].netSignal, (0.900 - 0.400 * ratio) - (0.110 - 0.100 * ratio), 1e-14);
}

TEST(Concentration, SampleBlankIsSubtractedInAddition)
{
    run::Run run = test::plainRun();
    run::Tube sampleBlank = test::sampleTube("S", 0.300, 0.304);
    sampleBlank.role = run::Role::SampleBlank;
    run.tubes.push_back(sampleBlank);
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(*evaluation.tubes[1].netSignal, 0.510 - 0.010 - 0.004, 1e-15);
    EXPECT_FALSE(evaluation.tubes[3].netSignal);
    EXPECT_NEAR(*evaluation.tubes[3].signal, 0.004, 1e-15);
    EXPECT_EQ(evaluation.results[0].n, 2);
}

TEST(Concentration, SampleBlankOfTheSameVolumeIsPreferred)
{
    run::Run run = test::plainRun();
    run.tubes[2].sampleVolume_mL = 0.2;
    for (const double volume_mL : {0.1, 0.2}) {
        run::Tube sampleBlank = test::sampleTube("S", 0.300, 0.300 + 0.04 * volume_mL);
        sampleBlank.role = run::Role::SampleBlank;
        sampleBlank.sampleVolume_mL = volume_mL;
        run.tubes.push_back(sampleBlank);
    }
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(*evaluation.tubes[1].netSignal, 0.500 - 0.004, 1e-14);
    EXPECT_NEAR(*evaluation.tubes[2].netSignal, 0.500 - 0.008, 1e-14);
}

TEST(Concentration, SequentialMeasurandsTakeTheirOwnReadings)
{
    run::Run run = test::plainRun();
    run.tubes = {test::blank(0.100, 0.105), test::sampleTube("S", 0.110, 0.415)};
    run.tubes[0].readings[u"A3"_s] = 0.106;
    run.tubes[1].readings[u"A3"_s] = 0.616;
    const auto evaluation = evaluation::evaluate(test::sequentialMethod(), run);
    ASSERT_EQ(evaluation.results.size(), 2U);
    EXPECT_EQ(evaluation.results[0].measurand, u"first"_s);
    EXPECT_NEAR(*evaluation.results[0].value, 0.300 * 2.12 * 100 / 630, 1e-14);
    EXPECT_EQ(evaluation.results[1].measurand, u"second"_s);
    EXPECT_NEAR(*evaluation.results[1].value, 0.200 * 2.14 * 100 / 630, 1e-14);
}

TEST(Concentration, CoupledIndicatorTakesOffTheEquilibrium)
{
    run::Run run = test::plainRun();
    run.tubes = {test::blank(0.300, 0.300), test::sampleTube("S", 0.300, 0.400)};
    run.tubes[0].readings[u"A3"_s] = 0.300;
    run.tubes[1].readings[u"A3"_s] = 0.800;
    const auto evaluation = evaluation::evaluate(test::coupledMethod(), run);
    EXPECT_EQ(*evaluation.tubes[0].signal, 0); // a blank in which nothing happens is no division by zero
    EXPECT_NEAR(*evaluation.tubes[1].netSignal, 0.480, 1e-15); // 0.5 - 0.1^2 / 0.5
}

TEST(Concentration, CoupledIndicatorFallsTheSameWay)
{
    assay::Method method = test::coupledMethod();
    method.direction = assay::Direction::Falling;
    run::Run run = test::plainRun();
    run.tubes = {test::blank(1.5, 1.5), test::sampleTube("S", 1.5, 1.4)};
    run.tubes[0].readings[u"A3"_s] = 1.5;
    run.tubes[1].readings[u"A3"_s] = 1.0;
    const auto evaluation = evaluation::evaluate(method, run);
    EXPECT_NEAR(*evaluation.tubes[1].netSignal, 0.480, 1e-15);
}

TEST(Concentration, ResultIsTheMeanOfTheReplicatesAndSpreadTheirRange)
{
    run::Run run = test::plainRun();
    run.tubes[2] = test::sampleTube("S", 0.120, 0.650); // net 0.520
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(*evaluation.results[0].value, 0.510 * test::risingFactor_g_per_L, 1e-14);
    EXPECT_NEAR(*evaluation.results[0].spread, 0.020 * test::risingFactor_g_per_L, 1e-14);
    EXPECT_EQ(evaluation.results[0].n, 2);
}

TEST(Concentration, TubeWithoutItsReadingGivesNoValueAndTheOthersStay)
{
    run::Run run = test::plainRun();
    run.tubes[2].readings.erase(u"A2"_s);
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_FALSE(evaluation.tubes[2].signal);
    EXPECT_EQ(evaluation.results[0].n, 1);
    EXPECT_NEAR(*evaluation.results[0].value, 0.5 * test::risingFactor_g_per_L, 1e-14);
    EXPECT_EQ(evaluation.results[0].verdict, evaluation::Verdict::Investigate);
}

TEST(Concentration, SpikeRecoveryComparesAmounts)
{
    run::Run run = test::plainRun();
    run.standards = {{u"STD"_s, 0.2, {}, {}, {}, 0}};
    run::Tube spiked = test::sampleTube("S", 0.120, 0.0);
    spiked.role = run::Role::Spiked;
    spiked.spike = run::Spike{u"STD"_s, 0.05};
    // 0.05 mL of 0.2 g/L is 0.01 mg; of that 95 % are found: signal of 0.0095 mg / (factor x 0.1 mL).
    const double extra = 0.0095 / (test::risingFactor_g_per_L * 0.1);
    spiked.readings[u"A2"_s] = 0.120 + 0.510 + extra;
    run.tubes.push_back(spiked);
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    ASSERT_EQ(evaluation.spikes.size(), 1U);
    EXPECT_NEAR(*evaluation.spikes[0].recovery_percent, 95.0, 1e-9);
    EXPECT_EQ(evaluation.results[0].n, 2); // the spiked tube is no replicate
}

TEST(Concentration, ControlOfASampleGivesAResultLikeASample)
{
    run::Run run = test::plainRun();
    run.tubes[1].role = run::Role::Control;
    run.tubes[2].role = run::Role::Control;
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_EQ(evaluation.results[0].n, 2);
    EXPECT_NEAR(*evaluation.results[0].value, 0.5 * test::risingFactor_g_per_L, 1e-14);
}

TEST(Concentration, SameInputGivesTheSameBits)
{
    run::Run run = test::plainRun();
    run.uncertainty = test::uncertainties();
    EXPECT_EQ(evaluation::evaluate(test::risingMethod(), run),
              evaluation::evaluate(test::risingMethod(), run));
}
