// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <optional>
#include <vector>

namespace plateau::ui {

/// Something that takes its time on one row. Seconds are those of one clock for the whole chart.
struct TimeBar {
    enum class Kind { Add, Wait, Read } kind = Kind::Add;
    int start_s = 0;
    int end_s = 0;
    /// What is added, or the reading's name.
    QString name{};
    bool operator==(const TimeBar &) const = default;
};

struct TimeRow {
    QString name;
    /// In the order of time.
    std::vector<TimeBar> bars;
    bool operator==(const TimeRow &) const = default;
};

/// Rows that belong together, under a name of their own where there are several.
struct TimeRack {
    QString name;
    std::vector<TimeRow> rows;
    bool operator==(const TimeRack &) const = default;
};

struct FreeTime {
    int start_s = 0;
    int end_s = 0;
    bool operator==(const FreeTime &) const = default;
};

struct TimeChartData {
    std::vector<TimeRack> racks;
    /// When nobody's hands are needed.
    std::vector<FreeTime> free;
    std::optional<int> now_s;
    bool operator==(const TimeChartData &) const = default;
};

/// Rows of all racks, counted through.
int rowsOf(const TimeChartData &data);
/// Row in range; the rack it stands in.
const TimeRow &rowOf(const TimeChartData &data, int row);
const TimeRack &rackOf(const TimeChartData &data, int row);

/// "12:05", minutes and seconds as a stopwatch counts them; "-0:30" before the start.
QString stopwatchText(int time_s);
/// One row in words: "P-104: sample 0:40, A1 4:40".
QString rowText(const TimeRow &row);
/// All of it in words, a row a line.
QString chartText(const TimeChartData &data);

} // namespace plateau::ui
