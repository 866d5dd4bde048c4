// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/commands.h"
#include "app/console.h"
#include "app/programlog.h"
#include "app/translation.h"
#include "app/window.h"
#include "ui/shared/userfolders.h"

#include <QApplication>
#include <QCoreApplication>
#include <QSettings>

#include <cstdlib>
#include <cstring>
#include <memory>

using namespace Qt::StringLiterals;

namespace {

void nameApplication()
{
    QCoreApplication::setApplicationName(u"plateau"_s);
    QCoreApplication::setApplicationVersion(u"" PLATEAU_VERSION ""_s);
    QGuiApplication::setDesktopFileName(u"" PLATEAU_APPLICATION_ID ""_s);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, plateau::ui::configRoot());
}

/// Fonts need an application with a screen, be it none: its remarks about the missing desktop are nobody's
/// concern.
std::unique_ptr<QCoreApplication> drawingApplication(int &argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QtMessageHandler usual =
        qInstallMessageHandler([](QtMsgType, const QMessageLogContext &, const QString &) {});
    auto application = std::make_unique<QGuiApplication>(argc, argv);
    qInstallMessageHandler(usual);
    return application;
}

/// What can be answered without a window must not need a display.
int runWithoutWindow(int argc, char **argv)
{
    const bool draws = plateau::app::commandDraws(QString::fromLocal8Bit(argv[1]));
    const std::unique_ptr<QCoreApplication> application =
        draws ? drawingApplication(argc, argv) : std::make_unique<QCoreApplication>(argc, argv);
    const QStringList arguments = QCoreApplication::arguments().mid(1);
    if (arguments.front() == "--version"_L1)
        return plateau::app::writeOut("plateau " PLATEAU_VERSION "\n") ? plateau::app::Sound
                                                                       : plateau::app::Unusable;
    if (arguments.front() == "--help"_L1 || arguments.front() == "-h"_L1)
        return plateau::app::writeOut(plateau::app::usage().toUtf8()) ? plateau::app::Sound
                                                                      : plateau::app::Unusable;
    return plateau::app::runCommand(arguments.front(), arguments.mid(1));
}

bool needsNoWindow(int argc, char **argv)
{
    if (argc < 2)
        return false;
    const QString first = QString::fromLocal8Bit(argv[1]);
    return first == "--version"_L1 || first == "--help"_L1 || first == "-h"_L1 ||
           plateau::app::isCommand(first);
}

/// The toolkit's own end without a display is an abort with a page of advice.
void endWithoutDisplay(QtMsgType type, const QMessageLogContext &, const QString &)
{
    if (type != QtFatalMsg) // the warnings before it say the same at length
        return;
    plateau::app::writeError(QCoreApplication::translate(
        "plateau::app::Main",
        "plateau: the window needs a display, and there is none to be reached; start it from a "
        "desktop session, or use a command (plateau --help lists them)"));
    std::_Exit(plateau::app::Unusable);
}

} // namespace

int main(int argc, char **argv)
{
    nameApplication();
    if (needsNoWindow(argc, argv))
        return runWithoutWindow(argc, argv);
    // A wrong word is answered before anything asks for a display.
    QStringList words;
    for (int i = 1; i < argc; ++i)
        words.append(QString::fromLocal8Bit(argv[i]));
    const std::optional<plateau::app::WindowOptions> options = plateau::app::windowOptions(words);
    if (!options)
        return plateau::app::Unusable;
    const QtMessageHandler usual = qInstallMessageHandler(endWithoutDisplay);
    QApplication application(argc, argv);
    qInstallMessageHandler(usual);
    plateau::app::keepLog();
    plateau::app::installTranslations();
    return plateau::app::runWindow(*options);
}
