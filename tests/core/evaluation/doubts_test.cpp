// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// What is asked about a reading before it is stored, and what is not.
#include "core/evaluation/doubts.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

using namespace plateau;
using namespace Qt::StringLiterals;
using evaluation::doubtAbout;

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
    EXPECT_EQ(doubtAbout(test::fallingMethod(), unreadRun(), 0, u"A1"_s, 0.1385), QString());
    EXPECT_NE(doubtAbout(test::fallingMethod(), withA1(unreadRun(), {0.1385}), 1, u"A1"_s, 1.385), QString());
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
    EXPECT_NE(doubtAbout(method, run, 3, u"A2"_s, 1.900), QString());
    EXPECT_EQ(doubtAbout(method, run, 3, u"A2"_s, 0.230), QString());
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
