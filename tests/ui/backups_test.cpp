// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Backups beside the work: nothing waits for them but the window's end. A copy is held between two of its
// pages by a pause that lasts an hour, and goes on when the test shortens it.
#include "tests/ui/keyboard.h"
#include "ui/books/backupline.h"
#include "ui/books/copypace.h"
#include "ui/books/keeper.h"
#include "ui/books/workingcopy.h"
#include "ui/updatedialog.h"

#include <QDir>
#include <QFile>
#include <QLabel>
#include <QProgressDialog>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTimer>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

constexpr int anHour_ms = 3'600'000;

class BackupsBeside : public Keyboard
{
protected:
    BackupsBeside()
        : id(addRun(exampleRun()))
    {
        // The window has the program's own settings: those of this process, for every test the same.
        static const QTemporaryDir settings;
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
        openWindow();
        keeper = window->findChild<ui::Keeper *>();
        keeper->setRoot(folder.filePath(u"kept"_s));
    }
    ~BackupsBeside() override { keeper->setRoot({}); }

    QTimer &pause() const { return *keeper->findChild<QTimer *>(u"copyPause"_s); }
    void hold() const { pause().setInterval(anHour_ms); }
    void letGo() const { pause().setInterval(0); }
    bool isSettled() const
    {
        return QTest::qWaitFor([this] { return !keeper->isBackingUp(); }, 30000);
    }
    QStringList files() const
    {
        return QDir(book->keeping().backupFolder(keeper->root())).entryList(QDir::Files | QDir::Hidden);
    }
    std::size_t readingsIn(const QString &path) const
    {
        return notebook::Notebook::open(path, notebook::Access::ReadOnly)->load(id).readings.size();
    }
    QString line() const { return window->findChild<ui::BackupLine *>()->text(); }

    notebook::RunId id;
    ui::Keeper *keeper;
};

} // namespace

TEST_F(BackupsBeside, ReadingsAreKeyedWhileOneIsMade)
{
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    hold();
    window->keepBackups();
    ASSERT_TRUE(keeper->isBackingUp());
    EXPECT_EQ(line(), u"Backing up: 0 %"_s);
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
    for (const QString &text : {u"0,100"_s, u"0.101"_s, u"0,120"_s})
        keyReading(text);
    EXPECT_EQ(book->load(id).readings.size(), 3U);
    EXPECT_TRUE(keeper->isBackingUp());
    EXPECT_EQ(files().filter(u".part"_s), files()) << "none has its name yet";
    EXPECT_EQ(files().size(), 1);
    letGo();
    ASSERT_TRUE(isSettled());
    ASSERT_EQ(keeper->backups().size(), 1U);
    EXPECT_EQ(readingsIn(keeper->backups()[0].path), 3U) << "of the moment of its last page";
    EXPECT_TRUE(line().startsWith(u"Backed up 2"_s)) << line().toStdString();
    EXPECT_TRUE(noticeText().isEmpty()) << "nobody asked for it";
    EXPECT_EQ(focusName(), u"readingEntry"_s);
}

TEST_F(BackupsBeside, TheWindowWaitsForTheLastOneAndThenCloses)
{
    hold();
    window->keepBackups();
    EXPECT_FALSE(window->close());
    EXPECT_TRUE(window->isVisible());
    auto *waiting = window->findChild<QProgressDialog *>(u"lastBackup"_s);
    ASSERT_NE(waiting, nullptr);
    EXPECT_TRUE(waiting->isVisible());
    letGo();
    ASSERT_TRUE(QTest::qWaitFor([this] { return !window->isVisible(); }, 30000));
    EXPECT_EQ(keeper->backups().size(), 1U);
    EXPECT_EQ(files().size(), 1);
}

TEST_F(BackupsBeside, TheWindowClosesAtOnceWhereNothingHasChanged)
{
    window->keepBackups();
    ASSERT_TRUE(isSettled());
    EXPECT_TRUE(window->close());
    EXPECT_EQ(keeper->backups().size(), 1U);
}

TEST_F(BackupsBeside, TheWindowCanBeClosedWithoutTheLastOneAndNothingHalfIsLeft)
{
    hold();
    window->keepBackups();
    EXPECT_FALSE(window->close());
    EXPECT_EQ(files().size(), 1);
    QTest::mouseClick(window->findChild<QProgressDialog *>(u"lastBackup"_s)->findChild<QPushButton *>(),
                      Qt::LeftButton);
    EXPECT_FALSE(window->isVisible());
    EXPECT_FALSE(keeper->isBackingUp());
    EXPECT_TRUE(files().isEmpty());
}

TEST_F(BackupsBeside, ASecondWishToCloseIsTheSame)
{
    hold();
    window->keepBackups();
    EXPECT_FALSE(window->close());
    EXPECT_TRUE(window->close());
    EXPECT_TRUE(files().isEmpty());
}

TEST_F(BackupsBeside, WhereTheLastOneFailsTheWindowStaysAndSaysSoOnce)
{
    writeFile(u"file"_s, "no folder");
    window->keepBackups();
    ASSERT_TRUE(isSettled());
    keeper->setRoot(folder.filePath(u"file"_s));
    EXPECT_FALSE(window->close());
    EXPECT_TRUE(noticeText().contains(u"the notebook itself is whole"_s)) << noticeText().toStdString();
    EXPECT_TRUE(noticeText().endsWith(u"Close the window once more to leave without a backup."_s));
    EXPECT_TRUE(window->close());
}

TEST_F(BackupsBeside, WhatIsNotStoredIsAskedOnceThoughTheWindowClosesTwice)
{
    giveName();
    press(Qt::Key_2, Qt::ControlModifier);
    type(u"0.1"_s);
    dialogs.answer = true;
    window->keepBackups();
    EXPECT_FALSE(window->close());
    ASSERT_TRUE(QTest::qWaitFor([this] { return !window->isVisible(); }, 30000));
    EXPECT_EQ(dialogs.questions.size(), 1);
}

TEST_F(BackupsBeside, OneThatIsAskedForIsStoppedOnItsPage)
{
    hold();
    window->findChild<QAction *>(u"actionRecords"_s)->trigger();
    find<QTabWidget>(u"recordsTabs"_s)->setCurrentIndex(1);
    find<QPushButton>(u"backUpNow"_s)->click();
    ASSERT_TRUE(keeper->isBackingUp());
    EXPECT_FALSE(find<QPushButton>(u"backUpNow"_s)->isEnabled());
    EXPECT_TRUE(find<QPushButton>(u"verifyNow"_s)->isEnabled()) << "other things go on beside it";
    book->addReading(id, 0, u"A1"_s, 0.1, u"0.1"_s, u"R. Okafor"_s);
    find<QPushButton>(u"stopBackup"_s)->click();
    EXPECT_FALSE(keeper->isBackingUp());
    EXPECT_EQ(noticeText(), u"Stopped; no backup was made."_s);
    EXPECT_TRUE(files().isEmpty());
    EXPECT_TRUE(find<QPushButton>(u"backUpNow"_s)->isEnabled());

    letGo();
    find<QPushButton>(u"backUpNow"_s)->click();
    ASSERT_TRUE(isSettled());
    EXPECT_TRUE(noticeText().startsWith(u"Made and checked"_s)) << noticeText().toStdString();
    EXPECT_EQ(files().size(), 1);
}

TEST_F(BackupsBeside, WhoseFolderVanishesSaysSoAndTheNextOneIsMade)
{
    hold();
    window->keepBackups();
    QDir(keeper->root()).removeRecursively();
    letGo();
    ASSERT_TRUE(isSettled());
    EXPECT_TRUE(noticeText().startsWith(u"No backup was made in"_s)) << noticeText().toStdString();
    EXPECT_EQ(line(), u"No backup yet"_s);
    keeper->backUpIfChanged();
    ASSERT_TRUE(isSettled());
    EXPECT_EQ(keeper->backups().size(), 1U);
}

TEST_F(BackupsBeside, WhatAKilledProgramLeftIsTakenAwayAtTheStart)
{
    QDir().mkpath(book->keeping().backupFolder(keeper->root()));
    QFile half(book->keeping().backupFolder(keeper->root()) + u"/live-20260101-000000Z.plateau.part"_s);
    ASSERT_TRUE(half.open(QIODevice::WriteOnly));
    half.close();
    hold();
    window->keepBackups();
    EXPECT_FALSE(half.exists());
}

TEST(WorkingCopy, GoesWithItsObjectAndRemainsGoAtTheNextStart)
{
    QTemporaryDir place;
    const QByteArray before = qgetenv("TMPDIR");
    qputenv("TMPDIR", place.path().toUtf8());
    const auto folders = [&place] { return QDir(place.path()).entryList(QDir::Dirs | QDir::NoDotAndDotDot); };
    {
        const ui::WorkingCopy copy(u"cellar.plateau"_s);
        EXPECT_TRUE(copy.path().endsWith(u"/cellar.plateau"_s));
        EXPECT_EQ(folders().size(), 1);
        ui::WorkingCopy::removeRemains();
        EXPECT_EQ(folders().size(), 1) << "it is in use";
    }
    EXPECT_TRUE(folders().isEmpty());
    QDir(place.path()).mkpath(u"plateau-copy-killed"_s);
    QDir(place.path()).mkpath(u"somebody-elses"_s);
    QFile lock(place.filePath(u"plateau-copy-killed/in-use"_s));
    ASSERT_TRUE(lock.open(QIODevice::WriteOnly));
    // Of a process that is not there any more: none has the highest number of all.
    lock.write("4194304\nplateau\n" + QSysInfo::machineHostName().toUtf8() + '\n');
    lock.close();
    ui::WorkingCopy::removeRemains();
    EXPECT_EQ(folders(), QStringList{u"somebody-elses"_s});
    QFile noFolder(place.filePath(u"file"_s));
    ASSERT_TRUE(noFolder.open(QIODevice::WriteOnly));
    qputenv("TMPDIR", noFolder.fileName().toUtf8());
    EXPECT_THROW(ui::WorkingCopy(u"cellar.plateau"_s), notebook::Failure);
    before.isNull() ? qunsetenv("TMPDIR") : qputenv("TMPDIR", before);
}

TEST(CopyPace, TakesFewerPagesFromASlowDiskAndMoreFromAFastOne)
{
    ui::CopyPace pace;
    const int first = pace.pages();
    pace.took(ui::CopyPace::longest_us / 2);
    EXPECT_EQ(pace.pages(), first);
    pace.took(ui::CopyPace::longest_us / 8);
    EXPECT_EQ(pace.pages(), 2 * first);
    for (int i = 0; i < 20; ++i)
        pace.took(1);
    EXPECT_EQ(pace.pages(), ui::CopyPace::most);
    for (int i = 0; i < 20; ++i)
        pace.took(ui::CopyPace::longest_us + 1);
    EXPECT_EQ(pace.pages(), ui::CopyPace::fewest);
}

class UpdateWindow : public ::testing::Test
{
protected:
    UpdateWindow()
    {
        QFile packed(QStringLiteral(PLATEAU_NOTEBOOK_DATA "/schema1.plateau.z"));
        EXPECT_TRUE(packed.open(QIODevice::ReadOnly));
        write(qUncompress(packed.readAll()));
    }
    void write(const QByteArray &bytes) const
    {
        QFile out(path());
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(bytes);
    }
    QString path() const { return folder.filePath(u"old.plateau"_s); }

    QTemporaryDir folder;
};

TEST_F(UpdateWindow, BringsAnOlderNotebookUpToDateAfterACopy)
{
    ASSERT_TRUE(notebook::needsUpdate(path()));
    ui::UpdateDialog dialog(path());
    EXPECT_TRUE(dialog.findChild<QLabel *>(u"updateStage"_s)->text().startsWith(u"Looking through"_s));
    EXPECT_EQ(dialog.exec(), QDialog::Accepted);
    EXPECT_FALSE(dialog.failure());
    EXPECT_TRUE(dialog.findChild<QLabel *>(u"updateStage"_s)->text().startsWith(u"Rebuilding the index"_s));
    EXPECT_FALSE(notebook::needsUpdate(path()));
    EXPECT_EQ(QDir(folder.path()).entryList({u"old-*-schema1.plateau"_s}).size(), 1);
}

TEST_F(UpdateWindow, IsStoppedAndTheNotebookIsAsItWas)
{
    ui::UpdateDialog dialog(path());
    QSignalSpy finished(&dialog, &QDialog::finished);
    {
        // Another program has it for a moment, so that the stop comes before anything is done.
        QSqlDatabase other = QSqlDatabase::addDatabase(u"QSQLITE"_s, u"other"_s);
        other.setDatabaseName(path());
        ASSERT_TRUE(other.open());
        QSqlQuery(other).exec(u"BEGIN EXCLUSIVE"_s);
        dialog.show();
        dialog.findChild<QPushButton *>(u"stopUpdate"_s)->click();
        EXPECT_TRUE(finished.isEmpty());
        QSqlQuery(other).exec(u"ROLLBACK"_s);
        other.close();
    }
    QSqlDatabase::removeDatabase(u"other"_s);
    ASSERT_TRUE(finished.size() == 1 || finished.wait(30000));
    EXPECT_EQ(dialog.result(), QDialog::Rejected);
    EXPECT_FALSE(dialog.failure());
    EXPECT_TRUE(notebook::needsUpdate(path()));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files), QStringList{u"old.plateau"_s});
}

TEST_F(UpdateWindow, TellsWhatItFailedWith)
{
    write("no notebook");
    ui::UpdateDialog dialog(path());
    EXPECT_EQ(dialog.exec(), QDialog::Rejected);
    ASSERT_TRUE(dialog.failure());
    EXPECT_EQ(dialog.failure()->kind(), notebook::Failure::Kind::NotANotebook);
}

} // namespace plateau::test
