// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/instrument/instrumentintake.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/theme.h"

#include <QApplication>
#include <QFile>
#include <QSettings>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTemporaryDir>
#include <QtTest/QTest>

#include <gtest/gtest.h>

#include <cstdlib>
#include <fcntl.h>
#include <memory>
#include <termios.h>
#include <unistd.h>
#include <vector>

namespace plateau::test {

using namespace Qt::StringLiterals;
using ui::Photometer;
using ui::TakenReading;

/// One half of a pseudo-terminal; the other half is a port that is opened by the path of a link, as udev
/// makes them. The link outlives what it points to, like the socket an adapter is plugged into.
class FakePhotometer
{
public:
    FakePhotometer() { plugIn(); }
    ~FakePhotometer() { unplug(); }
    FakePhotometer(const FakePhotometer &) = delete;
    FakePhotometer &operator=(const FakePhotometer &) = delete;

    QString port() const { return m_folder.filePath(u"photometer"_s); }
    void plugIn()
    {
        m_descriptor = ::posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK);
        ASSERT_GE(m_descriptor, 0);
        ASSERT_EQ(::grantpt(m_descriptor), 0);
        ASSERT_EQ(::unlockpt(m_descriptor), 0);
        ASSERT_TRUE(QFile::link(QString::fromLocal8Bit(::ptsname(m_descriptor)), port()));
    }
    void unplug()
    {
        if (m_descriptor < 0)
            return;
        ::close(m_descriptor);
        m_descriptor = -1;
        QFile::remove(port());
    }
    void send(const QByteArray &bytes)
    {
        for (qsizetype at = 0; at < bytes.size();) {
            const ssize_t written =
                ::write(m_descriptor, bytes.constData() + at, static_cast<std::size_t>(bytes.size() - at));
            if (written > 0)
                at += written;
            else
                QCoreApplication::processEvents(); // the other side reads first
        }
    }

private:
    QTemporaryDir m_folder;
    int m_descriptor = -1;
};

/// A photometer that serves its text over TCP, on a port of the system's choice that stays its own.
class FakeServer
{
public:
    FakeServer() { switchOn(); }

    int port() const { return m_port; }
    void switchOn()
    {
        ASSERT_TRUE(m_server.listen(QHostAddress::LocalHost, static_cast<quint16>(m_port)));
        m_port = m_server.serverPort();
    }
    void switchOff()
    {
        m_server.close();
        if (m_client)
            m_client->disconnectFromHost();
        m_client = nullptr;
    }
    void send(const QByteArray &bytes)
    {
        if (!m_client && !m_server.hasPendingConnections()) {
            ASSERT_TRUE(m_server.waitForNewConnection(5000));
        }
        if (!m_client)
            m_client = m_server.nextPendingConnection();
        ASSERT_NE(m_client, nullptr);
        m_client->write(bytes);
        m_client->flush();
    }

private:
    QTcpServer m_server;
    QTcpSocket *m_client = nullptr;
    int m_port = 0;
};

class AnsweringDialogs : public ui::Dialogs
{
public:
    QString fileToOpen(QWidget *, const QString &, const QString &) override { return nextFile; }
    void tell(QWidget *, const QString &, const QString &text) override { told << text; }

    QString nextFile;
    QStringList told;
};

class Instrument : public ::testing::Test
{
protected:
    Instrument() { makeIntake(); }
    void makeIntake(const QString &path = {})
    {
        intake = std::make_unique<ui::InstrumentIntake>(
            theme, dialogs,
            std::make_unique<QSettings>(path.isEmpty() ? settingsPath : path, QSettings::IniFormat));
        intake->setRetryInterval(20);
        QObject::connect(intake.get(), &ui::InstrumentIntake::readingTaken, intake.get(),
                         [this](const TakenReading &reading) { taken.push_back(reading); });
        QObject::connect(
            intake.get(), &ui::InstrumentIntake::lineRefused, intake.get(),
            [this](const QString &raw, const QString &sentence) { refused << raw + u" | "_s + sentence; });
        QObject::connect(intake.get(), &ui::InstrumentIntake::columnTaken, intake.get(),
                         [this](const std::vector<TakenReading> &readings) { column = readings; });
    }
    void listenTo(const ui::Link &link, const exchange::LinePattern &pattern = {})
    {
        QSettings settings(settingsPath, QSettings::IniFormat);
        ASSERT_TRUE(ui::PhotometerStore(settings).keep(Photometer{u"Old one"_s, link, pattern}));
        makeIntake();
        ASSERT_TRUE(intake->listenTo(u"Old one"_s));
        EXPECT_TRUE(intake->isListening());
    }
    bool waitConnected(bool wanted = true) const
    {
        return QTest::qWaitFor([&] { return intake->isConnected() == wanted; }, 20000);
    }
    bool waitTaken(std::size_t count) const
    {
        return QTest::qWaitFor([&] { return taken.size() >= count; }, 20000);
    }
    bool waitRefused(qsizetype count) const
    {
        return QTest::qWaitFor([&] { return refused.size() >= count; }, 20000);
    }
    std::vector<double> absorbances() const
    {
        std::vector<double> values;
        for (const TakenReading &reading : taken)
            values.push_back(reading.absorbance);
        return values;
    }
    QString writeFile(const QString &name, const QByteArray &content) const
    {
        QFile file(folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(content) == content.size());
        return file.fileName();
    }
    template <class Dialog> Dialog *openDialog() const
    {
        Dialog *found = nullptr;
        for (QWidget *widget : QApplication::topLevelWidgets()) {
            if (auto *dialog = qobject_cast<Dialog *>(widget); dialog && dialog->isVisible())
                found = dialog;
        }
        return found;
    }

    QTemporaryDir folder;
    QString settingsPath = folder.filePath(u"plateau.ini"_s);
    ui::Theme theme;
    AnsweringDialogs dialogs;
    std::unique_ptr<ui::InstrumentIntake> intake;
    std::vector<TakenReading> taken;
    QStringList refused;
    std::vector<TakenReading> column;
};

inline ui::SerialLink serial(const QString &port)
{
    ui::SerialLink link;
    link.port = port;
    return link;
}

} // namespace plateau::test
