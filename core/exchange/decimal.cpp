// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/decimal.h"

#include <QCoreApplication>
#include <QString>

#include <charconv>
#include <string>

namespace plateau::exchange {

namespace {

struct DecimalWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::Decimal)
};

/// No reading, volume or concentration needs more; what is longer was pasted by mistake.
constexpr std::size_t longestNumber = 30;
constexpr std::string_view minusSign = "\xE2\x88\x92"; // U+2212

/// Blanks that come along with a pasted cell.
constexpr std::string_view blanks[] = {" ", "\t", "\r", "\n", "\xC2\xA0", "\xE2\x80\xAF"};

std::string_view trimmed(std::string_view text)
{
    for (bool again = true; again;) {
        again = false;
        for (const std::string_view blank : blanks) {
            if (text.starts_with(blank)) {
                text.remove_prefix(blank.size());
                again = true;
            }
            if (text.ends_with(blank)) {
                text.remove_suffix(blank.size());
                again = true;
            }
        }
    }
    return text;
}

bool isDigit(char sign)
{
    return sign >= '0' && sign <= '9';
}

bool isMark(char sign)
{
    return sign == '.' || sign == ',';
}

char32_t firstSign(std::string_view text)
{
    const QList<uint> signs = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())).toUcs4();
    return signs.empty() ? 0 : signs.front();
}

/// What the first sign that is neither digit nor decimal mark says about the text.
DecimalFault faultOf(std::string_view rest)
{
    if (rest.front() == '\'' || rest.starts_with("\xE2\x80\x99")) // U+2019
        return DecimalFault::Grouping;
    if (const std::string_view behind = trimmed(rest); behind.size() != rest.size())
        return isDigit(behind.front()) ? DecimalFault::Grouping : faultOf(behind);
    const char32_t sign = firstSign(rest);
    const bool arabicMark = sign == U'\u066B' || sign == U'\u066C';
    const bool digit = QChar::isDigit(sign) || QChar::category(sign) == QChar::Number_Other;
    return arabicMark || digit ? DecimalFault::OtherDigits : DecimalFault::Letter;
}

/// "1.500,2" and "1.500.200" are grouped by threes; "1.08,86" is a slip of the finger.
DecimalFault faultOfMarks(std::string_view number)
{
    std::size_t start = number.find_first_of(".,") + 1;
    const char first = number[start - 1];
    if (start == 1 || start > 4) // a group before the first mark has one to three digits
        return DecimalFault::TwoDecimalMarks;
    while (true) {
        const std::size_t end = number.find_first_of(".,", start);
        const bool last = end == std::string_view::npos;
        if (last && number[start - 1] != first) // behind the decimal mark of a grouped number
            return DecimalFault::Grouping;
        if ((last ? number.size() : end) - start != 3)
            return DecimalFault::TwoDecimalMarks;
        if (last)
            return DecimalFault::Grouping;
        if (number[start - 1] != first)
            return DecimalFault::TwoDecimalMarks;
        start = end + 1;
    }
}

} // namespace

std::variant<double, DecimalFault> parseDecimal(std::string_view utf8)
{
    std::string_view text = trimmed(utf8);
    if (text.empty())
        return DecimalFault::Empty;
    std::string number;
    if (text.front() == '-' || text.starts_with(minusSign))
        number = "-";
    if (!number.empty() || text.front() == '+')
        text.remove_prefix(text.starts_with(minusSign) ? minusSign.size() : 1);

    std::size_t digits = 0;
    std::size_t marks = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char sign = text[i];
        if (!isDigit(sign) && !isMark(sign))
            return faultOf(text.substr(i));
        digits += isDigit(sign) ? 1 : 0;
        marks += isMark(sign) ? 1 : 0;
        number += isMark(sign) ? '.' : sign;
    }
    if (marks > 1)
        return faultOfMarks(text);
    if (digits == 0)
        return DecimalFault::NoDigits;
    if (digits > longestNumber)
        return DecimalFault::TooLong;
    double value = 0;
    std::from_chars(number.data(), number.data() + number.size(), value);
    return value;
}

std::variant<double, DecimalFault> parseDecimal(const QString &text)
{
    const QByteArray utf8 = text.toUtf8();
    return parseDecimal(std::string_view(utf8.constData(), static_cast<std::size_t>(utf8.size())));
}

QString faultSentence(DecimalFault fault)
{
    switch (fault) {
    case DecimalFault::Empty:
        return DecimalWording::tr("Enter a number, such as 0.512 or 0,512.");
    case DecimalFault::TwoDecimalMarks:
        return DecimalWording::tr(
            "There is more than one decimal mark; a number has one, as in 0.512 or 0,512.");
    case DecimalFault::Grouping:
        return DecimalWording::tr("Write the number without thousands marks or blanks, e.g. 1500.2 or 1500,2.");
    case DecimalFault::Letter:
        return DecimalWording::tr(
            "Only digits, one decimal mark and a sign make a number; no letters, no exponent.");
    case DecimalFault::OtherDigits:
        return DecimalWording::tr("Write the number with the digits 0 to 9.");
    case DecimalFault::NoDigits:
        return DecimalWording::tr("There is no digit in it; enter a number, such as 0.512 or 0,512.");
    case DecimalFault::TooLong:
        return DecimalWording::tr("That is more than %1 digits; enter one reading at a time.")
            .arg(longestNumber);
    }
    return {};
}

} // namespace plateau::exchange
