// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/keyedchecks.h"
#include "tests/ui/bench.h"
#include "tests/ui/shown.h"
#include "ui/bench/equipmentnotes.h"
#include "ui/books/cellsmodel.h"
#include "ui/books/equipmentmodel.h"
#include "ui/books/equipmentwords.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

using Mode = QAbstractItemModelTester::FailureReportingMode;

const QDate today(2026, 3, 2);

equipment::HeldItem heldPipette(qint64 id, double mean_mg, const QDate &day)
{
    return {id,
            pistonPipette(),
            {{id, volumeCheck(pistonPipette(), mean_mg, day), pistonPipette(), u"R. Okafor"_s, false}}};
}

TEST(EquipmentModel, WhatNeedsSomebodyStandsFirst)
{
    const ui::Theme theme;
    ui::EquipmentModel model(theme);
    const QAbstractItemModelTester tester(&model, Mode::Warning);
    std::vector<equipment::HeldItem> items{heldPipette(1, 199.4, today),
                                           heldPipette(2, 190, today),
                                           heldPipette(3, 199.4, today.addDays(-85)),
                                           {4, photometer(), {}}};
    model.setItems(items, today);
    ASSERT_EQ(model.rowCount(), 4);
    EXPECT_EQ(shown(model, 0, ui::EquipmentModel::Standing), u"Failed on 2026-03-02: volume"_s);
    EXPECT_TRUE(shown(model, 1, ui::EquipmentModel::Standing).startsWith(u"Never checked"_s));
    EXPECT_EQ(shown(model, 2, ui::EquipmentModel::Standing), u"Due in 5 days: volume"_s);
    EXPECT_EQ(shown(model, 3, ui::EquipmentModel::Standing), u"In date until 2026-05-31"_s);
    EXPECT_EQ(shown(model, 3, ui::EquipmentModel::Size), u"20 to 200\u00a0µL"_s);
    EXPECT_EQ(model.rowOf(2), 0);
    items.pop_back();
    model.setItems(items, today);
    EXPECT_EQ(model.rowCount(), 3);
}

TEST(EquipmentWords, APipetteHasBothEndsInTheUnitOfTheSmaller)
{
    equipment::Item pipette = pistonPipette();
    pipette.smallest_mL = 0.1;
    pipette.nominal_mL = 1;
    EXPECT_EQ(ui::sizeText(pipette), u"100 to 1000\u00a0µL"_s);
    pipette.smallest_mL = 1;
    pipette.nominal_mL = 10;
    EXPECT_EQ(ui::sizeText(pipette), u"1 to 10\u00a0mL"_s);
    pipette.smallest_mL = pipette.nominal_mL = 0.07;
    EXPECT_EQ(ui::sizeText(pipette), u"70\u00a0µL"_s);
}

TEST(EquipmentWords, FiguresAndProblemsAreSaidInWords)
{
    equipment::Figures figures;
    figures.volume_percent = 0.1234;
    figures.weighing_mg = 0.05;
    EXPECT_EQ(ui::figuresText(figures), u"a volume: 0.12\u00a0%; one weighing: 0.050\u00a0mg"_s);
    const equipment::Check check = volumeCheck(pistonPipette(), 199.4, today);
    EXPECT_EQ(ui::placedSentence(pistonPipette(), check,
                                 assay::error(u"/conditions/pressure_kPa"_s, u"is missing"_s)),
              u"Air pressure is missing."_s);
    EXPECT_EQ(ui::placedSentence(pistonPipette(), check, assay::error(u"/rows/3/1"_s, u"is too much"_s)),
              u"Line 4 is too much."_s);
}

class EquipmentWindow : public WindowBench
{
protected:
    void open()
    {
        openWindow();
        press(Qt::Key_P, Qt::AltModifier);
        type(u"R. Okafor"_s);
        press(Qt::Key_Return);
        press(Qt::Key_E, Qt::ControlModifier | Qt::ShiftModifier);
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
    void addPipette()
    {
        click(u"addItem"_s);
        auto *kind = find<QComboBox>(u"itemKind"_s);
        kind->setCurrentIndex(1);
        enter(u"itemName"_s, u"P-200"_s);
        enter(u"itemNominal"_s, u"0,2"_s);
        enter(u"itemSmallest"_s, u"0.02"_s);
        press(Qt::Key_Return);
    }
    void keyVolumeCheck(const QString &mass)
    {
        click(u"keyCheck"_s);
        enter(u"check_temperature_C"_s, u"21"_s);
        enter(u"check_pressure_kPa"_s, u"101,3"_s);
        auto *table = find<QTableView>(u"checkRows"_s);
        table->setFocus();
        for (int i = 0; i < 10; ++i) {
            type(mass);
            press(Qt::Key_Return);
        }
    }
};

TEST_F(EquipmentWindow, AnEmptyBookSaysWhatToDo)
{
    open();
    EXPECT_TRUE(labelText(u"equipmentEmpty"_s).contains(u"Add the photometer"_s));
}

TEST_F(EquipmentWindow, APipetteIsAddedAndCheckedByKeys)
{
    open();
    addPipette();
    ASSERT_EQ(book->equipment().all().size(), 1U) << noticeText().toStdString();
    EXPECT_EQ(book->equipment().all()[0].item.every_days,
              (std::map<equipment::Aspect, int>{{equipment::Aspect::Volume, 90}}));
    EXPECT_EQ(noticeText(), u"In the book: P-200. Key its first check."_s);
    keyVolumeCheck(u"199,4"_s);
    ASSERT_EQ(model(u"checkFindings"_s).rowCount(), 2);
    EXPECT_EQ(shown(model(u"checkFindings"_s), 0, 0), u"Systematic error at 200\u00a0µL"_s);
    EXPECT_EQ(shown(model(u"checkFindings"_s), 0, 2), u"-1.60 to 1.60\u00a0µL"_s);
    EXPECT_EQ(shown(model(u"checkFindings"_s), 0, 4), u"ISO 8655-2:2002"_s);
    EXPECT_TRUE(shown(model(u"checkVerdict"_s), 0, 0).startsWith(u"Passed"_s));
    click(u"storeCheck"_s);
    const auto all = book->equipment().all();
    ASSERT_EQ(all[0].checks.size(), 1U) << noticeText().toStdString();
    EXPECT_EQ(all[0].checks[0].check.day, today);
    EXPECT_EQ(all[0].checks[0].person, u"R. Okafor"_s);
    EXPECT_EQ(noticeText(), u"The check is in the book."_s);
    ASSERT_EQ(model(u"itemChecks"_s).rowCount(), 1);
    EXPECT_EQ(shown(model(u"itemChecks"_s), 0, 3), u"passed"_s);
    EXPECT_FALSE(model(u"itemChecks"_s).index(0, 3).data(Qt::DecorationRole).isNull());
    EXPECT_TRUE(model(u"itemChecks"_s).index(0, 2).data(Qt::DecorationRole).isNull()) << "of the verdict alone";
    EXPECT_FALSE(model(u"itemFindings"_s).index(0, 3).data(Qt::DecorationRole).isNull());
    EXPECT_EQ(model(u"itemFindings"_s).rowCount(), 2);
    press(Qt::Key_Escape);
    EXPECT_EQ(shown(model(u"equipment"_s), 0, ui::EquipmentModel::Standing), u"In date until 2026-05-31"_s);
}

TEST_F(EquipmentWindow, WhatIsMissingIsNamedAndNothingIsStored)
{
    open();
    addPipette();
    click(u"keyCheck"_s);
    click(u"storeCheck"_s);
    EXPECT_EQ(noticeText(), u"Water at is missing; key a number."_s);
    EXPECT_EQ(focusName(), u"check_temperature_C"_s);
    EXPECT_TRUE(shown(model(u"checkVerdict"_s), 0, 0).startsWith(u"Cannot be judged yet."_s));
    EXPECT_TRUE(book->equipment().all()[0].checks.empty());
}

TEST_F(EquipmentWindow, AColumnIsPastedAndAFailedCheckIsTakenBack)
{
    open();
    addPipette();
    click(u"keyCheck"_s);
    enter(u"check_temperature_C"_s, u"21"_s);
    enter(u"check_pressure_kPa"_s, u"101.3"_s);
    QStringList masses;
    for (int i = 0; i < 10; ++i)
        masses << u"190,1"_s;
    QApplication::clipboard()->setText(masses.join(u'\n'));
    auto *table = find<QTableView>(u"checkRows"_s);
    table->setFocus();
    table->setCurrentIndex(table->model()->index(0, 2));
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_TRUE(shown(model(u"checkVerdict"_s), 0, 0).startsWith(u"Failed."_s));
    click(u"storeCheck"_s);
    EXPECT_EQ(shown(model(u"itemStandings"_s), 0, 0), u"Failed on 2026-03-02: volume."_s);
    click(u"withdrawCheck"_s);
    EXPECT_EQ(focusName(), u"withdrawReason"_s);
    type(u"the other pipette"_s);
    press(Qt::Key_Return);
    EXPECT_TRUE(book->equipment().all()[0].checks[0].withdrawn);
    EXPECT_EQ(shown(model(u"itemStandings"_s), 0, 0), u"Never checked: volume."_s);
    EXPECT_EQ(shown(model(u"itemChecks"_s), 0, 3), u"taken back"_s);
}

TEST_F(EquipmentWindow, ThePhotometerIsWarnedOfBeforeDichromateIsWeighed)
{
    book->equipment().add(photometer(), u"R. Okafor"_s);
    open();
    press(Qt::Key_Return);
    click(u"keyCheck"_s);
    auto *aspect = find<QComboBox>(u"checkAspect"_s);
    ASSERT_EQ(aspect->count(), 3);
    aspect->setCurrentIndex(1);
    EXPECT_EQ(aspect->currentText(), u"Absorbance scale"_s);
    EXPECT_TRUE(shown(model(u"checkHow"_s), 0, 0).contains(u"may cause cancer"_s));
    aspect->setCurrentIndex(0);
    EXPECT_TRUE(shown(model(u"checkHow"_s), 0, 0).contains(u"perchloric acid"_s));
    EXPECT_EQ(model(u"checkRows"_s).rowCount(), 15);
}

TEST_F(EquipmentWindow, OutOfUseLeavesTheListUntilItIsAskedFor)
{
    const notebook::ItemId id = book->equipment().add(pistonPipette(), u"R. Okafor"_s);
    open();
    press(Qt::Key_Return);
    click(u"changeItem"_s);
    find<QCheckBox>(u"itemInUse"_s)->setChecked(false);
    click(u"storeItem"_s);
    EXPECT_EQ(noticeText(), u"Say why it is changed; the book keeps it."_s);
    type(u"broken"_s);
    press(Qt::Key_Return);
    EXPECT_FALSE(book->equipment().all()[0].item.inUse);
    EXPECT_EQ(book->equipment().all()[0].id, id.value);
    press(Qt::Key_Escape);
    find<QCheckBox>(u"outOfUseToo"_s)->setChecked(true);
    EXPECT_EQ(shown(model(u"equipment"_s), 0, ui::EquipmentModel::Standing), u"Out of use"_s);
}

TEST_F(EquipmentWindow, AFailedPhotometerIsFlaggedInPlanningAndReview)
{
    const notebook::ItemId id = book->equipment().add(photometer(), u"R. Okafor"_s);
    equipment::Check noise = blankCheck(photometer(), equipment::Aspect::Noise, QDate(2026, 2, 20));
    for (std::size_t i = 0; i < 10; ++i)
        noise.rows[i][0] = 0.02 * double(i % 2);
    book->equipment().addCheck(id, noise, u"R. Okafor"_s);
    run::Run run = exampleRun();
    run.startedAt = QDateTime(today, QTime(9, 0));
    addRun(run);
    open();
    press(Qt::Key_N, Qt::ControlModifier);
    QStringList problems;
    for (int row = 0; row < model(u"newRunProblems"_s).rowCount(); ++row)
        problems << shown(model(u"newRunProblems"_s), row, 0);
    EXPECT_TRUE(problems.join(u'\n').contains(u"Photometer PH-1: failed on 2026-02-20: zero and noise."_s))
        << problems.join(u'\n').toStdString();
    press(Qt::Key_G, Qt::ControlModifier);
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_EQ(shown(model(u"reviewEquipment"_s), 0, 0),
              u"Photometer PH-1: failed on 2026-02-20: zero and noise."_s);
}

} // namespace
} // namespace plateau::test
