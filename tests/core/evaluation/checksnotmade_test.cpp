// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checksnotmade.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace plateau;
using namespace Qt::StringLiterals;
using evaluation::CheckId;
using evaluation::CheckLine;
using evaluation::CheckOutcome;

namespace {

run::Run withStandardOf(const QString &measurand)
{
    run::Run run = test::plainRun();
    run::Standard standard;
    standard.id = u"STD"_s;
    standard.concentration_g_per_L = 0.168253968;
    standard.measurand = measurand;
    run.standards = {standard};
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.610));
    return run;
}

} // namespace

TEST(ChecksNotMade, AreTheRecoveryWhereNoTubeHoldsAKnownAmount)
{
    const assay::Method method = test::risingMethod();
    const std::vector<CheckLine> open = evaluation::checksNotMade(method, test::plainRun());
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open[0].id, CheckId::StandardRecovery);
    EXPECT_EQ(open[0].outcome, CheckOutcome::NotMade);
    EXPECT_EQ(open[0].limit, u"95 to 105\u00a0%"_s);
    EXPECT_TRUE(open[0].message.contains(u"(95 to 105\u00a0%)"_s)) << open[0].message.toStdString();
    EXPECT_TRUE(evaluation::checksNotMade(method, withStandardOf({})).empty());
}

TEST(ChecksNotMade, AControlWillDoAndASpoiltTubeWillNot)
{
    run::Run run = withStandardOf({});
    run.tubes.back().role = run::Role::Control;
    EXPECT_TRUE(evaluation::checksNotMade(test::risingMethod(), run).empty());
    run.tubes.back().spoilt = u"dropped"_s;
    EXPECT_EQ(evaluation::checksNotMade(test::risingMethod(), run).size(), 1U);
}

TEST(ChecksNotMade, AreNoneWhereTheMethodAsksForNoneOrAStandardCalibrates)
{
    assay::Method method = test::risingMethod();
    run::Run run = test::plainRun();
    run.calibration = run::Calibration::Standard;
    EXPECT_TRUE(evaluation::checksNotMade(method, run).empty());
    method.acceptance.standardRecovery_percent.reset();
    EXPECT_TRUE(evaluation::checksNotMade(method, test::plainRun()).empty());
}

TEST(ChecksNotMade, NameWhatNoStandardHolds)
{
    const std::vector<CheckLine> open = evaluation::checksNotMade(test::sequentialMethod(), withStandardOf(u"first"_s));
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open[0].where, u"Second"_s);
    const assay::Problems planned =
        evaluation::checksNotPlanned(test::sequentialMethod(), withStandardOf(u"first"_s));
    ASSERT_EQ(planned.size(), 1U);
    EXPECT_EQ(planned[0].severity, assay::Problem::Severity::Warning);
    EXPECT_TRUE(planned[0].message.startsWith(u"no standard of this run holds Second"_s))
        << planned[0].message.toStdString();
}

TEST(ChecksNotMade, StandBehindWhatFailedAndBeforeWhatPassed)
{
    const assay::Method method = test::risingMethod();
    run::Run run = test::plainRun();
    run.tubes[0].readings[u"A2"_s] = 0.170; // a blank of 0.070
    const std::vector<CheckLine> lines = evaluation::checkLines(method, run, evaluation::evaluate(method, run));
    const auto place = [&](CheckOutcome outcome) {
        return std::ranges::find(lines, outcome, &CheckLine::outcome) - lines.begin();
    };
    EXPECT_EQ(place(CheckOutcome::Failed), 0);
    EXPECT_LT(place(CheckOutcome::NotMade), place(CheckOutcome::Passed));
    EXPECT_EQ(evaluation::failedChecks(lines), 1);
}

TEST(ChecksNotPlanned, SayWhatToAddBeforeAnythingIsPipetted)
{
    const assay::Problems planned = evaluation::checksNotPlanned(test::risingMethod(), test::plainRun());
    ASSERT_EQ(planned.size(), 1U);
    EXPECT_EQ(planned[0].pointer, u"/standards"_s);
    EXPECT_EQ(planned[0].severity, assay::Problem::Severity::Warning);
    EXPECT_TRUE(planned[0].message.contains(u"Add a standard or a control"_s)) << planned[0].message.toStdString();
    EXPECT_TRUE(evaluation::checksNotPlanned(test::risingMethod(), withStandardOf({})).empty());
    run::Run empty = test::plainRun();
    empty.tubes.clear();
    EXPECT_TRUE(evaluation::checksNotPlanned(test::risingMethod(), empty).empty());
}
