// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/controlchart.h"
#include "ui/charts/panelpicture.h"

#include <QWidget>

#include <memory>
#include <optional>
#include <vector>

class QScrollBar;

namespace plateau::ui {

class ChartKey;
class PanelView;
struct PanelPlaces;

/// A control chart: its panels one above the other over the same runs. Left and Right step from point to
/// point, with Control from one out of control to the next; Page up and down take ten, Home and End the
/// first and last; + and - bring fewer or more into sight, 0 all; Enter opens the run. A click chooses a
/// point, one on the chosen point opens its run; the wheel and dragging do as usual. What is chosen is in
/// the accessible description.
class ChartView : public QWidget
{
    Q_OBJECT

public:
    ChartView(const Theme &theme, const QString &accessibleName, QWidget *parent = nullptr);

    /// The newest points are brought into sight; what was chosen stays if its run is still there.
    void setChart(const charts::Subject &subject, charts::ControlChart chart,
                  const ProductLimits &limits = {});
    const charts::ControlChart &chart() const { return m_chart; }
    /// What stands there while there are no points.
    void setNothing(const QString &sentence);

    /// Index into the series.
    std::optional<std::size_t> chosen() const { return m_chosen; }
    void choose(std::size_t point);
    /// Places in sight, from 1.
    double windowFrom() const { return m_from; }
    double windowTo() const { return m_to; }
    /// Moves what is in sight by so many places.
    void pan(double places);
    /// So many times as many places in sight, about that one.
    void zoom(double factor, double about);
    void showAll();
    /// As it is on the screen, without the bar below it.
    void paintOn(QPainter &painter);

    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void pointChosen(int point);
    void pointOpened(int point);

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void changeEvent(QEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;
    void paintEvent(QPaintEvent *event) override;

private:
    void keepChosen(qint64 run, const QString &name);
    void setWindow(double from, double to);
    void hit(int place);
    void step(int points);
    void stepToNextFinding(bool forward);
    void bringIntoSight(std::size_t point);
    void align();
    void describe();
    void showWindow();

    const Theme &m_theme;
    PanelView *m_upper;
    PanelView *m_lower;
    ChartKey *m_key;
    QScrollBar *m_bar;
    charts::ControlChart m_chart;
    std::optional<std::size_t> m_chosen;
    double m_from = 0.5;
    double m_to = 1.5;
};

} // namespace plateau::ui
