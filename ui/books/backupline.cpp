// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/backupline.h"

#include "ui/books/keeper.h"
#include "ui/shared/widgets.h"

using namespace Qt::StringLiterals;

namespace plateau::ui {

BackupLine::BackupLine(QWidget *parent)
    : QLabel(parent)
{
    setObjectName(u"backupLine"_s);
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    hide();
}

void BackupLine::watch(const Keeper &keeper)
{
    connect(&keeper, &Keeper::began, this, [this] { sayRunning(0); });
    connect(&keeper, &Keeper::progressed, this, &BackupLine::sayRunning);
    connect(&keeper, &Keeper::ended, this, [this, &keeper] { sayNewest(keeper); });
    connect(&keeper, &Keeper::backupsChanged, this, [this, &keeper] {
        if (!keeper.isBackingUp())
            sayNewest(keeper);
    });
    sayNewest(keeper);
    show();
}

void BackupLine::sayRunning(int part)
{
    setText(tr("Backing up: %1 %").arg(part / 10));
}

void BackupLine::sayNewest(const Keeper &keeper)
{
    try {
        const std::vector<notebook::Backup> backups = keeper.backups();
        setText(backups.empty() ? tr("No backup yet")
                                : tr("Backed up %1").arg(momentText(backups.front().madeAt)));
    } catch (const notebook::Failure &) {
        setText(tr("No backup yet")); // where none can be found; what is wrong is said by who needs it
    }
}

} // namespace plateau::ui
