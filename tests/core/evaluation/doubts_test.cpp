// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// What is asked about a reading before it is stored, and what is not.
#include "core/evaluation/doubts.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace plateau;
using namespace Qt::StringLiterals;
using evaluation::Doubt;
using evaluation::doubtAbout;
using evaluation::doubtsAbout;

namespace {

/// Two blanks, samples S and T in duplicate; nothing read yet.
run::Run unreadRun()
{
    run::Run run = test::plainRun();
    run.samples = {test::liquid("S"), test::liquid("T")};
    run.tubes = {test::blank(0, 0),           test::blank(0, 0),           test::sampleTube("S", 0, 0),
                 test::sampleTube("S", 0, 0), test::sampleTube("T", 0, 0), test::sampleTube("T", 0, 0)};
    for (run::Tube &tube : run.tubes)
        tube.readings.clear();
    return run;
}

/// How often one is asked while every reading of that name is kept as it is keyed, tube by tube.
int questionsOf(const assay::Method &method, run::Run run, const QString &reading,
                const std::vector<double> &keyed)
{
    int questions = 0;
    for (size_t i = 0; i < keyed.size(); ++i) {
        questions += doubtAbout(method, run, static_cast<int>(i), reading, keyed[i]).isEmpty() ? 0 : 1;
        run.tubes[i].readings[reading] = keyed[i];
    }
    return questions;
}

run::Run withA1(run::Run run, const std::vector<double> &read)
{
    for (size_t i = 0; i < read.size(); ++i)
        run.tubes[i].readings[u"A1"_s] = read[i];
    return run;
}

std::vector<Doubt::Kind> kindsOf(const std::vector<Doubt> &doubts)
{
    std::vector<Doubt::Kind> kinds;
    for (const Doubt &doubt : doubts)
        kinds.push_back(doubt.kind);
    return kinds;
}

const Doubt *doubtOfKind(const std::vector<Doubt> &doubts, Doubt::Kind kind)
{
    const auto found = std::ranges::find(doubts, kind, &Doubt::kind);
    return found == doubts.end() ? nullptr : &*found;
}

} // namespace

TEST(Doubts, DecimalSlippedDownInAFallingMethodIsAskedAbout)
{
    const run::Run run = withA1(unreadRun(), {1.385, 1.387});
    const QString doubt = doubtAbout(test::fallingMethod(), run, 2, u"A1"_s, 0.1385);
    EXPECT_TRUE(doubt.startsWith(u"Tube 3: A1 is 0.139, but the other tubes"_s)) << doubt.toStdString();
    EXPECT_TRUE(doubt.contains(u"1.386"_s)) << doubt.toStdString();
    EXPECT_EQ(doubtAbout(test::fallingMethod(), run, 2, u"A1"_s, 1.385), QString());
}

TEST(Doubts, DecimalSlippedEitherWayInARisingMethodIsAskedAbout)
{
    const run::Run run = withA1(unreadRun(), {0.102, 0.103, 0.121});
    const assay::Method method = test::risingMethod();
    const QString replicate = doubtAbout(method, run, 3, u"A1"_s, 1.21);
    EXPECT_TRUE(replicate.contains(u"tube 3 with the same contents read 0.121"_s)) << replicate.toStdString();
    EXPECT_NE(doubtAbout(method, run, 3, u"A1"_s, 0.0121), QString());
    EXPECT_NE(doubtAbout(method, run, 4, u"A1"_s, 1.18), QString());
    EXPECT_NE(doubtAbout(method, run, 4, u"A1"_s, 0.0118), QString());
    EXPECT_EQ(doubtAbout(method, run, 4, u"A1"_s, 0.118), QString());
    EXPECT_EQ(doubtAbout(method, run, 3, u"A1"_s, 0.123), QString());
}

TEST(Doubts, FirstReadingOfARunHasNothingToBeHeldAgainst)
{
    EXPECT_EQ(doubtAbout(test::risingMethod(), unreadRun(), 0, u"A1"_s, 0.0385), QString());
    EXPECT_NE(doubtAbout(test::risingMethod(), withA1(unreadRun(), {0.0385}), 1, u"A1"_s, 0.385), QString());
}

TEST(Doubts, TheMethodSaysWhatAFallingReagentHasAtTheStart)
{
    using enum Doubt::Kind;
    const assay::Method method = test::fallingMethod(); // 1.0 at most, 0.1 must remain
    const auto slipped = doubtsAbout(method, unreadRun(), 0, u"A1"_s, 0.139);
    ASSERT_EQ(kindsOf(slipped), std::vector{ReagentMissing});
    EXPECT_TRUE(slipped[0].asks);
    EXPECT_EQ(slipped[0].sentence,
              u"Tube 1: A1 is 0.139, and 1.100 has to be there at the start for the largest signal and what must remain. "
              "Look for a slipped decimal point or a reagent left out."_s);
    // Nearer to 0.11 than to 1.1: below 1.1 / √10 = 0.3479.
    EXPECT_EQ(kindsOf(doubtsAbout(method, unreadRun(), 0, u"A1"_s, 0.347)), std::vector{ReagentMissing});
    EXPECT_TRUE(doubtsAbout(method, unreadRun(), 0, u"A1"_s, 0.348).empty());
    EXPECT_TRUE(doubtsAbout(method, unreadRun(), 0, u"A1"_s, 1.39).empty());
    EXPECT_EQ(kindsOf(doubtsAbout(method, unreadRun(), 2, u"A1"_s, 0.139)), std::vector{ReagentMissing})
        << "of a sample, too, which can only add colour";
    assay::Method open = method;
    open.window.reserveAbsorbance.reset();
    EXPECT_TRUE(doubtsAbout(open, unreadRun(), 0, u"A1"_s, 0.139).empty()) << "what falls may come with the sample";
}

TEST(Doubts, TheStartIsJudgedAtTheRunsWavelengthAndPathLength)
{
    using enum Doubt::Kind;
    const assay::Method method = test::fallingMethod();
    run::Run run = unreadRun();
    run.wavelength_nm = 365; // 1.1 x 3400 / 6300 = 0.5937, nearer to a tenth of it below 0.1877
    EXPECT_TRUE(doubtsAbout(method, run, 0, u"A1"_s, 0.188).empty());
    EXPECT_EQ(kindsOf(doubtsAbout(method, run, 0, u"A1"_s, 0.187)), std::vector{ReagentMissing});
    run.pathLength_mm = 20; // twice that
    EXPECT_EQ(kindsOf(doubtsAbout(method, run, 0, u"A1"_s, 0.188)), std::vector{ReagentMissing});
}

TEST(Doubts, AFirstBlankLeavesRoomForTheLargestSignal)
{
    using enum Doubt::Kind;
    const assay::Method method = test::risingMethod(); // 1.0 at most, the photometer shows 2.0
    EXPECT_TRUE(doubtsAbout(method, unreadRun(), 0, u"A1"_s, 1.0).empty());
    const auto slipped = doubtsAbout(method, unreadRun(), 0, u"A1"_s, 1.03);
    ASSERT_EQ(kindsOf(slipped), std::vector{StartHigh});
    EXPECT_TRUE(slipped[0].asks);
    EXPECT_EQ(slipped[0].sentence,
              u"Tube 1: A1 is 1.030, and more than 1.000 at the start leaves no room for the largest signal. Look for a "
              "slipped decimal point, and that the photometer was set to zero."_s);
    EXPECT_EQ(kindsOf(doubtsAbout(method, unreadRun(), 0, u"A1"_s, 2.1)), std::vector{AbsorbanceHigh});
    EXPECT_TRUE(doubtsAbout(method, unreadRun(), 2, u"A1"_s, 1.03).empty()) << "a sample may be coloured";
    EXPECT_TRUE(doubtsAbout(test::fallingMethod(), unreadRun(), 0, u"A1"_s, 1.9).empty());
    assay::Method wide = method;
    wide.window.maxSignal = 1.9; // half of the limit still is room
    EXPECT_TRUE(doubtsAbout(wide, unreadRun(), 0, u"A1"_s, 0.9).empty());
    wide.window.maxAbsorbance.reset();
    EXPECT_TRUE(doubtsAbout(wide, unreadRun(), 0, u"A1"_s, 1.9).empty());
}

TEST(Doubts, WhereEarlierBlanksLayBeyondABoundItAsksNothing)
{
    using enum Doubt::Kind;
    const auto kinds = [](const assay::Method &method, int tube, double absorbance, double usual) {
        return kindsOf(doubtsAbout(method, unreadRun(), tube, u"A1"_s, absorbance, {}, usual));
    };
    EXPECT_TRUE(kinds(test::risingMethod(), 0, 1.03, 1.05).empty());
    EXPECT_EQ(kinds(test::risingMethod(), 0, 1.03, 0.9), std::vector{StartHigh});
    EXPECT_TRUE(kinds(test::fallingMethod(), 0, 0.3, 0.31).empty());
    EXPECT_EQ(kinds(test::fallingMethod(), 0, 0.3, 0.6), std::vector{ReagentMissing});
    EXPECT_EQ(kinds(test::fallingMethod(), 2, 0.3, 0.31), std::vector{ReagentMissing}) << "a sample is no blank";
}

TEST(Doubts, AUsedUpReagentMayBeASlippedDecimalPoint)
{
    const assay::Method method = test::fallingMethod(); // 0.100 must remain
    run::Run run = withA1(unreadRun(), {1.385, 1.386, 1.386, 1.385});
    const auto sentence = [&](double absorbance) {
        return doubtOfKind(doubtsAbout(method, run, 2, u"A2"_s, absorbance), Doubt::Kind::ReserveLow)->sentence;
    };
    EXPECT_TRUE(sentence(0.0957).endsWith(u" Or the decimal point slipped: 0.957 would be plausible here."_s))
        << sentence(0.0957).toStdString();
    EXPECT_FALSE(sentence(0.009).contains(u"decimal point"_s)) << "0.090 would be used up as well";
    run.tubes[2].readings[u"A1"_s] = 0.9;
    EXPECT_FALSE(sentence(0.0957).contains(u"decimal point"_s)) << "0.957 would be more than it began with";
    run.tubes[2].readings[u"A1"_s] = 1.386;
    run.tubes[3].readings[u"A2"_s] = 0.094;
    EXPECT_FALSE(sentence(0.0957).contains(u"decimal point"_s)) << "its replicate shows the same";
}

TEST(Doubts, TheFirstReadingOfARackIsHeldAgainstTheBlanksOfEarlierRuns)
{
    const assay::Method method = test::risingMethod();
    const auto ask = [&](const run::Run &run, int tube, double absorbance, std::optional<double> usual) {
        return doubtAbout(method, run, tube, u"A1"_s, absorbance, {}, usual);
    };
    const QString asked = ask(unreadRun(), 0, 1.02, 0.103);
    EXPECT_TRUE(asked.startsWith(u"Tube 1: A1 is 1.020, but blanks of earlier runs by this method read about 0.103."_s))
        << asked.toStdString();
    EXPECT_EQ(ask(unreadRun(), 0, 0.131, 0.103), QString()) << "another lot may look different";
    EXPECT_EQ(ask(unreadRun(), 0, 0.95, {}), QString());
    EXPECT_EQ(ask(unreadRun(), 2, 1.02, 0.103), QString()) << "a sample may be coloured";
    EXPECT_EQ(ask(withA1(unreadRun(), {1.03}), 1, 1.02, 0.103), QString()) << "its own neighbour says more";
    EXPECT_EQ(doubtAbout(method, withA1(unreadRun(), {0.103}), 0, u"A2"_s, 0.11, {}, 1.1), QString())
        << "only where nothing was added that differs";
}

TEST(Doubts, ColouredSampleIsAskedAboutOnceAtMost)
{
    EXPECT_EQ(
        questionsOf(test::risingMethod(), unreadRun(), u"A1"_s, {0.052, 0.053, 0.640, 0.645, 0.580, 0.575}),
        1);
    EXPECT_EQ(
        questionsOf(test::risingMethod(), unreadRun(), u"A1"_s, {0.102, 0.103, 0.290, 0.295, 0.180, 0.175}),
        0);
    EXPECT_EQ(
        questionsOf(test::fallingMethod(), unreadRun(), u"A1"_s, {1.385, 1.386, 1.750, 1.755, 1.390, 1.391}),
        0);
}

TEST(Doubts, ItsOtherVolumesOfAColouredSampleAndItsBlankAreNotAskedAboutAgain)
{
    run::Run run = unreadRun();
    run.tubes[3].sampleVolume_mL = 0.05;
    run.tubes[4] = run.tubes[2];
    run.tubes[4].role = run::Role::SampleBlank;
    EXPECT_EQ(questionsOf(test::risingMethod(), run, u"A1"_s, {0.052, 0.053, 0.640, 0.346, 0.638}), 1);
}

TEST(Doubts, SmallDifferencesNearZeroAreNoSlip)
{
    EXPECT_EQ(
        questionsOf(test::risingMethod(), unreadRun(), u"A1"_s, {0.001, -0.002, 0.020, 0.018, 0.004, 0.009}),
        0);
}

TEST(Doubts, LaterReadingIsHeldAgainstItsOwnReplicatesOnly)
{
    run::Run run = withA1(unreadRun(), {0.102, 0.103, 0.121, 0.122, 0.119, 0.120});
    run.tubes[0].readings[u"A2"_s] = 0.110;
    run.tubes[1].readings[u"A2"_s] = 0.111;
    const assay::Method method = test::risingMethod();
    EXPECT_EQ(doubtAbout(method, run, 2, u"A2"_s, 0.950), QString());
    run.tubes[2].readings[u"A2"_s] = 0.190;
    EXPECT_TRUE(doubtAbout(method, run, 3, u"A2"_s, 1.900).contains(u"slipped decimal point"_s));
    EXPECT_EQ(doubtAbout(method, run, 3, u"A2"_s, 0.200), QString());
}

TEST(Doubts, TheFirstBlanksSignalIsHeldAgainstTheMethodsLimit)
{
    const run::Run run = withA1(unreadRun(), {0.105});
    const assay::Method method = test::risingMethod();
    const double limit = *method.acceptance.maxBlankSignal;
    const QString doubt = doubtAbout(method, run, 0, u"A2"_s, 1.15);
    EXPECT_TRUE(doubt.startsWith(u"Tube 1: with this the blank's signal is 1.045"_s)) << doubt.toStdString();
    EXPECT_EQ(doubtAbout(method, run, 0, u"A2"_s, 0.105 + limit * 0.99), QString());
    EXPECT_NE(doubtAbout(method, run, 0, u"A2"_s, 0.105 + limit * 1.01), QString());
    EXPECT_EQ(doubtAbout(method, run, 2, u"A2"_s, 1.15), QString()) << "a sample may be strong";
    assay::Method without = method;
    without.acceptance.maxBlankSignal.reset();
    EXPECT_EQ(doubtAbout(without, run, 0, u"A2"_s, 1.15), QString());
}

TEST(Doubts, SignalInTheWrongDirectionIsAskedAboutBeyondNoise)
{
    const run::Run rising = withA1(unreadRun(), {0.102, 0.103, 0.521});
    const QString doubt = doubtAbout(test::risingMethod(), rising, 2, u"A2"_s, 0.321);
    EXPECT_TRUE(doubt.startsWith(u"Tube 3: absorbance fell by 0.200"_s)) << doubt.toStdString();
    EXPECT_EQ(doubtAbout(test::risingMethod(), rising, 2, u"A2"_s, 0.516), QString());
    const run::Run falling = withA1(unreadRun(), {1.385, 1.386, 0.1385});
    EXPECT_NE(doubtAbout(test::fallingMethod(), falling, 2, u"A2"_s, 0.885), QString());
}

TEST(Doubts, ReadingAboveThePhotometersMaximumIsAskedAbout)
{
    const run::Run run = withA1(unreadRun(), {0.102, 0.103, 0.521});
    const assay::Method method = test::risingMethod();
    EXPECT_TRUE(doubtAbout(method, run, 2, u"A2"_s, 2.001).contains(u"photometer's limit of 2.000"_s));
    EXPECT_EQ(doubtAbout(method, run, 2, u"A2"_s, 2.000), QString());
}

TEST(Doubts, MostSeriousIsSaidAlone)
{
    const run::Run run = withA1(unreadRun(), {0.102, 0.103, 2.900});
    const assay::Method method = test::risingMethod();
    EXPECT_TRUE(doubtAbout(method, run, 2, u"A1"_s, 12.1).contains(u"outside -0.1 to 4"_s));
    const QString wrong = doubtAbout(method, run, 2, u"A2"_s, 2.5);
    EXPECT_TRUE(wrong.contains(u"where it should rise"_s)) << wrong.toStdString();
    EXPECT_FALSE(wrong.contains(u"limit"_s)) << wrong.toStdString();
    EXPECT_TRUE(doubtAbout(method, run, 3, u"A1"_s, 3.0).contains(u"limit of 2.000"_s));
}

TEST(Doubts, WhatStandsThereAlreadyIsNotHeldAgainstItsCorrection)
{
    run::Run run = withA1(unreadRun(), {0.102, 0.103, 12.1, 0.122});
    EXPECT_EQ(doubtAbout(test::risingMethod(), run, 2, u"A1"_s, 0.121), QString());
    EXPECT_EQ(doubtAbout(test::risingMethod(), run, 2, u"A2"_s, 0.521), QString())
        << "what was kept in A1 is not asked about again";
}

namespace {

bool asksAbout(const assay::Method &method, const run::Run &run, int tube, const QString &reading,
               double absorbance, Doubt::Kind kind)
{
    const auto doubts = doubtsAbout(method, run, tube, reading, absorbance);
    const Doubt *doubt = doubtOfKind(doubts, kind);
    return doubt && doubt->asks;
}

/// Three blanks, a standard, then one tube each of the samples S, T, U and V, all read at A1.
run::Run mixedRack()
{
    run::Run run = test::plainRun();
    run.standards = {{u"STD"_s, 0.168, {}, {}, {}, 0}};
    run.samples = {test::liquid("S"), test::liquid("T"), test::liquid("U"), test::liquid("V")};
    run.tubes = {test::blank(0.100, 0),           test::blank(0.104, 0),
                 test::blank(0.102, 0),           test::standardTube("STD", 0.103, 0),
                 test::sampleTube("S", 0.110, 0), test::sampleTube("T", 0.120, 0),
                 test::sampleTube("U", 0.130, 0), test::sampleTube("V", 0.118, 0)};
    for (run::Tube &tube : run.tubes)
        tube.readings.erase(u"A2"_s);
    return run;
}

} // namespace

TEST(Doubts, AFirstReadingIsHeldAgainstTheScatterOfTubesOfALikeMatrix)
{
    using enum Doubt::Kind;
    const run::Run run = mixedRack();
    const assay::Method method = test::risingMethod();
    // A standard against the three blanks: median 0.102, 0.030 allowed.
    EXPECT_FALSE(asksAbout(method, run, 3, u"A1"_s, 0.132, FarFromOthers));
    EXPECT_TRUE(asksAbout(method, run, 3, u"A1"_s, 0.133, FarFromOthers));
    EXPECT_FALSE(asksAbout(method, run, 3, u"A1"_s, 0.072, FarFromOthers));
    EXPECT_TRUE(asksAbout(method, run, 3, u"A1"_s, 0.071, FarFromOthers));
    // A sample against S, T and U: median 0.120, three scaled deviations of 0.010 come to 0.0445.
    EXPECT_FALSE(asksAbout(method, run, 7, u"A1"_s, 0.164, FarFromOthers));
    EXPECT_TRUE(asksAbout(method, run, 7, u"A1"_s, 0.165, FarFromOthers));
    const auto doubts = doubtsAbout(method, run, 3, u"A1"_s, 0.150);
    EXPECT_EQ(
        doubtOfKind(doubts, FarFromOthers)->sentence,
        u"Tube 4: A1 is 0.150, but 3 blanks and standards read about 0.102, and the same reagents scatter "
        "by 0.030 at most. Look for a reagent left out or added twice, bubbles, or a coloured sample."_s);
}

TEST(Doubts, ASampleMayBeColouredButNotPalerThanWhatIsClear)
{
    using enum Doubt::Kind;
    run::Run run = mixedRack();
    run.tubes[4].readings[u"A1"_s] = 0.200;
    run.tubes[5].readings[u"A1"_s] = 0.300;
    run.tubes[6].readings[u"A1"_s] = 0.400;
    const assay::Method method = test::risingMethod();
    EXPECT_FALSE(asksAbout(method, run, 7, u"A1"_s, 0.250, FarFromOthers));
    // Blanks and standard: median 0.1025.
    EXPECT_FALSE(asksAbout(method, run, 7, u"A1"_s, 0.073, FarFromOthers));
    EXPECT_TRUE(asksAbout(method, run, 7, u"A1"_s, 0.072, FarFromOthers));
}

TEST(Doubts, TwoOthersShowNoScatter)
{
    run::Run run = mixedRack();
    run.tubes[2].readings.clear();
    EXPECT_FALSE(asksAbout(test::risingMethod(), run, 3, u"A1"_s, 0.200, Doubt::Kind::FarFromOthers));
    run.tubes[6].readings.clear();
    EXPECT_FALSE(asksAbout(test::risingMethod(), run, 7, u"A1"_s, 0.200, Doubt::Kind::FarFromOthers));
}

TEST(Doubts, ThreePercentOfALargeFirstReadingIsScatter)
{
    run::Run run = mixedRack();
    for (run::Tube &tube : run.tubes)
        tube.readings[u"A1"_s] = std::get<double>(tube.readings[u"A1"_s]) + 1.4;
    // Three percent of 1.502 are 0.04506.
    EXPECT_FALSE(asksAbout(test::fallingMethod(), run, 3, u"A1"_s, 1.547, Doubt::Kind::FarFromOthers));
    EXPECT_TRUE(asksAbout(test::fallingMethod(), run, 3, u"A1"_s, 1.548, Doubt::Kind::FarFromOthers));
}

TEST(Doubts, AColouredSampleIsHeldAgainstItsOwnTubeOnly)
{
    run::Run run = mixedRack();
    run.tubes.push_back(run.tubes[7]);
    run.tubes[7].readings[u"A1"_s] = 0.240; // asked about, and kept
    const assay::Method method = test::risingMethod();
    EXPECT_TRUE(doubtsAbout(method, run, 8, u"A1"_s, 0.243).empty());
    EXPECT_TRUE(asksAbout(method, run, 8, u"A1"_s, 0.271, Doubt::Kind::FarFromReplicate));
    EXPECT_FALSE(asksAbout(method, run, 8, u"A1"_s, 0.270, Doubt::Kind::FarFromReplicate));
    // Its blank reads the same before the starter; another volume of it has another colour.
    run.tubes[8].role = run::Role::SampleBlank;
    EXPECT_TRUE(doubtsAbout(method, run, 8, u"A1"_s, 0.243).empty());
    run.tubes[8].sampleVolume_mL = 0.05;
    EXPECT_TRUE(doubtsAbout(method, run, 8, u"A1"_s, 0.175).empty());
}

TEST(Doubts, ALaterReadingIsHeldAgainstTheMethodsRepeatabilityInAbsorbance)
{
    using enum Doubt::Kind;
    run::Run run = withA1(unreadRun(), {0.100, 0.100, 0.120, 0.120});
    run.tubes[0].readings[u"A2"_s] = 0.110;
    run.tubes[2].readings[u"A2"_s] = 0.530;
    const assay::Method method = test::risingMethod();
    // One absorbance stands for 100 x 2.12 / 6300 / 0.1 = 0.33651 g/L, so 0.01 g/L + 3 % is 0.0297 + 3 % of
    // the mean of both net signals, A2 - 0.130.
    EXPECT_FALSE(asksAbout(method, run, 3, u"A2"_s, 0.572, FarFromReplicate));
    EXPECT_TRUE(asksAbout(method, run, 3, u"A2"_s, 0.573, FarFromReplicate));
    EXPECT_FALSE(asksAbout(method, run, 3, u"A2"_s, 0.490, FarFromReplicate));
    EXPECT_TRUE(asksAbout(method, run, 3, u"A2"_s, 0.488, FarFromReplicate));
    const QString sentence = doubtAbout(method, run, 3, u"A2"_s, 0.600);
    EXPECT_TRUE(
        sentence.startsWith(u"Tube 4: with this its net signal is 0.470, but tube 3 with the same contents "
                            "gave 0.400, and at most 0.043 is allowed between them (the method's repeatability limit)"_s))
        << sentence.toStdString();
    // Without a published limit, the laboratory's 5 %.
    assay::Method own = method;
    own.acceptance.repeatability.reset();
    EXPECT_FALSE(asksAbout(own, run, 3, u"A2"_s, 0.550, FarFromReplicate));
    EXPECT_TRUE(asksAbout(own, run, 3, u"A2"_s, 0.552, FarFromReplicate));
}

TEST(Doubts, TheSecondBlankIsHeldAgainstTheFirst)
{
    run::Run run = withA1(unreadRun(), {0.100, 0.101});
    run.tubes[0].readings[u"A2"_s] = 0.110;
    const assay::Method method = test::risingMethod();
    EXPECT_FALSE(asksAbout(method, run, 1, u"A2"_s, 0.121, Doubt::Kind::FarFromReplicate));
    EXPECT_TRUE(asksAbout(method, run, 1, u"A2"_s, 0.122, Doubt::Kind::FarFromReplicate));
    run.uncertainty = test::uncertainties();
    run.uncertainty->absorbance = 0.004; // the noise allows 2.8 x 1.414 x 0.004 = 0.016
    EXPECT_FALSE(asksAbout(method, run, 1, u"A2"_s, 0.126, Doubt::Kind::FarFromReplicate));
    EXPECT_TRUE(asksAbout(method, run, 1, u"A2"_s, 0.128, Doubt::Kind::FarFromReplicate));
}

TEST(Doubts, AReplicateThatMeansNothingIsNoMeasure)
{
    run::Run run = withA1(unreadRun(), {0.100, 0.100, 0.120, 0.120});
    run.tubes[2].readings[u"A2"_s] = 0.080; // the wrong way
    EXPECT_FALSE(asksAbout(test::risingMethod(), run, 3, u"A2"_s, 0.175, Doubt::Kind::FarFromReplicate));
    run.tubes[2].readings[u"A2"_s] = 0.530;
    EXPECT_TRUE(asksAbout(test::risingMethod(), run, 3, u"A2"_s, 0.700, Doubt::Kind::FarFromReplicate));
    run.tubes[2].spoilt = u"knocked over"_s;
    EXPECT_FALSE(asksAbout(test::risingMethod(), run, 3, u"A2"_s, 0.700, Doubt::Kind::FarFromReplicate));
}

TEST(Doubts, ACorrectionIsJudgedLikeAFirstReading)
{
    run::Run run = withA1(unreadRun(), {0.100, 0.100, 0.120, 0.121});
    run.tubes[2].readings[u"A2"_s] = 0.530;
    const auto fresh = doubtsAbout(test::risingMethod(), run, 3, u"A2"_s, 0.350);
    EXPECT_EQ(kindsOf(fresh), std::vector{Doubt::Kind::FarFromReplicate});
    for (const double before : {0.530, 5.300, 0.053, 0.350}) {
        run.tubes[3].readings[u"A2"_s] = before;
        EXPECT_EQ(doubtsAbout(test::risingMethod(), run, 3, u"A2"_s, 0.350), fresh) << before;
    }
}

TEST(Doubts, TheNeighboursNumberIsRemarkedOn)
{
    using enum Doubt::Kind;
    run::Run run = withA1(unreadRun(), {0.100, 0.100, 0.121, 0.122, 0.119});
    run.tubes[2].readings[u"A2"_s] = 0.512;
    run.tubes[3].readings[u"A2"_s] = 0.514;
    const assay::Method method = test::risingMethod();
    const auto doubts = doubtsAbout(method, run, 4, u"A2"_s, 0.514);
    ASSERT_EQ(kindsOf(doubts), std::vector{SameAsNeighbour});
    EXPECT_FALSE(doubts[0].asks);
    EXPECT_EQ(
        doubts[0].sentence,
        u"Tube 5: A2 is 0.514, to the last digit what tube 4 shows, which was read just before and holds "
        "something else. Make sure that the cuvette was changed."_s);
    EXPECT_EQ(doubtAbout(method, run, 4, u"A2"_s, 0.514), QString());
    EXPECT_TRUE(doubtsAbout(method, run, 4, u"A2"_s, 0.5141).empty());
    EXPECT_TRUE(doubtsAbout(method, run, 4, u"A2"_s, 0.512).empty()) << "that is not the neighbour's";
    EXPECT_TRUE(doubtsAbout(method, run, 3, u"A2"_s, 0.512).empty()) << "a replicate may read the same";
    // By the time, not the place, where it is known.
    run.tubes[2].readAt_min[u"A2"_s] = 40;
    run.tubes[3].readAt_min[u"A2"_s] = 39;
    EXPECT_TRUE(doubtsAbout(method, run, 4, u"A2"_s, 0.514).empty());
    EXPECT_EQ(kindsOf(doubtsAbout(method, run, 4, u"A2"_s, 0.512)), std::vector{SameAsNeighbour});
    run.tubes[4].readAt_min[u"A2"_s] = 39.5; // corrected: what was read before it then
    EXPECT_EQ(kindsOf(doubtsAbout(method, run, 4, u"A2"_s, 0.514)), std::vector{SameAsNeighbour});
}

TEST(Doubts, ABlankPairMayReadTheSame)
{
    const run::Run run = withA1(unreadRun(), {0.102});
    EXPECT_TRUE(doubtsAbout(test::risingMethod(), run, 1, u"A1"_s, 0.102).empty());
}

TEST(Doubts, AReagentNearlyUsedUpIsRemarkedOn)
{
    using enum Doubt::Kind;
    run::Run run = withA1(unreadRun(), {1.385, 1.386, 1.000});
    const assay::Method method = test::fallingMethod(); // 0.100 must remain
    EXPECT_TRUE(doubtsAbout(method, run, 2, u"A2"_s, 0.150).empty());
    EXPECT_EQ(kindsOf(doubtsAbout(method, run, 2, u"A2"_s, 0.149)), std::vector{ReserveNear});
    EXPECT_EQ(kindsOf(doubtsAbout(method, run, 2, u"A2"_s, 0.100)), std::vector{ReserveNear});
    const auto usedUp = doubtsAbout(method, run, 2, u"A2"_s, 0.099);
    ASSERT_EQ(kindsOf(usedUp), std::vector{ReserveLow});
    EXPECT_TRUE(usedUp[0].asks) << "0.99 with a slipped decimal point looks the same";
    run.tubes[3].readings[u"A2"_s] = 0.098;
    EXPECT_FALSE(doubtOfKind(doubtsAbout(method, run, 2, u"A2"_s, 0.099), ReserveLow)->asks)
        << "its replicate shows the same";
    run.tubes[3].readings.erase(u"A2"_s);
    EXPECT_TRUE(usedUp[0].sentence.startsWith(u"Tube 3: A2 is 0.099, less than the 0.100 that must remain"_s))
        << usedUp[0].sentence.toStdString();
    EXPECT_TRUE(usedUp[0].sentence.contains(u"Repeat diluted at least"_s))
        << usedUp[0].sentence.toStdString();
    // Of a first reading that low is another matter.
    EXPECT_FALSE(doubtOfKind(doubtsAbout(method, run, 3, u"A1"_s, 0.149), ReserveNear));
}

TEST(Doubts, AFirstReadingOfAFallingReagentBelowWhatMustRemainIsAskedAboutThoughNothingIsBesideIt)
{
    using enum Doubt::Kind;
    const assay::Method method = test::fallingMethod(); // 0.100 must remain
    EXPECT_TRUE(doubtsAbout(method, unreadRun(), 0, u"A1"_s, 0.512).empty());
    const auto slipped = doubtsAbout(method, unreadRun(), 0, u"A1"_s, 0.0512);
    ASSERT_EQ(kindsOf(slipped), std::vector{ReagentMissing});
    EXPECT_TRUE(slipped[0].asks);
    EXPECT_TRUE(slipped[0].sentence.startsWith(u"Tube 1: A1 is 0.051, and 0.100 must remain"_s))
        << slipped[0].sentence.toStdString();
    // With something beside it, that says more.
    const run::Run begun = withA1(unreadRun(), {0.512});
    EXPECT_EQ(kindsOf(doubtsAbout(method, begun, 1, u"A1"_s, 0.0512)), std::vector{FarFromReplicate});
}

TEST(Doubts, ASignalPastTheWindowIsRemarkedOnWithTheAdvice)
{
    using enum Doubt::Kind;
    run::Run run = withA1(unreadRun(), {0.100, 0.100, 0.120});
    run.tubes[0].readings[u"A2"_s] = 0.110;
    run.tubes[1].readings[u"A2"_s] = 0.110;
    const assay::Method method = test::risingMethod(); // 0.1 to 1.0
    EXPECT_TRUE(doubtsAbout(method, run, 2, u"A2"_s, 1.130).empty());
    const auto high = doubtsAbout(method, run, 2, u"A2"_s, 1.131);
    ASSERT_EQ(kindsOf(high), std::vector{SignalHigh});
    EXPECT_FALSE(high[0].asks);
    EXPECT_TRUE(high[0].sentence.contains(u"Repeat diluted 2-fold in all"_s))
        << high[0].sentence.toStdString();
    EXPECT_TRUE(doubtsAbout(method, run, 2, u"A2"_s, 0.230).empty());
    const auto low = doubtsAbout(method, run, 2, u"A2"_s, 0.229);
    ASSERT_EQ(kindsOf(low), std::vector{SignalLow});
    EXPECT_FALSE(low[0].asks);
    EXPECT_TRUE(low[0].sentence.contains(u"of sample"_s)) << low[0].sentence.toStdString();
    EXPECT_TRUE(doubtsAbout(method, run, 1, u"A2"_s, 0.110).empty()) << "a blank has no window";
}

TEST(Doubts, StandInTheOrderOfTheirWeight)
{
    using enum Doubt::Kind;
    run::Run run = withA1(unreadRun(), {0.100, 0.100, 0.120, 0.120});
    run.tubes[2].readings[u"A2"_s] = 0.530;
    const assay::Method method = test::risingMethod();
    EXPECT_EQ(kindsOf(doubtsAbout(method, run, 3, u"A2"_s, 2.5)),
              (std::vector{AbsorbanceHigh, FarFromReplicate, SignalHigh}));
    EXPECT_EQ(kindsOf(doubtsAbout(method, run, 3, u"A2"_s, 12.1)), std::vector{Implausible});
    EXPECT_EQ(kindsOf(doubtsAbout(method, run, 3, u"A2"_s, 0.053)), std::vector{WrongDirection});
    for (const Doubt &doubt : doubtsAbout(method, run, 3, u"A2"_s, 2.5))
        EXPECT_EQ(doubt.asks, doubt.kind != SignalHigh);
}
