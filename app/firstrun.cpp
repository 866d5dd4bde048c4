// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/firstrun.h"

#include "app/chosennotebook.h"
#include "core/notebook/files.h"
#include "core/notebook/notebook.h"
#include "core/notebook/updating.h"
#include "ui/firststart.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/theme.h"
#include "ui/shared/userfolders.h"
#include "ui/windowplace.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QProcess>
#include <QSettings>

using namespace Qt::StringLiterals;

namespace plateau::app {

namespace {

struct FirstRunWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::FirstRun)
};

std::optional<FirstRun> askUntilThere(ui::FirstStart &page)
{
    while (page.exec() == QDialog::Accepted) {
        const ui::FirstChoice choice = page.choice();
        try {
            if (choice.kind == ui::FirstChoice::Kind::Sample)
                return FirstRun{true, {}, {}, page.helpOnShow()};
            if (choice.kind == ui::FirstChoice::Kind::Use) {
                notebook::needsUpdate(choice.path); // throws where it is none, while another one can still be chosen
                return FirstRun{false, choice.path, {}, page.helpOnShow()};
            }
            makeNotebook(choice.path, choice.laboratory, choice.person);
            return FirstRun{false, choice.path, choice.person, page.helpOnShow()};
        } catch (const notebook::Failure &failure) {
            if (choice.kind == ui::FirstChoice::Kind::Use && failure.kind() == notebook::Failure::Kind::Locked)
                return FirstRun{false, choice.path, {}, page.helpOnShow()}; // by the window that is called to it
            page.sayFault(failure.sentence());
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<FirstRun> beginFirstRun(const QString &missing)
{
    const ui::Theme theme;
    ui::Dialogs dialogs;
    ui::FirstStart page(theme, dialogs, {ui::usualNotebook(), missing});
    page.setPalette(theme.adjustments());
    return askUntilThere(page);
}

void openAnotherNotebook(QWidget *over)
{
    const ui::Theme theme;
    ui::Dialogs dialogs;
    const QString folder = QFileInfo(ui::usualNotebook()).absolutePath();
    QSettings settings = programSettings();
    const bool isFirst = notebook::isMissing(chosenNotebook(settings));
    ui::FirstStart page(theme, dialogs, {freeNotebook(folder), {}, true, isFirst}, over);
    page.setPalette(theme.adjustments());
    const std::optional<FirstRun> chosen = askUntilThere(page);
    if (!chosen)
        return;
    if (page.isForNextStarts() && !chooseNotebook(settings, chosen->notebook))
        dialogs.tell(over, FirstRunWords::tr("Another notebook"),
                     FirstRunWords::tr("It could not be kept that the program is to start with %1; the next start opens "
                                       "the same notebook as before.")
                         .arg(chosen->notebook));
    ui::keepPlace(*over, settings); // from where the other window steps aside
    if (!QProcess::startDetached(QCoreApplication::applicationFilePath(), startWords(*chosen)))
        dialogs.tell(over, FirstRunWords::tr("Another notebook"),
                     FirstRunWords::tr("No other window could be opened. Close this one and open the notebook by itself: "
                                       "%1")
                         .arg(chosen->notebook));
}

QStringList startWords(const FirstRun &run)
{
    if (run.isSample)
        return {u"--beside"_s, u"--demo"_s};
    QStringList words{u"--beside"_s, u"--notebook"_s, run.notebook};
    if (!run.person.isEmpty())
        words << u"--person"_s << run.person;
    return words;
}

QString freeNotebook(const QString &folder)
{
    const QDir place(folder);
    QString name = u"notebook.plateau"_s;
    for (int number = 2; place.exists(name); ++number)
        name = u"notebook-%1.plateau"_s.arg(number);
    return place.filePath(name);
}

void makeNotebook(const QString &path, const QString &laboratory, const QString &person)
{
    const QString folder = QFileInfo(path).absolutePath();
    if (!QDir(folder).exists())
        ui::makePrivateFolder(folder); // where it cannot be made the notebook says so
    const auto opened = notebook::Notebook::openOrCreate(path);
    planning::Laboratory own = opened->laboratory();
    own.name = laboratory;
    opened->saveLaboratory(own, person);
}

} // namespace plateau::app
