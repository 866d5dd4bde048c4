// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/charts/chartkey.h"
#include "ui/charts/panelview.h"

namespace plateau::ui {

/// What is painted over a panel's axes, and where.
struct PanelScene {
    const PanelPicture &picture;
    const PanelPlaces &places;
    QRectF plot;
    double from = 0;
    double to = 1;
    double lowest = 0;
    double highest = 1;
    std::optional<int> chosen;

    double x(double place) const { return plot.left() + (place - from) / (to - from) * plot.width(); }
    double y(double value) const
    {
        return plot.bottom() - (value - lowest) / (highest - lowest) * plot.height();
    }
};

/// Levels with their labels, changes, days, uncertainty bars, points. The painter's font is the one to write
/// in.
void paintPanel(QPainter &painter, const Theme &theme, const PanelScene &scene);
/// One shape of a panel in the middle of that area, a line across it.
void paintKeyShape(QPainter &painter, const Theme &theme, const QRectF &area, KeyShape shape);

} // namespace plateau::ui
