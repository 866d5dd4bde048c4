// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/migration.h"

#include "core/notebook/audit.h"
#include "core/notebook/checks.h"
#include "core/notebook/files.h"
#include "core/notebook/searchindex.h"
#include "core/notebook/sentence.h"

#include <QDir>
#include <QFileInfo>
#include <QUuid>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// Foreign keys are off while this lives.
class WithoutForeignKeys
{
public:
    explicit WithoutForeignKeys(Database &database)
        : m_database(database)
    {
        m_database.setForeignKeys(false);
    }
    ~WithoutForeignKeys()
    {
        try {
            m_database.setForeignKeys(true);
        } catch (const Failure &failure) {
            // Already unwinding from the failure of the step, which says more; the connection is given up
            // then.
            qWarning("foreign keys stay off: %s", failure.what());
        }
    }
    WithoutForeignKeys(const WithoutForeignKeys &) = delete;
    WithoutForeignKeys &operator=(const WithoutForeignKeys &) = delete;

private:
    Database &m_database;
};

void requireSound(const std::vector<Finding> &findings)
{
    if (!findings.empty())
        throw Failure(Failure::Kind::Damaged, Sentence::tr("It would not have been sound afterwards."),
                      findingLines(findings));
}

Failure notBroughtTo(const SchemaStep &step, const QString &path, const Failure &cause)
{
    return Failure(
        cause.kind(),
        Sentence::tr("The notebook %1 could not be brought to schema %2 (%3) and is as it was before that "
                     "step; see that the disk has room, and keep the copy made before.")
            .arg(QDir::toNativeSeparators(path), QString::number(step.number), step.description),
        cause.sentence() + u'\n' + cause.details());
}

void applyStep(Database &database, const SchemaStep &step, const Layout &layout,
               const Surroundings &surroundings)
{
    const bool first = step.number == 1;
    // Nobody is asked who opens the file, so the account stands in for the person.
    Act act({database, step.number, layout, surroundings}, surroundings.account,
            first ? u"notebookCreated"_s : u"schemaStep"_s);
    applyStatements(database, step);
    if (step.derive)
        step.derive(database);
    if (first)
        database.execute(u"PRAGMA application_id=%1"_s.arg(applicationId));
    database.execute(u"PRAGMA user_version=%1"_s.arg(step.number));
    requireSound(fileFindings(database));
    // Its own number, so that the audit head of one notebook is never that of another.
    act.note(first ? u"notebook %1"_s.arg(QUuid::createUuid().toString(QUuid::WithoutBraces))
                   : u"schema %1: %2"_s.arg(step.number).arg(step.description));
    act.commit();
}

} // namespace

int schemaVersion(const Database &database)
{
    return database.single(u"PRAGMA user_version"_s).toInt();
}

void migrate(Database &database, const std::vector<SchemaStep> &steps, const Surroundings &surroundings,
             UpdateProgress &progress)
{
    const int from = schemaVersion(database);
    for (const SchemaStep &step : steps) {
        if (step.number <= from)
            continue;
        progress.reach(UpdateStage::Changing, step.number - from - 1, steps.back().number - from);
        const Layout layout = layoutAfter(steps, step.number);
        const WithoutForeignKeys off(database);
        try {
            applyStep(database, step, layout, surroundings);
        } catch (const Failure &failure) {
            throw notBroughtTo(step, database.path(), failure);
        }
    }
}

void completeSearch(const Database &database, UpdateProgress &progress)
{
    if (searchKnowsAllRuns(database))
        return;
    Transaction transaction(database, Transaction::Kind::Write);
    progress.reach(UpdateStage::Indexing, 0, 1);
    rebuildSearch(database,
                  [&progress](int done, int of) { progress.reach(UpdateStage::Indexing, done, of); });
    transaction.commit();
}

void removeHalfCopies(const QString &notebook)
{
    const QFileInfo file(notebook);
    const QString stem = file.completeBaseName() + u'-';
    for (const QFileInfo &other : file.absoluteDir().entryInfoList({u"*-schema*.part"_s}, QDir::Files)) {
        if (other.fileName().startsWith(stem))
            removeWithSideFiles(other.absoluteFilePath());
    }
}

QString backupPath(const QString &notebook, const QDateTime &now, int version)
{
    const QFileInfo file(notebook);
    const QString ending = file.suffix().isEmpty() ? QString() : u'.' + file.suffix();
    const QString stem =
        u"%1/%2-%3-schema%4"_s.arg(file.absolutePath(), file.completeBaseName(),
                                   now.toString(u"yyyyMMdd-HHmmss"_s), QString::number(version));
    // One that stopped may be tried again within the second; its copy stays.
    QString path = stem + ending;
    for (int number = 2; QFileInfo::exists(path); ++number)
        path = u"%1-%2%3"_s.arg(stem, QString::number(number), ending);
    return path;
}

} // namespace plateau::notebook
