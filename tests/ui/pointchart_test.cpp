// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "ui/bench/resultoverview.h"
#include "ui/shared/pointchart.h"
#include "ui/shared/theme.h"

#include <QApplication>
#include <QCategoryAxis>
#include <QChart>
#include <QChartView>
#include <QFontMetricsF>
#include <QGraphicsRectItem>
#include <QGraphicsSimpleTextItem>
#include <QLabel>
#include <QScatterSeries>

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace plateau::ui {
namespace {

using namespace Qt::StringLiterals;

PointHistory historyOf(const std::vector<double> &values)
{
    PointHistory history;
    history.lower = 90;
    history.upper = 110;
    history.quantity = u"recovery in %"_s;
    for (std::size_t i = 0; i < values.size(); ++i)
        history.points.push_back({u"day %1"_s.arg(i + 1), values[i]});
    return history;
}

PointHistory longHistory()
{
    std::vector<double> values(10000, 100);
    values[3333] = 120;
    values[3334] = 80;
    values.back() = 101;
    return historyOf(values);
}

TEST(PointHistoryBand, BothLimitsBelongToIt)
{
    PointHistory history = historyOf({});
    EXPECT_EQ(sideOf(history, 90), BandSide::Within);
    EXPECT_EQ(sideOf(history, 89.999), BandSide::Below);
    EXPECT_EQ(sideOf(history, 110), BandSide::Within);
    EXPECT_EQ(sideOf(history, 110.001), BandSide::Above);
    history.upper.reset();
    EXPECT_EQ(sideOf(history, 1000), BandSide::Within);
    history.lower.reset();
    EXPECT_EQ(sideOf(history, -1000), BandSide::Within);
}

TEST(PointHistoryWords, TellTheNewestItsLimitsAndHowManyAreOutside)
{
    EXPECT_EQ(historyText(historyOf({112, 100, 90})),
              u"Newest 90.0 on day 3, within the limits; limits 90.0 to 110.0. Outside: 1 of 3."_s);
    EXPECT_EQ(historyText(historyOf({89.9})),
              u"Newest 89.9 on day 1, below the limit; limits 90.0 to 110.0. Outside: 1 of 1."_s);
    PointHistory open = historyOf({111});
    open.lower.reset();
    EXPECT_EQ(historyText(open),
              u"Newest 111.0 on day 1, above the limit; upper limit 110.0. Outside: 1 of 1."_s);
    open.upper.reset();
    EXPECT_EQ(historyText(open), u"Newest 111.0 on day 1; no limits."_s);
    EXPECT_EQ(historyText({}), u"There is no history yet."_s);
}

TEST(PointHistoryWords, DescriptionGoesBackFromTheNewest)
{
    const QStringList few = historyDescription(historyOf({112, 100})).split(u'\n');
    ASSERT_EQ(few.size(), 4);
    EXPECT_EQ(few[0], u"recovery in %"_s);
    EXPECT_EQ(few[2], u"100.0 on day 2, within the limits"_s);
    EXPECT_EQ(few[3], u"112.0 on day 1, above the limit"_s);
    const QStringList many = historyDescription(longHistory()).split(u'\n');
    EXPECT_EQ(many.size(), 33);
    EXPECT_EQ(many[2], u"The newest 30 of 10000:"_s);
    EXPECT_EQ(many[3], u"101.0 on day 10000, within the limits"_s);
}

TEST(PointHistoryThinned, KeepsEverythingThatFits)
{
    EXPECT_EQ(thinned(historyOf({1, 2, 3}), 2), (std::vector<int>{0, 1, 2}));
    EXPECT_EQ(thinned(historyOf(std::vector<double>(200, 1)), 100).size(), 200U);
    EXPECT_EQ(thinned(historyOf({1, 2, 3}), 0).size(), 3U);
    EXPECT_TRUE(thinned({}, 100).empty());
}

TEST(PointHistoryThinned, KeepsTheExtremesAndTheNewestInOrder)
{
    const std::vector<int> shown = thinned(longHistory(), 200);
    EXPECT_LE(shown.size(), 401U);
    EXPECT_TRUE(std::is_sorted(shown.begin(), shown.end()));
    for (const int point : {3333, 3334, 9999})
        EXPECT_EQ(std::count(shown.begin(), shown.end(), point), 1) << point;
}

TEST(PointChartLimits, StandAtTheirPlacesUnlessTheyWouldCoverEachOther)
{
    using Places = std::pair<double, double>;
    EXPECT_EQ(heldApart(50, 150, 20, 0, 200), (Places{50, 150}));
    EXPECT_EQ(heldApart(50, 70, 20, 0, 200), (Places{50, 70})) << "they touch";
    EXPECT_EQ(heldApart(98, 102, 20, 0, 200), (Places{90, 110}));
    EXPECT_EQ(heldApart(2, 6, 20, 0, 200), (Places{10, 30})) << "the plot's top";
    EXPECT_EQ(heldApart(196, 198, 20, 0, 200), (Places{170, 190})) << "its bottom";
    EXPECT_EQ(heldApart(10, 12, 20, 0, 30), (Places{5, 25})) << "a plot too low for both";
}

class PointChartWidget : public ::testing::Test
{
protected:
    PointChartWidget()
    {
        chart.resize(400, 250);
        chart.show();
    }
    QChartView &view() { return *chart.findChild<QChartView *>(u"pointChart"_s); }
    /// Band, path, points within, outside, the newest.
    QXYSeries &drawn(int series) { return *qobject_cast<QXYSeries *>(view().chart()->series().at(series)); }

    /// The limits as they are written, from the top, in the chart's own places.
    std::vector<std::pair<QString, QRectF>> limits()
    {
        QApplication::processEvents();
        std::vector<std::pair<QString, QRectF>> written;
        for (QGraphicsItem *item : view().chart()->childItems()) {
            auto *text = qgraphicsitem_cast<QGraphicsSimpleTextItem *>(item);
            if (text && !text->text().isEmpty() && text->text() != quantity)
                written.emplace_back(text->text(), text->mapRectToParent(text->boundingRect()));
        }
        std::ranges::sort(written, {}, [](const auto &limit) { return limit.second.top(); });
        return written;
    }
    /// What is written beside the newest.
    std::pair<QString, QRectF> value()
    {
        QApplication::processEvents();
        for (QGraphicsItem *item : view().chart()->childItems()) {
            auto *ground = qgraphicsitem_cast<QGraphicsRectItem *>(item);
            if (!ground || ground->childItems().size() != 1)
                continue;
            if (auto *text = qgraphicsitem_cast<QGraphicsSimpleTextItem *>(ground->childItems().first()))
                return {text->text(), ground->mapRectToParent(ground->rect())};
        }
        return {};
    }
    double y(double value)
    {
        return view().chart()->mapToPosition({1, value}, view().chart()->series().at(1)).y();
    }

    const QString quantity = u"recovery in %"_s;
    Theme theme;
    PointChart chart{theme, u"Recovery of the standard"_s};
};

TEST_F(PointChartWidget, NewestStandsApartFromThoseWithinAndOutside)
{
    chart.setHistory(historyOf({100, 111, 110, 89, 99}));
    EXPECT_EQ(drawn(1).count(), 5);
    EXPECT_EQ(drawn(2).points(), (QList<QPointF>{{1, 100}, {3, 110}}));
    EXPECT_EQ(drawn(3).points(), (QList<QPointF>{{2, 111}, {4, 89}}));
    EXPECT_EQ(drawn(4).points(), (QList<QPointF>{{5, 99}}));
    EXPECT_EQ(value().first, u"99.0"_s);
    const auto shapeOf = [&](int series) {
        return qobject_cast<QScatterSeries *>(&drawn(series))->markerShape();
    };
    EXPECT_NE(shapeOf(4), shapeOf(2));
    EXPECT_NE(shapeOf(4), shapeOf(3));
    EXPECT_NE(shapeOf(2), shapeOf(3));
}

TEST_F(PointChartWidget, TheNewestValueIsWrittenWhereNoPointComes)
{
    for (const QSize size : {QSize(270, 200), QSize(340, 150), QSize(1200, 500)}) {
        chart.resize(size);
        for (const std::vector<double> &values : {std::vector<double>{98.5, 100.5, 101, 99, 100, 97.9}, {86}, {120, 80},
                                                  std::vector<double>(60, 100), std::vector<double>{100, 101, 90}}) {
            chart.setHistory(historyOf(values));
            const QRectF written = value().second;
            const QPointF newest = view().chart()->mapToPosition(drawn(4).points().first(), &drawn(4));
            EXPECT_GE(written.left(), newest.x() + 7) << size.width() << ", " << values.size();
            EXPECT_LT(written.left(), newest.x() + 20) << "beside it";
            EXPECT_LE(written.right(), view().chart()->plotArea().right() + 1) << size.width() << ", " << values.size();
            EXPECT_LT(written.top(), newest.y());
            EXPECT_GT(written.bottom(), newest.y());
        }
    }
}

TEST(PointChartRoom, IsFreeBehindTheNewestButNoMoreThanHalf)
{
    EXPECT_DOUBLE_EQ(roomBehind(10, 200, 50), 10.0 / 3);
    EXPECT_DOUBLE_EQ(roomBehind(10, 60, 50), 10);
    EXPECT_DOUBLE_EQ(roomBehind(10, 0, 50), 0) << "not laid out yet";
}

TEST_F(PointChartWidget, LimitsAreWrittenWhereTheyAre)
{
    chart.setHistory(historyOf({100, 101}));
    const auto both = limits();
    ASSERT_EQ(both.size(), 2U);
    EXPECT_EQ(both[0].first, u"110.0"_s);
    EXPECT_EQ(both[1].first, u"90.0"_s);
    EXPECT_NEAR(both[0].second.center().y(), y(110), 1);
    EXPECT_NEAR(both[1].second.center().y(), y(90), 1);
    for (const auto &[text, place] : both) {
        EXPECT_GT(place.left(), view().chart()->plotArea().right()) << text.toStdString();
        EXPECT_LE(place.right(), view().chart()->size().width()) << text.toStdString();
    }
    PointHistory open = historyOf({100, 101});
    open.upper.reset();
    chart.setHistory(open);
    ASSERT_EQ(limits().size(), 1U);
    EXPECT_EQ(limits()[0].first, u"90.0"_s);
    EXPECT_NEAR(limits()[0].second.center().y(), y(90), 1);
}

TEST_F(PointChartWidget, QuantityStandsWholeAboveThePlot)
{
    chart.setHistory(historyOf({100, 101}));
    QApplication::processEvents();
    const QRectF plot = view().chart()->plotArea();
    bool isWritten = false;
    for (QGraphicsItem *item : view().chart()->childItems()) {
        auto *text = qgraphicsitem_cast<QGraphicsSimpleTextItem *>(item);
        if (!text || text->text() != quantity)
            continue;
        isWritten = true;
        EXPECT_LE(text->mapRectToParent(text->boundingRect()).bottom(), plot.top());
        EXPECT_LE(text->mapRectToParent(text->boundingRect()).right(), view().chart()->size().width());
    }
    EXPECT_TRUE(isWritten);
}

TEST_F(PointChartWidget, LimitsThatAreNearAreNotWrittenOverEachOther)
{
    PointHistory near = historyOf({60, 100, 140});
    near.lower = 99;
    near.upper = 101;
    chart.setHistory(near);
    const auto both = limits();
    ASSERT_EQ(both.size(), 2U);
    EXPECT_EQ(both[0].first, u"101.0"_s);
    EXPECT_GE(both[1].second.center().y() - both[0].second.center().y(),
              QFontMetricsF(chart.font()).height() - 0.01);
    EXPECT_NEAR((both[0].second.center().y() + both[1].second.center().y()) / 2, y(100), 1);
}

TEST_F(PointChartWidget, FirstAndNewestHaveTheirLabels)
{
    chart.setHistory(historyOf(std::vector<double>(23, 100)));
    auto *axis = qobject_cast<QCategoryAxis *>(view().chart()->axes(Qt::Horizontal).first());
    ASSERT_TRUE(axis);
    EXPECT_EQ(axis->categoriesLabels().first(), u"day 1"_s);
    EXPECT_EQ(axis->categoriesLabels().last(), u"day 23"_s);
    EXPECT_EQ(axis->endValue(u"day 23"_s), 23);
    chart.setHistory(historyOf({100}));
    EXPECT_EQ(axis->categoriesLabels(), QStringList{u"day 1"_s});
    PointHistory sameDay = historyOf({100, 101, 102});
    for (PointHistory::Point &point : sameDay.points)
        point.label = u"2026-11-25"_s;
    chart.setHistory(sameDay);
    EXPECT_EQ(axis->categoriesLabels(), QStringList{u"2026-11-25"_s});
}

TEST_F(PointChartWidget, HasTheRoomThatFewSentencesLeave)
{
    ResultOverview overview(theme);
    overview.resize(320, 600);
    overview.setSentences({{State::Good, u"No check failed for this result."_s}});
    overview.setHistory(historyOf({100, 101, 99}), u"Recovery (%) of GLU"_s);
    overview.show();
    QApplication::processEvents();
    const auto *history = overview.findChild<PointChart *>(u"recoveryHistory"_s);
    const auto *sentences = overview.findChild<SentenceList *>(u"aboutResult"_s);
    EXPECT_GT(history->height(), 400) << sentences->height();
    EXPECT_GE(sentences->height(), sentences->sizeHintForRow(0));
    overview.setHistory({}, {});
    QApplication::processEvents();
    EXPECT_GT(sentences->height(), 550) << "alone again";
}

TEST_F(PointChartWidget, CanBeReadBesideManyWordsWhichEndInAWholeLine)
{
    ResultOverview overview(theme);
    overview.resize(320, 340);
    const QString sentence =
        u"Standard GLU: Recovery 86.0 % is outside 90.0 to 110.0 %. Check the preparation and age of the standard, the "
        "pipette and the reagents before any result of this run is used. "_s;
    overview.setSentences({{State::Bad, sentence.repeated(5)}, {State::Bad, sentence}});
    overview.setHistory(historyOf({100, 101, 99}), u"Recovery (%) of GLU"_s);
    overview.show();
    QApplication::processEvents();
    const auto *history = overview.findChild<PointChart *>(u"recoveryHistory"_s);
    const auto *sentences = overview.findChild<SentenceList *>(u"aboutResult"_s);
    EXPECT_GE(history->height(), 12 * overview.fontMetrics().height());
    const int first = sentences->sizeHintForRow(0);
    const int lines = qRound(double(first - 2 * theme.gap()) / overview.fontMetrics().lineSpacing());
    ASSERT_GT(lines, 2);
    ASSERT_LT(sentences->height(), first) << "else the first one ends it";
    const double seen = double(sentences->height() - theme.gap()) * lines / (first - 2 * theme.gap());
    EXPECT_NEAR(seen, std::round(seen), 0.1) << sentences->height();
    EXPECT_GE(std::round(seen), 1);
}

TEST_F(PointChartWidget, TenThousandPointsAreThinnedToTheWidth)
{
    chart.setHistory(longHistory());
    EXPECT_LE(drawn(1).count(), 2 * 400 + 1);
    EXPECT_GE(drawn(1).count(), 200);
    EXPECT_EQ(drawn(2).count(), 0);
    EXPECT_EQ(drawn(3).points(), (QList<QPointF>{{3334, 120}, {3335, 80}}));
    EXPECT_EQ(drawn(4).points(), (QList<QPointF>{{10000, 101}}));
}

TEST_F(PointChartWidget, SpeaksItsNumbersAndSaysWhenThereAreNone)
{
    EXPECT_FALSE(view().isVisible());
    chart.setHistory(historyOf({100, 111}));
    EXPECT_TRUE(view().isVisible());
    EXPECT_EQ(view().accessibleName(), u"Recovery of the standard"_s);
    EXPECT_EQ(view().accessibleDescription(), historyDescription(historyOf({100, 111})));
    EXPECT_EQ(chart.findChild<QLabel *>(u"pointWords"_s)->text(), historyText(historyOf({100, 111})));
    chart.setHistory({});
    EXPECT_FALSE(view().isVisible());
    EXPECT_EQ(view().accessibleDescription(), u"There is no history yet."_s);
}

} // namespace
} // namespace plateau::ui
