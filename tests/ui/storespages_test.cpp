// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"

#include "tests/ui/shown.h"
#include "ui/books/cellsmodel.h"
#include "ui/books/lotsmodel.h"
#include "ui/books/registerview.h"
#include "ui/books/shelfmodel.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

using Mode = QAbstractItemModelTester::FailureReportingMode;

/// The window with somebody at the bench.
class StoresWindow : public WindowBench
{
protected:
    void open(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::ControlModifier)
    {
        openWindow();
        nameBench();
        press(key, modifiers);
    }
    void nameBench()
    {
        press(Qt::Key_P, Qt::AltModifier);
        type(u"R. Okafor"_s);
        press(Qt::Key_Return);
    }
    void click(const QString &name) const { find<QPushButton>(name)->click(); }
    void enter(const QString &name, const QString &text) const
    {
        auto *line = find<QLineEdit>(name);
        line->setFocus();
        line->selectAll();
        type(text);
    }
    void enterBox(const QString &name, const QString &text) const
    {
        auto *box = find<QComboBox>(name);
        box->setFocus();
        box->lineEdit()->selectAll();
        type(text);
    }
    QAbstractItemModel &model(const QString &view) const { return *find<QAbstractItemView>(view)->model(); }
    void choose(const QString &view, int row) const
    {
        find<QAbstractItemView>(view)->setCurrentIndex(model(view).index(row, 0));
    }
    void paste(const QString &text) const
    {
        QApplication::clipboard()->setText(text);
        find<QTableView>(u"shelfRows"_s)->setFocus();
        press(Qt::Key_V, Qt::ControlModifier);
    }
    planning::ShelfSample sample(const QString &id) const
    {
        planning::ShelfSample sample;
        sample.id = id;
        return sample;
    }
    notebook::RunId runThatAdvisesRepeat()
    {
        run::Run run = exampleRun();
        for (run::Tube &tube : run.tubes)
            tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 1.6}};
        const notebook::RunId id = addRun(run);
        book->decide(id, notebook::DecisionKind::Accepted, u"R. Okafor"_s, u"for the record"_s);
        return id;
    }
};

TEST_F(StoresWindow, PastedSamplesAreShownAndStoredAllOrNone)
{
    open(Qt::Key_J);
    EXPECT_TRUE(labelText(u"shelfEmpty"_s).contains(u"Register what came in"_s));
    click(u"registerSamples"_s);
    const QAbstractItemModelTester tester(&model(u"shelfRows"_s), Mode::Warning);
    paste(
        u"Sample\tProduct\tExample acid (g/L)\tReceived\nP-1\tPerry\t3,5\t8:10\nP-2\tPerry\tmuch\t\nP-3\tCider\t\t"_s);
    EXPECT_TRUE(noticeText().contains(u"Columns by their heads: 1 = Sample, 2 = Product, 3 = Example acid expected"_s))
        << noticeText().toStdString();
    ASSERT_EQ(model(u"shelfRows"_s).rowCount(), 4) << "three and the open one";
    EXPECT_EQ(shown(model(u"shelfRows"_s), 0, ui::shelf::Expected), u"Example acid 3,5"_s);
    EXPECT_EQ(shown(model(u"shelfRows"_s), 0, ui::shelf::Received), u"2026-03-02 08:10"_s) << "as understood";
    EXPECT_EQ(labelText(u"shelfSummary"_s), u"Samples: 3. Still to be put right (1), Enter goes there:"_s);
    EXPECT_TRUE(shown(model(u"shelfProblems"_s), 0, 0).startsWith(u"Line 2, Expected: "_s));

    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(book->shelf().waiting().empty()) << "nothing half stored";
    EXPECT_EQ(focusName(), u"shelfProblems"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"shelfRows"_s);
    const QModelIndex at = find<QTableView>(u"shelfRows"_s)->currentIndex();
    EXPECT_EQ(at.row(), 1);
    EXPECT_EQ(at.column(), int{ui::shelf::Expected});
    model(u"shelfRows"_s).setData(at, u"Example acid 4"_s, Qt::EditRole);
    press(Qt::Key_S, Qt::ControlModifier);

    const auto waiting = book->shelf().waiting();
    ASSERT_EQ(waiting.size(), 3U);
    EXPECT_EQ(waiting[0].sample.expected, (std::map<QString, double>{{u"example-acid"_s, 3.5}}));
    EXPECT_EQ(waiting[1].sample.expected, (std::map<QString, double>{{u"example-acid"_s, 4}}));
    EXPECT_EQ(noticeText(), u"Registered: 3."_s);
    ASSERT_EQ(model(u"waiting"_s).rowCount(), 3);
    EXPECT_EQ(shown(model(u"waiting"_s), 0, ui::ShelfModel::Why), u"registered, not run yet"_s);
    EXPECT_EQ(labelText(u"aboutSample"_s), u"P-1: registered, not run yet."_s);
}

TEST_F(StoresWindow, AnEmptyTableToRegisterInHasRoomForWhatIsKeyed)
{
    open(Qt::Key_J);
    window->setWindowState(Qt::WindowNoState);
    window->resize(1280, 800);
    click(u"registerSamples"_s);
    QApplication::processEvents();
    const auto *table = find<QTableView>(u"shelfRows"_s);
    const int character = table->fontMetrics().averageCharWidth();
    EXPECT_GE(table->columnWidth(ui::shelf::Id), 26 * character);
    EXPECT_GE(table->columnWidth(ui::shelf::Product), 20 * character);
    EXPECT_GE(table->columnWidth(ui::shelf::From), 20 * character);
    const auto top = [this](const QWidget *widget) { return widget->mapTo(window.get(), QPoint()).y(); };
    EXPECT_LT(top(find<QPushButton>(u"leaveSamples"_s)), top(table)) << "where the other pages have it";
}

TEST_F(StoresWindow, AnIdThatWaitsIsNotRegisteredTwice)
{
    book->shelf().registerSample(sample(u"P-1"_s), u"Ines"_s);
    open(Qt::Key_J);
    click(u"registerSamples"_s);
    paste(u"P-0\np-1"_s);
    EXPECT_TRUE(
        shown(model(u"shelfProblems"_s), 0, 0).startsWith(u"Line 2, Sample: \"p-1\" is among the samples that wait"_s))
        << shown(model(u"shelfProblems"_s), 0, 0).toStdString();
    click(u"storeSamples"_s);
    EXPECT_EQ(book->shelf().waiting().size(), 1U);
    click(u"leaveSamples"_s);
    EXPECT_TRUE(noticeText().contains(u"Press it once more to drop them"_s));
    EXPECT_FALSE(window->close());
    EXPECT_TRUE(dialogs.questions.value(0).contains(u"Samples that are not registered yet"_s));
    click(u"leaveSamples"_s);
    EXPECT_EQ(model(u"waiting"_s).rowCount(), 1);
}

TEST_F(StoresWindow, SampleIsChangedAndWithdrawnWithItsReason)
{
    book->shelf().registerSamples({sample(u"P-1"_s), sample(u"P-2"_s)}, u"Ines"_s);
    open(Qt::Key_J);
    choose(u"waiting"_s, 1);
    press(Qt::Key_Return);
    ASSERT_EQ(model(u"shelfRows"_s).rowCount(), 1) << "one sample, no open row";
    model(u"shelfRows"_s)
        .setData(model(u"shelfRows"_s).index(0, ui::shelf::Product), u"Perry"_s, Qt::EditRole);
    click(u"storeSamples"_s);
    EXPECT_EQ(book->shelf().waiting()[1].sample.product, u"Perry"_s);
    EXPECT_EQ(noticeText(), u"The change of P-2 is stored."_s);

    choose(u"waiting"_s, 0);
    EXPECT_FALSE(find<QPushButton>(u"waiveRepeat"_s)->isEnabled());
    click(u"withdrawSample"_s);
    EXPECT_TRUE(noticeText().contains(u"why it will not be run"_s));
    EXPECT_EQ(book->shelf().waiting().size(), 2U);
    ASSERT_EQ(focusName(), u"shelfReason"_s);
    type(u"bottle broken"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(noticeText(), u"P-1 was withdrawn."_s);
    ASSERT_EQ(book->shelf().waiting().size(), 1U);
    EXPECT_EQ(book->shelf().waiting()[0].sample.id, u"P-2"_s);
}

TEST_F(StoresWindow, RepeatSaysWhyAndIsWaivedWithItsReason)
{
    runThatAdvisesRepeat();
    open(Qt::Key_J);
    ASSERT_EQ(model(u"waiting"_s).rowCount(), 1);
    const QString why = shown(model(u"waiting"_s), 0, ui::ShelfModel::Why);
    EXPECT_TRUE(why.startsWith(u"repeat of run 1 (failed: largest net signal): dilute"_s)) << why.toStdString();
    choose(u"waiting"_s, 0);
    EXPECT_FALSE(find<QPushButton>(u"withdrawSample"_s)->isEnabled()) << "nobody registered it";
    enter(u"shelfReason"_s, u"no sample left"_s);
    click(u"waiveRepeat"_s);
    EXPECT_TRUE(book->shelf().waiting().empty());
    EXPECT_TRUE(labelText(u"shelfEmpty"_s).contains(u"No sample waits"_s));
}

TEST_F(StoresWindow, NothingIsStoredBeforeSomebodySaidWhoIsThere)
{
    openWindow();
    press(Qt::Key_J, Qt::ControlModifier);
    click(u"registerSamples"_s);
    paste(u"P-1"_s);
    click(u"storeSamples"_s);
    EXPECT_TRUE(book->shelf().waiting().empty());
    ASSERT_EQ(focusName(), u"person"_s);
    type(u"Ines"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(noticeText(), QString());
    click(u"storeSamples"_s);
    EXPECT_EQ(book->shelf().waiting().size(), 1U);
}

TEST_F(StoresWindow, ContainerIsReceivedByKeysAlone)
{
    open(Qt::Key_L);
    EXPECT_TRUE(labelText(u"lotsEmpty"_s).contains(u"No container is in hand"_s));
    ASSERT_EQ(focusName(), u"receiveLot"_s) << "an empty book has one thing to do";
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"receivedReagent"_s);
    const auto *offered = find<QComboBox>(u"receivedReagent"_s);
    EXPECT_EQ(offered->count(), 3) << "buffer, water and enzyme suspension, not the sample";
    type(u"Buffer pH 9"_s);
    tabTo(u"receivedLot"_s);
    type(u"4711"_s);
    press(Qt::Key_Tab);
    type(u"2026-12"_s);
    press(Qt::Key_Tab);
    type(u"30"_s);
    press(Qt::Key_Tab);
    EXPECT_EQ(focusName(), u"receivedVolume"_s);
    const auto *day = find<QLineEdit>(u"receivedExpires"_s)->parentWidget()->findChild<QLabel *>(u"reply"_s);
    EXPECT_TRUE(day->isVisible());
    EXPECT_EQ(day->text(), u"= 2026-12-31"_s) << "what the month alone means";
    press(Qt::Key_Return);
    EXPECT_EQ(noticeText(), u"Say how much is in it, in mL."_s);
    EXPECT_TRUE(book->lots().all().empty());
    type(u"0,5"_s);
    EXPECT_EQ(noticeText(), QString()) << "what it asked for is there";
    tabTo(u"receivedPlace"_s);
    type(u"cold room"_s);
    press(Qt::Key_Return);
    const auto lots = book->lots().all();
    ASSERT_EQ(lots.size(), 1U);
    ASSERT_TRUE(lots[0].place);
    EXPECT_EQ(lots[0].place->name, u"cold room"_s);
    EXPECT_EQ(lots[0].reagent, u"Buffer pH 9"_s);
    EXPECT_EQ(lots[0].lot, u"4711"_s);
    EXPECT_EQ(lots[0].expires, QDate(2026, 12, 31));
    EXPECT_EQ(lots[0].keepsOpened_days, 30);
    EXPECT_EQ(lots[0].remaining_mL, 0.5);
    EXPECT_EQ(focusName(), u"receivedLot"_s) << "ready for the next one";
    EXPECT_TRUE(noticeText().contains(u"use by 2026-12-31 by its label"_s)) << noticeText().toStdString();
    press(Qt::Key_Escape);
    EXPECT_EQ(shown(model(u"lots"_s), 0, ui::LotsModel::Standing), u"not opened; too little for a tube"_s);
}

TEST_F(StoresWindow, EnterInTheProposalsOfReagentsChoosesAndDoesNotStore)
{
    open(Qt::Key_L);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"receivedReagent"_s);
    auto *reagent = find<QComboBox>(u"receivedReagent"_s);
    type(u"enz"_s);
    QAbstractItemView *proposals = reagent->completer()->popup();
    ASSERT_TRUE(proposals->isVisible());
    QTest::keyClick(proposals, Qt::Key_Down);
    QTest::keyClick(proposals, Qt::Key_Return);
    QApplication::processEvents();
    EXPECT_FALSE(proposals->isVisible());
    EXPECT_EQ(reagent->currentText(), u"Enzyme suspension"_s);
    EXPECT_EQ(noticeText(), QString()) << "nothing was to be stored yet";
    // That the cursor goes on to the lot is seen in a real window only: without one, the focus comes back to the box when
    // the list closes.
}

TEST_F(StoresWindow, WhatHappensToAContainerStandsInItsLedger)
{
    book->lots().receive({u"Buffer pH 9"_s, u"4711"_s, {}, 30}, 100, u"Ines"_s);
    open(Qt::Key_L);
    choose(u"lots"_s, 0);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"lotTitle"_s), u"Buffer pH 9, lot 4711"_s);
    auto *what = find<QComboBox>(u"lotEvent"_s);
    EXPECT_GE(what->width(), what->sizeHint().width()) << "whatever is chosen is read whole";
    EXPECT_EQ(what->count(), 8);
    EXPECT_EQ(find<QLineEdit>(u"lotDay"_s)->text(), u"2026-03-02"_s);
    enter(u"lotDay"_s, u"2026-02-27"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->lots().all()[0].opened, QDate(2026, 2, 27));
    EXPECT_EQ(what->count(), 9) << "it is opened once; that may be corrected";

    what->setCurrentIndex(0);
    enter(u"lotVolume"_s, u"10"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->lots().all()[0].remaining_mL, 90);
    what->setCurrentIndex(1);
    enter(u"lotVolume"_s, u"5"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(noticeText(), u"Say why; the ledger keeps it."_s);
    EXPECT_EQ(book->lots().all()[0].remaining_mL, 90);
    type(u"spilt"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->lots().all()[0].remaining_mL, 85);
    what->setCurrentIndex(1);
    enter(u"lotVolume"_s, u"86"_s);
    enter(u"lotReason"_s, u"old"_s);
    press(Qt::Key_Return);
    EXPECT_TRUE(noticeText().contains(u"has 85 mL left"_s)) << noticeText().toStdString();
    EXPECT_EQ(find<QLineEdit>(u"lotVolume"_s)->text(), u"86"_s) << "what was typed stays";
    what->setCurrentIndex(2);
    enter(u"lotVolume"_s, u"0"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->lots().all()[0].remaining_mL, 0);
    EXPECT_EQ(model(u"lotLedger"_s).rowCount(), 5);
    EXPECT_EQ(labelText(u"lotBalance"_s),
              u"Left according to the ledger: 0\u00a0mL; taken, keyed by hand: 10\u00a0mL; ticked in runs: none."_s);

    what->setCurrentIndex(3);
    enter(u"labelLot"_s, u"4712"_s);
    enter(u"lotReason"_s, u"misread"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->lots().all()[0].lot, u"4712"_s);
    EXPECT_EQ(labelText(u"lotTitle"_s), u"Buffer pH 9, lot 4712"_s);

    what->setCurrentIndex(what->findText(u"It was opened on another day"_s));
    enter(u"lotDay"_s, u"2026-02-26"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(noticeText(), u"Say why; the ledger keeps it."_s);
    type(u"the day before"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->lots().all()[0].opened, QDate(2026, 2, 26)) << noticeText().toStdString();
    EXPECT_EQ(labelText(u"lotSubtitle"_s),
              u"Used up; left: 0\u00a0mL; use by: 2026-03-28 (opened); opened on 2026-02-26; keeps once opened: 30 days"_s);
    what->setCurrentIndex(what->findText(u"It was not opened after all"_s));
    EXPECT_FALSE(window->findChild<QLineEdit *>(u"lotDay"_s)->isVisible()) << "that has no day";
    enter(u"lotReason"_s, u"it was 4713"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->lots().all()[0].opened, QDate(2026, 2, 26));
    EXPECT_TRUE(noticeText().contains(u"something was taken from the lot \"4712\" on "_s))
        << noticeText().toStdString();

    press(Qt::Key_Escape);
    EXPECT_TRUE(labelText(u"lotsEmpty"_s).contains(u"No container is in hand"_s)) << "it is used up";
    find<QCheckBox>(u"usedUpToo"_s)->click();
    ASSERT_EQ(model(u"lots"_s).rowCount(), 1);
    EXPECT_EQ(shown(model(u"lots"_s), 0, ui::LotsModel::Standing), u"used up"_s);
}

TEST_F(StoresWindow, AContainerThatNothingWasTakenFromWasNotOpenedAfterAll)
{
    book->lots().receive({u"Buffer pH 9"_s, u"4711"_s, {}, 30}, 100, u"Ines"_s);
    book->lots().open({book->lots().all()[0].id}, QDate(2026, 2, 27), u"Ines"_s);
    open(Qt::Key_L);
    choose(u"lots"_s, 0);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"lotBalance"_s),
              u"Left according to the ledger: 100\u00a0mL; ticked in runs: none."_s);
    auto *what = find<QComboBox>(u"lotEvent"_s);
    what->setCurrentIndex(what->findText(u"It was not opened after all"_s));
    enter(u"lotReason"_s, u"it was 4713"_s);
    press(Qt::Key_Return);
    EXPECT_FALSE(book->lots().all()[0].opened) << noticeText().toStdString();
    EXPECT_EQ(what->currentText(), u"It was opened"_s);
}

TEST_F(StoresWindow, AContainerOpenedAtTheBenchCanHaveThatCorrectedAtOnce)
{
    book->lots().receive({u"Buffer pH 9"_s, u"4711"_s, {}, 30}, 100, u"Ines"_s);
    open(Qt::Key_L);
    choose(u"lots"_s, 0);
    press(Qt::Key_Return);
    auto *what = find<QComboBox>(u"lotEvent"_s);
    const QString spilt = u"Some was spilt or discarded"_s;
    what->setCurrentIndex(what->findText(spilt));
    enter(u"lotReason"_s, u"spilt"_s);
    EXPECT_LT(what->findText(u"It was opened on another day"_s), 0);
    press(Qt::Key_T, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_FALSE(what->isVisible()) << "the standards are on show";
    book->lots().open(notebook::LotId{book->lots().all()[0].id}, QDate(2026, 2, 27), u"Ines"_s);
    press(Qt::Key_L, Qt::ControlModifier);
    ASSERT_TRUE(what->isVisible());
    EXPECT_LT(what->findText(u"It was opened"_s), 0);
    EXPECT_GE(what->findText(u"It was opened on another day"_s), 0);
    EXPECT_EQ(what->currentText(), spilt) << "what is being keyed stays";
    EXPECT_EQ(find<QLineEdit>(u"lotReason"_s)->text(), u"spilt"_s);
}

/// A dry coenzyme of the book, received by keys.
TEST_F(StoresWindow, ADryContainerIsReceivedDissolvedDividedAndStoredByKeys)
{
    open(Qt::Key_L);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"receivedReagent"_s);
    press(Qt::Key_Backtab, Qt::ShiftModifier);
    ASSERT_EQ(focusName(), u"receivedDry"_s);
    press(Qt::Key_Space);
    enterBox(u"receivedReagent"_s, u"Enzyme suspension"_s);
    enter(u"receivedLot"_s, u"N-12"_s);
    enter(u"receivedKeepsDissolved"_s, u"14"_s);
    ASSERT_TRUE(find<QCheckBox>(u"receivedDry"_s)->isChecked());
    EXPECT_FALSE(window->findChild<QLineEdit *>(u"receivedVolume"_s)->isVisible());
    enter(u"receivedMass"_s, u"25,5"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(book->lots().all().size(), 1U) << noticeText().toStdString();
    EXPECT_EQ(book->lots().all()[0].dry_mg, 25.5);
    press(Qt::Key_Escape);
    ASSERT_EQ(model(u"lots"_s).rowCount(), 1) << "it is in hand";
    EXPECT_EQ(shown(model(u"lots"_s), 0, ui::LotsModel::Left), u"dry"_s);
    EXPECT_EQ(shown(model(u"lots"_s), 0, ui::LotsModel::Standing), u"dry, not dissolved yet"_s);

    choose(u"lots"_s, 0);
    press(Qt::Key_Return);
    auto *what = find<QComboBox>(u"lotEvent"_s);
    EXPECT_EQ(what->currentText(), u"It was dissolved"_s) << "what comes next stands first";
    QApplication::processEvents();
    const auto bottom = [](const QWidget *field) {
        return field->mapTo(field->window(), QPoint(0, field->height())).y();
    };
    const auto *day = find<QLineEdit>(u"lotDay"_s);
    const auto *note = find<QLineEdit>(u"lotReason"_s);
    EXPECT_GE(bottom(note) - bottom(day), 4 * note->height())
        << "volume, solvent and days stand between them";
    EXPECT_EQ(find<QLineEdit>(u"lotKeeps"_s)->text(), u"14"_s) << "as the label says";
    enter(u"lotVolume"_s, u"4"_s);
    press(Qt::Key_Return);
    EXPECT_TRUE(noticeText().startsWith(u"Say in what it was dissolved"_s)) << noticeText().toStdString();
    type(u"water"_s);
    press(Qt::Key_Return);
    ASSERT_TRUE(book->lots().all()[0].dissolved) << noticeText().toStdString();
    EXPECT_EQ(book->lots().all()[0].remaining_mL, 4);
    EXPECT_EQ(planning::lastGoodDay(book->lots().all()[0]), QDate(2026, 3, 16));

    what->setCurrentIndex(what->findText(u"It was divided into aliquots"_s));
    enter(u"lotVolume"_s, u"0,7"_s);
    enter(u"lotAliquots"_s, u"5"_s);
    enter(u"lotKeeps"_s, u"90"_s);
    enterBox(u"lotPlace"_s, u"freezer 2"_s);
    enter(u"lotWarmest"_s, u"-10"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(book->lots().all().size(), 6U) << noticeText().toStdString();
    EXPECT_EQ(book->lots().all()[0].remaining_mL, 0.5);
    const planning::Lot aliquot = book->lots().all()[5];
    EXPECT_EQ(aliquot.lot, u"N-12, aliquot 5"_s);
    EXPECT_EQ(aliquot.place, (planning::StoragePlace{u"freezer 2"_s, {}, -10}));
    EXPECT_EQ(planning::lastGoodDay(aliquot), QDate(2026, 5, 31));

    what->setCurrentIndex(what->findText(u"It was moved"_s));
    enterBox(u"lotPlace"_s, u"cold room"_s);
    enter(u"lotColdest"_s, u"2"_s);
    enter(u"lotWarmest"_s, u"8"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->lots().all()[0].place, (planning::StoragePlace{u"cold room"_s, 2, 8}))
        << noticeText().toStdString();
    what->setCurrentIndex(what->findText(u"There is something to note about it"_s));
    enter(u"lotReason"_s, u"a little turbid"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->lots().movements({1}).back().note, u"a little turbid"_s);
    press(Qt::Key_Escape);
    EXPECT_EQ(model(u"lots"_s).rowCount(), 6);
    enter(u"lotsFilter"_s, u"cold room"_s);
    EXPECT_EQ(model(u"lots"_s).rowCount(), 1);
}

TEST_F(StoresWindow, LotsAreFoundByWordsOfReagentLotAndState)
{
    for (int i = 0; i < 100; ++i)
        book->lots().receive(
            {i % 2 ? u"Water"_s : u"Buffer pH 9"_s, u"L-%1"_s.arg(i, 3, 10, QChar(u'0')), {}, {}}, 1000,
            u"Ines"_s);
    book->lots().receive({u"Enzyme suspension"_s, u"E-1"_s, QDate(2026, 3, 1), {}}, 1, u"Ines"_s);
    open(Qt::Key_L);
    ASSERT_EQ(model(u"lots"_s).rowCount(), 101);
    press(Qt::Key_D, Qt::AltModifier);
    ASSERT_EQ(focusName(), u"lotsFilter"_s);
    type(u"expired susp"_s);
    ASSERT_EQ(model(u"lots"_s).rowCount(), 1);
    EXPECT_EQ(shown(model(u"lots"_s), 0, ui::LotsModel::Lot), u"E-1"_s);
    press(Qt::Key_Down);
    ASSERT_EQ(focusName(), u"lots"_s);
    press(Qt::Key_Return);
    EXPECT_FALSE(window->findChild<QTableView *>(u"lots"_s)->isVisible()) << "one Enter opens what was found";
    press(Qt::Key_Escape);
    ASSERT_TRUE(window->findChild<QTableView *>(u"lots"_s)->isVisible());
    enter(u"lotsFilter"_s, u"water l-07"_s);
    EXPECT_EQ(model(u"lots"_s).rowCount(), 5);
    enter(u"lotsFilter"_s, u"sulphite"_s);
    EXPECT_EQ(labelText(u"lotsEmpty"_s),
              u"No container contains all of these words. Remove one to find more."_s);
}

} // namespace
} // namespace plateau::test
