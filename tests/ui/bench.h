// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/library.h"
#include "core/notebook/notebook.h"
#include "tests/support/print.h"
#include "ui/mainwindow.h"
#include "ui/shared/clock.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/sounder.h"

#include <QTemporaryDir>
#include <QtTest/QTest>

#include <gtest/gtest.h>

#include <functional>

/// What the tests of the window stand on: a notebook of their own, one small method, dialogs that answer by
/// themselves.
namespace plateau::test {

/// Example acid: rising, V = 2.12 mL of which 0.1 mL sample, M = 100 g/mol, 6300 L/(mol cm), 1 cm, so that
/// one unit of net signal stands for 2.12 x 100 / (6300 x 1 x 0.1) = 0.33651 g/L.
QByteArray exampleMethod();
inline constexpr double exampleFactor_g_per_L = 2.12 * 100 / (6300 * 0.1);

/// A run of it: two blanks, sample "P-104" twice, nothing read yet.
run::Run exampleRun();

class QuietDialogs : public ui::Dialogs
{
public:
    struct Log {
        QString nextFile;
        QString nextFolder;
        QStringList told;
        QStringList questions;
        bool answer = false;
        /// Fills in a form and says whether it is accepted; without it, as it stands.
        std::function<bool(QDialog &)> fillIn;
    };
    explicit QuietDialogs(Log &log)
        : m_log(log)
    {
    }
    QString fileToOpen(QWidget *, const QString &, const QString &) override { return m_log.nextFile; }
    QString fileToSave(QWidget *, const QString &, const QString &, const QString &) override
    {
        return m_log.nextFile;
    }
    QString folderToUse(QWidget *, const QString &) override { return m_log.nextFolder; }
    void tell(QWidget *, const QString &, const QString &text) override { m_log.told << text; }
    bool confirm(QWidget *, const QString &, const QString &question, const QString &,
                 const QString &) override
    {
        m_log.questions << question;
        return m_log.answer;
    }
    bool isAccepted(QDialog &form) override { return !m_log.fillIn || m_log.fillIn(form); }

private:
    Log &m_log;
};

class StoppedClock : public ui::Clock
{
public:
    QDateTime now() const override
    {
        return QDateTime::fromString(u"2026-03-02T09:10:00+01:00", Qt::ISODate);
    }
    timing::BootTime boot() const override { return {QStringLiteral("stopped"), 0}; }
};

/// What was to be heard, instead of making noise.
class QuietSounder : public ui::Sounder
{
public:
    explicit QuietSounder(std::vector<ui::Sound> &heard)
        : m_heard(heard)
    {
    }
    void play(ui::Sound sound, int) override { m_heard.push_back(sound); }

private:
    std::vector<ui::Sound> &m_heard;
};

/// A notebook in a folder that goes away with the test, and the library with the one method.
class Bench : public ::testing::Test
{
protected:
    Bench();
    ~Bench() override;

    QString writeFile(const QString &name, const QByteArray &content) const;
    const assay::Method &method() const { return library.methods().front(); }
    notebook::RunId addRun(const run::Run &run);

    QTemporaryDir folder;
    exchange::MethodLibrary library;
    std::unique_ptr<notebook::Notebook> book;
};

/// With the window open and active.
class WindowBench : public Bench
{
protected:
    ~WindowBench() override;

    void openWindow();
    /// The only one of that name that can be seen.
    template <class T> T *find(const QString &name) const
    {
        T *found = nullptr;
        for (T *candidate : window->findChildren<T *>(name)) {
            if (candidate->isVisible()) {
                EXPECT_EQ(found, nullptr) << "two of the name " << name.toStdString();
                found = candidate;
            }
        }
        EXPECT_NE(found, nullptr) << "nothing on show is called " << name.toStdString();
        return found;
    }
    QString labelText(const QString &name) const;
    /// The calculation of the result that is chosen, whichever tab is in front of it.
    QString workingText() const;
    /// What the page says, of all notices on show.
    QString noticeText() const;
    /// Types into whatever has the focus, as a person would.
    void type(const QString &text) const;
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) const;
    /// Tab until the widget of that name has the focus; fails after two rounds.
    void tabTo(const QString &name) const;
    QString focusName() const;

    QuietDialogs::Log dialogs;
    std::vector<ui::Sound> heard;
    std::unique_ptr<ui::MainWindow> window;
};

} // namespace plateau::test
