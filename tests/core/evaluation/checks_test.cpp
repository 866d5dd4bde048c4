// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checkfacts.h"
#include "core/evaluation/evaluation.h"

#include "tests/core/evaluation/found.h"
#include "tests/support/benches.h"

#include <gtest/gtest.h>

using namespace plateau;
using namespace Qt::StringLiterals;
using evaluation::CheckId;
using evaluation::Verdict;

namespace {

/// The result of the only sample after its two tubes read these.
evaluation::Result resultWith(const assay::Method &method, run::Tube first, run::Tube second)
{
    run::Run run = test::plainRun();
    run.tubes[1] = std::move(first);
    run.tubes[2] = std::move(second);
    return evaluation::evaluate(method, run).results.at(0);
}

} // namespace

TEST(Checks, CleanRunIsAcceptable)
{
    const auto evaluation = evaluation::evaluate(test::risingMethod(), test::plainRun());
    EXPECT_TRUE(evaluation.acceptable);
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Reportable);
    EXPECT_TRUE(test::failedWords(evaluation.checks).empty());
    for (const CheckId id :
         {CheckId::ReadingMissing, CheckId::ReadingImplausible, CheckId::WrongDirection, CheckId::SignalLow,
          CheckId::SignalHigh, CheckId::AbsorbanceHigh, CheckId::DuplicateSpread})
        EXPECT_NE(test::find(evaluation.checks, id, test::sampleS), nullptr)
            << evaluation::checkWord(id).toStdString();
    for (const CheckId id : {CheckId::BlankMissing, CheckId::BlankHigh})
        EXPECT_NE(test::find(evaluation.checks, id, u"run"_s), nullptr)
            << evaluation::checkWord(id).toStdString();
}

TEST(Checks, SignalOnTheEdgeOfTheWindowIsInside)
{
    const auto low =
        resultWith(test::risingMethod(), test::sampleTube("S", 0.5, 0.61), test::sampleTube("S", 0.5, 0.61));
    EXPECT_TRUE(test::find(low.checks, CheckId::SignalLow, test::sampleS)->passed); // net 0.100
    const auto high =
        resultWith(test::risingMethod(), test::sampleTube("S", 0.5, 1.51), test::sampleTube("S", 0.5, 1.51));
    EXPECT_TRUE(test::find(high.checks, CheckId::SignalHigh, test::sampleS)->passed); // net 1.000
}

TEST(Checks, StrongSampleAsksForDilution)
{
    const auto result =
        resultWith(test::risingMethod(), test::sampleTube("S", 0.1, 1.36), test::sampleTube("S", 0.1, 1.36));
    EXPECT_EQ(result.verdict, Verdict::Repeat);
    const evaluation::Check *check = test::find(result.checks, CheckId::SignalHigh, test::sampleS);
    ASSERT_TRUE(check && check->advice);
    EXPECT_FALSE(check->passed);
    EXPECT_EQ(check->advice->kind, evaluation::Advice::Kind::Dilute);
    EXPECT_EQ(check->advice->factor, 2); // 1.25 / 2 = 0.625, at most 0.8
    EXPECT_FALSE(check->advice->atLeast);
    EXPECT_EQ(check->tubes, (std::vector<int>{1, 2}));
}

TEST(Checks, ExhaustedReagentAsksForStrongerDilutionAtLeast)
{
    run::Run run = test::plainRun();
    run.samples[0].dilution = {{5, 50}};
    run.tubes = {test::blank(1.500, 1.490), test::sampleTube("S", 1.500, 0.040)};
    const auto evaluation = evaluation::evaluate(test::fallingMethod(), run);
    const evaluation::Check *check = test::find(evaluation.checks, CheckId::ReserveLow, test::sampleS);
    ASSERT_TRUE(check && check->advice);
    EXPECT_FALSE(check->passed);
    EXPECT_TRUE(check->advice->atLeast);
    EXPECT_EQ(check->advice->factor, 20); // 1.45 / 2 = 0.725
    EXPECT_EQ(check->advice->steps, (std::vector<run::DilutionStep>{{5, 100}}));
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Repeat);
    EXPECT_FALSE(evaluation.acceptable);
}

TEST(Checks, ReserveIsNotAskedOfARisingMethod)
{
    assay::Method method = test::risingMethod();
    method.window.reserveAbsorbance = 0.7;
    const auto evaluation = evaluation::evaluate(method, test::plainRun());
    EXPECT_EQ(test::find(evaluation.checks, CheckId::ReserveLow, test::sampleS), nullptr);
}

TEST(Checks, WeakSampleAsksForMoreSampleFirst)
{
    const auto result =
        resultWith(test::risingMethod(), test::sampleTube("S", 0.1, 0.15), test::sampleTube("S", 0.1, 0.15));
    const evaluation::Check *check = test::find(result.checks, CheckId::SignalLow, test::sampleS);
    ASSERT_TRUE(check && check->advice);
    EXPECT_EQ(check->advice->kind, evaluation::Advice::Kind::IncreaseVolume);
    EXPECT_EQ(check->advice->sampleVolume_mL, 0.5);
    EXPECT_EQ(result.verdict, Verdict::Repeat);
}

TEST(Checks, WeakDilutedSampleAtTheLargestVolumeAsksForLessDilution)
{
    run::Run run = test::plainRun();
    run.samples[0].dilution = {{5, 50}};
    for (const size_t i : {1U, 2U}) {
        run.tubes[i] = test::sampleTube("S", 0.1, 0.15); // net 0.040
        run.tubes[i].sampleVolume_mL = 0.5;
    }
    const auto result = evaluation::evaluate(test::risingMethod(), run).results[0];
    const evaluation::Check *check = test::find(result.checks, CheckId::SignalLow, test::sampleS);
    ASSERT_TRUE(check && check->advice);
    EXPECT_EQ(check->advice->kind, evaluation::Advice::Kind::Dilute);
    EXPECT_EQ(check->advice->factor, 1); // undiluted: 0.4, within 0.8
    EXPECT_TRUE(check->advice->steps.empty());
}

TEST(Checks, WeakestPossibleSampleIsReportedAsBelowTheLimit)
{
    run::Run run = test::plainRun();
    for (const size_t i : {1U, 2U}) {
        run.tubes[i] = test::sampleTube("S", 0.1, 0.15);
        run.tubes[i].sampleVolume_mL = 0.5;
    }
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    const evaluation::Check *check = test::find(evaluation.checks, CheckId::SignalLow, test::sampleS);
    ASSERT_NE(check, nullptr);
    EXPECT_FALSE(check->passed);
    EXPECT_FALSE(check->advice);
    // 0.1 x 2.12 x 100 / (6300 x 0.5) = 0.0067 g/L
    EXPECT_TRUE(check->message().contains(u"below the limit of quantification, 0.0067\u00a0g/L"_s))
        << check->message().toStdString();
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Reportable);
    EXPECT_NEAR(*evaluation.results[0].lessThan, 0.1 * 2.12 * 100 / (6300 * 0.5), 1e-12);
    EXPECT_TRUE(evaluation.acceptable);
}

TEST(Checks, LimitOfASolidIsInItsOwnUnit)
{
    run::Run run = test::plainRun();
    run.samples[0] = test::solid("S", 5, 100);
    for (const size_t i : {1U, 2U}) {
        run.tubes[i] = test::sampleTube("S", 0.1, 0.15);
        run.tubes[i].sampleVolume_mL = 0.5;
    }
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(*evaluation.results[0].lessThan, 0.1 * 2.12 * 100 / (6300 * 0.5) * 0.1 / 5 * 100, 1e-12);
    EXPECT_TRUE(test::find(evaluation.checks, CheckId::SignalLow, test::sampleS)
                    ->message().contains(u"0.013\u00a0g/100\u00a0g"_s));
}

TEST(Checks, HighAbsorbanceIsJudgedAsRead)
{
    const auto result =
        resultWith(test::risingMethod(), test::sampleTube("S", 1.6, 2.1), test::sampleTube("S", 0.12, 0.62));
    const evaluation::Check *check = test::find(result.checks, CheckId::AbsorbanceHigh, test::sampleS);
    ASSERT_TRUE(check && check->advice);
    EXPECT_EQ(check->tubes, std::vector<int>{1});
    EXPECT_EQ(result.verdict, Verdict::Repeat);
}

TEST(Checks, SlippedDecimalPointIsImplausibleAndGivesNoAdvice)
{
    const auto result = resultWith(test::risingMethod(), test::sampleTube("S", 0.120, 63.1),
                                   test::sampleTube("S", 0.120, 0.63));
    EXPECT_FALSE(test::find(result.checks, CheckId::ReadingImplausible, test::sampleS)->passed);
    EXPECT_FALSE(test::find(result.checks, CheckId::SignalHigh, test::sampleS)->advice);
    EXPECT_EQ(result.verdict, Verdict::Investigate);
}

TEST(Checks, WrongDirectionIsInvestigatedNotRepeated)
{
    const auto result = resultWith(test::risingMethod(), test::sampleTube("S", 0.63, 0.12),
                                   test::sampleTube("S", 0.12, 0.63));
    const evaluation::Check *check = test::find(result.checks, CheckId::WrongDirection, test::sampleS);
    EXPECT_FALSE(check->passed);
    EXPECT_EQ(check->tubes, std::vector<int>{1});
    EXPECT_TRUE(check->message().startsWith(u"tube 2: absorbance fell by 0.510"_s))
        << check->message().toStdString();
    EXPECT_EQ(result.verdict, Verdict::Investigate);
}

TEST(Checks, ABlankThatWaitsInTheRackIsNoMissingBlank)
{
    run::Run run = test::plainRun();
    run.tubes.front().readings.clear();
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_EQ(test::find(evaluation.checks, CheckId::BlankMissing, u"run"_s), nullptr);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::ReadingMissing, u"run"_s)->passed);
    EXPECT_FALSE(evaluation.acceptable);
}

TEST(Checks, MissingBlankIsSaid)
{
    run::Run run = test::plainRun();
    run.tubes.erase(run.tubes.begin());
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::BlankMissing, u"run"_s)->passed);
    EXPECT_FALSE(evaluation.blanks[0].mean);
    EXPECT_EQ(evaluation.blanks[0].n, 0);
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Investigate);
    EXPECT_FALSE(evaluation.acceptable);
}

TEST(Checks, BlanksThatWereReadAreCounted)
{
    run::Run run = test::plainRun();
    const auto said = [&run] {
        const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
        return test::find(evaluation.checks, CheckId::BlankMissing, u"run"_s)->finding;
    };
    EXPECT_EQ(said(), u"Blanks read: 1."_s);
    run.tubes.push_back(test::blank(0.100, 0.111));
    EXPECT_EQ(said(), u"Blanks read: 2."_s);
}

TEST(Checks, BlankBeyondTheLimitEitherWayIsHigh)
{
    for (const double a2 : {0.160, 0.040}) {
        run::Run run = test::plainRun();
        run.tubes[0] = test::blank(0.100, a2);
        const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
        EXPECT_FALSE(test::find(evaluation.checks, CheckId::BlankHigh, u"run"_s)->passed) << a2;
    }
}

TEST(Checks, BlanksFarApartAreQuestioned)
{
    run::Run run = test::plainRun();
    run.tubes.push_back(test::blank(0.100, 0.125)); // 0.015 from the other
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::BlankSpread, u"run"_s)->passed);
    run.tubes.back() = test::blank(0.100, 0.119);
    EXPECT_TRUE(evaluation::evaluate(test::risingMethod(), run).acceptable);
}

TEST(Checks, DuplicatesAreHeldAgainstTheMethodsLimit)
{
    // r = 0.01 + 0.03 x mean; with means near 0.168 g/L that is 0.0150 g/L, a signal of 0.0447
    const auto good = resultWith(test::risingMethod(), test::sampleTube("S", 0.120, 0.630),
                                 test::sampleTube("S", 0.120, 0.673));
    EXPECT_TRUE(test::find(good.checks, CheckId::DuplicateSpread, test::sampleS)->passed);
    const auto poor = resultWith(test::risingMethod(), test::sampleTube("S", 0.120, 0.630),
                                 test::sampleTube("S", 0.120, 0.677));
    EXPECT_FALSE(test::find(poor.checks, CheckId::DuplicateSpread, test::sampleS)->passed);
    EXPECT_EQ(poor.verdict, Verdict::Investigate);
}

TEST(Checks, TriplicatesMaySpreadAsWideAsTheCriticalRange)
{
    run::Run run = test::plainRun();
    run.tubes = {test::blank(0.1, 0.11), test::sampleTube("S", 0.120, 0.630),
                 test::sampleTube("S", 0.120, 0.650),
                 test::sampleTube("S", 0.120, 0.680)}; // 0.050 apart; r of two is 0.0447, of three 0.0535
    EXPECT_TRUE(evaluation::evaluate(test::risingMethod(), run).acceptable);
}

TEST(Checks, WithoutAPublishedLimitTheLaboratorysOwnHolds)
{
    assay::Method method = test::risingMethod();
    method.acceptance.repeatability.reset();
    const auto good =
        resultWith(method, test::sampleTube("S", 0.120, 0.630), test::sampleTube("S", 0.120, 0.654));
    EXPECT_TRUE(test::find(good.checks, CheckId::DuplicateSpread, test::sampleS)->passed); // 4.7 %
    const auto poor =
        resultWith(method, test::sampleTube("S", 0.120, 0.630), test::sampleTube("S", 0.120, 0.657));
    EXPECT_FALSE(test::find(poor.checks, CheckId::DuplicateSpread, test::sampleS)->passed); // 5.3 %
}

TEST(Checks, NearNothingTheNoiseOfTheReadingsIsTheLimit)
{
    assay::Method method = test::risingMethod();
    method.acceptance.repeatability.reset();
    // f(2) x sqrt(2) x 0.002 = 0.0078 in signal, where 5 % of the mean would be 0.001
    const auto good =
        resultWith(method, test::sampleTube("S", 0.120, 0.150), test::sampleTube("S", 0.120, 0.157));
    EXPECT_TRUE(test::find(good.checks, CheckId::DuplicateSpread, test::sampleS)->passed);
    const auto poor =
        resultWith(method, test::sampleTube("S", 0.120, 0.150), test::sampleTube("S", 0.120, 0.159));
    EXPECT_FALSE(test::find(poor.checks, CheckId::DuplicateSpread, test::sampleS)->passed);
}

TEST(Checks, TwoVolumesThatDisagreePointToAnInterference)
{
    run::Tube larger = test::sampleTube("S", 0.120, 0.120 + 0.010 + 0.800);
    larger.sampleVolume_mL = 0.2;
    const auto result = resultWith(test::risingMethod(), test::sampleTube("S", 0.120, 0.630), larger);
    EXPECT_FALSE(test::find(result.checks, CheckId::VolumeProportionality, test::sampleS)->passed);
    EXPECT_EQ(test::find(result.checks, CheckId::DuplicateSpread, test::sampleS),
              nullptr); // no two of one volume
    EXPECT_EQ(result.verdict, Verdict::Investigate);
}

TEST(Checks, SampleVolumeOutsideTheMethodsRangeIsSaid)
{
    run::Tube tube = test::sampleTube("S", 0.120, 0.630);
    tube.sampleVolume_mL = 0.6;
    const auto result = resultWith(test::risingMethod(), test::sampleTube("S", 0.120, 0.630), tube);
    const evaluation::Check *check =
        test::find(result.checks, CheckId::SampleVolumeOutsideRange, test::sampleS);
    EXPECT_FALSE(check->passed);
    EXPECT_EQ(check->tubes, std::vector<int>{2});
}

TEST(Checks, PoorRecoveryHoldsUpEverySample)
{
    run::Run run = test::plainRun();
    run.standards = {{u"STD"_s, 0.168253968, {}, {}, {}, 0}};
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.1 + 0.010 + 0.45)); // 90 %
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(*evaluation.standards[0].recovery_percent, 90, 1e-6);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::StandardRecovery, u"standard STD"_s)->passed);
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Investigate);
    EXPECT_FALSE(evaluation.acceptable);
}

TEST(Checks, StandardThatLostTooMuchIsTooOld)
{
    run::Run run = test::plainRun();
    run.standards = {{u"STD"_s,
                      0.168253968,
                      {},
                      QDateTime::fromString(u"2026-03-02T08:00:00Z"_s, Qt::ISODate),
                      QDateTime::fromString(u"2026-03-02T11:00:00Z"_s, Qt::ISODate),
                      0.02}};
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.1 + 0.010 + 0.5 * 0.98 * 0.98 * 0.98));
    EXPECT_TRUE(evaluation::evaluate(test::risingMethod(), run).acceptable); // three hours: 94 %
    run.standards[0].usedAt = QDateTime::fromString(u"2026-03-02T17:00:00Z"_s, Qt::ISODate); // nine: 83 %
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::StandardTooOld, u"standard STD"_s)->passed);
}

TEST(Checks, StandardThatLosesNothingHasNoAge)
{
    run::Run run = test::plainRun();
    run.standards = {{u"STD"_s,
                      0.168253968,
                      {},
                      QDateTime::fromString(u"2026-01-02T08:00:00Z"_s, Qt::ISODate),
                      QDateTime::fromString(u"2026-03-02T11:00:00Z"_s, Qt::ISODate),
                      0}};
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.61));
    EXPECT_TRUE(evaluation::evaluate(test::risingMethod(), run).acceptable);
}

TEST(Checks, ExpiredLotIsSaid)
{
    run::Run run = test::plainRun();
    run.startedAt = QDateTime::fromString(u"2026-03-02T09:00:00+01:00"_s, Qt::ISODate);
    run.lots = {{u"starter"_s, u"E-17"_s, QDate(2026, 3, 2)}};
    EXPECT_TRUE(evaluation::evaluate(test::risingMethod(), run).acceptable); // its last day
    run.lots[0].expires = QDate(2026, 3, 1);
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::LotExpired, u"run"_s)->passed);
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Investigate);
}

TEST(Checks, SpikeOutsideItsLimitsIsInvestigated)
{
    run::Run run = test::plainRun();
    run.standards = {{u"STD"_s, 0.2, {}, {}, {}, 0}};
    run::Tube spiked = test::sampleTube("S", 0.120, 0.120 + 0.510 + 0.200); // expected 0.297
    spiked.role = run::Role::Spiked;
    spiked.spike = run::Spike{u"STD"_s, 0.05};
    run.tubes.push_back(spiked);
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::SpikeRecovery, test::sampleS)->passed);
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Investigate);
    run.tubes.back().readings[u"A2"_s] = 0.120 + 0.510 + 0.297;
    EXPECT_TRUE(evaluation::evaluate(test::risingMethod(), run).acceptable);
}

TEST(Checks, UnreadTubeIsNamedWithItsReading)
{
    run::Tube unread = test::sampleTube("S", 0.120, 0);
    unread.readings.erase(u"A2"_s);
    const auto result = resultWith(test::risingMethod(), test::sampleTube("S", 0.120, 0.630), unread);
    const evaluation::Check *check = test::find(result.checks, CheckId::ReadingMissing, test::sampleS);
    EXPECT_FALSE(check->passed);
    EXPECT_TRUE(check->message().startsWith(u"tube 3: A2 is missing"_s)) << check->message().toStdString();
}

TEST(Checks, UnreadSampleIsNotSaidToLieInTheWindow)
{
    run::Run run = test::plainRun();
    run.tubes[1].readings.clear();
    run.tubes[2].readings.clear();
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::ReadingMissing, test::sampleS)->passed);
    for (const CheckId id : {CheckId::SignalLow, CheckId::SignalHigh, CheckId::WrongDirection})
        EXPECT_EQ(test::find(evaluation.checks, id, test::sampleS), nullptr);
}

TEST(Checks, SampleInNoTubeHasNoResult)
{
    run::Run run = test::plainRun();
    run.samples.push_back(test::liquid("never pipetted"));
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_EQ(evaluation.results.size(), 1U);
    EXPECT_TRUE(evaluation.acceptable);
}

TEST(Checks, ScopeNamesTheMeasurandOnlyWhereThereAreSeveral)
{
    run::Run run = test::plainRun();
    for (run::Tube &tube : run.tubes)
        tube.readings[u"A3"_s] = 1.0;
    const auto evaluation = evaluation::evaluate(test::sequentialMethod(), run);
    EXPECT_NE(test::find(evaluation.checks, CheckId::SignalHigh, u"sample S, second"_s), nullptr);
    EXPECT_EQ(test::find(evaluation.checks, CheckId::SignalHigh, test::sampleS), nullptr);
}

TEST(Checks, EveryWordIsOfTheContract)
{
    EXPECT_EQ(evaluation::checkWord(CheckId::ReadingMissing), u"reading-missing"_s);
    EXPECT_EQ(evaluation::checkWord(CheckId::VolumeProportionality), u"volume-proportionality"_s);
    EXPECT_EQ(evaluation::checkWord(CheckId::SampleVolumeOutsideRange), u"sample-volume-outside-range"_s);
}

TEST(Checks, DisagreeingReplicatesAreNamedAndReadAgainFirst)
{
    const auto result = resultWith(test::risingMethod(), test::sampleTube("S", 0.120, 0.630),
                                   test::sampleTube("S", 0.120, 0.677));
    EXPECT_EQ(test::find(result.checks, CheckId::DuplicateSpread, test::sampleS)->message().toStdString(),
              "The replicates in tubes 2 and 3 are 0.0158\u00a0g/L apart, more than 0.0153\u00a0g/L (the "
              "method's repeatability limit). Read them again while they stand in the rack; if they still "
              "disagree, one of them was pipetted wrongly: repeat the sample.");
}

TEST(Checks, WhatWasFoundStandsApartFromWhatToDo)
{
    const auto disagreeing = resultWith(test::risingMethod(), test::sampleTube("S", 0.120, 0.630),
                                        test::sampleTube("S", 0.120, 0.677));
    const evaluation::Check *spread = test::find(disagreeing.checks, CheckId::DuplicateSpread, test::sampleS);
    ASSERT_NE(spread, nullptr);
    EXPECT_EQ(spread->finding, u"The replicates in tubes 2 and 3 are 0.0158\u00a0g/L apart, more than "
                               "0.0153\u00a0g/L (the method's repeatability limit)."_s);
    EXPECT_EQ(spread->whatToDo, u"Read them again while they stand in the rack; if they still disagree, one of "
                                "them was pipetted wrongly: repeat the sample."_s);
    EXPECT_EQ(spread->message(), spread->finding + u' ' + spread->whatToDo);

    // What a finding means belongs to it.
    run::Run run = test::plainRun();
    run.tubes = {test::blank(1.500, 1.490), test::sampleTube("S", 1.500, 0.040)};
    const auto falling = evaluation::evaluate(test::fallingMethod(), run);
    const evaluation::Check *reserve = test::find(falling.checks, CheckId::ReserveLow, test::sampleS);
    ASSERT_NE(reserve, nullptr);
    EXPECT_TRUE(reserve->finding.endsWith(u" The reagent was used up: the true value is only known to be larger."_s))
        << reserve->finding.toStdString();
    EXPECT_TRUE(reserve->whatToDo.startsWith(u"Repeat diluted at least "_s)) << reserve->whatToDo.toStdString();

    for (const evaluation::Check &check : falling.checks) {
        EXPECT_TRUE(!check.passed || check.whatToDo.isEmpty()) << check.message().toStdString();
    }
}

TEST(Checks, SayWhatAFailureMeansWhereTheFindingDoesNot)
{
    EXPECT_EQ(evaluation::checkConsequence(CheckId::DuplicateSpread),
              u"The result is their mean, which is less well known than usual."_s);
    EXPECT_EQ(evaluation::checkConsequence(CheckId::StandardRecovery),
              u"The results of the run may be off in the same proportion."_s);
    EXPECT_EQ(evaluation::checkConsequence(CheckId::ReserveLow), QString());
}

TEST(Checks, NoDifferenceIsAPlainNought)
{
    const auto result = evaluation::evaluate(test::risingMethod(), test::plainRun()).results.at(0);
    EXPECT_EQ(test::find(result.checks, CheckId::DuplicateSpread, test::sampleS)->message().toStdString(),
              "The replicates agree: 0\u00a0g/L apart, up to 0.0150\u00a0g/L allowed (the method's "
              "repeatability limit).");
}

TEST(Checks, RecoveryIsSaidWithTheStrengthsBehindIt)
{
    run::Run run = test::plainRun();
    run.standards = {{u"STD"_s, 0.168253968, {}, {}, {}, 0}};
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.1 + 0.010 + 0.45));
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    const evaluation::Check *check =
        test::find(evaluation.checks, CheckId::StandardRecovery, u"standard STD"_s);
    EXPECT_TRUE(check->message().startsWith(u"Recovery 90.0\u00a0% is outside 95.0 to 105.0\u00a0% "
                                          "(0.151\u00a0g/L found, 0.168\u00a0g/L at use)."_s))
        << check->message().toStdString();
}

TEST(Checks, OneDilutionIsSaidOnceButGoesWithEveryCheckThatAsksForIt)
{
    run::Run run = test::plainRun();
    run.tubes = {test::blank(1.500, 1.490), test::sampleTube("S", 1.500, 0.040)};
    const auto evaluation = evaluation::evaluate(test::fallingMethod(), run);
    const evaluation::Check *reserve = test::find(evaluation.checks, CheckId::ReserveLow, test::sampleS);
    const evaluation::Check *high = test::find(evaluation.checks, CheckId::SignalHigh, test::sampleS);
    EXPECT_EQ(reserve->advice, high->advice);
    EXPECT_EQ(reserve->message().count(u"Repeat"_s) + high->message().count(u"Repeat"_s), 1);
}
