// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheettable.h"

#include "tests/print/racks.h"
#include "ui/print/worksheetlists.h"

#include <QRectF>

#include <gtest/gtest.h>

#include <numeric>

namespace plateau::ui {

using namespace Qt::StringLiterals;

namespace {

int tubesOn(const SheetPages &pages)
{
    return std::accumulate(pages.tubes.begin(), pages.tubes.end(), 0,
                           [](int sum, const auto &page) { return sum + page.second - page.first; });
}

/// Every so many tubes; none for 0.
std::vector<int> starts(int every, int tubes = 96)
{
    std::vector<int> found;
    for (int tube = 0; every > 0 && tube < tubes; tube += every)
        found.push_back(tube);
    return found;
}

} // namespace

TEST(SheetPages, HoldEveryTubeOnceInOrderAndInsideTheirRoom)
{
    for (int tubes = 1; tubes <= 96; ++tubes) {
        for (const int rackColumns : {0, 1, 6, 8, 96}) {
            for (const double tail_mm : {0.0, 30.0, 500.0}) {
                const SheetPages pages = pagesOf(tubes, 160, 220, tail_mm, starts(rackColumns));
                EXPECT_GE(pages.row_mm, smallestRow_mm);
                EXPECT_LE(pages.row_mm, largestRow_mm);
                int next = 0;
                for (const auto &[first, end] : pages.tubes) {
                    EXPECT_EQ(first, next);
                    EXPECT_GT(end, first);
                    EXPECT_LE((end - first) * pages.row_mm, (first == 0 ? 160 : 220) + 1e-6);
                    next = end;
                }
                EXPECT_EQ(next, tubes);
                EXPECT_EQ(tubesOn(pages), tubes);
            }
        }
    }
}

TEST(SheetPages, EndWithARowOfTheRackAndUseTheRoomForHighRows)
{
    const SheetPages two = pagesOf(30, 160, 220, 20, starts(6)); // 25 rows of 6.2 mm would fit on the first
    ASSERT_EQ(two.tubes.size(), 2u);
    EXPECT_EQ(two.tubes[0].second % 6, 0);
    EXPECT_EQ(pagesOf(8, 160, 220, 20, starts(6)).row_mm, largestRow_mm);
    const SheetPages tight = pagesOf(20, 160, 220, 20, {}); // (160 - 20) / 20 = 7.0
    ASSERT_EQ(tight.tubes.size(), 1u);
    EXPECT_NEAR(tight.row_mm, 7.0, 0.1001);
    EXPECT_FALSE(tight.tailApart);
}

TEST(SheetPages, GiveATailThatHasNoRoomAPageOfItsOwn)
{
    EXPECT_FALSE(pagesOf(8, 160, 220, 90, {}).tailApart);
    EXPECT_TRUE(pagesOf(8, 160, 220, 190, {}).tailApart);
}

TEST(SheetPages, LeaveNoSingleTubeOverWhereTheTailNeedsAPageAnyway)
{
    const SheetPages pages =
        pagesOf(24, 200, 240, 60, starts(2)); // 24 rows of 8.3 mm, and no room for the tail
    ASSERT_EQ(pages.tubes.size(), 1u);
    EXPECT_TRUE(pages.tailApart);
    EXPECT_NEAR(pages.row_mm, 8.3, 0.1001);
}

TEST(ListPages, HoldAsManyLinesAsFitAndOneAtLeast)
{
    using Pages = std::vector<std::pair<std::size_t, std::size_t>>;
    EXPECT_EQ(listPagesOf({}, 100), (Pages{{0, 0}}));
    EXPECT_EQ(listPagesOf({40, 60, 30}, 100), (Pages{{0, 2}, {2, 3}}));
    EXPECT_EQ(listPagesOf({120, 10, 95}, 100), (Pages{{0, 1}, {1, 2}, {2, 3}}));
}

TEST(SheetTable, StaysOnThePaperForEveryShippedMethod)
{
    for (const QString &id :
         {u"l-malic-acid"_s, u"total-sulphite"_s, u"acetic-acid"_s, u"ammonia-urea"_s, u"d-gluconic-acid"_s,
          u"glucose-after-starch-digestion"_s, u"glucose-fructose"_s}) {
        for (const Paper paper : {Paper::A4, Paper::Letter}) {
            const SheetTable table = tableOf(test::sheetOf(test::rackOf(24, id)), paper);
            const QSizeF sheet = sheetOf(paper, table.orientation).fullRect().size();
            EXPECT_LE(table.left_mm + table.width_mm, sheet.width() - 5) << id.toStdString();
            EXPECT_GE(table.contents_mm, 28) << id.toStdString();
            for (const SheetColumn &column : table.columns) {
                if (column.kind == SheetColumn::Kind::Round) {
                    EXPECT_GT(column.width_mm, tickBox_mm + 4) << id.toStdString();
                }
                if (column.kind == SheetColumn::Kind::Reading) {
                    EXPECT_GE(column.width_mm / column.values, 18) << id.toStdString();
                }
            }
        }
    }
}

TEST(SheetTable, IsUprightForTwoReadingsAndAcrossForThree)
{
    EXPECT_EQ(tableOf(test::sheetOf(test::rackOf(24)), Paper::A4).orientation, QPageLayout::Portrait);
    EXPECT_EQ(tableOf(test::sheetOf(test::rackOf(24, u"glucose-fructose"_s)), Paper::A4).orientation,
              QPageLayout::Landscape);
}

TEST(SheetTable, HasTheColumnsOfTheMethodsSteps)
{
    QStringList columns;
    for (const SheetColumn &column : tableOf(test::sheetOf(test::rackOf(8)), Paper::A4).columns)
        columns << (column.kind == SheetColumn::Kind::Round ? QString::number(column.round + 1)
                                                            : column.text);
    EXPECT_EQ(columns, (QStringList{u"1"_s, u"2"_s, u"3"_s, u"4"_s, u"5"_s, u"mix, wait 3 to 5\u00a0min"_s,
                                    u"A1"_s, u"6"_s, u"mix, wait 5 to 10\u00a0min"_s, u"A2"_s}));
    const auto starch =
        tableOf(test::sheetOf(test::rackOf(8, u"glucose-after-starch-digestion"_s)), Paper::A4);
    EXPECT_EQ(starch.columns.back().values, 4);
}

TEST(DoseText, HasTheDecimalsOfTheFinestVolumeAndNotTheDustOfSubtracting)
{
    planning::Round round;
    round.doses = {planning::Round::Dose{1.9, {}, false}, planning::Round::Dose{2.0 - 0.1 - 0.05, {}, true}};
    round.usualVolume_mL = 1.9;
    EXPECT_EQ(doseText(round, 1.9), u"1.90"_s);
    EXPECT_EQ(doseText(round, 2.0 - 0.1 - 0.05), u"1.85"_s);
    EXPECT_EQ(usualDoseText(round), u"1.90\u00a0mL"_s);
}

TEST(DoseText, IsInMicrolitresBelowAMillilitreAsThePipetteIsSet)
{
    planning::Round round;
    round.usualVolume_mL = 0.07;
    round.doses = {planning::Round::Dose{0.07, {}, false}, planning::Round::Dose{0.0125, {}, true},
                   planning::Round::Dose{1.2, {}, true}, planning::Round::Dose{0, {}, true}};
    EXPECT_EQ(usualDoseText(round), u"70.0\u00a0µL"_s);
    EXPECT_EQ(doseText(round, 0.0125), u"12.5"_s);
    EXPECT_EQ(doseText(round, 1.2), u"1.2\u00a0mL"_s) << "not the unit of its column";
    EXPECT_EQ(doseText(round, 0), u"0.0"_s);
}

} // namespace plateau::ui
