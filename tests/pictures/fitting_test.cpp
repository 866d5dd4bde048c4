// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The eye that looks over every page, on pages of which is known what is wrong.
#include "tests/pictures/fitting.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/table.h"
#include "ui/shared/theme.h"
#include "ui/shared/wholewords.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QStandardItemModel>
#include <QTabBar>
#include <QTableView>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

const QString sentence = u"Words that need a good deal of room"_s;

class Misfits : public ::testing::Test
{
protected:
    Misfits() { page.resize(600, 400); }

    template <class T> T *put(T *widget, const QRect &place)
    {
        widget->setParent(&page);
        widget->setGeometry(place);
        widget->show(); // beside a page that is shown already
        return widget;
    }
    qsizetype found()
    {
        page.show();
        return misfits(page, QSize(600, 400)).size();
    }

    QWidget page;
};

TEST_F(Misfits, APageWithRoomForEverythingHasNone)
{
    put(new QLabel(sentence), {0, 0, 400, 40});
    put(new QPushButton(sentence), {0, 50, 400, 40});
    put(new QCheckBox(sentence), {0, 100, 400, 40});
    put(new QGroupBox(sentence), {0, 150, 400, 60});
    auto *box = put(new QComboBox, {0, 220, 400, 40});
    box->addItem(sentence);
    put(new QLineEdit, {0, 270, 400, 40})->setPlaceholderText(sentence);
    EXPECT_EQ(found(), 0) << misfits(page, QSize(600, 400)).join(u'\n').toStdString();
}

TEST_F(Misfits, WordsThatAreCutAreFoundInEveryWidget)
{
    put(new QLabel(sentence), {0, 0, 90, 40});
    put(new QPushButton(sentence), {0, 50, 90, 40});
    put(new QCheckBox(sentence), {0, 100, 90, 40});
    put(new QGroupBox(sentence), {0, 150, 90, 60});
    auto *box = put(new QComboBox, {0, 220, 90, 40});
    box->addItem(sentence);
    put(new QLineEdit, {0, 270, 90, 40})->setPlaceholderText(sentence);
    EXPECT_EQ(found(), 6) << misfits(page, QSize(600, 400)).join(u'\n').toStdString();
}

TEST_F(Misfits, WrappedWordsNeedTheHeightOfTheirLines)
{
    auto *label = put(new QLabel(sentence), {0, 0, 120, 30});
    label->setWordWrap(true);
    EXPECT_EQ(found(), 1);
    label->resize(120, label->heightForWidth(120));
    EXPECT_EQ(found(), 0);
    label->setText(u"Donaudampfschifffahrtsgesellschaft"_s);
    label->resize(120, 200);
    EXPECT_EQ(found(), 1) << "one word that is wider than the label";
}

TEST_F(Misfits, WordsThatGiveWayOnPurposeAreNone)
{
    put(new ui::ElidingLabel(&page), {0, 0, 60, 40})->setText(sentence);
    EXPECT_EQ(found(), 0);
}

TEST_F(Misfits, AChoiceThatIsCutButToldWholeByATipIsNone)
{
    auto *box = put(new QComboBox, {0, 0, 90, 40});
    box->addItem(sentence);
    put(new QLineEdit, {0, 50, 90, 40})->setPlaceholderText(sentence);
    EXPECT_EQ(found(), 2);
    const ui::WholeWords told;
    EXPECT_EQ(found(), 0) << misfits(page, QSize(600, 400)).join(u'\n').toStdString();
}

TEST_F(Misfits, ColumnsAndTabsAreLookedAtOneByOne)
{
    QStandardItemModel model(1, 2);
    model.setHorizontalHeaderLabels({sentence, u"Tube"_s});
    auto *table = put(new QTableView, {0, 0, 600, 100});
    table->setModel(&model);
    table->setColumnWidth(0, 400);
    table->setColumnWidth(1, 80);
    EXPECT_EQ(found(), 0) << misfits(page, QSize(600, 400)).join(u'\n').toStdString();
    table->setColumnWidth(0, 60);
    EXPECT_EQ(found(), 1);
    auto *tabs = put(new QTabBar, {0, 150, 200, 40});
    tabs->setUsesScrollButtons(false);
    tabs->setElideMode(Qt::ElideRight);
    tabs->addTab(sentence);
    tabs->addTab(sentence + u'!');
    EXPECT_GE(found(), 3);
}

TEST_F(Misfits, CellsThatAreCutAreToldRowByRow)
{
    const ui::Theme theme;
    QStandardItemModel model(2, 2);
    model.setHorizontalHeaderLabels({u"Name"_s, u"State"_s});
    model.setData(model.index(0, 0), u"Water"_s);
    model.setData(model.index(1, 0), sentence);
    auto *table = put(new ui::Table(theme, &model, u"Lots"_s, u"lots"_s), {0, 0, 600, 200});
    EXPECT_EQ(cutCells(page, u"lots"_s, {}).size(), 1) << "not on show yet";
    page.show();
    table->setColumnWidth(0, 400);
    table->setColumnWidth(1, 100);
    EXPECT_EQ(cutCells(page, u"lots"_s, {}), QStringList());
    table->setColumnWidth(0, 90);
    EXPECT_EQ(cutCells(page, u"lots"_s, {}).size(), 1);
    EXPECT_EQ(cutCells(page, u"lots"_s, {1}), QStringList());
    table->setWrap(ui::Table::Wrap::AsNeeded);
    table->setRowHeight(1, 150);
    EXPECT_EQ(cutCells(page, u"lots"_s, {}), QStringList()) << "in lines enough";
    delete table; // before what it was made with
}

TEST_F(Misfits, ATableWhoseWordsWrapIsNotToScrollSideways)
{
    const ui::Theme theme;
    QStandardItemModel model(1, 2);
    model.setHorizontalHeaderLabels({u"Check"_s, u"Found"_s});
    model.setItem(0, 0, new QStandardItem(sentence));
    model.setItem(0, 1, new QStandardItem(u"Donaudampfschifffahrtsgesellschaft"_s));
    auto *table = put(new ui::Table(theme, &model, u"Checks"_s, u"checks"_s), {0, 0, 400, 200});
    table->setWrap(ui::Table::Wrap::AsNeeded);
    table->fit();
    EXPECT_EQ(found(), 0) << misfits(page, QSize(600, 400)).join(u'\n').toStdString();
    table->resize(150, 200);
    EXPECT_EQ(found(), 1) << "one word alone is wider";
}

TEST_F(Misfits, WidgetsOutsideOfWhatShowsThemAreFound)
{
    put(new QPushButton(u"Go"_s), {560, 0, 80, 40});
    EXPECT_EQ(found(), 1);
    auto *area = put(new QScrollArea, {0, 100, 200, 100});
    auto *contents = new QWidget;
    contents->resize(180, 900);
    area->setWidget(contents);
    EXPECT_EQ(found(), 1) << "what scrolls into sight is none";
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    contents->resize(500, 900);
    EXPECT_EQ(found(), 2) << "what cannot be scrolled into sight is one";
}

TEST_F(Misfits, WidgetsOverOneAnotherAreFoundOnce)
{
    put(new QPushButton(u"Go"_s), {0, 0, 100, 40});
    auto *other = put(new QPushButton(u"Stay"_s), {99, 0, 100, 40});
    EXPECT_EQ(found(), 0) << "side by side";
    other->move(50, 20);
    EXPECT_EQ(found(), 1);
    other->hide();
    EXPECT_EQ(found(), 0);
}

TEST_F(Misfits, AWindowLargerThanItsScreenIsOne)
{
    EXPECT_EQ(misfits(page, QSize(599, 400)).size(), 1);
    EXPECT_EQ(misfits(page, QSize(600, 400)).size(), 0);
}

} // namespace
} // namespace plateau::test
