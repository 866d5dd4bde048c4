// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/readingstore.h"

#include "core/notebook/sentence.h"
#include "core/notebook/words.h"
#include "core/run/soundness.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

void storePoints(Act &act, qint64 reading, const run::ReadingSeries &series)
{
    Statement insert(
        act.database(),
        u"INSERT INTO reading_point (reading, position, at_min, absorbance) VALUES (?, ?, ?, ?)"_s);
    int position = 0;
    for (const run::TimedAbsorbance &point : series) {
        insert.run(reading, position++, point.at_min, point.absorbance);
        act.covers(u"reading_point"_s, insert.insertedId());
    }
}

run::ReadingSeries loadPoints(const Database &database, qint64 reading)
{
    Statement query(database,
                    u"SELECT at_min, absorbance FROM reading_point WHERE reading = ? ORDER BY position"_s);
    query.run(reading);
    run::ReadingSeries series;
    while (query.next())
        series.push_back({query.real(0), query.real(1)});
    return series;
}

/// Stands where a correction has its reason, which the schema asks of whatever names a reading before it.
constexpr auto againReason = "read again"_L1;

void storeOrigin(Act &act, qint64 reading, const ReadingOrigin &origin)
{
    Statement insert(act.database(),
                     u"INSERT INTO reading_origin (reading, kind, source, line) VALUES (?, ?, ?, ?)"_s);
    insert.run(reading, originWord(origin.kind), origin.source, origin.line);
    act.covers(u"reading_origin"_s, insert.insertedId());
}

void storeAgain(Act &act, qint64 reading)
{
    Statement insert(act.database(), u"INSERT INTO reading_again (reading) VALUES (?)"_s);
    insert.run(reading);
    act.covers(u"reading_again"_s, insert.insertedId());
}

StoredReading readingOf(const Database &database, const Statement &row)
{
    StoredReading reading;
    reading.id = {row.integer(0)};
    reading.tube = int(row.integer(1));
    reading.reading = row.text(2);
    if (const auto single = row.optionalReal(3))
        reading.value = *single;
    else
        reading.value = loadPoints(database, reading.id.value);
    reading.typed = row.text(4);
    reading.person = row.text(5);
    reading.at = row.time(6);
    if (!row.isNull(8))
        reading.corrects = ReadingId{row.integer(8)};
    reading.again = !row.isNull(10);
    if (!reading.again)
        reading.reason = row.text(9);
    reading.order = row.integer(11);
    reading.boot = {row.text(12), row.integer(13)};
    if (!row.isNull(14))
        reading.origin = {originOf(row.text(14)), row.text(15), row.text(16)};
    return reading;
}

} // namespace

ReadingId storeReading(Act &act, const NewReading &reading)
{
    const auto *single = std::get_if<double>(&reading.value);
    const auto *series = std::get_if<run::ReadingSeries>(&reading.value);
    const auto absorbance = single ? std::optional(*single) : std::nullopt;
    std::optional<qint64> corrects;
    if (reading.corrects)
        corrects = reading.corrects->value;
    Statement insert(
        act.database(),
        u"INSERT INTO reading (tube, name, absorbance, points, typed, person, at_utc, at_offset_min, "
        "corrects, reason) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(reading.tubeRow, reading.name, absorbance, series ? series->size() : 0, reading.typed,
               act.person(), act.at(), corrects, reading.again ? QString(againReason) : reading.reason);
    const qint64 id = insert.insertedId();
    act.covers(u"reading"_s, id);
    if (series)
        storePoints(act, id, *series);
    if (reading.again)
        storeAgain(act, id);
    if (reading.origin.kind != ReadingOrigin::Kind::Keyed)
        storeOrigin(act, id, reading.origin);
    return {id};
}

std::vector<StoredReading> loadReadings(const Database &database, RunId run)
{
    Statement query(
        database, u"SELECT reading.id, tube.position, reading.name, absorbance, typed, person, at_utc, "
                  "at_offset_min, corrects, reason, reading_again.id, coalesce(bench_stamp.id, 0), boot_id, "
                  "boot_ms, reading_origin.kind, source, line FROM reading "
                  "JOIN tube ON tube.id = reading.tube "
                  "LEFT JOIN reading_again ON reading_again.reading = reading.id "
                  "LEFT JOIN bench_stamp ON bench_stamp.reading = reading.id "
                  "LEFT JOIN reading_origin ON reading_origin.reading = reading.id "
                  "WHERE tube.run = ? ORDER BY reading.id"_s);
    query.run(run.value);
    std::vector<StoredReading> readings;
    while (query.next())
        readings.push_back(readingOf(database, query));
    return readings;
}

const StoredReading *currentReading(const std::vector<StoredReading> &readings, int tube, const QString &name)
{
    // Each correction names the one before it, so the newest counts.
    const auto found = std::find_if(readings.rbegin(), readings.rend(), [&](const StoredReading &reading) {
        return reading.tube == tube && reading.reading == name;
    });
    return found == readings.rend() ? nullptr : &*found;
}

void placeReadings(run::Run &run, const std::vector<StoredReading> &readings, ReadingId newest)
{
    for (const StoredReading &reading : readings) {
        if (reading.id <= newest && size_t(reading.tube) < run.tubes.size())
            run.tubes[size_t(reading.tube)].readings[reading.reading] = reading.value;
    }
}

void requireReading(const assay::Method &method, int tube, const QString &name, const run::Reading &value)
{
    const QString place = u"/tubes/0"_s;
    run::Run alone;
    alone.tubes.emplace_back().readings = {{name, value}};
    for (const assay::Problem &problem : run::problemsOf(alone, method)) {
        // Only what is wrong with this reading: the run itself was taken in when it began.
        if (problem.severity == assay::Problem::Severity::Error && problem.pointer.startsWith(place + u"/readings/"_s))
            throw Failure(Failure::Kind::Refused,
                          Sentence::tr("Reading %1 of tube %2 was not stored: %3.")
                              .arg(name, QString::number(tube + 1), problem.message),
                          u"/tubes/%1"_s.arg(tube) + problem.pointer.sliced(place.size()));
    }
}

} // namespace plateau::notebook
