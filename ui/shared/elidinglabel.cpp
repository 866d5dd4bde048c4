// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/elidinglabel.h"

#include "ui/shared/widgets.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>

namespace plateau::ui {

ElidingLabel::ElidingLabel(QWidget *parent)
    : QLabel(parent)
{
    setTextFormat(Qt::PlainText);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

QSize ElidingLabel::minimumSizeHint() const
{
    return {fontMetrics().averageCharWidth() * 8, QLabel::minimumSizeHint().height()};
}

void ElidingLabel::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setPen(palette().color(QPalette::WindowText));
    const int flags = static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter) | Qt::TextWordWrap;
    const QRect wrapped = fontMetrics().boundingRect(contentsRect(), flags, text());
    if (fontMetrics().horizontalAdvance(text()) > contentsRect().width() &&
        contentsRect().height() >= wrapped.height() && contentsRect().width() >= wrapped.width()) {
        painter.drawText(contentsRect(), flags, text());
        return;
    }
    painter.drawText(contentsRect(), static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine),
                     fontMetrics().elidedText(text(), Qt::ElideRight, contentsRect().width()));
}

bool ElidingLabel::event(QEvent *event)
{
    if (event->type() != QEvent::ToolTip)
        return QLabel::event(event);
    QToolTip::showText(static_cast<QHelpEvent *>(event)->globalPos(), tipText(text()), this);
    return true;
}

} // namespace plateau::ui
