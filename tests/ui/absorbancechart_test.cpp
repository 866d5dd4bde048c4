// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "ui/shared/absorbancechart.h"
#include "ui/shared/chartaxes.h"
#include "ui/shared/theme.h"

#include <QChart>
#include <QChartView>
#include <QCoreApplication>
#include <QLabel>
#include <QLineSeries>
#include <QScatterSeries>
#include <QValueAxis>

#include <gtest/gtest.h>

namespace plateau::ui {
namespace {

using namespace Qt::StringLiterals;

/// Seven readings two minutes apart; the line runs through the last four.
AbsorbanceSeries sevenReadings()
{
    AbsorbanceSeries series;
    series.reading = u"A2"_s;
    series.start = u"the starter"_s;
    series.points = {{2, 0.301}, {4, 0.402}, {6, 0.451}, {8, 0.496}, {10, 0.500}, {12, 0.504}, {14, 0.508}};
    series.line = {0.480, 0.002, 0.00021, 3};
    series.ended = true;
    return series;
}

TEST(RoundScale, HoldsTheRangeInRoundSteps)
{
    EXPECT_EQ(roundScale(0, 14, 5, 1), (AxisScale{0, 15, 5, 0}));
    EXPECT_EQ(roundScale(0, 10, 5, 1), (AxisScale{0, 10, 2, 0}));
    const AxisScale absorbances = roundScale(0.301, 0.508, 4, 0.01);
    EXPECT_NEAR(absorbances.lowest, 0.3, 1e-12);
    EXPECT_NEAR(absorbances.highest, 0.6, 1e-12);
    EXPECT_NEAR(absorbances.step, 0.1, 1e-12);
    EXPECT_EQ(absorbances.decimals, 1);
}

TEST(RoundScale, WidensARangeThatIsTooNarrow)
{
    const AxisScale scale = roundScale(0.512, 0.512, 4, 0.01);
    EXPECT_LE(scale.lowest, 0.507 + 1e-12);
    EXPECT_GE(scale.highest, 0.517 - 1e-12);
    EXPECT_EQ(scale.decimals, 3);
}

TEST(RoundScale, NeverHasMoreStepsThanAskedFor)
{
    for (int i = 1; i < 400; ++i) {
        const double lowest = -3.7 + 0.031 * i;
        const double highest = lowest + 0.013 * i;
        const AxisScale scale = roundScale(lowest, highest, 4, 0.01);
        EXPECT_LE((scale.highest - scale.lowest) / scale.step, 4 + 1e-9) << i;
        EXPECT_LE(scale.lowest, lowest + 1e-9) << i;
        EXPECT_GE(scale.highest, highest - 1e-9) << i;
    }
}

TEST(AbsorbanceWords, TellTheEndTheLineAndItsSlope)
{
    EXPECT_EQ(
        seriesText(sevenReadings()),
        u"Ended: it changes steadily. 0.480 at the addition of the starter by the line through the last 4 points, slope "
        "0.00200 per min, standard error 0.00021."_s);
    AbsorbanceSeries series = sevenReadings();
    series.ended = false;
    EXPECT_TRUE(seriesText(series).startsWith(u"Not ended yet: it still changes, or not steadily. 0.480"_s));
    series.line.reset();
    series.ended.reset();
    EXPECT_EQ(seriesText(series), u"Too few readings to say whether it has ended."_s);
    EXPECT_EQ(seriesText({}), u"No reading of this series yet."_s);
}

TEST(AbsorbanceWords, SlopeWithoutAnErrorHasFiveDecimalsAndNoNegativeZero)
{
    AbsorbanceSeries series = sevenReadings();
    series.line = {0.5, -0.000004, {}, 5};
    EXPECT_TRUE(seriesText(series).endsWith(u"last 2 points, slope 0.00000 per min."_s));
    series.line->slope_per_min = -0.000006;
    EXPECT_TRUE(seriesText(series).endsWith(u"slope -0.00001 per min."_s));
    series.line->slopeError_per_min = 0;
    EXPECT_TRUE(seriesText(series).endsWith(u"slope -0.00001 per min, standard error 0.00000."_s));
}

TEST(AbsorbanceWords, DescriptionHasEveryPoint)
{
    const QStringList lines = seriesDescription(sevenReadings()).split(u'\n');
    ASSERT_EQ(lines.size(), 8);
    EXPECT_EQ(lines[0], seriesText(sevenReadings()));
    EXPECT_EQ(lines[3], u"6:00\u00a0min: 0.451"_s);
    EXPECT_EQ(lines[4], u"8:00\u00a0min: 0.496, in the line"_s);
    EXPECT_EQ(lines[7], u"14:00\u00a0min: 0.508, in the line"_s);
}

class AbsorbanceChartWidget : public ::testing::Test
{
protected:
    AbsorbanceChartWidget()
    {
        chart.resize(300, 200);
        chart.show();
    }
    QChartView &view() { return *chart.findChild<QChartView *>(u"absorbanceChart"_s); }
    /// Line, points before it, points of it, its beginning.
    QXYSeries &drawn(int series) { return *qobject_cast<QXYSeries *>(view().chart()->series().at(series)); }
    QValueAxis &axis(Qt::Orientation orientation)
    {
        return *qobject_cast<QValueAxis *>(view().chart()->axes(orientation).first());
    }

    Theme theme;
    AbsorbanceChart chart{theme, u"A2 against time"_s};
};

TEST_F(AbsorbanceChartWidget, LineRunsFromTheStartToTheLastPoint)
{
    chart.setSeries(sevenReadings());
    ASSERT_EQ(drawn(0).count(), 2);
    EXPECT_EQ(drawn(0).at(0), QPointF(0, 0.480));
    EXPECT_EQ(drawn(0).at(1).x(), 14);
    EXPECT_NEAR(drawn(0).at(1).y(), 0.508, 1e-12);
    EXPECT_EQ(drawn(1).count(), 3);
    EXPECT_EQ(drawn(2).count(), 4);
    ASSERT_EQ(drawn(3).count(), 1);
    EXPECT_EQ(drawn(3).at(0), QPointF(0, 0.480));
}

TEST_F(AbsorbanceChartWidget, WithoutALineThereArePointsAlone)
{
    chart.setSeries(sevenReadings());
    AbsorbanceSeries series = sevenReadings();
    series.line.reset();
    chart.setSeries(series);
    EXPECT_EQ(drawn(0).count(), 0);
    EXPECT_EQ(drawn(1).count(), 7);
    EXPECT_EQ(drawn(2).count(), 0);
    EXPECT_EQ(drawn(3).count(), 0);
}

TEST_F(AbsorbanceChartWidget, AxesHoldPointsAndLine)
{
    AbsorbanceSeries series = sevenReadings();
    series.line = {0.2, 0.05, {}, 3}; // beyond the points at both ends
    chart.setSeries(series);
    EXPECT_LT(axis(Qt::Horizontal).min(), 0);
    EXPECT_GT(axis(Qt::Horizontal).max(), 14);
    EXPECT_LT(axis(Qt::Vertical).min(), 0.2);
    EXPECT_GT(axis(Qt::Vertical).max(), 0.9);
    EXPECT_EQ(axis(Qt::Vertical).titleText(), u"A2"_s);
}

TEST_F(AbsorbanceChartWidget, SpeaksItsNumbersAndSaysWhenThereAreNone)
{
    EXPECT_FALSE(view().isVisible());
    EXPECT_EQ(view().accessibleDescription(), u"No reading of this series yet."_s);
    chart.setSeries(sevenReadings());
    EXPECT_TRUE(view().isVisible());
    EXPECT_EQ(view().accessibleName(), u"A2 against time"_s);
    EXPECT_EQ(view().accessibleDescription(), seriesDescription(sevenReadings()));
    EXPECT_EQ(chart.findChild<QLabel *>(u"absorbanceWords"_s)->text(), seriesText(sevenReadings()));
    EXPECT_EQ(view().focusPolicy(), Qt::NoFocus);
    chart.setSeries({});
    EXPECT_FALSE(view().isVisible());
}

TEST_F(AbsorbanceChartWidget, FitsInto300By200AndFollowsTheTheme)
{
    chart.setSeries(sevenReadings());
    EXPECT_LE(chart.minimumSizeHint().width(), 300);
    EXPECT_LE(chart.minimumSizeHint().height(), 200);
    QCoreApplication::processEvents();
    EXPECT_EQ(chart.size(), QSize(300, 200));
    EXPECT_GE(view().height(), 100);
    EXPECT_EQ(view().chart()->backgroundBrush().color(), theme.base());
    QPalette dark;
    dark.setColor(QPalette::Window, Qt::black);
    dark.setColor(QPalette::WindowText, Qt::white);
    dark.setColor(QPalette::Base, Qt::black);
    theme.refresh(dark, chart.font());
    EXPECT_EQ(view().chart()->backgroundBrush().color(), QColor(Qt::black));
    EXPECT_EQ(axis(Qt::Horizontal).labelsBrush().color(), QColor(Qt::white));
}

} // namespace
} // namespace plateau::ui
