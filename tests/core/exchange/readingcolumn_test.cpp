// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/readingcolumn.h"

#include "tests/support/print.h"
#include "tests/support/random.h"

#include <QStringList>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::exchange {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

std::vector<double> valuesOf(const QString &text, const ColumnMapping &mapping)
{
    std::vector<double> values;
    for (const ColumnRow &row : readingsOf(readColumn(text, mapping), mapping))
        values.push_back(row.absorbance);
    return values;
}

QStringList faultsOf(const QString &text, const ColumnMapping &mapping = {})
{
    const ReadingColumn column = readColumn(text, mapping);
    QStringList faults;
    if (!column.fault.isEmpty())
        faults << column.fault;
    for (const ColumnRow &row : column.rows) {
        if (row.kind == ColumnRow::Kind::Fault)
            faults << row.sentence;
    }
    EXPECT_EQ(column.isAccepted(), faults.isEmpty());
    EXPECT_EQ(readingsOf(column, mapping).empty(), !faults.isEmpty());
    return faults;
}

TEST(ReadColumn, TakesAPlainColumnWithPointsOrCommasAndAnyLineEnd)
{
    EXPECT_THAT(valuesOf(u"0.512\r\n0,498\r0.505\n-0,001\n\n  \n"_s, {}),
                ElementsAre(0.512, 0.498, 0.505, -0.001));
    EXPECT_THAT(valuesOf(u"0.512"_s, {}), ElementsAre(0.512));
}

TEST(ReadColumn, FindsReadingAndTubeByTheMapping)
{
    ColumnMapping mapping;
    mapping.delimiter = Delimiter::Semicolon;
    mapping.decimal = DecimalSign::Comma;
    mapping.headerLines = 2;
    mapping.tubeColumn = 1;
    mapping.absorbanceColumn = 3;
    const QString text = u"Rack A\nTube;Time;A\n1;10:01;0,512\n\"P-104; b\" ;10:02; \"0,498\"\n"_s;
    const auto readings = readingsOf(readColumn(text, mapping), mapping);
    ASSERT_EQ(readings.size(), 2u);
    EXPECT_EQ(readings[0], (ColumnRow{ColumnRow::Kind::Reading, 3, u"1;10:01;0,512"_s, 0.512, u"1"_s, {}}));
    EXPECT_EQ(readings[1].tube, u"P-104; b"_s);
    EXPECT_EQ(readings[1].absorbance, 0.498);
    mapping.isReversed = true;
    EXPECT_THAT(valuesOf(text, mapping), ElementsAre(0.498, 0.512));
}

TEST(ReadColumn, PartsCellsByCommaOrBlanks)
{
    ColumnMapping commas;
    commas.delimiter = Delimiter::Comma;
    commas.decimal = DecimalSign::Point;
    commas.absorbanceColumn = 2;
    EXPECT_THAT(valuesOf(u"1,0.512\n2,\"0.498\"\n"_s, commas), ElementsAre(0.512, 0.498));
    ColumnMapping blanks;
    blanks.delimiter = Delimiter::Blanks;
    blanks.absorbanceColumn = 2;
    EXPECT_THAT(valuesOf(u"  1   0.512\n2\t 0,498  x\n"_s, blanks), ElementsAre(0.512, 0.498));
}

TEST(ReadColumn, TakesAllOrNothingAndNamesTheFaultyPlaces)
{
    EXPECT_THAT(
        faultsOf(u"0.512\n0.4 98\nover\n0.505\n"_s),
        ElementsAre(
            u"line 2, column 1: write the number without thousands marks or blanks, e.g. 1500.2 or 1500,2."_s,
            u"line 3, column 1: only digits, one decimal mark and a sign make a number; no letters, no exponent."_s));
    ColumnMapping second;
    second.absorbanceColumn = 2;
    EXPECT_THAT(faultsOf(u"1\t0.512\n2\n3\t\n4\t0.5\n"_s, second),
                ElementsAre(u"line 2, column 2: the line ends with column 1."_s,
                            u"line 3, column 2: the cell is empty."_s));
    EXPECT_THAT(faultsOf(u"0.512\n\"0.498\n"_s),
                ElementsAre(u"line 2, column 1: a quotation mark has no partner in the line."_s));
    EXPECT_THAT(
        faultsOf(u"0.512\n> 3.0\n"_s),
        ElementsAre(
            u"line 2, column 1: it is a limit and not a reading; dilute and read again, or key what the display shows."_s));
    ColumnMapping point;
    point.decimal = DecimalSign::Point;
    EXPECT_THAT(
        faultsOf(u"0.512\n0,498\n"_s, point),
        ElementsAre(
            u"line 2, column 1: it is written with a comma, but the decimal mark is set to the point."_s));
    ColumnMapping named;
    named.tubeColumn = 2;
    EXPECT_THAT(faultsOf(u"0.512\t1\n0.498\t \n"_s, named),
                ElementsAre(u"line 2, column 2: the cell is empty."_s));
}

TEST(ReadColumn, AnEmptyLineBetweenReadingsIsNoReadingAndMovesNone)
{
    EXPECT_THAT(faultsOf(u"0.512\n\n0.498\n"_s),
                ElementsAre(u"line 2: the line is empty; fill it in or leave out empty lines."_s));
    ColumnMapping leaving;
    leaving.leavesOutBlankLines = true;
    EXPECT_THAT(valuesOf(u"0.512\n\n0.498\n"_s, leaving), ElementsAre(0.512, 0.498));
    // In the heading nothing is read.
    ColumnMapping heading;
    heading.headerLines = 2;
    EXPECT_THAT(valuesOf(u"A\n\n0.498\n"_s, heading), ElementsAre(0.498));
}

TEST(ReadColumn, HasLimits)
{
    EXPECT_THAT(faultsOf({}), ElementsAre(u"There is nothing in the text."_s));
    EXPECT_THAT(faultsOf(u" \n\r\n"_s), ElementsAre(u"There is nothing in the text."_s));
    const QString most = u"0.5\n"_s.repeated(mostReadings);
    EXPECT_EQ(valuesOf(most, {}).size(), static_cast<std::size_t>(mostReadings));
    EXPECT_THAT(faultsOf(most + u"0.5"_s),
                ElementsAre(u"The text has 10001 lines; at most 10000 readings are taken at a time."_s));
    EXPECT_EQ(faultsOf(QString(longestColumnText + 1, u'1')).size(), 1);
    EXPECT_TRUE(faultsOf(QString(longestCell + 1, u'1'))
                    .constFirst()
                    .startsWith(u"line 1, column 1: the cell is longer"_s));
    EXPECT_TRUE(faultsOf(u"0.5"_s + u"\t1"_s.repeated(mostColumns))
                    .constFirst()
                    .contains(u"more than 200 columns"_s));
    EXPECT_THAT(faultsOf(u"0.5"_s + u"\t1"_s.repeated(mostColumns - 1)), IsEmpty());
    ColumnMapping heading;
    heading.headerLines = 3;
    const ReadingColumn none = readColumn(u"a\nb\nc"_s, heading); // nothing but a heading
    EXPECT_EQ(none.faults(), 0);
    EXPECT_FALSE(none.isAccepted());
}

TEST(ReadColumn, GivesTheSameValuesForEveryWayToWriteThem)
{
    test::forSeeds(100, [](test::Random &random) {
        QStringList points;
        for (int count = random.whole(1, 40); count > 0; --count)
            points << QString::number(random.between(-0.1, 3), 'f', 4);
        const std::vector<double> expected = valuesOf(points.join(u'\n'), {});
        EXPECT_EQ(expected.size(), static_cast<std::size_t>(points.size()));
        EXPECT_EQ(valuesOf(points.join(u"\r\n"_s).replace(u'.', u','), {}), expected);
        ColumnMapping mapping;
        mapping.delimiter = random.chance() ? Delimiter::Semicolon : Delimiter::Blanks;
        mapping.absorbanceColumn = 2;
        const QString before = mapping.delimiter == Delimiter::Blanks ? u"T1  "_s : u"\"T;1\";"_s;
        EXPECT_EQ(valuesOf(before + points.join(u'\n' + before), mapping), expected);
    });
}

TEST(ColumnMappings, AreRefusedWhereTheyContradictThemselves)
{
    const auto with = [](auto change) {
        ColumnMapping mapping;
        change(mapping);
        return faultOf(mapping);
    };
    EXPECT_EQ(faultOf(ColumnMapping{}), QString());
    EXPECT_NE(with([](auto &m) { m.absorbanceColumn = 0; }), QString());
    EXPECT_EQ(with([](auto &m) { m.absorbanceColumn = 200; }), QString());
    EXPECT_NE(with([](auto &m) { m.absorbanceColumn = 201; }), QString());
    EXPECT_NE(with([](auto &m) { m.tubeColumn = -1; }), QString());
    EXPECT_NE(with([](auto &m) { m.tubeColumn = 1; }), QString());
    EXPECT_EQ(with([](auto &m) { m.tubeColumn = 2; }), QString());
    EXPECT_NE(with([](auto &m) { m.headerLines = -1; }), QString());
    EXPECT_NE(with([](auto &m) { m.headerLines = 1001; }), QString());
    EXPECT_NE(with([](auto &m) { m.delimiter = Delimiter::Comma; }), QString());
    EXPECT_EQ(with([](auto &m) {
                  m.delimiter = Delimiter::Comma;
                  m.decimal = DecimalSign::Point;
              }),
              QString());
}

TEST(ColumnMappings, HaveWordsThatReadBack)
{
    for (const Delimiter delimiter :
         {Delimiter::Tab, Delimiter::Semicolon, Delimiter::Comma, Delimiter::Blanks})
        EXPECT_EQ(delimiterFromWord(wordOf(delimiter)), delimiter);
    EXPECT_EQ(delimiterFromWord(u"pipe"_s), std::nullopt);
    for (const DecimalSign sign : {DecimalSign::Either, DecimalSign::Point, DecimalSign::Comma})
        EXPECT_EQ(decimalSignFromWord(wordOf(sign)), sign);
    for (const TextEncoding encoding : {TextEncoding::Utf8, TextEncoding::Latin1})
        EXPECT_EQ(encodingFromWord(wordOf(encoding)), encoding);
    EXPECT_EQ(likelyDelimiter(u"1;2\t3"_s), Delimiter::Tab);
    EXPECT_EQ(likelyDelimiter(u"1;2"_s), Delimiter::Semicolon);
    EXPECT_EQ(likelyDelimiter(u"0,5"_s), Delimiter::Tab);
}

/// The text, or the sentence why there is none.
QString decoded(const QByteArray &bytes, TextEncoding encoding = TextEncoding::Utf8)
{
    return std::visit([](const QString &text) { return text; }, decodeReadings(bytes, encoding));
}

TEST(DecodeReadings, IsStrictAndHonoursAMark)
{
    EXPECT_EQ(decoded("\xC2\xB5"
                      "A"),
              u"\u00B5A"_s);
    EXPECT_EQ(decoded("\xEF\xBB\xBF"
                      "0.5"),
              u"0.5"_s);
    EXPECT_EQ(decoded(QByteArray("\xFF\xFE"
                                 "0\0,\0005\0",
                                 8)),
              u"0,5"_s);
    EXPECT_EQ(decoded(QByteArray("\xFE\xFF"
                                 "\0000\0.\0005",
                                 8)),
              u"0.5"_s);
    EXPECT_EQ(decoded("\xB5"
                      "A",
                      TextEncoding::Latin1),
              u"\u00B5A"_s);
    EXPECT_TRUE(decoded("0.5\n\xB5"
                        "A")
                    .contains(u"not UTF-8 in line 2, column 1"_s));
    EXPECT_TRUE(decoded(QByteArray("\xFF\xFE"
                                   "0\0,",
                                   5))
                    .contains(u"broken"_s));
    EXPECT_TRUE(decoded(QByteArray("\xFF\xFE"
                                   "\0\xD8"
                                   "0\0",
                                   6))
                    .contains(u"broken"_s)); // half a pair
    EXPECT_TRUE(decoded(QByteArray("0.5\n0\0"
                                   "5",
                                   7))
                    .contains(u"NUL in line 2, column 2"_s));
    EXPECT_TRUE(decoded(QByteArray("\0", 1), TextEncoding::Latin1).contains(u"NUL"_s));
}

TEST(OnOneLine, ShowsWhatWouldForgeALineAsCode)
{
    EXPECT_EQ(onOneLine(QByteArray("\x02"
                                   "0.5\r")),
              u"<02>0.5<0D>"_s);
    EXPECT_EQ(onOneLine(QByteArray("\xB5"
                                   "A")),
              u"\u00B5A"_s);
    EXPECT_EQ(onOneLine(u"0.5\u202E1"_s), u"0.5<202E>1"_s);
    EXPECT_EQ(onOneLine(QString(301, u'x')), QString(300, u'x') + u'…');
    EXPECT_EQ(onOneLine(QString(300, u'x')), QString(300, u'x'));
}

} // namespace
} // namespace plateau::exchange
