// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/timechartlayout.h"

class QPainter;

namespace plateau::ui {

/// All that a picture of the chart depends on.
struct TimeChartView {
    const Theme &theme;
    const TimeChartData &data;
    const TimeChartLayout &layout;
    /// How every row stands, as standingsOf says.
    const std::vector<std::optional<TimeStanding>> &standings;
    int chosen = -1;
    bool focused = false;
};

/// All that stays as it is while now goes on and no row stands otherwise. In the painter's font.
void paintTimeChart(QPainter &painter, const TimeChartView &view);
/// Beside the lane of the hands.
QString handsWord();

} // namespace plateau::ui
