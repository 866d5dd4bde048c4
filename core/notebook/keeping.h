// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audittrail.h"
#include "core/notebook/backups.h"
#include "core/notebook/progress.h"

#include <QString>

#include <vector>

namespace plateau::notebook {

class OpenNotebook;

/// How a notebook is kept beyond its own file, and what its audit says: backups, archives, exports, the trail
/// of who did what. Everything only reads the notebook; nothing else may be done with it until a function
/// returns.
class Keeping
{
public:
    explicit Keeping(OpenNotebook &open)
        : m_open(open)
    {
    }
    Keeping(const Keeping &) = delete;
    Keeping &operator=(const Keeping &) = delete;

    /// Newest first. See audittrail.h.
    std::vector<AuditItem> audit(const AuditFilter &filter = {}) const { return auditPage(filter).items; }
    AuditPage auditPage(const AuditFilter &filter) const;
    std::vector<AuditChange> changes(qint64 entry) const;
    QStringList persons() const;
    QStringList actions() const;

    /// The notebook's own folder in one where backups are kept (backups.h).
    QString backupFolder(const QString &root) const;
    bool hasChangedSinceBackup(const QString &root) const;
    BackupMade backUp(const QString &root) const;
    /// The same while other things are done with the notebook.
    BackupUnderWay beginBackup(const QString &root) const;
    /// A copy to work on, under a name that is free.
    std::unique_ptr<CopyUnderWay> beginCopy(const QString &path) const;
    /// What an earlier program left half made of backups.
    void tidyBackups(const QString &root) const;

    /// See archive.h.
    std::vector<int> years() const;
    AuditHead archive(int year, const QString &target, const Watch &watch = {}) const;
    /// See exportfolder.h.
    void exportTo(const QString &folder, const Watch &watch = {}) const;

private:
    OpenNotebook &m_open;
};

} // namespace plateau::notebook
