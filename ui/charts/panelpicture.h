// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/controlchart.h"
#include "ui/shared/theme.h"

#include <QPointF>
#include <QString>

#include <optional>
#include <vector>

namespace plateau::ui {

/// A level line of a panel.
struct LevelLine {
    enum class Kind { Centre, Warning, Action, Limit, Threshold } kind = Kind::Centre;
    double value = 0;
    /// "+3 s 104.1"
    QString label;
    bool operator==(const LevelLine &) const = default;
};

/// One point to be drawn.
struct PanelPoint {
    /// 1 for the first of the series.
    double place = 0;
    double value = 0;
    /// Good: within; Attention: a warning; Bad: out of control.
    State state = State::Good;
    std::optional<double> uncertainty{};
};

/// A panel of a chart as it is drawn: no widget, no chart arithmetic.
struct PanelPicture {
    /// What stands at the left axis: "recovery in %".
    QString quantity;
    int decimals = 1;
    /// In the order of place. Cumulative sums have two lines, everything else one.
    std::vector<std::vector<PanelPoint>> lines;
    /// Limits that vary from point to point; empty, or two.
    std::vector<std::vector<QPointF>> bounds;
    std::vector<LevelLine> levels;
    /// Limits from few values: drawn otherwise, and said beside the quantity.
    bool isProvisional = false;
    /// Left out: drawn as a cross, joined to nothing.
    std::vector<PanelPoint> leftOut;
    /// Everything above lies between.
    double lowest = 0;
    double highest = 1;
    /// Points of the whole series.
    int places = 0;
};

/// The limits of a product in the unit of the series, as levels.
using ProductLimits = std::vector<LevelLine>;

PanelPicture pictureOf(const charts::Subject &subject, const charts::ControlChart &chart, std::size_t panel,
                       const ProductLimits &limits);

/// Of the points from one place to another, with one beyond at either side: all where there are no more than
/// two a pixel, else the lowest and the highest of each pixel, in their order. By their indices.
std::vector<std::size_t> thinnedPoints(const std::vector<PanelPoint> &points, double from, double to,
                                       int pixels);

} // namespace plateau::ui
