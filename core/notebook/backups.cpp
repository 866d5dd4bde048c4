// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/backups.h"

#include "core/notebook/audit.h"
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
    if (cause.kind() == Failure::Kind::Damaged) // then it may be the notebook, and the cause says so
        return cause;
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
            Sentence::tr("The file %1 is not a Plateau notebook; nothing was made from it.").arg(path));
    if (schemaVersion(database) > schemaSteps().back().number)
        throw Failure(Failure::Kind::NewerVersion,
                      Sentence::tr("The backup %1 was written by a newer Plateau; nothing was made from it: "
                                   "use the newer program.")
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

void removeHalfBackups(const QString &folder)
{
    const QDir dir(folder);
    for (const QString &name : dir.entryList({u"*Z.plateau.part"_s}, QDir::Files))
        removeWithSideFiles(dir.filePath(name));
}

BackupUnderWay beginBackup(const Database &database, const QString &folder, const QDateTime &now,
                           const BackupRule &rule)
{
    const Explain explain = [folder](const Failure &cause) { return notBackedUp(folder, cause); };
    if (!QDir().mkpath(folder))
        throw explain(Failure(Failure::Kind::Storage, Sentence::tr("The folder could not be made.")));
    removeHalfBackups(folder);
    const QString path = freePath(QDir(folder).absolutePath(), database.path(), now);
    const auto finish = [folder, path, now, rule](CopyToCheck &copy, const Watch &watch) {
        copy.check(watch);
        copy.publish();
        const QFileInfo file(path);
        BackupMade made{{path, momentIn(file.fileName()).value_or(now), file.size()}, copy.head(), 0};
        made.removed = removeOutlived(folder, path, rule);
        return made;
    };
    return {std::make_unique<CopyUnderWay>(database, path, explain), finish};
}

BackupMade makeBackup(const Database &database, const QString &folder, const QDateTime &now,
                      const BackupRule &rule, const Watch &watch)
{
    BackupUnderWay backup = beginBackup(database, folder, now, rule);
    return backup.finish(*allPagesOf(*backup.copy, database, partOf(watch, 0, copiedPart)),
                         partOf(watch, copiedPart, 1000));
}

void restoreBackup(const QString &backup, const QString &target, const Watch &watch)
{
    const Database source(backup, Access::ReadOnly);
    requireOurs(source);
    constexpr int lookedThrough = 400;
    requireWholeNotebook(source, partOf(watch, 0, lookedThrough));
    requireFreeName(target);
    backUp(source, target, partOf(watch, lookedThrough, 1000));
}

} // namespace plateau::notebook
