// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "tests/ui/liverack.h"
#include "ui/shared/theme.h"
#include "ui/shared/timechart.h"
#include "ui/shared/timechartrows.h"

#include <QImage>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace plateau::ui {
namespace {

using namespace Qt::StringLiterals;

class LiveTimeChart : public ::testing::Test
{
protected:
    void showRack(TimeChartData data)
    {
        chart.resize(600, 500);
        chart.setData(std::move(data));
        chart.show();
        QCoreApplication::processEvents();
        chart.grab();
    }
    int drawingsOf(int now_s)
    {
        const int before = chart.drawings();
        chart.setNow(now_s);
        chart.grab();
        return chart.drawings() - before;
    }
    /// Of the row's middle line: how many pixels say that it is late, or when now is.
    int latenessOf(int row)
    {
        const QImage image = chart.grab().toImage();
        const TimeChartLayout &layout = chart.currentLayout();
        const int y = static_cast<int>(layout.rowArea(row).center().y());
        int pixels = 0;
        for (int x = static_cast<int>(layout.plot.left()); x < static_cast<int>(layout.plot.right()); ++x)
            pixels += image.pixelColor(x, y) == theme.colour(State::Bad);
        return pixels;
    }

    Theme theme;
    TimeChart chart{theme, u"Times of the tubes"_s};
};

TEST_F(LiveTimeChart, TickDrawsNothingAnewUntilARowStandsOtherwise)
{
    showRack(liveRack(2, 100));
    EXPECT_EQ(drawingsOf(101), 0);
    EXPECT_EQ(drawingsOf(179), 0);
    EXPECT_EQ(drawingsOf(180), 1); // the first tube is due
    EXPECT_EQ(drawingsOf(199), 0);
    EXPECT_EQ(drawingsOf(200), 1); // the second
    EXPECT_EQ(drawingsOf(240), 0);
    EXPECT_EQ(drawingsOf(241), 1); // the first is late
    EXPECT_EQ(drawingsOf(242), 0);
}

TEST_F(LiveTimeChart, SameDataWithAnotherNowIsATick)
{
    showRack(liveRack(96, 100));
    const int before = chart.drawings();
    chart.setData(liveRack(96, 101));
    chart.grab();
    EXPECT_EQ(chart.drawings(), before);
    EXPECT_EQ(chart.data().now_s, 101);
}

TEST_F(LiveTimeChart, DrawsAnewForAnotherSizeRowOrTheme)
{
    showRack(liveRack(3, 100));
    int before = chart.drawings();
    chart.resize(700, 500);
    chart.grab();
    EXPECT_GT(chart.drawings(), before);
    before = chart.drawings();
    chart.chooseRow(1);
    chart.grab();
    EXPECT_EQ(chart.drawings(), before + 1);
    QPalette dark;
    dark.setColor(QPalette::Window, Qt::black);
    dark.setColor(QPalette::WindowText, Qt::white);
    theme.refresh(dark, chart.font());
    chart.grab();
    EXPECT_EQ(chart.drawings(), before + 2);
}

TEST_F(LiveTimeChart, LateRowHasABarThatGrowsWithNow)
{
    TimeChartData data = liveRack(1, 241);
    data.visible_s = TimeStretch{0, 600};
    showRack(data);
    chart.setNow(240);
    EXPECT_LE(latenessOf(0), 2); // the line alone
    chart.setNow(300);
    const double second = chart.currentLayout().plot.width() / 600;
    EXPECT_NEAR(latenessOf(0), 60 * second, 6);
    chart.setNow(500);
    EXPECT_NEAR(latenessOf(0), 260 * second, 6);
}

TEST_F(LiveTimeChart, NothingIsDrawnBesideThePlot)
{
    TimeChartData data = liveRack(1, 500);
    data.racks[0].rows[0].remark.reset();
    data.racks[0].rows[0].bars.back().awaited = false;
    data.visible_s = TimeStretch{100, 200};
    showRack(data);
    const QImage image = chart.grab().toImage();
    const TimeChartLayout &layout = chart.currentLayout();
    const int y = static_cast<int>(layout.rowArea(0).center().y());
    const QColor ground = chart.palette().color(QPalette::Window);
    EXPECT_EQ(image.pixelColor(static_cast<int>(layout.plot.left()) - 4, y), ground);
    for (int x = static_cast<int>(layout.plot.right()) + 2; x < 600; ++x)
        EXPECT_EQ(image.pixelColor(x, y), ground) << x;
}

TEST_F(LiveTimeChart, WindowDiffersFromTheBareWaitInBlackAndWhite)
{
    TimeChartData data = liveRack(1, 200);
    data.visible_s = TimeStretch{0, 400};
    showRack(data);
    const QImage image = chart.grab().toImage();
    const TimeChartLayout &layout = chart.currentLayout();
    const QRectF area = windowArea(layout, 0, data.racks[0].rows[0].bars[2]);
    const auto darkness = [&](double x) {
        int dark = 0;
        for (int y = static_cast<int>(area.top()) - 1; y <= static_cast<int>(area.bottom()) + 1; ++y)
            dark += qGray(image.pixel(static_cast<int>(x), y)) < 90;
        return dark;
    };
    EXPECT_GE(darkness(area.left()), static_cast<int>(area.height()) - 2);
    EXPECT_GE(darkness(area.right()), static_cast<int>(area.height()) - 2);
    EXPECT_LE(darkness(layout.xOf(100)), 3);
}

TEST_F(LiveTimeChart, DescriptionLeavesAFocusedReaderAloneUntilARowIsChosen)
{
    showRack(liveRack(3, 100));
    chart.clearFocus();
    chart.setNow(180);
    EXPECT_TRUE(chart.accessibleDescription().contains(u"1: A1 due now"_s));
    chart.setNow(190);
    EXPECT_TRUE(chart.accessibleDescription().endsWith(u"As of 3:00"_s));
    chart.setFocus();
    EXPECT_TRUE(chart.accessibleDescription().endsWith(u"As of 3:10"_s));
    chart.setNow(200);
    EXPECT_TRUE(chart.accessibleDescription().endsWith(u"As of 3:10"_s));
    chart.chooseRow(2);
    EXPECT_TRUE(chart.accessibleDescription().endsWith(u"As of 3:20"_s));
}

TEST_F(LiveTimeChart, EnterOrDoubleClickActivatesTheRow)
{
    showRack(liveRack(3, 100));
    const QSignalSpy activated(&chart, &TimeChart::rowActivated);
    QTest::keyClick(&chart, Qt::Key_Return);
    chart.chooseRow(-1);
    QTest::keyClick(&chart, Qt::Key_Return);
    const qsizetype none = activated.count();
    chart.chooseRow(1);
    QTest::keyClick(&chart, Qt::Key_Return);
    QTest::keyClick(&chart, Qt::Key_Enter);
    ASSERT_EQ(activated.count(), none + 2);
    EXPECT_EQ(activated.last().at(0).toInt(), 1);
    QTest::mouseDClick(&chart, Qt::LeftButton, {}, chart.currentLayout().rowArea(2).center().toPoint());
    ASSERT_EQ(activated.count(), none + 3);
    EXPECT_EQ(activated.last().at(0).toInt(), 2);
    QTest::mouseDClick(&chart, Qt::LeftButton, {}, {5, 5});
    EXPECT_EQ(activated.count(), none + 3);
}

TEST(TimeChartInScrollArea, KeepsTheChosenRowAndTheAxisInSight)
{
    const Theme theme;
    QScrollArea area;
    area.setWidgetResizable(true);
    area.resize(600, 360);
    auto *chart = new TimeChart(theme, u"Times"_s);
    chart->setData(liveRack(96, 100));
    area.setWidget(chart);
    area.show();
    QCoreApplication::processEvents();
    EXPECT_GT(chart->height(), 1000);
    const auto rowTop = [&](int row) { return chart->currentLayout().rowArea(row).top() + chart->y(); };
    chart->chooseRow(95);
    EXPECT_LT(rowTop(95), area.viewport()->height());
    EXPECT_GT(area.verticalScrollBar()->value(), 0);
    chart->chooseRow(40);
    EXPECT_GE(rowTop(40), chart->currentLayout().plot.top());
    // The axis lies over the rows at the top: they can't be hit there.
    const int below = -chart->y() + 20;
    QTest::mouseClick(chart, Qt::LeftButton, {}, {300, below});
    EXPECT_EQ(chart->chosenRow(), 40);
    const int head = static_cast<int>(chart->currentLayout().axis.bottom());
    const int axis = static_cast<int>(chart->currentLayout().axis.top()) + 2;
    const QImage all = chart->grab(QRect(0, 0, 600, head)).toImage();
    const QImage seen = area.viewport()->grab(QRect(0, 0, chart->width(), head)).toImage();
    // Between the ticks of the two the head is the same, but for the words of the row.
    EXPECT_EQ(seen.pixelColor(20, axis), all.pixelColor(20, axis));
    EXPECT_EQ(seen.pixelColor(300, axis), chart->palette().color(QPalette::Window));
}

} // namespace
} // namespace plateau::ui
