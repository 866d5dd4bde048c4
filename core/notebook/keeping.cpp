// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/keeping.h"

#include "core/notebook/archive.h"
#include "core/notebook/copying.h"
#include "core/notebook/exportfolder.h"
#include "core/notebook/files.h"
#include "core/notebook/opennotebook.h"

namespace plateau::notebook {

std::vector<AuditItem> Keeping::audit(const AuditFilter &filter) const
{
    Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return auditItems(*m_open.database, filter);
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

void Keeping::copyTo(const QString &path) const
{
    requireFreeName(path);
    notebook::backUp(*m_open.database, path);
}

std::vector<int> Keeping::years() const
{
    return yearsIn(*m_open.database);
}

AuditHead Keeping::archive(int year, const QString &target) const
{
    return archiveYear(m_open.session(), year, target);
}

void Keeping::exportTo(const QString &folder, const Watch &watch) const
{
    Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    exportNotebook(m_open.session(), folder, watch);
}

} // namespace plateau::notebook
