// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/timechartlayout.h"
#include "ui/shared/timechartwords.h"

#include <QPixmap>
#include <QWidget>

namespace plateau::ui {

class Theme;
struct TimeChartView;

/// Tubes against time. Each row is a thread: what is added hangs on it as a solid drop, what is read stands
/// on it as an open cuvette, a wait is the bare thread, the time for something stands between brackets. Below
/// a plan, the lane of the hands: what they do, and the spans in which they are free, measured. Beside the
/// rows of a live chart, what is due, late, or was done outside its time. Arrow keys, Home, End and the
/// pointer choose a row, whose times are then written out; Enter or a double click activates it. In a scroll
/// area of its own it keeps its axis in sight and the chosen row too.
class TimeChart : public QWidget
{
    Q_OBJECT

public:
    TimeChart(const Theme &theme, const QString &accessibleName, QWidget *parent = nullptr);

    /// Keeps the chosen row as far as there still is one. Cheap where nothing but now differs.
    void setData(TimeChartData data);
    /// Made for every second: draws no more than what goes on with now, unless a row stands otherwise by it.
    void setNow(std::optional<int> now_s);
    const TimeChartData &data() const { return m_data; }
    /// -1 before one is chosen, and where there are none.
    int chosenRow() const { return m_chosen; }
    void chooseRow(int row);

    QSize sizeHint() const override;
    /// Of a live chart as high as its rows can be read.
    QSize minimumSizeHint() const override;
    const TimeChartLayout &currentLayout() const { return m_layout; }
    /// How often what stands still was drawn anew.
    int drawings() const { return m_drawings; }

Q_SIGNALS:
    void rowChosen(int row);
    void rowActivated(int row);

protected:
    bool event(QEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void moveEvent(QMoveEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;
    void changeEvent(QEvent *event) override;

private:
    void measure();
    void layOutAnew();
    double leastName() const;
    void redraw();
    void describe();
    void drawPicture();
    TimeChartView view() const;
    QRect areaOfNow() const;
    int rowAt(const QPointF &position) const;
    /// What a scroll area has moved out of sight above.
    int headTop() const;
    void reveal(int row);

    const Theme &m_theme;
    TimeChartData m_data;
    TextMeasures m_measures;
    TimeChartLayout m_layout;
    std::vector<std::optional<TimeStanding>> m_standings;
    int m_chosen = -1;
    /// What stands still; null when it has to be drawn.
    QPixmap m_picture;
    int m_drawings = 0;
};

} // namespace plateau::ui
