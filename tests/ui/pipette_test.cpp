// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/bench/beyondbook.h"
#include "ui/bench/pipettemodel.h"
#include "ui/bench/pipettesource.h"
#include "ui/bench/printing.h"
#include "ui/bench/stores.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>

#include <algorithm>
#include <set>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

using State = ui::PipetteSheet::State;

/// The worksheet on screen, by keys alone. The rack is the example run: two blanks and two tubes of P-104.
class PipetteScreen : public WindowBench
{
protected:
    void open()
    {
        openWindow();
        giveName();
        press(Qt::Key_G, Qt::ControlModifier);
        ASSERT_EQ(focusName(), u"pipetteGrid"_s);
    }
    void giveName()
    {
        press(Qt::Key_P, Qt::AltModifier);
        type(u"R. Okafor"_s);
        press(Qt::Key_Return);
    }
    void keyReading(const QString &text)
    {
        ASSERT_EQ(focusName(), u"readingEntry"_s);
        type(text);
        press(Qt::Key_Enter, Qt::KeypadModifier);
        // Nobody waits here: what is read too early is asked about.
        if (focusName() == u"readingEntry"_s && !find<QLineEdit>(u"readingEntry"_s)->text().isEmpty())
            press(Qt::Key_Enter, Qt::KeypadModifier);
    }
    QString action() const { return labelText(u"pipetteAction"_s); }
    QString strip() const { return labelText(u"nextAction"_s); }
    /// P-104 is diluted in two steps.
    static run::Run dilutedRun()
    {
        run::Run run = exampleRun();
        run.samples[0].dilution = {{5, 50, {}}, {1, 10, {}}};
        return run;
    }
    int dilutionMarks(notebook::RunId id) const { return static_cast<int>(book->load(id).dilutionMarks.size()); }
    int marks(notebook::RunId id) const { return static_cast<int>(book->load(id).marks.size()); }
    QModelIndex cell(int tube) const
    {
        const auto *grid = find<QTableView>(u"pipetteGrid"_s);
        const int columns = grid->model()->columnCount();
        return grid->model()->index(tube / columns, tube % columns);
    }
    State stateOf(int tube) const
    {
        return static_cast<State>(cell(tube).data(ui::PipetteModel::StateRole).toInt());
    }
    QString wordsOf(int tube) const { return cell(tube).data(ui::PipetteModel::StateWordsRole).toString(); }
    QString stepTubes(int row) const
    {
        return find<QTableView>(u"pipetteSteps"_s)->model()->index(row, 2).data().toString();
    }
};

TEST_F(PipetteScreen, AWholeRunIsPipettedAndReadByKeysAlone)
{
    const notebook::RunId id = addRun(exampleRun());
    open();
    EXPECT_EQ(strip(), u"Rack A, tube 1: add 1\u00a0mL buffer pH 9"_s);
    EXPECT_EQ(action(), u"Tube 1: add 1\u00a0mL buffer pH 9"_s);
    EXPECT_EQ(labelText(u"nextProgress"_s), u"Rack A: tubes 0 of 4"_s);
    EXPECT_TRUE(labelText(u"pipetteProgress"_s).endsWith(u"\nTubes 0 of 4"_s));
    press(Qt::Key_Space);
    EXPECT_EQ(marks(id), 1);
    EXPECT_EQ(stateOf(0), State::Ticked);
    EXPECT_EQ(action(), u"Tube 2: add 1\u00a0mL buffer pH 9"_s);
    EXPECT_EQ(strip(), u"Rack A, tube 2: add 1\u00a0mL buffer pH 9"_s);
    EXPECT_EQ(stepTubes(0), u"1 of 4"_s);
    type(u"+"_s); // the rest of the row
    EXPECT_EQ(marks(id), 4);
    EXPECT_EQ(action(), u"Tube 1: add 1\u00a0mL water"_s);
    type(u"*"_s);
    EXPECT_EQ(action(), u"Tube 1: add 100\u00a0µL water"_s) << "in place of sample";
    EXPECT_TRUE(noticeText().contains(u"in place of sample"_s)) << noticeText().toStdString();
    press(Qt::Key_Enter, Qt::KeypadModifier);
    press(Qt::Key_Space);
    EXPECT_EQ(action(), u"Tube 3: add 100\u00a0µL P-104"_s);
    press(Qt::Key_Space);
    press(Qt::Key_Space);
    EXPECT_EQ(marks(id), 12);

    EXPECT_EQ(action(), u"Wait, then read A1"_s);
    EXPECT_EQ(wordsOf(0), u"to read"_s);
    EXPECT_TRUE(labelText(u"pipetteContents"_s).contains(u"wait 3 to 10\u00a0min"_s));
    EXPECT_EQ(strip(), u"Rack A, tube 1: key A1"_s);
    ASSERT_EQ(focusName(), u"pipetteGoOn"_s);
    press(Qt::Key_Return);
    for (const QString &text : {u"0.100"_s, u"0.101"_s, u"0.120"_s, u"0.121"_s})
        keyReading(text);
    ASSERT_EQ(focusName(), u"toReview"_s) << "nothing to key before the starter is in";
    EXPECT_EQ(strip(), u"Rack A, tube 1: add 20\u00a0µL enzyme suspension"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"pipetteGrid"_s);
    EXPECT_EQ(labelText(u"pipetteHints"_s), u"Swirl before use. Mix afterwards."_s);
    type(u"*"_s);
    EXPECT_TRUE(noticeText().startsWith(u"Ticked together, 4 tubes count as started at this moment"_s))
        << noticeText().toStdString();
    EXPECT_EQ(action(), u"Tube 1: add 20\u00a0µL enzyme suspension"_s) << "nothing is ticked yet";
    type(u"*"_s);
    EXPECT_EQ(action(), u"Wait, then read A2"_s);
    press(Qt::Key_Return);
    for (const QString &text : {u"0.110"_s, u"0.111"_s, u"0.630"_s, u"0.633"_s})
        keyReading(text);
    press(Qt::Key_Return);
    // All of it took a moment, where the method waits a quarter of an hour.
    EXPECT_EQ(labelText(u"verdict"_s), u"1 of 1 to investigate"_s);
    EXPECT_EQ(marks(id), 16);
}

TEST_F(PipetteScreen, ATickIsShownOnlyWhenTheNotebookHasIt)
{
    const notebook::RunId id = addRun(exampleRun());
    open();
    book->decide(id, notebook::DecisionKind::Rejected, u"M. Lindqvist"_s, u"rack fell over"_s);
    press(Qt::Key_Space);
    EXPECT_EQ(marks(id), 0);
    EXPECT_EQ(stateOf(0), State::Due);
    EXPECT_EQ(action(), u"Tube 1: add 1\u00a0mL buffer pH 9"_s) << "the cursor stays";
    EXPECT_FALSE(noticeText().isEmpty());
}

TEST_F(PipetteScreen, UndoTakesBackWhatTheLastKeyTicked)
{
    const notebook::RunId id = addRun(exampleRun());
    open();
    press(Qt::Key_Space);
    type(u"*"_s);
    ASSERT_EQ(marks(id), 4);
    ASSERT_EQ(action(), u"Tube 1: add 1\u00a0mL water"_s);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(action(), u"Tube 2: add 1\u00a0mL buffer pH 9"_s) << "three ticks of one key";
    EXPECT_EQ(stateOf(0), State::Ticked);
    EXPECT_EQ(stateOf(1), State::Due);
    EXPECT_EQ(stateOf(3), State::Due);
    type(u"-"_s);
    EXPECT_EQ(stateOf(0), State::Due);
    EXPECT_EQ(action(), u"Tube 1: add 1\u00a0mL buffer pH 9"_s);
    EXPECT_FALSE(find<QPushButton>(u"pipetteUndo"_s)->isEnabled());
}

TEST_F(PipetteScreen, UndoTakesBackASpoiltMarkBeforeTheTicksAheadOfIt)
{
    const notebook::RunId id = addRun(exampleRun());
    open();
    press(Qt::Key_Space);
    press(Qt::Key_Space);
    type(u"/"_s);
    type(u"dropped"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(stateOf(2), State::Spoilt);
    EXPECT_TRUE(noticeText().contains(u"Tube 3 is marked as spoilt: dropped. Undo"_s))
        << noticeText().toStdString();
    type(u"-"_s);
    EXPECT_EQ(stateOf(1), State::Ticked) << "the tick of another tube stays";
    EXPECT_EQ(stateOf(2), State::Due);
    EXPECT_EQ(book->load(id).marks.back().kind, notebook::MarkKind::Unspoilt);
    EXPECT_EQ(book->load(id).marks.back().note, u"taken back at once"_s);
    EXPECT_TRUE(noticeText().contains(u"tube 3 is not marked as spoilt any more (dropped)"_s))
        << noticeText().toStdString();
    EXPECT_EQ(action(), u"Tube 3: add 1\u00a0mL buffer pH 9"_s);
    type(u"-"_s);
    EXPECT_EQ(stateOf(1), State::Due);
    EXPECT_EQ(stateOf(0), State::Ticked);
    EXPECT_TRUE(noticeText().contains(u"Taken back: 1\u00a0mL buffer pH 9 in tube 2."_s))
        << noticeText().toStdString();
    type(u"-"_s);
    EXPECT_EQ(stateOf(0), State::Due);
    EXPECT_FALSE(find<QPushButton>(u"pipetteUndo"_s)->isEnabled());
}

TEST_F(PipetteScreen, UndoTakesBackARestoredTubeAndAnotherVolume)
{
    const notebook::RunId id = addRun(exampleRun());
    open();
    press(Qt::Key_Space);
    type(u"/"_s);
    type(u"dropped"_s);
    press(Qt::Key_Return);
    press(Qt::Key_Space); // tube 3
    press(Qt::Key_Left);
    press(Qt::Key_Left);
    EXPECT_TRUE(labelText(u"pipetteHints"_s).contains(u"Press / to let it count again"_s));
    type(u"/"_s);
    type(u"only the cap"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(stateOf(1), State::Due);
    type(u"-"_s);
    EXPECT_EQ(book->load(id).run.tubes[1].spoilt, u"dropped"_s);
    type(u"-"_s);
    EXPECT_EQ(stateOf(2), State::Due);
    type(u"-"_s);
    EXPECT_EQ(stateOf(1), State::Due);
    EXPECT_EQ(stateOf(0), State::Ticked);

    press(Qt::Key_Home, Qt::ControlModifier);
    type(u"0.8"_s);
    press(Qt::Key_Return);
    ASSERT_DOUBLE_EQ(book->load(id).run.tubes[0].pipetted_mL.at(u"buffer"_s), 0.8);
    type(u"-"_s);
    EXPECT_EQ(stateOf(0), State::Ticked) << "what was ticked before counts again";
    EXPECT_FALSE(book->load(id).run.tubes[0].pipetted_mL.contains(u"buffer"_s));
    EXPECT_TRUE(
        noticeText().contains(u"Taken back: 800\u00a0µL buffer pH 9 in tube 1; 1\u00a0mL counts again."_s))
        << noticeText().toStdString();
    type(u"-"_s);
    EXPECT_EQ(stateOf(0), State::Due);
}

TEST_F(PipetteScreen, TheNextStartGoesOnWhereTheLastOneStopped)
{
    const notebook::RunId id = addRun(exampleRun());
    open();
    type(u"*"_s);
    press(Qt::Key_Space);
    window.reset();
    open();
    EXPECT_EQ(action(), u"Tube 2: add 1\u00a0mL water"_s);
    EXPECT_EQ(stepTubes(0), u"4 of 4"_s);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(action(), u"Tube 1: add 1\u00a0mL water"_s) << "what was ticked yesterday can be taken back";
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(action(), u"Tube 1: add 1\u00a0mL buffer pH 9"_s) << "four ticks of one key";
    EXPECT_EQ(marks(id), 10);
}

TEST_F(PipetteScreen, AnotherVolumeIsNotedByTypingIt)
{
    const notebook::RunId id = addRun(exampleRun());
    open();
    type(u"*"_s);
    type(u"*"_s);
    press(Qt::Key_Right);
    press(Qt::Key_Right);
    ASSERT_EQ(action(), u"Tube 3: add 100\u00a0µL P-104"_s);
    type(u"150"_s);
    EXPECT_EQ(find<QLineEdit>(u"pipettedVolume"_s)->text(), u"150"_s);
    EXPECT_TRUE(labelText(u"pipetteNoteTitle"_s).startsWith(u"Tube 3"_s));
    press(Qt::Key_Enter, Qt::KeypadModifier);
    ASSERT_EQ(focusName(), u"pipetteGrid"_s);
    EXPECT_EQ(wordsOf(2), u"150\u00a0µL"_s);
    EXPECT_EQ(cell(2).data(ui::PipetteModel::DetailRole).toString(), u"noted, not 100\u00a0µL"_s);
    EXPECT_TRUE(cell(2).data(ui::PipetteModel::DifferentRole).toBool());
    EXPECT_EQ(action(), u"Tube 4: add 100\u00a0µL P-104"_s) << "on with the next";
    const run::Run run = book->load(id).run;
    EXPECT_DOUBLE_EQ(run.tubes[2].pipetted_mL.at(u"sample"_s), 0.15);
    EXPECT_FALSE(run.tubes[3].pipetted_mL.contains(u"sample"_s));
}

TEST_F(PipetteScreen, AVolumeThatCannotBeRightIsAskedAboutFirst)
{
    const notebook::RunId id = addRun(exampleRun());
    open();
    type(u"10"_s);
    EXPECT_EQ(find<QLabel>(u"pipetteNoteTitle"_s)->text().contains(u"1\u00a0mL"_s), true);
    press(Qt::Key_Return);
    EXPECT_EQ(marks(id), 0);
    EXPECT_TRUE(noticeText().contains(u"10\u00a0mL is far from 1\u00a0mL"_s)) << noticeText().toStdString();
    press(Qt::Key_Backspace);
    EXPECT_TRUE(noticeText().isEmpty()) << "another number, another question";
    type(u",,"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(marks(id), 0) << "that is no number";
    press(Qt::Key_Escape);
    EXPECT_EQ(focusName(), u"pipetteGrid"_s);
    EXPECT_EQ(stateOf(0), State::Due);
    type(u"4"_s);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_EQ(marks(id), 1);
    EXPECT_EQ(book->load(id).marks[0].volume_mL, 4);
}

TEST_F(PipetteScreen, ANoteThatWasBegunWaitsWhereItWasTyped)
{
    const notebook::RunId id = addRun(exampleRun());
    addRun(exampleRun());
    open();
    type(u"1,2"_s);
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_TRUE(noticeText().contains(u"tube 1: 1,2"_s)) << noticeText().toStdString();
    press(Qt::Key_PageDown, Qt::ControlModifier);
    ASSERT_EQ(labelText(u"rackLetter"_s), u"Rack B"_s);
    ASSERT_EQ(focusName(), u"pipetteGrid"_s) << "nothing was begun in this rack";
    window->close();
    ASSERT_EQ(dialogs.questions.size(), 1);
    EXPECT_TRUE(dialogs.questions[0].contains(u"Rack A, tube 1: 1,2"_s))
        << dialogs.questions[0].toStdString();
    press(Qt::Key_PageUp, Qt::ControlModifier);
    ASSERT_EQ(focusName(), u"pipettedVolume"_s);
    EXPECT_EQ(find<QLineEdit>(u"pipettedVolume"_s)->text(), u"1,2"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(marks(id), 1);
    EXPECT_EQ(book->load(id).marks[0].volume_mL, 1.2);
    window->close();
    EXPECT_EQ(dialogs.questions.size(), 1) << "nothing is lost, nothing to ask";
}

TEST_F(PipetteScreen, ASpikeIsARoundOfItsOwn)
{
    run::Run run = exampleRun();
    run.standards = {{u"STD"_s, 0.2, {}, {}, {}, 0}};
    run.tubes[3].role = run::Role::Spiked;
    run.tubes[3].spike = run::Spike{u"STD"_s, 0.1};
    const notebook::RunId id = addRun(run);
    open();
    type(u"*"_s);
    EXPECT_TRUE(cell(3).data(ui::PipetteModel::OddRole).toBool()) << "less water where the spike goes in";
    EXPECT_EQ(wordsOf(3), u"900\u00a0µL"_s);
    type(u"**"_s);
    EXPECT_TRUE(noticeText().contains(u"Ticked together"_s)) << "most tubes wait from the sample on: " << noticeText().toStdString();
    type(u"*"_s);
    EXPECT_EQ(action(), u"Tube 4: add 100\u00a0µL STD"_s);
    EXPECT_EQ(stateOf(0), State::Nothing);
    EXPECT_EQ(wordsOf(0), u"nothing"_s);
    press(Qt::Key_Space);
    const std::vector<notebook::StoredMark> made = book->load(id).marks;
    ASSERT_EQ(made.size(), 13U);
    EXPECT_EQ(made.back().dose, (notebook::Dose{3, u"sample"_s, true}));
    EXPECT_EQ(action(), u"Wait, then read A1"_s);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(action(), u"Tube 4: add 100\u00a0µL STD"_s);
}

TEST_F(PipetteScreen, ASpoiltTubeIsLeftOutAndNotReadAndMayComeBack)
{
    const notebook::RunId id = addRun(exampleRun());
    open();
    type(u"/"_s);
    ASSERT_EQ(focusName(), u"pipetteReason"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(marks(id), 0) << "no reason, no mark";
    type(u"dropped"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->load(id).run.tubes[0].spoilt, u"dropped"_s);
    EXPECT_EQ(stateOf(0), State::Spoilt);
    EXPECT_EQ(wordsOf(0), u"spoilt: dropped"_s);
    EXPECT_EQ(action(), u"Tube 2: add 1\u00a0mL buffer pH 9"_s);
    EXPECT_EQ(stepTubes(0), u"0 of 3"_s);
    type(u"****"_s); // the sample, which starts the wait for A1, is asked about once
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 2: A1"_s) << "nobody reads a spoilt tube";
    EXPECT_TRUE(find<QTableView>(u"readingsTable"_s)
                    ->model()
                    ->index(0, 1)
                    .data()
                    .toString()
                    .contains(u"spoilt: dropped"_s));

    press(Qt::Key_1, Qt::ControlModifier);
    tabTo(u"pipetteGrid"_s);
    press(Qt::Key_Home, Qt::ControlModifier);
    type(u"/"_s);
    ASSERT_EQ(focusName(), u"pipetteReason"_s);
    type(u"it was tube 1 of the other rack"_s);
    press(Qt::Key_Return);
    EXPECT_TRUE(book->load(id).run.tubes[0].spoilt.isEmpty());
    EXPECT_EQ(action(), u"Tube 1: add 1\u00a0mL buffer pH 9"_s);
}

TEST_F(PipetteScreen, ARunPipettedFromPaperIsReadAtOnce)
{
    const notebook::RunId id = addRun(exampleRun());
    open();
    find<QPushButton>(u"pipetteFromPaper"_s)->setFocus();
    press(Qt::Key_Space);
    EXPECT_EQ(strip(), u"Rack A, tube 1: key A1"_s);
    for (const QString &text : {u"0.100"_s, u"0.101"_s, u"0.120"_s, u"0.121"_s, u"0.110"_s})
        keyReading(text);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 2: A2"_s) << "the starter is nowhere asked for";
    EXPECT_EQ(marks(id), 0);
    window.reset();
    openWindow();
    EXPECT_EQ(strip(), u"Rack A, tube 2: key A2"_s) << "the readings say it at the next start";
}

TEST_F(PipetteScreen, WhoGoesToTheReadingsMayReadWithoutAnyTick)
{
    addRun(exampleRun());
    open();
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 1: A1"_s);
    keyReading(u"0.100"_s);
    EXPECT_EQ(strip(), u"Rack A, tube 2: key A1"_s);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 2: A1"_s);
}

TEST_F(PipetteScreen, ARunThatCameWithReadingsIsNeverAskedToBePipetted)
{
    run::Run run = exampleRun();
    run.tubes[0].readings = {{u"A1"_s, 0.1}};
    addRun(run);
    openWindow();
    EXPECT_EQ(strip(), u"Rack A, tube 2: key A1"_s);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 2: A1"_s);
    press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(action(), u"Pipetted from paper"_s);
}

TEST_F(PipetteScreen, TheTickWaitsForAName)
{
    const notebook::RunId id = addRun(exampleRun());
    openWindow();
    press(Qt::Key_G, Qt::ControlModifier);
    press(Qt::Key_Space);
    EXPECT_EQ(marks(id), 0);
    ASSERT_EQ(focusName(), u"person"_s);
    type(u"R. Okafor"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(marks(id), 1);
    EXPECT_EQ(book->load(id).marks[0].person, u"R. Okafor"_s);
    EXPECT_EQ(focusName(), u"pipetteGrid"_s);
    EXPECT_EQ(action(), u"Tube 2: add 1\u00a0mL buffer pH 9"_s);
}

TEST_F(PipetteScreen, TheCountOfTubesIsNeverCut)
{
    run::Run run = exampleRun();
    while (run.tubes.size() < 24)
        run.tubes.push_back(run.tubes.back());
    addRun(run);
    open();
    const auto *steps = find<QTableView>(u"pipetteSteps"_s);
    constexpr int tubes = 2;
    for (int round = 0; round < 3; ++round) {
        for (int row = 0; row < steps->model()->rowCount(); ++row) {
            const QModelIndex count = steps->model()->index(row, tubes);
            if (steps->visualRect(steps->model()->index(row, 0)).intersects(steps->viewport()->rect())) {
                EXPECT_GE(steps->columnWidth(tubes), steps->sizeHintForIndex(count).width())
                    << round << ", " << stepTubes(row).toStdString();
            }
        }
        type(u"*"_s);
    }
    EXPECT_EQ(stepTubes(0), u"24 of 24"_s);
}

TEST_F(PipetteScreen, TheSampleToBeDilutedIsNotCutFromTheListOfSteps)
{
    run::Run run = exampleRun();
    run.samples[0].id = u"Ice cider of the northern slope, tank 9, second filling"_s;
    for (run::Tube &tube : run.tubes) {
        if (!tube.sample.isEmpty())
            tube.sample = run.samples[0].id;
    }
    run.samples[0].dilution = {{2, 10, {}}};
    addRun(run);
    open();
    const auto *steps = find<QTableView>(u"pipetteSteps"_s);
    const QString words = steps->model()->index(0, 0).data().toString();
    ASSERT_TRUE(words.endsWith(run.samples[0].id)) << words.toStdString();
    const QRect needed = steps->fontMetrics().boundingRect(QRect(0, 0, steps->columnWidth(0) - 8, 1000),
                                                           Qt::TextWordWrap, words);
    EXPECT_GE(steps->rowHeight(0), needed.height()) << words.toStdString();
    EXPECT_GT(steps->rowHeight(0), steps->rowHeight(1)) << "in two lines or more";
}

TEST_F(PipetteScreen, DilutionsAreTickedAmongTheStepsByTheSameKeys)
{
    const notebook::RunId id = addRun(dilutedRun());
    open();
    EXPECT_EQ(action(), u"Tube 1: add 1\u00a0mL buffer pH 9"_s) << "who ticks none is not held up";
    tabTo(u"pipetteSteps"_s);
    EXPECT_EQ(action(), u"P-104, step 1 of 2: dilute 5\u00a0mL to 50\u00a0mL"_s);
    EXPECT_EQ(labelText(u"pipetteContents"_s), u"Dilution 1 of 2; 0 made so far."_s);
    press(Qt::Key_Space);
    ASSERT_EQ(dilutionMarks(id), 1);
    EXPECT_EQ(book->load(id).dilutionMarks[0].person, u"R. Okafor"_s);
    EXPECT_EQ(action(), u"P-104, step 2 of 2: dilute 1\u00a0mL to 10\u00a0mL"_s);
    EXPECT_EQ(focusName(), u"pipetteSteps"_s);
    press(Qt::Key_Enter, Qt::KeypadModifier);
    ASSERT_EQ(dilutionMarks(id), 2);
    EXPECT_EQ(marks(id), 0);
    EXPECT_EQ(focusName(), u"pipetteGrid"_s) << "all are made";
    EXPECT_EQ(action(), u"Tube 1: add 1\u00a0mL buffer pH 9"_s);
    EXPECT_FALSE(window->findChild<QLabel *>(u"pipetteHints"_s)->text().contains(u"dilutions"_s));
    window.reset();
    open();
    tabTo(u"pipetteSteps"_s);
    EXPECT_EQ(action(), u"P-104, step 1 of 2: diluted 5\u00a0mL to 50\u00a0mL"_s) << "the next start knows";
}

TEST_F(PipetteScreen, ATickOfADilutionMadeByMistakeIsTakenBackWhereItStands)
{
    const notebook::RunId id = addRun(dilutedRun());
    open();
    tabTo(u"pipetteSteps"_s);
    type(u"*"_s);
    ASSERT_EQ(dilutionMarks(id), 2);
    tabTo(u"pipetteSteps"_s);
    ASSERT_EQ(action(), u"P-104, step 1 of 2: diluted 5\u00a0mL to 50\u00a0mL"_s);
    EXPECT_EQ(find<QPushButton>(u"pipetteTick"_s)->text(), u"&Take the tick back  Space"_s);
    press(Qt::Key_Space);
    EXPECT_EQ(book->load(id).dilutionMarks.back().kind, notebook::MarkKind::Undone);
    EXPECT_EQ(action(), u"P-104, step 1 of 2: dilute 5\u00a0mL to 50\u00a0mL"_s);
    EXPECT_EQ(focusName(), u"pipetteSteps"_s);
    type(u"-"_s);
    EXPECT_EQ(noticeText(), u"Ticked again: the dilution of P-104, step 1 of 2."_s);
    EXPECT_EQ(action(), u"P-104, step 1 of 2: diluted 5\u00a0mL to 50\u00a0mL"_s);
    type(u"-"_s);
    EXPECT_EQ(noticeText(), u"Taken back: the dilution of P-104, step 1 of 2; P-104, step 2 of 2."_s);
    EXPECT_FALSE(find<QPushButton>(u"pipetteUndo"_s)->isEnabled());
}

TEST_F(PipetteScreen, UndoTakesBackDilutionsAndAdditionsInTheOrderTheyWereTicked)
{
    const notebook::RunId id = addRun(dilutedRun());
    open();
    tabTo(u"pipetteSteps"_s);
    press(Qt::Key_Space);
    tabTo(u"pipetteGrid"_s);
    ASSERT_EQ(action(), u"Tube 1: add 1\u00a0mL buffer pH 9"_s) << "the grid is about tubes again";
    press(Qt::Key_Space);
    ASSERT_EQ(marks(id), 1);
    tabTo(u"pipetteSteps"_s);
    press(Qt::Key_Space);
    ASSERT_EQ(dilutionMarks(id), 2);
    type(u"-"_s);
    EXPECT_EQ(noticeText(), u"Taken back: the dilution of P-104, step 2 of 2."_s);
    EXPECT_EQ(focusName(), u"pipetteSteps"_s);
    EXPECT_EQ(stateOf(0), State::Ticked);
    type(u"-"_s);
    EXPECT_EQ(stateOf(0), State::Due);
    EXPECT_EQ(focusName(), u"pipetteGrid"_s);
    type(u"-"_s);
    EXPECT_EQ(noticeText(), u"Taken back: the dilution of P-104, step 1 of 2."_s);
    EXPECT_FALSE(find<QPushButton>(u"pipetteUndo"_s)->isEnabled());
    EXPECT_EQ(dilutionMarks(id), 4);
}

TEST_F(PipetteScreen, TheTickOfADilutionWaitsForAName)
{
    const notebook::RunId id = addRun(dilutedRun());
    openWindow();
    press(Qt::Key_G, Qt::ControlModifier);
    tabTo(u"pipetteSteps"_s);
    press(Qt::Key_Space);
    EXPECT_EQ(dilutionMarks(id), 0);
    ASSERT_EQ(focusName(), u"person"_s);
    type(u"R. Okafor"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(dilutionMarks(id), 1);
    EXPECT_EQ(action(), u"P-104, step 2 of 2: dilute 1\u00a0mL to 10\u00a0mL"_s);
}

TEST_F(PipetteScreen, TheStarterBeforeItsReadingIsAskedAboutOnce)
{
    const notebook::RunId id = addRun(exampleRun());
    open();
    type(u"****"_s); // the sample, which starts the wait for A1, is asked about once
    ASSERT_EQ(marks(id), 12);
    tabTo(u"pipetteSteps"_s);
    auto *steps = find<QTableView>(u"pipetteSteps"_s);
    steps->setCurrentIndex(steps->model()->index(6, 0));
    press(Qt::Key_Return);
    ASSERT_EQ(action(), u"Tube 1: add 20\u00a0µL enzyme suspension"_s);
    press(Qt::Key_Space);
    EXPECT_EQ(marks(id), 12);
    EXPECT_TRUE(noticeText().contains(u"A1 of tube 1 is not read yet"_s)) << noticeText().toStdString();
    press(Qt::Key_Space);
    EXPECT_EQ(marks(id), 13);
    EXPECT_TRUE(noticeText().isEmpty()) << noticeText().toStdString();
}

TEST_F(PipetteScreen, TicksCarryTheLotAndThePipetteThatAreChosen)
{
    const notebook::RunId id = addRun(exampleRun());
    const notebook::LotId first =
        book->lots().receive({u"Buffer pH 9"_s, u"B-1"_s, QDate(2027, 1, 31), {}}, 100, u"M. Lindqvist"_s);
    const notebook::LotId second =
        book->lots().receive({u"buffer PH 9"_s, u"B-2"_s, {}, {}}, 100, u"M. Lindqvist"_s);
    book->lots().receive({u"Water"_s, u"W-1"_s, {}, {}}, 100, u"M. Lindqvist"_s);
    open();
    press(Qt::Key_L, Qt::AltModifier);
    ASSERT_EQ(focusName(), u"pipetteLot"_s);
    const auto *lots = find<QComboBox>(u"pipetteLot"_s);
    ASSERT_EQ(lots->count(), 3) << "none, and those of the buffer";
    EXPECT_EQ(lots->itemText(1), u"B-1, use by 2027-01-31"_s);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"pipetteGrid"_s);
    press(Qt::Key_Space);
    press(Qt::Key_L, Qt::AltModifier);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    press(Qt::Key_Space);
    const std::vector<notebook::StoredMark> made = book->load(id).marks;
    ASSERT_EQ(made.size(), 2U);
    EXPECT_EQ(made[0].lot, first);
    EXPECT_EQ(made[1].lot, second);
    EXPECT_EQ(made[1].pipette, u"piston pipette 100 to 1000 µL"_s) << "the smallest that makes 1 mL";
    window.reset();
    open();
    press(Qt::Key_Space);
    EXPECT_EQ(book->load(id).marks[2].lot, second) << "the lot in use is still that";
}

TEST_F(PipetteScreen, GoesOnWithTheNextLotWhereOneIsUsedUp)
{
    // 1 mL of buffer a tube: three tubes of the first, and the fourth of the one that ends next.
    run::Run run = exampleRun();
    run.lots = {{u"buffer"_s, u"B-1"_s, QDate(2027, 1, 31)}};
    const notebook::LotId first =
        book->lots().receive({u"Buffer pH 9"_s, u"B-1"_s, QDate(2027, 1, 31), {}}, 3, u"M. Lindqvist"_s);
    book->lots().receive({u"Buffer pH 9"_s, u"B-3"_s, QDate(2028, 1, 31), {}}, 10, u"M. Lindqvist"_s);
    const notebook::LotId second =
        book->lots().receive({u"Buffer pH 9"_s, u"B-2"_s, QDate(2027, 6, 30), {}}, 10, u"M. Lindqvist"_s);
    const notebook::RunId id = addRun(run);
    open();
    const auto *lot = find<QComboBox>(u"pipetteLot"_s);
    EXPECT_TRUE(lot->currentText().startsWith(u"B-1"_s)) << lot->currentText().toStdString();
    EXPECT_TRUE(labelText(u"pipetteHints"_s).contains(u"Lot B-1 is enough for 3 tubes more; then take lot B-2."_s))
        << labelText(u"pipetteHints"_s).toStdString();
    type(u"*"_s);
    EXPECT_EQ(marks(id), 3) << "what the bottle holds";
    EXPECT_EQ(action(), u"Tube 4: add 1\u00a0mL buffer pH 9"_s);
    EXPECT_TRUE(noticeText().contains(u"lot B-1 is used up"_s)) << noticeText().toStdString();
    EXPECT_TRUE(lot->currentText().startsWith(u"B-2"_s)) << lot->currentText().toStdString();
    EXPECT_FALSE(window->findChild<QLabel *>(u"pipetteHints"_s)->text().contains(u"B-2"_s)) << "it is enough for all that are due";
    type(u"*"_s);
    const auto made = book->load(id).marks;
    ASSERT_EQ(made.size(), 4U);
    for (std::size_t tube = 0; tube < 3; ++tube)
        EXPECT_EQ(made[tube].lot, first);
    EXPECT_EQ(made[3].lot, second);
    const auto left = [this](notebook::LotId wanted) {
        double remaining_mL = -1;
        for (const planning::Lot &one : book->lots().all())
            remaining_mL = one.id == wanted.value ? one.remaining_mL : remaining_mL;
        return remaining_mL;
    };
    EXPECT_NEAR(left(first), 0, 1e-9);
    EXPECT_NEAR(left(second), 9, 1e-9);

    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_NEAR(left(second), 10, 1e-9);
    EXPECT_NEAR(left(first), 0, 1e-9);
    EXPECT_TRUE(lot->currentText().startsWith(u"B-2"_s)) << lot->currentText().toStdString();
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_NEAR(left(first), 3, 1e-9);
    EXPECT_TRUE(lot->currentText().startsWith(u"B-1"_s)) << lot->currentText().toStdString();
    for (int tube = 0; tube < 4; ++tube)
        press(Qt::Key_Space);
    EXPECT_NEAR(left(first), 0, 1e-9) << "single ticks likewise";
    EXPECT_NEAR(left(second), 9, 1e-9);
}

TEST_F(PipetteScreen, ASecondClickFindsTheButtonThatTicksWhereTheFirstOneDid)
{
    // A lot that ends on the way, and names of one line and of several.
    run::Run run = exampleRun();
    run::Sample another;
    another.id = u"Ice cider of the northern slope, tank 9, second filling, from the old oak barrel"_s;
    run.samples.insert(run.samples.begin(), another);
    run.tubes[2].sample = another.id;
    run.lots = {{u"buffer"_s, u"B-1"_s, QDate(2027, 1, 31)}};
    book->lots().receive({u"Buffer pH 9"_s, u"B-1"_s, QDate(2027, 1, 31), {}}, 3, u"M. Lindqvist"_s);
    book->lots().receive({u"Buffer pH 9"_s, u"B-2"_s, QDate(2027, 6, 30), {}}, 10, u"M. Lindqvist"_s);
    const notebook::RunId id = addRun(run);
    addRun(exampleRun());
    open();
    window->resize(1280, 800);
    QTest::qWait(20);
    auto *tick = find<QPushButton>(u"pipetteTick"_s);
    const auto *heading = find<QLabel>(u"pipetteAction"_s);
    const auto *grid = find<QTableView>(u"pipetteGrid"_s);
    const QPoint place = tick->mapTo(window.get(), tick->rect().center());
    const int oneLine = heading->height();
    int highest = oneLine;
    std::set<int> gridTops;
    for (int ticked = 1; ticked <= 12; ++ticked) {
        ASSERT_EQ(window->childAt(place), tick) << action().toStdString();
        EXPECT_EQ(tick->mapTo(window.get(), tick->rect().center()).y(), place.y()) << action().toStdString();
        EXPECT_GE(heading->height(), highest) << action().toStdString();
        highest = std::max(highest, heading->height());
        gridTops.insert(grid->mapTo(window.get(), QPoint()).y());
        QTest::mouseClick(tick, Qt::LeftButton, {}, tick->mapFrom(window.get(), place));
        QApplication::processEvents();
        ASSERT_EQ(marks(id), ticked);
        if (ticked == 3) {
            EXPECT_TRUE(noticeText().contains(u"lot B-1 is used up"_s)) << noticeText().toStdString();
        }
    }
    EXPECT_GT(highest, oneLine) << "a name of several lines was among them";
    EXPECT_GT(gridTops.size(), 1U) << "what stands between button and tubes did change its height";

    press(Qt::Key_PageDown, Qt::ControlModifier);
    ASSERT_EQ(labelText(u"rackLetter"_s), u"Rack B"_s);
    QApplication::processEvents();
    EXPECT_EQ(heading->height(), oneLine) << "another rack, other names";
}

TEST_F(PipetteScreen, TheFocusGoesDownThePageAsItStands)
{
    addRun(exampleRun());
    open();
    const auto topOf = [this](const QString &name) {
        return find<QWidget>(name)->mapTo(window.get(), QPoint()).y();
    };
    tabTo(u"pipetteTick"_s);
    QStringList passed;
    for (int step = 0; step < 20 && focusName() != u"pipetteGrid"_s; ++step) {
        passed << focusName();
        press(Qt::Key_Tab);
    }
    ASSERT_EQ(focusName(), u"pipetteGrid"_s) << passed.join(u", "_s).toStdString();
    ASSERT_TRUE(passed.contains(u"pipetteSpoilt"_s)) << passed.join(u", "_s).toStdString();
    EXPECT_LT(passed.indexOf(u"pipetteSpoilt"_s), passed.indexOf(u"pipetteUsed"_s))
        << passed.join(u", "_s).toStdString();
    EXPECT_LT(topOf(u"pipetteSpoilt"_s), topOf(u"pipetteUsed"_s));
    EXPECT_LT(topOf(u"pipetteUsed"_s), topOf(u"pipetteGrid"_s));
}

TEST_F(PipetteScreen, TheSheetOnPaperNamesTheLotsThatTheBenchGoesOnWith)
{
    // 1 mL of buffer and of water a tube, and 0.1 mL of water in place of the sample in the two blanks.
    run::Run run = exampleRun();
    const QDate end(2027, 1, 31);
    const QDate later(2027, 6, 30);
    run.lots = {{u"buffer"_s, u"B-1"_s, end}, {u"water"_s, u"W-1"_s, end}};
    const auto receive = [this](const QString &reagent, const QString &lot, const QDate &expires,
                                double volume_mL) {
        book->lots().receive({reagent, lot, expires, {}}, volume_mL, u"M. Lindqvist"_s);
    };
    receive(u"Buffer pH 9"_s, u"B-1"_s, end, 3);
    receive(u"Buffer pH 9"_s, u"B-3"_s, QDate(2028, 1, 31), 10);
    receive(u"Buffer pH 9"_s, u"B-2"_s, later, 10);
    receive(u"Water"_s, u"W-1"_s, end, 4.05);
    receive(u"Water"_s, u"W-2"_s, later, 10);
    const notebook::RunId id = addRun(run);
    open();
    const auto onPaper = [&] {
        const notebook::StoredRun stored = book->load(id);
        const auto *stores = window->findChild<ui::Stores *>();
        return ui::worksheetOf(stored, stores->laboratory(), {}, ui::lotsFor(stored, *stores),
                               StoppedClock().now())
            .lotsByRound;
    };
    using Stretches = std::vector<ui::LotStretch>;
    const auto planned = onPaper();
    ASSERT_EQ(planned.size(), 3U);
    EXPECT_EQ(planned.at(0),
              (Stretches{{{}, 0, 2, false, u"B-1"_s, end, false}, {{}, 3, 3, true, u"B-2"_s, later, false}}));
    EXPECT_EQ(planned.at(1), (Stretches{{{}, 0, 3, true, u"W-1"_s, end, false}}));
    EXPECT_EQ(planned.at(2), (Stretches{{u"Water"_s, 0, 1, true, u"W-2"_s, later, false}}));

    type(u"*"_s);
    ASSERT_EQ(marks(id), 3);
    EXPECT_EQ(onPaper(), planned) << "printed again on the way, with the first one used up";
    for (int time = 0; time < 8 && marks(id) < 12;
         ++time) // which lot comes and that all are started at once is asked or told
        type(u"*"_s);
    const std::vector<notebook::StoredMark> made = book->load(id).marks;
    ASSERT_EQ(made.size(), 12U);
    EXPECT_EQ(onPaper(), planned);
    const QStringList components{u"buffer"_s, u"water"_s, u"sample"_s};
    int compared = 0;
    for (const auto &[round, stretches] : planned) {
        for (const ui::LotStretch &stretch : stretches) {
            for (const notebook::StoredMark &mark : made) {
                if (mark.dose.component != components[round] || mark.dose.tube < stretch.firstTube ||
                    mark.dose.tube > stretch.lastTube)
                    continue;
                EXPECT_EQ(mark.lotName, stretch.lot) << round << ' ' << mark.dose.tube;
                ++compared;
            }
        }
    }
    EXPECT_EQ(compared, 4 + 4 + 2);
}

TEST_F(PipetteScreen, TheSheetOnPaperSaysNothingOfLotsThatAreEnoughOrNotInTheBook)
{
    run::Run run = exampleRun();
    run.lots = {{u"buffer"_s, u"B-1"_s, {}}, {u"water"_s, u"W-9"_s, {}}};
    book->lots().receive({u"Buffer pH 9"_s, u"B-1"_s, {}, {}}, 4, u"M. Lindqvist"_s);
    const notebook::StoredRun stored = book->load(addRun(run));
    const auto lotsOf = [&] {
        return ui::worksheetOf(stored, planning::usualLaboratory(), {}, book->lots().inHand(),
                               StoppedClock().now())
            .lotsByRound;
    };
    EXPECT_TRUE(lotsOf().empty());
    book->lots().use({1}, 1.5, u"M. Lindqvist"_s, {});
    const auto shorter = lotsOf();
    ASSERT_EQ(shorter.size(), 1U);
    EXPECT_EQ(shorter.at(0), (std::vector<ui::LotStretch>{{{}, 0, 1, false, u"B-1"_s, {}, false},
                                                          {{}, 2, 3, true, {}, {}, false}}));
}

TEST_F(PipetteScreen, AsksOnceBeforeMoreIsTakenOfALotThanItHolds)
{
    run::Run run = exampleRun();
    run.lots = {{u"buffer"_s, u"B-1"_s, QDate(2027, 1, 31)}};
    const notebook::LotId only =
        book->lots().receive({u"Buffer pH 9"_s, u"B-1"_s, QDate(2027, 1, 31), {}}, 2.5, u"M. Lindqvist"_s);
    const notebook::RunId id = addRun(run);
    open();
    EXPECT_TRUE(labelText(u"pipetteHints"_s).contains(u"Lot B-1 is enough for 2 tubes more, and no other lot is fit."_s))
        << labelText(u"pipetteHints"_s).toStdString();
    type(u"*"_s);
    ASSERT_EQ(marks(id), 2);
    EXPECT_TRUE(noticeText().contains(u"lot B-1 does not hold another tube"_s)) << noticeText().toStdString();
    type(u"*"_s);
    EXPECT_EQ(marks(id), 2) << "asked first";
    EXPECT_TRUE(noticeText().contains(u"lot B-1 does not hold another tube"_s)) << noticeText().toStdString();
    type(u"*"_s);
    const auto made = book->load(id).marks;
    ASSERT_EQ(made.size(), 4U);
    EXPECT_EQ(made[3].lot, only) << "somebody knows better than the book";
}

TEST_F(PipetteScreen, TheKeyFromAnywhereTakesMoreOfALotOnlyOnceThatWasConfirmed)
{
    run::Run run = exampleRun();
    run.lots = {{u"buffer"_s, u"B-1"_s, QDate(2027, 1, 31)}};
    const notebook::LotId only =
        book->lots().receive({u"Buffer pH 9"_s, u"B-1"_s, QDate(2027, 1, 31), {}}, 1.5, u"M. Lindqvist"_s);
    const notebook::RunId id = addRun(run);
    open();
    press(Qt::Key_F9);
    ASSERT_EQ(marks(id), 1);
    for (int time = 0; time < 2; ++time) { // pressed again it is no answer: nobody asked here
        press(Qt::Key_F9);
        EXPECT_EQ(marks(id), 1) << "by the book 0.5 mL are left, and a tube takes 1 mL";
        EXPECT_TRUE(
            noticeText().contains(u"Nothing was ticked: by the book lot B-1 does not hold another tube"_s))
            << noticeText().toStdString();
        EXPECT_TRUE(noticeText().contains(u"tick the tube on the Pipette page"_s)) << "where to confirm it";
    }
    press(Qt::Key_Space); // asked on the page
    ASSERT_EQ(marks(id), 1);
    press(Qt::Key_F9);
    EXPECT_EQ(marks(id), 1) << "asked is not confirmed";
    press(Qt::Key_Space);
    ASSERT_EQ(marks(id), 2);
    press(Qt::Key_F9);
    const auto made = book->load(id).marks;
    ASSERT_EQ(made.size(), 3U) << noticeText().toStdString();
    EXPECT_EQ(made[2].lot, only);
    book->lots().receive({u"Buffer pH 9"_s, u"B-2"_s, QDate(2027, 6, 30), {}}, 10, u"M. Lindqvist"_s);
    press(Qt::Key_F9);
    EXPECT_EQ(marks(id), 3) << "more was to be taken of the first only for want of another one";
    EXPECT_TRUE(noticeText().contains(u"which lot comes next"_s)) << noticeText().toStdString();
}

TEST_F(PipetteScreen, TheKeyFromAnywhereStaysWithALotThatWasChosenAgainstTheBook)
{
    run::Run run = exampleRun();
    run.lots = {{u"buffer"_s, u"B-1"_s, QDate(2027, 1, 31)}};
    const notebook::LotId first =
        book->lots().receive({u"Buffer pH 9"_s, u"B-1"_s, QDate(2027, 1, 31), {}}, 0.5, u"M. Lindqvist"_s);
    book->lots().receive({u"Buffer pH 9"_s, u"B-2"_s, QDate(2027, 6, 30), {}}, 10, u"M. Lindqvist"_s);
    const notebook::RunId id = addRun(run);
    open();
    const auto *lot = find<QComboBox>(u"pipetteLot"_s);
    ASSERT_TRUE(lot->currentText().startsWith(u"B-2"_s)) << "by the book";
    press(Qt::Key_L, Qt::AltModifier);
    press(Qt::Key_Up);
    press(Qt::Key_Return);
    ASSERT_TRUE(lot->currentText().startsWith(u"B-1"_s)) << lot->currentText().toStdString();
    press(Qt::Key_F9);
    EXPECT_EQ(marks(id), 0) << "chosen, and not yet taken";
    press(Qt::Key_Space);
    ASSERT_EQ(marks(id), 1);
    press(Qt::Key_F9);
    const auto made = book->load(id).marks;
    ASSERT_EQ(made.size(), 2U) << noticeText().toStdString();
    EXPECT_EQ(made[1].lot, first);
    press(Qt::Key_L, Qt::AltModifier);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    ASSERT_TRUE(lot->currentText().startsWith(u"B-2"_s)) << lot->currentText().toStdString();
    press(Qt::Key_F9);
    EXPECT_EQ(marks(id), 2) << "another one was chosen since";
}

TEST(BeyondBook, CountsForThatRunReagentAndLotUntilAnotherIsChosen)
{
    using Why = ui::BeyondBook::Why;
    ui::BeyondBook book;
    EXPECT_EQ(book.why({1}, u"Buffer"_s, {7}), std::nullopt);
    book.confirm({1}, u"Buffer"_s, {7}, Why::NoOther);
    book.confirm({1}, u"Water"_s, {7}, Why::Chosen);
    EXPECT_EQ(book.why({1}, u"Buffer"_s, {7}), Why::NoOther);
    EXPECT_EQ(book.why({2}, u"Buffer"_s, {7}), std::nullopt) << "another rack";
    EXPECT_EQ(book.why({1}, u"Buffer"_s, {8}), std::nullopt) << "another lot";
    book.forget({1}, u"Buffer"_s);
    EXPECT_EQ(book.why({1}, u"Buffer"_s, {7}), std::nullopt);
    EXPECT_EQ(book.why({1}, u"Water"_s, {7}), Why::Chosen);
}

TEST_F(PipetteScreen, TakesTheLotThatCameAfterItWasAskedForOne)
{
    run::Run run = exampleRun();
    run.lots = {{u"buffer"_s, u"B-1"_s, QDate(2027, 1, 31)}};
    const notebook::LotId first =
        book->lots().receive({u"Buffer pH 9"_s, u"B-1"_s, QDate(2027, 1, 31), {}}, 2.5, u"M. Lindqvist"_s);
    const notebook::RunId id = addRun(run);
    open();
    type(u"*"_s);
    type(u"*"_s); // asked
    ASSERT_EQ(marks(id), 2);
    const notebook::LotId fresh =
        book->lots().receive({u"Buffer pH 9"_s, u"B-2"_s, QDate(2027, 6, 30), {}}, 10, u"M. Lindqvist"_s);
    press(Qt::Key_Z, Qt::ControlModifier); // the page reads the lots anew
    type(u"*"_s);
    type(u"*"_s);
    const auto made = book->load(id).marks; // with those of the two that were taken back
    ASSERT_GE(made.size(), 4U);
    EXPECT_EQ(made[made.size() - 3].lot, first);
    EXPECT_EQ(made[made.size() - 2].lot, fresh) << "more was to be taken of the first only for want of another one";
    EXPECT_EQ(made.back().lot, fresh);
}

TEST_F(PipetteScreen, ALotThatIsCorrectedInOneTubeIsNotThatOfTheNext)
{
    run::Run run = exampleRun();
    run.lots = {{u"buffer"_s, u"B-1"_s, QDate(2027, 1, 31)}};
    const notebook::LotId first =
        book->lots().receive({u"Buffer pH 9"_s, u"B-1"_s, QDate(2027, 1, 31), {}}, 100, u"M. Lindqvist"_s);
    const notebook::LotId second =
        book->lots().receive({u"Buffer pH 9"_s, u"B-2"_s, QDate(2027, 6, 30), {}}, 100, u"M. Lindqvist"_s);
    const notebook::RunId id = addRun(run);
    open();
    press(Qt::Key_Space);
    press(Qt::Key_Space);
    press(Qt::Key_Left);
    press(Qt::Key_Left);
    press(Qt::Key_L, Qt::AltModifier);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    ASSERT_TRUE(find<QComboBox>(u"pipetteLot"_s)->currentText().startsWith(u"B-2"_s));
    type(u"1.1"_s);
    press(Qt::Key_Enter, Qt::KeypadModifier);
    ASSERT_EQ(action(), u"Tube 3: add 1\u00a0mL buffer pH 9"_s);
    EXPECT_TRUE(find<QComboBox>(u"pipetteLot"_s)->currentText().startsWith(u"B-1"_s));
    press(Qt::Key_Space);
    const auto made = book->load(id).marks;
    ASSERT_EQ(made.size(), 4U);
    EXPECT_EQ(made[1].lot, first);
    EXPECT_EQ(made[2].lot, second) << "the correction";
    EXPECT_EQ(made[3].lot, first) << "the bottle in use is still that";
}

TEST_F(PipetteScreen, TheTickThatOpensALotSaysSoOnce)
{
    addRun(exampleRun());
    book->lots().receive({u"Buffer pH 9"_s, u"B-1"_s, QDate(2027, 1, 31), 14}, 100, u"M. Lindqvist"_s);
    open();
    press(Qt::Key_L, Qt::AltModifier);
    ASSERT_EQ(focusName(), u"pipetteLot"_s);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    press(Qt::Key_Space);
    EXPECT_EQ(noticeText(), u"Lot B-1 is noted as opened today; it keeps 14 days from now."_s);
    EXPECT_TRUE(book->lots().all()[0].opened);
    press(Qt::Key_Space); // before anybody has read it
    EXPECT_EQ(noticeText(), u"Lot B-1 is noted as opened today; it keeps 14 days from now."_s);
    notebook::AuditFilter openings;
    openings.actions = {u"lotOpened"_s};
    EXPECT_EQ(book->keeping().audit(openings).size(), 1U);
}

} // namespace
} // namespace plateau::test
