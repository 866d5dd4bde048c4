// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Tubes that do not count: their readings are kept, no result rests on them, and nobody is asked for more.

#include "core/evaluation/evaluation.h"
#include "tests/core/evaluation/found.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

using namespace plateau;
using namespace Qt::StringLiterals;
using evaluation::CheckId;
using evaluation::Evaluation;
using evaluation::Verdict;

namespace {

/// Tubes: 0 and 1 blanks of 0.010 and 0.014, 2 and 3 sample S of 0.510, 4 sample blank, 5 spiked, 6 standard.
run::Run fullRack()
{
    run::Run run = test::plainRun();
    run.standards = {{u"STD"_s, 0.168, {}, {}, {}, 0}};
    run.tubes = {test::blank(0.100, 0.110), test::blank(0.100, 0.114), test::sampleTube("S", 0.120, 0.630),
                 test::sampleTube("S", 0.121, 0.631)};
    run::Tube sampleBlank = test::sampleTube("S", 0.120, 0.122);
    sampleBlank.role = run::Role::SampleBlank;
    run::Tube spiked = test::sampleTube("S", 0.120, 0.880);
    spiked.role = run::Role::Spiked;
    spiked.spike = run::Spike{u"STD"_s, 0.05};
    run.tubes.push_back(sampleBlank);
    run.tubes.push_back(spiked);
    run.tubes.push_back(test::standardTube("STD", 0.100, 0.610));
    return run;
}

Evaluation evaluatedWithSpoilt(run::Run run, std::initializer_list<size_t> spoilt)
{
    for (const size_t tube : spoilt) {
        run.tubes[tube].spoilt = u"knocked over"_s;
        run.tubes[tube].readings[u"A2"_s] = 3.9; // whatever it shows now
    }
    return evaluation::evaluate(test::risingMethod(), run);
}

} // namespace

TEST(SpoiltTube, HasNoSignalAndLeavesItsReplicateToStandAlone)
{
    const Evaluation evaluation = evaluatedWithSpoilt(fullRack(), {3});
    EXPECT_FALSE(evaluation.tubes[3].signal);
    EXPECT_FALSE(evaluation.tubes[3].concentration_g_per_L);
    EXPECT_EQ(evaluation.results[0].n, 1);
    EXPECT_EQ(evaluation.results[0].value, evaluation.tubes[2].concentration_g_per_L);
    EXPECT_EQ(test::failedWords(evaluation.results[0].checks), std::vector<QString>{});
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Reportable);
    EXPECT_EQ(test::find(evaluation.checks, CheckId::ReadingMissing, u"sample S"_s)->message(),
              u"Every reading that counts is there: without tube 4, spoilt."_s);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::DuplicateSpread, u"sample S"_s));
}

TEST(SpoiltTube, IsNotAskedForReadings)
{
    run::Run run = fullRack();
    run.tubes[3].readings.clear();
    run.tubes[3].spoilt = u"knocked over"_s;
    const Evaluation evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_TRUE(test::find(evaluation.checks, CheckId::ReadingMissing, u"sample S"_s)->passed);
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Reportable);
}

TEST(SpoiltTube, IsLeftOutOfTheBlanks)
{
    const Evaluation evaluation = evaluatedWithSpoilt(fullRack(), {1});
    EXPECT_EQ(evaluation.blanks[0].n, 1);
    EXPECT_NEAR(*evaluation.blanks[0].mean, 0.010, 1e-12);
    EXPECT_TRUE(test::find(evaluation.checks, CheckId::ReadingMissing, u"run"_s)->passed);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::BlankSpread, u"run"_s));
    EXPECT_NEAR(*evaluation.tubes[2].netSignal, 0.510 - 0.010 - 0.002, 1e-12);
}

TEST(SpoiltTube, TheOnlyBlankLeavesTheResultsWithoutAValueAndSaysSoOnce)
{
    const Evaluation evaluation = evaluatedWithSpoilt(fullRack(), {0, 1});
    EXPECT_FALSE(evaluation.results[0].value);
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Investigate);
    const evaluation::Check *missing = test::find(evaluation.checks, CheckId::ReadingMissing, u"run"_s);
    EXPECT_EQ(missing->message(), u"tube 1: spoilt (knocked over); tube 2: spoilt (knocked over). No other "
                                "tube stands in for it: pipette it again."_s);
    EXPECT_EQ(missing->tubes, (std::vector<int>{0, 1}));
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::BlankMissing, u"run"_s));
}

TEST(SpoiltTube, ABlankStillToBeReadStandsInForTheSpoiltOne)
{
    run::Run run = fullRack();
    run.tubes[0].readings.clear();
    const Evaluation evaluation = evaluatedWithSpoilt(run, {1});
    const evaluation::Check *missing = test::find(evaluation.checks, CheckId::ReadingMissing, u"run"_s);
    EXPECT_EQ(missing->message(),
              u"tube 1: A1 is missing; tube 1: A2 is missing. Read and key what is missing."_s);
    EXPECT_TRUE(evaluation.results[0].value); // as while any blank is still to come
}

TEST(SpoiltTube, ASampleAllOfWhoseTubesAreSpoiltHasNoValueAndSaysWhy)
{
    const Evaluation evaluation = evaluatedWithSpoilt(fullRack(), {2, 3});
    const evaluation::Result &result = evaluation.results[0];
    EXPECT_FALSE(result.value);
    EXPECT_EQ(result.verdict, Verdict::Investigate);
    EXPECT_EQ(test::failedWords(result.checks), std::vector<QString>{u"reading-missing"_s});
    const evaluation::Check *missing = test::find(result.checks, CheckId::ReadingMissing, u"sample S"_s);
    EXPECT_TRUE(missing->message().startsWith(u"tube 3: spoilt (knocked over); tube 4: spoilt"_s))
        << missing->message().toStdString();
}

TEST(SpoiltTube, ReadingsToComeAndSpoiltTubesAreToldTogether)
{
    run::Run run = fullRack();
    run.tubes[2].readings.erase(u"A2"_s);
    run.tubes.erase(run.tubes.begin() + 3);
    const Evaluation evaluation = evaluatedWithSpoilt(run, {3}); // the sample blank
    EXPECT_EQ(test::find(evaluation.checks, CheckId::ReadingMissing, u"sample S"_s)->message(),
              u"tube 3: A2 is missing; tube 4: spoilt (knocked over). No other tube stands in for it: "
              "pipette it again. Read and key what is missing."_s);
}

TEST(SpoiltTube, TheOnlySampleBlankLeavesTheSampleWithoutAValue)
{
    const Evaluation evaluation = evaluatedWithSpoilt(fullRack(), {4});
    EXPECT_FALSE(evaluation.results[0].value);
    EXPECT_TRUE(evaluation.tubes[2].signal);
    EXPECT_FALSE(evaluation.tubes[2].netSignal);
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Investigate);
}

TEST(SpoiltTube, ASpikeThatIsSpoiltIsNotJudged)
{
    const Evaluation evaluation = evaluatedWithSpoilt(fullRack(), {5});
    EXPECT_FALSE(evaluation.spikes[0].recovery_percent);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::SpikeRecovery, u"sample S"_s));
    EXPECT_EQ(test::failedWords(evaluation.results[0].checks), std::vector<QString>{u"reading-missing"_s});
    EXPECT_TRUE(evaluation.results[0].value);
}

TEST(SpoiltTube, AStandardThatIsSpoiltIsNotRecoveredAndDoesNotCalibrate)
{
    const Evaluation byAbsorptivity = evaluatedWithSpoilt(fullRack(), {6});
    EXPECT_FALSE(byAbsorptivity.standards[0].recovery_percent);
    EXPECT_FALSE(test::find(byAbsorptivity.checks, CheckId::ReadingMissing, u"standard STD"_s)->passed);
    EXPECT_FALSE(test::find(byAbsorptivity.checks, CheckId::StandardRecovery, u"standard STD"_s));
    EXPECT_TRUE(byAbsorptivity.results[0].value);
    EXPECT_FALSE(byAbsorptivity.acceptable);

    run::Run run = fullRack();
    run.calibration = run::Calibration::Standard;
    EXPECT_FALSE(evaluatedWithSpoilt(run, {6}).results[0].value);
    run.tubes.push_back(run.tubes[6]);
    const Evaluation twice = evaluatedWithSpoilt(run, {6});
    EXPECT_NEAR(*twice.standards[0].recovery_percent, 100, 1e-9); // of the other tube alone
}

TEST(SpoiltTube, IsNotJudgedByTimeOrVolume)
{
    run::Run run = fullRack();
    run.tubes[3].sampleVolume_mL = 1.3;
    run.tubes[3].readings[u"A1"_s] = run::ReadingSeries{{1, 0.1}};
    EXPECT_FALSE(
        test::find(evaluatedWithSpoilt(run, {}).checks, CheckId::SampleVolumeOutsideRange, u"sample S"_s)
            ->passed);
    const Evaluation evaluation = evaluatedWithSpoilt(run, {3});
    EXPECT_TRUE(test::find(evaluation.checks, CheckId::SampleVolumeOutsideRange, u"sample S"_s)->passed);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::ReadingEarly, u"sample S"_s));
    EXPECT_NEAR(*evaluation.results[0].value, (0.510 - 0.012 - 0.002) * test::risingFactor_g_per_L, 1e-12);
}
