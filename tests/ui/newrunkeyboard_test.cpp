// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/controls.h"
#include "tests/ui/keyboard.h"
#include "ui/shared/problemlist.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTextBrowser>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

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
    const auto *problems = find<ui::ProblemList>(u"newRunProblems"_s)->model();
    ASSERT_EQ(problems->rowCount(), 1);
    EXPECT_TRUE(problems->index(0, 0).data().toString().startsWith(u"Standard: this run has no standard"_s))
        << problems->index(0, 0).data().toString().toStdString();
    press(Qt::Key_Return);

    EXPECT_EQ(labelText(u"nextAction"_s), u"Rack A, tube 1: add 1\u00a0mL buffer pH 9"_s);
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
    EXPECT_EQ(labelText(u"verdict"_s), u"Not every check could be made"_s);
    // Net signals 0.510 - 0.010 and 0.512 - 0.010, mean 0.501, x 0.33651 g/L x 10.
    const auto *results = find<QTableView>(u"results"_s);
    EXPECT_TRUE(results->model()->index(0, 2).data().toString().startsWith(u"1.68"_s));
    EXPECT_TRUE(workingText().contains(u"0.630 \u2212 0.120"_s));
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
    ASSERT_TRUE(waitFor([&] { return runs->model()->rowCount() == 1; }));
    press(Qt::Key_Return);
    EXPECT_EQ(focusName(), u"runs"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"recordTitle"_s), u"Perry tanks, morning"_s);
    EXPECT_EQ(labelText(u"verdict"_s), u"Not every check could be made"_s);
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
    ASSERT_EQ(problems->model()->rowCount(), 1) << "a run without a standard tells nothing of its recovery";
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

TEST_F(Keyboard, AControlKeepsItsValueAndIsAskedForNothingThatBelongsToAStandard)
{
    openWindow();
    giveName();
    press(Qt::Key_N, Qt::ControlModifier);
    tabTo(u"title"_s);
    type(u"Perry tanks"_s);
    tabTo(u"sampleNames"_s);
    type(u"P-104"_s);
    press(Qt::Key_K, Qt::AltModifier);
    EXPECT_EQ(find<QLineEdit>(u"controlLoss"_s)->text(), u"0"_s) << "not the loss of the method's standard";
    EXPECT_FALSE(window->findChild<QWidget *>(u"controlPreparedAt"_s)->isVisible());
    EXPECT_FALSE(window->findChild<QWidget *>(u"controlUsedWhenRead"_s)->isVisible());
    tabTo(u"controlConcentration"_s);
    type(u"0,15"_s);
    const auto *problems = find<ui::ProblemList>(u"newRunProblems"_s);
    for (int row = 0; row < problems->model()->rowCount(); ++row)
        EXPECT_FALSE(problems->model()->index(row, 0).data().toString().contains(u"full strength"_s));
    tabTo(u"putOnBench"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(book->runs().size(), 1U);
    const run::Run run = book->load(book->runs()[0].id).run;
    ASSERT_EQ(run.standards.size(), 1U);
    EXPECT_EQ(run.standards[0].concentration_g_per_L, 0.15);
    EXPECT_EQ(run.standards[0].lossPerHour, 0);
    EXPECT_TRUE(run::isControl(run, run.standards[0].id));
}

TEST_F(Keyboard, AControlThatAgesIsAskedWhenItWasMade)
{
    openWindow();
    press(Qt::Key_N, Qt::ControlModifier);
    press(Qt::Key_K, Qt::AltModifier);
    tabTo(u"controlLoss"_s);
    type(u"1"_s);
    EXPECT_TRUE(window->findChild<QWidget *>(u"controlPreparedAt"_s)->isVisible());
}

TEST_F(Keyboard, TheTabKeyGoesDownTheFormOfANewRunAndReachesAllOfIt)
{
    openWindow();
    window->setWindowState(Qt::WindowNoState);
    window->resize(1280, 800);
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
                             u"standard"_s,
                             u"standardId"_s,
                             u"standardConcentration"_s,
                             u"standardUncertainty"_s,
                             u"standardLoss"_s,
                             u"standardPreparedAt"_s,
                             u"standardUsedWhenRead"_s,
                             u"standardTubes"_s,
                             u"standardVolumes"_s,
                             u"weighing"_s,
                             u"samples"_s,
                             u"takeFromShelf"_s,
                             u"proposeDilutions"_s,
                             u"addDilutionStep"_s,
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

} // namespace
} // namespace plateau::test
