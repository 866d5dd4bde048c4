// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Pages are made when somebody wants them, once.
#include "tests/ui/bench.h"
#include "ui/bench/namedoubts.h"
#include "ui/bench/rackpage.h"
#include "ui/bench/runfilepage.h"
#include "ui/bookpages.h"
#include "ui/books/bookpage.h"
#include "ui/books/lotspage.h"
#include "ui/plan/planpage.h"
#include "ui/shared/whenwanted.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

class PagesOnDemand : public WindowBench
{
};

class EmptyPage : public ui::BookPage
{
public:
    using BookPage::BookPage;
    void open() override {}
};

TEST(WhenWanted, IsMadeOnceAndNotBefore)
{
    int made = 0;
    QWidget parent;
    ui::WhenWanted<QWidget> page([&] {
        ++made;
        return new QWidget(&parent);
    });
    EXPECT_EQ(page.made(), nullptr);
    EXPECT_EQ(made, 0);
    QWidget &first = page.page();
    EXPECT_EQ(&page.page(), &first);
    EXPECT_EQ(page.made(), &first);
    EXPECT_EQ(made, 1);
}

TEST(BookPages, AreMadeWhenTheyAreWantedAndKnownByTheirBook)
{
    QWidget parent;
    ui::BookPages pages;
    int made = 0;
    for (const ui::Book book : {ui::Book::Lots, ui::Book::Charts}) {
        pages.add(book, [&] {
            ++made;
            return new EmptyPage(&parent);
        });
    }
    const QSignalSpy told(&pages, &ui::BookPages::made);
    EXPECT_TRUE(pages.pages().empty());
    const ui::BookPage *lots = pages.page(ui::Book::Lots);
    EXPECT_EQ(pages.page(ui::Book::Lots), lots);
    EXPECT_EQ(made, 1);
    EXPECT_EQ(told.count(), 1);
    EXPECT_EQ(pages.pages().size(), 1U);
    EXPECT_EQ(pages.bookOf(lots), ui::Book::Lots);
    EXPECT_EQ(pages.bookOf(&parent), std::nullopt);
    EXPECT_NE(pages.page(ui::Book::Charts), lots);
    EXPECT_EQ(made, 2);
}

TEST_F(PagesOnDemand, TheWindowStartsWithoutThePagesThatNobodyAskedFor)
{
    openWindow();
    EXPECT_EQ(window->findChild<ui::PlanPage *>(), nullptr);
    EXPECT_EQ(window->findChild<ui::RackPage *>(), nullptr);
    EXPECT_EQ(window->findChild<ui::RunFilePage *>(), nullptr);
    EXPECT_EQ(window->findChild<ui::LotsPage *>(), nullptr);
    press(Qt::Key_N, Qt::ControlModifier);
    EXPECT_NE(window->findChild<ui::PlanPage *>(), nullptr);
    EXPECT_EQ(window->findChild<ui::RackPage *>(), nullptr);
}

notebook::Person person(const QString &name, bool retired = false)
{
    notebook::Person person;
    person.name = name;
    person.retired = retired;
    return person;
}

TEST(NameDoubts, AreSaidOfFiguresAndOfWhoIsNotSetUp)
{
    const std::vector<notebook::Person> nobody;
    EXPECT_TRUE(ui::nameDoubts(u"R. Okafor"_s, nobody).isEmpty());
    EXPECT_EQ(ui::nameDoubts(u"0,512"_s, nobody),
              QStringList{u"A name with a figure in it: was a reading meant?"_s});
    const std::vector<notebook::Person> some{person(u"R. Okafor"_s), person(u"M. Lindqvist"_s, true)};
    EXPECT_TRUE(ui::nameDoubts({}, some).isEmpty());
    EXPECT_TRUE(ui::nameDoubts(u"r. okafor"_s, some).isEmpty()) << "compared without regard to case";
    EXPECT_EQ(ui::nameDoubts(u"R. Okafro"_s, some),
              QStringList{u"Nobody of that name is set up: they can work, but not sign."_s});
    EXPECT_EQ(ui::nameDoubts(u"M. Lindqvist"_s, some),
              QStringList{u"This name is retired: they can work, but not sign."_s});
    EXPECT_EQ(ui::namesOffered(some), QStringList{u"R. Okafor"_s});
}

} // namespace
} // namespace plateau::test
