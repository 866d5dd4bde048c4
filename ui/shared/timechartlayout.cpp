// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/timechartlayout.h"

#include <algorithm>
#include <cmath>

namespace plateau::ui {

namespace {

constexpr double gap = 6;
constexpr double smallestMark = 5;

bool hasHeadings(const TimeChartData &data)
{
    return std::any_of(data.racks.begin(), data.racks.end(),
                       [](const TimeRack &rack) { return !rack.name.isEmpty(); });
}

double headings(const TimeChartData &data, const TextMeasures &text)
{
    return hasHeadings(data) ? static_cast<double>(data.racks.size()) * (text.line + gap) : 0;
}

/// Of everything but rows and headings.
double framing(const TextMeasures &text)
{
    return 4 * text.line + 6 * gap;
}

void spanOf(const TimeChartData &data, TimeChartLayout &layout)
{
    bool any = false;
    const auto include = [&](int time_s) {
        layout.first_s = any ? std::min(layout.first_s, time_s) : time_s;
        layout.last_s = any ? std::max(layout.last_s, time_s) : time_s;
        any = true;
    };
    for (const TimeRack &rack : data.racks) {
        for (const TimeRow &row : rack.rows) {
            for (const TimeBar &bar : row.bars) {
                include(bar.start_s);
                include(bar.end_s);
            }
        }
    }
    if (data.now_s && any)
        include(*data.now_s);
    layout.last_s = std::max(layout.last_s, layout.first_s + 60);
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

double usualHeight(const TimeChartData &data, const TextMeasures &text)
{
    return framing(text) + headings(data, text) + rowsOf(data) * text.line;
}

double smallestHeight(const TimeChartData &data, const TextMeasures &text)
{
    return framing(text) + headings(data, text) + rowsOf(data) * smallestRow;
}

TimeChartLayout layOut(const TimeChartData &data, const QSizeF &size, const TextMeasures &text)
{
    TimeChartLayout layout;
    spanOf(data, layout);
    const double left = text.name + 3 * gap;
    const double width = std::max(1.0, size.width() - left - text.number / 2 - gap);
    layout.words = {gap, gap, size.width() - 2 * gap, text.line};
    layout.axis = {left, layout.words.bottom() + gap, width, text.line};
    const int rows = rowsOf(data);
    const double room = size.height() - framing(text) - headings(data, text);
    layout.rowHeight = rows == 0 ? 0 : std::clamp(room / rows, smallestRow, 1.6 * text.line);
    layout.namedEvery = rows == 0 ? 1 : static_cast<int>(std::ceil(0.85 * text.line / layout.rowHeight));

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
    layout.lane = {left, y + gap, width, text.line};
    layout.key = {gap, layout.lane.bottom() + gap, size.width() - 2 * gap, text.line};
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

QRectF TimeChartLayout::markArea(int row, const TimeBar &bar) const
{
    const double left = xOf(bar.start_s);
    const double width = std::max(smallestMark, xOf(bar.end_s) - left);
    const double height = std::min(rowHeight * 0.8, 14.0);
    return {left, rowArea(row).center().y() - height / 2, width, height};
}

} // namespace plateau::ui
