// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/timechartlayout.h"

#include <QWidget>

namespace plateau::ui {

class Theme;

/// Tubes against time. Each row is a thread: what is added hangs on it as a solid drop, what is read stands
/// on it as an open cuvette, a wait is the bare thread. Below, the lane of the hands: what they do, and the
/// spans in which they are free, measured. Arrow keys, Home, End and the pointer choose a row, whose times
/// are then written out.
class TimeChart : public QWidget
{
    Q_OBJECT

public:
    TimeChart(const Theme &theme, const QString &accessibleName, QWidget *parent = nullptr);

    /// Keeps the chosen row as far as there still is one.
    void setData(TimeChartData data);
    const TimeChartData &data() const { return m_data; }
    /// -1 before one is chosen, and where there are none.
    int chosenRow() const { return m_chosen; }
    void chooseRow(int row);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    TimeChartLayout currentLayout() const;

Q_SIGNALS:
    void rowChosen(int row);

protected:
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void changeEvent(QEvent *event) override;

private:
    TextMeasures measures() const;
    void describe();

    const Theme &m_theme;
    TimeChartData m_data;
    int m_chosen = -1;
};

} // namespace plateau::ui
