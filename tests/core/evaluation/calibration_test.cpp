// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/evaluation.h"

#include "tests/core/evaluation/found.h"
#include "tests/support/benches.h"

#include <gtest/gtest.h>

using namespace plateau;
using namespace Qt::StringLiterals;

namespace {

run::Standard standard(const char *id, double concentration_g_per_L)
{
    run::Standard made;
    made.id = QString::fromLatin1(id);
    made.concentration_g_per_L = concentration_g_per_L;
    return made;
}

QDateTime moment(const char *text)
{
    return QDateTime::fromString(QString::fromLatin1(text), Qt::ISODate);
}

run::Run runWithLine()
{
    run::Run run = test::plainRun();
    run.calibration = run::Calibration::Line;
    run.standards = {standard("L1", 0.05), standard("L2", 0.10), standard("L3", 0.20)};
    // signal = 0.004 + 30 per mg, blank 0.010 on top; 0.1 mL each: 0.005, 0.010, 0.020 mg
    run.tubes.push_back(test::standardTube("L1", 0.1, 0.1 + 0.014 + 0.150));
    run.tubes.push_back(test::standardTube("L2", 0.1, 0.1 + 0.014 + 0.300));
    run.tubes.push_back(test::standardTube("L3", 0.1, 0.1 + 0.014 + 0.600));
    return run;
}

} // namespace

TEST(Calibration, StandardScalesBySignalAndVolume)
{
    run::Run run = test::plainRun();
    run.calibration = run::Calibration::Standard;
    run.standards = {standard("STD", 0.2)};
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.1 + 0.610)); // net 0.600
    run.tubes.back().sampleVolume_mL = 0.05;
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(*evaluation.results[0].value, 0.5 / 0.6 * 0.2 * (0.05 / 0.1), 1e-14);
}

TEST(Calibration, StandardIsTakenAtItsStrengthWhenUsed)
{
    run::Run run = test::plainRun();
    run.calibration = run::Calibration::Standard;
    run.standards = {standard("STD", 0.2)};
    run.standards[0].lossPerHour = 0.02;
    run.standards[0].preparedAt = moment("2026-03-02T08:00:00+01:00");
    run.standards[0].usedAt = moment("2026-03-02T10:00:00+01:00");
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.1 + 0.610));
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(*evaluation.results[0].value, 0.5 / 0.6 * 0.2 * 0.98 * 0.98, 1e-14);
    EXPECT_NEAR(evaluation.standards[0].expected_g_per_L, 0.2 * 0.98 * 0.98, 1e-15);
}

TEST(Calibration, StandardWithoutTimeOfUseWasUsedWhenTheRunStarted)
{
    run::Run run = test::plainRun();
    run.startedAt = moment("2026-03-02T10:00:00+01:00");
    run.standards = {standard("STD", 0.2)};
    run.standards[0].lossPerHour = 0.1;
    run.standards[0].preparedAt = moment("2026-03-02T09:00:00+01:00");
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.6));
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_NEAR(evaluation.standards[0].expected_g_per_L, 0.18, 1e-15);
}

TEST(Calibration, SecondStandardIsCheckedAgainstTheFirst)
{
    run::Run run = test::plainRun();
    run.calibration = run::Calibration::Standard;
    run.standards = {standard("CAL", 0.2), standard("CHECK", 0.1)};
    run.tubes.push_back(test::standardTube("CAL", 0.1, 0.710));   // net 0.600
    run.tubes.push_back(test::standardTube("CHECK", 0.1, 0.380)); // net 0.270, expected 0.300
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    ASSERT_EQ(evaluation.standards.size(), 2U);
    EXPECT_NEAR(*evaluation.standards[0].recovery_percent, 100, 1e-9);
    EXPECT_NEAR(*evaluation.standards[1].recovery_percent, 90, 1e-9);
    EXPECT_TRUE(
        test::find(evaluation.checks, evaluation::CheckId::StandardRecovery, u"standard CAL"_s)->passed);
    EXPECT_FALSE(
        test::find(evaluation.checks, evaluation::CheckId::StandardRecovery, u"standard CHECK"_s)->passed);
}

TEST(Calibration, LineIsReadBackThroughItsIntercept)
{
    const auto evaluation = evaluation::evaluate(test::risingMethod(), runWithLine());
    ASSERT_EQ(evaluation.lines.size(), 1U);
    EXPECT_NEAR(evaluation.lines[0].intercept, 0.004, 1e-12);
    EXPECT_NEAR(evaluation.lines[0].slope_per_mg, 30, 1e-9);
    // net 0.500: (0.500 - 0.004) / 30 mg in 0.1 mL
    EXPECT_NEAR(*evaluation.results[0].value, (0.500 - 0.004) / 30 / 0.1, 1e-12);
}

TEST(Calibration, LineGivesNothingWhileALevelIsUnread)
{
    run::Run run = runWithLine();
    run.tubes.back().readings.erase(u"A2"_s);
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_FALSE(evaluation.results[0].value);
    EXPECT_EQ(evaluation.results[0].verdict, evaluation::Verdict::Investigate);
    EXPECT_NEAR(*evaluation.tubes[1].netSignal, 0.5, 1e-14);
}

TEST(Calibration, StandardThatDidNotReactGivesNoValue)
{
    run::Run run = test::plainRun();
    run.calibration = run::Calibration::Standard;
    run.standards = {standard("STD", 0.2)};
    run.tubes[0] = test::blank(0, 0);
    run.tubes.push_back(test::standardTube("STD", 0, 0));
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_FALSE(evaluation.results[0].value);
    EXPECT_FALSE(evaluation.acceptable);
}

TEST(Calibration, StandardOfOneMeasurandSaysNothingOfTheOther)
{
    run::Run run = test::plainRun();
    run.standards = {standard("STD", 0.2)};
    run.standards[0].measurand = u"first"_s;
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.7));
    for (run::Tube &tube : run.tubes)
        tube.readings[u"A3"_s] = std::get<double>(tube.readings[u"A2"_s]) + 0.2;
    const auto evaluation = evaluation::evaluate(test::sequentialMethod(), run);
    ASSERT_EQ(evaluation.standards.size(), 1U);
    EXPECT_EQ(evaluation.standards[0].measurand, u"first"_s);
}
