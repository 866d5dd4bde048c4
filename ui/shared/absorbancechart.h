// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

QT_BEGIN_NAMESPACE
class QChart;
class QChartView;
class QLabel;
class QLineSeries;
class QScatterSeries;
class QValueAxis;
QT_END_NAMESPACE

namespace plateau::ui {

class Theme;

/// Values that a reading gave one after the other, and the line through the last of them.
struct AbsorbanceSeries {
    struct Point {
        /// Since the moment the line is read at.
        double time_min = 0;
        double absorbance = 0;
        bool operator==(const Point &) const = default;
    };
    struct Line {
        /// Its value at 0 min.
        double atStart = 0;
        double slope_per_min = 0;
        /// Absent with two points.
        std::optional<double> slopeError_per_min{};
        /// It is drawn through this point and all after it.
        int firstUsedPoint = 0;
        bool operator==(const Line &) const = default;
    };
    /// In the order of time; none that is not a finite number.
    std::vector<Point> points;
    std::optional<Line> line{};
    /// Whether the reaction has; absent where nobody can say yet.
    std::optional<bool> ended{};
    /// What is read, and what 0 min is: "A2", "starter".
    QString reading{};
    QString start{};
    bool operator==(const AbsorbanceSeries &) const = default;
};

/// What the chart says below itself: whether it has ended, the line's slope, and where it began.
QString seriesText(const AbsorbanceSeries &series);
/// All of it in words, every point with its numbers.
QString seriesDescription(const AbsorbanceSeries &series);

/// Absorbance against time: discs for the points the line runs through, rings for those before, the line from
/// 0 min on, a diamond where it begins. All numbers are in the accessible description.
class AbsorbanceChart : public QWidget
{
    Q_OBJECT

public:
    AbsorbanceChart(const Theme &theme, const QString &accessibleName, QWidget *parent = nullptr);

    void setSeries(AbsorbanceSeries series);
    const AbsorbanceSeries &series() const { return m_series; }
    QSize minimumSizeHint() const override;

protected:
    void changeEvent(QEvent *event) override;

private:
    void build();
    void draw();
    void dress();

    const Theme &m_theme;
    QChartView *m_view;
    QLabel *m_words;
    QLabel *m_nothing;
    QLineSeries *m_line;
    QScatterSeries *m_before;
    QScatterSeries *m_used;
    QScatterSeries *m_atStart;
    QValueAxis *m_time;
    QValueAxis *m_absorbance;
    AbsorbanceSeries m_series;
};

} // namespace plateau::ui
