// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/bench/samplesmodel.h"
#include "ui/plan/planpage.h"
#include "ui/plan/rackmodel.h"
#include "ui/plan/waitingmodel.h"
#include "ui/shared/problemlist.h"

#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QTabWidget>
#include <QTableView>

#include <gmock/gmock.h>

#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

class PlanPage : public WindowBench
{
protected:
    void giveName()
    {
        auto *person = window->findChild<QLineEdit *>(u"person"_s);
        ASSERT_NE(person, nullptr);
        person->setText(u"R. Okafor"_s);
        QTest::keyClick(person, Qt::Key_Return);
    }
    void plan(const QString &title, const QStringList &names)
    {
        openWindow();
        giveName();
        press(Qt::Key_N, Qt::ControlModifier);
        tabTo(u"title"_s);
        type(title);
        tabTo(u"sampleNames"_s);
        QApplication::clipboard()->setText(names.join(u'\n'));
        press(Qt::Key_V, Qt::ControlModifier);
    }
    notebook::StoredRun putOnBench()
    {
        tabTo(u"putOnBench"_s);
        press(Qt::Key_Return);
        EXPECT_EQ(book->runs().size(), 1U) << noticeText().toStdString();
        return book->runs().empty() ? notebook::StoredRun{} : book->load(book->runs()[0].id);
    }
};

TEST_F(PlanPage, TwentyPastedSamplesAreARackWithoutTheMouse)
{
    QStringList names;
    for (int number = 1; number <= 20; ++number)
        names << u"T-%1\tperry\t0.25"_s.arg(number, 2, 10, QChar(u'0')); // a row of a spreadsheet
    plan(u"Twenty tanks"_s, names);
    EXPECT_EQ(labelText(u"runSummary"_s).left(9), u"Tubes: 42"_s);
    const auto *problems = find<ui::ProblemList>(u"newRunProblems"_s);
    ASSERT_EQ(problems->model()->rowCount(), 2) << "and there is no standard";
    EXPECT_TRUE(problems->model()->index(0, 0).data().toString().contains(u"24 places"_s));
    tabTo(u"replicates"_s);
    press(Qt::Key_Home);
    press(Qt::Key_Down);
    EXPECT_EQ(problems->model()->rowCount(), 1) << labelText(u"runSummary"_s).toStdString();
    const notebook::StoredRun stored = putOnBench();
    EXPECT_EQ(stored.run.tubes.size(), 22U);
    EXPECT_EQ(stored.run.samples[0].id, u"T-01"_s);
    ASSERT_TRUE(stored.plan);
    EXPECT_EQ(stored.plan->rackColumns, 6);
    EXPECT_TRUE(stored.plan->interval_s);
}

TEST(PlanPageWidths, AWideWindowGivesItsRoomToTheForm)
{
    constexpr int target = 28;
    const auto side = [](int width) { return ui::PlanPage::sideWidth(width, target); };
    EXPECT_EQ(side(900), 400) << "four parts of nine";
    EXPECT_EQ(side(1084), 481) << "a window of 1280";
    EXPECT_EQ(side(1300), 504);
    EXPECT_EQ(side(1713), 571) << "a window of 1920";
    for (int width = 600; width < 3000; ++width)
        EXPECT_GE(side(width + 1), side(width));
}

TEST_F(PlanPage, TheProductGivesWayToWhyASampleWaits)
{
    plan(u"Queue"_s, {u"P-104"_s});
    const auto *reagents = window->findChild<QLabel *>(u"planReagentsHint"_s);
    ASSERT_TRUE(reagents);
    EXPECT_TRUE(reagents->text().startsWith(u"Needed: what the tubes take and 10\u00a0% beyond it. The lot"_s))
        << reagents->text().toStdString();
    const auto *queue = window->findChild<QTableView *>(u"planQueue"_s); // behind another tab
    ASSERT_TRUE(queue);
    const auto isHidden = [queue] { return queue->isColumnHidden(ui::WaitingModel::Product); };
    window->resize(1280, 800);
    EXPECT_TRUE(QTest::qWaitFor(isHidden));
    window->resize(2600, 1300);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !isHidden(); }));
}

TEST_F(PlanPage, WhatIsExpectedIsDilutedIntoTheWindowByOneKey)
{
    plan(u"Strong ones"_s, {u"P-104"_s});
    tabTo(u"samples"_s);
    type(u"5"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(find<ui::ProblemList>(u"newRunProblems"_s)->model()->rowCount(), 2)
        << "too strong as it is, and there is no standard";
    press(Qt::Key_R, Qt::AltModifier);
    EXPECT_TRUE(QTest::qWaitFor([this] { return noticeText().startsWith(u"Dilutions proposed: 1"_s); }))
        << noticeText().toStdString();
    EXPECT_EQ(find<ui::ProblemList>(u"newRunProblems"_s)->model()->rowCount(), 1);
    const notebook::StoredRun stored = putOnBench();
    const double factor = run::dilutionFactor(stored.run.samples[0].dilution);
    const double volume_mL = stored.run.tubes[2].sampleVolume_mL.value_or(0.1);
    const double signal = 5 / factor / (exampleFactor_g_per_L * 0.1 / volume_mL);
    EXPECT_GE(signal, 0.1);
    EXPECT_LE(signal, 0.8);
    ASSERT_FALSE(stored.run.samples[0].dilution.empty());
    EXPECT_TRUE(stored.run.samples[0].dilution[0].uncertainty_percent);
    EXPECT_EQ(stored.plan->samples[0].sample.expected.at(u"example-acid"_s), 5.0);
}

TEST_F(PlanPage, EnterGoesDownAColumnAndAColumnIsPastedIntoIt)
{
    plan(u"Four tanks"_s, {u"P-1\tperry\t0.2"_s, u"P-2"_s, u"P-3"_s, u"P-4"_s});
    const auto *samples = find<QTableView>(u"samples"_s);
    const auto expected = [samples](int row) { return samples->model()->index(row, 2).data().toString(); };
    EXPECT_EQ(expected(0), u"0.2"_s) << "beside its name in the spreadsheet";
    tabTo(u"samples"_s);
    press(Qt::Key_Down);
    type(u"0.3"_s);
    press(Qt::Key_Return);
    type(u"0,25"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(expected(1), u"0.3"_s);
    EXPECT_EQ(expected(2), u"0,25"_s);
    QApplication::clipboard()->setText(u"0.11\n0.12\n"_s);
    press(Qt::Key_Up);
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(expected(2), u"0.11"_s);
    EXPECT_EQ(expected(3), u"0.12"_s);
    EXPECT_EQ(putOnBench().plan->samples[0].sample.product, u"perry"_s);
}

TEST_F(PlanPage, TheRowThatIsKeyedIsSeenHoweverLowTheTableLies)
{
    QStringList names;
    for (int number = 1; number <= 12; ++number)
        names << u"P-%1"_s.arg(number);
    plan(u"A low window"_s, names);
    window->resize(window->width(), window->minimumSizeHint().height() + 120);
    QApplication::processEvents();
    tabTo(u"samples"_s);
    const auto *samples = find<QTableView>(u"samples"_s);
    const QScrollArea *area = nullptr;
    for (const QWidget *above = samples; above && !area; above = above->parentWidget())
        area = qobject_cast<const QScrollArea *>(above);
    ASSERT_TRUE(area);
    for (int row = 0; row < samples->model()->rowCount(); ++row) {
        ASSERT_EQ(samples->currentIndex().row(), row);
        const QRect cell = samples->visualRect(samples->currentIndex());
        const QPoint top = samples->viewport()->mapTo(area->viewport(), cell.topLeft());
        EXPECT_TRUE(samples->viewport()->rect().contains(cell.center())) << row;
        EXPECT_GE(top.y(), 0) << row;
        EXPECT_LE(top.y() + cell.height(), area->viewport()->height()) << row;
        type(u"1"_s);
        press(Qt::Key_Return);
    }
}

TEST_F(PlanPage, TheTableIsAsHighAsItsRowsUpToADozen)
{
    plan(u"Two tanks"_s, {u"P-1"_s, u"P-2"_s});
    const auto *samples = find<QTableView>(u"samples"_s);
    const int least = samples->height();
    QStringList names;
    for (int number = 1; number <= 14; ++number)
        names << u"P-%1"_s.arg(number);
    const auto heightWith = [&](int rows) {
        find<QPlainTextEdit>(u"sampleNames"_s)->setPlainText(QStringList(names.mid(0, rows)).join(u'\n'));
        QTest::qWait(50);
        return samples->height();
    };
    const int ten = heightWith(10);
    EXPECT_GT(ten, least);
    EXPECT_GE(samples->viewport()->height(), 10 * samples->rowHeight(0)) << "no row has to be scrolled to";
    const int twelve = heightWith(12);
    EXPECT_EQ(twelve - ten, 2 * samples->rowHeight(0));
    EXPECT_LT(heightWith(14), twelve + samples->rowHeight(0)) << "the other two are scrolled to";
}

TEST_F(PlanPage, TheTabsStayWhereTheyAreWhicheverIsInFront)
{
    plan(u"Two tanks"_s, {u"P-1"_s, u"P-2"_s});
    window->resize(1366, 768);
    QApplication::processEvents();
    auto *tabs = find<QTabWidget>(u"planTabs"_s);
    tabs->setCurrentIndex(0);
    QTest::qWait(20);
    const int top = tabs->mapTo(window.get(), QPoint()).y();
    for (int tab = 1; tab < tabs->count(); ++tab) {
        tabs->setCurrentIndex(tab);
        QTest::qWait(20);
        EXPECT_EQ(tabs->mapTo(window.get(), QPoint()).y(), top) << tabs->tabText(tab).toStdString();
    }
}

TEST_F(PlanPage, TabLeadsFromOneNumberToTheNextThatIsKeyed)
{
    plan(u"Two tanks"_s, {u"P-1"_s, u"P-2"_s});
    tabTo(u"samples"_s);
    const auto *samples = find<QTableView>(u"samples"_s);
    const auto place = [samples] {
        return std::pair(samples->currentIndex().row(), samples->currentIndex().column());
    };
    EXPECT_EQ(place(), std::pair(0, 2)) << "what is expected, not the name";
    type(u"0.3"_s);
    press(Qt::Key_Tab);
    EXPECT_EQ(place(), std::pair(0, 3));
    EXPECT_EQ(samples->model()->index(0, 2).data().toString(), u"0.3"_s);
    press(Qt::Key_Escape);
    QTableView *table = find<QTableView>(u"samples"_s);
    table->setCurrentIndex(table->model()->index(0, table->model()->columnCount() - 1));
    table->edit(table->currentIndex());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_EQ(place(), std::pair(1, 2)) << "and on to the next sample, not to its name";
}

TEST_F(PlanPage, WhatADilutionProposalSetsInTheTubeIsSaid)
{
    plan(u"Weak one"_s, {u"P-104"_s});
    tabTo(u"samples"_s);
    type(u"0.02"_s);
    press(Qt::Key_Return);
    press(Qt::Key_R, Qt::AltModifier);
    EXPECT_TRUE(QTest::qWaitFor(
        [this] { return noticeText().contains(u"Volume of sample in the tube set as well: P-104 "_s); }))
        << noticeText().toStdString();
}

TEST_F(PlanPage, ATubeIsMovedByTheKeys)
{
    plan(u"Moved"_s, {u"P-104"_s});
    tabTo(u"rackGrid"_s);
    const auto *rack = find<QTableView>(u"rackGrid"_s);
    press(Qt::Key_Home);
    press(Qt::Key_Right, Qt::ControlModifier);
    press(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(rack->currentIndex().column(), 2);
    EXPECT_EQ(rack->model()->index(0, 2).data(ui::RackModel::TubeRole).toInt(),
              static_cast<int>(run::Role::Blank));
    const notebook::StoredRun stored = putOnBench();
    using enum run::Role;
    ASSERT_EQ(stored.run.tubes.size(), 4U);
    EXPECT_EQ(stored.run.tubes[1].role, Sample);
    EXPECT_EQ(stored.run.tubes[2].role, Blank);
}

TEST_F(PlanPage, WhatWaitsIsTickedAndTaken)
{
    planning::ShelfSample sample;
    sample.id = u"P-104"_s;
    sample.product = u"perry"_s;
    book->shelf().registerSample(sample, u"R. Okafor"_s);
    sample.id = u"P-105"_s;
    book->shelf().registerSample(sample, u"R. Okafor"_s);
    plan(u"From the shelf"_s, {});
    press(Qt::Key_Q, Qt::AltModifier);
    ASSERT_TRUE(QTest::qWaitFor([this] { return focusName() == u"planQueue"_s; }));
    press(Qt::Key_Space);
    press(Qt::Key_Down);
    press(Qt::Key_Space);
    tabTo(u"takeTicked"_s);
    press(Qt::Key_Space);
    EXPECT_EQ(find<QPlainTextEdit>(u"sampleNames"_s)->toPlainText(), u"P-104\nP-105"_s);
    const notebook::StoredRun stored = putOnBench();
    ASSERT_EQ(stored.run.samples.size(), 2U);
    ASSERT_TRUE(stored.plan);
    EXPECT_EQ(stored.plan->samples[1].sample.product, u"perry"_s);
    EXPECT_TRUE(book->shelf().waiting().empty()) << "they wait no more";
}

TEST_F(PlanPage, AFreshStandardIsWeighedAndTaken)
{
    plan(u"With a standard"_s, {u"P-104"_s});
    press(Qt::Key_X, Qt::AltModifier);
    const auto fill = [this](const QString &name, const QString &text) {
        tabTo(name);
        press(Qt::Key_A, Qt::ControlModifier);
        type(text);
    };
    fill(u"weighingWanted"_s, u"0.2"_s);
    fill(u"weighingFlask"_s, u"100"_s);
    fill(u"weighingSubstance"_s, u"100"_s);
    EXPECT_EQ(labelText(u"weighingRecipe"_s), u"Weigh 20.00\u00a0mg and make up to 100\u00a0mL."_s);
    fill(u"weighingMass"_s, u"20.6"_s);
    EXPECT_TRUE(labelText(u"weighingResult"_s).startsWith(u"Made: 0.206"_s))
        << labelText(u"weighingResult"_s).toStdString();
    tabTo(u"takeWeighed"_s);
    press(Qt::Key_Space);
    EXPECT_NE(labelText(u"standardWorth"_s), QString());
    const notebook::StoredRun stored = putOnBench();
    ASSERT_EQ(stored.run.standards.size(), 1U);
    EXPECT_DOUBLE_EQ(stored.run.standards[0].concentration_g_per_L, 0.206);
    // 0.1 mg of 20.6 mg, 0.5 % of purity, 0.1 mL of 100 mL: to the three figures that are shown.
    ASSERT_TRUE(stored.run.standards[0].uncertainty_percent);
    EXPECT_NEAR(*stored.run.standards[0].uncertainty_percent, 100 * std::hypot(0.1 / 20.6, 0.005, 0.001),
                0.0005);
    EXPECT_EQ(stored.run.standards[0].preparedAt->toUTC(), StoppedClock().now().toUTC());
}

TEST_F(PlanPage, AWeighedStandardKeepsTheTimeThatWasTyped)
{
    plan(u"With a standard"_s, {u"P-104"_s});
    press(Qt::Key_X, Qt::AltModifier);
    press(Qt::Key_D, Qt::AltModifier);
    const auto fill = [this](const QString &name, const QString &text) {
        tabTo(name);
        press(Qt::Key_A, Qt::ControlModifier);
        type(text);
    };
    const QDateTime typed = StoppedClock().now().addSecs(-1800).toLocalTime();
    fill(u"standardPreparedAt"_s, typed.toString(u"yyyy-MM-dd HH:mm"_s));
    fill(u"weighingSubstance"_s, u"100"_s);
    fill(u"weighingMass"_s, u"20.6"_s);
    EXPECT_TRUE(labelText(u"weighingKept"_s).startsWith(u"For this run only"_s));
    tabTo(u"takeWeighed"_s);
    press(Qt::Key_Space);
    const notebook::StoredRun stored = putOnBench();
    ASSERT_EQ(stored.run.standards.size(), 1U);
    EXPECT_DOUBLE_EQ(stored.run.standards[0].concentration_g_per_L, 0.206);
    EXPECT_EQ(stored.run.standards[0].preparedAt->toUTC(), typed.toUTC()) << "not when its mass was keyed";
}

TEST_F(PlanPage, APlanThatNobodyCanReadInTimeSaysSoBeforeItIsPipetted)
{
    plan(u"Hurry"_s, {u"P-104"_s});
    find<QTabWidget>(u"planTabs"_s)->setCurrentIndex(1);
    tabTo(u"planMost"_s);
    press(Qt::Key_A, Qt::ControlModifier);
    type(u"5"_s);
    EXPECT_TRUE(labelText(u"runSummary"_s).contains(u"in time"_s))
        << labelText(u"runSummary"_s).toStdString();
}

} // namespace
} // namespace plateau::test
