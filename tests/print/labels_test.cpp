// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/labels.h"

#include "tests/print/printed.h"
#include "tests/print/racks.h"
#include "tests/print/spoken.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace plateau::ui {

using namespace Qt::StringLiterals;
using test::Printed;

namespace {

run::Run bench()
{
    run::Run run;
    run.standards = {{u"SO2 working standard"_s,
                      0.2,
                      {},
                      QDateTime(QDate(2026, 3, 2), QTime(8, 10), Qt::OffsetFromUTC, 3600),
                      {},
                      0.02}};
    run.samples = {test::liquid("Perry, tank 7"),
                   test::liquid("Ice cider, cask 12", {{5, 50, {}}, {2, 20, {}}}),
                   test::solid("Dried apricots", 5.012, 100, {{10, 25, {}}})};
    return run;
}

std::vector<Label> numbered(int count)
{
    std::vector<Label> labels;
    for (int i = 1; i <= count; ++i)
        labels.push_back({u"flask%1"_s.arg(i), u"1 in 10"_s, {}, {}, u"M. Keel"_s});
    return labels;
}

/// Where the word stands.
QPointF placeOf(const Printed &sheet, const QString &text)
{
    for (const Printed::Word &word : sheet.words()) {
        if (word.text == text)
            return word.area_mm.topLeft();
    }
    ADD_FAILURE() << text.toStdString() << " is not there";
    return {};
}

} // namespace

TEST(LabelsOf, NameStandardsAndEveryFlaskOfADilution)
{
    const std::vector<Label> labels = labelsOf(bench(), u"M. Keel"_s);
    ASSERT_EQ(labels.size(), 5u); // what is pipetted as it is needs none
    EXPECT_EQ(labels[0], (Label{u"SO2 working standard"_s, u"0.2\u00a0g/L"_s, u"2026-03-02 08:10"_s,
                                u"2026-03-02 16:12"_s, u"M. Keel"_s})); // 85 % left after 8.04 h
    EXPECT_EQ(labels[1].strength, u"1 in 10: 5 → 50\u00a0mL"_s);
    EXPECT_EQ(labels[2].strength, u"1 in 100: 5 → 50\u00a0mL, 2 → 20\u00a0mL"_s);
    EXPECT_EQ(labels[3].strength, u"extract: 5.012\u00a0g in 100\u00a0mL"_s);
    EXPECT_EQ(labels[4].strength, u"1 in 2.5: 10 → 25\u00a0mL"_s);
}

TEST(LabelsOf, HaveTheDecimalSignOfTheLocale)
{
    const test::Spoken spoken(u"de"_s);
    const std::vector<Label> labels = labelsOf(bench(), u"M. Keel"_s);
    ASSERT_EQ(labels.size(), 5u);
    EXPECT_EQ(labels[0].strength, u"0,2\u00a0g/L"_s);
    EXPECT_EQ(labels[3].strength, u"Extrakt: 5,012\u00a0g in 100\u00a0mL"_s);
    EXPECT_EQ(labels[4].strength, u"1 in 2,5: 10 → 25\u00a0mL"_s);
    // Of a standard in the book, whose strength is in C format.
    const Printed sheet(
        labelsPdf({{u"SO2"_s, u"0.2005 ± 0.0024\u00a0g/L"_s, {}, {}, {}}}, usualLabels(Paper::A4)));
    EXPECT_TRUE(sheet.text().contains(u"0,2005 ± 0,0024 g/L"_s)) << sheet.text().toStdString();
}

TEST(LabelsPdf, SaysWhatHowStrongMadeUseByAndByWhom)
{
    const Printed sheet(labelsPdf(labelsOf(bench(), u"M. Keel"_s), usualLabels(Paper::A4)));
    EXPECT_EQ(sheet.pages(), 1);
    const QString text = sheet.text();
    for (const QString &part :
         {u"SO2 working standard"_s, u"0.2 g/L"_s, u"made 2026-03-02 08:10"_s, u"use by 2026-03-02 16:12"_s,
          u"by M. Keel"_s, u"Ice cider, cask 12"_s, u"1 in 100: 5 → 50 mL, 2 → 20 mL"_s})
        EXPECT_TRUE(text.contains(part)) << part.toStdString() << " in " << text.toStdString();
}

TEST(LabelsPdf, BeginsAtTheFirstFreeLabelAndGoesOnOnTheNextSheet)
{
    const LabelSheet stock = usualLabels(Paper::A4);
    const Printed sheet(labelsPdf(numbered(70), stock, 12)); // third row, second column
    EXPECT_EQ(sheet.pages(), 2);
    const QPointF first = placeOf(sheet, u"flask1"_s);
    const QPointF corner(stock.left_mm + stock.width_mm + stock.columnGap_mm,
                         stock.top_mm + 2 * stock.height_mm);
    EXPECT_GT(first.x(), corner.x());
    EXPECT_LT(first.x(), corner.x() + 3);
    EXPECT_GT(first.y(), corner.y());
    EXPECT_LT(first.y(), corner.y() + stock.height_mm / 2);
    EXPECT_TRUE(sheet.text(1).contains(u"flask54"_s)); // 65 - 11
    EXPECT_TRUE(sheet.text(2).startsWith(u"flask55"_s));
}

TEST(LabelsPdf, KeepsEverythingOnItsLabelWhateverItsSizeAndName)
{
    const LabelSheet sheets[] = {
        usualLabels(Paper::A4),
        usualLabels(Paper::Letter),
        {Paper::A4, 10, 20, 18, 10, 10, 15, 1, 3},
        {Paper::A4, 1, 2, 190, 130, 10, 10, 0, 10},
    };
    const QString names[] = {u"Perry"_s, u"Keeved cider from the tank behind the press "_s.repeated(90),
                             QString(4096, u'W'), u"two\nlines"_s};
    for (const LabelSheet &stock : sheets) {
        ASSERT_EQ(faultOf(stock), QString());
        for (const QString &name : names) {
            const Printed sheet(labelsPdf({{name, name, name, name, name}}, stock, stock.columns));
            const double left_mm =
                stock.left_mm + (stock.columns - 1) * (stock.width_mm + stock.columnGap_mm);
            const QRectF label(left_mm, stock.top_mm, stock.width_mm, stock.height_mm);
            const auto words = sheet.words();
            EXPECT_FALSE(words.empty());
            for (const Printed::Word &word : words) {
                EXPECT_GE(word.area_mm.left(), label.left()) << word.text.toStdString();
                EXPECT_LE(word.area_mm.right(), label.right() + 0.01) << word.text.toStdString();
                EXPECT_GE(word.area_mm.center().y(), label.top()) << word.text.toStdString();
                EXPECT_LE(word.area_mm.center().y(), label.bottom()) << word.text.toStdString();
            }
        }
    }
}

TEST(LabelSheets, ThatCannotBeAreRefusedWithAReason)
{
    const auto changed = [](auto change) {
        LabelSheet sheet = usualLabels(Paper::A4);
        change(sheet);
        return sheet;
    };
    EXPECT_EQ(faultOf(usualLabels(Paper::A4)), QString());
    EXPECT_EQ(faultOf(usualLabels(Paper::Letter)), QString());
    const LabelSheet wrong[] = {
        changed([](LabelSheet &sheet) { sheet.columns = 0; }),
        changed([](LabelSheet &sheet) { sheet.rows = -1; }),
        changed([](LabelSheet &sheet) { sheet.columns = 6; }),
        changed([](LabelSheet &sheet) { sheet.rows = 14; }),
        changed([](LabelSheet &sheet) { sheet.width_mm = 10; }),
        changed([](LabelSheet &sheet) { sheet.height_mm = std::nan(""); }),
        changed([](LabelSheet &sheet) { sheet.left_mm = -1; }),
        changed([](LabelSheet &sheet) { sheet.paper = Paper::Letter; }),
    };
    for (const LabelSheet &sheet : wrong) {
        EXPECT_NE(faultOf(sheet), QString());
        EXPECT_TRUE(labelsPdf(numbered(1), sheet).isEmpty());
    }
    EXPECT_TRUE(labelsPdf(numbered(1), usualLabels(Paper::A4), 66).isEmpty());
    EXPECT_TRUE(labelsPdf(numbered(1), usualLabels(Paper::A4), 0).isEmpty());
}

} // namespace plateau::ui
