// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/absorbancechart.h"

#include "ui/shared/chartaxes.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QChart>
#include <QChartView>
#include <QEvent>
#include <QLabel>
#include <QLineSeries>
#include <QScatterSeries>
#include <QVBoxLayout>
#include <QValueAxis>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

constexpr double markSize = 9;
/// Less would show the last digit of a photometer as a mountain.
constexpr double smallestAbsorbanceRange = 0.01;
constexpr double smallestTimeRange_min = 1;

QScatterSeries *scatter(QScatterSeries::MarkerShape shape)
{
    auto *series = new QScatterSeries;
    series->setMarkerShape(shape);
    series->setMarkerSize(markSize);
    return series;
}

/// Of what is drawn: the points and the line's beginning and end.
struct Range {
    double lowest = 0;
    double highest = 0;
    double last_min = 0;
};

Range rangeOf(const AbsorbanceSeries &series)
{
    Range range{series.points.front().absorbance, series.points.front().absorbance, 0};
    const auto include = [&range](double absorbance) {
        range.lowest = std::min(range.lowest, absorbance);
        range.highest = std::max(range.highest, absorbance);
    };
    for (const AbsorbanceSeries::Point &point : series.points) {
        include(point.absorbance);
        range.last_min = std::max(range.last_min, point.time_min);
    }
    if (series.line) {
        include(series.line->atStart);
        include(series.line->atStart + series.line->slope_per_min * range.last_min);
    }
    return range;
}

} // namespace

AbsorbanceChart::AbsorbanceChart(const Theme &theme, const QString &accessibleName, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_view(plainChartView(this))
    , m_words(plainLabel({}, this))
    , m_nothing(plainLabel(tr("No reading of this series yet."), this))
    , m_line(new QLineSeries)
    , m_before(scatter(QScatterSeries::MarkerShapeCircle))
    , m_used(scatter(QScatterSeries::MarkerShapeCircle))
    , m_atStart(scatter(QScatterSeries::MarkerShapeRotatedRectangle))
    , m_time(new QValueAxis)
    , m_absorbance(new QValueAxis)
{
    m_view->setAccessibleName(accessibleName);
    m_view->setObjectName(u"absorbanceChart"_s);
    m_words->setWordWrap(true);
    m_words->setObjectName(u"absorbanceWords"_s);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_view, 1);
    layout->addWidget(m_words);
    layout->addWidget(m_nothing, 1, Qt::AlignCenter);
    build();
    dress();
    draw();
    connect(&theme, &Theme::changed, this, &AbsorbanceChart::dress);
}

void AbsorbanceChart::build()
{
    QChart &chart = *m_view->chart();
    m_time->setTitleText(tr("min"));
    chart.addAxis(m_time, Qt::AlignBottom);
    chart.addAxis(m_absorbance, Qt::AlignLeft);
    m_atStart->setMarkerSize(1.4 * markSize);
    for (QXYSeries *series : std::initializer_list<QXYSeries *>{m_line, m_before, m_used, m_atStart}) {
        chart.addSeries(series);
        series->attachAxis(m_time);
        series->attachAxis(m_absorbance);
    }
}

void AbsorbanceChart::setSeries(AbsorbanceSeries series)
{
    if (series == m_series)
        return;
    m_series = std::move(series);
    draw();
}

QSize AbsorbanceChart::minimumSizeHint() const
{
    const int line = fontMetrics().height();
    return {14 * line, 9 * line};
}

void AbsorbanceChart::draw()
{
    const bool any = !m_series.points.empty();
    m_view->setVisible(any);
    m_words->setVisible(any);
    m_nothing->setVisible(!any);
    m_words->setText(any ? seriesText(m_series) : QString());
    m_view->setAccessibleDescription(seriesDescription(m_series));
    if (!any)
        return;
    QList<QPointF> before;
    QList<QPointF> used;
    const auto first = static_cast<std::size_t>(m_series.line ? m_series.line->firstUsedPoint : 0);
    for (std::size_t i = 0; i < m_series.points.size(); ++i) {
        const QPointF point(m_series.points[i].time_min, m_series.points[i].absorbance);
        (m_series.line && i >= first ? used : before) << point;
    }
    const Range range = rangeOf(m_series);
    QList<QPointF> line;
    if (m_series.line)
        line = {{0, m_series.line->atStart},
                {range.last_min, m_series.line->atStart + m_series.line->slope_per_min * range.last_min}};
    m_before->replace(before);
    m_used->replace(used);
    m_line->replace(line);
    m_atStart->replace(line.isEmpty() ? line : QList<QPointF>{line.front()});
    const double earliest_min = std::min(0.0, m_series.points.front().time_min);
    setScale(*m_time, roundScale(earliest_min, range.last_min, 5, smallestTimeRange_min));
    setScale(*m_absorbance, roundScale(range.lowest, range.highest, 4, smallestAbsorbanceRange));
    m_absorbance->setTitleText(m_series.reading);
}

void AbsorbanceChart::dress()
{
    dressChart(m_theme, *m_view->chart(), font());
    m_view->setBackgroundBrush(m_theme.base());
    const QPen outline(m_theme.text(), 1.4);
    m_before->setPen(outline);
    m_before->setColor(m_theme.base());
    m_used->setPen(outline);
    m_used->setColor(m_theme.text());
    m_atStart->setPen(outline);
    m_atStart->setColor(m_theme.colour(State::Attention));
    m_line->setPen(QPen(m_theme.colour(State::Info), 2));
}

void AbsorbanceChart::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        dress();
}

} // namespace plateau::ui
