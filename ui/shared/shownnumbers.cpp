// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/shownnumbers.h"

#include "core/assay/localday.h"

#include <QDate>
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
    return std::ranges::all_of(text, [](QChar sign) { return sign.isDigit() || sign == u'.' || sign == u'-'; });
}

/// "2e-05" as "2·10⁻⁵".
QString withPowersOfTen(const QString &text)
{
    static const QRegularExpression power(u"(?<=\\d)e([+-]?)0*(\\d+)(?!\\w)"_s);
    static const QString digits = u"\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079"_s;
    QString shown;
    qsizetype from = 0;
    for (auto found = power.globalMatch(text); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        shown += text.mid(from, match.capturedStart() - from) + u"\u00b710"_s;
        if (match.captured(1) == u"-"_s)
            shown += u'\u207b';
        for (const QChar digit : match.captured(2))
            shown += digits.at(digit.digitValue());
        from = match.capturedEnd();
    }
    return shown + text.mid(from);
}

/// "check 16 of 2026-05-12" is kept with a run as it stands; only after such a word a day is surely no name.
QString withLocalDays(const QString &text)
{
    static const QRegularExpression day(u"(?<=\\b(?:of|du|de) |\\b(?:vom|del) )(\\d{4}-\\d{2}-\\d{2})(?![\\w-])"_s);
    const QRegularExpressionMatch found = text.contains(u'-') ? day.match(text) : QRegularExpressionMatch();
    const QDate read = found.hasMatch() ? QDate::fromString(found.captured(1), Qt::ISODate) : QDate();
    if (!read.isValid())
        return text;
    return text.left(found.capturedStart()) + assay::shownDay(read) + withLocalDays(text.mid(found.capturedEnd()));
}

} // namespace

QString withDaysShown(const QString &source)
{
    static const QRegularExpression iso(u"(?<![\\w-])\\d{4}-\\d{2}-\\d{2}(?![\\w-])"_s);
    QString shown;
    qsizetype from = 0;
    for (auto found = iso.globalMatch(source); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        const QDate day = QDate::fromString(match.captured(), Qt::ISODate);
        shown += source.mid(from, match.capturedStart() - from) + (day.isValid() ? assay::shownDay(day) : match.captured());
        from = match.capturedEnd();
    }
    return shown + source.mid(from);
}

QString withDecimalSigns(const QString &given)
{
    const QString text = withLocalDays(given);
    // A number that a unit follows, which evaluation::withUnit parts from it by a no-break space: no name does that. The
    // first number of a range or of a value with its uncertainty goes with the one that has the unit. An absorbance has no
    // unit, but three decimals at least and never more than one figure before them, unless it is said what it is (13.850, which
    // no photometer shows, beside the limits that it is outside of). A factor is known by its word, behind or before it; a
    // slope, degrees of freedom and what stands with k, ν, u or U in a formula likewise.
    static const QString unit = u"[\u00a0 ](?:%|°C|[kmµ]?g\\b|[mµ]?L\\b|[cmn]?m\\b|min\\b|mmol\\b|[hs]\\b|ppm\\b)"_s;
    static const QString fold = u"(?:-(?:fold|fach|mal)(?![\\w-])|[\u00a0 ](?:times|fois|veces)\\b)"_s;
    static const QString factor = u"(?<=factor |factor of |Faktor |facteur |rapport de |factor de )"_s;
    static const QString reading = u"(?<=A\\d is |A\\d ist |A\\d vaut |A\\d es )"_s;
    static const QString symbol = u"(?<=\\bk[\u00a0 ]=[\u00a0 ]|\\bν[\u00a0 ]=[\u00a0 ])"_s;
    static const QString statistics = u"(?:[\u00a0 ][uU][\u00a0 ]=[\u00a0 ]|[\u00a0 ](?:per minute|pro Minute|par minute|por minuto)\\b|"
                                      "[\u00a0 ](?:(?:effective |effektiven? )?(?:degrees of freedom|Freiheitsgraden?)|"
                                      "degrés de liberté|grados de libertad)\\b)"_s;
    static const QString outside = u"(?<=outside |außerhalb von |hors de |fuera de )"_s;
    static const QRegularExpression numbers(
        u"(?<![\\w.,/-])(?:\\d+\\.\\d+(?=%1|%2|%6|(?: (?:±|\\+|bis|auf|à|a) |\u2013)\\d+(?:\\.\\d+)?%1|"
        "-? (?:to|bis|à|a) \\d+(?:\\.\\d+)?%2)|"
        "\\d\\.\\d{3,5}(?![\\w/-]|[.,]\\d)|"
        "(?:%3|%4|%7)\\d+\\.\\d+(?![\\w/-]|[.,]\\d))|"
        "%5[-\u2212]?\\d+\\.\\d+(?= (?:to|bis|à|a) -?\\d+(?:\\.\\d+)?(?![\\w/-]|[.,]\\d))"_s.arg(unit, fold, factor, reading,
                                                                                         outside, statistics, symbol),
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
    // A day has two points (27.11.2026), a number one.
    static const QRegularExpression number(u"(?<![\\d.])(\\d++)\\.(?=\\d++(?!\\.\\d))"_s);
    const QString text = withPowersOfTen(withMinusSigns(cell));
    return hasComma() ? QString(text).replace(number, u"\\1,"_s) : text;
}

QString shownFormula(const QString &text)
{
    return shownNumber(withPrintedSigns(text));
}

QString shownCell(const QString &text, Qt::Alignment alignment, bool isFigure)
{
    static const QRegularExpression range(u"^-?\\d+(?:\\.\\d+)? \\w{1,3} -?\\d+(?:\\.\\d+)?$"_s,
                                          QRegularExpression::UseUnicodePropertiesOption); // "-0.1 bis 4", "-0.1 à 4"
    const bool isNumber =
        (alignment & Qt::AlignRight) || (isFigure && (isNameLikeANumber(text) || range.match(text).hasMatch()));
    return isNumber ? shownNumber(text) : shownNumbers(text);
}

Qt::Alignment alignmentOf(const QVariant &value)
{
    return value.typeId() == qMetaTypeId<Qt::Alignment>() ? value.value<Qt::Alignment>() : Qt::Alignment(value.toInt());
}

void ShownNumbersDelegate::initStyleOption(QStyleOptionViewItem *option, const QModelIndex &index) const
{
    QStyledItemDelegate::initStyleOption(option, index);
    option->text = unbroken(shownCell(option->text, option->displayAlignment, index.data(FigureRole).toBool()));
}

} // namespace plateau::ui
