// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/shared/problemlist.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTextBrowser>

#include <functional>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

/// Everything in here is done by keys alone.
class Keyboard : public WindowBench
{
protected:
    /// A button that is pressed by its letter is shown going down and up before it acts.
    static bool waitFor(const std::function<bool()> &happened) { return QTest::qWaitFor(happened); }
    void giveName()
    {
        press(Qt::Key_P, Qt::AltModifier);
        ASSERT_EQ(focusName(), u"person"_s);
        type(u"R. Okafor"_s);
        press(Qt::Key_Return);
    }
    void keyReading(const QString &text)
    {
        ASSERT_EQ(focusName(), u"readingEntry"_s);
        type(text);
        press(Qt::Key_Enter, Qt::KeypadModifier);
    }
    /// To that column of the samples' table, by its heading.
    void goToColumn(const QString &heading)
    {
        tabTo(u"samples"_s);
        const auto *table = find<QTableView>(u"samples"_s);
        for (int step = 0; step < table->model()->columnCount(); ++step) {
            const int column = table->currentIndex().column();
            if (table->model()->headerData(column, Qt::Horizontal).toString() == heading)
                return;
            press(Qt::Key_Right);
        }
        FAIL() << "no column " << heading.toStdString();
    }

    void keyWholeRun()
    {
        for (const QString &text :
             {u"0,100"_s, u"0.101"_s, u"0,120"_s, u".121"_s, u"0,110"_s, u"0.111"_s, u"0,630"_s, u"0.633"_s})
            keyReading(text);
    }
};

TEST_F(Keyboard, AWholeRunFromNewRunToAcceptAndFoundAgain)
{
    openWindow();
    EXPECT_EQ(labelText(u"nextAction"_s), u"Nothing due"_s);
    giveName();
    press(Qt::Key_N, Qt::ControlModifier);
    tabTo(u"title"_s);
    type(u"Perry tanks, morning"_s);
    tabTo(u"sampleNames"_s);
    type(u"P-104"_s);
    goToColumn(u"Take (mL)"_s);
    type(u"5"_s);
    press(Qt::Key_Return);
    press(Qt::Key_Right);
    type(u"50"_s);
    press(Qt::Key_Return);
    tabTo(u"putOnBench"_s);
    EXPECT_EQ(find<ui::ProblemList>(u"newRunProblems"_s)->model()->rowCount(), 0)
        << find<ui::ProblemList>(u"newRunProblems"_s)->model()->index(0, 0).data().toString().toStdString();
    press(Qt::Key_Return);

    EXPECT_EQ(labelText(u"nextAction"_s), u"Rack A, tube 1: add 1\u00a0mL Buffer pH 9"_s);
    press(Qt::Key_2, Qt::ControlModifier); // pipetted from paper
    EXPECT_EQ(labelText(u"place"_s), u"Tube 1: A1"_s);
    EXPECT_EQ(labelText(u"contents"_s), u"blank, 1 of 2"_s);
    keyReading(u"0,100"_s);
    EXPECT_EQ(labelText(u"nextAction"_s), u"Rack A, tube 2: key A1"_s);
    EXPECT_EQ(labelText(u"nextProgress"_s), u"Rack A: 1 of 8 read"_s);
    for (const QString &text :
         {u"0.101"_s, u"0,120"_s, u".121"_s, u"0,110"_s, u"0.111"_s, u"0,630"_s, u"0.633"_s})
        keyReading(text);

    EXPECT_EQ(labelText(u"nextAction"_s), u"Rack A: review and decide"_s);
    EXPECT_EQ(focusName(), u"toReview"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"verdict"_s), u"All results are reportable"_s);
    // Net signals 0.510 - 0.010 and 0.512 - 0.010, mean 0.501, x 0.33651 g/L x 10.
    const auto *results = find<QTableView>(u"results"_s);
    EXPECT_TRUE(results->model()->index(0, 2).data().toString().startsWith(u"1.68"_s));
    EXPECT_TRUE(find<QTextBrowser>(u"working"_s)->toPlainText().contains(u"0.63 - 0.12"_s));
    press(Qt::Key_A, Qt::AltModifier);

    ASSERT_EQ(book->runs().size(), 1U);
    ASSERT_TRUE(waitFor([&] { return book->runs()[0].state == notebook::RunState::Accepted; }));
    EXPECT_EQ(book->runs()[0].decidedBy, u"R. Okafor"_s);
    const notebook::StoredRun stored = book->load(book->runs()[0].id);
    EXPECT_EQ(stored.readings.size(), 8U);
    EXPECT_EQ(stored.readings[3].typed, u".121"_s);
    EXPECT_EQ(std::get<double>(stored.readings[3].value), 0.121);
    EXPECT_EQ(labelText(u"nextAction"_s), u"Nothing due"_s);

    press(Qt::Key_B, Qt::ControlModifier);
    ASSERT_EQ(focusName(), u"notebookFilter"_s);
    type(u"p-104 accepted"_s);
    const auto *runs = find<QTableView>(u"runs"_s);
    ASSERT_EQ(runs->model()->rowCount(), 1);
    press(Qt::Key_Return);
    EXPECT_EQ(focusName(), u"runs"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"recordTitle"_s), u"Perry tanks, morning"_s);
    EXPECT_EQ(labelText(u"verdict"_s), u"All results are reportable"_s);
    EXPECT_TRUE(noticeText().isEmpty()) << noticeText().toStdString();
}

TEST_F(Keyboard, ASampleGetsABlankOfItsOwnByTheSpaceBar)
{
    openWindow();
    giveName();
    press(Qt::Key_N, Qt::ControlModifier);
    tabTo(u"title"_s);
    type(u"Red fruit ciders"_s);
    tabTo(u"sampleNames"_s);
    type(u"C-3"_s);
    goToColumn(u"Sample blank"_s);
    press(Qt::Key_Space);
    tabTo(u"putOnBench"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(book->runs().size(), 1U);
    const notebook::StoredRun stored = book->load(book->runs()[0].id);
    ASSERT_EQ(stored.run.tubes.size(), 5U);
    EXPECT_EQ(stored.run.tubes[4].role, run::Role::SampleBlank);
    EXPECT_EQ(stored.run.tubes[4].sample, u"C-3"_s);
}

TEST_F(Keyboard, ADilutionInTwoStepsIsKeyedAndAStepTakenAway)
{
    openWindow();
    giveName();
    press(Qt::Key_N, Qt::ControlModifier);
    tabTo(u"title"_s);
    type(u"Concentrate"_s);
    tabTo(u"sampleNames"_s);
    type(u"C-1"_s);
    goToColumn(u"Take (mL)"_s);
    type(u"5"_s);
    press(Qt::Key_Return);
    press(Qt::Key_Right);
    type(u"50"_s);
    press(Qt::Key_Return);
    tabTo(u"addDilutionStep"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"samples"_s) << "on the cell that is filled in next";
    type(u"10"_s);
    press(Qt::Key_Return);
    press(Qt::Key_Right);
    type(u"100"_s);
    press(Qt::Key_Return);
    tabTo(u"addDilutionStep"_s); // one too many
    press(Qt::Key_Return);
    tabTo(u"removeDilutionStep"_s);
    press(Qt::Key_Return);
    tabTo(u"putOnBench"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(book->runs().size(), 1U);
    const std::vector<run::DilutionStep> steps = book->load(book->runs()[0].id).run.samples[0].dilution;
    ASSERT_EQ(steps.size(), 2U);
    EXPECT_EQ(std::pair(steps[0].take_mL, steps[0].makeUpTo_mL), std::pair(5.0, 50.0));
    EXPECT_EQ(std::pair(steps[1].take_mL, steps[1].makeUpTo_mL), std::pair(10.0, 100.0));
    EXPECT_TRUE(steps[1].uncertainty_percent) << "that of the laboratory's glass";
    press(Qt::Key_N, Qt::ControlModifier);
    EXPECT_FALSE(find<QPushButton>(u"removeDilutionStep"_s)->isEnabled())
        << "the next run starts with one step";
}

TEST_F(Keyboard, AStandardIsAskedForWhatTheMethodDoesNotSay)
{
    openWindow();
    giveName();
    press(Qt::Key_N, Qt::ControlModifier);
    tabTo(u"title"_s);
    type(u"Perry tanks"_s);
    tabTo(u"sampleNames"_s);
    type(u"P-104"_s);
    const auto *problems = find<ui::ProblemList>(u"newRunProblems"_s);
    ASSERT_EQ(problems->model()->rowCount(), 0);
    press(Qt::Key_D, Qt::AltModifier);
    ASSERT_EQ(problems->model()->rowCount(), 2) << "concentration, and when it was made";
    EXPECT_EQ(find<QLineEdit>(u"standardLoss"_s)->text(), u"2"_s) << "the method's";
    tabTo(u"putOnBench"_s);
    press(Qt::Key_Return);
    EXPECT_TRUE(book->runs().empty());
    tabTo(u"standardConcentration"_s);
    type(u"0,2"_s);
    tabTo(u"standardPreparedAt"_s);
    type(StoppedClock().now().addSecs(-3600).toLocalTime().toString(u"H:mm"_s));
    EXPECT_EQ(problems->model()->rowCount(), 0);
    tabTo(u"putOnBench"_s);
    press(Qt::Key_Return);

    ASSERT_EQ(book->runs().size(), 1U);
    const notebook::RunId id = book->runs()[0].id;
    const run::Run run = book->load(id).run;
    ASSERT_EQ(run.standards.size(), 1U);
    EXPECT_DOUBLE_EQ(run.standards[0].lossPerHour, 0.02);
    EXPECT_EQ(run.standards[0].preparedAt->toSecsSinceEpoch(),
              StoppedClock().now().addSecs(-3600).toSecsSinceEpoch());
    EXPECT_FALSE(run.standards[0].usedAt) << "nobody knows yet";
    ASSERT_EQ(run.tubes.size(), 6U);
    EXPECT_EQ(run.tubes[3].role, run::Role::Standard) << "two tubes, as of blanks and samples";
    press(Qt::Key_2, Qt::ControlModifier); // pipetted without the screen
    for (const QString &text : {u"0.1"_s, u"0.1"_s, u"0.11"_s})
        keyReading(text);
    const notebook::StoredRun stored = book->load(id);
    EXPECT_EQ(stored.run.standards[0].usedAt, stored.readings.back().at);
}

TEST_F(Keyboard, TheTabKeyGoesDownTheFormOfANewRunAndReachesAllOfIt)
{
    openWindow();
    press(Qt::Key_N, Qt::ControlModifier);
    press(Qt::Key_D, Qt::AltModifier);
    tabTo(u"method"_s);
    const QStringList wanted{u"title"_s,
                             u"sampleNames"_s,
                             u"replicates"_s,
                             u"blanks"_s,
                             u"form"_s,
                             u"wavelength"_s,
                             u"pathLength"_s,
                             u"calibration"_s,
                             u"samples"_s,
                             u"takeFromShelf"_s,
                             u"proposeDilutions"_s,
                             u"addDilutionStep"_s,
                             u"standard"_s,
                             u"standardId"_s,
                             u"standardConcentration"_s,
                             u"standardLoss"_s,
                             u"standardPreparedAt"_s,
                             u"standardUsedWhenRead"_s,
                             u"standardTubes"_s,
                             u"standardVolumes"_s,
                             u"weighing"_s,
                             u"control"_s,
                             u"uncertaintyAbsorbance"_s};
    QStringList reached;
    for (const QString &name : wanted) {
        press(Qt::Key_Tab);
        reached << focusName();
        const QWidget *focus = QApplication::focusWidget();
        EXPECT_FALSE(focus->visibleRegion().isEmpty()) << name.toStdString() << " is scrolled into sight";
    }
    EXPECT_EQ(reached, wanted);
}

TEST_F(Keyboard, ANumberTypedOnACellOfTheTableGoesIntoTheEntryForIt)
{
    const notebook::RunId id = addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    ASSERT_EQ(focusName(), u"readingsTable"_s);
    type(u"0,31"_s);
    EXPECT_EQ(focusName(), u"readingEntry"_s);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 3: A1"_s);
    EXPECT_EQ(find<QLineEdit>(u"readingEntry"_s)->text(), u"0,31"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(book->load(id).readings.size(), 1U);
    EXPECT_EQ(book->load(id).readings[0].tube, 2);
    EXPECT_EQ(std::get<double>(book->load(id).readings[0].value), 0.31);
}

TEST_F(Keyboard, ARejectedRunIsHeadedAsRejected)
{
    const notebook::RunId id = addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    keyWholeRun();
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"verdict"_s), u"All results are reportable"_s);
    press(Qt::Key_E, Qt::AltModifier);
    type(u"rack fell over"_s);
    press(Qt::Key_J, Qt::AltModifier);
    ASSERT_TRUE(waitFor([&] { return book->load(id).summary.state == notebook::RunState::Rejected; }));
    EXPECT_EQ(labelText(u"verdict"_s), u"Rejected"_s);
}

TEST_F(Keyboard, ATextThatIsNoNumberIsKeptAndExplained)
{
    addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    keyReading(u"0,5,2"_s);
    EXPECT_EQ(find<QLineEdit>(u"readingEntry"_s)->text(), u"0,5,2"_s);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 1: A1"_s);
    EXPECT_FALSE(find<QLabel>(u"reply"_s)->text().isEmpty());
    EXPECT_TRUE(book->load(book->runs()[0].id).readings.empty());
    press(Qt::Key_Backspace);
    press(Qt::Key_Backspace);
    EXPECT_EQ(labelText(u"reply"_s), u"= 0.5"_s);
}

TEST_F(Keyboard, AReadingThatCannotBeRightIsAskedAboutFirst)
{
    addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    keyReading(u"5,12"_s);
    EXPECT_TRUE(book->load(book->runs()[0].id).readings.empty());
    EXPECT_TRUE(noticeText().contains(u"Enter again"_s)) << noticeText().toStdString();
    press(Qt::Key_Return);
    ASSERT_EQ(book->load(book->runs()[0].id).readings.size(), 1U);
    EXPECT_EQ(std::get<double>(book->load(book->runs()[0].id).readings[0].value), 5.12);
}

TEST_F(Keyboard, WhatTheNotebookRefusesStaysInTheField)
{
    addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    keyReading(u"512"_s);
    press(Qt::Key_Return);
    EXPECT_TRUE(book->load(book->runs()[0].id).readings.empty());
    EXPECT_FALSE(noticeText().isEmpty());
    EXPECT_EQ(find<QLineEdit>(u"readingEntry"_s)->text(), u"512"_s);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 1: A1"_s);
}

TEST_F(Keyboard, NothingIsStoredBeforeSomebodyGaveAName)
{
    addRun(exampleRun());
    openWindow();
    press(Qt::Key_2, Qt::ControlModifier);
    keyReading(u"0.512"_s);
    EXPECT_TRUE(book->load(book->runs()[0].id).readings.empty());
    ASSERT_EQ(focusName(), u"person"_s);
    type(u"R. Okafor"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"readingEntry"_s) << "back to what was being keyed";
    ASSERT_EQ(book->load(book->runs()[0].id).readings.size(), 1U)
        << "the name stores what Enter was pressed on";
    EXPECT_EQ(book->load(book->runs()[0].id).readings[0].person, u"R. Okafor"_s);
    EXPECT_EQ(std::get<double>(book->load(book->runs()[0].id).readings[0].value), 0.512);
    EXPECT_TRUE(noticeText().isEmpty()) << noticeText().toStdString();
    EXPECT_EQ(labelText(u"place"_s), u"Tube 2: A1"_s);
    EXPECT_TRUE(find<QLineEdit>(u"readingEntry"_s)->text().isEmpty());
}

TEST_F(Keyboard, ANameGivenLaterDoesNotStoreWhatWasChangedMeanwhile)
{
    addRun(exampleRun());
    openWindow();
    press(Qt::Key_2, Qt::ControlModifier);
    keyReading(u"0.512"_s);
    press(Qt::Key_2, Qt::ControlModifier);
    type(u"0.6"_s);
    giveName();
    EXPECT_TRUE(book->load(book->runs()[0].id).readings.empty());
}

TEST_F(Keyboard, AReadingIsQuestionedAfterTheNameAsBefore)
{
    addRun(exampleRun());
    openWindow();
    press(Qt::Key_2, Qt::ControlModifier);
    keyReading(u"5.12"_s);
    type(u"R. Okafor"_s);
    press(Qt::Key_Return);
    EXPECT_TRUE(book->load(book->runs()[0].id).readings.empty());
    EXPECT_TRUE(noticeText().contains(u"Enter again"_s)) << noticeText().toStdString();
    EXPECT_EQ(focusName(), u"readingEntry"_s);
}

TEST_F(Keyboard, ASlippedDecimalPointIsAskedAboutBeforeItIsStored)
{
    const notebook::RunId id = addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    keyReading(u"1.385"_s);
    keyReading(u"0.1385"_s);
    EXPECT_EQ(book->load(id).readings.size(), 1U);
    EXPECT_TRUE(noticeText().startsWith(u"Tube 2: A1 is 0.139"_s)) << noticeText().toStdString();
    EXPECT_TRUE(noticeText().endsWith(u"Press Enter again to store it as read."_s))
        << noticeText().toStdString();
    find<QLineEdit>(u"readingEntry"_s)->selectAll();
    type(u"1.385"_s);
    EXPECT_TRUE(noticeText().isEmpty()) << "what was asked about is gone";
    press(Qt::Key_Return);
    EXPECT_EQ(book->load(id).readings.size(), 2U);
    EXPECT_TRUE(noticeText().isEmpty()) << noticeText().toStdString();
}

TEST_F(Keyboard, WhatWasAskedBeforeStoringIsNotSaidAgainAfterIt)
{
    const notebook::RunId id = addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    for (const QString &text : {u"0.1"_s, u"0.1"_s, u"0.12"_s, u"0.12"_s, u"0.11"_s, u"0.11"_s})
        keyReading(text);
    keyReading(u"0.02"_s); // fell by a tenth
    EXPECT_EQ(book->load(id).readings.size(), 6U);
    EXPECT_TRUE(noticeText().startsWith(u"Tube 3: absorbance fell by 0.100"_s)) << noticeText().toStdString();
    press(Qt::Key_Return);
    EXPECT_EQ(book->load(id).readings.size(), 7U);
    EXPECT_TRUE(noticeText().isEmpty()) << noticeText().toStdString();
    keyReading(u"2.3"_s);
    EXPECT_EQ(book->load(id).readings.size(), 7U);
    EXPECT_TRUE(noticeText().contains(u"photometer's limit"_s)) << noticeText().toStdString();
    press(Qt::Key_Return);
    EXPECT_EQ(book->load(id).readings.size(), 8U);
    EXPECT_TRUE(noticeText().isEmpty()) << noticeText().toStdString();
}

TEST_F(Keyboard, StripAndPageAgreeOnTheReviewThatComesNext)
{
    run::Run read = exampleRun();
    for (run::Tube &tube : read.tubes)
        tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.6}};
    addRun(read);
    addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    ASSERT_EQ(labelText(u"rackLetter"_s), u"Rack B"_s) << "pipetting before reviews";
    keyWholeRun();
    EXPECT_EQ(labelText(u"nextAction"_s), u"Rack B: review and decide"_s);
    press(Qt::Key_Return); // as the page offers
    EXPECT_EQ(labelText(u"rackLetter"_s), u"Rack B"_s);
    ASSERT_FALSE(labelText(u"verdict"_s).isEmpty());
    press(Qt::Key_A, Qt::AltModifier);
    ASSERT_TRUE(waitFor([&] { return labelText(u"nextAction"_s) == u"Rack A: review and decide"_s; }));
}

TEST_F(Keyboard, ACorrectionNeedsAReasonAndKeepsTheOldValueInSight)
{
    const notebook::RunId id = addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    keyReading(u"0.121"_s);
    tabTo(u"readingsTable"_s);
    press(Qt::Key_Up);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"readingEntry"_s);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 1: A1"_s);
    EXPECT_TRUE(labelText(u"storedReading"_s).contains(u"0.121"_s));
    type(u"0,112"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"correctionReason"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->load(id).readings.size(), 1U) << "no reason, no correction";
    EXPECT_FALSE(noticeText().isEmpty());
    type(u"misread the display"_s);
    press(Qt::Key_Return);

    const notebook::StoredRun stored = book->load(id);
    ASSERT_EQ(stored.readings.size(), 2U);
    EXPECT_EQ(stored.readings[1].corrects, stored.readings[0].id);
    EXPECT_EQ(stored.readings[1].reason, u"misread the display"_s);
    EXPECT_EQ(find<QTableView>(u"readingsTable"_s)->model()->index(0, 2).data().toString(),
              u"0.112 (was 0.121)"_s);
    const auto *readings = find<QTableView>(u"readingsTable"_s);
    EXPECT_GE(readings->columnWidth(2), readings->sizeHintForIndex(readings->model()->index(0, 2)).width())
        << "both values can be read";
    EXPECT_EQ(labelText(u"place"_s), u"Tube 2: A1"_s) << "on with what is next";
}

TEST_F(Keyboard, ACorrectionWithoutItsReasonIsShownAsNotStored)
{
    const notebook::RunId id = addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    keyWholeRun();
    EXPECT_EQ(labelText(u"resultsBasis"_s), u"From what is stored:"_s);
    press(Qt::Key_Up); // from the button for the review into the table
    ASSERT_EQ(focusName(), u"readingsTable"_s);
    const QModelIndex cell = find<QTableView>(u"readingsTable"_s)->currentIndex();
    EXPECT_EQ(cell.row(), 2) << "one above the tube that was keyed last";
    press(Qt::Key_Return);
    ASSERT_EQ(labelText(u"place"_s), u"Tube 3: A2"_s);
    type(u"0,64"_s);
    EXPECT_TRUE(labelText(u"resultsBasis"_s).contains(u"not stored"_s));
    EXPECT_TRUE(labelText(u"pendingCorrection"_s).startsWith(u"Not stored yet"_s));

    press(Qt::Key_N, Qt::ControlModifier);
    EXPECT_TRUE(noticeText().contains(u"tube 3, A2: 0,64"_s)) << noticeText().toStdString();
    press(Qt::Key_G, Qt::ControlModifier); // the review of this rack is next
    EXPECT_TRUE(noticeText().contains(u"tube 3, A2: 0,64"_s)) << noticeText().toStdString();
    window->close();
    ASSERT_EQ(dialogs.questions.size(), 1);
    EXPECT_TRUE(dialogs.questions[0].contains(u"Rack A, tube 3, A2: 0,64"_s))
        << dialogs.questions[0].toStdString();
    EXPECT_TRUE(window->isVisible());

    press(Qt::Key_2, Qt::ControlModifier);
    ASSERT_EQ(labelText(u"place"_s), u"Tube 3: A2"_s) << "it waits where it was typed";
    EXPECT_EQ(find<QLineEdit>(u"readingEntry"_s)->text(), u"0,64"_s);
    EXPECT_EQ(book->load(id).readings.size(), 8U);
    press(Qt::Key_Return);
    type(u"misread"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(book->load(id).readings.size(), 9U);
    EXPECT_EQ(labelText(u"resultsBasis"_s), u"From what is stored:"_s);
    EXPECT_TRUE(noticeText().isEmpty()) << noticeText().toStdString();
    window->close();
    EXPECT_EQ(dialogs.questions.size(), 1) << "nothing is lost, nothing to ask";
}

TEST_F(Keyboard, ArrowKeysLeadFromTheEntryToTheTubeAboveAndBelow)
{
    addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    keyReading(u"0.1"_s);
    keyReading(u"0.1"_s);
    press(Qt::Key_Up);
    ASSERT_EQ(focusName(), u"readingsTable"_s);
    EXPECT_EQ(find<QTableView>(u"readingsTable"_s)->currentIndex().row(), 1);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 2: A1"_s);
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 4: A1"_s) << "out of turn, if the analyst wants it so";
}

TEST_F(Keyboard, EscapeLeavesAStoredReadingAsItIs)
{
    const notebook::RunId id = addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    keyReading(u"0.121"_s);
    tabTo(u"readingsTable"_s);
    press(Qt::Key_Up);
    press(Qt::Key_Return);
    type(u"0.5"_s);
    press(Qt::Key_Escape);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 2: A1"_s);
    EXPECT_TRUE(find<QLineEdit>(u"readingEntry"_s)->text().isEmpty());
    EXPECT_EQ(book->load(id).readings.size(), 1U);
}

TEST_F(Keyboard, WhatWasTypedForATubeWaitsThere)
{
    addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    type(u"0.12"_s);
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_EQ(labelText(u"verdict"_s), u"Not complete: readings are missing"_s);
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 1: A1"_s);
    EXPECT_EQ(find<QLineEdit>(u"readingEntry"_s)->text(), u"0.12"_s);
}

TEST_F(Keyboard, ResultsFollowEveryKey)
{
    addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    for (const QString &text : {u"0,100"_s, u"0.100"_s, u"0,120"_s, u"0.120"_s, u"0,110"_s, u"0.110"_s})
        keyReading(text);
    const auto result = [this] {
        return find<QTableView>(u"liveResults"_s)->model()->index(0, 2).data().toString();
    };
    EXPECT_EQ(result(), u"–"_s);
    type(u"0.5"_s); // net 0.370 x 0.33651
    EXPECT_TRUE(result().startsWith(u"0.12"_s)) << result().toStdString();
    type(u"30"_s); // net 0.400
    EXPECT_TRUE(result().startsWith(u"0.13"_s)) << result().toStdString();
    EXPECT_EQ(book->load(book->runs()[0].id).readings.size(), 6U) << "typing alone stores nothing";
}

TEST_F(Keyboard, AcceptingAFailedRunNeedsAReason)
{
    const notebook::RunId id = addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    for (const QString &text :
         {u"0.1"_s, u"0.1"_s, u"0.1"_s, u"0.1"_s, u"0.11"_s, u"0.11"_s, u"1.5"_s, u"1.5"_s})
        keyReading(text);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"verdict"_s), u"1 of 1 to repeat"_s);
    press(Qt::Key_A, Qt::AltModifier);
    ASSERT_TRUE(waitFor([this] { return !noticeText().isEmpty(); }))
        << "the notebook's own sentence stands in the page";
    EXPECT_EQ(book->load(id).summary.state, notebook::RunState::OnBench);
    ASSERT_EQ(focusName(), u"decisionReason"_s);
    type(u"screening only"_s);
    press(Qt::Key_A, Qt::AltModifier);
    ASSERT_TRUE(waitFor([&] { return book->load(id).summary.state == notebook::RunState::Accepted; }));
    EXPECT_EQ(book->load(id).decisions.back().reason, u"screening only"_s);
}

TEST_F(Keyboard, SomebodyElseMayDecideAndTheNextRackStartsWithThePersonAtTheBench)
{
    const notebook::RunId first = addRun(exampleRun());
    addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_EQ(find<QLineEdit>(u"decisionPerson"_s)->text(), u"R. Okafor"_s);
    press(Qt::Key_D, Qt::AltModifier);
    ASSERT_EQ(focusName(), u"decisionPerson"_s);
    press(Qt::Key_A, Qt::ControlModifier);
    type(u"M. Lindqvist"_s);
    press(Qt::Key_E, Qt::AltModifier);
    type(u"rack fell over"_s);
    press(Qt::Key_J, Qt::AltModifier);
    ASSERT_TRUE(waitFor([&] { return book->load(first).summary.state == notebook::RunState::Rejected; }));
    EXPECT_EQ(book->load(first).decisions.back().person, u"M. Lindqvist"_s);
    press(Qt::Key_G, Qt::ControlModifier);
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_EQ(find<QLineEdit>(u"decisionPerson"_s)->text(), u"R. Okafor"_s);
    EXPECT_TRUE(find<QLineEdit>(u"decisionReason"_s)->text().isEmpty());
}

} // namespace
} // namespace plateau::test
