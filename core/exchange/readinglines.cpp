// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/readinglines.h"

#include "core/assay/label.h"
#include "core/evaluation/format.h"
#include "core/exchange/numberwords.h"

#include <QCoreApplication>

#include <algorithm>
#include <memory>
#include <vector>

namespace plateau::exchange {

namespace {

struct ReadingLinesWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::ReadingLines)
};

using Result = std::variant<double, LineRefusal>;

Result refusedLine(const QString &sentence)
{
    return LineRefusal{false, sentence};
}

Result passedOver(const QString &sentence)
{
    return LineRefusal{true, sentence};
}

bool isFrame(char byte)
{
    return static_cast<unsigned char>(byte) <= 0x20; // blanks and every control character
}

QByteArray withoutFrame(const QByteArray &bytes)
{
    const auto first = std::ranges::find_if_not(bytes, isFrame);
    auto end = bytes.end();
    while (end != first && isFrame(*(end - 1)))
        --end;
    return QByteArray(std::to_address(first), end - first);
}

bool hasControl(const QString &text)
{
    return std::ranges::any_of(
        text, [](QChar sign) { return sign.category() == QChar::Other_Control && sign != u'\t'; });
}

/// Behind the text where it stands as a word of its own: not within or at the beginning of a longer word.
std::vector<qsizetype> placesBehind(const QString &line, const QString &text)
{
    std::vector<qsizetype> places;
    for (qsizetype at = line.indexOf(text, 0, Qt::CaseInsensitive); at >= 0;
         at = line.indexOf(text, at + 1, Qt::CaseInsensitive)) {
        const qsizetype behind = at + text.size();
        const bool within = at > 0 && line[at - 1].isLetterOrNumber() && text.front().isLetterOrNumber();
        const bool goesOn = behind < line.size() && line[behind].isLetter() && text.back().isLetter();
        if (!within && !goesOn)
            places.push_back(behind);
    }
    return places;
}

Result valueOf(const NumberWord &number)
{
    if (const double *value = std::get_if<double>(&number.value))
        return *value;
    const QString text = QString::fromUtf8(number.text.data(), static_cast<qsizetype>(number.text.size()));
    return refusedLine(
        ReadingLinesWording::tr("%1: %2").arg(assay::quoted(text), evaluation::afterColon(std::get<QString>(number.value))));
}

Result pick(const std::vector<NumberWord> &numbers, const LinePattern &pattern)
{
    const auto count = static_cast<int>(numbers.size());
    if (count == 0)
        return refusedLine(
            pattern.which == LinePattern::Which::After
                ? ReadingLinesWording::tr("There is no number after %1.").arg(assay::quoted(pattern.after))
                : ReadingLinesWording::tr("There is no number in the line."));
    if (pattern.which == LinePattern::Which::After)
        return valueOf(numbers.front());
    if (pattern.which == LinePattern::Which::Nth)
        return pattern.nth <= count
                   ? valueOf(numbers[static_cast<std::size_t>(pattern.nth - 1)])
                   : refusedLine(ReadingLinesWording::tr("Numbers in the line: %1; number %2 is needed.")
                                     .arg(count)
                                     .arg(pattern.nth));
    return count == 1 ? valueOf(numbers.front())
                      : refusedLine(ReadingLinesWording::tr(
                                    "The line has %1 numbers; say which of them is the absorbance.")
                                    .arg(count));
}

Result readText(const QString &text, const LinePattern &pattern)
{
    if (!pattern.leaveOut.isEmpty() && text.contains(pattern.leaveOut, Qt::CaseInsensitive))
        return passedOver(
            ReadingLinesWording::tr("Passed over: it has %1.").arg(assay::quoted(pattern.leaveOut)));
    if (!pattern.mustContain.isEmpty() && !text.contains(pattern.mustContain, Qt::CaseInsensitive))
        return passedOver(
            ReadingLinesWording::tr("Passed over: it has no %1.").arg(assay::quoted(pattern.mustContain)));
    QString part = text;
    if (pattern.which == LinePattern::Which::After) {
        const std::vector<qsizetype> places = placesBehind(text, pattern.after);
        if (places.empty())
            return refusedLine(
                ReadingLinesWording::tr("There is no %1 in the line.").arg(assay::quoted(pattern.after)));
        if (places.size() > 1)
            return refusedLine(ReadingLinesWording::tr("%1 is in the line more than once; use a longer text.")
                                   .arg(assay::quoted(pattern.after)));
        part = text.mid(places.front());
    }
    const QByteArray utf8 = part.toUtf8();
    return pick(
        numbersIn(std::string_view(utf8.constData(), static_cast<std::size_t>(utf8.size())), pattern.decimal),
        pattern);
}

QString textFault(const QString &text, const QString &name)
{
    const auto fault = text.isEmpty() ? std::nullopt : assay::labelFault(text);
    return fault ? ReadingLinesWording::tr("%1: %2.").arg(name, *fault) : QString();
}

} // namespace

QString faultOf(const LinePattern &pattern)
{
    if (pattern.which == LinePattern::Which::Nth && (pattern.nth < 1 || pattern.nth > mostNumbers))
        return ReadingLinesWording::tr("The number that counts must be from 1 to %1.").arg(mostNumbers);
    if (pattern.which == LinePattern::Which::After && pattern.after.trimmed().isEmpty())
        return ReadingLinesWording::tr("Type the text that stands before the absorbance, as ABS.");
    for (const auto &[text, name] :
         {std::pair{pattern.after, ReadingLinesWording::tr("Text before the absorbance")},
          std::pair{pattern.mustContain, ReadingLinesWording::tr("Text that a line must have")},
          std::pair{pattern.leaveOut, ReadingLinesWording::tr("Text of lines to leave out")}}) {
        if (const QString fault = textFault(text, name); !fault.isEmpty())
            return fault;
    }
    return {};
}

std::variant<double, LineRefusal> readLine(const LineAssembler::Line &line, const LinePattern &pattern)
{
    if (line.isTooLong || line.bytes.size() > longestLine_bytes)
        return refusedLine(ReadingLinesWording::tr(
                           "There is no line end within %1 bytes; check speed and format of the connection.")
                           .arg(longestLine_bytes));
    const QByteArray inner = withoutFrame(line.bytes);
    if (inner.isEmpty())
        return passedOver(ReadingLinesWording::tr("The line is empty."));
    const auto decoded = decodeLine(inner, pattern.encoding);
    const QString *text = std::get_if<0>(&decoded);
    if (!text || hasControl(*text))
        return refusedLine(ReadingLinesWording::tr("The line contains characters that are not text; check "
                                                   "speed, format and encoding of the connection."));
    return readText(*text, pattern);
}

} // namespace plateau::exchange
