// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/backups.h"

#include "core/notebook/audit.h"
#include "core/notebook/copying.h"
#include "core/notebook/files.h"
#include "core/notebook/migration.h"
#include "core/notebook/schema.h"
#include "core/notebook/sentence.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

const QString stampFormat = QStringLiteral("yyyyMMdd-HHmmss");

Failure notBackedUp(const QString &folder, const Failure &cause)
{
    return Failure(
        cause.kind(),
        Sentence::tr("No backup was made in %1; the notebook itself is whole and nothing of it is lost: see "
                     "that the folder is there, may be written to and has room.")
            .arg(QDir::toNativeSeparators(folder)),
        cause.sentence() + u'\n' + cause.details());
}

/// Nothing where the file is not named as a backup.
std::optional<QDateTime> momentIn(const QString &fileName)
{
    static const QRegularExpression pattern(u"-(\\d{8}-\\d{6})Z\\.[^.]+$"_s);
    const auto match = pattern.match(fileName);
    if (!match.hasMatch())
        return std::nullopt;
    QDateTime moment = QDateTime::fromString(match.captured(1), stampFormat);
    moment.setTimeSpec(Qt::UTC);
    return moment.isValid() ? std::optional(moment) : std::nullopt;
}

QString freePath(const QString &folder, const QString &notebook, QDateTime moment)
{
    const QString stem = QFileInfo(notebook).completeBaseName();
    const auto pathAt = [&](const QDateTime &at) {
        return u"%1/%2-%3Z.plateau"_s.arg(folder, stem, at.toUTC().toString(stampFormat));
    };
    // Two within a second, or a clock that was set back: the name is the next one that is free.
    while (QFileInfo::exists(pathAt(moment)))
        moment = moment.addSecs(1);
    return pathAt(moment);
}

/// What a program that was killed in the middle left.
void removeRemains(const QString &folder)
{
    const QDir dir(folder);
    for (const QString &name : dir.entryList({u"*Z.plateau.part"_s}, QDir::Files))
        removeWithSideFiles(dir.filePath(name));
}

int removeOutlived(const QString &folder, const QString &justMade, const BackupRule &rule)
{
    const std::vector<Backup> all = backupsIn(folder);
    std::vector<QDateTime> moments;
    for (const Backup &backup : all)
        moments.push_back(backup.madeAt);
    const std::vector<QDateTime> gone = outlived(moments, rule);
    int removed = 0;
    for (const Backup &backup : all) {
        if (backup.path != justMade && std::ranges::find(gone, backup.madeAt) != gone.end())
            removed += QFile::remove(backup.path) ? 1 : 0;
    }
    return removed;
}

void requireOurs(const Database &database)
{
    const QString path = QDir::toNativeSeparators(database.path());
    if (database.single(u"PRAGMA application_id"_s).toLongLong() != applicationId)
        throw Failure(
            Failure::Kind::NotANotebook,
            Sentence::tr("The file %1 is not a Plateau notebook; nothing was made of it.").arg(path));
    if (schemaVersion(database) > schemaSteps().back().number)
        throw Failure(
            Failure::Kind::NewerVersion,
            Sentence::tr("The backup %1 was written by a newer Plateau; nothing was made of it: use "
                         "the newer program.")
                .arg(path));
}

} // namespace

QString backupFolderOf(const Database &database, const QString &root)
{
    const QString first = database.single(u"SELECT hash FROM audit WHERE id = 1"_s).toString();
    return u"%1/%2-%3"_s.arg(root, QFileInfo(database.path()).completeBaseName(), first.left(8));
}

std::vector<Backup> backupsIn(const QString &folder)
{
    std::vector<Backup> backups;
    for (const QFileInfo &file : QDir(folder).entryInfoList({u"*Z.plateau"_s}, QDir::Files)) {
        if (const auto moment = momentIn(file.fileName()))
            backups.push_back({file.absoluteFilePath(), *moment, file.size()});
    }
    std::ranges::sort(backups, std::ranges::greater{}, &Backup::madeAt);
    return backups;
}

bool hasChangedSinceBackup(const Database &database, const QString &folder)
{
    const std::vector<Backup> backups = backupsIn(folder);
    if (backups.empty())
        return true;
    try {
        const Database newest(backups.front().path, Access::ReadOnly);
        return readAuditHead(newest).hash != readAuditHead(database).hash;
    } catch (const Failure &) {
        return true;
    }
}

BackupMade makeBackup(const Database &database, const QString &folder, const QDateTime &now,
                      const BackupRule &rule)
{
    BackupMade made;
    try {
        if (!QDir().mkpath(folder))
            throw Failure(Failure::Kind::Storage, Sentence::tr("The folder could not be made."));
        removeRemains(folder);
        made.backup.path = freePath(QDir(folder).absolutePath(), database.path(), now);
        made.head = readAuditHead(database);
        backUp(database, made.backup.path);
    } catch (const Failure &failure) {
        throw notBackedUp(folder, failure);
    }
    made.backup.madeAt = momentIn(QFileInfo(made.backup.path).fileName()).value_or(now);
    made.backup.size_bytes = QFileInfo(made.backup.path).size();
    made.removed = removeOutlived(folder, made.backup.path, rule);
    return made;
}

void restoreBackup(const QString &backup, const QString &target)
{
    const Database source(backup, Access::ReadOnly);
    requireOurs(source);
    requireWholeNotebook(source);
    requireFreeName(target);
    backUp(source, target);
}

} // namespace plateau::notebook
