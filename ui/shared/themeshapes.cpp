// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/theme.h"

#include <QPainter>
#include <QPainterPath>

#include <numbers>

namespace plateau::ui {

namespace {

QPolygonF triangle(const QRectF &area)
{
    return QPolygonF({QPointF(area.center().x(), area.top()), area.bottomRight(), area.bottomLeft()});
}

QPolygonF octagon(const QRectF &area)
{
    QPolygonF corners;
    const double radius = area.width() / 2;
    for (int corner = 0; corner < 8; ++corner) {
        const double angle = (corner + 0.5) * std::numbers::pi / 4;
        corners << area.center() + QPointF(std::cos(angle), std::sin(angle)) * radius;
    }
    return corners;
}

void stroke(QPainter &painter, const QRectF &area, const QPolygonF &unitPoints)
{
    QPolygonF points;
    for (const QPointF &point : unitPoints)
        points << QPointF(area.left() + point.x() * area.width(), area.top() + point.y() * area.height());
    painter.drawPolyline(points);
}

} // namespace

void Theme::paintShape(QPainter &painter, const QRectF &area, State state) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double side = area.width();
    painter.setPen(QPen(text(), side / 20));
    painter.setBrush(colour(state));
    QPen glyph(state == State::Info && !m_dark ? Qt::white : Qt::black, side / 9);
    glyph.setCapStyle(Qt::RoundCap);
    glyph.setJoinStyle(Qt::RoundJoin);
    switch (state) {
    case State::Good: // disc with a tick
        painter.drawEllipse(area);
        painter.setPen(glyph);
        stroke(painter, area, {{0.27, 0.53}, {0.44, 0.70}, {0.74, 0.34}});
        break;
    case State::Attention: // triangle with a bar and a dot
        painter.drawPolygon(triangle(area));
        painter.setPen(glyph);
        stroke(painter, area, {{0.5, 0.42}, {0.5, 0.66}});
        stroke(painter, area, {{0.5, 0.84}, {0.5, 0.841}});
        break;
    case State::Bad: // octagon with a cross
        painter.drawPolygon(octagon(area));
        painter.setPen(glyph);
        stroke(painter, area, {{0.34, 0.34}, {0.66, 0.66}});
        stroke(painter, area, {{0.66, 0.34}, {0.34, 0.66}});
        break;
    case State::Pending: // open ring
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(text(), side / 10, Qt::DotLine));
        painter.drawEllipse(area.adjusted(side / 12, side / 12, -side / 12, -side / 12));
        break;
    case State::Info: // square with a dot and a bar
        painter.drawRoundedRect(area, side / 8, side / 8);
        painter.setPen(glyph);
        stroke(painter, area, {{0.5, 0.26}, {0.5, 0.261}});
        stroke(painter, area, {{0.5, 0.46}, {0.5, 0.76}});
        break;
    }
    painter.restore();
}

} // namespace plateau::ui
