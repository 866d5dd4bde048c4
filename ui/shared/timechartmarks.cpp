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

} // namespace plateau::ui
