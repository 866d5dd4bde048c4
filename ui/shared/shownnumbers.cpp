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

QString withDecimalSigns(const QString &text)
{
    // Only evaluation::withUnit puts a no-break space between a number and its unit: a name has none. The first number of
    // a range or of a value with its uncertainty goes with the one that has the unit.
    static const QRegularExpression numbers(u"(?<![\\w.,/-])\\d+\\.\\d+(?=\u00a0|(?: (?:±|\\+|to|bis|à|a) |\u2013)"
                                            "\\d+(?:\\.\\d+)?\u00a0)"_s,
                                            QRegularExpression::UseUnicodePropertiesOption);
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

QString shownNumbers(QString text)
{
    return withDecimalSigns(withMinusSigns(std::move(text)));
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
