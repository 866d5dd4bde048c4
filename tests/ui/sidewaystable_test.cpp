// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/sidewaystable.h"

#include "ui/shared/theme.h"

#include <QApplication>
#include <QHeaderView>
#include <QImage>
#include <QScrollBar>
#include <QStandardItemModel>
#include <QtTest/QTest>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::ui {
namespace {

class ASidewaysTable : public ::testing::Test
{
protected:
    ASidewaysTable()
    {
        for (int row = 0; row < 4; ++row) {
            QList<QStandardItem *> items{new QStandardItem(u"Tank %1"_s.arg(row + 1))};
            for (int column = 1; column < 12; ++column)
                items << new QStandardItem(u"value%1"_s.arg(column));
            model.appendRow(items);
        }
        table.resize(400, 200);
        table.fit();
        table.show();
        QApplication::processEvents();
        bar = table.horizontalScrollBar();
    }
    QImage names() const
    {
        QApplication::processEvents();
        return table.viewport()->grab(QRect(0, 0, table.columnWidth(0) - 1, table.viewport()->height())).toImage();
    }
    QImage heading() const
    {
        QApplication::processEvents();
        QHeaderView *header = table.horizontalHeader();
        return header->viewport()->grab(QRect(0, 0, table.columnWidth(0), header->height())).toImage();
    }

    Theme theme;
    QStandardItemModel model;
    SidewaysTable table{theme, &model, u"Tanks"_s, u"tanks"_s};
    QScrollBar *bar = nullptr;
};

TEST_F(ASidewaysTable, ItsNamesStayAtTheLeftEdge)
{
    ASSERT_GT(bar->maximum(), table.columnWidth(0));
    model.setHorizontalHeaderLabels({u"Name"_s});
    const QImage atRest = names();
    const QImage headingAtRest = heading();
    bar->setValue(bar->maximum());
    EXPECT_EQ(names(), atRest);
    EXPECT_EQ(heading(), headingAtRest);
    EXPECT_EQ(table.visualRect(model.index(2, 0)).left(), 0);
    EXPECT_EQ(table.indexAt(QPoint(5, table.rowViewportPosition(2) + 5)), model.index(2, 0)) << "what is seen there is hit";
}

TEST_F(ASidewaysTable, NoCellThatIsGoneToLiesBelowThem)
{
    bar->setValue(bar->maximum());
    for (int column = 11; column > 0; --column) {
        table.setCurrentIndex(model.index(1, column));
        table.scrollTo(table.currentIndex());
        const int left = table.visualRect(table.currentIndex()).left();
        EXPECT_GE(left, bar->value() > 0 ? table.columnWidth(0) : 0) << column;
    }
    EXPECT_EQ(table.visualRect(model.index(1, 1)).left(), table.columnWidth(0));
}

TEST_F(ASidewaysTable, ANameThatIsGoneToLeavesTheOthersWhereTheyAre)
{
    bar->setValue(bar->maximum());
    table.scrollTo(model.index(1, 0));
    EXPECT_EQ(bar->value(), bar->maximum());
}

TEST_F(ASidewaysTable, NamesThatWouldTakeMostOfTheRoomGoWithTheOthers)
{
    table.setColumnWidth(0, table.viewport()->width() * 2 / 3);
    bar->setValue(bar->maximum());
    EXPECT_LT(table.visualRect(model.index(2, 0)).left(), 0);
}

} // namespace
} // namespace plateau::ui
