// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/charts/panelview.h"

#include "ui/charts/panelpainting.h"
#include "ui/shared/chartaxes.h"

#include <QApplication>
#include <QChart>
#include <QGraphicsLayout>
#include <QLegend>
#include <QLineSeries>
#include <QMouseEvent>
#include <QValueAxis>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

constexpr std::size_t mostTipLines = 2;

} // namespace

PanelView::PanelView(const Theme &theme, QWidget *parent)
    : QChartView(parent)
    , m_theme(theme)
    , m_order(new QValueAxis)
    , m_values(new QValueAxis)
    , m_picture(std::make_shared<PanelPicture>())
    , m_places(std::make_shared<PanelPlaces>())
{
    setInteractive(false);
    setFocusPolicy(Qt::NoFocus); // the chart's own view takes the keys for all its panels
    setFrameShape(NoFrame);
    setMinimumSize(1, 1);
    setRenderHint(QPainter::Antialiasing);
    // What is painted over the chart changes as a whole.
    setViewportUpdateMode(FullViewportUpdate);
    build();
    dress();
    connect(&theme, &Theme::changed, this, [this] {
        dress();
        draw();
    });
}

void PanelView::build()
{
    chart()->legend()->hide();
    chart()->setBackgroundRoundness(0);
    chart()->layout()->setContentsMargins(0, 0, 0, 0);
    chart()->addAxis(m_order, Qt::AlignBottom);
    chart()->addAxis(m_values, Qt::AlignLeft);
    m_order->setVisible(false);
    const auto add = [this](std::vector<QLineSeries *> &list) {
        auto *series = new QLineSeries;
        chart()->addSeries(series);
        series->attachAxis(m_order);
        series->attachAxis(m_values);
        list.push_back(series);
    };
    for (std::size_t line = 0; line < mostTipLines; ++line) {
        add(m_bounds);
        add(m_paths);
    }
}

void PanelView::dress()
{
    dressChart(m_theme, *chart(), font());
    setBackgroundBrush(m_theme.base());
    for (QLineSeries *path : m_paths)
        path->setPen(QPen(m_theme.mutedText(), 1));
    for (QLineSeries *bound : m_bounds)
        bound->setPen(QPen(m_theme.text(), 1, Qt::DashLine));
}

void PanelView::setPicture(std::shared_ptr<const PanelPicture> picture,
                           std::shared_ptr<const PanelPlaces> places)
{
    m_picture = std::move(picture);
    m_places = std::move(places);
    const double smallest = std::pow(10, -m_picture->decimals);
    setScale(*m_values, roundScale(m_picture->lowest, m_picture->highest, 5, smallest));
    setSides(sides());
    draw();
}

void PanelView::setWindow(double from, double to)
{
    m_from = from;
    m_to = to;
    m_order->setRange(from, to);
    draw();
}

void PanelView::setChosen(std::optional<int> place)
{
    m_chosen = place;
    viewport()->update();
}

void PanelView::setNothing(const QString &sentence)
{
    m_nothing = sentence;
    viewport()->update();
}

PanelSides PanelView::sides() const
{
    const QFontMetricsF metrics(font());
    // As wide as the chart library makes them.
    chart()->layout()->activate();
    const double numbers = plot().left() - chart()->margins().left();
    double labels = metrics.horizontalAdvance(u"00"_s);
    for (const LevelLine &level : m_picture->levels)
        labels = std::max(labels, metrics.horizontalAdvance(level.label));
    return {numbers, labels};
}

void PanelView::setSides(const PanelSides &widest)
{
    m_sides = widest;
    setMargins();
}

QRectF PanelView::plot() const
{
    return chart()->plotArea();
}

/// Room for the labels of the levels at the right, what is plotted and changed above, the days below.
void PanelView::setMargins()
{
    const double line = QFontMetricsF(font()).height();
    const int left = static_cast<int>(std::lround(m_sides.numbers - sides().numbers));
    const int right = static_cast<int>(m_sides.labels) + 2 * m_theme.gap();
    const int above = static_cast<int>(line * (m_places->changes.empty() ? 1.4 : 2.4));
    chart()->setMargins({left, above, right, static_cast<int>(line * 1.4)});
}

void PanelView::refreshPath(std::size_t line)
{
    QList<QPointF> path;
    if (line < m_picture->lines.size()) {
        const auto &points = m_picture->lines[line];
        const int pixels = std::max(50, static_cast<int>(chart()->plotArea().width()));
        for (const std::size_t i : thinnedPoints(points, m_from, m_to, pixels))
            path << QPointF(points[i].place, points[i].value);
    }
    m_paths[line]->replace(path);
    QList<QPointF> bound;
    if (line < m_picture->bounds.size()) {
        const auto &all = m_picture->bounds[line];
        // A bound is level but for its beginning: a point for every pixel is plenty.
        const double step = std::max(1.0, (m_to - m_from) / std::max(50.0, chart()->plotArea().width()));
        double next = m_from - step;
        for (const QPointF &point : all) {
            if (point.x() >= next && point.x() <= m_to + step) {
                bound << point;
                next = point.x() + step;
            }
        }
    }
    m_bounds[line]->replace(bound);
}

void PanelView::draw()
{
    for (std::size_t line = 0; line < mostTipLines; ++line)
        refreshPath(line);
    viewport()->update();
}

double PanelView::placeAt(double pixel) const
{
    const QRectF plot = chart()->plotArea();
    return m_from + (pixel - plot.left()) / std::max(1.0, plot.width()) * (m_to - m_from);
}

void PanelView::drawForeground(QPainter *painter, const QRectF &)
{
    PanelScene scene{*m_picture, *m_places, plot(), m_from, m_to, m_values->min(), m_values->max(), m_chosen};
    painter->setFont(font());
    if (m_picture->places == 0) {
        painter->setPen(m_theme.text());
        painter->drawText(sceneRect().adjusted(m_theme.wideGap(), 0, -m_theme.wideGap(), 0),
                          Qt::AlignCenter | Qt::TextWordWrap, m_nothing);
        return;
    }
    painter->setPen(m_theme.text());
    painter->drawText(QPointF(m_theme.gap(), QFontMetricsF(font()).ascent()), m_picture->quantity);
    paintPanel(*painter, m_theme, scene);
}

void PanelView::paintOn(QPainter &painter, const QRectF &area)
{
    render(&painter, area);
}

void PanelView::mousePressEvent(QMouseEvent *event)
{
    if (event->button() == Qt::LeftButton) {
        m_pressed = event->position();
        m_dragged = 0;
        m_isDragging = false;
    }
    event->ignore(); // the parent takes the focus
}

void PanelView::mouseMoveEvent(QMouseEvent *event)
{
    if (!m_pressed)
        return;
    const double moved = event->position().x() - m_pressed->x();
    if (!m_isDragging && std::abs(moved) < QApplication::startDragDistance())
        return;
    m_isDragging = true;
    const double places = -(moved - m_dragged) / std::max(1.0, chart()->plotArea().width()) * (m_to - m_from);
    m_dragged = moved;
    Q_EMIT dragged(places);
}

void PanelView::mouseReleaseEvent(QMouseEvent *event)
{
    const bool isClick = m_pressed && !m_isDragging && event->button() == Qt::LeftButton;
    m_pressed.reset();
    m_isDragging = false;
    const int place = static_cast<int>(std::lround(placeAt(event->position().x())));
    if (isClick && place >= 1 && place <= m_picture->places)
        Q_EMIT placeHit(place);
}

void PanelView::wheelEvent(QWheelEvent *event)
{
    constexpr double unitsOfStep = 120;
    Q_EMIT wheelTurned(event->angleDelta().y() / unitsOfStep, placeAt(event->position().x()));
    event->accept();
}

void PanelView::resizeEvent(QResizeEvent *event)
{
    QChartView::resizeEvent(event);
    draw();
}

void PanelView::changeEvent(QEvent *event)
{
    QChartView::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        dress();
}

} // namespace plateau::ui
