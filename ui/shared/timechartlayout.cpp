// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/timechartlayout.h"

#include <algorithm>
#include <cmath>

namespace plateau::ui {

namespace {

constexpr double gap = 6;
/// Left of the names.
constexpr double besideNames = 4;
constexpr double smallestMark = 5;
constexpr double highestMark = 14;
/// As part of the chart's width.
constexpr double widestRemark = 0.3;

bool hasHeadings(const TimeChartData &data)
{
    return std::any_of(data.racks.begin(), data.racks.end(),
                       [](const TimeRack &rack) { return !rack.name.isEmpty(); });
}

double headings(const TimeChartData &data, const TextMeasures &text)
{
    return hasHeadings(data) ? static_cast<double>(data.racks.size()) * (text.line + gap) : 0;
}

/// Of everything but rows and headings: words and axis, and what else there is below the rows.
double framing(const TextMeasures &text, bool withLane, bool withKey)
{
    const int parts = 2 + (withLane ? 1 : 0) + (withKey ? 1 : 0);
    const int moreWords = withLane ? 0 : 1; // a live chart tells a row in two lines
    return (parts + moreWords) * text.line + (parts + 2) * gap;
}

double smallestRowOf(const TimeChartData &data, const TextMeasures &text)
{
    return data.live ? smallestLiveRow * text.line : smallestRow;
}

} // namespace

int tickStep_s(double pixelsPerSecond, double smallestPixels)
{
    for (const int step_s : {30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14400}) {
        if (step_s * pixelsPerSecond >= smallestPixels)
            return step_s;
    }
    return 28800;
}

FreeLook freeLook(double width, double textWidth)
{
    constexpr double besideText = 4;
    constexpr double shortestLine = 6;
    if (textWidth + besideText > width)
        return {};
    const double line = (width - textWidth) / 2 - besideText;
    return {true, line < shortestLine ? 0 : line};
}

double usualHeight(const TimeChartData &data, const TextMeasures &text)
{
    return framing(text, !data.live, true) + headings(data, text) + rowsOf(data) * text.line;
}

double smallestHeight(const TimeChartData &data, const TextMeasures &text)
{
    return framing(text, !data.live, !data.live) + headings(data, text) +
           rowsOf(data) * smallestRowOf(data, text);
}

TimeChartLayout layOut(const TimeChartData &data, const QSizeF &size, const TextMeasures &text)
{
    TimeChartLayout layout;
    const TimeStretch shown = data.visible_s ? *data.visible_s : extentOf(data);
    layout.first_s = shown.first_s;
    layout.last_s = std::max(shown.last_s, shown.first_s + 1);
    layout.tubes = text.tubes;
    const double left = text.name + 3 * gap;
    const double remark = data.live ? std::min(text.remark, widestRemark * size.width()) + gap : 0;
    const double width = std::max(1.0, size.width() - left - text.number / 2 - gap - remark);
    layout.words = {gap, gap, size.width() - 2 * gap, (data.live ? 2 : 1) * text.line};
    layout.axis = {left, layout.words.bottom() + gap, width, text.line};
    const int rows = rowsOf(data);
    const double smallest = smallestRowOf(data, text);
    const auto roomWith = [&](bool key) {
        return size.height() - framing(text, !data.live, key) - headings(data, text);
    };
    const bool withKey = !data.live || roomWith(true) >= rows * smallest;
    layout.rowHeight = rows == 0 ? 0 : std::clamp(roomWith(withKey) / rows, smallest, 1.6 * text.line);
    layout.namedEvery =
        rows == 0 ? 1 : static_cast<int>(std::ceil(smallestLiveRow * text.line / layout.rowHeight - 1e-9));

    const double top = layout.axis.bottom() + gap;
    double y = top;
    for (const TimeRack &rack : data.racks) {
        if (hasHeadings(data)) {
            layout.headingTops.push_back(y);
            y += text.line + gap;
        }
        for (std::size_t row = 0; row < rack.rows.size(); ++row, y += layout.rowHeight)
            layout.rowTops.push_back(y);
    }
    layout.plot = {left, top, width, y - top};
    if (data.live)
        layout.remarks = {layout.plot.right() + gap, top, remark + text.number / 2 - gap, y - top};
    else
        layout.lane = {left, y + gap, width, text.line};
    if (withKey)
        layout.key = {gap, std::max(y, layout.lane.bottom()) + gap, size.width() - 2 * gap, text.line};
    layout.tick_s = tickStep_s(width / (layout.last_s - layout.first_s), 2 * text.number);
    return layout;
}

double TimeChartLayout::xOf(int time_s) const
{
    return plot.left() + plot.width() * (time_s - first_s) / std::max(1, last_s - first_s);
}

int TimeChartLayout::rowAt(double y) const
{
    const auto row = std::find_if(rowTops.begin(), rowTops.end(),
                                  [&](double top) { return top <= y && y < top + rowHeight; });
    return row == rowTops.end() ? -1 : static_cast<int>(row - rowTops.begin());
}

QRectF TimeChartLayout::rowArea(int row) const
{
    return {plot.left(), rowTops[static_cast<std::size_t>(row)], plot.width(), rowHeight};
}

QRectF TimeChartLayout::nameArea(double top, double height) const
{
    return {0, top, plot.left() - 10, height};
}

QRectF TimeChartLayout::tubeArea(const QRectF &name, double between) const
{
    return {name.left() + besideNames, name.top(), std::max(0.0, tubes - between), name.height()};
}

QRectF TimeChartLayout::behindTube(const QRectF &name) const
{
    return name.adjusted(besideNames + tubes, 0, 0, 0);
}

QRectF TimeChartLayout::markArea(int row, const TimeBar &bar) const
{
    const double left = xOf(bar.start_s);
    const double width = std::max(smallestMark, xOf(bar.end_s) - left);
    const double height = std::min(rowHeight * 0.8, highestMark);
    return {left, rowArea(row).center().y() - height / 2, width, height};
}

QRectF TimeChartLayout::across(int start_s, int end_s, const QRectF &part) const
{
    const double left = std::clamp(xOf(start_s), part.left(), part.right());
    const double right = std::clamp(xOf(end_s), part.left(), part.right());
    return {left, part.top(), right - left, part.height()};
}

} // namespace plateau::ui
