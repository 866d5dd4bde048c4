// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/timechartnow.h"

#include "ui/shared/timechartmarks.h"
#include "ui/shared/timechartrows.h"
#include "ui/shared/timechartwords.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace plateau::ui {

namespace {

constexpr double halfHead = 6;
constexpr double headHeight = 8;

bool isNowInSight(const TimeChartView &view)
{
    return view.data.now_s && view.layout.isInSight(*view.data.now_s, *view.data.now_s);
}

QRectF labelArea(const TimeChartView &view, const QFontMetricsF &metrics)
{
    const QRectF axis = view.layout.axis;
    const double width = metrics.horizontalAdvance(stopwatchText(*view.data.now_s)) + 10;
    const double left = view.layout.xOf(*view.data.now_s) - width / 2;
    return {std::clamp(left, axis.left() - width / 2, axis.right() - width / 2), axis.top() - 1, width,
            axis.height() + 1};
}

double bottomOf(const TimeChartLayout &layout)
{
    return std::max(layout.plot.bottom(), layout.lane.bottom());
}

void paintLine(QPainter &painter, const TimeChartView &view, double headTop)
{
    const Theme &theme = view.theme;
    const double x = view.layout.xOf(*view.data.now_s);
    const double top = view.layout.plot.top() + headTop;
    painter.setPen(QPen(theme.colour(State::Bad), 2));
    painter.drawLine(QPointF(x, top), QPointF(x, bottomOf(view.layout)));
    painter.setBrush(theme.colour(State::Bad));
    painter.setPen(theme.text());
    painter.drawPolygon(QPolygonF({{x - halfHead, top - 1}, {x + halfHead, top - 1}, {x, top + headHeight}}));
    const QRectF label =
        labelArea(view, QFontMetricsF(painter.font(), painter.device())).translated(0, headTop);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.text());
    painter.drawRoundedRect(label, 3, 3);
    painter.setPen(theme.base());
    painter.drawText(label, Qt::AlignCenter, stopwatchText(*view.data.now_s));
}

void paintLate(QPainter &painter, const TimeChartView &view, int row, const TimeStanding &standing)
{
    const TimeRow &data = rowOf(view.data, row);
    const int since_s = data.bars[static_cast<std::size_t>(standing.bar)].end_s;
    const QRectF tail = view.layout.across(since_s, *view.data.now_s, view.layout.rowArea(row));
    if (tail.width() > 4)
        paintLateness(painter, view.theme, tail.left(), tail.right() - 2, tail.center().y());
    if (view.data.live)
        paintBeside(painter, view, row, *besideRow(data, view.data.now_s));
}

} // namespace

void paintTimeChartLate(QPainter &painter, const TimeChartView &view, const QRectF &part)
{
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t row = 0; row < view.standings.size(); ++row) {
        const std::optional<TimeStanding> &standing = view.standings[row];
        if (!standing || standing->phase != TimeStanding::Phase::Late)
            continue;
        const QRectF area = view.layout.rowArea(static_cast<int>(row));
        if (area.bottom() >= part.top() && area.top() <= part.bottom())
            paintLate(painter, view, static_cast<int>(row), *standing);
    }
}

void paintTimeChartNow(QPainter &painter, const TimeChartView &view, double headTop)
{
    if (rowsOf(view.data) == 0 || !isNowInSight(view))
        return;
    painter.setRenderHint(QPainter::Antialiasing);
    paintLine(painter, view, headTop);
}

QRectF nowArea(const TimeChartView &view, const QFontMetricsF &metrics)
{
    if (!isNowInSight(view) || rowsOf(view.data) == 0)
        return {};
    const QRectF label = labelArea(view, metrics);
    const double x = view.layout.xOf(*view.data.now_s);
    const double left = std::min(label.left(), x - halfHead) - 2;
    const double right = std::max(label.right(), x + halfHead) + 2;
    return {left, 0, right - left, bottomOf(view.layout) + 1};
}

} // namespace plateau::ui
