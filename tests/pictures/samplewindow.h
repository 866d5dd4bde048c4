// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "tests/ui/bench.h"

#include <QSize>
#include <QTemporaryDir>

/// The program's own window on the notebook that `plateau --demo` shows, on a day that never changes:
/// whatever is on show is the same at every start.
namespace plateau::test {

/// The day and hour it is there.
QDateTime sampleNow();

/// Stopped at sampleNow.
class SampleClock : public ui::Clock
{
public:
    QDateTime now() const override { return sampleNow(); }
    timing::BootTime boot() const override { return {QStringLiteral("stopped"), 0}; }
};

/// As `plateau --demo` makes it; takes some seconds.
class SampleNotebook
{
public:
    /// folder: where the copies lie, for pages tell; a new one, which goes away, if nothing is said.
    explicit SampleNotebook(const QString &folder = {});
    ~SampleNotebook();
    /// A new copy in place of the one before, for a window that is about to change it.
    QString copy() const;

private:
    QTemporaryDir m_own;
    QString m_copies;
};

/// The window with its own copy, in the language and the font of the application.
class SampleWindow
{
public:
    SampleWindow(const SampleNotebook &sample, QSize size);
    ~SampleWindow();

    ui::MainWindow &window() { return *m_window; }
    QuietDialogs::Log &dialogs() { return m_dialogs; }

private:
    QuietDialogs::Log m_dialogs;
    std::vector<ui::Sound> m_heard;
    std::unique_ptr<notebook::Notebook> m_book;
    std::unique_ptr<ui::MainWindow> m_window;
};

/// For the whole application until it goes: texts, numbers and dates of that language (en, de, fr, es).
class SpokenLanguage
{
public:
    explicit SpokenLanguage(const QString &code);
    ~SpokenLanguage();
    SpokenLanguage(const SpokenLanguage &) = delete;
    SpokenLanguage &operator=(const SpokenLanguage &) = delete;
};

/// Lets everything happen that is waiting to happen.
void settle();

} // namespace plateau::test
