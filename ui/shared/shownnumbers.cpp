// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/shownnumbers.h"

#include <QLocale>
#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Which sign is the desktop's; numbers have the point of the C format until then.
bool hasComma()
{
    return QLocale().decimalPoint() == u","_s;
}

QString withMinusSigns(QString text)
{
    static const QRegularExpression minus(u"(?<![\\w.,)-])-(?=\\d)"_s);
    return text.contains(u'-') ? text.replace(minus, u"\u2212"_s) : text;
}

} // namespace

QString shownNumbers(QString text)
{
    text = withMinusSigns(std::move(text));
    // Only evaluation::withUnit puts a no-break space between a number and its unit: a name has none. A number before it
    // without a unit of its own ("0.168 ± 0.002 g/L", "2.5 to 25 mL") goes with it.
    static const QRegularExpression numbers(
        u"(?<![\\w.,/-])\\d+\\.\\d+(?=\u00a0|(?: ± | \\+ |\u2013)\\d+(?:\\.\\d+)?\u00a0)"_s);
    if (!hasComma() || !text.contains(u'\u00a0'))
        return text;
    QString shown;
    qsizetype from = 0;
    for (auto found = numbers.globalMatch(text); found.hasNext();) {
        const QRegularExpressionMatch number = found.next();
        shown += text.mid(from, number.capturedStart() - from) + number.captured().replace(u'.', u',');
        from = number.capturedEnd();
    }
    return shown + text.mid(from);
}

QString shownNumber(const QString &cell)
{
    static const QRegularExpression point(u"(?<=\\d)\\.(?=\\d)"_s);
    const QString text = withMinusSigns(cell);
    return hasComma() ? QString(text).replace(point, u","_s) : text;
}

void ShownNumbersDelegate::initStyleOption(QStyleOptionViewItem *option, const QModelIndex &index) const
{
    QStyledItemDelegate::initStyleOption(option, index);
    // Numbers stand to the right, words to the left.
    const bool isNumber = option->displayAlignment & Qt::AlignRight;
    option->text = isNumber ? shownNumber(option->text) : shownNumbers(option->text);
}

} // namespace plateau::ui
