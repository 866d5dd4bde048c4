// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/readingtext.h"

#include "core/assay/label.h"
#include "core/exchange/decimal.h"
#include "core/exchange/utf8.h"

#include <QCoreApplication>
#include <QStringDecoder>

#include <algorithm>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

namespace {

struct ReadingTextWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::ReadingText)
};

/// Longer than any line a photometer writes.
constexpr qsizetype longestShown = 300;

using Decoded = std::variant<QString, QString>;

Decoded refusedText(const QString &sentence)
{
    return Decoded(std::in_place_index<1>, sentence);
}

Decoded withoutNul(const QString &text)
{
    const qsizetype nul = text.indexOf(QChar(0));
    if (nul < 0)
        return Decoded(std::in_place_index<0>, text);
    const QByteArray before = text.left(nul).toUtf8();
    return refusedText(ReadingTextWording::tr("The text has a NUL in %1; it is not a text file of readings.")
                           .arg(placeOf(before, before.size()).text()));
}

Decoded fromUtf16(const QByteArray &bytes)
{
    QStringDecoder decoder(QStringDecoder::Utf16); // reads the order from the mark and drops it
    const QString text = decoder(bytes);
    if (decoder.hasError() || bytes.size() % 2 != 0 || !text.isValidUtf16())
        return refusedText(
            ReadingTextWording::tr("The text says it is UTF-16, but is broken; save it as UTF-8."));
    return withoutNul(text);
}

bool showsAsCode(QChar sign)
{
    return assay::labelFault(u'x' + QString(sign)).has_value();
}

} // namespace

QString wordOf(TextEncoding encoding)
{
    return encoding == TextEncoding::Latin1 ? u"latin1"_s : u"utf8"_s;
}

QString wordOf(DecimalSign sign)
{
    return sign == DecimalSign::Point ? u"point"_s : sign == DecimalSign::Comma ? u"comma"_s : u"either"_s;
}

TextEncoding encodingFromWord(const QString &word)
{
    return word == "latin1"_L1 ? TextEncoding::Latin1 : TextEncoding::Utf8;
}

DecimalSign decimalSignFromWord(const QString &word)
{
    return word == "point"_L1   ? DecimalSign::Point
           : word == "comma"_L1 ? DecimalSign::Comma
                                : DecimalSign::Either;
}

std::variant<QString, QString> decodeReadings(const QByteArray &bytes, TextEncoding encoding)
{
    if (bytes.startsWith("\xFF\xFE") || bytes.startsWith("\xFE\xFF"))
        return fromUtf16(bytes);
    if (bytes.startsWith("\xEF\xBB\xBF"))
        return decodeLine(bytes.mid(3), TextEncoding::Utf8);
    return decodeLine(bytes, encoding);
}

std::variant<QString, QString> decodeLine(const QByteArray &bytes, TextEncoding encoding)
{
    if (encoding == TextEncoding::Latin1)
        return withoutNul(QString::fromLatin1(bytes));
    if (const auto at = invalidUtf8(bytes))
        return refusedText(
            ReadingTextWording::tr("The text is not UTF-8 in %1; choose the other encoding if it is Latin-1.")
                .arg(placeOf(bytes, *at).text()));
    return withoutNul(QString::fromUtf8(bytes));
}

std::variant<double, QString> parseReading(std::string_view utf8, DecimalSign sign)
{
    using Result = std::variant<double, QString>;
    if (isLimit(utf8))
        return Result(std::in_place_index<1>, limitSentence());
    const auto parsed = parseDecimal(utf8);
    if (const auto *fault = std::get_if<DecimalFault>(&parsed))
        return Result(std::in_place_index<1>, faultSentence(*fault));
    if (sign == DecimalSign::Point && utf8.find(',') != std::string_view::npos)
        return Result(
            std::in_place_index<1>,
            ReadingTextWording::tr("It is written with a comma, but the decimal mark is set to the point."));
    if (sign == DecimalSign::Comma && utf8.find('.') != std::string_view::npos)
        return Result(
            std::in_place_index<1>,
            ReadingTextWording::tr("It is written with a point, but the decimal mark is set to the comma."));
    return Result(std::in_place_index<0>, std::get<double>(parsed));
}

bool isLimit(std::string_view utf8)
{
    // The last three: U+2264, U+2265, U+2248.
    constexpr std::string_view signs[] = {"<", ">", "~", "\xE2\x89\xA4", "\xE2\x89\xA5", "\xE2\x89\x88"};
    return std::ranges::any_of(signs, [utf8](std::string_view sign) { return utf8.starts_with(sign); });
}

QString limitSentence()
{
    return ReadingTextWording::tr(
        "It is a limit and not a reading; dilute and read again, or key what the display shows.");
}

QString onOneLine(const QString &text)
{
    QString line;
    for (const QChar sign : text.left(longestShown))
        line += showsAsCode(sign)
                    ? u"<%1>"_s.arg(static_cast<uint>(sign.unicode()), 2, 16, QLatin1Char('0')).toUpper()
                    : QString(sign);
    return text.size() > longestShown ? line + u'…' : line;
}

QString onOneLine(const QByteArray &raw)
{
    return onOneLine(invalidUtf8(raw) ? QString::fromLatin1(raw) : QString::fromUtf8(raw));
}

} // namespace plateau::exchange
