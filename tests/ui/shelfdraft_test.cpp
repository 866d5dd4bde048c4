// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "ui/books/delimited.h"
#include "ui/books/shelfdraft.h"
#include "ui/books/shelfpaste.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

assay::Method measuring(const QString &id, const QString &measurandId, const QString &name)
{
    assay::Method method;
    method.id = id;
    method.measurands.push_back({});
    method.measurands.back().id = measurandId;
    method.measurands.back().name = name;
    return method;
}

class ShelfText : public ::testing::Test
{
protected:
    ui::ShelfReading read(const std::vector<std::vector<QString>> &rows) const
    {
        std::vector<ui::CellRow> cells;
        for (const std::vector<QString> &row : rows)
            cells.push_back({QString::number(cells.size()), row});
        return ui::readShelf(cells, names, now);
    }
    /// In the order of shelf::Column: sample, product, matrix, form, received, from, expected.
    static std::vector<QString> row(const QString &id, const QString &expected = {},
                                    const QString &received = {}, const QString &matrix = {},
                                    const QString &form = {})
    {
        return {id, {}, matrix, form, received, {}, expected};
    }

    const ui::MeasurandNames names{{measuring(u"malic"_s, u"malic-acid"_s, u"L-Malic acid"_s),
                                    measuring(u"sugars"_s, u"glucose"_s, u"D-Glucose"_s),
                                    measuring(u"starch"_s, u"glucose-2"_s, u"D-Glucose"_s)}};
    const QDateTime now = QDateTime::fromString(u"2026-03-02T09:10:00+01:00"_s, Qt::ISODate);
};

TEST_F(ShelfText, DelimitedTextKeepsQuotedBreaksAndNumbersItsLines)
{
    using Lines = std::vector<ui::DelimitedLine>;
    EXPECT_EQ(ui::splitDelimited(u"a\tb; c\r\n\r\n \"d\ne\"\t\"f \"\"g\"\"\"\r\nh"_s),
              (Lines{{1, {u"a"_s, u"b; c"_s}}, {3, {u"d e"_s, u"f \"g\""_s}}, {5, {u"h"_s}}}));
    EXPECT_EQ(ui::splitDelimited(u"a;b\nc;"_s), (Lines{{1, {u"a"_s, u"b"_s}}, {2, {u"c"_s, {}}}}));
    EXPECT_EQ(ui::splitDelimited(u"\"half open\tb\nc"_s),
              (Lines{{1, {u"\"half open"_s, u"b"_s}}, {2, {u"c"_s}}}));
    EXPECT_TRUE(ui::splitDelimited(u" \n\t\n"_s).empty());
}

TEST_F(ShelfText, ARowIsReadAsASample)
{
    const ui::ShelfReading reading = read({{u" P-104 "_s,
                                            u"Perry"_s,
                                            u"coloured"_s,
                                            {},
                                            u"8:10"_s,
                                            u"Tank cellar"_s,
                                            u"l-malic acid 3,5; malic-acid 4; D-glucose 0.2"_s}});
    EXPECT_TRUE(reading.problems.empty()) << reading.problems.front().message.toStdString();
    ASSERT_EQ(reading.samples.size(), 1U);
    const planning::ShelfSample &sample = reading.samples[0];
    EXPECT_EQ(sample.id, u"P-104"_s);
    EXPECT_EQ(sample.product, u"Perry"_s);
    EXPECT_EQ(sample.matrix, assay::Matrix::Coloured);
    EXPECT_EQ(sample.form, run::Form::Liquid);
    EXPECT_EQ(sample.receivedFrom, u"Tank cellar"_s);
    ASSERT_TRUE(sample.receivedAt);
    EXPECT_EQ(sample.receivedAt->toUTC(), QDateTime::fromString(u"2026-03-02T07:10:00Z"_s, Qt::ISODate));
    // A name of two methods' measurands is expected of both.
    EXPECT_EQ(sample.expected,
              (std::map<QString, double>{{u"glucose"_s, 0.2}, {u"glucose-2"_s, 0.2}, {u"malic-acid"_s, 4}}));
}

TEST_F(ShelfText, ASolidMatrixIsASolidAndADayAloneBeginsAtMidnight)
{
    const ui::ShelfReading reading = read(
        {row(u"F-1"_s, {}, u"2026-02-28"_s, u"solid"_s), row(u"F-2"_s, {}, {}, u"solid"_s, u"liquid"_s)});
    EXPECT_TRUE(reading.problems.empty());
    EXPECT_EQ(reading.samples[0].form, run::Form::Solid);
    EXPECT_EQ(reading.samples[0].receivedAt->toUTC(),
              QDateTime::fromString(u"2026-02-27T23:00:00Z"_s, Qt::ISODate));
    EXPECT_EQ(reading.samples[1].form, run::Form::Liquid) << "what is said counts";
}

TEST_F(ShelfText, ADayOfASampleReadsBackAsADay)
{
    const ui::ShelfReading reading = read({row(u"F-1"_s, {}, u"2026-02-28"_s), row(u"F-2"_s, {}, u"2026-02-28 8:10"_s)});
    ASSERT_TRUE(reading.problems.empty());
    EXPECT_EQ(ui::shelfCells(reading.samples[0], names)[ui::shelf::Received], u"2026-02-28"_s);
    EXPECT_EQ(ui::shelfCells(reading.samples[1], names)[ui::shelf::Received], u"2026-02-28 08:10"_s);
}

TEST_F(ShelfText, AMethodThatMeasuresOneThingStandsForIt)
{
    assay::Method sulphite = measuring(u"total"_s, u"sulphite"_s, u"Total sulphite as SO2"_s);
    sulphite.name = u"Total sulphite (template)"_s;
    assay::Method two = measuring(u"two"_s, u"one"_s, u"First acid"_s);
    two.name = u"Two acids"_s;
    two.measurands.push_back(two.measurands.back());
    two.measurands.back().id = u"other"_s;
    const ui::MeasurandNames known({sulphite, two});
    for (const QString &text : {u"total sulphite"_s, u"TOTAL SULPHITE (template)"_s, u"Total sulphite as SO2"_s})
        EXPECT_EQ(known.idsOf(text), (std::vector<QString>{u"sulphite"_s})) << text.toStdString();
    EXPECT_TRUE(known.idsOf(u"Two acids"_s).empty()) << "which of the two?";
    EXPECT_TRUE(known.idsOf({}).empty());
    EXPECT_EQ(known.namesNearest(u"free sulphite"_s).front(), u"Total sulphite as SO2"_s);
}

TEST_F(ShelfText, EachFaultNamesItsRowAndColumnAndWhatWouldBeRight)
{
    using namespace ui::shelf;
    const ui::ShelfReading reading =
        read({row(u"P-1"_s), row({}), row(u"P-2"_s, u"malic acid"_s), row(u"P-3"_s, u"starch 2"_s),
              row(u"P-4"_s, {}, u"02.03.2026"_s), row(u"P-5"_s, {}, u"2026-03-03 8:00"_s),
              row(u"P-6"_s, {}, {}, u"murky"_s, u"gas"_s), row(u"p-1"_s), row(u"P-7"_s, u"D-glucose -1"_s)});
    struct Expected {
        int row;
        int column;
        const char *part;
    };
    const std::vector<Expected> expected{{1, Id, "the id cannot be used"},
                                         {2, ui::shelf::Expected, "does not end in a number"},
                                         {3, ui::shelf::Expected, "No method measures \"starch\""},
                                         {4, Received, "write the day as 2026-12-31"},
                                         {5, Received, "still to come"},
                                         {6, Matrix, "turbid"},
                                         {6, Form, "liquid or solid"},
                                         {7, Id, "stands in line 1 already"}};
    ASSERT_GE(reading.problems.size(), expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_EQ(reading.problems[i].row, expected[i].row);
        EXPECT_EQ(reading.problems[i].column, expected[i].column);
        EXPECT_TRUE(reading.problems[i].message.contains(QLatin1StringView(expected[i].part)))
            << reading.problems[i].message.toStdString();
    }
    EXPECT_EQ(reading.problems.back().row, 8);
    EXPECT_EQ(reading.problems.back().column, int{ui::shelf::Expected});
    EXPECT_EQ(reading.samples.size(), 9U) << "what is typed stays";
}

TEST_F(ShelfText, ANumberIsNoMatrixAndNoForm)
{
    // Of a column of expected values that was taken for the matrix.
    for (int number = 0; number < 8; ++number) {
        EXPECT_FALSE(ui::matrixOf(QString::number(number))) << number;
        EXPECT_FALSE(ui::formOf(QString::number(number))) << number;
    }
    EXPECT_EQ(ui::matrixOf(u"turbid"_s), assay::Matrix::Turbid);
}

TEST_F(ShelfText, CellsOfASampleReadBackAsTheSample)
{
    planning::ShelfSample sample;
    sample.id = u"F-22"_s;
    sample.product = u"Dried pear"_s;
    sample.matrix = assay::Matrix::Fatty;
    sample.form = run::Form::Solid;
    sample.receivedAt = QDateTime::fromString(u"2026-03-01T16:05:00+01:00"_s, Qt::ISODate);
    sample.receivedFrom = u"Packing hall"_s;
    sample.expected = {{u"glucose"_s, 12.5}, {u"glucose-2"_s, 12.5}, {u"malic-acid"_s, 0.4}};
    const ui::ShelfReading reading = read({ui::shelfCells(sample, names)});
    EXPECT_TRUE(reading.problems.empty());
    EXPECT_EQ(reading.samples.front(), sample);
    EXPECT_EQ(ui::expectedText(sample, names, true),
              u"D-Glucose 12.5\u00a0g/100\u00a0g; L-Malic acid 0.4\u00a0g/100\u00a0g"_s);
}

TEST_F(ShelfText, OneColumnIsTheSamplesAndSeveralAreByTheirOrder)
{
    const ui::PastedSamples column = ui::readPasted(u"P-1\nP-2\n\nP-3\n"_s, names);
    ASSERT_EQ(column.rows.size(), 3U);
    EXPECT_EQ(column.rows[2][ui::shelf::Id], u"P-3"_s);
    EXPECT_EQ(column.understood, u"Lines pasted: 3. Columns by their order: 1 = Sample."_s);

    const ui::PastedSamples several =
        ui::readPasted(u"P-1\tPerry\tturbid\tliquid\t8:10\tTank 3\tL-malic acid 2\tspare"_s, names);
    ASSERT_EQ(several.rows.size(), 1U);
    EXPECT_EQ(several.rows[0], (std::vector<QString>{u"P-1"_s, u"Perry"_s, u"turbid"_s, u"liquid"_s,
                                                     u"8:10"_s, u"Tank 3"_s, u"L-malic acid 2"_s}));
    EXPECT_EQ(several.leftOut, u"Not understood and left out: column 8."_s);
}

TEST_F(ShelfText, HeadsNameTheColumnsAndMeasurandsAreExpected)
{
    const ui::PastedSamples pasted =
        ui::readPasted(u"Product\tSample ID\tTank\tD-Glucose (g/L)\tL-malic acid\tDate\n"
                       "Perry\tP-1\t3\t1,5\t\t2026-03-01\nCider\tP-2\t4\t2\t3.5\t"_s,
                       names);
    ASSERT_EQ(pasted.rows.size(), 2U);
    EXPECT_EQ(pasted.rows[0][ui::shelf::Id], u"P-1"_s);
    EXPECT_EQ(pasted.rows[0][ui::shelf::Product], u"Perry"_s);
    EXPECT_EQ(pasted.rows[0][ui::shelf::Received], u"2026-03-01"_s);
    EXPECT_EQ(pasted.rows[0][ui::shelf::Expected], u"D-Glucose 1,5"_s);
    EXPECT_EQ(pasted.rows[1][ui::shelf::Expected], u"D-Glucose 2; L-malic acid 3.5"_s);
    EXPECT_EQ(pasted.leftOut, u"Not understood and left out: column 3 \"Tank\"."_s);
    EXPECT_TRUE(pasted.understood.contains(u"4 = D-Glucose expected"_s)) << pasted.understood.toStdString();
    EXPECT_TRUE(read(pasted.rows).problems.empty());
}

TEST_F(ShelfText, NothingAndTooMuchAreNotPasted)
{
    EXPECT_TRUE(ui::readPasted(u" \n"_s, names).rows.empty());
    EXPECT_TRUE(ui::readPasted(u" \n"_s, names).understood.contains(u"no text to paste"_s));
    QString much;
    for (int line = 0; line <= ui::mostPastedLines; ++line)
        much += u"P-%1\n"_s.arg(line);
    EXPECT_TRUE(ui::readPasted(much, names).rows.empty());
    EXPECT_EQ(ui::readPasted(much, names).understood,
              u"1001 lines are more than are taken at once; paste at most 1000."_s);
    much.truncate(much.size() - 7);
    EXPECT_EQ(ui::readPasted(much, names).rows.size(), 1000U);
}

} // namespace
} // namespace plateau::test
