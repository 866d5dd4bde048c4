// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/timechartdata.h"

#include <algorithm>

namespace plateau::ui {

namespace {

std::size_t index(int number)
{
    return static_cast<std::size_t>(number);
}

/// The multiple of step at or below.
int floored(int number, int step)
{
    const int rest = number % step;
    return number - (rest < 0 ? rest + step : rest);
}

} // namespace

int rowsOf(const TimeChartData &data)
{
    int rows = 0;
    for (const TimeRack &rack : data.racks)
        rows += static_cast<int>(rack.rows.size());
    return rows;
}

const TimeRack &rackOf(const TimeChartData &data, int row)
{
    for (const TimeRack &rack : data.racks) {
        if (row < static_cast<int>(rack.rows.size()))
            return rack;
        row -= static_cast<int>(rack.rows.size());
    }
    return data.racks.back();
}

const TimeRow &rowOf(const TimeChartData &data, int row)
{
    for (const TimeRack &rack : data.racks) {
        if (row < static_cast<int>(rack.rows.size()))
            return rack.rows[index(row)];
        row -= static_cast<int>(rack.rows.size());
    }
    return data.racks.back().rows.back();
}

TimeStretch extentOf(const TimeChartData &data)
{
    constexpr int minute_s = 60;
    TimeStretch extent;
    bool any = false;
    const auto include = [&](int time_s) {
        extent.first_s = any ? std::min(extent.first_s, time_s) : time_s;
        extent.last_s = any ? std::max(extent.last_s, time_s) : time_s;
        any = true;
    };
    for (const TimeRack &rack : data.racks) {
        for (const TimeRow &row : rack.rows) {
            for (const TimeBar &bar : row.bars) {
                include(bar.start_s);
                include(bar.openEnded ? bar.start_s + minute_s : bar.end_s);
            }
        }
    }
    if (data.now_s && any) {
        const int now_s = *data.now_s;
        if (!data.live) {
            include(now_s);
        } else if (now_s < extent.first_s) {
            include(floored(now_s, minute_s));
        } else if (now_s > extent.last_s) {
            include(floored(now_s, minute_s) + minute_s);
        }
    }
    extent.last_s = std::max(extent.last_s, extent.first_s + minute_s);
    return extent;
}

std::optional<TimeStretch> stretchAroundNow(const TimeChartData &data, int length_s)
{
    const TimeStretch all = extentOf(data);
    if (!data.now_s || all.last_s - all.first_s <= length_s)
        return std::nullopt;
    const int quarter_s = std::max(15, length_s / 4);
    const int first_s = std::max(floored(*data.now_s, quarter_s) - quarter_s, all.first_s);
    return TimeStretch{first_s, first_s + 4 * quarter_s};
}

std::optional<TimeStanding> standingOf(const TimeRow &row, int now_s)
{
    using Phase = TimeStanding::Phase;
    const auto window = std::find_if(row.bars.begin(), row.bars.end(), [](const TimeBar &bar) {
        return bar.kind == TimeBar::Kind::Window && bar.awaited;
    });
    if (row.spoilt || window == row.bars.end())
        return std::nullopt;
    const bool isLate = !window->openEnded && now_s > window->end_s;
    const Phase phase = isLate ? Phase::Late : now_s < window->start_s ? Phase::Waiting : Phase::Due;
    return TimeStanding{phase, static_cast<int>(window - row.bars.begin())};
}

std::vector<std::optional<TimeStanding>> standingsOf(const TimeChartData &data)
{
    std::vector<std::optional<TimeStanding>> standings;
    standings.reserve(index(rowsOf(data)));
    for (const TimeRack &rack : data.racks) {
        for (const TimeRow &row : rack.rows)
            standings.push_back(data.now_s ? standingOf(row, *data.now_s) : std::nullopt);
    }
    return standings;
}

} // namespace plateau::ui
