// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/darkstyle.h"

#include <QPainter>
#include <QPlainTextEdit>
#include <QStyleOption>
#include <QTextEdit>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

void drawOutline(QPainter &painter, const QRect &rect, const QColor &colour, bool isRound)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, 1));
    painter.setBrush(Qt::NoBrush);
    const QRectF edge = QRectF(rect).adjusted(0.5, 0.5, -0.5, -0.5);
    if (isRound)
        painter.drawEllipse(edge);
    else
        painter.drawRoundedRect(edge, 2, 2);
    painter.restore();
}

/// Not the field of a spin box, which has the frame of the whole.
bool hasFrame(const QStyleOption &option)
{
    const auto *frame = qstyleoption_cast<const QStyleOptionFrame *>(&option);
    return frame && frame->lineWidth > 0;
}

/// A text of several lines is typed there.
bool isTypedIn(const QWidget *widget)
{
    const auto *plain = qobject_cast<const QPlainTextEdit *>(widget);
    const auto *rich = qobject_cast<const QTextEdit *>(widget);
    return (plain && !plain->isReadOnly()) || (rich && !rich->isReadOnly());
}

} // namespace

DarkStyle::DarkStyle()
    : RoomyStyle(u"Fusion"_s)
{
}

QColor DarkStyle::outline(const QPalette &palette)
{
    const QColor text = palette.color(QPalette::Active, QPalette::WindowText);
    const QColor window = palette.color(QPalette::Active, QPalette::Window);
    return QColor((text.red() + window.red()) / 2, (text.green() + window.green()) / 2, (text.blue() + window.blue()) / 2);
}

void DarkStyle::drawPrimitive(PrimitiveElement element, const QStyleOption *option, QPainter *painter,
                              const QWidget *widget) const
{
    if (element == PE_FrameTabWidget) { // the style's own shines on a dark page
        painter->fillRect(option->rect, option->palette.color(QPalette::Window));
        drawOutline(*painter, option->rect, outline(option->palette), false);
        return;
    }
    RoomyStyle::drawPrimitive(element, option, painter, widget);
    switch (element) {
    case PE_PanelLineEdit:
        if (hasFrame(*option))
            drawOutline(*painter, option->rect, outline(option->palette), false);
        break;
    case PE_Frame:
        if (isTypedIn(widget))
            drawOutline(*painter, option->rect, outline(option->palette), false);
        break;
    case PE_IndicatorCheckBox:
    case PE_IndicatorItemViewItemCheck:
        drawOutline(*painter, option->rect, outline(option->palette), false);
        break;
    case PE_IndicatorRadioButton:
        drawOutline(*painter, option->rect, outline(option->palette), true);
        break;
    case PE_PanelButtonCommand:
        if (option->state & State_On)
            drawOutline(*painter, option->rect.adjusted(1, 1, -1, -1), option->palette.color(QPalette::ButtonText), false);
        break;
    default:
        break;
    }
}

void DarkStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex *option, QPainter *painter,
                                   const QWidget *widget) const
{
    RoomyStyle::drawComplexControl(control, option, painter, widget);
    if (control == CC_SpinBox || control == CC_ComboBox)
        drawOutline(*painter, option->rect, outline(option->palette), false);
}

} // namespace plateau::ui
