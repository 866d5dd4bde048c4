// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/pageflow.h"

#include "tests/print/printed.h"
#include "tests/print/racks.h"
#include "tests/print/reports.h"
#include "tests/support/print.h"
#include "ui/print/reporthead.h"
#include "ui/print/resultsreport.h"

#include <gtest/gtest.h>

// What stays together on a page, and what is set closer.

namespace plateau::ui {

using namespace Qt::StringLiterals;
using test::packed;
using test::Printed;

namespace {

constexpr double bottom_mm = 279; // of A4, above the foot

Printed flowed(const std::function<void(PageFlow &)> &write)
{
    return Printed(flowedPdf({u"Pages"_s, {}, {}, {}, u"foot"_s}, Paper::A4, write));
}

/// So many short parts with free room between them.
Printed spaced(int parts)
{
    return flowed([parts](PageFlow &flow) {
        for (int i = 0; i < parts; ++i) {
            flow.gap(10);
            flow.paragraph(u"part %1."_s.arg(i));
        }
    });
}

} // namespace

TEST(PageFlow, AShortParagraphIsNotTornApart)
{
    const QString words = u"beginning "_s + u"word "_s.repeated(60) + u"ending"_s;
    const Printed pages = flowed([&](PageFlow &flow) {
        flow.paragraph(u"first"_s);
        flow.advance(bottom_mm - 6 - flow.y_mm()); // room for one line
        flow.paragraph(words);
    });
    ASSERT_EQ(pages.pages(), 2);
    EXPECT_FALSE(pages.text(1).contains(u"beginning"_s));
    EXPECT_TRUE(pages.text(2).contains(u"beginning"_s));
    EXPECT_TRUE(pages.text(2).contains(u"ending"_s));
}

TEST(PageFlow, AHeightThatIsAskedForIsTheHeightThatIsTaken)
{
    flowed([](PageFlow &flow) {
        const QString text = u"word "_s.repeated(90);
        double begin = flow.y_mm();
        flow.paragraph(text, 7.5, 3);
        EXPECT_NEAR(flow.y_mm() - begin, flow.paragraphHeight_mm(text, 7.5, 3), 1e-9);
        const std::vector<PrintedField> fields{{u"short"_s, u"value"_s, 1}, {text, {}, 2}, {u"third"_s, text, 1}};
        begin = flow.y_mm();
        flow.fields(fields, 2, 9);
        EXPECT_NEAR(flow.y_mm() - begin, flow.fieldsHeight_mm(fields, 2, 9), 1e-9);
    });
}

TEST(PageFlow, ARunThatIsWiderThanItsColumnIsBrokenAtItsNoBreakSpaces)
{
    PrintedTable table;
    table.columns = {{u"head"_s, TableColumn::Fit::Wrap, false, false, 0.16}}; // 28 mm
    table.rows = {{u"garde\u00a0pour\u00a0l\u2019acceptation\u00a0180\u202fmg/L\u00a0et\u00a0davantage"_s}};
    const Printed page = flowed([&](PageFlow &flow) { flow.table(table); });
    QStringList words;
    for (const Printed::Word &word : page.words())
        words << word.text.split(QChar::Nbsp);
    for (const QString &word : {u"garde"_s, u"pour"_s, u"l\u2019acceptation"_s, u"180"_s, u"mg/L"_s, u"davantage"_s})
        EXPECT_TRUE(words.contains(word)) << word.toStdString() << " in " << words.join(u'|').toStdString();
}

TEST(PageFlow, AFieldHoldsAllThatWasKeyedForIt)
{
    const QString value = u"beginning "_s + u"of a long opinion "_s.repeated(100) + u"ending"_s; // 1716 signs
    const Printed page = flowed([&](PageFlow &flow) { flow.fields({{u"opinions"_s, value, 1}}, 2); });
    EXPECT_TRUE(packed(page.text()).contains(packed(value))) << page.text().toStdString();
}

TEST(PageFlow, CaptionsAreWrappedNotCut)
{
    const QString caption = u"Ergänzungen zum Verfahren, Abweichungen davon und Ausschlüsse daraus"_s;
    const Printed page = flowed([&](PageFlow &flow) {
        flow.fields({{caption, u"keine"_s, 1}, {u"kurz"_s, u"daneben"_s, 1}}, 3);
    });
    for (const QString &word : caption.split(u' '))
        EXPECT_TRUE(page.text().contains(word)) << word.toStdString();
    EXPECT_FALSE(page.text().contains(u'…'));
    // Values that stand side by side begin on one line.
    double left = 0;
    double right = 0;
    for (const Printed::Word &word : page.words()) {
        if (word.text == u"keine"_s)
            left = word.area_mm.top();
        if (word.text == u"daneben"_s)
            right = word.area_mm.top();
    }
    EXPECT_GT(left, 0);
    EXPECT_NEAR(left, right, 0.1);
}

TEST(PageFlow, WhatOnlyJustReachesASecondPageIsSetCloser)
{
    EXPECT_EQ(spaced(20).pages(), 1); // 287 mm at its usual spacing, of 263
    EXPECT_TRUE(spaced(20).text().contains(u"page 1 of 1"_s));
    const Printed two = spaced(34); // 488 mm, 286 at the closest
    EXPECT_EQ(two.pages(), 2);
    EXPECT_TRUE(two.text(2).contains(u"page 2 of 2"_s));
    EXPECT_FALSE(two.text(1).contains(u"part 19."_s)) << "as usual, where closer is of no use";
}

TEST(ResultsReport, NeverHasASignatureAloneOnAPage)
{
    for (int tubes = 24; tubes <= 96; tubes += 8) {
        SCOPED_TRACE(tubes);
        ReportContent content = test::reportOfRun(test::rackOf(tubes), test::shippedMethod(u"l-malic-acid"_s));
        test::accept(content);
        const Printed report(resultsReportPdf(content, Paper::A4));
        const QString last = report.text(report.pages());
        for (const QString &part :
             {u"relate only to the items tested"_s, u"Record: run 12 of cellar.plateau"_s, u"authorised by"_s,
              u"signature"_s, u"End of report"_s})
            EXPECT_TRUE(last.contains(part)) << part.toStdString();
        EXPECT_TRUE(packed(last).contains(QString(64, u'c'))) << "the record's line is whole";
    }
}

} // namespace plateau::ui
