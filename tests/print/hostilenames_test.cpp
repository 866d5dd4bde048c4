// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheetpdf.h"

#include "tests/print/printed.h"
#include "tests/print/racks.h"
#include "tests/support/print.h"
#include "ui/print/canvas.h"
#include "ui/print/worksheettable.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace plateau::ui {

using namespace Qt::StringLiterals;
using test::Printed;

namespace {

const QString hebrew = u"סיידר אגסים 7"_s;

/// The sample of tubes 5 and 6 under that name, as no reader would let it in.
WorksheetContent withName(const QString &name)
{
    run::Run run = test::rackOf(24);
    run.samples[0].id = name;
    run.tubes[4].sample = name;
    run.tubes[5].sample = name;
    return test::sheetOf(run);
}

} // namespace

TEST(HostileNames, StayInTheirCell)
{
    const QString names[] = {
        QString(4096, u'W'),
        u"Keeved cider from the tank behind the press "_s.repeated(60),
        hebrew,
        hebrew.repeated(40),
        u"\u202ereversed\u202c name"_s,
        u"two\nlines\r\nand\ttabs\u2028more"_s,
        u"🍏🍐 cider 🧪"_s,
        u"🍏"_s.repeated(500),
        u"<b>bold</b> <img src=\"x\">"_s,
        u"e"_s + u"\u0301"_s.repeated(300),
        QString(u'\u0000') + u"nul"_s,
        u" "_s.repeated(300),
    };
    for (const QString &name : names) {
        SCOPED_TRACE(name.left(30).toStdString());
        const WorksheetContent content = withName(name);
        const Printed sheet(worksheetPdf(content, Paper::A4));
        EXPECT_LE(sheet.pages(), 2);
        const SheetTable table = tableOf(content, Paper::A4);
        const double left_mm = table.left_mm + table.number_mm;
        const double right_mm = left_mm + table.contents_mm;
        for (const Printed::Word &word : sheet.words()) {
            EXPECT_GE(word.area_mm.left(), 5) << word.text.toStdString();
            EXPECT_LE(word.area_mm.right(), sheet.pageSize_mm().width() - 5) << word.text.toStdString();
            // what begins in the column of contents, beside the rows, ends there
            const bool inColumn = word.page == 1 && word.area_mm.left() > left_mm &&
                                  word.area_mm.left() < right_mm && word.area_mm.top() > 97 &&
                                  word.area_mm.bottom() < 240;
            if (inColumn) {
                EXPECT_LE(word.area_mm.right(), right_mm + 0.01) << word.text.toStdString();
            }
        }
        // everybody else is where he was
        EXPECT_TRUE(sheet.text().contains(u"Perry, tank 9"_s));
    }
}

TEST(HostileNames, AreNeverTakenForMarkup)
{
    const QString text = Printed(worksheetPdf(withName(u"<b>tank</b>"_s), Paper::A4)).text();
    EXPECT_TRUE(text.contains(u"<b>tank</b>"_s)) << text.toStdString();
}

TEST(HostileNames, ThatAreCutStandBelowInFull)
{
    const QString name =
        u"Keeved cider from the tank behind the old press house, second racking, before sulphiting, "
        "drawn on the second of March by the night shift, bottle 4711"_s;
    const QString text = Printed(worksheetPdf(withName(name), Paper::A4)).text();
    EXPECT_TRUE(text.contains(u"Names in full tube 5: "_s + name)) << text.toStdString();
    EXPECT_FALSE(Printed(worksheetPdf(withName(u"Short"_s), Paper::A4)).text().contains(u"Names in full"_s));
}

TEST(HostileNames, OfEveryTubeStillGiveASheet)
{
    run::Run run = test::rackOf(96);
    for (std::size_t i = 0; i < run.samples.size(); ++i) {
        const QString name = QString(4000, u'M') + QString::number(i);
        for (run::Tube &tube : run.tubes) {
            if (tube.sample == run.samples[i].id)
                tube.sample = name;
        }
        run.samples[i].id = name;
    }
    run.title = QString(4000, u'T');
    WorksheetContent content = test::sheetOf(run);
    content.method.cautions.assign(20, QString(4000, u'c'));
    const Printed sheet(worksheetPdf(content, Paper::A4));
    const int pages = sheet.pages();
    EXPECT_GT(pages, 5);
    EXPECT_TRUE(sheet.text(pages).contains(u"page %1 of %1"_s.arg(pages)));
}

TEST(Printable, IsOneLineWithoutSignsThatReorder)
{
    EXPECT_EQ(printable(u"a\nb\u202ec\u2028d"_s), u"a b c d"_s);
    EXPECT_EQ(printable(QString(5000, u'x')).size(), 1001);
    EXPECT_EQ(printable(u"🍏"_s.repeated(1500)).toUcs4().size(), 1001);
}

} // namespace plateau::ui
