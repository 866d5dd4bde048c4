// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/keepingcommands.h"

#include "app/console.h"
#include "app/outcome.h"
#include "core/assay/label.h"
#include "core/notebook/importfolder.h"
#include "core/notebook/notebook.h"
#include "ui/shared/userfolders.h"

#include <QCoreApplication>
#include <QDir>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct KeepingcommandsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

/// Does it with a notebook that is only read, and says what came of it on a line.
template <class Work> int withNotebook(const QString &path, Work work)
{
    try {
        const auto opened = notebook::Notebook::open(path, notebook::Access::ReadOnly);
        return written(writeOut((work(*opened) + u'\n').toUtf8()));
    } catch (const notebook::Failure &failure) {
        return unusableNotebook(path, failure);
    }
}

QString headText(const notebook::AuditHead &head)
{
    return KeepingcommandsWords::tr("%1 audit entries, head %2").arg(head.entries).arg(head.hash);
}

} // namespace

int exportNotebook(const QStringList &operands)
{
    if (operands.size() != 2)
        return wrongUse(KeepingcommandsWords::tr(
            "export takes a notebook and the name of a new folder: plateau export NOTEBOOK FOLDER"));
    return withNotebook(operands[0], [&](const notebook::Notebook &notebook) {
        notebook.keeping().exportTo(operands[1]);
        return KeepingcommandsWords::tr("exported; %1").arg(headText(notebook.auditHead()));
    });
}

int backUpNotebook(const QStringList &operands)
{
    if (operands.isEmpty() || operands.size() > 2)
        return wrongUse(KeepingcommandsWords::tr(
            "backup takes a notebook, and the folder that backups are kept in: plateau "
            "backup NOTEBOOK [FOLDER]"));
    const QString root = operands.value(1, ui::usualBackupRoot());
    return withNotebook(operands[0], [&](const notebook::Notebook &notebook) {
        const notebook::BackupMade made = notebook.keeping().backUp(root);
        return KeepingcommandsWords::tr("%1; %2").arg(QDir::toNativeSeparators(made.backup.path),
                                                      headText(made.head));
    });
}

int restoreNotebook(const QStringList &operands)
{
    if (operands.size() != 2)
        return wrongUse(
            KeepingcommandsWords::tr("restore takes a backup and the name of a new notebook: plateau restore "
                                     "BACKUP NOTEBOOK"));
    try {
        notebook::restoreBackup(operands[0], operands[1]);
        return Sound;
    } catch (const notebook::Failure &failure) {
        return unusableNotebook(operands[0], failure);
    }
}

int archiveNotebook(const QStringList &operands)
{
    bool isYear = operands.size() == 3;
    const int year = isYear ? operands[1].toInt(&isYear) : 0;
    if (!isYear || year < 1 || year > 9999)
        return wrongUse(KeepingcommandsWords::tr(
            "archive takes a notebook, a year and the name of a new file: plateau archive "
            "NOTEBOOK 2026 FILE"));
    return withNotebook(operands[0], [&](const notebook::Notebook &notebook) {
        return KeepingcommandsWords::tr("everything up to the end of %1; %2")
            .arg(year)
            .arg(headText(notebook.keeping().archive(year, operands[2])));
    });
}

int importExport(const QString &notebook, const QString &folder)
{
    try {
        notebook::importNotebook(folder, notebook);
        const auto opened = notebook::Notebook::open(notebook);
        return written(writeOut(
            (KeepingcommandsWords::tr("imported; %1").arg(headText(opened->auditHead())) + u'\n').toUtf8()));
    } catch (const notebook::Failure &failure) {
        return unusableNotebook(folder, failure);
    }
}

} // namespace plateau::app
