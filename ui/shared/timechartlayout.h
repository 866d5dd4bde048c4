// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/timechartdata.h"

#include <QRectF>
#include <QSizeF>

#include <vector>

namespace plateau::ui {

/// Measures of the font the chart is written in, in pixels.
struct TextMeasures {
    double line = 16;
    /// Widest name of a row, and the widest number under the axis.
    double name = 60;
    double number = 24;
    /// Widest remark beside a row, with its shape; of a live chart.
    double remark = 120;
    /// Of the names, what the numbers at their head take up, with the room behind them.
    double tubes = 0;
};

/// Where everything of the chart goes, in pixels. From the top: words on the row that is chosen, the axis,
/// the rows, the lane of the hands (not of a live chart), the key (where there is room for it).
struct TimeChartLayout {
    QRectF words;
    QRectF axis;
    /// Names are left of it, remarks right of it.
    QRectF plot;
    QRectF remarks;
    /// Null where they are left out.
    QRectF lane;
    QRectF key;
    /// Width of the column of numbers that head the names, with the room behind them.
    double tubes = 0;
    double rowHeight = 0;
    /// By row, and by rack (empty where no rack has a heading).
    std::vector<double> rowTops;
    std::vector<double> headingTops;
    /// Every how-manieth row has its name beside it.
    int namedEvery = 1;
    int first_s = 0;
    int last_s = 0;
    int tick_s = 60;

    /// Of a time out of sight, out of the plot.
    double xOf(int time_s) const;
    /// -1 where there is none.
    int rowAt(double y) const;
    QRectF rowArea(int row) const;
    QRectF nameArea(double top, double height) const;
    /// Of that, for the number at the head of a name (without the room behind it), and for the rest.
    QRectF tubeArea(const QRectF &name, double between) const;
    QRectF behindTube(const QRectF &name) const;
    /// Of an addition or a reading: as wide as it takes, but never too narrow to be seen.
    QRectF markArea(int row, const TimeBar &bar) const;
    /// Where it lies within a part that is as wide as the plot; cut at both ends of what is shown.
    QRectF across(int start_s, int end_s, const QRectF &part) const;
    bool isInSight(int start_s, int end_s) const { return start_s <= last_s && end_s >= first_s; }
};

/// Smallest height of a row; so many of them make the chart's smallest height. On a live chart each is high
/// enough for its words, as part of a line of text.
inline constexpr double smallestRow = 5;
inline constexpr double smallestLiveRow = 0.8;

/// Of a span of the lane in which the hands are free: whether there is room to write how long, and how long the line is that
/// leads there from either end; none where that would be a stump, or nothing is written.
struct FreeLook {
    bool isWritten = false;
    double lineLength = 0;
    bool operator==(const FreeLook &) const = default;
};
FreeLook freeLook(double width, double textWidth);

TimeChartLayout layOut(const TimeChartData &data, const QSizeF &size, const TextMeasures &text);
/// With rows as high as a line of text, or as small as they may be.
double usualHeight(const TimeChartData &data, const TextMeasures &text);
double smallestHeight(const TimeChartData &data, const TextMeasures &text);
/// The smallest round step that is drawn at least that wide: half a minute, whole minutes, hours.
int tickStep_s(double pixelsPerSecond, double smallestPixels);

} // namespace plateau::ui
