// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"

#include "tests/ui/shown.h"
#include "ui/books/standardsmodel.h"
#include "ui/books/standardwords.h"
#include "ui/plan/planform.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QFile>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

using Mode = QAbstractItemModelTester::FailureReportingMode;

const QDateTime made = QDateTime::fromString(u"2026-03-02T08:10:00+01:00"_s, Qt::ISODate);

planning::HeldPreparation held(qint64 id, double lossPerHour)
{
    planning::HeldPreparation held;
    held.id = id;
    held.of.name = u"Example acid"_s;
    held.of.molarMass_g_per_mol = 100;
    held.preparation.name = u"STD-%1"_s.arg(id);
    held.preparation.analyteMolarMass_g_per_mol = 100;
    held.preparation.masses_mg = {20};
    held.preparation.mass_u_mg = 0.1;
    held.preparation.flask_mL = 100;
    held.preparation.madeAt = made;
    held.preparation.lossPerHour = lossPerHour;
    return held;
}

TEST(StandardWords, AStandardCountsDownToTheEndOfItsLife)
{
    // 0.98^h = 0.85 after 8 h 2 min.
    const planning::HeldPreparation standard = held(1, 0.02);
    EXPECT_TRUE(ui::standingOf(standard, made).words.startsWith(u"good for 8 h 02 min, until "_s));
    EXPECT_EQ(ui::standingOf(standard, made).shape, ui::State::Good);
    EXPECT_EQ(ui::standingOf(standard, made.addSecs(7 * 3600 + 600)).shape, ui::State::Attention);
    EXPECT_TRUE(ui::standingOf(standard, made.addSecs(9 * 3600)).words.startsWith(u"past its time since "_s));
    EXPECT_EQ(ui::standingOf(held(1, 0), made).words, u"keeps its strength"_s);
    EXPECT_EQ(ui::strengthNowText(standard, made), u"0.2000\u00a0g/L"_s);
    EXPECT_EQ(ui::strengthNowText(standard, made.addSecs(3600)), u"0.1960\u00a0g/L"_s);
}

TEST(StandardWords, TheEndOfItsLifeSaysWhy)
{
    planning::Preparation lossy = held(1, 0.02).preparation;
    EXPECT_EQ(ui::whyGoodUntil(lossy), u"Then its loss leaves 85\u00a0% of its strength, the least that may be used."_s);
    EXPECT_EQ(ui::ownRuleText(lossy), QString());
    lossy.useBy = made.addSecs(24 * 3600);
    EXPECT_TRUE(ui::whyGoodUntil(lossy).startsWith(u"Then its loss leaves"_s)) << "it ends before the rule";
    EXPECT_TRUE(ui::ownRuleText(lossy).startsWith(u"24\u00a0h, until "_s)) << "and the rule is shown";
    lossy.useBy = made.addSecs(90 * 60);
    EXPECT_EQ(ui::whyGoodUntil(lossy), u"That is your own rule, 1.5\u00a0h after it was made."_s);
    EXPECT_TRUE(ui::whyGoodUntil(held(1, 0.0001).preparation).contains(u"the oldest that may be used"_s));
    EXPECT_EQ(ui::whyGoodUntil(held(1, 0).preparation), QString());
}

TEST(StandardWords, WhatIsSaidOfATextNamesItOnce)
{
    planning::Preparation nameless = held(1, 0).preparation;
    nameless.name.clear();
    const assay::Problems problems = planning::problemsOf(nameless, made);
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_TRUE(ui::standardSentence(problems.front()).startsWith(u"The name cannot be used"_s))
        << ui::standardSentence(problems.front()).toStdString();
}

TEST(StandardWords, TheLabelSaysStrengthAndUseBy)
{
    const ui::Label label = ui::labelOf(held(7, 0.02));
    EXPECT_EQ(label.what, u"STD-7"_s);
    EXPECT_TRUE(label.strength.startsWith(u"0.2000 ± "_s)) << label.strength.toStdString();
    EXPECT_FALSE(label.madeAt.isEmpty());
    EXPECT_FALSE(label.useBy.isEmpty());
    EXPECT_TRUE(ui::labelOf(held(7, 0)).useBy.isEmpty()) << "a line to write on";
}

TEST(StandardsModel, ThoseAliveStandFirst)
{
    const ui::Theme theme;
    ui::StandardsModel model(theme);
    const QAbstractItemModelTester tester(&model, Mode::Warning);
    model.setPreparations({held(3, 0.2), held(2, 0.02), held(1, 0)}, made.addSecs(2 * 3600));
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_EQ(shown(model, 0, ui::StandardsModel::Name), u"STD-2"_s);
    EXPECT_EQ(shown(model, 2, ui::StandardsModel::Name), u"STD-3"_s);
    EXPECT_TRUE(shown(model, 2, ui::StandardsModel::Standing).startsWith(u"Past its time"_s));
    model.setPreparations({held(1, 0)}, made);
    EXPECT_EQ(model.rowCount(), 1);
}

class StandardsWindow : public WindowBench
{
protected:
    void open()
    {
        openWindow();
        press(Qt::Key_P, Qt::AltModifier);
        type(u"R. Okafor"_s);
        press(Qt::Key_Return);
        press(Qt::Key_T, Qt::ControlModifier | Qt::ShiftModifier);
    }
    void enter(const QString &name, const QString &text) const
    {
        auto *line = find<QLineEdit>(name);
        line->setFocus();
        line->selectAll();
        type(text);
    }
    void click(const QString &name) const { find<QPushButton>(name)->click(); }
    QAbstractItemModel &model(const QString &view) const { return *find<QAbstractItemView>(view)->model(); }
    void prepare()
    {
        click(u"prepareStandard"_s);
        click(u"addSubstance"_s);
        enter(u"substanceName"_s, u"Example acid, dried"_s);
        enter(u"substancePurity"_s, u"99,5"_s);
        enter(u"substanceMolarMass"_s, u"100"_s);
        press(Qt::Key_Return);
        enter(u"preparationVolume"_s, u"100"_s);
        enter(u"preparationFlaskU"_s, u"0.06"_s);
        enter(u"preparationMasses"_s, u"10,05; 10.05"_s);
        enter(u"preparationName"_s, u"STD-17"_s);
        enter(u"preparationMadeAt"_s, u"8:10"_s);
        enter(u"preparationLoss"_s, u"2"_s);
        click(u"storePreparation"_s);
    }
};

TEST_F(StandardsWindow, AnEmptyBookSaysWhatToDo)
{
    open();
    EXPECT_TRUE(labelText(u"standardsEmpty"_s).contains(u"Prepare one"_s));
}

TEST_F(StandardsWindow, AStandardIsPreparedFromASubstanceByKeys)
{
    open();
    prepare();
    const auto all = book->standards().preparations();
    ASSERT_EQ(all.size(), 1U) << noticeText().toStdString();
    EXPECT_EQ(all[0].of.purity, 0.995);
    EXPECT_EQ(all[0].preparation.masses_mg, (std::vector<double>{10.05, 10.05}));
    EXPECT_EQ(all[0].preparation.measurand, method().measurands[0].id);
    EXPECT_EQ(all[0].preparation.madeAt, made);
    EXPECT_NEAR(planning::strengthOf(all[0].of, all[0].preparation).concentration_g_per_L, 0.2 * 0.999975,
                1e-6);
    EXPECT_TRUE(labelText(u"preparationNow"_s).endsWith(u"the least that may be used."_s))
        << labelText(u"preparationNow"_s).toStdString();
    EXPECT_TRUE(labelText(u"preparationNow"_s).startsWith(u"Now 0.196"_s))
        << "an hour old: " << labelText(u"preparationNow"_s).toStdString();
    EXPECT_EQ(find<QPushButton>(u"backToStandards"_s)->text(), u"Back to the list  Esc"_s);
    press(Qt::Key_Escape);
    EXPECT_EQ(shown(model(u"standards"_s), 0, ui::StandardsModel::Name), u"STD-17"_s);
}

TEST_F(StandardsWindow, ASubstanceThatMayHoldTwoMoleculesIsAskedAboutAndRemembered)
{
    open();
    click(u"prepareStandard"_s);
    click(u"addSubstance"_s);
    enter(u"substanceName"_s, u"Example disalt"_s);
    enter(u"substancePurity"_s, u"99"_s);
    enter(u"substanceMolarMass"_s, u"250"_s); // the analyte of the example weighs 100
    press(Qt::Key_Return);
    enter(u"preparationVolume"_s, u"100"_s);
    enter(u"preparationFlaskU"_s, u"0.06"_s);
    enter(u"preparationMasses"_s, u"25"_s);
    const auto answers = [this] {
        QStringList texts;
        for (int row = 0; row < model(u"preparationAnswer"_s).rowCount(); ++row)
            texts << model(u"preparationAnswer"_s).index(row, 0).data().toString();
        return texts.join(u'\n');
    };
    EXPECT_TRUE(answers().contains(u"make sure that it holds just one of it"_s)) << answers().toStdString();
    enter(u"preparationPerMolecule"_s, u"2"_s);
    EXPECT_FALSE(answers().contains(u"make sure that it holds just one of it"_s));
    enter(u"preparationWanted"_s, u"0.5"_s);
    EXPECT_TRUE(answers().contains(u"of the strength wanted"_s)) << answers().toStdString();
    enter(u"preparationName"_s, u"STD-18"_s);
    enter(u"preparationMadeAt"_s, u"8:10"_s);
    click(u"storePreparation"_s);
    ASSERT_EQ(book->standards().preparations().size(), 1U);
    EXPECT_EQ(book->standards().preparations()[0].preparation.analytePerMolecule, 2);
    window.reset();
    open();
    click(u"prepareStandard"_s);
    EXPECT_EQ(find<QLineEdit>(u"preparationPerMolecule"_s)->text(), u"2"_s) << "as it was prepared last";
}

TEST_F(StandardsWindow, WhatIsMissingIsNamed)
{
    open();
    click(u"prepareStandard"_s);
    click(u"storePreparation"_s);
    EXPECT_TRUE(noticeText().startsWith(u"Add the substance first"_s));
    EXPECT_TRUE(book->standards().preparations().empty());
}

TEST_F(StandardsWindow, RunsThatUsedItAreShownAndItIsThrownAway)
{
    open();
    prepare();
    run::Run run = exampleRun();
    run.title = u"Perry tanks"_s;
    run::Standard used;
    used.id = u"STD-17"_s;
    used.concentration_g_per_L = 0.2;
    used.preparedAt = made;
    used.usedAt = made.addSecs(5400);
    used.lossPerHour = 0.02;
    run.standards = {used};
    addRun(run);
    press(Qt::Key_Escape);
    press(Qt::Key_Return);
    ASSERT_EQ(model(u"preparationRuns"_s).rowCount(), 1);
    EXPECT_EQ(shown(model(u"preparationRuns"_s), 0, 0), u"Perry tanks"_s);
    EXPECT_EQ(shown(model(u"preparationRuns"_s), 0, 2), u"1.5\u00a0h"_s);
    click(u"discardPreparation"_s);
    EXPECT_EQ(focusName(), u"preparationReason"_s);
    type(u"turbid"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->standards().preparations()[0].discarded, u"turbid"_s);
    EXPECT_TRUE(labelText(u"preparationNow"_s).contains(u"Discarded"_s));
}

/// Found at 1 h twice the same, at 3 h 0.9 of that: a loss of 1 - 0.9^(1/2) = 5.13 % an hour.
TEST_F(StandardsWindow, ItsLifeShowsTheLossInTheLaboratorysOwnData)
{
    open();
    prepare();
    press(Qt::Key_Escape);
    press(Qt::Key_Return);
    EXPECT_TRUE(labelText(u"lossWords"_s).startsWith(u"The loss per hour cannot be told yet"_s))
        << labelText(u"lossWords"_s).toStdString();
    for (const double age_h : {1.0, 1.0, 3.0}) {
        run::Run run = exampleRun();
        run::Standard used;
        used.id = u"STD-17"_s;
        used.concentration_g_per_L = 0.2;
        used.preparedAt = made;
        used.usedAt = made.addSecs(qint64(age_h * 3600));
        used.lossPerHour = 0.02;
        run.standards = {used};
        run::Tube tube = run.tubes.back();
        tube.role = run::Role::Standard;
        tube.sample.clear();
        tube.standard = used.id;
        for (run::Tube &other : run.tubes)
            other.readings = {{u"A1"_s, 0.1}, {u"A2"_s, other.sample.isEmpty() ? 0.1 : 0.4}};
        tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, 0.1 + 0.5 * (age_h > 1 ? 0.9 : 1)}};
        run.tubes.push_back(tube);
        const notebook::RunId id = addRun(run);
        book->decide(id, notebook::DecisionKind::Accepted, u"R. Okafor"_s, u"for the record"_s);
    }
    press(Qt::Key_Escape);
    press(Qt::Key_Return);
    EXPECT_TRUE(labelText(u"lossWords"_s)
                    .startsWith(u"3 recoveries at ages of 1.0\u00a0h to 3.0\u00a0h show a loss of 5.13"_s))
        << labelText(u"lossWords"_s).toStdString();
}

TEST_F(StandardsWindow, ANewRunTakesAStandardThatIsAlive)
{
    open();
    prepare();
    press(Qt::Key_N, Qt::ControlModifier);
    find<QGroupBox>(u"standard"_s)->setChecked(true);
    auto *offered = find<QComboBox>(u"standardBook"_s);
    ASSERT_EQ(offered->count(), 2);
    EXPECT_TRUE(offered->itemText(1).startsWith(u"STD-17, 0.2000"_s)) << offered->itemText(1).toStdString();
    offered->setFocus();
    press(Qt::Key_Down);
    EXPECT_EQ(find<QLineEdit>(u"standardId"_s)->text(), u"STD-17"_s);
    EXPECT_EQ(find<QLineEdit>(u"standardConcentration"_s)->text(), u"0.199995"_s);
    EXPECT_TRUE(find<QLineEdit>(u"standardUncertainty"_s)->text().startsWith(u"0.7"_s))
        << "two weighings of 10 mg make most of it: "
        << find<QLineEdit>(u"standardUncertainty"_s)->text().toStdString();
    EXPECT_EQ(find<QLineEdit>(u"standardLoss"_s)->text(), u"2"_s);
    book->standards().discard({1}, u"R. Okafor"_s, u"spilt"_s);
    press(Qt::Key_N, Qt::ControlModifier);
    EXPECT_FALSE(offered->isVisible()) << "nothing is alive";
}

TEST_F(StandardsWindow, ANewRunThatIsToHaveAStandardTakesTheOnlyOneInDateAndSaysSo)
{
    open();
    prepare();
    press(Qt::Key_N, Qt::ControlModifier);
    auto *standard = find<QGroupBox>(u"standard"_s);
    const auto *said = standard->findChild<QLabel *>(u"standardOnlyOne"_s);
    standard->setFocus();
    press(Qt::Key_Space);
    ASSERT_TRUE(standard->isChecked());
    EXPECT_EQ(find<QLineEdit>(u"standardId"_s)->text(), u"STD-17"_s);
    EXPECT_EQ(find<QComboBox>(u"standardBook"_s)->currentIndex(), 1);
    EXPECT_TRUE(said->isVisible());
    tabTo(u"standardBook"_s);
    press(Qt::Key_Up);
    EXPECT_EQ(find<QComboBox>(u"standardBook"_s)->currentIndex(), 0);
    EXPECT_FALSE(said->isVisible());

    auto *control = find<QGroupBox>(u"control"_s);
    control->setFocus();
    press(Qt::Key_Space);
    ASSERT_TRUE(control->isChecked());
    EXPECT_EQ(find<QComboBox>(u"controlBook"_s)->currentIndex(), 0) << "what it is held against is a choice";
    const auto *area = window->findChild<ui::PlanForm *>();
    tabTo(u"controlBook"_s);
    press(Qt::Key_Down);
    QApplication::processEvents();
    const QPoint top = control->mapTo(area->viewport(), QPoint());
    EXPECT_GE(top.y(), -1);
    EXPECT_LE(top.y() + std::min(control->height(), area->viewport()->height()), area->viewport()->height() + 1);
}

TEST_F(StandardsWindow, ItsLabelIsPrinted)
{
    open();
    prepare();
    dialogs.nextFile = folder.filePath(u"label.pdf"_s);
    click(u"labelPreparation"_s);
    QFile written(dialogs.nextFile);
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_TRUE(written.readAll().startsWith("%PDF"));
}

} // namespace
} // namespace plateau::test
