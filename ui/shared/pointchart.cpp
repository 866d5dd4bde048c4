// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/pointchart.h"

#include "ui/shared/chartaxes.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QAreaSeries>
#include <QCategoryAxis>
#include <QChart>
#include <QChartView>
#include <QEvent>
#include <QFontMetricsF>
#include <QGraphicsRectItem>
#include <QGraphicsSimpleTextItem>
#include <QLabel>
#include <QLineSeries>
#include <QScatterSeries>
#include <QVBoxLayout>
#include <QValueAxis>

#include <algorithm>
#include <cmath>
#include <tuple>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// More than these are drawn as a path, with marks only where they are outside.
constexpr int mostMarks = 120;
constexpr double pointSize = 7;
constexpr double newestSize = 2 * pointSize;
/// Qt draws its own parts of a chart below a hundred.
constexpr double aboveSeries = 100;

QScatterSeries *scatter(QScatterSeries::MarkerShape shape, double size)
{
    auto *series = new QScatterSeries;
    series->setMarkerShape(shape);
    series->setMarkerSize(size);
    return series;
}

} // namespace

std::pair<double, double> heldApart(double first, double second, double labelHeight, double plotTop,
                                double plotBottom)
{
    const double distance = std::max(second - first, labelHeight);
    const double middle = (first + second) / 2;
    const double outermost = (distance + labelHeight) / 2;
    const double lowestMiddle = plotBottom - outermost;
    const double highestMiddle = plotTop + outermost;
    const double held = highestMiddle <= lowestMiddle ? std::clamp(middle, highestMiddle, lowestMiddle)
                                                      : (plotTop + plotBottom) / 2;
    return {held - distance / 2, held + distance / 2};
}

PointChart::PointChart(const Theme &theme, const QString &accessibleName, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_view(plainChartView(this))
    , m_words(plainLabel({}, this))
    , m_nothing(plainLabel(tr("There is no history yet."), this))
    , m_bandTop(new QLineSeries)
    , m_bandBottom(new QLineSeries)
    , m_band(new QAreaSeries(m_bandTop, m_bandBottom))
    , m_path(new QLineSeries)
    , m_within(scatter(QScatterSeries::MarkerShapeCircle, pointSize))
    , m_outside(scatter(QScatterSeries::MarkerShapeRectangle, pointSize))
    , m_newest(scatter(QScatterSeries::MarkerShapeRotatedRectangle, newestSize))
    , m_quantity(new QGraphicsSimpleTextItem(m_view->chart()))
    , m_lower(new QGraphicsSimpleTextItem(m_view->chart()))
    , m_upper(new QGraphicsSimpleTextItem(m_view->chart()))
    , m_valueGround(new QGraphicsRectItem(m_view->chart()))
    , m_value(new QGraphicsSimpleTextItem(m_valueGround))
    , m_order(new QCategoryAxis)
    , m_values(new QValueAxis)
{
    m_view->setAccessibleName(accessibleName);
    m_view->setObjectName(u"pointChart"_s);
    m_words->setWordWrap(true);
    m_words->setObjectName(u"pointWords"_s);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_view, 1);
    layout->addWidget(m_words);
    layout->addWidget(m_nothing, 1, Qt::AlignCenter);
    // The series that bound an area aren't the chart's.
    m_bandTop->setParent(m_band);
    m_bandBottom->setParent(m_band);
    build();
    dress();
    draw();
    connect(&theme, &Theme::changed, this, &PointChart::dress);
}

void PointChart::build()
{
    QChart &chart = *m_view->chart();
    chart.addAxis(m_order, Qt::AlignBottom);
    chart.addAxis(m_values, Qt::AlignLeft);
    m_order->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    m_order->setGridLineVisible(false);
    for (QAbstractSeries *series : std::initializer_list<QAbstractSeries *>{
             m_band, m_path, m_within, m_outside, m_newest}) {
        chart.addSeries(series);
        series->attachAxis(m_order);
        series->attachAxis(m_values);
    }
    m_valueGround->setPen(Qt::NoPen);
    m_valueGround->setZValue(aboveSeries);
    connect(&chart, &QChart::plotAreaChanged, this, &PointChart::layOutPlot);
}

void PointChart::setHistory(PointHistory history)
{
    if (history == m_history)
        return;
    m_history = std::move(history);
    draw();
}

QSize PointChart::minimumSizeHint() const
{
    const int line = fontMetrics().height();
    return {14 * line, 10 * line};
}

void PointChart::draw()
{
    const bool any = !m_history.points.empty();
    m_view->setVisible(any);
    m_words->setVisible(any);
    m_nothing->setVisible(!any);
    m_words->setText(any ? historyText(m_history) : QString());
    m_view->setAccessibleDescription(historyDescription(m_history));
    if (!any)
        return;
    drawScale();
    m_quantity->setText(m_history.quantity);
    writeLimits();
    drawLabels();
    drawPoints();
    layOutPlot();
}

/// What depends on where the plot is.
void PointChart::layOutPlot()
{
    if (m_history.points.empty())
        return;
    drawOrder();
    drawBand();
    placeLimits();
    placeValue();
}

double PointChart::besideValue() const
{
    return m_theme.gap() / 2.0;
}

double PointChart::valueRoom() const
{
    return newestSize / 2 + m_value->boundingRect().width() + 2 * besideValue();
}

double roomBehind(double before, double plotWidth, double pixels)
{
    const double rest = std::max(plotWidth - pixels, plotWidth / 2); // the points have half of the plot at least
    return rest > 0 ? before * (plotWidth - rest) / rest : 0;
}

/// Behind the newest there is room for its value, where no other point comes.
void PointChart::drawOrder()
{
    const double last = static_cast<double>(m_history.points.size());
    const double aside = std::max(0.5, 0.08 * (last - 1));
    const double behind = roomBehind(last - 1 + aside, m_view->chart()->plotArea().width(), valueRoom());
    m_order->setRange(1 - aside, last + std::max(aside, behind));
}

/// No more steps than there is room for their numbers: the axis writes dots in place of those that do not
/// fit.
void PointChart::drawScale()
{
    double lowest = m_history.points.front().value;
    double highest = lowest;
    for (const PointHistory::Point &point : m_history.points) {
        lowest = std::min(lowest, point.value);
        highest = std::max(highest, point.value);
    }
    for (const std::optional<double> &limit : {m_history.lower, m_history.upper}) {
        if (limit) {
            lowest = std::min(lowest, *limit);
            highest = std::max(highest, *limit);
        }
    }
    const double line = QFontMetricsF(font()).height();
    // Above the plot stands the quantity, below it the labels of the points.
    const int room = static_cast<int>((m_view->height() - 2.5 * line) / (2 * line));
    m_values->setLabelsVisible(room >= 2);
    setScale(*m_values,
             roundScale(lowest, highest, std::clamp(room, 2, 5), std::pow(10, -m_history.decimals)));
}

/// A side without a limit is open to the edge.
void PointChart::drawBand()
{
    const double left = m_order->min();
    const double right = m_order->max();
    const double lower = m_history.lower.value_or(m_values->min());
    const double upper = m_history.upper.value_or(m_values->max());
    m_band->setVisible(m_history.lower || m_history.upper);
    m_bandBottom->replace(QList<QPointF>{{left, lower}, {right, lower}});
    m_bandTop->replace(QList<QPointF>{{left, upper}, {right, upper}});
}

void PointChart::writeLimits()
{
    const auto write = [&](QGraphicsSimpleTextItem *item, const std::optional<double> &limit) {
        item->setText(limit ? shownNumber(QString::number(*limit, 'f', m_history.decimals)) : QString());
    };
    write(m_lower, m_history.lower);
    write(m_upper, m_history.upper);
}

/// At the right of the plot, where no point comes.
void PointChart::placeLimits()
{
    const QRectF plot = m_view->chart()->plotArea();
    const double range = m_values->max() - m_values->min();
    if (m_history.points.empty() || !(range > 0))
        return;
    const auto yOf = [&](double value) {
        return plot.bottom() - (value - m_values->min()) / range * plot.height();
    };
    const double height = QFontMetricsF(font()).height();
    double upper = yOf(m_history.upper.value_or(m_values->max()));
    double lower = yOf(m_history.lower.value_or(m_values->min()));
    if (m_history.upper && m_history.lower)
        std::tie(upper, lower) = heldApart(upper, lower, height, plot.top(), plot.bottom());
    const auto place = [&](QGraphicsSimpleTextItem *item, double y) {
        item->setPos(plot.right() + besideLimits(), y - item->boundingRect().height() / 2);
    };
    place(m_upper, upper);
    place(m_lower, lower);
}

/// Right of the newest, as high as it is. A limit may pass there, and stays behind what is written.
void PointChart::placeValue()
{
    const QRectF plot = m_view->chart()->plotArea();
    const double range = m_values->max() - m_values->min();
    const double width = m_order->max() - m_order->min();
    if (!(range > 0) || !(width > 0))
        return;
    const PointHistory::Point &newest = m_history.points.back();
    const double x = plot.left() + (static_cast<double>(m_history.points.size()) - m_order->min()) / width * plot.width();
    const double y = plot.bottom() - (newest.value - m_values->min()) / range * plot.height();
    const QRectF text = m_value->boundingRect();
    m_valueGround->setRect(0, 0, text.width() + besideValue(), text.height());
    const double left = std::min(x + newestSize / 2 + besideValue(), plot.right() - text.width());
    const double top = plot.height() > text.height() ? std::clamp(y - text.height() / 2, plot.top(), plot.bottom() - text.height())
                                                     : plot.center().y() - text.height() / 2;
    m_valueGround->setPos(left, top);
}

double PointChart::besideLimits() const
{
    return m_theme.gap() / 2.0;
}

/// Of the first and the newest point, and of some between where there is room for them.
void PointChart::drawLabels()
{
    const QStringList former = m_order->categoriesLabels();
    for (const QString &label : former)
        m_order->remove(label);
    const QFontMetricsF metrics(font());
    const auto labelOf = [&](std::size_t point) { return m_history.points[point].label; };
    const std::size_t last = m_history.points.size() - 1;
    const double widest =
        std::max(metrics.horizontalAdvance(labelOf(0)), metrics.horizontalAdvance(labelOf(last)));
    // Half of the newest point's label stands beyond it, and the limits do.
    const double limits = std::max(m_lower->boundingRect().width(), m_upper->boundingRect().width());
    const double beyond = std::max(metrics.horizontalAdvance(labelOf(last)) / 2,
                                   limits > 0 ? limits + 2 * besideLimits() : 0);
    const int above = static_cast<int>(std::ceil(m_quantity->boundingRect().height()));
    m_view->chart()->setMargins({0, above, static_cast<int>(std::ceil(beyond)), 0});
    const int room = static_cast<int>(width() / std::max(1.0, 1.6 * widest));
    const std::size_t steps = static_cast<std::size_t>(std::clamp(room - 1, 1, 4));
    QStringList labels;
    for (std::size_t step = 0; step <= steps; ++step) {
        const std::size_t point = last * step / steps;
        // The axis takes every label once.
        if (!labels.contains(labelOf(point)))
            m_order->append(labelOf(point), static_cast<double>(point + 1));
        labels << labelOf(point);
    }
}

void PointChart::drawPoints()
{
    QList<QPointF> path;
    QList<QPointF> within;
    QList<QPointF> outside;
    const bool isMarked = m_history.points.size() <= mostMarks;
    const int pixels = std::max(100, static_cast<int>(m_view->chart()->plotArea().width()));
    for (const int point : thinned(m_history, pixels)) {
        const double value = m_history.points[static_cast<std::size_t>(point)].value;
        path << QPointF(point + 1, value);
        if (sideOf(m_history, value) != BandSide::Within)
            outside << path.back();
        else if (isMarked)
            within << path.back();
    }
    const QPointF newest = path.back();
    for (QList<QPointF> *marks : {&within, &outside})
        marks->removeAll(newest);
    m_path->replace(path);
    m_within->replace(within);
    m_outside->replace(outside);
    m_newest->replace({newest});
    m_value->setText(shownNumber(QString::number(newest.y(), 'f', m_history.decimals)));
}

void PointChart::dress()
{
    dressChart(m_theme, *m_view->chart(), font());
    m_view->setBackgroundBrush(m_theme.base());
    const QPen outline(m_theme.text(), 1);
    m_band->setBrush(m_theme.tint(State::Good));
    m_band->setPen(QPen(m_theme.mutedText(), 1, Qt::DashLine));
    m_path->setPen(QPen(m_theme.mutedText(), 1));
    m_within->setPen(outline);
    m_within->setColor(m_theme.base());
    m_outside->setPen(outline);
    m_outside->setColor(m_theme.colour(State::Attention));
    m_newest->setPen(outline);
    m_newest->setColor(m_theme.colour(State::Info));
    m_value->setBrush(m_theme.text());
    m_value->setFont(m_theme.bold());
    m_valueGround->setBrush(m_theme.base());
    for (QGraphicsSimpleTextItem *written : {m_quantity, m_lower, m_upper}) {
        written->setBrush(m_theme.text());
        written->setFont(font());
    }
}

void PointChart::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() != QEvent::FontChange)
        return;
    dress();
    if (m_history.points.empty())
        return;
    drawLabels(); // the numbers beside the plot have another width
    layOutPlot();
}

void PointChart::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    if (m_history.points.empty())
        return;
    // Another size has room for other labels, and shows another choice of many points.
    drawScale();
    drawLabels();
    if (m_history.points.size() > mostMarks)
        drawPoints();
    layOutPlot();
}

} // namespace plateau::ui
