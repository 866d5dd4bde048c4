// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/timechartpainting.h"

class QFontMetricsF;

namespace plateau::ui {

/// What goes on with now, over what stays: how late the late rows are, of those that are in that part, and
/// the line with its time on the axis. headTop: where the head of the chart stands, when its own place is out
/// of sight.
void paintTimeChartLate(QPainter &painter, const TimeChartView &view, const QRectF &part);
void paintTimeChartNow(QPainter &painter, const TimeChartView &view, double headTop);
/// All that the line and its time touch; null where now is not in sight.
QRectF nowArea(const TimeChartView &view, const QFontMetricsF &metrics);

} // namespace plateau::ui
