// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// From the menu through the dialogs to the tube: readings that are pasted, read from a file, listened to.
#include "tests/ui/keyboard.h"
#include "tests/ui/turnedclock.h"
#include "ui/instrument/columndialog.h"
#include "ui/instrument/listendialog.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTcpServer>
#include <QTcpSocket>

namespace plateau::test {
namespace {

class InstrumentRoute : public Keyboard
{
protected:
    InstrumentRoute()
    {
        book.reset();
        book = notebook::Notebook::create(folder.filePath(u"route.plateau"_s), surroundingsOf(clocks));
    }

    void openAt(notebook::RunId run)
    {
        id = run;
        window = std::make_unique<ui::MainWindow>(*book, library, std::make_unique<QuietDialogs>(dialogs),
                                                  std::make_unique<TurnedClock>(clocks),
                                                  std::make_unique<QuietSounder>(heard));
        window->show();
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
        giveName();
        press(Qt::Key_2, Qt::ControlModifier);
    }

    notebook::StoredRun stored() const { return book->load(id); }

    std::shared_ptr<Clocks> clocks = std::make_shared<Clocks>();
    notebook::RunId id;
};

/// By the menu, as somebody goes there.
QAction *menuAction(const QMainWindow &window, const QString &name)
{
    QAction *action = window.findChild<QAction *>(name);
    EXPECT_NE(action, nullptr);
    return action;
}

TEST_F(InstrumentRoute, AColumnPastedByTheMenuGoesIntoTheTubesFromTheOneThatIsDue)
{
    openAt(addRun(exampleRun()));
    keyReading(u"0.101"_s);
    QGuiApplication::clipboard()->setText(u"0,102\n0,103\n"_s);
    menuAction(*window, u"actionPasteReadings"_s)->trigger();
    auto *dialog = window->findChild<ui::ColumnDialog *>();
    ASSERT_NE(dialog, nullptr);
    ASSERT_TRUE(QTest::qWaitForWindowActive(dialog));
    // The offscreen platform leaves the window active under its dialogs.
    ASSERT_NE(dialog->focusWidget(), nullptr);
    ASSERT_EQ(dialog->focusWidget()->objectName(), u"takeColumn"_s);
    QTest::keyClick(dialog->focusWidget(), Qt::Key_Return);
    ASSERT_TRUE(waitFor([&] { return stored().readings.size() == 3; })) << stored().readings.size();
    const notebook::StoredRun run = stored();
    EXPECT_EQ(std::get<double>(run.run.tubes[1].readings.at(u"A1"_s)), 0.102);
    EXPECT_EQ(std::get<double>(run.run.tubes[2].readings.at(u"A1"_s)), 0.103);
    EXPECT_EQ(run.readings[1].origin.kind, notebook::ReadingOrigin::Kind::Pasted);
    EXPECT_EQ(run.readings[1].origin.line, u"0,102"_s);
    EXPECT_EQ(labelText(u"place"_s), u"Tube 4: A1"_s);
}

TEST_F(InstrumentRoute, AFileChosenByTheMenuGoesIntoTheTubesWithItsName)
{
    openAt(addRun(exampleRun()));
    dialogs.nextFile = writeFile(u"morning.csv"_s, "0.101\n0.102\n0.103\n0.104\n");
    menuAction(*window, u"actionFileReadings"_s)->trigger();
    auto *dialog = window->findChild<ui::ColumnDialog *>();
    ASSERT_NE(dialog, nullptr);
    ASSERT_TRUE(QTest::qWaitForWindowActive(dialog));
    // The offscreen platform leaves the window active under its dialogs.
    ASSERT_NE(dialog->focusWidget(), nullptr);
    ASSERT_EQ(dialog->focusWidget()->objectName(), u"takeColumn"_s);
    QTest::keyClick(dialog->focusWidget(), Qt::Key_Return);
    ASSERT_TRUE(waitFor([&] { return stored().readings.size() == 4; })) << stored().readings.size();
    EXPECT_EQ(stored().readings[3].origin.kind, notebook::ReadingOrigin::Kind::File);
    EXPECT_EQ(stored().readings[3].origin.source, u"morning.csv"_s);
    EXPECT_EQ(std::get<double>(stored().run.tubes[3].readings.at(u"A1"_s)), 0.104);
}

TEST_F(InstrumentRoute, WhatThePhotometerSendsToANetworkPortStandsInTheTubeThatIsDue)
{
    QTcpServer photometer;
    ASSERT_TRUE(photometer.listen(QHostAddress::LocalHost));
    openAt(addRun(exampleRun()));
    menuAction(*window, u"actionListen"_s)->trigger();
    auto *dialog = window->findChild<ui::ListenDialog *>();
    ASSERT_NE(dialog, nullptr);
    ASSERT_TRUE(QTest::qWaitForWindowActive(dialog));
    dialog->findChild<QComboBox *>(u"linkKind"_s)->setCurrentIndex(1);
    dialog->findChild<QLineEdit *>(u"networkHost"_s)->setText(u"127.0.0.1"_s);
    dialog->findChild<QLineEdit *>(u"networkPort"_s)->setText(QString::number(photometer.serverPort()));
    dialog->findChild<QLineEdit *>(u"photometerName"_s)->setText(u"Bench 2"_s);
    dialog->findChild<QPushButton *>(u"connectPhotometer"_s)->click();
    auto *take = dialog->findChild<QPushButton *>(u"takeReadings"_s);
    ASSERT_TRUE(waitFor([&] { return take->isEnabled(); }));
    take->click();
    ASSERT_TRUE(waitFor([&] { return photometer.hasPendingConnections(); }));
    std::unique_ptr<QTcpSocket> line(photometer.nextPendingConnection());
    line->write("0.101\r\n0.1");
    ASSERT_TRUE(waitFor([&] { return stored().readings.size() == 1; }));
    line->write("02\r\nhello\r\n");
    ASSERT_TRUE(waitFor([&] { return stored().readings.size() == 2; }));
    ASSERT_TRUE(waitFor([&] { return noticeText().contains(u"hello"_s); }));
    const notebook::StoredRun run = stored();
    EXPECT_EQ(std::get<double>(run.run.tubes[1].readings.at(u"A1"_s)), 0.102);
    EXPECT_EQ(run.readings[1].origin.kind, notebook::ReadingOrigin::Kind::Network);
    EXPECT_EQ(run.readings[1].origin.line, u"0.102"_s);
    menuAction(*window, u"actionStopListening"_s)->trigger();
    line->write("0.103\r\n");
    line->flush();
    QTest::qWait(50);
    EXPECT_EQ(stored().readings.size(), 2U);
}

} // namespace
} // namespace plateau::test
