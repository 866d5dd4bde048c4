// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// What becomes of readings that are sent, read again, spoilt or to be repeated, by keys alone.
#include "tests/ui/keyboard.h"
#include "tests/ui/turnedclock.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/benchsettings.h"
#include "ui/bench/rackpicture.h"
#include "ui/bench/readpage.h"
#include "ui/bench/seriespicture.h"
#include "ui/bench/submission.h"
#include "ui/instrument/takenreading.h"
#include "ui/shared/table.h"

#include <QAbstractItemModel>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>

namespace plateau::test {
namespace {

class ReadActs : public Keyboard
{
protected:
    ReadActs()
    {
        book.reset();
        book = notebook::Notebook::create(folder.filePath(u"acts.plateau"_s), surroundingsOf(clocks));
    }

    void openAt(notebook::RunId run)
    {
        id = run;
        window = std::make_unique<ui::MainWindow>(*book, library, std::make_unique<QuietDialogs>(dialogs),
                                                  std::make_unique<TurnedClock>(clocks),
                                                  std::make_unique<QuietSounder>(heard));
        window->show();
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
        giveName();
        press(Qt::Key_2, Qt::ControlModifier);
    }

    ui::BenchSession &session() const { return *window->findChild<ui::BenchSession *>(); }
    ui::ReadPage &page() const { return *window->findChild<ui::ReadPage *>(); }
    notebook::StoredRun stored() const { return book->load(id); }
    void readAgain()
    {
        press(Qt::Key_I, Qt::AltModifier);
        ASSERT_TRUE(waitFor([&] {
            return page().findChild<QLabel *>(u"pendingCorrection"_s)->text().startsWith(u"Read again"_s);
        }));
        find<QLineEdit>(u"readingEntry"_s)->setFocus();
    }
    void pass(double seconds)
    {
        clocks->pass(seconds);
        session().tick();
    }

    static ui::Submission sent(double absorbance, const std::optional<QString> &tube = {})
    {
        return ui::submissionOf({absorbance, u"ABS  %1 A"_s.arg(absorbance), tube,
                                 ui::TakenReading::Origin::Serial, u"the old photometer"_s});
    }

    std::shared_ptr<Clocks> clocks = std::make_shared<Clocks>();
    notebook::RunId id;
};

TEST_F(ReadActs, WhatIsSentGoesIntoTheTubeThatIsDueWithItsLineBesideIt)
{
    openAt(addRun(exampleRun()));
    page().take({sent(0.101), sent(0.102)});
    const notebook::StoredRun run = stored();
    ASSERT_EQ(run.readings.size(), 2U);
    EXPECT_EQ(std::get<double>(run.run.tubes[0].readings.at(u"A1"_s)), 0.101);
    EXPECT_EQ(std::get<double>(run.run.tubes[1].readings.at(u"A1"_s)), 0.102);
    EXPECT_EQ(run.readings[1].origin.kind, notebook::ReadingOrigin::Kind::Serial);
    EXPECT_EQ(run.readings[1].origin.source, u"the old photometer"_s);
    EXPECT_EQ(run.readings[1].origin.line, u"ABS  0.102 A"_s);
    EXPECT_EQ(run.readings[1].person, u"R. Okafor"_s);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 3: A1"_s);
}

TEST_F(ReadActs, WhatIsSentAndCannotBeRightIsAskedAboutWhileTheOthersWait)
{
    openAt(addRun(exampleRun()));
    page().take({sent(0.101), sent(9.99), sent(0.103)});
    ASSERT_EQ(stored().readings.size(), 1U);
    EXPECT_EQ(find<QLineEdit>(u"readingEntry"_s)->text(), u"9.990"_s);
    EXPECT_TRUE(noticeText().contains(u"Enter again"_s)) << noticeText().toStdString();
    EXPECT_TRUE(page().hasWaiting());
    // Typed anew it was keyed, and the one behind it goes on as it came.
    press(Qt::Key_Escape);
    keyReading(u"0.102"_s);
    const notebook::StoredRun run = stored();
    ASSERT_EQ(run.readings.size(), 3U);
    EXPECT_EQ(run.readings[1].origin.kind, notebook::ReadingOrigin::Kind::Keyed);
    EXPECT_EQ(run.readings[2].origin.kind, notebook::ReadingOrigin::Kind::Serial);
    EXPECT_EQ(std::get<double>(run.run.tubes[2].readings.at(u"A1"_s)), 0.103);
    EXPECT_FALSE(page().hasWaiting());
}

TEST_F(ReadActs, WhatIsSentWaitsForWhatSomebodyIsTyping)
{
    openAt(addRun(exampleRun()));
    type(u"0.1"_s);
    page().take({sent(0.103)});
    EXPECT_TRUE(stored().readings.empty());
    EXPECT_EQ(find<QLineEdit>(u"readingEntry"_s)->text(), u"0.1"_s);
    EXPECT_TRUE(noticeText().startsWith(u"0.103 came from the photometer and waits"_s))
        << noticeText().toStdString();
    press(Qt::Key_Return);
    ASSERT_EQ(stored().readings.size(), 2U);
    EXPECT_EQ(std::get<double>(stored().run.tubes[0].readings.at(u"A1"_s)), 0.1);
    EXPECT_EQ(std::get<double>(stored().run.tubes[1].readings.at(u"A1"_s)), 0.103);
}

TEST_F(ReadActs, WhatWaitsForWhatIsTypedIsTakenOnceThatIsLeft)
{
    openAt(addRun(exampleRun()));
    type(u"0.1"_s);
    page().take({sent(0.103)});
    press(Qt::Key_Escape);
    ASSERT_EQ(stored().readings.size(), 1U);
    EXPECT_EQ(std::get<double>(stored().run.tubes[0].readings.at(u"A1"_s)), 0.103);
}

TEST_F(ReadActs, AColumnMaySayWhichTubeItMeans)
{
    openAt(addRun(exampleRun()));
    page().take({sent(0.103, u"3"_s), sent(0.104, u"p-104"_s), sent(0.105, u"nobody's"_s)});
    const notebook::StoredRun run = stored();
    ASSERT_EQ(run.readings.size(), 2U);
    EXPECT_EQ(run.readings[0].tube, 2);
    EXPECT_EQ(run.readings[1].tube, 3) << "the first of that sample without a reading";
    EXPECT_TRUE(noticeText().contains(u"nobody's"_s)) << noticeText().toStdString();
}

TEST_F(ReadActs, DigitsAloneAreThousandthsWhereThatIsChosen)
{
    openAt(addRun(exampleRun()));
    auto &settings = *window->findChild<ui::BenchSettings *>();
    ASSERT_TRUE(settings.setChoice({true, 50, 20, true}));
    type(u"102"_s);
    EXPECT_EQ(labelText(u"reply"_s), u"= 0.102"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(stored().readings.size(), 1U);
    EXPECT_EQ(std::get<double>(stored().readings[0].value), 0.102);
    EXPECT_EQ(stored().readings[0].typed, u"102"_s);
    keyReading(u"0,103"_s);
    EXPECT_EQ(std::get<double>(stored().readings[1].value), 0.103);
}

TEST_F(ReadActs, APointMayBeReadAgainAndAgain)
{
    run::Run run = exampleRun();
    const notebook::RunId rack = addRun(run);
    book->pipetting().markDone(
        rack, {{{0, u"buffer"_s, false}}, {{0, u"water"_s, false}}, {{0, u"sample"_s, false}}},
        u"R. Okafor"_s);
    openAt(rack);
    pass(4 * 60);
    page().goTo({0, u"A1"_s});
    keyReading(u"0.100"_s);
    for (int minute = 1; minute <= 2; ++minute) {
        pass(60);
        page().goTo({0, u"A1"_s});
        if (minute == 1)
            press(Qt::Key_I, Qt::AltModifier);
        ASSERT_TRUE(waitFor([&] {
            return page().findChild<QLabel *>(u"pendingCorrection"_s)->text().startsWith(u"Read again"_s);
        }));
        find<QLineEdit>(u"readingEntry"_s)->setFocus();
        keyReading(u"0.10%1"_s.arg(minute));
    }
    const auto series = std::get<run::ReadingSeries>(stored().run.tubes[0].readings.at(u"A1"_s));
    ASSERT_EQ(series.size(), 3U);
    EXPECT_NEAR(series[0].at_min, 4, 0.01);
    EXPECT_NEAR(series[2].at_min, 6, 0.01);
    EXPECT_EQ(series[2].absorbance, 0.102);
    const auto picture = ui::seriesAt(stored(), notebook::evaluationOf(stored()), {0, u"A1"_s});
    ASSERT_TRUE(picture);
    EXPECT_EQ(picture->points.size(), 3U);
    EXPECT_EQ(picture->start, u"Sample"_s) << "the last addition before A1";
    const auto *table = find<QTableView>(u"readingsTable"_s);
    EXPECT_EQ(table->model()->index(0, 2).data().toString(), u"0.102 (3×)"_s) << "nothing was replaced";
}

TEST_F(ReadActs, ALongNameGoesOnOnAnotherLine)
{
    run::Run run = exampleRun();
    run.samples[0].id = u"Ice cider of the northern slope, after its second racking and before the third, tank 9"_s;
    for (run::Tube &tube : run.tubes) {
        if (!tube.sample.isEmpty())
            tube.sample = run.samples[0].id;
    }
    openAt(addRun(run));
    window->resize(1280, 800);
    const auto *table = find<ui::Table>(u"readingsTable"_s);
    const auto isSettled = [table] {
        return table->rowHeight(2) > table->rowHeight(0) && !table->isCut(table->model()->index(2, 1));
    };
    EXPECT_TRUE(QTest::qWaitFor(isSettled)) << table->columnWidth(1);
}

TEST_F(ReadActs, ASeriesThatHasNotEndedIsAskedForAgainInItsOwnRhythm)
{
    const notebook::RunId rack = addRun(exampleRun());
    book->pipetting().markDone(
        rack, {{{0, u"buffer"_s, false}}, {{0, u"water"_s, false}}, {{0, u"sample"_s, false}}},
        u"R. Okafor"_s);
    openAt(rack);
    pass(4 * 60);
    page().goTo({0, u"A1"_s});
    keyReading(u"0.100"_s);
    pass(90);
    page().goTo({0, u"A1"_s});
    readAgain();
    keyReading(u"0.180"_s);
    const auto series = [&] {
        std::vector<ui::NextAction> all;
        for (const ui::NextAction &action : session().timed()) {
            if (action.readBefore > 0)
                all.push_back(action);
        }
        return all;
    };
    ASSERT_EQ(series().size(), 1U);
    EXPECT_EQ(series()[0].place, (ui::Place{0, u"A1"_s}));
    EXPECT_NEAR(series()[0].times->opens_s, 90, 0.1);
    EXPECT_NE(labelText(u"place"_s), u"Tube 1: A1"_s) << "not before its time";

    heard.clear();
    pass(1);
    pass(89);
    EXPECT_EQ(heard, std::vector{ui::Sound::Now});
    EXPECT_EQ(labelText(u"nextAction"_s), u"Rack A, tube 1: key A1 again"_s);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 1: A1"_s) << "the entry goes there by itself";
    keyReading(u"0.260"_s);
    ASSERT_EQ(series().size(), 1U);
    EXPECT_NEAR(series()[0].times->opens_s, 90, 0.1);
    heard.clear();
    pass(1);
    pass(89);
    EXPECT_EQ(heard, std::vector{ui::Sound::Now}) << "each further reading is heard";

    pass(95);
    EXPECT_TRUE(series().empty()) << "whoever lets one go by has done with it";
}

TEST_F(ReadActs, ASeriesThatHasEndedIsNotAskedForAgain)
{
    const notebook::RunId rack = addRun(exampleRun());
    book->pipetting().markDone(
        rack, {{{0, u"buffer"_s, false}}, {{0, u"water"_s, false}}, {{0, u"sample"_s, false}}},
        u"R. Okafor"_s);
    openAt(rack);
    pass(4 * 60);
    page().goTo({0, u"A1"_s});
    keyReading(u"0.100"_s);
    pass(90);
    page().goTo({0, u"A1"_s});
    readAgain();
    keyReading(u"0.100"_s);
    ASSERT_EQ(std::get<run::ReadingSeries>(stored().run.tubes[0].readings.at(u"A1"_s)).size(), 2U);
    ASSERT_TRUE(session().find(rack)->evaluation.series.at(0).ended);
    for (const ui::NextAction &action : session().timed())
        EXPECT_EQ(action.readBefore, 0);
}

TEST_F(ReadActs, ATubeIsSpoiltAndCountsAgain)
{
    openAt(addRun(exampleRun()));
    type(u"/"_s);
    ASSERT_EQ(focusName(), u"correctionReason"_s);
    press(Qt::Key_Return);
    EXPECT_TRUE(stored().run.tubes[0].spoilt.isEmpty()) << "not without a reason";
    type(u"dropped"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(stored().run.tubes[0].spoilt, u"dropped"_s);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 2: A1"_s);
    page().goTo({0, u"A1"_s});
    type(u"/"_s);
    type(u"it was another one"_s);
    press(Qt::Key_Return);
    EXPECT_TRUE(stored().run.tubes[0].spoilt.isEmpty());
}

TEST_F(ReadActs, ASampleThatIsTooStrongIsRepeatedInTheSameRack)
{
    run::Run run = exampleRun();
    for (std::size_t tube = 0; tube < run.tubes.size(); ++tube)
        run.tubes[tube].readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube < 2 ? 0.11 : 1.6}};
    run.tubes[3].readings.erase(u"A2"_s);
    openAt(addRun(run));
    keyReading(u"1.6"_s);
    ASSERT_TRUE(find<QPushButton>(u"addRepeat"_s));
    press(Qt::Key_D, Qt::AltModifier);
    ASSERT_TRUE(waitFor([&] { return stored().run.tubes.size() == 6; }));
    const notebook::StoredRun more = stored();
    EXPECT_EQ(more.run.samples.size(), 2U);
    EXPECT_EQ(more.run.samples[1].repeats, u"P-104"_s);
    EXPECT_GT(run::dilutionFactor(more.run.samples[1].dilution), 1);
    EXPECT_EQ(more.run.tubes[5].sample, more.run.samples[1].id);
    EXPECT_EQ(find<QTableView>(u"readingsTable"_s)->model()->rowCount(), 6);
    // Nobody ticked the rack as it was planned; what was added to it is led from its first addition on.
    ASSERT_TRUE(session().next());
    EXPECT_EQ(session().next()->kind, ui::NextAction::Kind::Pipette);
    EXPECT_EQ(session().next()->tube(), 4);
    const ui::PipetteSheet &sheet = session().find(id)->sheet;
    EXPECT_EQ(sheet.stateOf({0, 3}), ui::PipetteSheet::State::Passed);
    EXPECT_EQ(sheet.stateOf({0, 4}), ui::PipetteSheet::State::Due);
    EXPECT_FALSE(sheet.isReadable(4, u"A1"_s));
    EXPECT_TRUE(sheet.isReadable(3, u"A2"_s));
    EXPECT_TRUE(book->verify().sound());
}

TEST_F(ReadActs, AReadingThatIsKeyedTooEarlyIsAskedAboutFirst)
{
    const notebook::RunId rack = addRun(exampleRun());
    book->pipetting().markDone(
        rack, {{{0, u"buffer"_s, false}}, {{0, u"water"_s, false}}, {{0, u"sample"_s, false}}},
        u"R. Okafor"_s);
    openAt(rack);
    pass(60);
    page().goTo({0, u"A1"_s});
    keyReading(u"0.100"_s);
    EXPECT_TRUE(stored().readings.empty());
    EXPECT_TRUE(noticeText().contains(
        u"Tube 1: it is too early for A1. The method waits 3:00, of which 2:00 are left"_s))
        << noticeText().toStdString();
    EXPECT_TRUE(noticeText().contains(u"Press Enter again"_s));
    press(Qt::Key_Escape);
    EXPECT_TRUE(stored().readings.empty());
    pass(120);
    page().goTo({0, u"A1"_s});
    keyReading(u"0.100"_s);
    ASSERT_EQ(stored().readings.size(), 1U) << noticeText().toStdString();
    EXPECT_TRUE(noticeText().isEmpty()) << noticeText().toStdString();
}

TEST_F(ReadActs, WhatIsKeyedTooEarlyAllTheSameIsStoredWithTheSecondEnter)
{
    const notebook::RunId rack = addRun(exampleRun());
    book->pipetting().markDone(
        rack, {{{0, u"buffer"_s, false}}, {{0, u"water"_s, false}}, {{0, u"sample"_s, false}}},
        u"R. Okafor"_s);
    openAt(rack);
    pass(60);
    page().goTo({0, u"A1"_s});
    keyReading(u"0.100"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(stored().readings.size(), 1U);
    EXPECT_FALSE(noticeText().contains(u"was read"_s)) << "whoever was asked knows";
}

TEST_F(ReadActs, TheHeadOfTheRackCountsTheTubesThatWereAdded)
{
    run::Run run = exampleRun();
    for (std::size_t tube = 0; tube < run.tubes.size(); ++tube)
        run.tubes[tube].readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube < 2 ? 0.11 : 1.6}};
    run.tubes[3].readings.erase(u"A2"_s);
    openAt(addRun(run));
    EXPECT_TRUE(labelText(u"rackMethod"_s).endsWith(u"tubes: 4"_s));
    keyReading(u"1.6"_s);
    press(Qt::Key_D, Qt::AltModifier);
    ASSERT_TRUE(waitFor([&] { return stored().run.tubes.size() == 6; }));
    EXPECT_TRUE(labelText(u"rackMethod"_s).endsWith(u"tubes: 6"_s)) << labelText(u"rackMethod"_s).toStdString();
}

TEST_F(ReadActs, ThePipettingPageSaysToWaitUntilTheFirstTubeMayBeRead)
{
    const notebook::RunId rack = addRun(exampleRun());
    std::vector<notebook::DoneDose> done;
    for (const QString &component : {u"buffer"_s, u"water"_s, u"sample"_s}) {
        for (int tube = 0; tube < 4; ++tube)
            done.push_back({{tube, component, false}});
    }
    book->pipetting().markDone(rack, done, u"R. Okafor"_s);
    openAt(rack);
    press(Qt::Key_1, Qt::ControlModifier);
    pass(60);
    EXPECT_EQ(labelText(u"pipetteAction"_s), u"Wait, then read A1"_s);
    EXPECT_EQ(labelText(u"nextCountdown"_s), u"in 2:00"_s);
    pass(120);
    EXPECT_EQ(labelText(u"pipetteAction"_s), u"Now read A1"_s);
}

TEST_F(ReadActs, ThePictureSaysWhatWasLate)
{
    run::Run run = exampleRun();
    const notebook::RunId rack = addRun(run);
    book->pipetting().markDone(
        rack, {{{0, u"buffer"_s, false}}, {{0, u"water"_s, false}}, {{0, u"sample"_s, false}}},
        u"R. Okafor"_s);
    openAt(rack);
    const ui::Rack *own = session().find(rack);
    ui::TimeChartData picture = ui::pictureOf(*own, session().now_min(*own));
    ASSERT_EQ(ui::rowsOf(picture), 4);
    const auto &bars = ui::rowOf(picture, 0).bars;
    ASSERT_EQ(bars.back().kind, ui::TimeBar::Kind::Window);
    EXPECT_EQ(bars.back().start_s, 180);
    EXPECT_EQ(bars.back().end_s, 600);
    pass(11 * 60);
    page().goTo({0, u"A1"_s});
    keyReading(u"0.1"_s);
    own = session().find(rack);
    EXPECT_EQ(ui::untimelyText(*own, 0), u"A1 late by 1:00"_s);
    EXPECT_TRUE(ui::untimelyText(*own, 1).isEmpty());
}

TEST(TubeNamed, GoesByNumberAndByName)
{
    run::Run run = exampleRun();
    EXPECT_EQ(ui::tubeNamed(run, u" 2 "_s, u"A1"_s), 1);
    EXPECT_EQ(ui::tubeNamed(run, u"0"_s, u"A1"_s), std::nullopt);
    EXPECT_EQ(ui::tubeNamed(run, u"5"_s, u"A1"_s), std::nullopt);
    EXPECT_EQ(ui::tubeNamed(run, u"P-104"_s, u"A1"_s), 2);
    run.tubes[2].readings[u"A1"_s] = 0.1;
    EXPECT_EQ(ui::tubeNamed(run, u"P-104"_s, u"A1"_s), 3);
    EXPECT_EQ(ui::tubeNamed(run, u"P-104"_s, u"A2"_s), 2);
    run.tubes[3].spoilt = u"dropped"_s;
    EXPECT_EQ(ui::tubeNamed(run, u"P-104"_s, u"A1"_s), std::nullopt);
    EXPECT_EQ(ui::tubeNamed(run, u""_s, u"A1"_s), std::nullopt);
}

} // namespace
} // namespace plateau::test
