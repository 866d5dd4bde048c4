// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/wholewords.h"

#include "ui/shared/widgets.h"

#include <QApplication>
#include <QComboBox>
#include <QHelpEvent>
#include <QLineEdit>
#include <QStyleOptionComboBox>
#include <QToolTip>

namespace plateau::ui {

namespace {

/// Empty where it can be read as it is.
QString cutWordsOf(const QObject &watched)
{
    if (const auto *box = qobject_cast<const QComboBox *>(&watched)) {
        QStyleOptionComboBox option;
        option.initFrom(box);
        option.editable = box->isEditable();
        const QRect room =
            box->style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, box);
        const bool fits = box->fontMetrics().horizontalAdvance(box->currentText()) <= room.width();
        return fits ? QString() : box->currentText();
    }
    if (const auto *line = qobject_cast<const QLineEdit *>(&watched); line && line->text().isEmpty()) {
        constexpr int frame = 8;
        const int wanted = line->fontMetrics().horizontalAdvance(line->placeholderText());
        return wanted <= line->width() - frame ? QString() : line->placeholderText();
    }
    return {};
}

} // namespace

WholeWords::WholeWords(QObject *parent)
    : QObject(parent)
{
    qApp->installEventFilter(this);
}

bool WholeWords::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::ToolTip || !watched->isWidgetType())
        return false;
    auto *widget = static_cast<QWidget *>(watched);
    const QString words = widget->toolTip().isEmpty() ? cutWordsOf(*watched) : QString();
    if (words.isEmpty())
        return false;
    QToolTip::showText(static_cast<QHelpEvent *>(event)->globalPos(), tipText(words), widget);
    return true;
}

} // namespace plateau::ui
