// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/window.h"

#include "app/chosennotebook.h"
#include "app/commands.h"
#include "app/console.h"
#include "app/firstrun.h"
#include "app/onewindow.h"
#include "app/runfile.h"
#include "app/samplenotebook.h"
#include "core/notebook/files.h"
#include "core/notebook/notebook.h"
#include "ui/mainwindow.h"
#include "ui/updatedialog.h"
#include "ui/windowplace.h"

#include <QApplication>
#include <QDeadlineTimer>
#include <QFile>
#include <QFileInfo>
#include <QFontMetrics>
#include <QMessageBox>
#include <QPalette>
#include <QPixmap>
#include <QSettings>
#include <QSplashScreen>
#include <QTemporaryDir>
#include <QWindow>

#include <algorithm>
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

/// By its ending, or by what every SQLite file begins with.
bool isNotebookFile(const QString &path)
{
    if (path.endsWith(".plateau"_L1))
        return true;
    QFile file(path);
    return file.open(QIODevice::ReadOnly) && file.read(15) == "SQLite format 3";
}

/// What the window begins with.
struct Beginning {
    QString notebook;
    /// A run or method file; or empty.
    QString file;
    QString person;
    /// What the title calls a notebook that is thrown away.
    QString mark;
    /// What was read of the help before there was a window.
    ui::HelpPlace help{};
    bool isBeside = false;
    /// The starts after this one open it too, once it was opened.
    bool isChosen = false;
};

/// True where the notebook is up to date, or not there yet; false where the person stopped it. Throws
/// notebook::Failure.
bool isBroughtUpToDate(const QString &notebook)
{
    if (notebook::isMissing(notebook) || !notebook::needsUpdate(notebook))
        return true;
    ui::UpdateDialog dialog(notebook);
    if (dialog.exec() == QDialog::Accepted)
        return true;
    if (dialog.failure())
        throw *dialog.failure();
    return false;
}

int showWindow(const Beginning &beginning)
{
    try {
        if (!isBroughtUpToDate(beginning.notebook))
            return Sound;
        const bool isNew = notebook::isMissing(beginning.notebook);
        const auto opened = notebook::Notebook::openOrCreate(beginning.notebook);
        QSettings settings = programSettings();
        if (beginning.isChosen && !chooseNotebook(settings, beginning.notebook))
            qWarning("the choice of the notebook could not be kept");
        ui::MainWindow window(*opened, installedMethods());
        OneWindow calls;
        QObject::connect(&calls, &OneWindow::called, &window, [&window](const QString &file) {
            window.comeForward();
            if (!file.isEmpty())
                window.openFile(file);
        });
        if (!beginning.person.isEmpty())
            window.setPerson(beginning.person);
        if (!beginning.mark.isEmpty())
            window.setNotebookName(beginning.mark);
        QObject::connect(&window, &ui::MainWindow::anotherNotebookWanted, &window,
                         [&window] { openAnotherNotebook(&window); });
        ui::restorePlace(window, settings);
        if (beginning.isBeside)
            ui::stepAside(window);
        window.show();
        if (isNew)
            window.sayNotebookIsNew();
        if (beginning.mark.isEmpty()) { // what is thrown away is neither kept nor called
            window.keepBackups();
            if (!calls.listen(beginning.notebook))
                qWarning("a second start cannot reach this window");
        }
        if (!beginning.file.isEmpty())
            window.openFile(beginning.file);
        if (!beginning.help.page.isEmpty())
            window.openHelp(beginning.help);
        const int status = QApplication::exec();
        if (!ui::keepPlace(window, settings))
            qWarning("the place of the window could not be kept");
        return status;
    } catch (const notebook::Failure &failure) {
        writeError(u"%1: %2"_s.arg(beginning.notebook, failure.sentence()));
        QMessageBox box(QMessageBox::Critical, WindowWords::tr("Notebook"), failure.sentence(),
                        QMessageBox::Close);
        box.setTextFormat(Qt::PlainText);
        box.setDefaultButton(QMessageBox::Close);
        if (!failure.sentence().contains(beginning.notebook))
            box.setInformativeText(beginning.notebook);
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

int showDemo(const QString &file, const QString &person, const ui::HelpPlace &help, bool isBeside)
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
    const QString mark =
        WindowWords::tr("sample notebook, a copy that is thrown away; everybody in it signs with "
                        "the passphrase %1")
            .arg(sampledata::samplePassphrase());
    return showWindow({path, file, person, mark, help, isBeside});
}

/// The page of the first start, until a notebook opens: none that does not is kept for the next starts. last: the notebook
/// that was looked for last, or empty.
int showFirstChosen(QString last, const QString &file, const QString &person)
{
    while (const std::optional<FirstRun> first = beginFirstRun(last)) {
        if (first->isSample)
            return showDemo(file, person, first->help, false);
        if (OneWindow::handOver(first->notebook, file)) {
            QSettings settings = programSettings();
            if (!chooseNotebook(settings, first->notebook))
                qWarning("the choice of the notebook could not be kept");
            return Sound;
        }
        Beginning beginning{first->notebook, file, first->person.isEmpty() ? person : first->person, {}, first->help};
        beginning.isChosen = true;
        if (const int status = showWindow(beginning); status != Unusable)
            return status;
        last = first->notebook;
    }
    return Sound;
}

/// Of a start that names no notebook.
int showChosenNotebook(const QString &file, const QString &person)
{
    const QSettings settings = programSettings();
    const QString chosen = chosenNotebook(settings);
    if (OneWindow::handOver(chosen, file))
        return Sound;
    if (notebook::isMissing(chosen))
        return showFirstChosen(settings.contains(u"notebook/file"_s) ? chosen : QString(), file, person);
    // Who cannot open it any more may have a copy, or goes on in another one.
    const int status = showWindow({chosen, file, person, {}, {}});
    return status == Unusable ? showFirstChosen(chosen, file, person) : status;
}

} // namespace

std::optional<WindowOptions> windowOptions(const QStringList &words)
{
    WindowOptions options;
    bool endsOptions = false;
    for (qsizetype i = 0; i < words.size(); ++i) {
        const QString &word = words[i];
        if (word == "--demo"_L1 && !endsOptions) {
            options.demo = true;
        } else if (word == "--beside"_L1 && !endsOptions) {
            options.isBeside = true;
        } else if (word == "--notebook"_L1 && !endsOptions) {
            if (i + 1 == words.size())
                return refuse(WindowWords::tr("--notebook needs the name of a file"));
            options.notebook = words[++i];
        } else if (word == "--person"_L1 && !endsOptions) {
            if (i + 1 == words.size())
                return refuse(WindowWords::tr("--person needs a name"));
            options.person = words[++i].simplified();
        } else if (!endsOptions &&
                   std::ranges::find(toolkitOptionsWithValue, word) != toolkitOptionsWithValue.end()) {
            ++i;
        } else if (word == "--"_L1 && !endsOptions) {
            endsOptions = true;
        } else if ((!endsOptions && word.startsWith(u'-')) || !QFileInfo(word).isFile()) {
            return refuse(
                WindowWords::tr("%1 is neither a command nor an option nor a file; plateau --help lists them")
                    .arg(word));
        } else if (!options.file.isEmpty()) {
            return refuse(WindowWords::tr("the window takes one file at a start, not %1 as well").arg(word));
        } else {
            options.file = QFileInfo(word).absoluteFilePath();
        }
    }
    if (!options.file.isEmpty() && isNotebookFile(options.file) &&
        (options.demo || !options.notebook.isEmpty()))
        return refuse(
            WindowWords::tr("%1 is a notebook, and another one is named beside it").arg(options.file));
    if (options.demo && !options.notebook.isEmpty())
        return refuse(WindowWords::tr("--demo and --notebook exclude each other"));
    return options;
}

int runWindow(const WindowOptions &options)
{
    if (options.demo)
        return showDemo(options.file, options.person, {}, options.isBeside);
    const bool isNotebook = !options.file.isEmpty() && isNotebookFile(options.file);
    const QString notebook = isNotebook ? options.file : options.notebook;
    const QString file = isNotebook ? QString() : options.file;
    if (notebook.isEmpty())
        return showChosenNotebook(file, options.person);
    if (OneWindow::handOver(notebook, file))
        return Sound;
    return showWindow({notebook, file, options.person, {}, {}, options.isBeside});
}

} // namespace plateau::app
