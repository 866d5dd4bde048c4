// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/exportfolder.h"

#include "core/exchange/moment.h"
#include "core/notebook/exportdocuments.h"
#include "core/notebook/exportfile.h"
#include "core/notebook/exportmanifest.h"
#include "core/notebook/exportreadme.h"
#include "core/notebook/files.h"
#include "core/notebook/recordtables.h"
#include "core/notebook/sentence.h"

#include <QDir>
#include <QFileInfo>
#include <QUuid>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

void requireFreeFolder(const QString &folder)
{
    const QFileInfo info(folder);
    if (info.isSymLink() ||
        (info.exists() &&
         (!info.isDir() || !QDir(folder).isEmpty(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::Hidden))))
        throw Failure(Failure::Kind::Refused,
                      Sentence::tr("There is something in %1 already and it was left as it is; nothing was "
                                   "exported: choose the name of a new folder.")
                          .arg(QDir::toNativeSeparators(folder)));
    if (!QFileInfo(info.absolutePath()).isDir())
        throw Failure(Failure::Kind::Storage,
                      Sentence::tr("The folder %1 cannot be made, since the one it is to be in is not there; "
                                   "nothing was exported: make that one or choose another.")
                          .arg(QDir::toNativeSeparators(folder)));
}

qint64 rowsIn(const Database &database, const QStringList &tables)
{
    qint64 rows = 0;
    for (const QString &table : tables)
        rows += database.single(u"SELECT count(*) FROM %1"_s.arg(table)).toLongLong();
    return rows;
}

void writeAll(const Session &session, const QString &folder, const Watch &watch)
{
    const QStringList tables = exportedTables(session.layout);
    Progress progress(watch, rowsIn(session.database, tables) + rowsIn(session.database, {u"run"_s}));
    ExportManifest manifest;
    manifest.program = session.surroundings.programVersion;
    manifest.exportedAt = exchange::momentText(session.surroundings.now());
    manifest.notebook = QFileInfo(session.database.path()).fileName();
    manifest.schema = session.schemaVersion;
    manifest.head = readAuditHead(session.database);
    const QString rows = folder + u"/tables"_s;
    if (!QDir().mkpath(rows))
        throw Failure(Failure::Kind::Storage, Sentence::tr("The folder %1 could not be made.").arg(rows));
    for (const QString &table : tables)
        manifest.tables.push_back(
            exportTable(session.database, table, session.layout.columns.at(table), rows, progress));
    exportDocuments(session, folder + u"/documents"_s, progress);
    writeWhole(folder + u"/README.txt"_s, exportReadme(manifest));
    // Last: a folder without it is no export.
    writeWhole(folder + u"/manifest.json"_s, manifestJson(manifest));
    for (const QString &inside : {rows, folder + u"/documents/runs"_s, folder + u"/documents/evaluations"_s,
                                  folder + u"/documents"_s, folder})
        syncToDisk(inside);
}

} // namespace

void exportNotebook(const Session &session, const QString &folder, const Watch &watch)
{
    const QString target = QFileInfo(folder).absoluteFilePath();
    requireFreeFolder(target);
    const QString part = u"%1.part-%2"_s.arg(target, QUuid::createUuid().toString(QUuid::Id128).left(8));
    const auto failed = [&](const QString &why) {
        QDir(part).removeRecursively();
        return Failure(
            Failure::Kind::Storage,
            Sentence::tr("Nothing was exported to %1; the notebook itself is whole and nothing of it "
                         "is lost: see that the folder may be written to and has room.")
                .arg(QDir::toNativeSeparators(target)),
            why);
    };
    try {
        if (!QDir().mkdir(part))
            throw failed(part);
        writeAll(session, part, watch);
        QDir().rmdir(target); // an empty one
        if (!QDir().rename(part, target))
            throw failed(target);
        syncToDisk(QFileInfo(target).absolutePath());
    } catch (const Failure &failure) {
        if (failure.kind() != Failure::Kind::Storage) {
            QDir(part).removeRecursively();
            throw;
        }
        throw failed(failure.sentence() + u'\n' + failure.details());
    } catch (...) {
        QDir(part).removeRecursively();
        throw;
    }
}

} // namespace plateau::notebook
