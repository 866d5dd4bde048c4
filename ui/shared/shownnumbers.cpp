// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/shownnumbers.h"

#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace plateau::ui {

QString shownNumbers(QString text)
{
    static const QRegularExpression minus(u"(?<![\\w.,)-])-(?=\\d)"_s);
    return text.contains(u'-') ? text.replace(minus, u"\u2212"_s) : text;
}

QString ShownNumbersDelegate::displayText(const QVariant &value, const QLocale &locale) const
{
    return shownNumbers(QStyledItemDelegate::displayText(value, locale));
}

} // namespace plateau::ui
