// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QFont>

QT_BEGIN_NAMESPACE
class QAbstractAxis;
class QChart;
class QChartView;
class QValueAxis;
QT_END_NAMESPACE

namespace plateau::ui {

class Theme;

/// A view that is only looked at, with an empty chart of no legend.
QChartView *plainChartView(QWidget *parent);
/// Ground, text and grid in the theme's colours and that font.
void dressChart(const Theme &theme, QChart &chart, const QFont &font);

/// Round numbers at even steps about a range, and how many decimals they need.
struct AxisScale {
    double lowest = 0;
    double highest = 1;
    double step = 1;
    int decimals = 0;
    bool operator==(const AxisScale &) const = default;
};

/// At most so many steps of 1, 2 or 5 times a power of ten that hold the range; smallestRange: the range is
/// widened to it about its middle. Finite numbers, lowest not above highest.
AxisScale roundScale(double lowest, double highest, int mostSteps, double smallestRange);
void setScale(QValueAxis &axis, const AxisScale &scale);

} // namespace plateau::ui
