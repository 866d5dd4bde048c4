// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/chosennotebook.h"
#include "app/firstrun.h"
#include "tests/ui/bench.h"
#include "ui/firststart.h"
#include "ui/shared/notice.h"
#include "ui/shared/theme.h"
#include "ui/shared/userfolders.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSettings>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

class FirstStart : public Bench
{
protected:
    ui::FirstStart &page(const QString &missing = {}, bool isBesideAnother = false, bool isFirstOfOwn = false)
    {
        const ui::StartOccasion occasion{folder.filePath(u"new.plateau"_s), missing, isBesideAnother, isFirstOfOwn};
        m_page = std::make_unique<ui::FirstStart>(m_theme, m_dialogs, occasion);
        m_page->show();
        return *m_page;
    }
    QString broken() { return writeFile(u"broken.plateau"_s, "no notebook"); }
    QString said() const { return m_page->findChild<ui::Notice *>()->sentence(); }
    bool canBegin() const { return m_page->findChild<QPushButton *>(u"firstBegin"_s)->isEnabled(); }
    void type(const QString &field, const QString &text) const
    {
        m_page->findChild<QLineEdit *>(field)->setText(text);
    }
    void choose(const QString &way) const { m_page->findChild<QRadioButton *>(way)->setChecked(true); }

    QuietDialogs::Log m_log;

private:
    ui::Theme m_theme;
    QuietDialogs m_dialogs{m_log};
    std::unique_ptr<ui::FirstStart> m_page;
};

TEST_F(FirstStart, OfferedAgainForANotebookThatDoesNotOpen)
{
    const QString path = broken();
    const auto *use = page(path).findChild<QRadioButton *>(u"firstUse"_s);
    ASSERT_TRUE(use);
    EXPECT_TRUE(use->isChecked());
    EXPECT_TRUE(said().contains(u"could not be opened"_s)) << said().toStdString();
    EXPECT_TRUE(said().contains(path));
    page(folder.filePath(u"nowhere.plateau"_s));
    EXPECT_TRUE(said().contains(u"is not there"_s)) << said().toStdString();
}

TEST_F(FirstStart, AsksForWhatANewNotebookNeedsOneAfterTheOther)
{
    page();
    EXPECT_FALSE(canBegin());
    EXPECT_TRUE(said().contains(u"laboratory's name"_s)) << said().toStdString();
    type(u"firstLaboratory"_s, u" Threnholt "_s);
    EXPECT_TRUE(said().contains(u"Your name"_s)) << said().toStdString();
    type(u"firstPerson"_s, u"R. Okafor"_s);
    EXPECT_TRUE(canBegin());
    EXPECT_TRUE(said().isEmpty());
    const ui::FirstChoice choice = page().choice();
    EXPECT_EQ(choice.path, folder.filePath(u"new.plateau"_s)) << "the usual place is there already";
}

TEST_F(FirstStart, NeverWritesOverAFileAndNamesAWholePath)
{
    page();
    type(u"firstLaboratory"_s, u"Threnholt"_s);
    type(u"firstPerson"_s, u"R. Okafor"_s);
    type(u"firstNewPath"_s, book->path());
    EXPECT_FALSE(canBegin());
    EXPECT_TRUE(said().contains(u"already"_s)) << said().toStdString();
    type(u"firstNewPath"_s, u"notebook.plateau"_s);
    EXPECT_FALSE(canBegin());
    EXPECT_TRUE(said().contains(u"whole path"_s)) << said().toStdString();
}

TEST_F(FirstStart, ShowsAUsualPathWholeAndTellsALongerOne)
{
    ui::FirstStart &form = page();
    const auto *line = form.findChild<QLineEdit *>(u"firstNewPath"_s);
    EXPECT_EQ(line->toolTip(), ui::tipText(line->text()));
    const QString usual = u"/home/ilka/Documents/notebook-2.plateau"_s;
    type(u"firstNewPath"_s, usual);
    EXPECT_EQ(line->toolTip(), ui::tipText(usual));
    EXPECT_GT(line->width(), line->fontMetrics().horizontalAdvance(usual));
    type(u"firstNewPath"_s, {});
    EXPECT_TRUE(line->toolTip().isEmpty());
}

TEST_F(FirstStart, TakesANotebookThatIsThereOrTheSampleWithoutFurtherQuestions)
{
    ui::FirstStart &form = page();
    choose(u"firstUse"_s);
    EXPECT_FALSE(canBegin());
    m_log.nextFile = book->path();
    form.findChild<QPushButton *>(u"firstOldChoose"_s)->click();
    EXPECT_TRUE(canBegin());
    EXPECT_EQ(form.choice().kind, ui::FirstChoice::Kind::Use);
    EXPECT_EQ(form.choice().path, book->path());
    choose(u"firstSample"_s);
    EXPECT_TRUE(canBegin());
    EXPECT_EQ(form.choice().kind, ui::FirstChoice::Kind::Sample);
}

TEST_F(FirstStart, SaysWhichNotebookIsMissing)
{
    const QString gone = folder.filePath(u"gone.plateau"_s);
    ui::FirstStart &form = page(gone);
    EXPECT_TRUE(said().contains(gone)) << said().toStdString();
    EXPECT_EQ(form.choice().kind, ui::FirstChoice::Kind::Use);
    EXPECT_FALSE(canBegin());
}

TEST_F(FirstStart, BesideAnotherNotebookItAsksWhichTheNextStartsOpen)
{
    EXPECT_FALSE(page().findChild<QCheckBox *>(u"firstNext"_s)) << "the first one is opened anyway";
    ui::FirstStart &form = page({}, true);
    auto *next = form.findChild<QCheckBox *>(u"firstNext"_s);
    ASSERT_TRUE(next);
    EXPECT_FALSE(form.isForNextStarts());
    next->setChecked(true);
    EXPECT_TRUE(form.isForNextStarts());
    choose(u"firstSample"_s);
    EXPECT_FALSE(next->isEnabled());
    EXPECT_FALSE(form.isForNextStarts()) << "it is thrown away";
    choose(u"firstMake"_s);
    EXPECT_TRUE(form.isForNextStarts()) << "as it was chosen";
}

TEST_F(FirstStart, WhoComesFromTheSampleNotebookOpensTheirOwnFromThenOn)
{
    EXPECT_TRUE(page({}, true, true).isForNextStarts());
}

TEST_F(FirstStart, WhatIsChosenBesideAnotherNotebookHasAWindowOfItsOwn)
{
    EXPECT_EQ(app::startWords({true, {}, {}, {}}), (QStringList{u"--beside"_s, u"--demo"_s}));
    EXPECT_EQ(app::startWords({false, u"/srv/a b.plateau"_s, u"R. Okafor"_s, {}}),
              (QStringList{u"--beside"_s, u"--notebook"_s, u"/srv/a b.plateau"_s, u"--person"_s, u"R. Okafor"_s}));
    EXPECT_EQ(app::freeNotebook(folder.path()), folder.filePath(u"notebook.plateau"_s));
    for (const QString &name : {u"notebook.plateau"_s, u"notebook-2.plateau"_s}) {
        QFile taken(folder.filePath(name));
        ASSERT_TRUE(taken.open(QIODevice::WriteOnly));
    }
    EXPECT_EQ(app::freeNotebook(folder.path()), folder.filePath(u"notebook-3.plateau"_s));
}

TEST_F(FirstStart, TheNewNotebookKnowsItsLaboratoryAndWhoBeganIt)
{
    const QString path = folder.filePath(u"a/b/new.plateau"_s);
    app::makeNotebook(path, u"Threnholt Cider"_s, u"R. Okafor"_s);
    const auto opened = notebook::Notebook::open(path, notebook::Access::ReadOnly);
    EXPECT_EQ(opened->laboratory().name, u"Threnholt Cider"_s);
    EXPECT_TRUE(opened->verify().sound());
    EXPECT_EQ(QFile::permissions(folder.filePath(u"a/b"_s)) & (QFile::ReadGroup | QFile::ReadOther), 0);
}

TEST_F(FirstStart, TheChoiceHoldsForTheNextStart)
{
    QSettings settings(folder.filePath(u"settings.ini"_s), QSettings::IniFormat);
    EXPECT_EQ(app::chosenNotebook(settings), ui::usualNotebook());
    EXPECT_TRUE(app::chooseNotebook(settings, u"/srv/acids.plateau"_s));
    EXPECT_EQ(app::chosenNotebook(settings), u"/srv/acids.plateau"_s);
    settings.setValue(u"notebook/file"_s, u"acids.plateau"_s);
    EXPECT_EQ(app::chosenNotebook(settings), ui::usualNotebook())
        << "a relative name means another file each time";
    EXPECT_TRUE(app::chooseNotebook(settings, ui::usualNotebook()));
    EXPECT_TRUE(settings.allKeys().isEmpty());
}

} // namespace
} // namespace plateau::test
