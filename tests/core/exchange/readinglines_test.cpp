// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/readinglines.h"

#include "tests/support/print.h"
#include "tests/support/random.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::exchange {
namespace {

using Which = LinePattern::Which;
using Line = LineAssembler::Line;

LinePattern pattern(Which which = Which::Only, int nth = 1, const QString &after = {})
{
    LinePattern made;
    made.which = which;
    made.nth = nth;
    made.after = after;
    return made;
}

LinePattern withSign(DecimalSign sign, LinePattern made = pattern())
{
    made.decimal = sign;
    return made;
}

/// NaN if the line was not taken.
double valueOf(const QByteArray &bytes, const LinePattern &made = pattern())
{
    const auto result = readLine({bytes, false}, made);
    return std::holds_alternative<double>(result) ? std::get<double>(result) : std::nan("");
}

LineRefusal refusalOf(const QByteArray &bytes, const LinePattern &made = pattern())
{
    const auto result = readLine({bytes, false}, made);
    if (const auto *refusal = std::get_if<LineRefusal>(&result))
        return *refusal;
    ADD_FAILURE() << "taken: " << bytes.toStdString() << " as " << std::get<double>(result);
    return {};
}

TEST(ReadLine, TakesTheOneNumberOfALineHoweverItIsDressed)
{
    const std::pair<QByteArray, double> lines[] = {
        {"0.512", 0.512},
        {"  0,512  ", 0.512},
        {"ABS=0.512", 0.512},
        {"A1: 0.512", 0.512},
        {"ABS 0.512 A", 0.512},
        {"ABS:0.512A", 0.512},
        {"-0.003", -0.003},
        {"ABS,-0.003", -0.003},
        {"\xE2\x88\x92"
         "0,003",
         -0.003},
        {"+0.003", 0.003},
        {"+ 0.003", 0.003},
        {".512", 0.512},
        {"0.512;", 0.512},
        {"0.512,", 0.512},
        {"[0.512]", 0.512},
        {"P-104\t0.512", 0.512},
        {"10:32:15 0.512", 0.512},
        {"25.11.2026;0,512", 0.512},
        {"2026-11-25 10:32 0.512", 0.512},
        {"25/11/2026 0.512", 0.512},
        {"\x02"
         "0.512\x03",
         0.512},
        {QByteArray("\0\0"
                    "0.512\0",
                    8),
         0.512},
        {"ABS,0.512", 0.512},
        {"\xC2\xB5"
         "A 0.512",
         0.512},
        {"0.512\xC2\xA0"
         "A",
         0.512},
        {"2", 2},
    };
    for (const auto &[bytes, value] : lines)
        EXPECT_EQ(valueOf(bytes), value) << bytes.toStdString();
}

struct Refused {
    QByteArray bytes;
    QString said;
};

TEST(ReadLine, SaysWhyALineGivesNoReading)
{
    const Refused lines[] = {
        {"READY", u"There is no number in the line."_s},
        {"A1 P-104", u"There is no number in the line."_s},
        {"340 0.512", u"The line has 2 numbers; say which of them is the absorbance."_s},
        {"340nm 0.512", u"The line has 2 numbers"_s},
        {">3.000", u"\">3.000\": it is a limit and not a reading"_s},
        {"> 3.000", u"it is a limit and not a reading"_s},
        {"\xE2\x89\xA5"
         "3.000",
         u"it is a limit and not a reading"_s},
        {"- 0.003", u"a minus stands apart from it"_s},
        {"5.12E-01", u"it has an exponent"_s},
        {"1'500", u"thousands marks"_s},
        {"1.500,2", u"thousands marks"_s},
        {"12,0.512", u"more than one decimal mark"_s},
        {"0.5\x07"
         "12",
         u"characters that are not text"_s},
        {"\xFF\xFE\x80"
         "0.512",
         u"characters that are not text"_s},
        {QByteArray("0.5\0"
                    "12",
                    6),
         u"characters that are not text"_s},
        {"\xB5"
         "A 0.512",
         u"characters that are not text"_s}, // Latin-1, which nobody has chosen
        {"0." + QByteArray(40, '1'), u"more than 30 digits"_s},
        {QByteArray(1025, '1'), u"There is no line end within 1024 bytes"_s},
        {"nan", u"There is no number"_s},
        {"\xD9\xA1\xD9\xA2", u"There is no number"_s}, // Arabic digits
    };
    for (const Refused &line : lines) {
        const LineRefusal refusal = refusalOf(line.bytes);
        EXPECT_FALSE(refusal.isPassedOver) << line.bytes.toStdString();
        EXPECT_TRUE(refusal.sentence.contains(line.said))
            << line.bytes.toStdString() << ": " << refusal.sentence.toStdString();
    }
}

TEST(ReadLine, TakesTheNumberAtAPlaceOrBehindAText)
{
    EXPECT_EQ(valueOf("340 0.512 25.0", pattern(Which::Nth, 2)), 0.512);
    EXPECT_EQ(valueOf("340nm\t0.512", pattern(Which::Nth, 1)), 340);
    EXPECT_EQ(refusalOf("340", pattern(Which::Nth, 2)).sentence,
              u"Numbers in the line: 1; number 2 is needed."_s);
    const LinePattern behind = pattern(Which::After, 1, u"Abs"_s);
    EXPECT_EQ(valueOf("WL 340 ABS 0.512 T 30.8", behind), 0.512);
    EXPECT_EQ(valueOf("abs=0.512", behind), 0.512);
    EXPECT_EQ(valueOf("ABS0.512", behind), 0.512);
    EXPECT_EQ(refusalOf("340 nm", behind).sentence, u"There is no \"Abs\" in the line."_s);
    EXPECT_EQ(refusalOf("340 ABS over", behind).sentence, u"There is no number after \"Abs\"."_s);
    EXPECT_EQ(refusalOf("ABS 1 ABS 2", behind).sentence,
              u"\"Abs\" is in the line more than once; use a longer text."_s);
    // A short text is not found inside a word.
    EXPECT_EQ(valueOf("SAMPLE 3 A 0.512", pattern(Which::After, 1, u"A"_s)), 0.512);
    // A minus that belongs to the text is no sign.
    EXPECT_EQ(valueOf("P - 0.512", pattern(Which::After, 1, u"-"_s)), 0.512);
}

TEST(ReadLine, HoldsToTheDecimalSignOfThePhotometer)
{
    const LinePattern point = withSign(DecimalSign::Point);
    const LinePattern comma = withSign(DecimalSign::Comma);
    EXPECT_EQ(valueOf("0.512", point), 0.512);
    EXPECT_EQ(valueOf("0,512", comma), 0.512);
    EXPECT_TRUE(refusalOf("0,512", point).sentence.contains(u"written with a comma"_s));
    EXPECT_TRUE(refusalOf("0.512", comma).sentence.contains(u"written with a point"_s));
    // Never 0 or 512, whichever number is asked for.
    EXPECT_TRUE(refusalOf("0,512", withSign(DecimalSign::Point, pattern(Which::Nth, 1)))
                    .sentence.contains(u"written with a comma"_s));
    // Between numbers with points the comma parts them.
    EXPECT_EQ(valueOf("12,0.512", withSign(DecimalSign::Point, pattern(Which::Nth, 2))), 0.512);
    EXPECT_EQ(valueOf("12;0,512", withSign(DecimalSign::Comma, pattern(Which::Nth, 2))), 0.512);
}

TEST(ReadLine, PassesOverWhatThePatternLeavesOut)
{
    LinePattern made = pattern();
    made.mustContain = u"abs"_s;
    made.leaveOut = u"zero"_s;
    EXPECT_EQ(valueOf("ABS 0.512", made), 0.512);
    EXPECT_EQ(refusalOf("TEMP 25.0", made), (LineRefusal{true, u"Passed over: it has no \"abs\"."_s}));
    EXPECT_EQ(refusalOf("ABS 0.000 Zero", made), (LineRefusal{true, u"Passed over: it has \"zero\"."_s}));
    EXPECT_EQ(refusalOf("\x02\x03 \t"), (LineRefusal{true, u"The line is empty."_s}));
}

TEST(ReadLine, ReadsLatin1WhereItWasChosen)
{
    LinePattern made = pattern();
    made.encoding = TextEncoding::Latin1;
    EXPECT_EQ(valueOf("25\xB0"
                      "C; 0.512",
                      [&] {
                          LinePattern second = made;
                          second.which = Which::Nth;
                          second.nth = 2;
                          return second;
                      }()),
              0.512);
    EXPECT_EQ(valueOf("\xB5"
                      "A 0.512",
                      made),
              0.512);
    EXPECT_TRUE(refusalOf("0.512 \x85", made).sentence.contains(u"not text"_s)); // a C1 control
}

TEST(ReadLine, NeverGivesAnythingButAFiniteNumberOrASentence)
{
    test::Random random(20261125);
    const QByteArray alphabet("0123456789.,-+<>eE AB:/;'\"\t\x02\xC2\xB5\xFF\x85\0", 32);
    for (int round = 0; round < 3000; ++round) {
        QByteArray bytes;
        for (int length = random.whole(0, 23); length > 0; --length)
            bytes += alphabet[random.whole(0, static_cast<int>(alphabet.size()) - 1)];
        for (const DecimalSign sign : {DecimalSign::Either, DecimalSign::Point, DecimalSign::Comma}) {
            const auto result = readLine({bytes, false}, withSign(sign, pattern(Which::Nth, 1)));
            if (const double *value = std::get_if<double>(&result))
                ASSERT_TRUE(std::isfinite(*value)) << bytes.toHex().toStdString();
            else
                ASSERT_FALSE(std::get<LineRefusal>(result).sentence.isEmpty()) << bytes.toHex().toStdString();
        }
    }
}

TEST(LinePatterns, AreRefusedWhereTheySayNothing)
{
    EXPECT_EQ(faultOf(pattern()), QString());
    EXPECT_EQ(faultOf(pattern(Which::Nth, 1)), QString());
    EXPECT_EQ(faultOf(pattern(Which::Nth, 50)), QString());
    EXPECT_NE(faultOf(pattern(Which::Nth, 0)), QString());
    EXPECT_NE(faultOf(pattern(Which::Nth, 51)), QString());
    EXPECT_NE(faultOf(pattern(Which::After, 1, u" "_s)), QString());
    EXPECT_EQ(faultOf(pattern(Which::After, 1, u"ABS"_s)), QString());
    LinePattern made = pattern();
    made.mustContain = u"a\nb"_s;
    EXPECT_TRUE(faultOf(made).startsWith(u"Text that a line must have: "_s));
}

std::vector<Line> whole(std::initializer_list<QByteArray> lines)
{
    std::vector<Line> made;
    for (const QByteArray &line : lines)
        made.push_back({line, false});
    return made;
}

TEST(LineAssembler, EndsLinesWithEveryKindOfEnd)
{
    LineAssembler assembler;
    EXPECT_EQ(assembler.take("0.1\n0.2\r\n0.3\r0.4"), whole({"0.1", "0.2", "0.3"}));
    EXPECT_EQ(assembler.take("\n\n"), whole({"0.4", ""}));
    EXPECT_EQ(assembler.take("0.5\r"), whole({"0.5"}));
    EXPECT_EQ(assembler.take("\n0.6\n"), whole({"0.6"})); // the second half of a line end is no empty line
}

TEST(LineAssembler, GivesTheSameLinesHoweverTheBytesArrive)
{
    QByteArray sent;
    for (int line = 0; line < 200; ++line)
        sent += "ABS " + QByteArray::number(line / 1000.0, 'f', 3) +
                (line % 3 == 0   ? "\r\n"
                 : line % 3 == 1 ? "\n"
                                 : "\r");
    const std::vector<Line> expected = LineAssembler().take(sent);
    ASSERT_EQ(expected.size(), 200u);
    test::Random random(7);
    for (int round = 0; round < 50; ++round) {
        LineAssembler assembler;
        std::vector<Line> lines;
        for (qsizetype at = 0; at < sent.size();) {
            const qsizetype length = std::min<qsizetype>(random.whole(1, 40), sent.size() - at);
            for (Line &line : assembler.take(QByteArrayView(sent).sliced(at, length)))
                lines.push_back(std::move(line));
            at += length;
        }
        EXPECT_EQ(lines, expected);
    }
}

TEST(LineAssembler, CutsALineThatNeverEndsOnceAndGoesOnWithTheNext)
{
    LineAssembler assembler;
    EXPECT_TRUE(assembler.take(QByteArray(longestLine_bytes, 'x')).empty()); // as long as a line may be
    EXPECT_EQ(assembler.take("\n"), whole({QByteArray(longestLine_bytes, 'x')}));
    std::vector<Line> lines;
    for (int chunk = 0; chunk < 1000; ++chunk) {
        for (Line &line : assembler.take(QByteArray(1000, 'x')))
            lines.push_back(std::move(line));
    }
    EXPECT_EQ(lines, (std::vector<Line>{{QByteArray(longestLine_bytes, 'x'), true}}));
    EXPECT_EQ(assembler.takeRest(), QByteArray());
    EXPECT_EQ(assembler.take("0.1\n"), whole({"0.1"}));
    EXPECT_TRUE(assembler.take(QByteArray(longestLine_bytes + 1, 'y')).front().isTooLong);
    EXPECT_EQ(assembler.take("yy\n0.2\n"), whole({"0.2"}));
}

TEST(LineAssembler, GivesUpAHalfLineWhenAsked)
{
    LineAssembler assembler;
    EXPECT_TRUE(assembler.take("0.51").empty());
    EXPECT_EQ(assembler.takeRest(), "0.51");
    EXPECT_EQ(assembler.take("2\n"), whole({"2"}));
}

} // namespace
} // namespace plateau::exchange
