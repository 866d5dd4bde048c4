// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/shared/problemlist.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
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
    tabTo(u"samples"_s);
    press(Qt::Key_Right);
    type(u"5"_s);
    press(Qt::Key_Return);
    press(Qt::Key_Right);
    type(u"50"_s);
    press(Qt::Key_Return);
    tabTo(u"putOnBench"_s);
    EXPECT_EQ(find<ui::ProblemList>(u"newRunProblems"_s)->model()->rowCount(), 0)
        << find<ui::ProblemList>(u"newRunProblems"_s)->model()->index(0, 0).data().toString().toStdString();
    press(Qt::Key_Return);

    EXPECT_EQ(labelText(u"nextAction"_s), u"rack A, tube 1: key A1"_s);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 1: A1"_s);
    EXPECT_EQ(labelText(u"contents"_s), u"blank, 1 of 2"_s);
    keyReading(u"0,100"_s);
    EXPECT_EQ(labelText(u"nextAction"_s), u"rack A, tube 2: key A1"_s);
    EXPECT_EQ(labelText(u"nextProgress"_s), u"1 of 8 readings"_s);
    for (const QString &text :
         {u"0.101"_s, u"0,120"_s, u".121"_s, u"0,110"_s, u"0.111"_s, u"0,630"_s, u"0.633"_s})
        keyReading(text);

    EXPECT_EQ(labelText(u"nextAction"_s), u"rack A: review and decide"_s);
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
    tabTo(u"samples"_s);
    press(Qt::Key_End);
    press(Qt::Key_Space);
    tabTo(u"putOnBench"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(book->runs().size(), 1U);
    const notebook::StoredRun stored = book->load(book->runs()[0].id);
    ASSERT_EQ(stored.run.tubes.size(), 5U);
    EXPECT_EQ(stored.run.tubes[4].role, run::Role::SampleBlank);
    EXPECT_EQ(stored.run.tubes[4].sample, u"C-3"_s);
}

TEST_F(Keyboard, ATextThatIsNoNumberIsKeptAndExplained)
{
    addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_G, Qt::ControlModifier);
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
    press(Qt::Key_G, Qt::ControlModifier);
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
    press(Qt::Key_G, Qt::ControlModifier);
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
    press(Qt::Key_G, Qt::ControlModifier);
    keyReading(u"0.512"_s);
    EXPECT_TRUE(book->load(book->runs()[0].id).readings.empty());
    ASSERT_EQ(focusName(), u"person"_s);
    type(u"R. Okafor"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"readingEntry"_s) << "back to what was being keyed";
    EXPECT_EQ(find<QLineEdit>(u"readingEntry"_s)->text(), u"0.512"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(book->load(book->runs()[0].id).readings.size(), 1U);
    EXPECT_EQ(book->load(book->runs()[0].id).readings[0].person, u"R. Okafor"_s);
}

TEST_F(Keyboard, ACorrectionNeedsAReasonAndKeepsTheOldValueInSight)
{
    const notebook::RunId id = addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_G, Qt::ControlModifier);
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

TEST_F(Keyboard, EscapeLeavesAStoredReadingAsItIs)
{
    const notebook::RunId id = addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_G, Qt::ControlModifier);
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
    press(Qt::Key_G, Qt::ControlModifier);
    type(u"0.12"_s);
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(labelText(u"verdict"_s), u"Not complete: readings are missing"_s);
    press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 1: A1"_s);
    EXPECT_EQ(find<QLineEdit>(u"readingEntry"_s)->text(), u"0.12"_s);
}

TEST_F(Keyboard, ResultsFollowEveryKey)
{
    addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_G, Qt::ControlModifier);
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
    press(Qt::Key_G, Qt::ControlModifier);
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
    press(Qt::Key_2, Qt::ControlModifier);
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
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(find<QLineEdit>(u"decisionPerson"_s)->text(), u"R. Okafor"_s);
    EXPECT_TRUE(find<QLineEdit>(u"decisionReason"_s)->text().isEmpty());
}

} // namespace
} // namespace plateau::test
