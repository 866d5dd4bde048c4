// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/theme.h"

#include <QString>

#include <optional>
#include <vector>

namespace plateau::ui {

/// Something that takes its time on one row. Seconds are those of one clock for the whole chart.
struct TimeBar {
    /// Window: from when to when something is to be done, a reading taken or a component added.
    enum class Kind { Add, Wait, Window, Read } kind = Kind::Add;
    int start_s = 0;
    int end_s = 0;
    /// What is added, the reading's name, or what the window is for.
    QString name{};
    /// Of a window: there is no latest moment, end_s says nothing.
    bool openEnded = false;
    /// Of a window: what it is for has yet to be done.
    bool awaited = false;
    bool operator==(const TimeBar &) const = default;
};

/// What is to be said of a row, beside it.
struct TimeRemark {
    State state = State::Attention;
    QString text;
    bool operator==(const TimeRemark &) const = default;
};

struct TimeRow {
    QString name;
    /// In the order of time.
    std::vector<TimeBar> bars;
    std::optional<TimeRemark> remark{};
    /// Nothing of it is waited for any more.
    bool spoilt = false;
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

struct TimeStretch {
    int first_s = 0;
    int last_s = 0;
    bool operator==(const TimeStretch &) const = default;
};

struct TimeChartData {
    std::vector<TimeRack> racks;
    /// When nobody's hands are needed.
    std::vector<FreeTime> free;
    std::optional<int> now_s;
    /// A rack that is being worked: every row has its name and room for a remark beside it; what the hands do
    /// is not drawn.
    bool live = false;
    /// All that is shown; absent for everything there is.
    std::optional<TimeStretch> visible_s{};
    bool operator==(const TimeChartData &) const = default;
};

/// Rows of all racks, counted through.
int rowsOf(const TimeChartData &data);
/// Row in range; the rack it stands in.
const TimeRow &rowOf(const TimeChartData &data, int row);
const TimeRack &rackOf(const TimeChartData &data, int row);

/// From the first start to the last end, with now in it; at least a minute. On a live chart now takes whole
/// minutes, so that the picture does not shift with every second after the last end.
TimeStretch extentOf(const TimeChartData &data);
/// So much of a live chart, with now in its second quarter: it stays as it is while now goes on through that
/// quarter. Absent where everything fits into it, or nobody knows when now is.
std::optional<TimeStretch> stretchAroundNow(const TimeChartData &data, int length_s);

/// How the row stands with the first of its windows that is awaited.
struct TimeStanding {
    enum class Phase { Waiting, Due, Late } phase = Phase::Waiting;
    /// Of the window, in the row's bars.
    int bar = 0;
    bool operator==(const TimeStanding &) const = default;
};

/// Due from the window's start to its end, both included. Absent where nothing is awaited.
std::optional<TimeStanding> standingOf(const TimeRow &row, int now_s);
/// Of every row; nothing of any where nobody knows when now is.
std::vector<std::optional<TimeStanding>> standingsOf(const TimeChartData &data);

} // namespace plateau::ui
