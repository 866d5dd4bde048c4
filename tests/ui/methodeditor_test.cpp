// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodeditor.h"

#include "core/assay/soundness.h"
#include "core/evaluation/evaluation.h"
#include "core/notebook/methodcatalogue.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"
#include "ui/books/exampledraft.h"
#include "ui/books/tubedrawing.h"
#include "ui/shared/notice.h"
#include "ui/shared/problemlist.h"
#include "ui/shared/theme.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QTextBrowser>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

/// The editor alone, worked by keys alone.
class Editor : public ::testing::Test
{
protected:
    Editor()
        : editor(theme)
    {
        QObject::connect(&editor, &ui::MethodEditor::saved, &editor,
                         [this](const assay::Method &method, const QString &note) {
                             saved.push_back(method);
                             notes.push_back(note);
                         });
        QObject::connect(&editor, &ui::MethodEditor::closed, &editor, [this] { ++closed; });
        editor.resize(1100, 700);
        editor.show();
        editor.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&editor));
    }

    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        ++keys;
        QWidget *focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &editor, static_cast<Qt::Key>(key), modifiers);
        QApplication::processEvents(); // an editor in a table takes Enter through the event queue
    }
    void type(const QString &text)
    {
        for (const QChar character : text) {
            ++keys;
            ASSERT_NE(QApplication::focusWidget(), nullptr);
            QTest::keyClicks(QApplication::focusWidget(), QString(character));
        }
    }
    void enter(const QString &text)
    {
        type(text);
        press(Qt::Key_Return);
    }
    void goOn(int times)
    {
        for (int i = 0; i < times; ++i)
            press(Qt::Key_Return);
    }
    void section(int number) { press(Qt::Key_0 + number, Qt::AltModifier); }
    /// A next version, with what was changed and why.
    void saveVersion(const QString &why)
    {
        press(Qt::Key_S, Qt::ControlModifier);
        ASSERT_EQ(focusName(), u"methodNote"_s) << problems();
        enter(why);
    }
    void offer(const std::vector<assay::Method> &methods)
    {
        editor.setCatalogue(notebook::catalogueOf({}, methods));
    }
    QString summary() const { return find<QLabel>(u"methodSummary"_s)->text(); }
    QString focusName() const
    {
        const QWidget *focus = QApplication::focusWidget();
        return focus ? focus->objectName() : QString();
    }
    template <class T> T *find(const QString &name) const
    {
        T *found = editor.findChild<T *>(name);
        EXPECT_NE(found, nullptr) << name.toStdString();
        return found;
    }
    QString cell(const QString &table, int row, int column) const
    {
        return find<QTableView>(table)->model()->index(row, column).data().toString();
    }
    QString notice() const { return editor.findChild<ui::Notice *>()->sentence(); }
    std::string problems() const
    {
        std::string text;
        const QAbstractItemModel *model = find<ui::ProblemList>(u"methodProblems"_s)->model();
        for (int row = 0; row < model->rowCount(); ++row)
            text += model->index(row, 0).data().toString().toStdString() + '\n';
        return text;
    }
    /// Keys what an analyst would of a method that has nothing special.
    void keyMethod();

    ui::Theme theme;
    ui::MethodEditor editor;
    std::vector<assay::Method> saved;
    std::vector<QString> notes;
    int closed = 0;
    int keys = 0;
};

void Editor::keyMethod()
{
    editor.takeFocus();
    ASSERT_EQ(focusName(), u"methodName"_s);
    type(u"Perry acid"_s);
    press(Qt::Key_Tab);
    press(Qt::Key_Tab);
    ASSERT_EQ(focusName(), u"methodSource"_s);
    type(u"own trial, no document"_s);
    press(Qt::Key_Tab);
    ASSERT_EQ(focusName(), u"measurands"_s);
    enter(u"Perry acid"_s);
    enter(u"134,09"_s);

    section(2);
    ASSERT_EQ(focusName(), u"components"_s);
    goOn(1); // Water
    ASSERT_EQ(find<QTableView>(u"components"_s)->currentIndex().column(), 1);
    enter(u"1,9"_s);
    goOn(3); // its part and that it is no suspension; Sample
    enter(u"0.1"_s);
    goOn(1);
    enter(u"0.05"_s);
    enter(u"0.5"_s);
    goOn(1);
    enter(u"Enzyme"_s);
    enter(u"0.02"_s);
    goOn(1);
    press(Qt::Key_Space); // a suspension
    goOn(1);
    enter(u"Buffer pH 9"_s);
    enter(u"1"_s);
    press(Qt::Key_Tab);
    ASSERT_EQ(focusName(), u"usualSteps"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"steps"_s);
    for (const QString &text : {u"3"_s, u"10"_s, u"20"_s, u"25"_s})
        enter(text);
    for (int i = 0; i < 3; ++i)
        press(Qt::Key_Down); // past the starter and the mixing to the second wait
    press(Qt::Key_Right);
    press(Qt::Key_Right);
    enter(u"15"_s);
    enter(u"30"_s);

    section(4);
    ASSERT_EQ(focusName(), u"minSignal"_s);
    type(u"0.1"_s);
    press(Qt::Key_Tab);
    type(u"1"_s);
    press(Qt::Key_Tab);
    type(u"2"_s);
    section(5);
    ASSERT_EQ(focusName(), u"cautions"_s);
    type(u"Wear gloves."_s);
}

TEST_F(Editor, AMethodFromNothingToACorrectRunByKeys)
{
    keyMethod();
    EXPECT_EQ(problems(), "");
    press(Qt::Key_S, Qt::ControlModifier);
    ASSERT_EQ(saved.size(), 1U) << problems();
    // At three keys a second, slow for anyone who types, this is under two minutes of the five.
    EXPECT_LT(keys, 300);
    RecordProperty("keys", keys);

    const assay::Method &method = saved.front();
    EXPECT_TRUE(assay::problemsOf(method).empty()) << listed(assay::problemsOf(method));
    EXPECT_EQ(method.id, u"perry-acid"_s);
    EXPECT_EQ(method.sample, u"sample"_s);
    EXPECT_EQ(method.diluent, u"water"_s);
    EXPECT_EQ(method.starter, u"enzyme"_s);
    EXPECT_TRUE(method.components[2].suspension);
    EXPECT_EQ(method.steps.size(), 10U);
    EXPECT_EQ(std::get<assay::WaitStep>(method.steps[8]).wait_min, (assay::Interval{15, 30}));
    EXPECT_EQ(method.cautions, std::vector{u"Wear gloves."_s});

    run::Run run = plainRun(); // net signals of 0.500
    run.method = method.id;
    const auto found = evaluation::evaluate(method, run);
    // V 1 + 1.9 + 0.1 + 0.02 = 3.02 mL
    EXPECT_NEAR(*found.results[0].value, 0.5 * 3.02 * 134.09 / (6300 * 0.1), 1e-12);
    EXPECT_EQ(found.results[0].verdict, evaluation::Verdict::Reportable);
}

TEST_F(Editor, WhatItMeansStandsBesideIt)
{
    editor.startVersion(sequentialMethod());
    EXPECT_EQ(cell(u"factorFacts"_s, 1, 0), u"340 nm"_s);
    EXPECT_EQ(cell(u"factorFacts"_s, 1, 1), u"0.3365"_s); // 2.12 x 100 / (6300 x 0.1)
    EXPECT_EQ(cell(u"factorFacts"_s, 1, 2), u"0.3397"_s); // 2.14 mL at A3
    EXPECT_EQ(cell(u"rangeFacts"_s, 0, 0), u"0.05 mL"_s);
    EXPECT_EQ(cell(u"rangeFacts"_s, 0, 1), u"0.067 to 0.673"_s);
    EXPECT_EQ(cell(u"limitFacts"_s, 0, 1), u"0.00034"_s); // 0.005 x 0.3365 / 5
    EXPECT_EQ(cell(u"limitFacts"_s, 0, 2), u"0.0067"_s);
    EXPECT_TRUE(find<QLabel>(u"limitRule"_s)->text().contains(u"common practice, no source"_s));
    EXPECT_EQ(cell(u"steps"_s, 6, 7), u"2.12"_s);
    EXPECT_EQ(find<QLabel>(u"methodVersion"_s)->text(),
              u"will be saved as the next version, after version 1"_s);
    const auto *tube = find<ui::TubeDrawing>(u"tubeDrawing"_s);
    EXPECT_EQ(tube->picture().layers.size(), 5U);
    EXPECT_TRUE(tube->accessibleDescription().contains(u"Enzyme, starter, 0.02 mL, swirl"_s))
        << tube->accessibleDescription().toStdString();
    EXPECT_TRUE(tube->accessibleDescription().contains(u"A2 is read at 2.12 mL."_s));

    auto *bottles = find<QTableView>(u"bottles"_s);
    EXPECT_TRUE(bottles->model()->setData(bottles->model()->index(0, 2), u"30"_s));
    EXPECT_EQ(cell(u"bottles"_s, 0, 0), u"Buffer"_s);
    EXPECT_EQ(cell(u"bottles"_s, 0, 3), u"30"_s);
    EXPECT_FALSE(bottles->model()->index(0, 0).data(Qt::ForegroundRole).isValid()) << "a name looks as it does elsewhere";
    EXPECT_TRUE(bottles->model()->index(0, 1).data(Qt::ForegroundRole).isValid());
    EXPECT_FALSE(editor.hasUnsavedChanges()) << "a bottle is no part of the method";
}

TEST_F(Editor, AMethodWithAnErrorIsNotSavedAndEnterGoesToTheField)
{
    editor.startVersion(risingMethod());
    section(2);
    for (int i = 0; i < 3; ++i)
        press(Qt::Key_Down);
    press(Qt::Key_Right);
    type(u"0.02x"_s);
    press(Qt::Key_S, Qt::ControlModifier); // with the cell still open
    EXPECT_TRUE(saved.empty());
    EXPECT_TRUE(notice().contains(u"not saved yet"_s));
    EXPECT_TRUE(problems().starts_with("component Enzyme, volume: \"0.02x\" is not a number")) << problems();
    section(4);
    find<ui::ProblemList>(u"methodProblems"_s)->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(focusName(), u"components"_s);
    const auto *components = find<QTableView>(u"components"_s);
    EXPECT_TRUE(components->isVisible());
    EXPECT_EQ(components->currentIndex(), components->model()->index(3, 1));
    enter(u"0.05"_s);
    EXPECT_EQ(problems(), "");
    saveVersion(u"more enzyme"_s);
    ASSERT_EQ(saved.size(), 1U);
    EXPECT_EQ(saved[0].components[3].volume_mL, 0.05);
}

TEST_F(Editor, EveryMistakeIsNamedWhereItIsMade)
{
    struct Row {
        const char *what;
        std::function<void(assay::Method &)> change;
        const char *said;
    };
    const Row rows[] = {
        {"reading before any wait", [](auto &m) { m.steps.erase(m.steps.begin() + 4); },
         "step 5: takes \"A1\" with no wait"},
        {"starter twice", [](auto &m) { m.steps.push_back(assay::AddStep{u"starter"_s}); },
         "step 11: adds \"Enzyme\" a second time"},
        {"no diluent", [](auto &m) { m.diluent.clear(); }, "diluent: no component plays this part"},
        {"wavelength without absorptivity", [](auto &m) { m.wavelength_nm = 405; },
         "wavelength: the method has no absorptivity for 405 nm"},
        {"a window upside down", [](auto &m) { m.window.minSignal = 1.5; },
         "measuring window, smallest net signal: must be smaller than the largest net signal: 1.5"},
        {"a reading never taken",
         [](auto &m) {
             m.measurands[0].signal = assay::DifferenceSignal{u"A1"_s, u"A9"_s};
         },
         "measurand Analyte, signal, to reading: the reading \"A9\" is never taken"},
    };
    for (const Row &row : rows) {
        assay::Method method = risingMethod();
        row.change(method);
        editor.startVersion(method);
        EXPECT_NE(problems().find(row.said), std::string::npos) << row.what << ":\n" << problems();
    }
}

TEST_F(Editor, StepsAreMadeByLettersMovedAndTakenAway)
{
    editor.startVersion(risingMethod());
    section(2);
    auto *steps = find<QTableView>(u"steps"_s);
    steps->setFocus();
    steps->setCurrentIndex(steps->model()->index(9, 0));
    press(Qt::Key_W);
    enter(u"5"_s);
    enter(u"10"_s);
    press(Qt::Key_R);
    EXPECT_EQ(cell(u"steps"_s, 10, 2), u"5"_s);
    EXPECT_EQ(cell(u"steps"_s, 11, 0), u"Read"_s);
    EXPECT_EQ(cell(u"steps"_s, 11, 6), u"A3"_s);
    press(Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(cell(u"steps"_s, 10, 6), u"A3"_s);
    EXPECT_EQ(steps->currentIndex().row(), 10);
    press(Qt::Key_Delete, Qt::ControlModifier);
    press(Qt::Key_Delete, Qt::ControlModifier);
    EXPECT_EQ(steps->model()->rowCount(), 10);
    EXPECT_FALSE(editor.hasUnsavedChanges()) << "as it was";
    press(Qt::Key_Home, Qt::ControlModifier);
    press(Qt::Key_Delete, Qt::ControlModifier);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(editor.hasUnsavedChanges()) << "taken back";
    press(Qt::Key_Home, Qt::ControlModifier);
    press(Qt::Key_Delete, Qt::ControlModifier);
    press(Qt::Key_A); // below the water, the only one that is not in yet
    EXPECT_EQ(cell(u"steps"_s, 1, 1), u"Buffer"_s);
}

TEST_F(Editor, NothingTypedIsLostBySwitchingSections)
{
    editor.startVersion(risingMethod());
    section(4);
    type(u"9,9,9"_s);
    section(2);
    press(Qt::Key_Right);
    type(u"1.5"_s); // and away with the cell still open
    section(3);
    section(2);
    EXPECT_EQ(cell(u"components"_s, 0, 1), u"1.5"_s);
    EXPECT_TRUE(find<QLineEdit>(u"minSignal"_s)->text().contains(u"9,9,9"_s));
}

TEST_F(Editor, WhatIsNotTouchedIsSavedAsItWas)
{
    assay::Method method = sequentialMethod();
    method.version = 4;
    method.source = u"A document,\u00a03rd edition\nsection 2"_s;
    method.cautions = {u"Keep at 2\u00a0°C.\nAlways."_s, u"Wear gloves."_s};
    method.samplePreparation = {{assay::Matrix::Turbid, u"Centrifuge 5\u00a0min."_s}};
    method.standard = assay::UsualStandard{0.2, 0.07};
    method.derived = {{u"sum"_s, u"Sum"_s, {{{}, u"first"_s, 1}, {{}, u"second"_s, 0.95}}}};
    editor.startVersion(method);
    for (int number = 1; number <= 6; ++number)
        section(number);
    saveVersion(u"as it was"_s);
    ASSERT_EQ(saved.size(), 1U) << problems();
    EXPECT_EQ(saved[0], method);
}

TEST_F(Editor, LeavingWithChangesAsksOnce)
{
    editor.startVersion(risingMethod());
    editor.leave();
    EXPECT_EQ(closed, 1) << "nothing was changed";
    editor.startVersion(risingMethod());
    editor.takeFocus();
    type(u"x"_s);
    EXPECT_TRUE(editor.hasUnsavedChanges());
    editor.leave();
    EXPECT_EQ(closed, 1);
    EXPECT_TRUE(notice().contains(u"Press it once more"_s));
    editor.leave();
    EXPECT_EQ(closed, 2);
}

TEST_F(Editor, EscapeLeavesFromEveryFieldAsTheButtonDoes)
{
    EXPECT_EQ(editor.findChild<QAbstractButton *>(u"leaveMethod"_s)->text(), u"Back  Esc"_s);
    int left = 0;
    for (int number = 1; number <= 6; ++number) {
        editor.startVersion(risingMethod());
        section(number);
        for (QWidget *field : editor.findChildren<QWidget *>()) {
            if (!field->isVisible() || !field->isEnabled() || field->focusPolicy() == Qt::NoFocus ||
                field->focusProxy() || field->objectName().startsWith(u"qt_"_s))
                continue;
            field->setFocus();
            press(Qt::Key_Escape);
            EXPECT_EQ(closed, ++left) << field->objectName().toStdString();
            closed = left;
        }
    }
    EXPECT_GE(left, 30);
}

TEST_F(Editor, EscapeInACellThatIsBeingEditedOnlyLeavesTheCell)
{
    editor.startVersion(risingMethod());
    section(2);
    auto *components = find<QTableView>(u"components"_s);
    components->setFocus();
    components->setCurrentIndex(components->model()->index(0, 0));
    press(Qt::Key_F2);
    ASSERT_NE(QApplication::focusWidget(), components) << "no editor came up";
    press(Qt::Key_Escape);
    EXPECT_EQ(closed, 0);
    press(Qt::Key_Escape);
    EXPECT_EQ(closed, 1);
}

TEST_F(Editor, WhatTheStoreSaysStaysInThePage)
{
    editor.startNew();
    keyMethod();
    press(Qt::Key_S, Qt::ControlModifier);
    ASSERT_EQ(saved.size(), 1U);
    EXPECT_TRUE(editor.hasUnsavedChanges()) << "until the store says so";
    editor.refuse(u"The disk is full."_s);
    EXPECT_EQ(notice(), u"The disk is full."_s);
    editor.markSaved();
    EXPECT_FALSE(editor.hasUnsavedChanges());
    EXPECT_EQ(notice(), QString());
}

TEST_F(Editor, ACopyNeedsAShortNameOfItsOwn)
{
    offer({risingMethod()});
    editor.startCopy(risingMethod());
    EXPECT_EQ(problems(), "") << "made from the name of the copy";
    editor.takeFocus();
    press(Qt::Key_A, Qt::ControlModifier);
    type(u"Rising"_s);
    EXPECT_NE(problems().find("id: rising is the id of the method Rising"), std::string::npos)
        << problems();
    editor.startVersion(risingMethod());
    EXPECT_EQ(problems(), "") << "a version shares it";
    EXPECT_FALSE(find<QLineEdit>(u"methodId"_s)->isVisible()) << "it stays as it is";
    EXPECT_TRUE(find<QLabel>(u"fixedMethodId"_s)->isVisible());
    EXPECT_EQ(find<QLabel>(u"fixedMethodId"_s)->text(),
              u"rising (stays: runs and files know the method by it)"_s);
    editor.startNew();
    EXPECT_TRUE(find<QLineEdit>(u"methodId"_s)->isVisible());
    EXPECT_FALSE(find<QLabel>(u"fixedMethodId"_s)->isVisible());
}

TEST_F(Editor, HeadlineFollowsWhatTheMethodIsCalled)
{
    const auto heading = [this] { return find<QLabel>(u"methodHeading"_s)->text(); };
    EXPECT_EQ(heading(), u"A method without a name yet"_s);
    editor.startCopy(risingMethod());
    EXPECT_EQ(heading(), u"Rising, copy"_s);
    editor.takeFocus();
    press(Qt::Key_A, Qt::ControlModifier);
    type(u"Perry acid"_s);
    EXPECT_EQ(heading(), u"Perry acid"_s);
    press(Qt::Key_Tab);
    ASSERT_EQ(focusName(), u"methodId"_s);
    type(u"perry"_s);
    EXPECT_EQ(heading(), u"Perry acid"_s) << "its id stands in the field below";
    editor.startVersion(risingMethod());
    EXPECT_EQ(heading(), u"Rising"_s);
}

TEST_F(Editor, WhatIsTheSameAsTheNewestVersionIsNotOfferedForSaving)
{
    assay::Method second = risingMethod();
    second.version = 2;
    second.components[0].volume_mL = 1.5;
    offer({risingMethod(), second});
    editor.startVersion(second);
    EXPECT_EQ(summary(), u"There is nothing to save: version 2 says exactly this."_s);
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(saved.empty());
    EXPECT_EQ(notice(), summary()) << "one thing, not two";
    editor.takeFocus();
    type(u"x"_s);
    EXPECT_EQ(summary(), u"Nothing stands in the way of saving."_s);
    press(Qt::Key_Backspace);
    EXPECT_EQ(summary(), u"There is nothing to save: version 2 says exactly this."_s);
    editor.startVersion(risingMethod());
    EXPECT_EQ(summary(), u"Nothing stands in the way of saving."_s) << "back to the first version";
}

TEST_F(Editor, ANextVersionSaysWhatWasChangedAndWhy)
{
    editor.startNew();
    EXPECT_FALSE(find<QLineEdit>(u"methodNote"_s)->isVisible()) << "nothing was changed yet";
    editor.startVersion(risingMethod());
    EXPECT_TRUE(find<QLineEdit>(u"methodNote"_s)->isVisible());
    editor.takeFocus();
    type(u"Rising, our volumes"_s);
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(saved.empty());
    EXPECT_TRUE(notice().startsWith(u"Say in the line above what was changed and why"_s))
        << notice().toStdString();
    ASSERT_EQ(focusName(), u"methodNote"_s);
    enter(u"  "_s);
    EXPECT_TRUE(saved.empty()) << "blanks say nothing";
    enter(u"volumes  of the new kit "_s);
    ASSERT_EQ(saved.size(), 1U);
    EXPECT_EQ(notes, std::vector{u"volumes of the new kit"_s});
    editor.startVersion(risingMethod());
    EXPECT_EQ(find<QLineEdit>(u"methodNote"_s)->text(), QString());
}

TEST_F(Editor, ATemplateIsAskedWhereItsVolumesComeFromNow)
{
    assay::Method pattern = risingMethod();
    pattern.name = u"Pear acid (template)"_s;
    pattern.source = u"Template: set the volumes of your reagent supplier."_s;
    editor.startVersion(pattern);
    EXPECT_EQ(summary(), u"It can be saved. Worth a look:"_s);
    EXPECT_NE(problems().find("source: still begins with"), std::string::npos) << problems();
    EXPECT_NE(problems().find("name: still says"), std::string::npos) << problems();
    auto *source = find<QPlainTextEdit>(u"methodSource"_s);
    source->setFocus();
    press(Qt::Key_Home, Qt::ControlModifier);
    type(u"Leaflet of our supplier, May 2026. From a "_s);
    EXPECT_EQ(problems().find("source:"), std::string::npos) << problems();
    find<QLineEdit>(u"methodName"_s)->setFocus();
    press(Qt::Key_A, Qt::ControlModifier);
    type(u"Pear acid"_s);
    EXPECT_EQ(problems(), "");
}

TEST_F(Editor, AnExampleIsWorkedWithItsCalculation)
{
    editor.startVersion(risingMethod());
    section(6);
    ASSERT_EQ(focusName(), u"exampleReadings"_s);
    const auto *results = find<ui::SentenceList>(u"exampleResults"_s);
    EXPECT_EQ(results->model()->rowCount(), 1);
    for (const QString &text : {u"0.100"_s, u"0,100"_s, u"0.110"_s, u"0.610"_s})
        enter(text); // blank and sample, A1 then A2
    // (0.510 - 0.010) x 2.12 x 100 / (6300 x 1 x 0.1)
    EXPECT_EQ(results->model()->index(0, 0).data().toString(), u"Analyte: 0.168 g/L"_s);
    const QString working = find<QTextBrowser>(u"exampleWorking"_s)->toPlainText();
    EXPECT_TRUE(working.contains(u"0.610 \u2212 0.100"_s)) << working.toStdString();
    EXPECT_TRUE(working.contains(u"2.120 \u00d7 100 / (6300 \u00d7 1 \u00d7 0.1 \u00d7 1)"_s)) << working.toStdString();
    EXPECT_FALSE(editor.hasUnsavedChanges()) << "an example is no part of the method";
    find<QAbstractButton>(u"exampleUncertainty"_s)->click();
    EXPECT_TRUE(results->model()->index(0, 0).data().toString().contains(u" ± "_s));
}

TEST(Example, ASmallSignalIsCalledWhatItIs)
{
    ui::ExampleDraft example;
    example.readings = {{u"A1"_s, {{}, u"0.1"_s, u"0.1"_s}}, {u"A2"_s, {{}, u"0.11"_s, u"0.15"_s}}};
    const ui::ExampleOutcome outcome = ui::workExample(example, {risingMethod(), {}});
    ASSERT_GE(outcome.sentences.size(), 2U);
    EXPECT_EQ(outcome.sentences[1].state, ui::State::Attention);
    EXPECT_TRUE(outcome.sentences[1].text.contains(u"0.04"_s)) << outcome.sentences[1].text.toStdString();
}

TEST(Example, DilutionAndVolumeCountAndSlipsAreNamed)
{
    ui::ExampleDraft example;
    example.readings = {{u"A1"_s, {{}, u"0.1"_s, u"0.1"_s}}, {u"A2"_s, {{}, u"0.11"_s, u"0.61"_s}}};
    example.sampleVolume_mL = u"0.2"_s;
    example.take_mL = u"5"_s;
    example.makeUpTo_mL = u"50"_s;
    ui::ExampleOutcome outcome = ui::workExample(example, {risingMethod(), {}});
    // 0.5 x 0.33651 / 2 x 10
    EXPECT_EQ(outcome.sentences.front().text, u"Analyte: 0.841 g/L"_s);
    example.makeUpTo_mL = u"5o"_s;
    outcome = ui::workExample(example, {risingMethod(), {}});
    EXPECT_TRUE(outcome.sentences.front().text.startsWith(u"dilution, make up to: \"5o\""_s))
        << outcome.sentences.front().text.toStdString();
    EXPECT_TRUE(outcome.working.empty());
}

TEST(Example, AMethodWithAnErrorIsNotTriedButAMissingNameIsNoHindrance)
{
    ui::ExampleDraft example;
    example.readings = {{u"A1"_s, {{}, u"0.1"_s, u"0.1"_s}}, {u"A2"_s, {{}, u"0.11"_s, u"0.61"_s}}};
    assay::Method method = risingMethod();
    method.source.clear();
    EXPECT_EQ(ui::workExample(example, {method, assay::problemsOf(method)}).sentences.front().state,
              ui::State::Good);
    method.measurands[0].molarMass_g_per_mol = 0;
    EXPECT_EQ(ui::workExample(example, {method, assay::problemsOf(method)}).sentences.front().state,
              ui::State::Pending);
}

/// What takes keys has a name for screen readers and a handle, in every section.
TEST_F(Editor, EveryWidgetThatTakesKeysHasAName)
{
    editor.startVersion(sequentialMethod());
    int seen = 0;
    for (int number = 1; number <= 6; ++number) {
        section(number);
        for (QWidget *widget : editor.findChildren<QWidget *>()) {
            if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus || widget->focusProxy() ||
                widget->objectName().startsWith(u"qt_"_s) || qobject_cast<QScrollBar *>(widget))
                continue;
            QAccessibleInterface *interface = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(interface, nullptr);
            QString name = interface->text(QAccessible::Name);
            for (const auto &[label, relation] : interface->relations(QAccessible::Label))
                name += label->text(QAccessible::Name);
            EXPECT_FALSE(name.isEmpty())
                << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
            EXPECT_FALSE(widget->objectName().isEmpty()) << name.toStdString();
            ++seen;
        }
    }
    EXPECT_GT(seen, 60);
}

TEST_F(Editor, EverySectionIsReachedByTabAlone)
{
    editor.startVersion(sequentialMethod());
    editor.takeFocus();
    bool list = false;
    bool save = false;
    for (int i = 0; i < 60; ++i) {
        press(Qt::Key_Tab);
        list = list || focusName() == u"methodSections"_s;
        save = save || focusName() == u"saveMethod"_s;
    }
    EXPECT_TRUE(list);
    EXPECT_TRUE(save);
    find<QListWidget>(u"methodSections"_s)->setFocus();
    press(Qt::Key_Down);
    EXPECT_TRUE(find<QTableView>(u"components"_s)->isVisible());
}

} // namespace
} // namespace plateau::test
