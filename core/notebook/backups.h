// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/backuprule.h"
#include "core/notebook/copying.h"

#include <QDateTime>
#include <QString>

#include <vector>

namespace plateau::notebook {

class Database;

/// A dated copy of a notebook: "cellar-20261126-083000Z.plateau", a notebook like any other.
struct Backup {
    QString path;
    QDateTime madeAt;
    qint64 size_bytes = 0;
};

/// What became of a backup that was made.
struct BackupMade {
    Backup backup;
    /// Of the notebook as it was copied.
    AuditHead head;
    /// Older ones that the rule let go.
    int removed = 0;
};

/// The folder that the notebook's backups have to themselves in a common one: its file's name, and the
/// beginning of the hash that its audit begins with, so that two notebooks of one name do not mix.
QString backupFolderOf(const Database &database, const QString &root);

/// What lies in a notebook's folder, newest first; files of other names are passed over. Looks at names only.
std::vector<Backup> backupsIn(const QString &folder);

/// True where the newest backup is not of the notebook as it is now, or there is none that can be read.
bool hasChangedSinceBackup(const Database &database, const QString &folder);

/// A backup that is being made: its pages in the notebook's own thread, what comes after them in any.
struct BackupUnderWay {
    std::unique_ptr<CopyUnderWay> copy;
    /// Of the copy that was taken. Throws as makeBackup does.
    std::function<BackupMade(CopyToCheck &, const Watch &)> finish;
};

/// Makes the folder where it is not there, a copy of the notebook in it, checks the copy by opening it (file,
/// chain, audit head), and then removes what the rule does not keep; a backup that is not by its name stays.
/// Throws Stopped, or Failure, in one sentence that says the notebook itself is not touched; there is no half
/// backup.
BackupMade makeBackup(const Database &database, const QString &folder, const QDateTime &now,
                      const BackupRule &rule = {}, const Watch &watch = {});
/// The same, so that other things can be done meanwhile; one at a time for a folder.
BackupUnderWay beginBackup(const Database &database, const QString &folder, const QDateTime &now,
                           const BackupRule &rule = {});
/// What a program that was killed in the middle of a backup left there is taken away; not while one is made.
void removeHalfBackups(const QString &folder);

/// A new notebook of what a backup holds, under a name that is free. The backup is checked first, and stays;
/// so does the notebook that is open. Throws Failure and Stopped.
void restoreBackup(const QString &backup, const QString &target, const Watch &watch = {});

} // namespace plateau::notebook
