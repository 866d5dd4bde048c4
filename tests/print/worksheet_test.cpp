// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheetpdf.h"

#include "core/run/runcode.h"
#include "tests/print/printed.h"
#include "tests/print/racks.h"
#include "tests/support/print.h"
#include "ui/print/worksheettable.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace plateau::ui {

using namespace Qt::StringLiterals;
using test::Printed;

namespace {

Printed printed(const WorksheetContent &content)
{
    return Printed(worksheetPdf(content, Paper::A4));
}

/// Of a method with that many additions.
Printed printedWith(std::size_t additions)
{
    WorksheetContent content = test::sheetOf(test::rackOf(8));
    while (content.rounds.size() < additions) {
        planning::Round round = content.rounds.front();
        round.name = u"Reagent %1"_s.arg(content.rounds.size() + 1);
        content.rounds.push_back(round);
    }
    return printed(content);
}

} // namespace

TEST(Worksheet, TakesOnePageForARackOfTwentyFourAndAsManyAsNeededForMore)
{
    const std::pair<int, int> expected[] = {{8, 1}, {24, 1}, {48, 2}, {96, 4}}; // of 96 sixteen samples are diluted
    for (const auto &[tubes, pages] : expected)
        EXPECT_EQ(printed(test::sheetOf(test::rackOf(tubes))).pages(), pages) << tubes;
}

TEST(Worksheet, HoldsEveryTubeWithItsNamePreparationVolumesAndLots)
{
    const WorksheetContent content = test::sheetOf(test::rackOf(48));
    const Printed sheet = printed(content);
    const QString text = sheet.text();
    for (const run::Sample &sample : content.run.samples)
        EXPECT_TRUE(text.contains(sample.id)) << sample.id.toStdString();
    for (const QString &part :
         {u"Tanks, 48 tubes"_s, u"L-malic acid in wine"_s, u"version 1"_s, u"Working standard"_s,
          u"standard, 0.2 g/L"_s, u"sample, 5 → 50 mL, 2 → 20 mL"_s, u"B-0226"_s, u"use by 2026-09-30"_s,
          u"SO-0391"_s, u"swirl"_s, u"2026-03-02"_s, u"09:10"_s, u"mix, wait 3 to 5 min"_s,
          u"piston pipette 100 to 1000 µL"_s})
        EXPECT_TRUE(text.contains(part)) << part.toStdString();
    for (const planning::Round &round : content.rounds)
        EXPECT_TRUE(text.contains(round.name)) << round.name.toStdString();
    for (const QString &caution : content.method.cautions)
        EXPECT_TRUE(text.contains(caution)) << caution.toStdString();

    const auto words = sheet.words();
    const auto count = [&](const QString &word) {
        return std::ranges::count_if(words, [&](const Printed::Word &each) { return each.text == word; });
    };
    for (int tube = 1; tube <= 48; ++tube)
        EXPECT_GE(count(QString::number(tube)), 1) << tube;
    // two suspensions of 10 µL in every tube, in the list and over two columns on two pages: as the pipette is set
    EXPECT_GE(count(u"10"_s), 2 * 48 + 2 + 2 * 2);
    EXPECT_EQ(count(u"0.01"_s), 0);
    EXPECT_EQ(count(u"800"_s), 1); // what the diluent gives up for 200 µL of sample
}

TEST(Worksheet, ListsDilutionsToTickAheadOfTheAdditionsLargeEnoughForAnArmsLength)
{
    run::Run run = test::rackOf(24);
    run.samples[0].dilution = {{0.1, 10, {}}};
    const WorksheetContent content = test::sheetOf(run);
    const Printed sheet = printed(content);
    EXPECT_TRUE(sheet.text(1).contains(u"Dilute 100 µL → 10 mL: Perry, tank 1"_s)) << sheet.text(1).toStdString();
    EXPECT_TRUE(sheet.text(1).contains(u"Dilute 5 → 50 mL, 2 → 20 mL: Perry, tank 2"_s)) << sheet.text(1).toStdString();
    const auto words = sheet.words();
    const auto dilute = std::ranges::find(words, u"Dilute"_s, &Printed::Word::text);
    const auto buffer = std::ranges::find(words, u"Buffer"_s, &Printed::Word::text);
    const auto below = std::ranges::find(words, u"sample,"_s, &Printed::Word::text);
    ASSERT_TRUE(dilute != words.end() && buffer != words.end() && below != words.end());
    EXPECT_LT(dilute->area_mm.bottom(), buffer->area_mm.top() + 1);
    EXPECT_GT(dilute->area_mm.height(), 1.3 * below->area_mm.height()) << "9 to 6.5 points";
    for (run::Sample &sample : run.samples)
        sample.dilution.clear();
    EXPECT_FALSE(printed(test::sheetOf(run)).text().contains(u"Dilute"_s));
}

TEST(Worksheet, SaysWhenAStandardThatLosesStrengthWasMadeAndHowMuchItLoses)
{
    run::Run run = test::rackOf(8);
    run::Standard &standard = run.standards[0];
    standard.concentration_g_per_L = 0.201999;
    standard.uncertainty_percent = 0.3;
    EXPECT_FALSE(printed(test::sheetOf(run)).text().contains(u"per hour"_s)) << "it loses none";
    standard.lossPerHour = 0.02;
    standard.preparedAt = QDateTime(QDate(2026, 3, 2), QTime(8, 10), Qt::OffsetFromUTC, 3600);
    const QString text = printed(test::sheetOf(run)).text(1);
    EXPECT_TRUE(text.contains(u"Working standard: 0.2020 g/L, made 2026-03-02 08:10, loses 2 % per hour"_s))
        << text.toStdString();
    EXPECT_TRUE(text.contains(u"standard, 0.2020 g/L"_s)) << text.toStdString();
    EXPECT_FALSE(text.contains(u"0.201999"_s));
    standard.preparedAt.reset();
    EXPECT_TRUE(printed(test::sheetOf(run)).text(1).contains(u"made ______________, loses 2 % per hour"_s));
}

TEST(Worksheet, SaysWhenEachTubeIsStartedBesideItsDose)
{
    WorksheetContent content = test::sheetOf(test::rackOf(8));
    content.startInterval_s = 40;
    content.startAt_s[content.rounds.back().step] = {615, 655, 695, 735, 775, 815, 855, 895};
    const Printed sheet = printed(content);
    const auto words = sheet.words();
    const auto first = std::ranges::find(words, u"10:15"_s, &Printed::Word::text);
    const auto last = std::ranges::find(words, u"14:55"_s, &Printed::Word::text);
    ASSERT_TRUE(first != words.end() && last != words.end());
    EXPECT_NEAR(first->area_mm.right(), last->area_mm.right(), 0.2) << "one column";
    EXPECT_LT(first->area_mm.bottom(), last->area_mm.top());
}

TEST(Worksheet, BreaksTheNamesOverItsColumnsAtAHyphenAndNotWithinAWord)
{
    WorksheetContent content = test::sheetOf(test::rackOf(8));
    content.rounds[1].name = u"NADH/NADH-Peroxidase-Loesung"_s;
    const Printed sheet = printed(content);
    const auto words = sheet.words();
    const auto has = [&](const QString &text) {
        return std::ranges::any_of(words, [&](const Printed::Word &word) { return word.text.endsWith(text); });
    };
    EXPECT_TRUE(has(u"Peroxidase-"_s)) << sheet.text().toStdString();
}

TEST(Worksheet, RepeatsHeadCodeAndColumnsOnEveryPage)
{
    run::Run run = test::rackOf(96);
    for (run::Sample &sample : run.samples)
        sample.dilution.clear();
    const WorksheetContent content = test::sheetOf(run);
    const Printed sheet = printed(content);
    const int pages = sheet.pages();
    for (int page = 1; page <= pages; ++page) {
        const QString text = sheet.text(page);
        for (const QString &part :
             {u"Tanks, 96 tubes"_s, u"page %1 of %2"_s.arg(page).arg(pages), u"A1"_s, u"A2"_s, u"reads"_s,
              run::groupedCode(run::runCode(content.run, content.method.version))})
            EXPECT_TRUE(text.contains(part)) << page << ": " << part.toStdString();
    }
    EXPECT_EQ(sheet.text().count(u"Cautions"_s), 1);
}

TEST(Worksheet, BeginsTheTableOnAPageOfItsOwnWhereAdditionsLeaveItNoRoom)
{
    const Printed sheet = printedWith(30);
    ASSERT_GE(sheet.pages(), 2);
    const QString first = sheet.text(1);
    for (const QString &part : {u"Tanks, 8 tubes"_s, u"L-malic acid in wine"_s, u"Reagent 30"_s, u"page 1 of %1"_s.arg(sheet.pages())})
        EXPECT_TRUE(first.contains(part)) << part.toStdString();
    EXPECT_FALSE(first.contains(u"reads"_s)) << "no table that has no room there: " << first.toStdString();
    const QString second = sheet.text(2);
    for (const QString &part : {u"Tanks, 8 tubes"_s, u"Perry, tank 1"_s, u"Perry, tank 2"_s, u"A1"_s})
        EXPECT_TRUE(second.contains(part)) << part.toStdString();
    for (const Printed::Word &word : sheet.words())
        EXPECT_LE(word.area_mm.bottom(), sheet.pageSize_mm().height() - 5) << word.text.toStdString();
}

TEST(Worksheet, GoesOnWithTheAdditionsOnTheNextPageAndThenWithTheTable)
{
    const Printed sheet = printedWith(40);
    ASSERT_GE(sheet.pages(), 2);
    EXPECT_TRUE(sheet.text(1).contains(u"Reagent 30"_s));
    EXPECT_FALSE(sheet.text(1).contains(u"Reagent 40"_s));
    for (const QString &part : {u"Tanks, 8 tubes"_s, u"Reagent 40"_s, u"Perry, tank 1"_s, u"A1"_s})
        EXPECT_TRUE(sheet.text(2).contains(part)) << part.toStdString();
    for (const Printed::Word &word : sheet.words())
        EXPECT_LE(word.area_mm.bottom(), sheet.pageSize_mm().height() - 5) << word.text.toStdString();
}

TEST(Worksheet, CarriesACodeThatAScannerReads)
{
    const WorksheetContent content = test::sheetOf(test::rackOf(48));
    const QString code = run::runCode(content.run, content.method.version);
    const QStringList scanned = printed(content).codes();
    EXPECT_EQ(scanned, (QStringList{run::scannedText(code), run::scannedText(code)}));
    EXPECT_EQ(run::runCodeIn(scanned.front()), code);
}

TEST(Worksheet, EmbedsItsFonts)
{
    const auto fonts = printed(test::sheetOf(test::rackOf(8))).fonts();
    EXPECT_GE(fonts.size(), 2u);
    for (const auto &[name, embedded] : fonts)
        EXPECT_TRUE(embedded) << name.toStdString();
}

TEST(Worksheet, ShowsAnOddVolumeWhiteOnBlack)
{
    const Printed sheet = printed(test::sheetOf(test::rackOf(24)));
    const QImage page = sheet.image(1);
    int odd = 0;
    int usual = 0;
    for (const Printed::Word &word : sheet.words()) {
        if (word.text == "800"_L1) {
            ++odd;
            EXPECT_GT(test::darkPart(page, word.area_mm), 0.6);
        } else if (word.text == "900"_L1) {
            ++usual;
            EXPECT_LT(test::darkPart(page, word.area_mm), 0.4);
        }
    }
    EXPECT_EQ(odd, 1);
    EXPECT_EQ(usual, 23 + 2); // and in the list and over the column
}

TEST(Worksheet, GivesAGlovedHandABoxOfFourMillimetresBesideEveryVolume)
{
    const Printed sheet = printed(test::sheetOf(test::rackOf(24)));
    const QImage page = sheet.image(1);
    int boxes = 0;
    const auto words = sheet.words();
    const auto caption = std::ranges::find(words, u"reads"_s, &Printed::Word::text);
    ASSERT_NE(caption, words.end());
    for (const Printed::Word &word : words) {
        if (word.text != "900"_L1 ||
            word.area_mm.bottom() < caption->area_mm.bottom() + 1) // the list and the head of the table
            continue;
        // to the left of the number stands the box's right side, and 4 mm of white before it
        const double y = word.area_mm.center().y();
        int x = static_cast<int>(word.area_mm.left() * 10) - 1;
        const int row = static_cast<int>(y * 10);
        const auto isDark = [&](int at) { return qGray(page.pixel(at, row)) < 128; };
        while (!isDark(x))
            --x;
        while (isDark(x))
            --x;
        int white = 0;
        while (!isDark(x - white))
            ++white;
        EXPECT_GE(white, 40);
        EXPECT_LE(white, 46);
        ++boxes;
    }
    EXPECT_EQ(boxes, 23);
}

TEST(Worksheet, NamesWhatStandsInAndWhatIsDue)
{
    WorksheetContent content = test::sheetOf(test::rackOf(8));
    content.startInterval_s = 40;
    content.readAt_s[u"A1"_s] = {300, 340, 380, 420, 460, 500, 540, 580};
    content.person = u"M. Keel"_s;
    content.laboratory = u"Orchard laboratory"_s;
    const Printed sheet = printed(content);
    const QString text = sheet.text();
    for (const QString &part : {u"start the next one every 40 s"_s, u"M. Keel"_s, u"Orchard laboratory"_s})
        EXPECT_TRUE(text.contains(part)) << part.toStdString();
    const auto words = sheet.words();
    const auto count = [&](const QString &word) {
        return std::ranges::count_if(words, [&](const Printed::Word &each) { return each.text == word; });
    };
    EXPECT_EQ(count(u"Water"_s), 2 + 2); // in both blanks, the list and the head
    EXPECT_EQ(count(u"5:40"_s), 1);
    EXPECT_EQ(count(u"9:40"_s), 1);
}

TEST(Worksheet, GivesSpikesAColumnAndSpoiltTubesAWord)
{
    run::Run run = test::rackOf(8);
    run.tubes[7].role = run::Role::Spiked;
    run.tubes[7].sampleVolume_mL.reset();
    run.tubes[7].spike = run::Spike{u"Working standard"_s, 0.15};
    run.tubes[5].spoilt = u"knocked over"_s;
    const Printed sheet = printed(test::sheetOf(run));
    const QString text = sheet.text();
    EXPECT_TRUE(text.contains(u"Spike"_s));
    EXPECT_TRUE(text.contains(u"150"_s));
    EXPECT_TRUE(text.contains(u"tube 6: knocked over"_s)) << text.toStdString();
    EXPECT_TRUE(text.contains(u"–"_s)); // the others get none
}

TEST(Worksheet, NamesBothLotsWhereOneIsNotEnoughBelowTheirAddition)
{
    WorksheetContent content = test::sheetOf(test::rackOf(8));
    const QDate first(2026, 9, 30);
    const QDate second(2027, 1, 31);
    content.lotsByRound[0] = {{{}, 0, 4, false, u"B-0226"_s, first, false},
                              {{}, 5, 7, true, u"B-0301"_s, second, false}};
    const Printed sheet = printed(content);
    EXPECT_EQ(sheet.pages(), 1);
    const QString text = sheet.text();
    EXPECT_TRUE(text.contains(u"Tubes 1 to 5: lot B-0226; from tube 6 on: lot B-0301, use by 2027-01-31"_s))
        << text.toStdString();
    EXPECT_EQ(text.count(u"use by 2026-09-30"_s), 1) << "in the row";
    const auto words = sheet.words();
    const auto inRow = std::ranges::find(words, u"B-0226"_s, &Printed::Word::text);
    const auto below = std::ranges::find(words, u"B-0301,"_s, &Printed::Word::text);
    const auto next = std::ranges::find(words, u"NAD"_s, &Printed::Word::text);
    ASSERT_TRUE(inRow != words.end() && below != words.end() && next != words.end());
    EXPECT_GT(below->area_mm.top(), inRow->area_mm.center().y());
    EXPECT_LT(below->area_mm.bottom(), next->area_mm.bottom()) << "before the next addition";
    EXPECT_LT(below->area_mm.center().y(), next->area_mm.top());
}

TEST(Worksheet, NamesTheLotThatIsReallyTakenAndSaysWhereNoneIsEnough)
{
    WorksheetContent content = test::sheetOf(test::rackOf(8));
    const QDate day(2027, 1, 31);
    content.lotsByRound[0] = {{{}, 0, 7, true, u"B-0301"_s, day, false}};
    const QString other = printed(content).text();
    EXPECT_TRUE(other.contains(u"B-0301"_s) && other.contains(u"use by 2027-01-31"_s)) << other.toStdString();
    EXPECT_FALSE(other.contains(u"B-0226"_s) || other.contains(u"use by 2026-09-30"_s))
        << "the named one is empty";
    EXPECT_FALSE(other.contains(u"from tube"_s, Qt::CaseInsensitive)) << "one for all is said in the row";

    content.lotsByRound[0] = {{{}, 0, 0, false, u"B-0226"_s, {}, false},
                              {{}, 1, 3, false, u"B-0226"_s, day, true},
                              {{}, 4, 7, true, {}, {}, false}};
    content.lotsByRound[4] = {{u"Water"_s, 0, 1, true, u"W-2"_s, {}, false}};
    const QString text = printed(content).text();
    EXPECT_TRUE(text.contains(
        u"Tube 1: lot B-0226; tubes 2 to 4: another container of lot B-0226, use by 2027-01-31; from "
        "tube 5 on: by the book no lot is enough"_s))
        << text.toStdString();
    EXPECT_TRUE(text.contains(u"Water, tubes 1 to 2: lot W-2"_s))
        << "where it stands in: " << text.toStdString();
}

TEST(Worksheet, FitsLetterPaperToo)
{
    const Printed sheet(worksheetPdf(test::sheetOf(test::rackOf(24)), Paper::Letter));
    QSizeF size = sheet.pageSize_mm();
    if (size.width() > size.height())
        size.transpose();
    EXPECT_NEAR(size.width(), 215.9, 0.5);
    EXPECT_NEAR(size.height(), 279.4, 0.5);
    for (const Printed::Word &word : sheet.words()) {
        EXPECT_GE(word.area_mm.left(), 5) << word.text.toStdString();
        EXPECT_LE(word.area_mm.right(), sheet.pageSize_mm().width() - 5) << word.text.toStdString();
        EXPECT_LE(word.area_mm.bottom(), sheet.pageSize_mm().height() - 5) << word.text.toStdString();
    }
}

TEST(WorksheetFileName, KeepsTheTitleWithoutWhatFoldersDoNotTake)
{
    run::Run run;
    run.title = u"Perry/cider: \"tanks\" <7>\nmorning"_s;
    EXPECT_EQ(worksheetFileName(run), u"Worksheet Perry-cider- -tanks- -7- morning.pdf"_s);
    run.title.clear();
    EXPECT_EQ(worksheetFileName(run), u"Worksheet.pdf"_s);
}

} // namespace plateau::ui
