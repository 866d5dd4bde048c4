// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checklines.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace plateau;
using namespace Qt::StringLiterals;
using evaluation::CheckId;
using evaluation::CheckLine;
using evaluation::CheckOutcome;
using evaluation::LimitOrigin;

namespace {

std::vector<CheckLine> linesOf(const run::Run &run, const assay::Method &method = test::risingMethod(),
                               const evaluation::Rules &rules = {})
{
    return evaluation::checkLines(method, run, evaluation::evaluate(method, run, rules), rules);
}

/// The first of that kind; a line that says nothing where there is none.
CheckLine lineOf(const std::vector<CheckLine> &lines, CheckId id)
{
    const auto found = std::ranges::find(lines, id, &CheckLine::id);
    EXPECT_NE(found, lines.end()) << evaluation::checkWord(id).toStdString();
    return found == lines.end() ? CheckLine() : *found;
}

/// Standard of 0.168254 g/L, which is a net signal of 0.5.
run::Run withStandard(double net)
{
    run::Run run = test::plainRun();
    run.standards = {{u"STD"_s, 0.168253968, {}, {}, {}, 0}};
    run.tubes.push_back(test::standardTube("STD", 0.1, 0.1 + 0.010 + net));
    return run;
}

} // namespace

TEST(CheckLines, OfACleanRunEachKindPassesOnce)
{
    const std::vector<CheckLine> lines = linesOf(withStandard(0.5));
    EXPECT_EQ(evaluation::failedChecks(lines), 0);
    for (const CheckLine &line : lines) {
        EXPECT_EQ(line.outcome, CheckOutcome::Passed) << line.what.toStdString();
        EXPECT_EQ(std::ranges::count(lines, line.id, &CheckLine::id), 1) << line.what.toStdString();
    }
    const CheckLine blank = lineOf(lines, CheckId::BlankHigh);
    EXPECT_EQ(blank.found, u"0.010"_s);
    EXPECT_EQ(blank.limit, u"at most 0.050"_s);
    EXPECT_EQ(blank.origin, LimitOrigin::Method);
    EXPECT_EQ(lineOf(lines, CheckId::SignalLow).found, u"0.500"_s);
    EXPECT_EQ(lineOf(lines, CheckId::SignalLow).limit, u"at least 0.100"_s);
    EXPECT_EQ(lineOf(lines, CheckId::SignalHigh).limit, u"at most 1.000"_s);
    EXPECT_EQ(lineOf(lines, CheckId::ReadingMissing).found, u"none"_s);
    EXPECT_EQ(lines.front().id, CheckId::BlankMissing);
}

TEST(CheckLines, ReplicatesStandAgainstTheMethodsLimitOrTheRule)
{
    run::Run run = test::plainRun();
    run.tubes[2] = test::sampleTube("S", 0.1, 0.1 + 0.510 + 0.030); // 0.030 x 0.33651 g/L apart
    const CheckLine own = lineOf(linesOf(run), CheckId::DuplicateSpread);
    EXPECT_EQ(own.found, u"0.0101\u00a0g/L"_s);
    EXPECT_EQ(own.origin, LimitOrigin::Method);
    EXPECT_EQ(own.outcome, CheckOutcome::Passed); // r = 0.01 + 0.03 x 0.1733

    assay::Method without = test::risingMethod();
    without.acceptance.repeatability.reset();
    // 5 % of 0.1733 g/L is 0.00866
    const CheckLine usual = lineOf(linesOf(run, without), CheckId::DuplicateSpread);
    EXPECT_EQ(usual.outcome, CheckOutcome::Failed);
    EXPECT_EQ(usual.where, u"S"_s);
    EXPECT_EQ(usual.origin, LimitOrigin::CommonPractice);
    EXPECT_EQ(usual.limit, u"at most 0.00867\u00a0g/L"_s);
    evaluation::Rules rules;
    rules.relativeRepeatability = 0.06; // 0.0104 g/L
    const CheckLine laxer = lineOf(linesOf(run, without, rules), CheckId::DuplicateSpread);
    EXPECT_EQ(laxer.outcome, CheckOutcome::Passed);
    EXPECT_EQ(laxer.origin, LimitOrigin::Laboratory);
    rules.relativeRepeatability = 0.001; // less than readings that are off by 0.002 each
    EXPECT_EQ(lineOf(linesOf(run, without, rules), CheckId::DuplicateSpread).origin, LimitOrigin::Noise);
}

TEST(CheckLines, ARecoveryIsSaidWithWhatWasExpectedAtUse)
{
    const CheckLine good = lineOf(linesOf(withStandard(0.49)), CheckId::StandardRecovery); // 98 %
    EXPECT_EQ(good.outcome, CheckOutcome::Passed);
    EXPECT_EQ(good.found, u"98.0\u00a0% of 0.168\u00a0g/L"_s);
    EXPECT_EQ(good.limit, u"95.0 to 105.0\u00a0%"_s);
    EXPECT_EQ(good.where, u"STD"_s);
    const std::vector<CheckLine> poor = linesOf(withStandard(0.45));
    EXPECT_EQ(poor.front().id, CheckId::StandardRecovery) << "what failed stands first";
    EXPECT_EQ(poor.front().outcome, CheckOutcome::Failed);
    EXPECT_EQ(evaluation::failedChecks(poor), 1);

    run::Run itself = withStandard(0.45);
    itself.calibration = run::Calibration::Standard;
    const CheckLine calibrating = lineOf(linesOf(itself), CheckId::StandardRecovery);
    EXPECT_EQ(calibrating.outcome, CheckOutcome::NotJudged);
    EXPECT_EQ(calibrating.limit, u"–"_s);

    run::Run control = withStandard(0.49);
    control.tubes.back().role = run::Role::Control;
    EXPECT_EQ(lineOf(linesOf(control), CheckId::StandardRecovery).what, u"Recovery of the control"_s);
}

TEST(CheckLines, WhatPassesAlikeIsGatheredAndTheNearestIsTold)
{
    run::Run run = test::plainRun();
    run.samples.push_back(test::liquid("T"));
    run.tubes.push_back(test::sampleTube("T", 0.1, 0.1 + 0.010 + 0.120));
    run.tubes.push_back(test::sampleTube("T", 0.1, 0.1 + 0.010 + 0.120));
    const CheckLine low = lineOf(linesOf(run), CheckId::SignalLow);
    EXPECT_EQ(low.checks, 2);
    EXPECT_EQ(low.found, u"0.120"_s) << "nearer to 0.100 than the other's 0.500";
    EXPECT_EQ(low.where, u"T (of 2 nearest its limit)"_s);

    run.tubes.back() = test::sampleTube("T", 0.1, 0.1 + 0.010 + 1.250);
    const std::vector<CheckLine> lines = linesOf(run);
    EXPECT_EQ(lineOf(lines, CheckId::SignalHigh).outcome, CheckOutcome::Repeat);
    EXPECT_EQ(lineOf(lines, CheckId::SignalHigh).where, u"T"_s);
    EXPECT_EQ(lineOf(lines, CheckId::SignalHigh).found, u"1.250"_s);
    EXPECT_EQ(std::ranges::count(lines, CheckId::SignalHigh, &CheckLine::id), 2) << "the other passed";
}

TEST(CheckLines, MissingReadingsAreWaitedForAndNoFailure)
{
    run::Run run = test::plainRun();
    run.tubes[1].readings.erase(u"A2"_s);
    const CheckLine missing = lineOf(linesOf(run), CheckId::ReadingMissing);
    EXPECT_EQ(missing.outcome, CheckOutcome::Waiting);
    EXPECT_EQ(missing.found, u"tube 2"_s);
    EXPECT_EQ(evaluation::failedChecks(linesOf(run)), 0);
}

TEST(CheckLines, LotsStandWithTheirDateAndTheFirstToEndIsTold)
{
    run::Run run = test::plainRun();
    run.startedAt = QDateTime::fromString(u"2026-03-02T09:00:00Z"_s, Qt::ISODate);
    run.lots = {{u"buffer"_s, u"B1"_s, QDate(2026, 9, 1)},
                {u"water"_s, u"W1"_s, {}},
                {u"starter"_s, u"E7"_s, QDate(2026, 3, 2)}};
    const CheckLine inDate = lineOf(linesOf(run), CheckId::LotExpired);
    EXPECT_EQ(inDate.outcome, CheckOutcome::Passed);
    EXPECT_EQ(inDate.checks, 2);
    EXPECT_EQ(inDate.limit, u"until 2026-03-02"_s);
    EXPECT_EQ(inDate.origin, LimitOrigin::Label);
    run.lots[2].expires = QDate(2026, 3, 1);
    const CheckLine late = lineOf(linesOf(run), CheckId::LotExpired);
    EXPECT_EQ(late.outcome, CheckOutcome::Failed);
    EXPECT_EQ(late.where, u"Enzyme, E7"_s);
    EXPECT_EQ(late.found, u"2026-03-02"_s);
}

TEST(CheckLines, TimesStandAgainstTheMethodsWaits)
{
    run::Run run = test::plainRun();
    for (run::Tube &tube : run.tubes) {
        tube.readings[u"A2"_s] = run::ReadingSeries{{15, std::get<double>(tube.readings[u"A2"_s])}};
    }
    const CheckLine early = lineOf(linesOf(run), CheckId::ReadingEarly);
    EXPECT_EQ(early.outcome, CheckOutcome::Passed);
    EXPECT_TRUE(early.limit.contains(u"A2 from 15\u00a0min"_s)) << early.limit.toStdString();
    run.tubes[1].readings[u"A2"_s] = run::ReadingSeries{{14, 0.61}};
    const CheckLine tooEarly = lineOf(linesOf(run), CheckId::ReadingEarly);
    EXPECT_EQ(tooEarly.outcome, CheckOutcome::Failed);
    EXPECT_EQ(tooEarly.found, u"tube 2"_s);
}
