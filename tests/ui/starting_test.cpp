// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/onewindow.h"
#include "app/programlog.h"
#include "tests/support/print.h"
#include "ui/shared/userfolders.h"
#include "ui/windowplace.h"

#include <QDir>
#include <QLocalSocket>
#include <QScreen>
#include <QSettings>
#include <QTemporaryDir>
#include <QWidget>
#include <QtTest/QSignalSpy>

#include <gtest/gtest.h>

#include <map>
#include <thread>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

/// With the desktop's folders inside a temporary one.
class Starting : public ::testing::Test
{
protected:
    Starting() { set("XDG_RUNTIME_DIR", folder.path()); }
    ~Starting() override
    {
        for (const auto &[name, value] : m_before)
            value.isNull() ? qunsetenv(name.constData()) : qputenv(name.constData(), value);
    }
    void set(const QByteArray &name, const QString &value)
    {
        m_before.try_emplace(name, qgetenv(name.constData()));
        qputenv(name.constData(), value.toUtf8());
    }
    QByteArray content(const QString &path) const
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

    QTemporaryDir folder;

private:
    std::map<QByteArray, QByteArray> m_before;
};

TEST_F(Starting, FoldersAreThoseOfTheBaseDirectorySpecification)
{
    set("XDG_DATA_HOME", u"/srv/data"_s);
    set("XDG_STATE_HOME", {});
    set("XDG_CONFIG_HOME", u"relative/config"_s); // to be ignored
    EXPECT_EQ(ui::usualNotebook(), u"/srv/data/plateau/notebook.plateau"_s);
    EXPECT_EQ(ui::usualBackupRoot(), u"/srv/data/plateau/backups"_s);
    EXPECT_EQ(ui::stateFolder(), QDir::homePath() + u"/.local/state/plateau"_s);
    EXPECT_EQ(ui::configRoot(), QDir::homePath() + u"/.config"_s);
    EXPECT_EQ(ui::runtimeFolder(), folder.filePath(u"plateau"_s));
}

TEST_F(Starting, ASecondStartHandsItsFileToTheWindowThatIsOpen)
{
    const QString notebook = folder.filePath(u"a.plateau"_s);
    app::OneWindow window;
    ASSERT_TRUE(window.listen(notebook));
    QSignalSpy called(&window, &app::OneWindow::called);
    for (const QString &file : {u"/a/perry\n\"tanks\" ü.json"_s, QString()}) {
        bool taken = false;
        std::thread second([&] { taken = app::OneWindow::handOver(notebook, file); });
        EXPECT_TRUE(called.wait(5000));
        second.join();
        EXPECT_TRUE(taken);
        EXPECT_EQ(called.takeFirst().at(0).toString(), file);
    }
}

TEST_F(Starting, TheWindowOpensWhereItWasLeft)
{
    QSettings settings(folder.filePath(u"settings.ini"_s), QSettings::IniFormat);
    QWidget first;
    first.resize(700, 500);
    ui::restorePlace(first, settings);
    EXPECT_EQ(first.size(), QSize(700, 500)) << "nothing is kept yet";
    first.setGeometry(30, 40, 640, 480);
    first.show();
    ASSERT_TRUE(ui::keepPlace(first, settings));
    QWidget next;
    next.resize(700, 500);
    ui::restorePlace(next, settings);
    EXPECT_EQ(next.geometry(), QRect(30, 40, 640, 480));
    settings.setValue(u"window/place"_s, u"nonsense"_s);
    QWidget last;
    last.resize(700, 500);
    ui::restorePlace(last, settings);
    EXPECT_EQ(last.size(), QSize(700, 500));
}

TEST_F(Starting, AWindowBesideAnotherStepsAsideOnTheScreen)
{
    QWidget window;
    const QRect room = window.screen()->availableGeometry();
    const QSize size = room.size() / 2;
    window.setGeometry(QRect(room.topLeft(), size));
    ui::stepAside(window);
    const QPoint aside = window.geometry().topLeft() - room.topLeft();
    EXPECT_GT(aside.x(), 0);
    EXPECT_EQ(aside.x(), aside.y());
    EXPECT_EQ(window.size(), size);
    window.setGeometry(QRect(room.topLeft() + QPoint(size.width(), size.height()), size));
    const QRect corner = window.geometry();
    ui::stepAside(window);
    EXPECT_EQ(window.geometry(), corner.translated(-aside)) << "back, where there is no room";
    window.setGeometry(room);
    ui::stepAside(window);
    EXPECT_EQ(window.geometry(), room);
    window.setGeometry(corner);
    window.setWindowState(Qt::WindowMaximized);
    const QRect full = window.geometry();
    ui::stepAside(window);
    EXPECT_EQ(window.geometry(), full);
}

TEST_F(Starting, AnotherNotebookHasAWindowOfItsOwn)
{
    app::OneWindow window;
    ASSERT_TRUE(window.listen(folder.filePath(u"a.plateau"_s)));
    EXPECT_FALSE(app::OneWindow::handOver(folder.filePath(u"b.plateau"_s), {}));
}

TEST_F(Starting, OneNotebookIsOneHoweverItsNameIsWritten)
{
    QFile file(folder.filePath(u"a.plateau"_s));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_TRUE(QFile::link(file.fileName(), folder.filePath(u"link.plateau"_s)));
    EXPECT_EQ(app::OneWindow::socketOf(file.fileName()),
              app::OneWindow::socketOf(folder.filePath(u"./link.plateau"_s)));
}

TEST_F(Starting, NobodyElseCanReachTheWindow)
{
    app::OneWindow window;
    ASSERT_TRUE(window.listen(folder.filePath(u"a.plateau"_s)));
    const auto others = QFile::ReadGroup | QFile::WriteGroup | QFile::ExeGroup | QFile::ReadOther |
                        QFile::WriteOther | QFile::ExeOther;
    EXPECT_EQ(QFile::permissions(ui::runtimeFolder()) & others, 0);
}

TEST_F(Starting, WhoSaysSomethingElseIsNotListenedTo)
{
    const QString notebook = folder.filePath(u"a.plateau"_s);
    app::OneWindow window;
    ASSERT_TRUE(window.listen(notebook));
    const QSignalSpy called(&window, &app::OneWindow::called);
    QLocalSocket socket;
    QSignalSpy gone(&socket, &QLocalSocket::disconnected);
    socket.connectToServer(app::OneWindow::socketOf(notebook));
    ASSERT_TRUE(socket.waitForConnected(5000));
    socket.write("GET / HTTP/1.1\n");
    EXPECT_TRUE(gone.count() > 0 || gone.wait(5000));
    EXPECT_EQ(called.count(), 0);
}

TEST_F(Starting, WhatAKilledProgramLeftBehindIsNoHindrance)
{
    const QString notebook = folder.filePath(u"a.plateau"_s);
    ASSERT_TRUE(ui::makePrivateFolder(ui::runtimeFolder()));
    QFile left(app::OneWindow::socketOf(notebook));
    ASSERT_TRUE(left.open(QIODevice::WriteOnly));
    EXPECT_FALSE(app::OneWindow::handOver(notebook, {}));
    app::OneWindow window;
    EXPECT_TRUE(window.listen(notebook));
}

const QDateTime when = QDateTime::fromString(u"2026-03-02T09:10:00+01:00"_s, Qt::ISODate);

TEST_F(Starting, TheLogIsALineForEachRemarkAndForItsOwnerAlone)
{
    app::ProgramLog log(folder.filePath(u"state"_s));
    ASSERT_TRUE(log.isOpen());
    log.write(QtWarningMsg, "qt.svg", u"one\ntwo"_s, when);
    const QString path = folder.filePath(u"state/plateau.log"_s);
    EXPECT_EQ(content(path), "2026-03-02T08:10:00.000Z warning qt.svg: one two\n");
    EXPECT_EQ(QFile::permissions(path) & (QFile::ReadGroup | QFile::ReadOther), 0);
}

TEST_F(Starting, AFullLogIsTurnedOverAndTheOldestGoes)
{
    app::ProgramLog log(folder.path(), 20);
    for (const QString &word : {u"first"_s, u"second"_s, u"third"_s, u"fourth"_s, u"fifth"_s, u"sixth"_s})
        log.write(QtInfoMsg, nullptr, word, when);
    EXPECT_TRUE(content(folder.filePath(u"plateau.log"_s)).contains("default: sixth"));
    EXPECT_TRUE(content(folder.filePath(u"plateau.log.1"_s)).contains("fifth"));
    EXPECT_TRUE(content(folder.filePath(u"plateau.log.4"_s)).contains("second"));
    EXPECT_EQ(QDir(folder.path()).entryList({u"plateau.log*"_s}, QDir::Files).size(), 5);
}

TEST_F(Starting, WithoutAPlaceForTheLogTheProgramRuns)
{
    QFile file(folder.filePath(u"occupied"_s));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    app::ProgramLog log(file.fileName());
    EXPECT_FALSE(log.isOpen());
    log.write(QtWarningMsg, "qt.svg", u"one"_s, when);
}

} // namespace
} // namespace plateau::test
