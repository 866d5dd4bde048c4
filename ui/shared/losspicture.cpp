// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/losspicture.h"

#include "ui/shared/chartaxes.h"
#include "ui/shared/theme.h"

#include <QChart>
#include <QChartView>
#include <QEvent>
#include <QLegend>
#include <QLineSeries>
#include <QScatterSeries>
#include <QVBoxLayout>
#include <QValueAxis>

#include <algorithm>
#include <cmath>
#include <map>

namespace plateau::ui {

namespace {

constexpr std::size_t mostPoints = 400;
constexpr int curveSteps = 40;

QList<QPointF> curve(double atStart, double lossPerHour, double oldest_h)
{
    QList<QPointF> points;
    for (int step = 0; step <= curveSteps; ++step) {
        const double age_h = oldest_h * step / curveSteps;
        points << QPointF(age_h, atStart * std::pow(1 - lossPerHour, age_h));
    }
    return points;
}

/// Of many, the lowest and the highest of each two-hundredth of the ages.
QList<QPointF> thinned(const std::vector<charts::AgedRecovery> &recoveries, double oldest_h)
{
    QList<QPointF> points;
    if (recoveries.size() <= mostPoints) {
        for (const charts::AgedRecovery &recovery : recoveries)
            points << QPointF(recovery.age_h, recovery.left_percent);
        return points;
    }
    std::map<int, std::pair<QPointF, QPointF>> columns;
    for (const charts::AgedRecovery &recovery : recoveries) {
        const QPointF point(recovery.age_h, recovery.left_percent);
        const int column = static_cast<int>(recovery.age_h / std::max(oldest_h, 1e-9) * (mostPoints / 2));
        const auto [found, isFirst] = columns.try_emplace(column, point, point);
        if (!isFirst && point.y() < found->second.first.y())
            found->second.first = point;
        if (!isFirst && point.y() > found->second.second.y())
            found->second.second = point;
    }
    for (const auto &[column, pair] : columns)
        points << pair.first << pair.second;
    return points;
}

} // namespace

LossPicture::LossPicture(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_view(plainChartView(this))
    , m_points(new QScatterSeries)
    , m_fitted(new QLineSeries)
    , m_stated(new QLineSeries)
    , m_age(new QValueAxis)
    , m_left(new QValueAxis)
{
    m_view->setAccessibleName(tr("What was left of the standard, against its age"));
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_view);
    QChart &chart = *m_view->chart();
    chart.addAxis(m_age, Qt::AlignBottom);
    chart.addAxis(m_left, Qt::AlignLeft);
    for (QXYSeries *series : std::initializer_list<QXYSeries *>{m_stated, m_fitted, m_points}) {
        chart.addSeries(series);
        series->attachAxis(m_age);
        series->attachAxis(m_left);
    }
    m_age->setTitleText(tr("age at use in h"));
    m_left->setTitleText(tr("% of weighed mass"));
    m_points->setName(tr("found"));
    m_fitted->setName(tr("fitted"));
    m_stated->setName(tr("as stated"));
    m_points->setMarkerSize(7);
    chart.legend()->setAlignment(Qt::AlignTop);
    // Rings and lines as they are drawn, and no squares.
    chart.legend()->setMarkerShape(QLegend::MarkerShapeFromSeries);
    chart.legend()->show();
    dress();
    connect(&theme, &Theme::changed, this, &LossPicture::dress);
}

QSize LossPicture::minimumSizeHint() const
{
    const int line = fontMetrics().height();
    return {16 * line, 12 * line};
}

void LossPicture::setLoss(const charts::StandardLoss &loss,
                          const std::vector<charts::AgedRecovery> &recoveries)
{
    m_view->setAccessibleDescription(loss.sentence);
    double oldest_h = 1;
    double lowest = 100;
    double highest = 100;
    for (const charts::AgedRecovery &recovery : recoveries) {
        oldest_h = std::max(oldest_h, recovery.age_h);
        lowest = std::min(lowest, recovery.left_percent);
        highest = std::max(highest, recovery.left_percent);
    }
    const double atStart = loss.fit ? loss.fit->atStart : 100;
    m_fitted->replace(loss.fit ? curve(atStart, loss.fit->lossPerHour, oldest_h) : QList<QPointF>{});
    m_stated->replace(loss.statedPerHour ? curve(atStart, *loss.statedPerHour, oldest_h) : QList<QPointF>{});
    if (loss.statedPerHour)
        lowest = std::min(lowest, m_stated->points().last().y());
    m_points->replace(thinned(recoveries, oldest_h));
    setScale(*m_age, roundScale(0, oldest_h, 6, 0.1));
    setScale(*m_left, roundScale(lowest, highest, 5, 1));
}

void LossPicture::dress()
{
    dressChart(m_theme, *m_view->chart(), font());
    m_view->setBackgroundBrush(m_theme.base());
    m_view->chart()->legend()->setLabelBrush(m_theme.text());
    m_view->chart()->legend()->setFont(font());
    m_points->setPen(QPen(m_theme.text(), 1));
    m_points->setBrush(m_theme.base());
    m_fitted->setPen(QPen(m_theme.text(), 2));
    m_stated->setPen(QPen(m_theme.mutedText(), 1.5, Qt::DashLine));
}

void LossPicture::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        dress();
}

} // namespace plateau::ui
