// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/inputs.h"

#include "core/notebook/additions.h"
#include "core/notebook/markstore.h"
#include "core/notebook/methodstore.h"
#include "core/notebook/readingstore.h"
#include "core/notebook/runstore.h"
#include "core/notebook/sentence.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QDateTime arrivalOf(const Database &database, RunId run)
{
    Statement query(database, u"SELECT created_utc, created_offset_min FROM run WHERE id = ?"_s);
    query.run(run.value);
    query.next();
    return query.time(0);
}

} // namespace

run::Run Inputs::runAsOf(const Seen &newest) const
{
    run::Run run = plan;
    cutTo(run, newest.rack.value_or(planned));
    placeMarks(run, method, marks, newest.mark);
    placeReadings(run, readings, newest.reading);
    if (!newest.rack) {
        placeTimesOfUse(run, method, nullptr, readings, marks, newest);
        return run;
    }
    const BenchClock clock(plan, arrivedAt, readings, marks, newest);
    placeTimes(run, clock, readings, marks, newest);
    placeTimesOfUse(run, method, &clock, readings, marks, newest);
    return run;
}

run::Run Inputs::run() const
{
    return runAsOf(newest());
}

Seen Inputs::newest() const
{
    return {readings.empty() ? ReadingId{} : readings.back().id, marks.empty() ? MarkId{} : marks.back().id,
            sizeOf(plan)};
}

BenchClock Inputs::clock() const
{
    return {plan, arrivedAt, readings, marks, newest()};
}

Inputs loadInputs(const Database &database, RunId run)
{
    const run::Run plan = loadPlan(database, run);
    return {loadMethod(database, methodRowOf(database, run)),
            plan,
            arrivalOf(database, run),
            plannedSize(database, run).value_or(sizeOf(plan)),
            loadReadings(database, run),
            loadMarks(database, run)};
}

void requireUnchanged(const Session &session, RunId run)
{
    const Database &database = session.database;
    // A row is hashed over the columns it had when it was written.
    std::map<int, Layout> layouts{{session.schemaVersion, session.layout}};
    std::map<std::pair<int, QString>, std::unique_ptr<RowReader>> readers;
    // In parts, so that each finds its rows by an index.
    Statement audited(
        database,
        u"SELECT record_table, record_id, content_hash, schema_version FROM audit JOIN audit_record ON "
        "audit_record.audit = audit.id WHERE audit.run = ? UNION ALL "
        "SELECT record_table, record_id, content_hash, schema_version FROM audit_record JOIN audit ON "
        "audit.id = "
        "audit_record.audit WHERE record_table = 'method' AND record_id = (SELECT method FROM run "
        "WHERE run.id = ?) UNION ALL "
        "SELECT record_table, record_id, content_hash, schema_version FROM audit_record JOIN audit ON "
        "audit.id = audit_record.audit WHERE record_table = 'lot_version' AND record_id IN ("
        "SELECT lot_version FROM tube JOIN pipetting_mark ON pipetting_mark.tube = tube.id WHERE tube.run = ?)"_s);
    audited.run(run.value, run.value, run.value);
    while (audited.next()) {
        const QString table = audited.text(0);
        const int version = int(audited.integer(3));
        if (!layouts.contains(version))
            layouts[version] = layoutAfter(schemaSteps(), version);
        const auto &tables = layouts[version].columns;
        const auto columns = tables.find(table);
        auto &reader = readers[{version, table}];
        if (!reader && columns != tables.end())
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
