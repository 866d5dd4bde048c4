// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/shownnumbers.h"

#include <QLocale>
#include <QRegularExpression>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Which sign is the desktop's; numbers have the point of the C format until then.
bool hasComma()
{
    return QLocale().decimalPoint() == u","_s;
}

/// All of a text that is no sentence: "2.104" is what somebody calls a sample.
bool isNameLikeANumber(const QString &text)
{
    return std::ranges::all_of(text, [](QChar sign) { return sign.isDigit() || sign == u'.'; });
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
    // a range or of a value with its uncertainty goes with the one that has the unit. An absorbance has no unit, but
    // three decimals always and never more than one figure before them.
    static const QRegularExpression numbers(u"(?<![\\w.,/-])(?:\\d+\\.\\d+(?=\u00a0|(?: (?:±|\\+|to|bis|à|a) |\u2013)"
                                            "\\d+(?:\\.\\d+)?\u00a0)|\\d\\.\\d{3}(?![\\w/-]|[.,]\\d))"_s,
                                            QRegularExpression::UseUnicodePropertiesOption);
    if (!hasComma() || !text.contains(u'.'))
        return text;
    if (isNameLikeANumber(text))
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
