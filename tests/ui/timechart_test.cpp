// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "ui/shared/theme.h"
#include "ui/shared/timechart.h"
#include "ui/shared/timechartwords.h"

#include <QAccessible>
#include <QFontMetricsF>
#include <QImage>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace plateau::ui {
namespace {

using namespace Qt::StringLiterals;
using Kind = TimeBar::Kind;

const TextMeasures text{16, 60, 24};

TimeRow row(const QString &name, int start_s)
{
    return {name,
            {{Kind::Add, start_s, start_s + 20, u"sample"_s},
             {Kind::Wait, start_s + 20, start_s + 240, {}},
             {Kind::Read, start_s + 240, start_s + 260, u"A1"_s}}};
}

/// Three tubes 20 s apart, done at 5:00.
TimeChartData threeTubes()
{
    return {{{{}, {row(u"1 blank"_s, 0), row(u"2 P-104"_s, 20), row(u"3 P-104"_s, 40)}}}, {{60, 240}}, {}};
}

TimeChartData manyTubes(int tubes)
{
    TimeChartData data{{{{}, {}}}, {}, {}};
    for (int tube = 0; tube < tubes; ++tube)
        data.racks[0].rows.push_back(row(QString::number(tube + 1), 20 * tube));
    return data;
}

TEST(TimeChartLayout, SpansFromTheFirstStartToTheLastEnd)
{
    const TimeChartLayout layout = layOut(threeTubes(), {600, 300}, text);
    EXPECT_EQ(layout.first_s, 0);
    EXPECT_EQ(layout.last_s, 300);
    EXPECT_DOUBLE_EQ(layout.xOf(0), layout.plot.left());
    EXPECT_DOUBLE_EQ(layout.xOf(300), layout.plot.right());
    EXPECT_DOUBLE_EQ(layout.xOf(150), layout.plot.center().x());
}

TEST(TimeChartLayout, NowBeyondTheLastEndIsStillOnTheChart)
{
    TimeChartData data = threeTubes();
    data.now_s = 400;
    EXPECT_EQ(layOut(data, {600, 300}, text).last_s, 400);
    data.now_s = -30;
    EXPECT_EQ(layOut(data, {600, 300}, text).first_s, -30);
}

TEST(TimeChartLayout, PartsStandBelowEachOtherAndInside)
{
    for (const QSizeF size : {QSizeF(600, 300), QSizeF(1000, 640)}) {
        const TimeChartLayout layout = layOut(manyTubes(24), size, text);
        EXPECT_LE(layout.words.bottom(), layout.axis.top());
        EXPECT_LE(layout.axis.bottom(), layout.plot.top());
        EXPECT_LE(layout.plot.bottom(), layout.lane.top());
        EXPECT_LE(layout.lane.bottom(), layout.key.top());
        EXPECT_LE(layout.key.bottom(), size.height());
        EXPECT_LT(layout.plot.right(), size.width());
        EXPECT_GT(layout.plot.left(), text.name);
    }
}

TEST(TimeChartLayout, RowsFillTheHeightButGrowNoLargerThanTheyRead)
{
    const TimeChartLayout small = layOut(manyTubes(24), {600, 300}, text);
    EXPECT_NEAR(small.rowHeight, (300 - 4 * 16 - 6 * 6) / 24.0, 1e-9);
    EXPECT_EQ(small.namedEvery, 2);
    const TimeChartLayout few = layOut(threeTubes(), {600, 2000}, text);
    EXPECT_DOUBLE_EQ(few.rowHeight, 1.6 * 16);
    EXPECT_EQ(few.namedEvery, 1);
}

TEST(TimeChartLayout, SmallestHeightHoldsARackOfNinetySix)
{
    const double height = smallestHeight(manyTubes(96), text);
    const TimeChartLayout layout = layOut(manyTubes(96), {600, height}, text);
    EXPECT_DOUBLE_EQ(layout.rowHeight, smallestRow);
    EXPECT_LE(layout.key.bottom(), height);
    EXPECT_LT(height, 600);
    EXPECT_EQ(usualHeight(manyTubes(96), text) - usualHeight(manyTubes(95), text), 16);
}

TEST(TimeChartLayout, RowIsFoundByItsHeight)
{
    const TimeChartLayout layout = layOut(threeTubes(), {600, 300}, text);
    for (int tube = 0; tube < 3; ++tube)
        EXPECT_EQ(layout.rowAt(layout.rowArea(tube).center().y()), tube);
    EXPECT_EQ(layout.rowAt(layout.plot.top() - 1), -1);
    EXPECT_EQ(layout.rowAt(layout.plot.bottom() + 1), -1);
}

TEST(TimeChartLayout, MarksAreAsWideAsTheyTakeButNeverTooNarrow)
{
    const TimeChartData data = threeTubes();
    const TimeChartLayout wide = layOut(data, {1600, 300}, text);
    EXPECT_DOUBLE_EQ(wide.markArea(1, data.racks[0].rows[1].bars[0]).left(), wide.xOf(20));
    EXPECT_DOUBLE_EQ(wide.markArea(1, data.racks[0].rows[1].bars[0]).right(), wide.xOf(40));
    EXPECT_TRUE(wide.rowArea(1).contains(wide.markArea(1, data.racks[0].rows[1].bars[0])));
    const TimeChartLayout narrow = layOut(data, {120, 300}, text);
    EXPECT_DOUBLE_EQ(narrow.markArea(0, data.racks[0].rows[0].bars[0]).width(), 5);
}

TEST(TimeChartLayout, TicksAreRoundStepsThatTheirNumbersFitInto)
{
    EXPECT_EQ(tickStep_s(1.0, 30), 30);
    EXPECT_EQ(tickStep_s(1.0, 31), 60);
    EXPECT_EQ(tickStep_s(0.2, 48), 300);
    EXPECT_EQ(tickStep_s(0.1, 48), 600);
    EXPECT_EQ(tickStep_s(0.01, 48), 7200);
    EXPECT_EQ(tickStep_s(0.0001, 48), 28800);
}

TEST(TimeChartLayout, SecondRackStandsBelowUnderItsName)
{
    TimeChartData data = threeTubes();
    data.racks[0].name = u"Rack A"_s;
    data.racks.push_back({u"Rack B"_s, {row(u"1"_s, 300)}});
    const TimeChartLayout layout = layOut(data, {600, 300}, text);
    ASSERT_EQ(layout.headingTops.size(), 2u);
    ASSERT_EQ(layout.rowTops.size(), 4u);
    EXPECT_GE(layout.rowTops[0], layout.headingTops[0] + text.line);
    EXPECT_GE(layout.headingTops[1], layout.rowTops[2] + layout.rowHeight);
    EXPECT_EQ(layout.last_s, 560);
    EXPECT_EQ(rowOf(data, 3).name, u"1"_s);
    EXPECT_EQ(rackOf(data, 3).name, u"Rack B"_s);
    EXPECT_EQ(rackOf(data, 2).name, u"Rack A"_s);
    EXPECT_TRUE(layOut(threeTubes(), {600, 300}, text).headingTops.empty());
}

TEST(TimeChartLayout, NothingToDrawHasNoRows)
{
    const TimeChartLayout layout = layOut({}, {600, 300}, text);
    EXPECT_TRUE(layout.rowTops.empty());
    EXPECT_EQ(layout.rowAt(100), -1);
    EXPECT_EQ(layout.last_s - layout.first_s, 60);
}

TEST(TimeChartLayout, NumbersStandInAColumnOfTheirOwn)
{
    TextMeasures withNumbers = text;
    withNumbers.tubes = 24;
    const TimeChartLayout layout = layOut(threeTubes(), {600, 300}, withNumbers);
    const QRectF name = layout.nameArea(100, 16);
    const QRectF tube = layout.tubeArea(name, 8);
    const QRectF behind = layout.behindTube(name);
    EXPECT_DOUBLE_EQ(tube.width(), 16);
    EXPECT_DOUBLE_EQ(behind.left() - tube.right(), 8);
    EXPECT_GE(behind.width(), withNumbers.name - withNumbers.tubes) << "nothing is cut that was measured";
    EXPECT_LT(behind.right(), layout.plot.left());
}

TEST(TimeChartLayout, AFreeSpanHasNoLineThatLeadsNowhere)
{
    EXPECT_EQ(freeLook(100, 50), (FreeLook{true, 21}));
    EXPECT_EQ(freeLook(60, 50), (FreeLook{true, 0})) << "the words alone";
    EXPECT_EQ(freeLook(53, 50), (FreeLook{false, 0}));
}

TEST(TimeChartWords, TellTheNumberOfARowFromItsName)
{
    EXPECT_EQ(labelOf(row(u"9  Perry base"_s, 0)), (RowLabel{u"9"_s, u"Perry base"_s}));
    EXPECT_EQ(labelOf(row(u"10  3 tanks"_s, 0)), (RowLabel{u"10"_s, u"3 tanks"_s}));
    EXPECT_EQ(labelOf(row(u"12"_s, 0)), (RowLabel{u"12"_s, {}}));
    EXPECT_EQ(labelOf(row(u"5-fold"_s, 0)), (RowLabel{{}, u"5-fold"_s}));
    EXPECT_EQ(labelOf(row(u"P-104"_s, 0)), (RowLabel{{}, u"P-104"_s}));
}

TEST(TimeChartWords, TellTheTimesOfARow)
{
    EXPECT_EQ(rowText(threeTubes().racks[0].rows[1]), u"2 P-104: sample\u00a00:20, A1\u00a04:20"_s);
    TimeRow unnamed = row(u"x"_s, 4000);
    unnamed.bars[0].name.clear();
    unnamed.bars[2].name.clear();
    EXPECT_EQ(rowText(unnamed), u"x: addition\u00a066:40, reading\u00a070:40"_s);
    EXPECT_EQ(stopwatchText(-30), u"-0:30"_s);
}

TEST(TimeChartWords, TellAllThatIsDrawn)
{
    TimeChartData data = threeTubes();
    data.now_s = 90;
    data.racks[0].name = u"Rack A"_s;
    EXPECT_EQ(chartText(data), u"Rack A\n"
                               "1 blank: sample\u00a00:00, A1\u00a04:00\n"
                               "2 P-104: sample\u00a00:20, A1\u00a04:20\n"
                               "3 P-104: sample\u00a00:40, A1\u00a04:40\n"
                               "Hands free from 1:00 to 4:00\n"
                               "Now 1:30"_s);
}

class TimeChartWidget : public ::testing::Test
{
protected:
    void SetUp() override
    {
        chart.resize(700, 400);
        chart.setData(threeTubes());
        chart.show();
    }

    Theme theme;
    TimeChart chart{theme, u"Times of the tubes"_s};
};

TEST_F(TimeChartWidget, SpeaksItsDataToThoseWhoDoNotSeeIt)
{
    QAccessibleInterface *interface = QAccessible::queryAccessibleInterface(&chart);
    ASSERT_TRUE(interface);
    EXPECT_EQ(interface->text(QAccessible::Name), u"Times of the tubes"_s);
    EXPECT_EQ(interface->text(QAccessible::Description), chartText(threeTubes()));
    chart.setData({});
    EXPECT_EQ(interface->text(QAccessible::Description), u"There is nothing to draw yet."_s);
}

TEST_F(TimeChartWidget, ChosenRowIsSaidFirst)
{
    chart.chooseRow(1);
    EXPECT_TRUE(chart.accessibleDescription().startsWith(
        u"Row 2 of 3, 2 P-104: sample\u00a00:20, A1\u00a04:20\n1 blank"_s))
        << chart.accessibleDescription().toStdString();
}

TEST_F(TimeChartWidget, KeysWalkTheRowsAndStopAtTheEnds)
{
    QSignalSpy chosen(&chart, &TimeChart::rowChosen);
    EXPECT_EQ(chart.focusPolicy(), Qt::StrongFocus);
    EXPECT_EQ(chart.chosenRow(), -1);
    QTest::keyClick(&chart, Qt::Key_Down);
    EXPECT_EQ(chart.chosenRow(), 0);
    QTest::keyClick(&chart, Qt::Key_Up);
    EXPECT_EQ(chart.chosenRow(), 0);
    QTest::keyClick(&chart, Qt::Key_End);
    EXPECT_EQ(chart.chosenRow(), 2);
    QTest::keyClick(&chart, Qt::Key_Down);
    QTest::keyClick(&chart, Qt::Key_PageDown);
    EXPECT_EQ(chart.chosenRow(), 2);
    QTest::keyClick(&chart, Qt::Key_Home);
    EXPECT_EQ(chart.chosenRow(), 0);
    EXPECT_EQ(chosen.count(), 3);
}

TEST_F(TimeChartWidget, PointerChoosesARow)
{
    const TimeChartLayout layout = chart.currentLayout();
    QTest::mouseClick(&chart, Qt::LeftButton, {}, layout.rowArea(2).center().toPoint());
    EXPECT_EQ(chart.chosenRow(), 2);
    QTest::mouseClick(&chart, Qt::LeftButton, {}, layout.key.center().toPoint());
    EXPECT_EQ(chart.chosenRow(), 2);
}

TEST_F(TimeChartWidget, ComingByTheKeyboardChoosesTheFirstRow)
{
    QFocusEvent event(QEvent::FocusIn, Qt::TabFocusReason);
    QCoreApplication::sendEvent(&chart, &event);
    EXPECT_EQ(chart.chosenRow(), 0);
}

TEST_F(TimeChartWidget, ChosenRowStaysWhileThereIsOne)
{
    chart.chooseRow(2);
    TimeChartData data = threeTubes();
    data.racks[0].rows.pop_back();
    chart.setData(data);
    EXPECT_EQ(chart.chosenRow(), 1);
    chart.setData({});
    EXPECT_EQ(chart.chosenRow(), -1);
    QTest::keyClick(&chart, Qt::Key_Down);
    EXPECT_EQ(chart.chosenRow(), -1);
}

TEST_F(TimeChartWidget, GrowsWithItsRows)
{
    const int three = chart.sizeHint().height();
    chart.setData(manyTubes(24));
    EXPECT_NEAR(chart.sizeHint().height() - three, 21 * QFontMetricsF(chart.font()).lineSpacing(), 1);
    EXPECT_LT(chart.minimumSizeHint().height(), chart.sizeHint().height());
}

/// The darkest grey on the middle line of an area.
int darkest(const QImage &image, const QRectF &area)
{
    int value = 255;
    for (int x = static_cast<int>(area.left()); x < static_cast<int>(area.right()); ++x)
        value = std::min(value, qGray(image.pixel(x, static_cast<int>(area.center().y()))));
    return value;
}

TEST_F(TimeChartWidget, AdditionAndReadingDifferInBlackAndWhite)
{
    chart.resize(1600, 400);
    const TimeChartLayout layout = chart.currentLayout();
    const TimeRow &first = chart.data().racks[0].rows[0];
    const QImage image = chart.grab().toImage();
    // A drop is solid in its middle, a cuvette is clear between its walls.
    const QRectF drop = layout.markArea(0, first.bars[0]).adjusted(20, 0, -20, 0);
    const QRectF cuvette = layout.markArea(0, first.bars[2]).adjusted(20, 0, -20, 0);
    EXPECT_LT(darkest(image, drop), 60);
    EXPECT_GT(darkest(image, cuvette), 160);
}

} // namespace
} // namespace plateau::ui
