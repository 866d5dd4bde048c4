// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/widgets.h"

#include "ui/shared/theme.h"

#include <QDateTime>
#include <QFormLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

QLabel *plainLabel(const QString &text, QWidget *parent)
{
    auto *label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    return label;
}

void addFormRow(QFormLayout *form, const QString &label, QWidget *widget, const QString &objectName)
{
    QWidget *focus = widget->focusProxy() ? widget->focusProxy() : widget;
    focus->setObjectName(objectName);
    auto *caption = new QLabel(label, form->parentWidget());
    caption->setBuddy(focus);
    form->addRow(caption, widget);
}

QPushButton *button(const Theme &theme, const QString &text, const QString &objectName, QWidget *parent)
{
    auto *push = new QPushButton(text, parent);
    push->setObjectName(objectName);
    push->setMinimumHeight(theme.target());
    push->setAutoDefault(true); // Enter presses the button that has the focus
    return push;
}

QString tipText(const QString &text)
{
    return u"<qt>%1</qt>"_s.arg(text.toHtmlEscaped());
}

QString momentText(const QDateTime &moment)
{
    return moment.isValid() ? QLocale().toString(moment.toLocalTime(), QLocale::ShortFormat) : QString();
}

void setGaps(const Theme &theme, QLayout *layout)
{
    layout->setContentsMargins(theme.wideGap(), theme.gap(), theme.wideGap(), theme.gap());
    layout->setSpacing(theme.gap());
}

} // namespace plateau::ui
