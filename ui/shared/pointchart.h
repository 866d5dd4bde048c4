// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QWidget>

#include <optional>
#include <utility>
#include <vector>

QT_BEGIN_NAMESPACE
class QAreaSeries;
class QCategoryAxis;
class QChartView;
class QGraphicsRectItem;
class QGraphicsSimpleTextItem;
class QLabel;
class QLineSeries;
class QScatterSeries;
class QValueAxis;
QT_END_NAMESPACE

namespace plateau::ui {

class Theme;

/// Values that came one after the other, the newest last, and the band they should lie in.
struct PointHistory {
    struct Point {
        /// Of the day, or whatever tells it from the others.
        QString label;
        double value = 0;
        bool operator==(const Point &) const = default;
    };
    /// None that is not a finite number.
    std::vector<Point> points;
    /// A limit belongs to the band; each may be absent.
    std::optional<double> lower{};
    std::optional<double> upper{};
    /// "recovery in %", and with how many decimals values and limits are written.
    QString quantity{};
    int decimals = 1;
    bool operator==(const PointHistory &) const = default;
};

/// Below, within or above the band, both limits included.
enum class BandSide { Below, Within, Above };
BandSide sideOf(const PointHistory &history, double value);

/// The newest with its limits, and how many of all lie outside: what stands below the chart.
QString historyText(const PointHistory &history);
/// That, and the newest points one by one.
QString historyDescription(const PointHistory &history);

/// Of more points than the width can show, the lowest and the highest of each pixel; the newest always. By
/// their place in the history, in its order.
std::vector<int> thinned(const PointHistory &history, int pixels);

/// Where two labels so high have their middles, the one above first: each at its own place (top to bottom, the
/// first above the second), but not over each other, and within the plot as far as it holds both.
std::pair<double, double> heldApart(double first, double second, double labelHeight, double plotTop,
                                double plotBottom);

/// How much of the axis stands behind the newest point, in points, so that these pixels of the plot are free there; before: what
/// stands before it. No more than half of the plot.
double roomBehind(double before, double plotWidth, double pixels);

/// Points in their order against the band: discs within, squares outside, the newest a large diamond with its
/// value right of it; the quantity stands above the plot, where the longest has room; the limits are
/// written at the right of the band, outside the plot, some of the points' labels below. All numbers that are
/// written stand in the accessible description too.
class PointChart : public QWidget
{
    Q_OBJECT

public:
    PointChart(const Theme &theme, const QString &accessibleName, QWidget *parent = nullptr);

    void setHistory(PointHistory history);
    const PointHistory &history() const { return m_history; }
    QSize minimumSizeHint() const override;

protected:
    void changeEvent(QEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void build();
    void draw();
    void drawPoints();
    void drawScale();
    void drawBand();
    void drawOrder();
    void layOutPlot();
    void placeValue();
    /// Of the newest value, from its diamond; what it takes right of the point.
    double besideValue() const;
    double valueRoom() const;
    void drawLabels();
    void writeLimits();
    void placeLimits();
    /// Of a limit's label, from the plot and from the edge.
    double besideLimits() const;
    void dress();

    const Theme &m_theme;
    QChartView *m_view;
    QLabel *m_words;
    QLabel *m_nothing;
    QLineSeries *m_bandTop;
    QLineSeries *m_bandBottom;
    QAreaSeries *m_band;
    QLineSeries *m_path;
    QScatterSeries *m_within;
    QScatterSeries *m_outside;
    QScatterSeries *m_newest;
    /// The chart's, as items of it.
    QGraphicsSimpleTextItem *m_quantity;
    QGraphicsSimpleTextItem *m_lower;
    QGraphicsSimpleTextItem *m_upper;
    /// Of the newest: what passes there ends at its ground.
    QGraphicsRectItem *m_valueGround;
    QGraphicsSimpleTextItem *m_value;
    QCategoryAxis *m_order;
    QValueAxis *m_values;
    PointHistory m_history;
};

} // namespace plateau::ui
