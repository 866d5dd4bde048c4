// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/inputs.h"

#include "core/notebook/methodstore.h"
#include "core/notebook/readingstore.h"
#include "core/notebook/runstore.h"
#include "core/notebook/sentence.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

run::Run Inputs::runAsOf(ReadingId newest) const
{
    run::Run run = plan;
    placeReadings(run, readings, newest);
    return run;
}

run::Run Inputs::run() const
{
    return runAsOf(newest());
}

ReadingId Inputs::newest() const
{
    return readings.empty() ? ReadingId{} : readings.back().id;
}

Inputs loadInputs(const Database &database, RunId run)
{
    return {loadMethod(database, methodRowOf(database, run)), loadPlan(database, run),
            loadReadings(database, run)};
}

void requireUnchanged(const Session &session, RunId run)
{
    const Database &database = session.database;
    std::map<QString, std::unique_ptr<RowReader>> readers;
    // In two parts, so that each finds its rows by an index.
    Statement audited(
        database, u"SELECT record_table, record_id, content_hash FROM audit JOIN audit_record ON "
                  "audit_record.audit = audit.id WHERE audit.run = ? AND schema_version = ? UNION ALL "
                  "SELECT record_table, record_id, content_hash FROM audit_record JOIN audit ON audit.id = "
                  "audit_record.audit WHERE record_table = 'method' AND record_id = (SELECT method FROM run "
                  "WHERE run.id = ?) AND schema_version = ?"_s);
    audited.run(run.value, session.schemaVersion, run.value, session.schemaVersion);
    while (audited.next()) {
        const QString table = audited.text(0);
        const auto columns = session.layout.columns.find(table);
        auto &reader = readers[table];
        if (!reader && columns != session.layout.columns.end())
            reader = std::make_unique<RowReader>(database, table, columns->second);
        if (!reader || reader->hashOf(audited.integer(1)) != audited.text(2))
            throw Failure(
                Failure::Kind::Damaged,
                Sentence::tr("Run %1 was changed from outside the program (%2 %3); nothing was stored: "
                             "have the notebook verified and go back to the latest backup.")
                    .arg(run.value)
                    .arg(table)
                    .arg(audited.integer(1)));
    }
}

} // namespace plateau::notebook
