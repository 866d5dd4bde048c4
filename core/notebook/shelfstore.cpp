// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/shelfstore.h"

#include "core/notebook/detailstore.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// Each registration with its last version.
constexpr auto shelfWithDetail =
    "shelf_sample JOIN shelf_version ON shelf_version.id = (SELECT max(id) FROM shelf_version AS any_version "
    "WHERE any_version.sample = shelf_sample.id) JOIN sample_detail ON sample_detail.id = shelf_version.detail"_L1;

Failure noSuchSample(ShelfId id)
{
    return Failure(Failure::Kind::Refused,
                   Sentence::tr("No sample number %1 waits; nothing was stored: choose one from the list.")
                       .arg(id.value));
}

} // namespace

QString isRejected(const QString &run, const QString &sample)
{
    return u"EXISTS (SELECT 1 FROM decision AS verdict WHERE verdict.run = %1 "
           "AND verdict.id NOT IN (SELECT decision FROM reopening) AND (verdict.kind = 'rejected' "
           "OR EXISTS (SELECT 1 FROM decision_sample AS own WHERE own.decision = verdict.id "
           "AND own.sample = %2 AND own.kind = 'rejected')))"_s.arg(run, sample);
}

ShelfId storeRegistration(Act &act)
{
    Statement insert(act.database(),
                     u"INSERT INTO shelf_sample (last_run) SELECT coalesce(max(id), 0) FROM run"_s);
    insert.run();
    act.covers(u"shelf_sample"_s, insert.insertedId());
    return {insert.insertedId()};
}

void storeShelfVersion(Act &act, ShelfId id, const planning::ShelfSample &sample)
{
    const qint64 detail = storeDetail(act, sample);
    Statement insert(act.database(), u"INSERT INTO shelf_version (sample, detail, person, at_utc, "
                                     "at_offset_min) VALUES (?, ?, ?, ?, ?)"_s);
    insert.run(id.value, detail, act.person(), act.at());
    act.covers(u"shelf_version"_s, insert.insertedId());
}

void storeWithdrawal(Act &act, ShelfId id, const QString &reason)
{
    Statement insert(act.database(), u"INSERT INTO shelf_withdrawal (sample, person, reason, at_utc, "
                                     "at_offset_min) VALUES (?, ?, ?, ?, ?)"_s);
    insert.run(id.value, act.person(), reason, act.at());
    act.covers(u"shelf_withdrawal"_s, insert.insertedId());
}

void storeWaiver(Act &act, RunId run, const QString &sample, const QString &reason)
{
    Statement insert(act.database(), u"INSERT INTO repeat_waiver (run, sample, person, reason, at_utc, "
                                     "at_offset_min) VALUES (?, ?, ?, ?, ?, ?)"_s);
    insert.run(run.value, sample, act.person(), reason, act.at());
    act.covers(u"repeat_waiver"_s, insert.insertedId());
}

ShelfState loadShelfState(const Database &database, ShelfId id)
{
    Statement query(
        database,
        u"SELECT sample_detail.id, EXISTS (SELECT 1 FROM shelf_withdrawal WHERE sample = shelf_sample.id), "
        "EXISTS (SELECT 1 FROM sample WHERE sample.name = sample_detail.name AND sample.run > last_run) "
        "FROM %1 WHERE shelf_sample.id = ?"_s.arg(shelfWithDetail));
    query.run(id.value);
    if (!query.next())
        throw noSuchSample(id);
    return {loadDetail(database, query.integer(0)), query.integer(1) != 0, query.integer(2) != 0};
}

std::vector<ShelfEntry> loadWaiting(const Database &database, const std::optional<QString> &name)
{
    Statement query(
        database,
        u"SELECT shelf_sample.id, sample_detail.id FROM %1 "
        "WHERE shelf_sample.id NOT IN (SELECT sample FROM shelf_withdrawal) AND NOT EXISTS ("
        "SELECT 1 FROM sample WHERE sample.name = sample_detail.name AND sample.run > last_run AND NOT %2) "
        "AND %3 ORDER BY shelf_sample.id"_s.arg(shelfWithDetail,
                                                isRejected(u"sample.run"_s, u"sample.name"_s),
                                                name ? u"name_key = ?"_s : u"true"_s));
    if (name)
        query.run(comparisonKey(*name));
    else
        query.run();
    std::vector<ShelfEntry> entries;
    while (query.next())
        entries.push_back({{query.integer(0)}, loadDetail(database, query.integer(1))});
    return entries;
}

std::optional<planning::ShelfSample> loadLastTold(const Database &database, const QString &sample)
{
    Statement query(database, u"SELECT sample_detail.id FROM %1 WHERE sample_detail.name = ? "
                              "ORDER BY shelf_sample.id DESC LIMIT 1"_s.arg(shelfWithDetail));
    query.run(sample);
    if (!query.next())
        return std::nullopt;
    return loadDetail(database, query.integer(0));
}

std::optional<planning::ShelfSample> loadTakenBy(const Database &database, RunId run, const QString &sample)
{
    Statement query(
        database,
        u"SELECT sample_detail.id FROM %1 WHERE sample_detail.name = ? AND last_run < ? "
        "AND shelf_sample.id NOT IN (SELECT sample FROM shelf_withdrawal) AND NOT EXISTS ("
        "SELECT 1 FROM sample WHERE sample.name = sample_detail.name AND sample.run > last_run AND sample.run < ? "
        "AND NOT %2) ORDER BY shelf_sample.id DESC LIMIT 1"_s.arg(shelfWithDetail,
                                                                  isRejected(u"sample.run"_s, u"sample.name"_s)));
    query.run(sample, run.value, run.value);
    if (!query.next())
        return std::nullopt;
    return loadDetail(database, query.integer(0));
}

} // namespace plateau::notebook
