// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/table.h"

#include "core/exchange/decimal.h"
#include "ui/shared/columnwidths.h"
#include "ui/shared/keyednumber.h"
#include "ui/shared/roomystyle.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/syncrows.h"
#include "ui/shared/theme.h"
#include "ui/shared/wrappedheader.h"

#include <QAbstractTableModel>
#include <QAccessible>
#include <QApplication>
#include <QHeaderView>
#include <QHelpEvent>
#include <QImage>
#include <QLocale>
#include <QSortFilterProxyModel>
#include <QStandardItemModel>
#include <QToolTip>
#include <QtTest/QTest>

#include <gtest/gtest.h>

#include <numeric>

using namespace Qt::StringLiterals;

namespace plateau::ui {
namespace {

TEST(ColumnWidths, FreeRoomGoesFirstToWhatIsCutInProportionToWhatItLacks)
{
    const std::vector<ColumnNeed> needs{{50, 50, 50}, {40, 100, 300}, {40, 100, 200}};
    EXPECT_EQ(columnWidths(needs, 250, 0), (std::vector<int>{50, 100, 100}));
    EXPECT_EQ(columnWidths(needs, 400, 0), (std::vector<int>{50, 200, 150}));
    EXPECT_EQ(columnWidths(needs, 550, 0), (std::vector<int>{50, 300, 200}));
    EXPECT_EQ(columnWidths(needs, 650, 0), (std::vector<int>{150, 300, 200})) << "more than anybody wants";
}

TEST(ColumnWidths, NamesAreWholeBeforeALongTextGetsMoreThanUsual)
{
    const std::vector<ColumnNeed> needs{{40, 100, 150, true}, {40, 100, 600}};
    EXPECT_EQ(columnWidths(needs, 130, 1), (std::vector<int>{65, 65})) << "no room for what is usual";
    EXPECT_EQ(columnWidths(needs, 230, 1), (std::vector<int>{130, 100}));
    EXPECT_EQ(columnWidths(needs, 300, 1), (std::vector<int>{150, 150}));
}

TEST(ColumnWidths, ThatFallShortGiveInProportionToWhatTheyCanSpare)
{
    const std::vector<ColumnNeed> needs{{50, 50, 50}, {40, 100, 300}, {60, 180, 200}};
    EXPECT_EQ(columnWidths(needs, 240, 1), (std::vector<int>{50, 70, 120}));
    EXPECT_EQ(columnWidths(needs, 150, 1), (std::vector<int>{50, 40, 60}));
    EXPECT_EQ(columnWidths(needs, 149, 1), (std::vector<int>{50, 40, 60})) << "the rest is scrolled to";
}

TEST(ColumnWidths, AreSharedEquallyWhereTheWidestHasItsRoom)
{
    const std::vector<ColumnNeed> needs{{40, 40, 40}, {50, 50, 50}, {120, 120, 120}};
    std::vector<int> widths{40, 50, 311};
    shareEqually(widths, needs, 1);
    EXPECT_EQ(widths, (std::vector<int>{40, 180, 181})) << "the first is none of them, and no pixel is lost";
    widths = {40, 50, 130};
    shareEqually(widths, needs, 1);
    EXPECT_EQ(widths, (std::vector<int>{40, 50, 130})) << "the last could not be read any more";
    shareEqually(widths, needs, 3);
    EXPECT_EQ(widths, (std::vector<int>{40, 50, 130}));
}

TEST(ColumnWidths, FillTheRoomToThePixel)
{
    const std::vector<ColumnNeed> needs{{50, 60, 70}, {40, 101, 307}, {60, 183, 211}};
    for (int room = 150; room < 700; ++room) {
        const std::vector<int> widths = columnWidths(needs, room, 2);
        EXPECT_EQ(std::accumulate(widths.begin(), widths.end(), 0), room);
    }
}

class ATable : public ::testing::Test
{
protected:
    ATable()
    {
        model.setHorizontalHeaderLabels({u"Name"_s, u"Left"_s, u"State"_s});
        const auto add = [this](const QStringList &texts) {
            QList<QStandardItem *> items;
            for (const QString &text : texts)
                items << new QStandardItem(text);
            model.appendRow(items);
        };
        add({u"Buffer with NADH, pyruvate kinase and phosphoenolpyruvate"_s, u"26 mL"_s, u"in use"_s});
        add({u"Water"_s, u"130 mL"_s, u"open too long, to be used until 2026-05-22 at the latest"_s});
    }
    /// Whether any cell of the column ends in an ellipsis.
    bool isCut(const Table &table, int column) const
    {
        const QAbstractItemView &view = table;
        return view.sizeHintForColumn(column) > table.columnWidth(column);
    }
    void show(Table &table, int width)
    {
        table.resize(width, 200);
        table.fit();
        table.show();
        QApplication::processEvents();
    }

    Theme theme;
    QStandardItemModel model;
};

TEST_F(ATable, CutsNothingWhileThereIsRoom)
{
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setFlexibleColumn(2);
    table.setLimit(10);
    show(table, 1200);
    for (int column = 0; column < 3; ++column)
        EXPECT_FALSE(isCut(table, column)) << column;
    EXPECT_EQ(table.horizontalHeader()->length(), table.viewport()->width());
}

TEST_F(ATable, LongWordsGiveWayBeforeItScrolls)
{
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setFlexibleColumn(2);
    show(table, 420);
    EXPECT_EQ(table.horizontalHeader()->length(), table.viewport()->width());
    EXPECT_TRUE(isCut(table, 0));
    EXPECT_FALSE(isCut(table, 1)) << "a short text stays whole";
    table.resize(1200, 200);
    QApplication::processEvents();
    EXPECT_FALSE(isCut(table, 0)) << "with the room";
}

TEST_F(ATable, WordsThatWrapMakeTheirRowHigherAndNothingIsCut)
{
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setFlexibleColumn(2);
    table.setWrap(Table::Wrap::AsNeeded);
    model.appendRow({new QStandardItem(u"Salt"_s), new QStandardItem(u"5 mL"_s), new QStandardItem(u"in use"_s)});
    show(table, 420);
    EXPECT_EQ(table.horizontalHeader()->length(), table.viewport()->width());
    for (int row = 0; row < 3; ++row) {
        for (int column = 0; column < 3; ++column)
            EXPECT_FALSE(table.isCut(model.index(row, column))) << row << ", " << column;
    }
    const int line = table.fontMetrics().height();
    EXPECT_GE(table.rowHeight(0), 2 * line);
    EXPECT_GE(table.rowHeight(1), 2 * line);
    EXPECT_EQ(table.rowHeight(2), theme.target()) << "a row that needs one line has one";
    const QModelIndex salt = model.index(2, 0);
    EXPECT_LE(table.fontMetrics().horizontalAdvance(u"Salt"_s), table.columnWidth(0));
    model.item(2, 0)->setText(model.item(0, 0)->text());
    EXPECT_TRUE(table.isCut(salt)) << "until its row has the height";
    QApplication::processEvents();
    EXPECT_FALSE(table.isCut(salt));
    EXPECT_GE(table.rowHeight(2), 2 * line);
    model.item(2, 0)->setText(u"Salt"_s);
    QApplication::processEvents();
    EXPECT_EQ(table.rowHeight(2), theme.target());
    table.resize(1200, 200);
    QApplication::processEvents();
    EXPECT_EQ(table.rowHeight(0), theme.target()) << "with the room";
}

TEST_F(ATable, AHeadingGoesOnOnAnotherLineWhereItsColumnIsNarrower)
{
    model.setHorizontalHeaderLabels({u"Name"_s, u"Volume that is left over"_s, u"State"_s});
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setFlexibleColumn(2);
    table.setWrap(Table::Wrap::AsNeeded);
    show(table, 1400);
    const auto *header = qobject_cast<const WrappedHeader *>(table.horizontalHeader());
    ASSERT_TRUE(header);
    const int one = header->height();
    EXPECT_GE(header->sectionSize(1), header->inOneLine(1));
    EXPECT_LT(header->inTwoLines(1), header->inOneLine(1));
    EXPECT_LT(header->narrowest(1), header->inTwoLines(1));
    table.resize(420, 200);
    QApplication::processEvents();
    EXPECT_EQ(header->length(), table.viewport()->width());
    EXPECT_LT(header->sectionSize(1), header->inOneLine(1));
    EXPECT_GE(header->sectionSize(1), header->narrowest(1)) << "no word of it is cut";
    EXPECT_GE(header->height(), one + table.fontMetrics().height() - 1);
    table.resize(1400, 200);
    QApplication::processEvents();
    EXPECT_EQ(header->height(), one) << "with the room";
}

TEST_F(ATable, AHeadingIsPaintedWholeOrBrokenAtEveryWidth)
{
    RoomyStyle roomy(u"Fusion"_s);
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setWrap(Table::Wrap::AsNeeded);
    table.horizontalHeader()->setStyle(&roomy);
    // Bars at both ends, whose ink is known: none of them may be cut off.
    model.setHorizontalHeaderItem(1, new QStandardItem(u"|eeee e|"_s));
    show(table, 1200);
    QHeaderView *header = table.horizontalHeader();
    const int whole = header->sectionSizeHint(1);
    for (int width = whole - 12; width <= whole; ++width) {
        table.setColumnWidth(1, width);
        header->setFixedHeight(60);
        QApplication::processEvents();
        const QImage image = header->viewport()->grab(QRect(table.columnViewportPosition(1), 0, width, 60)).toImage();
        int highest = 0; // of the ink in one column of pixels: a bar is higher than a letter
        int bars = 0;
        bool wasBar = false;
        for (int x = 3; x < width - 3; ++x) {
            int ink = 0;
            for (int y = 4; y < 56; ++y)
                ink += qGray(image.pixel(x, y)) < 140 ? 1 : 0;
            highest = std::max(highest, ink);
            const bool isBar = ink > table.fontMetrics().xHeight() + 3;
            bars += isBar && !wasBar ? 1 : 0;
            wasBar = isBar;
        }
        EXPECT_EQ(bars, 2) << width << " of " << whole << ", highest " << highest;
    }
}

TEST_F(ATable, ARowIsNoHigherThanTheMostLines)
{
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setWrap(Table::Wrap::AsNeeded);
    model.item(0, 2)->setText(QStringList(60, u"state"_s).join(u' '));
    show(table, 420);
    EXPECT_TRUE(table.isCut(model.index(0, 2)));
    EXPECT_LE(table.rowHeight(0), (Table::mostLines + 1) * table.fontMetrics().lineSpacing());
}

TEST_F(ATable, OfManyRowsHasTwoLinesInEachWithoutMeasuringThem)
{
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setWrap(Table::Wrap::AsNeeded);
    show(table, 420);
    while (model.rowCount() <= Table::mostMeasured)
        model.appendRow({new QStandardItem(u"Salt"_s), new QStandardItem(u"5 mL"_s), new QStandardItem(u"in use"_s)});
    QApplication::processEvents();
    const int high = table.rowHeight(0);
    EXPECT_GE(high, 2 * table.fontMetrics().height());
    EXPECT_LT(high, 3 * table.fontMetrics().height());
    EXPECT_EQ(table.rowHeight(model.rowCount() - 1), high);
    model.removeRows(2, model.rowCount() - 3);
    model.item(0, 0)->setText(u"Water"_s);
    QApplication::processEvents();
    EXPECT_EQ(table.rowHeight(2), theme.target()) << "few again";
}

TEST_F(ATable, WithTwoLinesInEveryRowKeepsItsWholeColumnWhole)
{
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setFlexibleColumn(2);
    table.setWholeColumn(0);
    table.setWrap(Table::Wrap::TwoLines);
    show(table, 460);
    EXPECT_EQ(table.rowHeight(0), table.rowHeight(1));
    EXPECT_GE(table.rowHeight(0), 2 * table.fontMetrics().height());
    EXPECT_FALSE(table.isCut(model.index(0, 0)));
    EXPECT_LT(table.columnWidth(0), table.fontMetrics().horizontalAdvance(model.item(0, 0)->text())) << "in two lines";
    EXPECT_FALSE(table.isCut(model.index(0, 1)));
    model.appendRow({new QStandardItem(u"Salt"_s), new QStandardItem(u"5 mL"_s), new QStandardItem(u"in use"_s)});
    EXPECT_EQ(table.rowHeight(2), table.rowHeight(0));
}

TEST_F(ATable, CutsNoWordWhateverItsLimit)
{
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setFlexibleColumn(2);
    table.setFlexibleMinimum(14);
    table.setLimit(12);
    table.setWrap(Table::Wrap::AsNeeded);
    show(table, 420);
    EXPECT_EQ(table.horizontalHeader()->length(), table.viewport()->width()) << "without scrolling to the side";
    const int longest = table.fontMetrics().horizontalAdvance(u"phosphoenolpyruvate"_s);
    EXPECT_GT(table.columnWidth(0), longest) << "no word is cut, whatever the limit";
    QFont large = table.font(); // as what failed is bold
    large.setPointSizeF(1.2 * large.pointSizeF());
    model.item(0, 0)->setFont(large);
    table.fit();
    EXPECT_GT(table.columnWidth(0), QFontMetrics(large).horizontalAdvance(u"phosphoenolpyruvate"_s));
}

TEST_F(ATable, TheCurrentRowStaysInSightWhenRowsGetHigher)
{
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setFlexibleColumn(2);
    table.setWrap(Table::Wrap::AsNeeded);
    show(table, 420);
    const auto isInSight = [&](int row) {
        return table.viewport()->rect().contains(table.visualRect(model.index(row, 0)).center());
    };
    for (int row = 0; row < 40; ++row)
        model.appendRow({new QStandardItem(model.item(0, 0)->text()), new QStandardItem(u"5 mL"_s),
                         new QStandardItem(u"in use"_s)});
    const int last = model.rowCount() - 1;
    table.setCurrentIndex(model.index(last, 0)); // before its rows were measured
    QTest::qWait(20);
    EXPECT_GT(table.rowHeight(last), theme.target());
    EXPECT_TRUE(isInSight(last));
    table.setCurrentIndex(model.index(0, 0));
    ASSERT_TRUE(isInSight(0));
    table.setCurrentIndex(model.index(20, 0));
    for (int row = 2; row < 20; ++row)
        model.item(row, 2)->setText(QStringList(20, u"state"_s).join(u' '));
    table.fit();
    QTest::qWait(20);
    EXPECT_TRUE(isInSight(20)) << "those above it got higher";
}

/// A short name stays whole as long as there is room for all columns, and below that leaves some to the long words beside it:
/// narrower by the scroll bar, the row is lower, and needs none.
TEST_F(ATable, ComesToRestHoweverItsScrollBarActsOnItsRows)
{
    model.clear();
    model.setHorizontalHeaderLabels({u"Name"_s, u"State"_s});
    model.appendRow({new QStandardItem(u"a b c d e f g h i j"_s), new QStandardItem(QStringList(14, u"state"_s).join(u' '))});
    model.appendRow({new QStandardItem(u"a b c d e f g h i j"_s), new QStandardItem(u"in use"_s)});
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setFlexibleColumn(1);
    table.setWrap(Table::Wrap::AsNeeded);
    int changes = 0;
    QObject::connect(table.horizontalHeader(), &QHeaderView::sectionResized, &table, [&changes] { ++changes; });
    show(table, 400);
    for (int width = 200; width <= 400; width += 8) {
        for (int height = 80; height <= 220; height += 10) {
            table.resize(width, height);
            for (int round = 0; round < 60; ++round)
                QApplication::processEvents();
            changes = 0;
            for (int round = 0; round < 10; ++round)
                QApplication::processEvents();
            ASSERT_EQ(changes, 0) << width << " x " << height;
        }
    }
}

TEST_F(ATable, RowsFollowAColumnThatIsHidden)
{
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setFlexibleColumn(1);
    table.setWrap(Table::Wrap::AsNeeded);
    model.item(1, 0)->setText(model.item(0, 0)->text());
    model.item(0, 2)->setText(QStringList(20, u"state"_s).join(u' '));
    show(table, 420);
    const int high = table.rowHeight(0);
    ASSERT_GT(high, table.rowHeight(1));
    table.setColumnHidden(2, true);
    QApplication::processEvents();
    EXPECT_EQ(table.rowHeight(0), table.rowHeight(1));
}

TEST_F(ATable, SaysInATipWhatTheModelHasToSayBesidesTheCell)
{
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    show(table, 1200);
    model.item(1, 0)->setToolTip(u"Water, of the still"_s);
    const QPoint at = table.visualRect(model.index(1, 0)).center();
    QHelpEvent rests(QEvent::ToolTip, at, table.viewport()->mapToGlobal(at));
    QApplication::sendEvent(table.viewport(), &rests);
    EXPECT_TRUE(QToolTip::text().contains(u"Water, of the still"_s)) << QToolTip::text().toStdString();
    QToolTip::hideText();
}

TEST_F(ATable, AColumnSomebodyPulledStays)
{
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setFlexibleColumn(2);
    show(table, 1200);
    table.horizontalHeader()->resizeSection(0, 77);
    table.resize(1100, 200);
    QApplication::processEvents();
    EXPECT_EQ(table.columnWidth(0), 77);
}

TEST_F(ATable, CellsAndHeadingsBeginInOneLineWithRoomAtBothSides)
{
    RoomyStyle roomy(u"Fusion"_s);
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    table.setStyle(&roomy);
    table.horizontalHeader()->setStyle(&roomy);
    model.setHorizontalHeaderItem(1, new QStandardItem(u"HHH"_s));
    model.item(0, 1)->setText(u"HHH"_s);
    model.item(1, 1)->setText({});
    for (const Qt::Alignment side : {Qt::AlignLeft, Qt::AlignRight}) {
        model.horizontalHeaderItem(1)->setTextAlignment(side | Qt::AlignVCenter);
        model.item(0, 1)->setTextAlignment(side | Qt::AlignVCenter);
        show(table, 1200);
        const auto inked = [&](QWidget &widget, int row) {
            const QImage image = widget.grab().toImage();
            const int from = table.columnViewportPosition(1);
            std::vector<int> places;
            // Past the lines between the headings.
            for (int x = from + 3; x < from + table.columnWidth(1) - 3; ++x) {
                if (qGray(image.pixel(x, row)) < 100)
                    places.push_back(x - from);
            }
            return places;
        };
        const auto heading = inked(*table.horizontalHeader()->viewport(), table.horizontalHeader()->height() / 2);
        const auto cell = inked(*table.viewport(), table.rowHeight(0) / 2);
        ASSERT_FALSE(heading.empty());
        ASSERT_FALSE(cell.empty());
        if (side == Qt::AlignLeft) {
            EXPECT_NEAR(heading.front(), cell.front(), 1);
            EXPECT_GE(cell.front(), 5);
        } else {
            EXPECT_NEAR(heading.back(), cell.back(), 1);
            EXPECT_LE(cell.back(), table.columnWidth(1) - 5);
        }
    }
}

TEST_F(ATable, IsSortedByTheKeysWhereAClickSortsIt)
{
    QSortFilterProxyModel sorted;
    sorted.setSourceModel(&model);
    Table table(theme, &sorted, u"Lots"_s, u"lots"_s);
    table.horizontalHeader()->setSortIndicatorClearable(true);
    show(table, 600);
    const auto first = [&sorted] { return sorted.index(0, 1).data().toString(); };
    table.setCurrentIndex(sorted.index(0, 1));
    QTest::keyClick(&table, Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(first(), u"26 mL"_s) << "nothing sorts a table that has an order of its own";
    table.horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    table.setSortingEnabled(true);
    QTest::keyClick(&table, Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(first(), u"130 mL"_s);
    QTest::keyClick(&table, Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(first(), u"26 mL"_s);
    QTest::keyClick(&table, Qt::Key_Down, Qt::AltModifier);
    QTest::keyClick(&table, Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(table.horizontalHeader()->sortIndicatorSection(), -1);
    EXPECT_EQ(first(), u"26 mL"_s) << "as it was";
}

/// The locale of a test, and C again after it.
class InLocale
{
public:
    explicit InLocale(const QString &name) { QLocale::setDefault(QLocale(name)); }
    ~InLocale() { QLocale::setDefault(QLocale::c()); }
};

QString painted(const QModelIndex &index)
{
    struct Delegate : ShownNumbersDelegate {
        using ShownNumbersDelegate::initStyleOption;
    };
    QStyleOptionViewItem option;
    Delegate().initStyleOption(&option, index);
    return option.text;
}

TEST_F(ATable, PaintsAMinusAndKeepsTheHyphenOfFiles)
{
    model.item(0, 1)->setText(u"-0.002"_s);
    Table table(theme, &model, u"Lots"_s, u"lots"_s);
    ASSERT_TRUE(qobject_cast<const ShownNumbersDelegate *>(table.itemDelegate()));
    EXPECT_EQ(painted(model.index(0, 1)), u"\u22120.002"_s);
    EXPECT_EQ(model.index(0, 1).data().toString(), u"-0.002"_s);
    // To the right stands a number, to the left a name.
    model.item(0, 1)->setTextAlignment(Qt::AlignRight);
    model.item(0, 0)->setText(u"3.2"_s);
    const InLocale french(u"fr_FR"_s);
    EXPECT_EQ(painted(model.index(0, 1)), u"\u22120,002"_s);
    EXPECT_EQ(painted(model.index(0, 0)), u"3.2"_s);
    model.item(0, 0)->setData(true, FigureRole); // where no name can stand
    EXPECT_EQ(painted(model.index(0, 0)), u"3,2"_s);
    model.item(0, 0)->setText(u"1.2 of Tank 3.2"_s);
    EXPECT_EQ(painted(model.index(0, 0)), u"1.2 of Tank 3.2"_s);
}

class SpokenRows : public RowsModel<QAbstractTableModel, double>
{
public:
    explicit SpokenRows(std::vector<double> rows) { setRows(std::move(rows)); }
    int columnCount(const QModelIndex &parent = {}) const override { return parent.isValid() ? 0 : 4; }
    QVariant cellData(const QModelIndex &index, int role) const override
    {
        const QString number = QString::number(row(index.row()), 'f', 3);
        if (role == Qt::DisplayRole)
            return QStringList{number, number, u"Tank 3.2: %1\u00a0g/L"_s.arg(number), u"3.2"_s}.at(index.column());
        if (role == Qt::TextAlignmentRole && index.column() == 0)
            return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
        if (role == FigureRole && index.column() == 1)
            return true;
        return {};
    }
};

TEST_F(ATable, IsReadOutAsItIsPaintedAndCopiedAsItIsHeld)
{
    SpokenRows rows({0.881, -0.5});
    Table table(theme, &rows, u"Readings"_s, u"spoken"_s);
    table.show();
    const InLocale german(u"de_DE"_s);
    QAccessibleInterface *accessible = QAccessible::queryAccessibleInterface(&table);
    ASSERT_NE(accessible, nullptr);
    ASSERT_NE(accessible->tableInterface(), nullptr);
    for (int row = 0; row < rows.rowCount(); ++row) {
        for (int column = 0; column < rows.columnCount(); ++column) {
            const QAccessibleInterface *cell = accessible->tableInterface()->cellAt(row, column);
            ASSERT_NE(cell, nullptr);
            // What holds a unit together on the screen is not heard.
            EXPECT_EQ(cell->text(QAccessible::Name), painted(rows.index(row, column)).remove(u'\u2060'))
                << row << ", " << column;
        }
    }
    EXPECT_EQ(rows.index(0, 0).data(Qt::AccessibleTextRole).toString(), u"0,881"_s);
    EXPECT_EQ(rows.index(1, 1).data(Qt::AccessibleTextRole).toString(), u"\u22120,500"_s);
    EXPECT_EQ(rows.index(0, 2).data(Qt::AccessibleTextRole).toString(), u"Tank 3.2: 0,881\u00a0g/L"_s);
    EXPECT_EQ(rows.index(0, 3).data(Qt::AccessibleTextRole).toString(), u"3.2"_s);
    EXPECT_EQ(rows.index(0, 0).data().toString(), u"0.881"_s);
}

TEST(ShownNumbers, HaveTheSignOfTheLocaleWhereTheyHaveAUnit)
{
    const QString sentence = u"Recovery 84.1\u00a0% of 0.168 ± 0.002\u00a0g/L; A1 of Tank 3.2 is in section 4.2, 1.25."_s;
    EXPECT_EQ(shownNumbers(sentence), sentence);
    EXPECT_EQ(shownNumber(u"0.427 ± 0.017"_s), u"0.427 ± 0.017"_s);
    const InLocale german(u"de_DE"_s);
    EXPECT_EQ(shownNumbers(sentence),
              u"Recovery 84,1\u00a0% of 0,168 ± 0,002\u00a0g/L; A1 of Tank 3.2 is in section 4.2, 1.25."_s);
    EXPECT_EQ(shownNumbers(u"outside 90.0 bis 110.0\u00a0%"_s), u"outside 90,0 bis 110,0\u00a0%"_s);
    EXPECT_EQ(withDecimalSigns(u"-0.5\u00a0%"_s), u"-0.5\u00a0%"_s) << "no sign is changed halfway";
    EXPECT_EQ(shownNumber(u"0.427 ± 0.017\u00a0g/L"_s), u"0,427 ± 0,017\u00a0g/L"_s);
    EXPECT_EQ(shownNumber(u"<0.05"_s), u"<0,05"_s);
    EXPECT_EQ(shownCell(u"27.11.2026"_s, Qt::AlignLeft, true), u"27.11.2026"_s) << "the day of a check is no number";
    EXPECT_EQ(shownCell(u"0.168"_s, Qt::AlignLeft, true), u"0,168"_s);
    EXPECT_EQ(shownCell(u"-0.1 bis 4"_s, Qt::AlignLeft, true), u"\u22120,1 bis 4"_s);
    EXPECT_EQ(shownCell(u"-0.1 à 4"_s, Qt::AlignLeft, true), u"\u22120,1 à 4"_s) << "a letter with an accent is one";
    EXPECT_EQ(shownNumbers(u"pipette 0.5 to 5 mL"_s), u"pipette 0.5 to 5 mL"_s) << "English here is a name";
    EXPECT_EQ(shownNumber(u"-0.05"_s), u"\u22120,05"_s);
}

TEST(ShownNumbers, StayWithTheirUnitsWhereLinesAreBroken)
{
    EXPECT_EQ(unbroken(u"2.5 g/L; 40 mg/kg"_s), u"2.5\u00a0g/\u2060L; 40\u00a0mg/\u2060kg"_s);
    EXPECT_EQ(unbroken(u"Content (g/100 g)"_s), u"Content (g/\u2060100\u00a0g)"_s);
    EXPECT_EQ(unbroken(u"6300 L/(mol cm)"_s), u"6300\u00a0L/\u2060(mol\u00a0cm)"_s);
    EXPECT_EQ(unbroken(u"D-fructose, L-malic acid, 6-phosphogluconate"_s),
              u"D-\u2060fructose, L-\u2060malic acid, 6-\u2060phosphogluconate"_s);
    EXPECT_EQ(unbroken(u"read at 400 nm after 5 min"_s), u"read at 400\u00a0nm after 5\u00a0min"_s);
    EXPECT_EQ(unbroken(u"90 to 110 % of 0.2 g/L"_s), u"90 to 110\u00a0% of 0.2\u00a0g/\u2060L"_s);
    EXPECT_EQ(unbroken(u"Strength when made (k = 2)"_s), u"Strength when made (k\u00a0=\u00a02)"_s);
    EXPECT_EQ(unbroken(u"dilute at least 10-fold, 2.5-fold"_s), u"dilute at least 10-\u2060fold, 2.5-\u2060fold"_s);
    for (const QString &text : {u"P-104/2"_s, u"NAD/INT"_s, u"one-sided"_s, u"2026-06-09"_s, u"AD-L"_s, u"tank 4 left"_s,
                                u"vitamin k = low"_s, u"P-104-b"_s, u"at 08:42 10:15"_s})
        EXPECT_EQ(unbroken(text), text);
    EXPECT_EQ(unbroken(u"2 L-malate"_s), u"2 L-\u2060malate"_s) << "no litres";
    EXPECT_EQ(withWholeUnits(u"0.2 g/L at 400 nm"_s), u"0.2 g/\u2060L at 400 nm"_s) << "paper is searched";
}

TEST(ShownNumbers, HaveTheSignOfTheLocaleWhereTheyAreAbsorbances)
{
    const InLocale german(u"de_DE"_s);
    EXPECT_EQ(shownNumbers(u"A1 is 0.512, 0.100 above 0.412; -0.004 (1.250)."_s),
              u"A1 is 0,512, 0,100 above 0,412; \u22120,004 (1,250)."_s);
    for (const QString &name : {u"2.104"_s, u"version 1.2.345"_s, u"lot 12.345"_s, u"10.1021"_s, u"B1.204"_s, u"0.512-b"_s})
        EXPECT_EQ(shownNumbers(name), name);
}

TEST(ShownNumbers, HaveTheSignOfTheLocaleWhereTheyAreFactors)
{
    const InLocale german(u"de_DE"_s);
    EXPECT_EQ(shownNumbers(u"insgesamt 11.2-fach verdünnt (Verdünnung 1.25-fold)"_s),
              u"insgesamt 11,2-fach verdünnt (Verdünnung 1,25-fold)"_s);
    EXPECT_EQ(shownNumbers(u"2.5- bis 13.25-fach, 2.5- to 3-fold"_s), u"2,5- bis 13,25-fach, 2,5- to 3-fold"_s);
    EXPECT_EQ(shownNumbers(u"2.5-mal so schwer; um den Faktor 11.2 auseinander"_s),
              u"2,5-mal so schwer; um den Faktor 11,2 auseinander"_s);
    EXPECT_EQ(shownNumbers(u"dilué 2.5 à 11.2 fois, dans un rapport de 1.5."_s),
              u"dilué 2,5 à 11,2 fois, dans un rapport de 1,5."_s);
    EXPECT_EQ(shownNumbers(u"diluida de 2.5 a 11.2 veces; factor 1.25"_s), u"diluida de 2,5 a 11,2 veces; factor 1,25"_s);
    EXPECT_EQ(shownNumbers(u"A2 ist 13.850, außerhalb von -0.1 bis 4"_s), u"A2 ist 13,850, außerhalb von \u22120,1 bis 4"_s);
    for (const QString &name : {u"AB-1.2"_s, u"section 4.2 to 4.4"_s, u"version 1.0.3"_s,
                                u"factor AB-1.2"_s, u"factor 1.2.3"_s, u"2026.06.09"_s, u"11.20 Uhr"_s, u"lot 13.850"_s})
        EXPECT_EQ(shownNumbers(name), name);
}

TEST(ShownNumbers, HaveTheSignOfTheLocaleWhereTheyAreCoverageFactorsOrDegreesOfFreedom)
{
    const QString coverage = u"k = 13.2: t at 95.45\u00a0% for 1.02 effective degrees of freedom."_s;
    EXPECT_EQ(shownNumbers(coverage), coverage);
    {
        const InLocale french(u"fr_FR"_s);
        EXPECT_EQ(shownNumbers(u"k = 2.00\u00a0: 2, pour 30 degrés de liberté effectifs ou plus."_s),
                  u"k = 2,00\u00a0: 2, pour 30 degrés de liberté effectifs ou plus."_s);
        EXPECT_EQ(shownNumbers(u"k = 13.2\u00a0: t à 95,45\u00a0% pour 1.02 degrés de liberté effectifs."_s),
                  u"k = 13,2\u00a0: t à 95,45\u00a0% pour 1,02 degrés de liberté effectifs."_s);
        EXPECT_EQ(shownNumbers(u"acceptation protégée, 1.64 u = 3.1\u00a0mg/L"_s),
                  u"acceptation protégée, 1,64 u = 3,1\u00a0mg/L"_s);
        EXPECT_EQ(shownNumbers(u"A2 varie encore (-0.12 par minute sur les 3 dernières lectures)"_s),
                  u"A2 varie encore (\u22120,12 par minute sur les 3 dernières lectures)"_s);
        EXPECT_EQ(shownNumbers(u"A1 vaut 0.5, au dernier chiffre près"_s), u"A1 vaut 0,5, au dernier chiffre près"_s);
    }
    const InLocale german(u"de_DE"_s);
    EXPECT_EQ(shownNumbers(u"k = 13.2: t bei 95,45\u00a0% für 1.02 effektive Freiheitsgrade."_s),
              u"k = 13,2: t bei 95,45\u00a0% für 1,02 effektive Freiheitsgrade."_s);
    EXPECT_EQ(shownNumbers(u"Students t mit 4.5 Freiheitsgraden; 1.5 U = 0.12\u00a0g/L; Saft: 0.5 ± 0.1 g/L (k = 2.0)"_s),
              u"Students t mit 4,5 Freiheitsgraden; 1,5 U = 0,12\u00a0g/L; Saft: 0,5 ± 0,1 g/L (k = 2,0)"_s);
    EXPECT_EQ(shownNumbers(u"Verdünnungsschritt 2.5 auf 50\u00a0mL 0.42\u00a0%"_s),
              u"Verdünnungsschritt 2,5 auf 50\u00a0mL 0,42\u00a0%"_s);
    EXPECT_EQ(shownNumbers(u"Schutzband, 1.64\u00a0u\u00a0= 3.1\u00a0mg/L; k\u00a0=\u00a02.0, ab 1.02\u00a0Freiheitsgraden"_s),
              u"Schutzband, 1,64\u00a0u\u00a0= 3,1\u00a0mg/L; k\u00a0=\u00a02,0, ab 1,02\u00a0Freiheitsgraden"_s);
    EXPECT_EQ(shownNumbers(u"t de Student con 4.5 grados de libertad"_s), u"t de Student con 4,5 grados de libertad"_s);
    for (const QString &name : {u"lot k = 1.2.3"_s, u"Tank 3.2 u"_s, u"bulk = 1.2"_s, u"version 1.2, u = 3"_s, u"P-1.64 u = 3"_s})
        EXPECT_EQ(shownNumbers(name), name);
}

TEST(ShownNumbers, HaveEveryDayOfASourceInTheFormOfTheLocale)
{
    const QString source = u"certificate 2026-4 of P1, 2026-02-16; AB-2026-02-16, 2026-02-30"_s;
    EXPECT_EQ(withDaysShown(source), source);
    const InLocale french(u"fr_FR"_s);
    EXPECT_EQ(withDaysShown(source), u"certificate 2026-4 of P1, 16/02/2026; AB-2026-02-16, 2026-02-30"_s);
}

TEST(ShownNumbers, HaveTheDaysOfKeptSentencesInTheFormOfTheLocale)
{
    const QString kept = u"Photometer P1: Prüfung 16 vom 2026-05-12; check 17 of 2026-05-13, GLU 2026-05-28"_s;
    EXPECT_EQ(shownNumbers(kept), kept);
    const InLocale german(u"de_DE"_s);
    EXPECT_EQ(shownNumbers(kept), u"Photometer P1: Prüfung 16 vom 12.05.2026; check 17 of 13.05.2026, GLU 2026-05-28"_s);
    EXPECT_EQ(shownNumbers(u"comprobación 21 del 2026-06-08"_s), u"comprobación 21 del 08.06.2026"_s);
}

TEST(ShownFormulas, HaveTheSignsThatAreWrittenByHand)
{
    EXPECT_EQ(shownFormula(u"dA x V / (e x d) - 2e-05"_s), u"dA \u00d7 V / (e \u00d7 d) \u2212 2\u00b710\u207b\u2075"_s);
    EXPECT_EQ(shownNumber(u"1e+15"_s), u"1\u00b710\u00b9\u2075"_s);
    const InLocale german(u"de_DE"_s);
    EXPECT_EQ(shownFormula(u"0.610 - (-0.100) x 1.5"_s), u"0,610 \u2212 (\u22120,100) \u00d7 1,5"_s);
    EXPECT_EQ(shownFormula(u"- P-104"_s), u"\u2212 P-104"_s);
}

TEST(KeyedText, IsReadBackAsTheNumberItWasInEveryLocale)
{
    for (const QString &locale : {u"C"_s, u"de_DE"_s, u"fr_FR"_s, u"es_ES"_s, u"de_CH"_s, u"ar_EG"_s}) {
        const InLocale here(locale);
        for (const double value : {0.512, -0.004, 1234.5, 1e-5, 0.0})
            EXPECT_EQ(std::get<double>(exchange::parseDecimal(keyedText(value))), value) << locale.toStdString();
    }
    const InLocale german(u"de_DE"_s);
    EXPECT_EQ(keyedText(1234.5), u"1234,5"_s);
    EXPECT_EQ(keyedText(u"0.20"_s), u"0,20"_s);
}

TEST(ShownNumbers, LeaveADayInACellOfFiguresAlone)
{
    const InLocale german(u"de_DE"_s);
    for (const QString &day : {u"27.11.2026"_s, u"01.02.2026"_s, u"27.11.2026 08:10"_s, u"2026-11-27"_s}) {
        EXPECT_EQ(shownCell(day, Qt::AlignRight | Qt::AlignVCenter, false), day);
        EXPECT_EQ(shownCell(day, Qt::AlignLeft | Qt::AlignVCenter, true), day);
    }
    EXPECT_EQ(shownNumber(u"0.5 to 12345.25"_s), u"0,5 to 12345,25"_s);
}

TEST(ShownNumbers, LeaveNamesDatesAndRangesAlone)
{
    for (const QString &name : {u"P-104"_s, u"2026-06-09"_s, u"Control SO2, 2026-1"_s, u"ISO 5725-6"_s, u"A1-A2"_s, u"1e-5"_s})
        EXPECT_EQ(shownNumbers(name), name);
    EXPECT_EQ(shownNumbers(u"-0.005 to 0.005 (-3)"_s), u"\u22120.005 to 0.005 (\u22123)"_s);
}

} // namespace
} // namespace plateau::ui
