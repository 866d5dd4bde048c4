// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/opening.h"

#include "core/notebook/checks.h"
#include "core/notebook/copying.h"
#include "core/notebook/files.h"
#include "core/notebook/migration.h"
#include "core/notebook/sentence.h"
#include "core/notebook/stopping.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUuid>

#include <filesystem>
#include <tuple>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

using Kind = Failure::Kind;

Failure failureAt(Kind kind, const QString &sentence, const QString &path, const QString &details = {})
{
    return Failure(kind, sentence.arg(QDir::toNativeSeparators(path)), details);
}

void requireFile(const QString &path)
{
    std::error_code fault;
    std::ignore = std::filesystem::status(QFile::encodeName(path).toStdString(), fault);
    if (fault == std::errc::permission_denied)
        throw failureAt(Kind::Storage,
                        Sentence::tr("The notebook %1 cannot be reached, since its folder may not be entered; see that "
                                     "you have the right to, or choose another notebook."),
                        path, QString::fromStdString(fault.message()));
    if (isMissing(path))
        throw failureAt(Kind::NotFound, Sentence::tr("There is no notebook %1; see that the name is right."),
                        path);
    if (!QFileInfo(path).isFile())
        throw failureAt(Kind::NotANotebook, Sentence::tr("%1 is not a file, so it cannot be a notebook."),
                        path);
}

void requireOurs(const Database &database, int newest)
{
    const QString &path = database.path();
    if (database.single(u"PRAGMA application_id"_s).toLongLong() != applicationId)
        throw failureAt(Kind::NotANotebook,
                        Sentence::tr("The file %1 is not a Plateau notebook; it was left as it is."), path);
    const int version = schemaVersion(database);
    if (version > newest)
        throw Failure(
            Kind::NewerVersion,
            Sentence::tr("The notebook %1 was written by a newer Plateau (its schema is number %2, this "
                         "program knows up to %3); it was left as it is: open it with the newer program.")
                .arg(QDir::toNativeSeparators(path), QString::number(version), QString::number(newest)));
    if (version < 1)
        throw failureAt(Kind::Damaged,
                        Sentence::tr("The notebook %1 is damaged: it states no schema; go back to the "
                                     "latest backup."),
                        path);
}

void requireSound(const Database &database, const std::vector<Finding> &findings)
{
    if (findings.empty())
        return;
    throw Failure(
        Kind::Damaged,
        Sentence::tr("The notebook %1 is damaged (%2: %3); nothing is written to it: go back to the latest "
                     "backup, and have plateau verify list all that is wrong with this file.")
            .arg(QDir::toNativeSeparators(database.path()), findings.front().place, findings.front().message),
        findingLines(findings));
}

/// SQLite opens a file it may only read without a word. Writing what is there already, and taking it back,
/// shows whether the file and its folder take a write, before anybody has keyed something in.
void requireWritable(const Database &database)
{
    const Transaction takenBack(database, Transaction::Kind::Write);
    database.execute(u"PRAGMA application_id=%1"_s.arg(applicationId));
}

/// What cannot be counted is looked through as well as it goes.
bool isLarge(const Database &database, qint64 mostEntries)
{
    try {
        return database.single(u"SELECT max(id) FROM audit"_s).toLongLong() > mostEntries;
    } catch (const Failure &) {
        return false;
    }
}

void requireSoundContent(const Database &database, const OpeningManner &manner)
{
    if (isLarge(database, manner.mostEntries)) {
        requireSound(database, lastChainFindings(database, manner.lastEntries));
        return;
    }
    requireSound(database, fileFindings(database));
    requireSound(database, chainFindings(database));
}

void prepareForWriting(Database &database, const std::vector<SchemaStep> &steps,
                       const Surroundings &surroundings, const OpeningManner &manner)
{
    UpdateProgress progress(manner.watch);
    const StopsStatements stops(database, [&progress] { return progress.goesOn(); });
    database.takeExclusively();
    progress.reach(UpdateStage::Checking, 0, 1); // of a small one the engine never asks
    database.setJournal();
    requireWritable(database);
    removeHalfCopies(database.path());
    requireSoundContent(database, manner);
    const int version = schemaVersion(database);
    const bool isNewest = &steps == &schemaSteps() && version == steps.back().number && hasNewestLayout(database);
    if (!isNewest)
        requireSound(database, schemaFindings(database, layoutAfter(steps, version)));
    if (version < steps.back().number) {
        Watch copying;
        if (manner.watch)
            copying = [&manner](qint64 done, qint64 of) {
                return manner.watch(UpdateStage::Copying, done, of);
            };
        backUp(database, backupPath(database.path(), surroundings.now(), version), copying);
        migrate(database, steps, surroundings, progress);
    }
    completeSearch(database, progress);
}

void prepareForReading(const Database &database, int newest)
{
    if (schemaVersion(database) < newest)
        throw failureAt(
            Kind::Refused,
            Sentence::tr("The notebook %1 is of an older schema: open it in the window once, which "
                         "brings it up to date after making a copy."),
            database.path());
}

void makeEmptyNotebook(const QString &path, const std::vector<SchemaStep> &steps,
                       const Surroundings &surroundings)
{
    Database database(path, Access::ReadWrite);
    database.setJournal();
    UpdateProgress unwatched({});
    migrate(database, steps, surroundings, unwatched);
}

std::unique_ptr<Database> connectionToFill(const QString &path)
{
    auto database = std::make_unique<Database>(path, Access::ReadWrite);
    database->takeExclusively();
    constexpr int cache_KiB = 65536; // its pages are written once and not time and again
    database->leaveDiskToTheEnd(cache_KiB);
    return database;
}

} // namespace

void createNotebookFile(const QString &path, const std::vector<SchemaStep> &steps,
                        const Surroundings &surroundings, const Filling &fill)
{
    requireFreeName(path);
    const QString part = u"%1.part-%2"_s.arg(path, QUuid::createUuid().toString(QUuid::Id128).left(8));
    createPrivateFile(part);
    try {
        makeEmptyNotebook(part, steps, surroundings);
        if (fill)
            fill(connectionToFill(part));
        publishFile(part, path);
    } catch (const Failure &failure) {
        removeWithSideFiles(part);
        if (failure.kind() == Kind::Refused)
            throw;
        throw failureAt(
            Kind::Storage,
            Sentence::tr("The notebook %1 could not be made; nothing was stored: see that the disk "
                         "is sound and has room."),
            path, failure.sentence() + u'\n' + failure.details());
    } catch (...) {
        removeWithSideFiles(part);
        throw;
    }
}

std::unique_ptr<Database> lookAtNotebookFile(const QString &path, Access access, int newest)
{
    requireFile(path);
    auto database = std::make_unique<Database>(path, access);
    requireOurs(*database, newest);
    return database;
}

std::unique_ptr<Database> openNotebookFile(const QString &path, Access access,
                                           const std::vector<SchemaStep> &steps,
                                           const Surroundings &surroundings, const OpeningManner &manner)
{
    auto database = lookAtNotebookFile(path, access, steps.back().number);
    if (access == Access::ReadWrite)
        prepareForWriting(*database, steps, surroundings, manner);
    else
        prepareForReading(*database, steps.back().number);
    return database;
}

} // namespace plateau::notebook
