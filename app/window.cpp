// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/window.h"

#include "app/commands.h"
#include "app/console.h"
#include "app/runfile.h"
#include "app/samplenotebook.h"
#include "core/notebook/notebook.h"
#include "ui/mainwindow.h"

#include <QApplication>
#include <QDeadlineTimer>
#include <QDir>
#include <QFontMetrics>
#include <QMessageBox>
#include <QPalette>
#include <QPixmap>
#include <QSplashScreen>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QWindow>

#include <array>
#include <memory>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct WindowWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Window)
};

constexpr std::array toolkitOptionsWithValue{
    "-platform"_L1, "-style"_L1,           "-stylesheet"_L1,         "-display"_L1,
    "-geometry"_L1, "-qwindowgeometry"_L1, "-platformpluginpath"_L1, "-platformtheme"_L1,
    "-plugin"_L1,   "-fontengine"_L1,
};

std::optional<WindowOptions> refuse(const QString &sentence)
{
    writeError(u"plateau: "_s + sentence);
    return std::nullopt;
}

QString defaultNotebook()
{
    const QString folder =
        QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + u"/plateau"_s;
    QDir().mkpath(folder);
    return folder + u"/notebook.plateau"_s;
}

int showWindow(const QString &path, const QString &mark = {})
{
    try {
        const auto opened = notebook::Notebook::openOrCreate(path);
        ui::MainWindow window(*opened, installedMethods());
        if (!mark.isEmpty())
            window.setNotebookName(mark);
        window.show();
        if (mark.isEmpty()) // what is thrown away is not kept either
            window.keepBackups();
        return QApplication::exec();
    } catch (const notebook::Failure &failure) {
        writeError(u"%1: %2"_s.arg(path, failure.sentence()));
        QMessageBox box(QMessageBox::Critical, WindowWords::tr("Notebook"), failure.sentence(),
                        QMessageBox::Close);
        box.setTextFormat(Qt::PlainText);
        box.setInformativeText(path);
        box.setDetailedText(failure.details());
        box.exec();
        return Unusable;
    }
}

/// Months of a laboratory take some seconds.
std::unique_ptr<QSplashScreen> sayWhatIsMade()
{
    const QString sentence = WindowWords::tr("Months of an invented laboratory are being made …");
    const QFontMetrics font(QApplication::font());
    QPixmap sheet(font.horizontalAdvance(sentence) + 4 * font.height(), 4 * font.height());
    sheet.fill(QApplication::palette().color(QPalette::Window));
    auto waiting = std::make_unique<QSplashScreen>(sheet);
    waiting->setAccessibleName(sentence);
    waiting->showMessage(sentence, Qt::AlignCenter, QApplication::palette().color(QPalette::WindowText));
    waiting->show();
    constexpr int longest_ms = 500;
    const QDeadlineTimer longest(longest_ms); // a display may take its time until it shows anything
    while (!waiting->windowHandle()->isExposed() && !longest.hasExpired())
        QApplication::processEvents(QEventLoop::AllEvents, 20);
    waiting->repaint();
    QApplication::processEvents();
    return waiting;
}

int showDemo()
{
    QTemporaryDir folder;
    const QString path = folder.filePath(u"sample.plateau"_s);
    try {
        const auto waiting = sayWhatIsMade();
        buildDemoNotebook(path);
    } catch (const notebook::Failure &failure) {
        writeError(u"%1: %2"_s.arg(path, failure.sentence()));
        return Unusable;
    }
    return showWindow(
        path, WindowWords::tr("sample notebook, a copy that is thrown away; everybody in it signs with "
                              "the passphrase %1")
                  .arg(sampledata::samplePassphrase()));
}

} // namespace

std::optional<WindowOptions> windowOptions(const QStringList &words)
{
    WindowOptions options;
    for (qsizetype i = 0; i < words.size(); ++i) {
        const QString &word = words[i];
        if (word == "--demo"_L1) {
            options.demo = true;
        } else if (word == "--notebook"_L1) {
            if (i + 1 == words.size())
                return refuse(WindowWords::tr("--notebook needs the name of a file"));
            options.notebook = words[++i];
        } else if (std::ranges::find(toolkitOptionsWithValue, word) != toolkitOptionsWithValue.end()) {
            ++i;
        } else {
            return refuse(WindowWords::tr("%1 is neither a command nor an option; plateau --help lists them")
                              .arg(word));
        }
    }
    if (options.demo && !options.notebook.isEmpty())
        return refuse(WindowWords::tr("--demo and --notebook exclude each other"));
    return options;
}

int runWindow(const WindowOptions &options)
{
    if (options.demo)
        return showDemo();
    return showWindow(options.notebook.isEmpty() ? defaultNotebook() : options.notebook);
}

} // namespace plateau::app
