// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/firstrun.h"

#include "core/notebook/notebook.h"
#include "ui/firststart.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/theme.h"
#include "ui/shared/userfolders.h"

#include <QDir>
#include <QFileInfo>

namespace plateau::app {

std::optional<FirstRun> beginFirstRun(const QString &missing)
{
    const ui::Theme theme;
    ui::Dialogs dialogs;
    ui::FirstStart page(theme, dialogs, ui::usualNotebook(), missing);
    page.setPalette(theme.adjustments());
    while (page.exec() == QDialog::Accepted) {
        const ui::FirstChoice choice = page.choice();
        try {
            if (choice.kind == ui::FirstChoice::Kind::Sample)
                return FirstRun{true, {}, {}, page.helpOnShow()};
            if (choice.kind == ui::FirstChoice::Kind::Use)
                return FirstRun{false, choice.path, {}, page.helpOnShow()};
            makeNotebook(choice.path, choice.laboratory, choice.person);
            return FirstRun{false, choice.path, choice.person, page.helpOnShow()};
        } catch (const notebook::Failure &failure) {
            page.sayFault(failure.sentence());
        }
    }
    return std::nullopt;
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
