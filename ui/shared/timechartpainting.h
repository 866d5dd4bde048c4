// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/timechartlayout.h"

class QPainter;

namespace plateau::ui {

class Theme;

/// All that a picture of the chart depends on.
struct TimeChartView {
    const Theme &theme;
    const TimeChartData &data;
    TimeChartLayout layout;
    int chosen = -1;
    bool focused = false;
};

/// In the painter's font.
void paintTimeChart(QPainter &painter, const TimeChartView &view);
/// Beside the lane of the hands.
QString handsWord();

} // namespace plateau::ui
