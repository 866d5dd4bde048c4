// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/timechartmarks.h"

#include "ui/shared/theme.h"

#include <QPainter>
#include <QPainterPath>

namespace plateau::ui {

void paintDrop(QPainter &painter, const Theme &theme, const QRectF &area)
{
    const double middle = area.center().x();
    QPainterPath drop(QPointF(middle, area.top()));
    drop.cubicTo(QPointF(area.right() + 1, area.center().y()), QPointF(area.right(), area.bottom()),
                 QPointF(middle, area.bottom()));
    drop.cubicTo(QPointF(area.left(), area.bottom()), QPointF(area.left() - 1, area.center().y()),
                 QPointF(middle, area.top()));
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.text());
    painter.drawPath(drop);
}

void paintCuvette(QPainter &painter, const Theme &theme, const QRectF &area)
{
    painter.fillRect(area, theme.base());
    painter.fillRect(area.adjusted(0, area.height() / 4, 0, 0), theme.part(3));
    painter.setPen(QPen(theme.text(), 1.2));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF({area.topLeft(), area.bottomLeft(), area.bottomRight(), area.topRight()}));
}

void paintMark(QPainter &painter, const Theme &theme, const QRectF &area, TimeBar::Kind kind)
{
    if (kind == TimeBar::Kind::Read)
        paintCuvette(painter, theme, area);
    else if (kind == TimeBar::Kind::Add)
        paintDrop(painter, theme, area);
}

void paintThread(QPainter &painter, const Theme &theme, double left, double right, double y)
{
    painter.setPen(QPen(theme.mutedText(), 1.4));
    painter.drawLine(QPointF(left, y), QPointF(right, y));
}

void paintWindow(QPainter &painter, const Theme &theme, const QRectF &area, WindowLook look, bool openEnded)
{
    constexpr double foot = 3;
    if (look == WindowLook::Due)
        painter.fillRect(area, theme.tint(State::Info));
    const QColor ink = look == WindowLook::Past ? theme.mutedText() : theme.text();
    painter.setBrush(Qt::NoBrush);
    if (look == WindowLook::Due) {
        painter.setPen(QPen(ink, 1));
        painter.drawLine(area.topLeft(), area.topRight());
        painter.drawLine(area.bottomLeft(), area.bottomRight());
    }
    QPen pen(ink, look == WindowLook::Past ? 1.2 : look == WindowLook::Due ? 2.6 : 1.8);
    pen.setJoinStyle(Qt::MiterJoin);
    painter.setPen(pen);
    const auto bracket = [&](double x, double inwards) {
        painter.drawPolyline(QPolygonF({QPointF(x + inwards, area.top()), QPointF(x, area.top()),
                                        QPointF(x, area.bottom()), QPointF(x + inwards, area.bottom())}));
    };
    bracket(area.left(), foot);
    if (!openEnded) {
        bracket(area.right(), -foot);
        return;
    }
    const double y = area.center().y();
    const double tip = area.right() - 1;
    const double side = area.height() / 3;
    painter.drawPolyline(
        QPolygonF({QPointF(tip - side, y - side), QPointF(tip, y), QPointF(tip - side, y + side)}));
    pen.setStyle(Qt::DashLine);
    painter.setPen(pen);
    painter.drawLine(QPointF(area.left() + 2 * foot, y), QPointF(tip, y));
}

void paintLateness(QPainter &painter, const Theme &theme, double left, double right, double y)
{
    // A filled rectangle: this is drawn every second, and a stroke of a pen costs a hundred times as much.
    constexpr double height = 4;
    painter.fillRect(QRectF(left + 2, y - height / 2, right - left - 2, height), theme.colour(State::Bad));
}

} // namespace plateau::ui
