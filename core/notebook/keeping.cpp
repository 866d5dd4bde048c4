// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/keeping.h"

#include "core/notebook/archive.h"
#include "core/notebook/exportfolder.h"
#include "core/notebook/files.h"
#include "core/notebook/opennotebook.h"

namespace plateau::notebook {

AuditPage Keeping::auditPage(const AuditFilter &filter) const
{
    Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return notebook::auditPage(*m_open.database, filter);
}

std::vector<AuditChange> Keeping::changes(qint64 entry) const
{
    Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return auditChanges(*m_open.database, entry);
}

QStringList Keeping::persons() const
{
    return auditPersons(*m_open.database);
}

QStringList Keeping::actions() const
{
    return auditActions(*m_open.database);
}

QString Keeping::backupFolder(const QString &root) const
{
    return backupFolderOf(*m_open.database, root);
}

bool Keeping::hasChangedSinceBackup(const QString &root) const
{
    return notebook::hasChangedSinceBackup(*m_open.database, backupFolder(root));
}

BackupMade Keeping::backUp(const QString &root) const
{
    return makeBackup(*m_open.database, backupFolder(root), m_open.surroundings.now());
}

BackupUnderWay Keeping::beginBackup(const QString &root) const
{
    return notebook::beginBackup(*m_open.database, backupFolder(root), m_open.surroundings.now());
}

std::unique_ptr<CopyUnderWay> Keeping::beginCopy(const QString &path) const
{
    requireFreeName(path);
    return std::make_unique<CopyUnderWay>(*m_open.database, path);
}

void Keeping::tidyBackups(const QString &root) const
{
    removeHalfBackups(backupFolder(root));
}

std::vector<int> Keeping::years() const
{
    return yearsIn(*m_open.database);
}

AuditHead Keeping::archive(int year, const QString &target, const Watch &watch) const
{
    return archiveYear(m_open.session(), year, target, watch);
}

void Keeping::exportTo(const QString &folder, const Watch &watch) const
{
    Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    exportNotebook(m_open.session(), folder, watch);
}

} // namespace plateau::notebook
