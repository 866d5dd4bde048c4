// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QWidget>

#include <vector>

QT_BEGIN_NAMESPACE
class QChart;
class QChartView;
class QLabel;
QT_END_NAMESPACE

namespace plateau::ui {

class Theme;

/// The one chart of the window: labelled horizontal bars, first one on top. Everything of the chart library
/// stays in here. The labels carry the numbers, and so does the accessible description.
class BarChart : public QWidget
{
    Q_OBJECT

public:
    struct Bar {
        QString label;
        double value = 0;
        bool operator==(const Bar &) const = default;
    };

    BarChart(const Theme &theme, const QString &accessibleName, QWidget *parent = nullptr);
    /// axis: what the length of a bar means, with its unit. Values are finite and not negative.
    void setBars(std::vector<Bar> bars, const QString &axis);
    const std::vector<Bar> &bars() const { return m_bars; }

private:
    void draw();

    const Theme &m_theme;
    QChartView *m_view;
    QLabel *m_nothing;
    std::vector<Bar> m_bars;
    QString m_axis;
};

} // namespace plateau::ui
