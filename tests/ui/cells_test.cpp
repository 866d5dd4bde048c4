// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "ui/books/cellsmodel.h"
#include "ui/books/cellstable.h"
#include "ui/books/drafttables.h"
#include "ui/books/factsmodel.h"
#include "ui/shared/theme.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QDragMoveEvent>
#include <QMimeData>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

using Mode = QAbstractItemModelTester::FailureReportingMode;

class Cells : public ::testing::Test
{
protected:
    Cells()
        : tables(theme, nullptr)
        , components(tables.components())
    {
        components->setRows(ui::newMethodDraft().components); // water, sample, starter
    }
    bool key(ui::CellsModel *model, int row, int column, const QString &text)
    {
        return model->setData(model->index(row, column), text, Qt::EditRole);
    }
    QString shown(const ui::CellsModel *model, int row, int column)
    {
        return model->index(row, column).data().toString();
    }
    QStringList names()
    {
        QStringList list;
        for (const ui::CellRow &row : components->rows())
            list << row.cells[ui::component::Name];
        return list;
    }

    ui::Theme theme;
    ui::DraftTables tables;
    ui::CellsModel *components;
};

TEST_F(Cells, TheOpenRowBecomesARowAndAnotherOneOpens)
{
    const QAbstractItemModelTester tester(components, Mode::Warning);
    const QSignalSpy edited(components, &ui::CellsModel::edited);
    ASSERT_EQ(components->rowCount(), 4);
    const QPersistentModelIndex cursor(components->index(3, 0));
    EXPECT_FALSE(key(components, 3, 0, u"  "_s)) << "nothing keyed, no row";
    EXPECT_TRUE(key(components, 3, 0, u"Buffer"_s));
    EXPECT_EQ(components->rowCount(), 5);
    EXPECT_EQ(cursor.row(), 3) << "the cursor stays on what was keyed";
    EXPECT_EQ(names(), (QStringList{u"Water"_s, u"Sample"_s, u"Starter"_s, u"Buffer"_s}));
    EXPECT_EQ(edited.count(), 1);
    EXPECT_TRUE(components->isOpenRow(4));
}

TEST_F(Cells, RowsAreInsertedRemovedAndMovedWithTheirSignals)
{
    const QAbstractItemModelTester tester(components, Mode::Warning);
    const QSignalSpy moved(components, &QAbstractItemModel::rowsMoved);
    const QPersistentModelIndex starter(components->index(2, 0));
    EXPECT_TRUE(components->moveRowTo(2, 0));
    EXPECT_EQ(names(), (QStringList{u"Starter"_s, u"Water"_s, u"Sample"_s}));
    EXPECT_EQ(starter.row(), 0);
    EXPECT_TRUE(components->moveRowTo(0, 2));
    EXPECT_EQ(names(), (QStringList{u"Water"_s, u"Sample"_s, u"Starter"_s}));
    EXPECT_FALSE(components->moveRowTo(2, 3)) << "not behind the open row";
    EXPECT_FALSE(components->moveRowTo(0, -1));
    EXPECT_EQ(moved.count(), 2);
    components->insertRowAt(1, components->blankRow());
    EXPECT_EQ(names(), (QStringList{u"Water"_s, QString(), u"Sample"_s, u"Starter"_s}));
    components->removeRowAt(1);
    components->removeRowAt(3); // the open row cannot go
    EXPECT_EQ(names(), (QStringList{u"Water"_s, u"Sample"_s, u"Starter"_s}));
}

TEST_F(Cells, EveryChangeCanBeTakenBack)
{
    const QAbstractItemModelTester tester(components, Mode::Warning);
    const std::vector<ui::CellRow> start = components->rows();
    key(components, 3, 0, u"Buffer"_s);
    key(components, 0, ui::component::Volume_mL, u"2"_s);
    key(components, 3, ui::component::Part, ui::part::diluent); // water is that no longer
    components->moveRowTo(0, 2);
    components->removeRowAt(1);
    for (int change = 0; change < 5; ++change)
        EXPECT_TRUE(components->undo());
    EXPECT_EQ(components->rows(), start);
    EXPECT_FALSE(components->undo()) << "nothing before the first change";

    tables.layOutUsualSteps();
    const std::vector<ui::CellRow> usual = tables.steps()->rows();
    EXPECT_TRUE(key(tables.steps(), 3, ui::step::From_min, u"3"_s));
    tables.layOutUsualSteps();
    EXPECT_EQ(tables.steps()->rows(), usual);
    EXPECT_TRUE(tables.steps()->undo());
    EXPECT_EQ(shown(tables.steps(), 3, ui::step::From_min), u"3"_s);
}

TEST_F(Cells, APartIsPlayedByOneComponent)
{
    key(components, 3, ui::component::Name, u"Lake water"_s);
    EXPECT_TRUE(key(components, 3, ui::component::Part, ui::part::diluent));
    EXPECT_EQ(shown(components, 3, ui::component::Part), u"Diluent"_s);
    EXPECT_EQ(shown(components, 0, ui::component::Part), u"Reagent"_s);
    EXPECT_EQ(shown(components, 1, ui::component::Part), u"Sample"_s);
}

TEST_F(Cells, OnlyTheSampleHasARange)
{
    EXPECT_FALSE(key(components, 0, ui::component::From_mL, u"0.1"_s));
    EXPECT_FALSE(components->index(0, ui::component::From_mL).flags() & Qt::ItemIsEditable);
    EXPECT_TRUE(key(components, 1, ui::component::From_mL, u"0.1"_s));
}

TEST_F(Cells, ATextThatIsNoNumberStaysAndIsMarked)
{
    EXPECT_TRUE(key(components, 0, ui::component::Volume_mL, u"1.0.0"_s));
    EXPECT_EQ(shown(components, 0, ui::component::Volume_mL), u"1.0.0"_s);
    EXPECT_FALSE(
        components->index(0, ui::component::Volume_mL).data(Qt::DecorationRole).value<QIcon>().isNull());
}

TEST_F(Cells, AStepShowsItsComponentByTheNameItHasNow)
{
    tables.layOutUsualSteps();
    const QAbstractItemModelTester tester(tables.steps(), Mode::Warning);
    EXPECT_EQ(shown(tables.steps(), 0, ui::step::Component), u"Water"_s);
    key(components, 0, ui::component::Name, u"Redistilled water"_s);
    EXPECT_EQ(shown(tables.steps(), 0, ui::step::Component), u"Redistilled water"_s);
}

TEST_F(Cells, FactsAreShownAndCannotBeKeyed)
{
    tables.layOutUsualSteps();
    tables.steps()->setFacts(ui::step::InTube_mL, {u"1"_s, u"1.1"_s});
    EXPECT_EQ(shown(tables.steps(), 1, ui::step::InTube_mL), u"1.1"_s);
    EXPECT_EQ(shown(tables.steps(), 2, ui::step::InTube_mL), QString());
    EXPECT_FALSE(key(tables.steps(), 1, ui::step::InTube_mL, u"7"_s));
}

TEST_F(Cells, ADraggedRowGoesWhereItIsDropped)
{
    ui::CellsTable table(theme, components, u"Components"_s, u"components"_s);
    table.resize(600, 300);
    table.show();
    table.goTo(2, 0);
    const QRect first = table.visualRect(components->index(0, 0));
    const QMimeData *data = components->mimeData({components->index(2, 0)});
    // As the view's own drag would bring it: only that one knows where it came from.
    class Drop : public ui::CellsTable
    {
    public:
        static void on(ui::CellsTable &table, QDropEvent &event) { (table.*(&Drop::dropEvent))(&event); }
    };
    QDropEvent foreign(first.topLeft() + QPoint(5, 2), Qt::MoveAction, data, Qt::LeftButton, Qt::NoModifier);
    Drop::on(table, foreign);
    EXPECT_EQ(names(), (QStringList{u"Water"_s, u"Sample"_s, u"Starter"_s})) << "nothing comes from outside";
    table.dropCurrentAt(first.topLeft() + QPoint(5, 2));
    EXPECT_EQ(names(), (QStringList{u"Starter"_s, u"Water"_s, u"Sample"_s}));
    EXPECT_EQ(table.currentIndex().row(), 0);
    table.dropCurrentAt(QPoint(5, 290)); // below the last row
    EXPECT_EQ(names(), (QStringList{u"Water"_s, u"Sample"_s, u"Starter"_s}));
    delete data;
}

TEST_F(Cells, FactsModelKeepsItsRowsWhileTheTitlesStay)
{
    ui::FactsModel model;
    const QAbstractItemModelTester tester(&model, Mode::Warning);
    const QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    model.show({u"Wavelength"_s, u"Acid"_s}, {{u"340 nm"_s, u"0.336"_s}});
    EXPECT_EQ(reset.count(), 1);
    model.show({u"Wavelength"_s, u"Acid"_s}, {{u"334 nm"_s, u"0.34"_s}, {u"340 nm"_s, u"0.336"_s}});
    EXPECT_EQ(reset.count(), 1);
    EXPECT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.index(0, 1).data().toString(), u"0.34"_s);
    const auto isRight = [](const ui::FactsModel &of, int column) {
        const QVariant cell = of.index(0, column).data(Qt::TextAlignmentRole);
        EXPECT_EQ(cell, of.headerData(column, Qt::Horizontal, Qt::TextAlignmentRole));
        return cell.isValid();
    };
    EXPECT_FALSE(isRight(model, 0));
    EXPECT_TRUE(isRight(model, 1)) << "a number";
    ui::FactsModel texts(nullptr, {1});
    texts.show({u"What"_s, u"How"_s}, {{u"flask"_s, u"rinsed"_s}});
    EXPECT_FALSE(isRight(texts, 1));
    model.show({u"Wavelength"_s}, {});
    EXPECT_EQ(model.columnCount(), 1);
    EXPECT_EQ(model.rowCount(), 0);
}

} // namespace
} // namespace plateau::test
