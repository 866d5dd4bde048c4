// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/importfolder.h"

#include "core/exchange/readers.h"
#include "core/notebook/audit.h"
#include "core/notebook/checks.h"
#include "core/notebook/copying.h"
#include "core/notebook/exportfile.h"
#include "core/notebook/exportmanifest.h"
#include "core/notebook/files.h"
#include "core/notebook/importtable.h"
#include "core/notebook/recordtables.h"
#include "core/notebook/searchindex.h"
#include "core/notebook/sentence.h"
#include "core/notebook/stopping.h"
#include "core/notebook/triggers.h"

#include <QDir>
#include <QFileInfo>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QString shown(const QString &path)
{
    return QDir::toNativeSeparators(path);
}

Failure otherThanSaid(const QString &path)
{
    return Failure(Failure::Kind::Damaged,
                   Sentence::tr("The file %1 is not as the export wrote it; nothing was imported: take the "
                                "export from where it was kept unchanged.")
                       .arg(shown(path)));
}

ExportManifest manifestIn(const QString &folder)
{
    const QString path = folder + u"/manifest.json"_s;
    const auto bytes = exchange::readFile(path);
    if (!bytes.value)
        throw Failure(Failure::Kind::NotFound,
                      Sentence::tr("There is no export of a notebook in %1; nothing was imported: choose the "
                                   "folder that the export made.")
                          .arg(shown(folder)));
    ExportManifest manifest = readManifest(*bytes.value, path);
    if (manifest.schema > schemaSteps().back().number)
        throw Failure(Failure::Kind::NewerVersion,
                      Sentence::tr("The export %1 is from a newer Plateau (its schema is number %2, this "
                                   "program knows up to %3); nothing was imported: use the newer program.")
                          .arg(shown(folder), QString::number(manifest.schema),
                               QString::number(schemaSteps().back().number)));
    return manifest;
}

void requireTables(const ExportManifest &manifest, const Layout &layout, const QString &folder)
{
    QStringList tables;
    for (const ExportedTable &table : manifest.tables) {
        tables << table.name;
        if (!layout.columns.contains(table.name) || layout.columns.at(table.name) != table.columns)
            throw otherThanSaid(folder + u"/manifest.json"_s);
    }
    if (tables != exportedTables(layout))
        throw otherThanSaid(folder + u"/manifest.json"_s);
}

/// The rows go in as they are: what their triggers and references would ask for is checked afterwards.
void fill(Database &database, const ExportManifest &manifest, const QString &folder, Progress &progress)
{
    database.setForeignKeys(false);
    Transaction transaction(database, Transaction::Kind::Write);
    for (const SchemaStep &step : schemaSteps()) {
        if (step.number <= manifest.schema)
            applyStatements(database, step);
    }
    requireTables(manifest, layoutOf(database), folder);
    WithoutTriggers triggers(database);
    for (const ExportedTable &table : manifest.tables) {
        const QString path = u"%1/tables/%2.json"_s.arg(folder, table.name);
        if (hashOfFile(path) != table.hash || importTable(database, table, path, progress) != table.rows)
            throw otherThanSaid(path);
    }
    if (manifest.schema == schemaSteps().back().number)
        rebuildSearch(database); // an older one gets it when it is brought up
    triggers.putBack();
    database.execute(u"PRAGMA application_id=%1"_s.arg(applicationId));
    database.execute(u"PRAGMA user_version=%1"_s.arg(manifest.schema));
    transaction.commit();
    database.setForeignKeys(true);
}

void requireSound(const Database &database, const ExportManifest &manifest, const QString &folder)
{
    std::vector<Finding> findings = fileFindings(database);
    for (const auto &more :
         {schemaFindings(database, layoutAfter(schemaSteps(), manifest.schema)), chainFindings(database),
          recordFindings(database, schemaSteps(), manifest.schema)})
        findings.insert(findings.end(), more.begin(), more.end());
    const AuditHead head = readAuditHead(database);
    if (findings.empty() && head.hash == manifest.head.hash && head.entries == manifest.head.entries)
        return;
    const QString what = findings.empty() ? Sentence::tr("the head of its audit trail differs")
                                          : findings.front().place + u": "_s + findings.front().message;
    throw Failure(
        Failure::Kind::Damaged,
        Sentence::tr("The export %1 does not give a sound notebook (%2); nothing was imported: take "
                     "the export from where it was kept unchanged.")
            .arg(shown(folder), what),
        findingLines(findings));
}

} // namespace

void importNotebook(const QString &folder, const QString &target, const Watch &watch)
{
    const ExportManifest manifest = manifestIn(folder);
    requireFreeName(target);
    qint64 rows = 0;
    for (const ExportedTable &table : manifest.tables)
        rows += table.rows;
    makeWhole(target, [&](const QString &part) {
        Progress progress(watch, rows);
        Database database(part, Access::ReadWrite);
        const StopsStatements stops(database, [&progress] { return progress.goesOn(); });
        database.setJournal();
        fill(database, manifest, folder, progress);
        requireSound(database, manifest, folder);
    });
}

bool isExport(const QString &folder)
{
    return QFileInfo(folder + u"/manifest.json"_s).isFile();
}

} // namespace plateau::notebook
