// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/calendar.h"

#include "sampledata/maker/chance.h"

#include <algorithm>

namespace plateau::sampledata {

namespace {

/// Of two years, 500 days are worked.
constexpr int workedIn2Years = 500;
constexpr double mostADay = 12;
/// Worked reading by reading, one after the other.
constexpr int mostAtBench = 3;

bool isWorked(const QDate &day)
{
    const bool closed = (day.month() == 12 && day.day() >= 24) || (day.month() == 1 && day.day() == 1);
    return day.dayOfWeek() <= Qt::Friday && !closed;
}

} // namespace

std::vector<WorkingDay> workingDays(const WantedHistory &wanted)
{
    Chance chance(wanted.seed, 1);
    const double usual = std::clamp(double(wanted.runs) / workedIn2Years, 1.0, mostADay);
    std::vector<WorkingDay> days;
    int left = wanted.runs;
    for (QDate day = wanted.until; left > 0; day = day.addDays(-1)) {
        if (!isWorked(day))
            continue;
        int runs = int(usual * chance.part(0.55, 1.45) + chance.part(0, 1));
        if (wanted.runs - left < wanted.workedAtBench)
            runs = std::min(runs, mostAtBench);
        days.push_back({day, std::min(runs, left)});
        left -= days.back().runs;
    }
    std::ranges::reverse(days);
    return days;
}

} // namespace plateau::sampledata
