// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/keyboard.h"
#include "ui/shared/problemlist.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QTableView>
#include <QTextBrowser>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

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
    EXPECT_EQ(labelText(u"verdict"_s), u"Not every check could be made"_s);
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
    keyReading(u"0.1385"_s);
    keyReading(u"1.385"_s);
    EXPECT_EQ(book->load(id).readings.size(), 1U);
    EXPECT_TRUE(noticeText().startsWith(u"Tube 2: A1 is 1.385"_s)) << noticeText().toStdString();
    EXPECT_TRUE(noticeText().endsWith(u"Press Enter again to store it as read."_s))
        << noticeText().toStdString();
    find<QLineEdit>(u"readingEntry"_s)->selectAll();
    type(u"0.1385"_s);
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

TEST_F(Keyboard, WhatIsStoredHasTheDecimalSignOfWhatIsTyped)
{
    QLocale::setDefault(QLocale(QLocale::French, QLocale::France));
    addRun(exampleRun());
    openWindow();
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    keyReading(u"0,120"_s);
    tabTo(u"readingsTable"_s);
    press(Qt::Key_Up);
    press(Qt::Key_Return);
    EXPECT_TRUE(labelText(u"storedReading"_s).contains(u"0,120"_s)) << labelText(u"storedReading"_s).toStdString();
    QLocale::setDefault(QLocale::c());
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
