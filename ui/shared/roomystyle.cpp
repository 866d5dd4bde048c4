// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/roomystyle.h"

#include "ui/shared/table.h"
#include "ui/shared/theme.h"

#include <QHeaderView>
#include <QLabel>
#include <QPainter>
#include <QStyleOption>

#include <algorithm>

namespace plateau::ui {

namespace {

/// Between the edge of a cell and its words, in pixels; a style has 3 or so by itself.
constexpr int margin = 5;

/// What kerning takes of a caption at most.
constexpr int ofKerning = 2;

bool isHeadingOfTable(const QWidget *widget)
{
    const auto *header = qobject_cast<const QHeaderView *>(widget);
    return header && header->orientation() == Qt::Horizontal && qobject_cast<const Table *>(header->parentWidget());
}

} // namespace

RoomyStyle::RoomyStyle(const QString &style)
    : QProxyStyle(style)
{
}

void RoomyStyle::polish(QWidget *widget)
{
    QProxyStyle::polish(widget);
    auto *caption = qobject_cast<QLabel *>(widget);
    if (!caption || !caption->buddy())
        return;
    QMargins margins = caption->contentsMargins();
    margins.setRight(std::max(margins.right(), ofKerning)); // once, however often it is polished
    caption->setContentsMargins(margins);
}

void RoomyStyle::drawItemText(QPainter *painter, const QRect &area, int flags, const QPalette &palette, bool enabled,
                              const QString &text, QPalette::ColorRole role) const
{
    const bool isUnderlined = (flags & Qt::TextShowMnemonic) && (flags & Qt::AlignLeft) && text.contains(u'&');
    QProxyStyle::drawItemText(painter, isUnderlined ? area.adjusted(0, 0, ofKerning, 0) : area, flags, palette, enabled,
                              text, role);
}

int RoomyStyle::pixelMetric(PixelMetric metric, const QStyleOption *option, const QWidget *widget) const
{
    const int usual = QProxyStyle::pixelMetric(metric, option, widget);
    if (metric == PM_FocusFrameHMargin && qobject_cast<const Table *>(widget))
        return std::max(usual, margin - 1); // the view adds one
    return usual;
}

QColor RoomyStyle::currentOutline(const QPalette &palette, QStyle::State state)
{
    return state & State_Selected ? palette.color(QPalette::HighlightedText) : focusColour(palette);
}

void RoomyStyle::drawPrimitive(PrimitiveElement element, const QStyleOption *option, QPainter *painter,
                               const QWidget *widget) const
{
    if (element != PE_FrameFocusRect || !(option->state & State_Item)) // of a list or a table
        return QProxyStyle::drawPrimitive(element, option, painter, widget);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing, false);
    painter->setPen(QPen(currentOutline(option->palette, option->state), 1));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(option->rect.adjusted(0, 0, -1, -1));
    painter->restore();
}

void RoomyStyle::drawControl(ControlElement element, const QStyleOption *option, QPainter *painter,
                             const QWidget *widget) const
{
    if (const auto *box = qstyleoption_cast<const QStyleOptionComboBox *>(option);
        element == CE_ComboBoxLabel && box && !box->editable) {
        QStyleOptionComboBox whole = *box;
        whole.currentText = elidedIn(*box, widget);
        QProxyStyle::drawControl(element, &whole, painter, widget);
        return;
    }
    const auto *heading = qstyleoption_cast<const QStyleOptionHeader *>(option);
    if (element != CE_HeaderLabel || !heading || !isHeadingOfTable(widget)) {
        QProxyStyle::drawControl(element, option, painter, widget);
        return;
    }
    const int missing = missingBeside(*option, *widget);
    const auto drawn = [&](auto label) {
        label.rect.adjust(missing, 0, -missing, 0);
        QProxyStyle::drawControl(element, &label, painter, widget);
    };
    // Which of the two a base style passes on differs between versions of Qt.
    if (const auto *fuller = qstyleoption_cast<const QStyleOptionHeaderV2 *>(option))
        drawn(*fuller);
    else
        drawn(*heading);
}

QString RoomyStyle::elidedIn(const QStyleOptionComboBox &box, const QWidget *widget) const
{
    constexpr int beside = 2; // a style leaves one pixel at each side
    constexpr int besideIcon = 4;
    int room = proxy()->subControlRect(CC_ComboBox, &box, SC_ComboBoxEditField, widget).width() - beside;
    if (!box.currentIcon.isNull())
        room -= box.iconSize.width() + besideIcon;
    return box.fontMetrics.elidedText(box.currentText, Qt::ElideRight, room);
}

int RoomyStyle::missingBeside(const QStyleOption &option, const QWidget &heading) const
{
    return std::max(0, margin - QProxyStyle::pixelMetric(PM_HeaderMargin, &option, &heading));
}

void RoomyStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex *option, QPainter *painter,
                                    const QWidget *widget) const
{
    const auto *group = control == CC_GroupBox ? qstyleoption_cast<const QStyleOptionGroupBox *>(option) : nullptr;
    if (!group || !(group->features & QStyleOptionFrame::Flat))
        return QProxyStyle::drawComplexControl(control, option, painter, widget);
    QStyleOptionGroupBox bare = *group; // a flat one has no frame, here too
    bare.subControls &= ~SC_GroupBoxFrame;
    QProxyStyle::drawComplexControl(control, &bare, painter, widget);
}

QSize RoomyStyle::sizeFromContents(ContentsType type, const QStyleOption *option, const QSize &contents,
                                   const QWidget *widget) const
{
    QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
    if (type == CT_HeaderSection && isHeadingOfTable(widget))
        size.rwidth() += 2 * missingBeside(*option, *widget);
    return size;
}

} // namespace plateau::ui
