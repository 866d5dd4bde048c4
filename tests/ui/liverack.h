// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/timechartdata.h"

namespace plateau::ui {

inline TimeBar window(int start_s, int end_s)
{
    return {TimeBar::Kind::Window, start_s, end_s, QStringLiteral("A1"), false, true};
}

inline TimeBar openWindow(int start_s)
{
    return {TimeBar::Kind::Window, start_s, 0, QStringLiteral("A2"), true, true};
}

/// Sample at start_s, A1 to be read 180 to 240 s after it.
inline TimeRow waitingRow(const QString &name, int start_s)
{
    return {name,
            {{TimeBar::Kind::Add, start_s, start_s + 20, QStringLiteral("sample")},
             {TimeBar::Kind::Wait, start_s + 20, start_s + 180, {}},
             window(start_s + 180, start_s + 240)}};
}

inline TimeChartData liveRack(int tubes, int now_s)
{
    TimeChartData data;
    data.racks.push_back({});
    data.live = true;
    data.now_s = now_s;
    for (int tube = 0; tube < tubes; ++tube)
        data.racks[0].rows.push_back(waitingRow(QString::number(tube + 1), 20 * tube));
    return data;
}

} // namespace plateau::ui
