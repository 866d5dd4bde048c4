// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/series.h"
#include "ui/charts/panelpicture.h"

#include <QChartView>

#include <memory>
#include <optional>

QT_BEGIN_NAMESPACE
class QLineSeries;
class QValueAxis;
QT_END_NAMESPACE

namespace plateau::ui {

/// What stands below and across a panel: its places with their days, and where something changed.
struct PanelPlaces {
    charts::SharedSeries series;
    std::vector<charts::Change> changes;
};

/// How wide the numbers at the left axis of a panel are, and the labels of its levels at the right.
struct PanelSides {
    double numbers = 0;
    double labels = 0;
};

/// One panel: axes, grid and lines are Qt Charts', points, levels and changes are painted over them, since
/// a chart item for each of ten thousand points would take seconds. Within control discs, warnings
/// triangles, out of control squares, left out crosses; the chosen one is framed. Only what is in sight is
/// drawn, of crowded points the lowest and highest of each pixel. What is plotted stands above, the days below.
class PanelView : public QChartView
{
    Q_OBJECT

public:
    explicit PanelView(const Theme &theme, QWidget *parent = nullptr);

    void setPicture(std::shared_ptr<const PanelPicture> picture, std::shared_ptr<const PanelPlaces> places);
    /// What it needs at either side. Panels one above the other that are all given the widest of each have one place at
    /// one distance from the left.
    PanelSides sides() const;
    void setSides(const PanelSides &widest);
    /// Where its points are drawn.
    QRectF plot() const;
    /// Shows these places; half a place of room at either side is added.
    void setWindow(double from, double to);
    /// A place, from 1; nothing for none.
    void setChosen(std::optional<int> place);
    /// Written in it while it has no points.
    void setNothing(const QString &sentence);
    /// All of it at that size, as on the screen.
    void paintOn(QPainter &painter, const QRectF &area);

Q_SIGNALS:
    void placeHit(int place);
    /// By so many places.
    void dragged(double places);
    /// So many steps of the wheel, about that place.
    void wheelTurned(double steps, double place);

protected:
    void drawForeground(QPainter *painter, const QRectF &area) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void changeEvent(QEvent *event) override;

private:
    void build();
    void dress();
    void draw();
    void setMargins();
    double placeAt(double pixel) const;
    void refreshPath(std::size_t line);

    const Theme &m_theme;
    QValueAxis *m_order;
    QValueAxis *m_values;
    std::vector<QLineSeries *> m_paths;
    std::vector<QLineSeries *> m_bounds;
    std::shared_ptr<const PanelPicture> m_picture;
    std::shared_ptr<const PanelPlaces> m_places;
    PanelSides m_sides;
    QString m_nothing;
    double m_from = 0.5;
    double m_to = 1.5;
    std::optional<int> m_chosen;
    std::optional<QPointF> m_pressed;
    double m_dragged = 0;
    bool m_isDragging = false;
};

} // namespace plateau::ui
