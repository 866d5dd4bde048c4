// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/fuzz/targets.h"

#include "core/exchange/decimal.h"
#include "core/exchange/keyedmoment.h"
#include "core/exchange/readingcolumn.h"
#include "core/exchange/readinglines.h"

#include <QTimeZone>

#include <cmath>

namespace plateau::fuzz {

using namespace Qt::StringLiterals;
using namespace exchange;

namespace {

constexpr int choices = 6;

int choice(const QByteArray &bytes, int which, int kinds)
{
    return which < bytes.size() ? static_cast<unsigned char>(bytes[which]) % kinds : 0;
}

void requireSentence(const QString &sentence)
{
    require(!sentence.isEmpty() && !sentence.contains(u'\n'), "a refusal is one line");
}

} // namespace

void tryColumn(const QByteArray &bytes)
{
    ColumnMapping mapping;
    mapping.encoding = choice(bytes, 0, 2) ? TextEncoding::Latin1 : TextEncoding::Utf8;
    mapping.delimiter = Delimiter(choice(bytes, 1, 4));
    mapping.decimal = DecimalSign(choice(bytes, 2, 3));
    mapping.absorbanceColumn = 1 + choice(bytes, 3, 4);
    mapping.tubeColumn = choice(bytes, 4, 4);
    mapping.headerLines = choice(bytes, 5, 3);
    mapping.isReversed = choice(bytes, 5, 7) == 3;
    mapping.leavesOutBlankLines = choice(bytes, 5, 5) == 2;
    if (!faultOf(mapping).isEmpty())
        return;
    const auto text = decodeReadings(bytes.mid(choices), mapping.encoding);
    if (text.index() == 1) {
        requireSentence(std::get<1>(text));
        return;
    }
    const ReadingColumn column = readColumn(std::get<0>(text), mapping);
    for (const ColumnRow &row : column.rows) {
        require(std::isfinite(row.absorbance), "an absorbance is finite");
        if (row.kind == ColumnRow::Kind::Fault)
            requireSentence(row.sentence);
    }
    const std::vector<ColumnRow> readings = readingsOf(column, mapping);
    require(readings.empty() != column.isAccepted(), "all or nothing");
    require(column.isAccepted() ? int(readings.size()) == column.readings() : true, "none is lost");
}

void tryLine(const QByteArray &bytes)
{
    LinePattern pattern;
    pattern.encoding = choice(bytes, 0, 2) ? TextEncoding::Latin1 : TextEncoding::Utf8;
    pattern.decimal = DecimalSign(choice(bytes, 1, 3));
    pattern.which = LinePattern::Which(choice(bytes, 2, 3));
    pattern.nth = 1 + choice(bytes, 3, 3);
    pattern.after = choice(bytes, 3, 2) ? u"ABS"_s : u"A="_s;
    pattern.leaveOut = choice(bytes, 4, 3) == 0 ? u"#"_s : QString();
    const int piece = 1 + choice(bytes, 5, 9);
    if (!faultOf(pattern).isEmpty())
        return;
    const QByteArray stream = bytes.mid(choices);
    LineAssembler whole;
    const std::vector<LineAssembler::Line> lines = whole.take(stream);
    LineAssembler pieces;
    std::vector<LineAssembler::Line> pieced;
    for (qsizetype at = 0; at < stream.size(); at += piece) {
        for (LineAssembler::Line &line : pieces.take(stream.mid(at, piece)))
            pieced.push_back(std::move(line));
    }
    require(lines == pieced && whole.takeRest() == pieces.takeRest(),
            "lines are the same however they arrive");
    for (const LineAssembler::Line &line : lines) {
        require(line.bytes.size() <= longestLine_bytes, "a line has its longest");
        const auto read = readLine(line, pattern);
        if (const auto *absorbance = std::get_if<double>(&read))
            require(std::isfinite(*absorbance), "an absorbance is finite");
        else
            requireSentence(std::get<LineRefusal>(read).sentence);
    }
}

void tryNumber(const QByteArray &bytes)
{
    const std::string_view text(bytes.constData(), std::size_t(bytes.size()));
    const auto read = parseDecimal(text);
    QByteArray other = bytes;
    for (char &sign : other)
        sign = sign == '.' ? ',' : sign == ',' ? '.' : sign;
    const auto swapped = parseDecimal(std::string_view(other.constData(), std::size_t(other.size())));
    require(read == swapped, "a comma reads as a point does");
    if (const auto *number = std::get_if<double>(&read)) {
        require(std::isfinite(*number), "a number is finite");
        const QByteArray printed = QByteArray::number(*number, 'f', QLocale::FloatingPointShortest);
        const auto again = parseDecimal(std::string_view(printed.constData(), std::size_t(printed.size())));
        const auto *same = std::get_if<double>(&again);
        // What takes more digits than anybody keys is refused, but never read as another number.
        require(same ? *same == *number : std::get<DecimalFault>(again) == DecimalFault::TooLong,
                "what is printed is read back");
    } else {
        requireSentence(faultSentence(std::get<DecimalFault>(read)));
    }
    const QDateTime now(QDate(2026, 3, 29), QTime(4, 30), QTimeZone("Europe/Berlin"));
    const auto moment = parseKeyedMoment(QString::fromUtf8(bytes), now);
    if (const auto *time = std::get_if<QDateTime>(&moment))
        require(time->isValid() && *time <= now, "a keyed time has been");
    else
        requireSentence(faultSentence(std::get<MomentFault>(moment)));
}

} // namespace plateau::fuzz
