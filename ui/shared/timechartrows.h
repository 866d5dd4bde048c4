// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/timechartpainting.h"

namespace plateau::ui {

/// Name, bars and remark of a row; what a late row says and draws of that is left to paintTimeChartNow.
void paintTimeRow(QPainter &painter, const TimeChartView &view, int row, bool named);
/// Shape and words right of the plot.
void paintBeside(QPainter &painter, const TimeChartView &view, int row, const TimeRemark &remark);
/// Where the brackets of a window stand.
QRectF windowArea(const TimeChartLayout &layout, int row, const TimeBar &window);

} // namespace plateau::ui
