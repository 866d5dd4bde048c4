// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "tests/ui/liverack.h"
#include "ui/shared/timechartlayout.h"
#include "ui/shared/timechartrows.h"
#include "ui/shared/timechartwords.h"

#include <gtest/gtest.h>

namespace plateau::ui {
namespace {

using namespace Qt::StringLiterals;
using Phase = TimeStanding::Phase;

const TextMeasures textWithRemarks{16, 60, 24, 120};

Phase phaseAt(const TimeRow &row, int now_s)
{
    return standingOf(row, now_s)->phase;
}

TEST(TimeStanding, IsDueFromTheStartOfTheWindowToItsEnd)
{
    const TimeRow row = waitingRow(u"1"_s, 0);
    EXPECT_EQ(phaseAt(row, 179), Phase::Waiting);
    EXPECT_EQ(phaseAt(row, 180), Phase::Due);
    EXPECT_EQ(phaseAt(row, 240), Phase::Due);
    EXPECT_EQ(phaseAt(row, 241), Phase::Late);
    EXPECT_EQ(standingOf(row, 0)->bar, 2);
}

TEST(TimeStanding, WithoutALatestMomentNothingIsLate)
{
    const TimeRow row{u"1"_s, {openWindow(600)}};
    EXPECT_EQ(phaseAt(row, 599), Phase::Waiting);
    EXPECT_EQ(phaseAt(row, 600), Phase::Due);
    EXPECT_EQ(phaseAt(row, 100000), Phase::Due);
}

TEST(TimeStanding, NothingIsAwaitedOfASpoiltTubeOrAfterTheReading)
{
    TimeRow row = waitingRow(u"1"_s, 0);
    row.spoilt = true;
    EXPECT_FALSE(standingOf(row, 200));
    row.spoilt = false;
    row.bars[2].awaited = false;
    EXPECT_FALSE(standingOf(row, 200));
    TimeChartData unknown = liveRack(2, 200);
    unknown.now_s.reset();
    EXPECT_FALSE(standingsOf(unknown)[0]);
    EXPECT_EQ(standingsOf(unknown).size(), 2U);
}

TEST(TimeChartWords, AwaitedIsSaidFirstAndHowItStands)
{
    const TimeRow row = waitingRow(u"2 P-104"_s, 0);
    EXPECT_EQ(rowText(row), u"2 P-104: A1 due 3:00 to 4:00, sample\u00a00:00"_s);
    EXPECT_EQ(rowText(row, 179), rowText(row));
    EXPECT_EQ(rowText(row, 180), u"2 P-104: A1 due now, until 4:00, sample\u00a00:00"_s);
    EXPECT_EQ(rowText(row, 241), u"2 P-104: A1 late since 4:00, sample\u00a00:00"_s);
    EXPECT_EQ(rowText(row, 300), rowText(row, 241));
    const TimeRow open{u"3"_s, {openWindow(600)}};
    EXPECT_EQ(rowText(open, 599), u"3: A2 due from 10:00"_s);
    EXPECT_EQ(rowText(open, 600), u"3: A2 due now"_s);
}

TEST(TimeChartWords, RemarkSaysByHowMuch)
{
    TimeRow row = waitingRow(u"2"_s, 0);
    EXPECT_EQ(earlyRemark(u"A1"_s, 25), (TimeRemark{State::Attention, u"A1 read early by 0:25"_s}));
    EXPECT_EQ(lateRemark(u"A1"_s, 64), (TimeRemark{State::Attention, u"A1 read late by 1:04"_s}));
    row.remark = spoiltRemark();
    row.spoilt = true;
    EXPECT_EQ(rowText(row, 300), u"2: spoilt, sample\u00a00:00"_s);
    EXPECT_EQ(besideRow(row, 300), (TimeRemark{State::Bad, u"spoilt"_s}));
}

TEST(TimeChartWords, BesideTheRowStandsWhatIsDueThenTheRemark)
{
    TimeRow row = waitingRow(u"2"_s, 0);
    EXPECT_FALSE(besideRow(row, 179));
    EXPECT_FALSE(besideRow(row, {}));
    EXPECT_EQ(besideRow(row, 240), (TimeRemark{State::Info, u"A1 due now"_s}));
    EXPECT_EQ(besideRow(row, 241), (TimeRemark{State::Attention, u"A1 late by 0:01"_s}));
    row.remark = earlyRemark(u"A0"_s, 5);
    EXPECT_EQ(besideRow(row, 179), row.remark);
    EXPECT_EQ(besideRow(row, 180)->text, u"A1 due now; A0 read early by 0:05"_s);
    EXPECT_EQ(widestBeside(row), u"A1 late by 10:00; A0 read early by 0:05"_s);
}

TEST(TimeChartWords, LiveChartSaysAsOfWhenItIs)
{
    TimeChartData data = liveRack(1, 185);
    EXPECT_EQ(chartText(data), u"1: A1 due now, until 4:00, sample\u00a00:00\nAs of 3:05"_s);
}

TEST(TimeExtent, NowShiftsALiveChartByWholeMinutes)
{
    EXPECT_EQ(extentOf(liveRack(3, 280)), (TimeStretch{0, 280}));
    EXPECT_EQ(extentOf(liveRack(3, 281)), (TimeStretch{0, 300}));
    EXPECT_EQ(extentOf(liveRack(3, 299)), (TimeStretch{0, 300}));
    EXPECT_EQ(extentOf(liveRack(3, 300)), (TimeStretch{0, 360}));
    EXPECT_EQ(extentOf(liveRack(3, -1)), (TimeStretch{-60, 280}));
    TimeChartData open = liveRack(1, 0);
    open.racks[0].rows[0].bars.push_back(openWindow(600));
    EXPECT_EQ(extentOf(open).last_s, 660);
}

TEST(TimeExtent, StretchAroundNowStaysForAQuarterOfIt)
{
    const TimeChartData rack = liveRack(96, 1000); // to 2140 s
    EXPECT_FALSE(stretchAroundNow(rack, 2140));
    EXPECT_EQ(stretchAroundNow(rack, 1200), (TimeStretch{600, 1800}));
    EXPECT_EQ(stretchAroundNow(liveRack(96, 1199), 1200), (TimeStretch{600, 1800}));
    EXPECT_EQ(stretchAroundNow(liveRack(96, 1200), 1200), (TimeStretch{900, 2100}));
    // Never before the first thing there is.
    EXPECT_EQ(stretchAroundNow(liveRack(96, 10), 1200), (TimeStretch{0, 1200}));
    EXPECT_FALSE(stretchAroundNow({}, 1200));
}

TEST(TimeChartLayout, LiveRowsAreHighEnoughForTheirWords)
{
    const TimeChartData rack = liveRack(96, 200);
    const double height = smallestHeight(rack, textWithRemarks);
    const TimeChartLayout layout = layOut(rack, {600, height}, textWithRemarks);
    EXPECT_NEAR(layout.rowHeight, 0.8 * 16, 1e-9);
    EXPECT_EQ(layout.namedEvery, 1);
    EXPECT_NEAR(height, 96 * 0.8 * 16 + 3 * 16 + 4 * 6, 1e-9);
    EXPECT_TRUE(layout.key.isNull());
    EXPECT_TRUE(layout.lane.isNull());
    EXPECT_LE(layout.plot.bottom(), height);
}

TEST(TimeChartLayout, TwentyFourLiveTubesFitInto364Pixels)
{
    // Line spacing of the usual font, DejaVu Sans of 10 points.
    EXPECT_LE(smallestHeight(liveRack(24, 200), {15.2, 60, 24, 120}), 364);
}

TEST(TimeChartLayout, LiveChartHasItsKeyWhereThereIsRoom)
{
    const TimeChartData rack = liveRack(10, 200);
    const double least = smallestHeight(rack, textWithRemarks);
    EXPECT_TRUE(layOut(rack, {600, least + 21}, textWithRemarks).key.isNull());
    const TimeChartLayout roomy = layOut(rack, {600, least + 22}, textWithRemarks);
    EXPECT_FALSE(roomy.key.isNull());
    EXPECT_LE(roomy.key.bottom(), least + 22);
    EXPECT_GE(roomy.key.top(), roomy.plot.bottom());
}

TEST(TimeChartLayout, RemarksStandRightOfThePlotAndTakeNoMoreThanTheirShare)
{
    const TimeChartLayout layout = layOut(liveRack(10, 200), {600, 400}, textWithRemarks);
    EXPECT_GT(layout.remarks.left(), layout.plot.right());
    EXPECT_GE(layout.remarks.width(), 120);
    EXPECT_LE(layout.remarks.right(), 600);
    const TimeChartLayout wide = layOut(liveRack(10, 200), {600, 400}, {16, 60, 24, 1000});
    EXPECT_NEAR(wide.remarks.width(), 0.3 * 600 + 12, 1e-9);
    EXPECT_LE(wide.remarks.right(), 600);
    TimeChartData plan = liveRack(10, 200);
    plan.live = false;
    EXPECT_TRUE(layOut(plan, {600, 400}, textWithRemarks).remarks.isNull());
}

TEST(TimeChartLayout, ShowsTheVisibleStretchAndCutsAtItsEnds)
{
    TimeChartData rack = liveRack(96, 1000);
    rack.visible_s = TimeStretch{600, 1800};
    const TimeChartLayout layout = layOut(rack, {600, 1600}, textWithRemarks);
    EXPECT_DOUBLE_EQ(layout.xOf(600), layout.plot.left());
    EXPECT_DOUBLE_EQ(layout.xOf(1800), layout.plot.right());
    EXPECT_DOUBLE_EQ(layout.across(0, 1200, layout.plot).left(), layout.plot.left());
    EXPECT_DOUBLE_EQ(layout.across(0, 1200, layout.plot).right(), layout.plot.center().x());
    EXPECT_EQ(layout.across(0, 500, layout.plot).width(), 0);
    EXPECT_TRUE(layout.isInSight(500, 600));
    EXPECT_FALSE(layout.isInSight(500, 599));
    EXPECT_TRUE(layout.isInSight(1800, 1900));
    EXPECT_FALSE(layout.isInSight(1801, 1900));
    const TimeBar open = openWindow(700);
    EXPECT_DOUBLE_EQ(windowArea(layout, 0, open).right(), layout.plot.right());
    rack.visible_s = TimeStretch{600, 600};
    EXPECT_EQ(layOut(rack, {600, 400}, textWithRemarks).last_s, 601);
}

} // namespace
} // namespace plateau::ui
