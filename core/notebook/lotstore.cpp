// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/lotstore.h"

#include "core/notebook/lotkeepingstore.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"
#include "core/notebook/words.h"

#include <cmath>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

constexpr auto newestVersions = "(SELECT max(id) FROM lot_version GROUP BY lot)"_L1;

/// A dose that counts as done: no later mark of the same dose.
constexpr auto lastOfItsDose =
    "NOT EXISTS (SELECT 1 FROM pipetting_mark AS later WHERE later.tube = mark.tube AND "
    "later.component = mark.component AND later.spike = mark.spike AND later.id > mark.id)"_L1;

std::optional<QDate> dayOf(const Statement &row, int column)
{
    return row.isNull(column) ? std::nullopt
                              : std::optional(QDate::fromString(row.text(column), Qt::ISODate));
}

std::optional<int> countOf(const Statement &row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(int(row.integer(column)));
}

std::optional<QString> dayText(const std::optional<QDate> &day)
{
    return day ? std::optional(day->toString(Qt::ISODate)) : std::nullopt;
}

/// Sums of binary fractions miss what they stand for by less than a nanolitre.
double toNanolitre(double volume_mL)
{
    constexpr double nanolitres_per_mL = 1e6;
    return std::round(volume_mL * nanolitres_per_mL) / nanolitres_per_mL + 0.0;
}

} // namespace

LotVersion currentLotVersion(const Database &database, LotId lot)
{
    Statement query(database,
                    u"SELECT reagent, name, expires, keeps_opened_days, lot_version.id, dissolved_days FROM "
                    "lot_version LEFT JOIN lot_keeping ON lot_keeping.version = lot_version.id WHERE lot = ? "
                    "ORDER BY lot_version.id DESC LIMIT 1"_s);
    query.run(lot.value);
    if (!query.next())
        throw Failure(
            Failure::Kind::Refused,
            Sentence::tr(
                "The notebook holds no lot number %1; nothing was stored: choose one from its list of lots.")
                .arg(lot.value));
    LotVersion version;
    version.reagent = query.text(0);
    version.lot = query.text(1);
    version.expires = dayOf(query, 2);
    version.keepsOpened_days = countOf(query, 3);
    version.row = query.integer(4);
    version.keepsDissolved_days = countOf(query, 5);
    return version;
}

LotId storeLot(Act &act)
{
    Statement insert(act.database(), u"INSERT INTO lot DEFAULT VALUES"_s);
    insert.run();
    act.covers(u"lot"_s, insert.insertedId());
    return {insert.insertedId()};
}

void storeLotVersion(Act &act, LotId lot, const LotLabel &label, const QString &reason)
{
    Statement insert(act.database(),
                     u"INSERT INTO lot_version (lot, reagent, reagent_key, name, expires, keeps_opened_days, "
                     "person, reason, at_utc, at_offset_min) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(lot.value, label.reagent, comparisonKey(label.reagent), label.lot, dayText(label.expires),
               label.keepsOpened_days, act.person(), reason, act.at());
    const qint64 version = insert.insertedId();
    act.covers(u"lot_version"_s, version);
    if (label.keepsDissolved_days)
        storeLotKeeping(act, version, *label.keepsDissolved_days);
}

void storeLotOpening(Act &act, LotId lot, const QDate &day)
{
    Statement before(act.database(), u"SELECT 1 FROM lot_opening WHERE lot = ?"_s);
    before.run(lot.value);
    if (before.next()) { // that was taken back
        storeLotOpeningChange(act, lot, day, {});
        return;
    }
    Statement insert(
        act.database(),
        u"INSERT INTO lot_opening (lot, day, person, at_utc, at_offset_min) VALUES (?, ?, ?, ?, ?)"_s);
    insert.run(lot.value, day.toString(Qt::ISODate), act.person(), act.at());
    act.covers(u"lot_opening"_s, insert.insertedId());
}

void storeLotOpeningChange(Act &act, LotId lot, const std::optional<QDate> &day, const QString &reason)
{
    Statement insert(act.database(), u"INSERT INTO lot_opening_change (lot, day, person, reason, at_utc, "
                                     "at_offset_min) VALUES (?, ?, ?, ?, ?, ?)"_s);
    insert.run(lot.value, dayText(day), act.person(), reason, act.at());
    act.covers(u"lot_opening_change"_s, insert.insertedId());
}

void storeLotMovement(Act &act, LotId lot, LotMovementKind kind, double change_mL, const QString &note)
{
    Statement insert(act.database(), u"INSERT INTO lot_movement (lot, kind, change_mL, note, person, at_utc, "
                                     "at_offset_min) VALUES (?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(lot.value, movementWord(kind), change_mL, note, act.person(), act.at());
    act.covers(u"lot_movement"_s, insert.insertedId());
}

std::optional<QDate> firstTakenFrom(const Database &database, LotId lot)
{
    Statement query(
        database,
        u"WITH own (lot) AS (VALUES (?)) SELECT min(day) FROM (SELECT day FROM own JOIN lot_dissolving ON "
        "lot_dissolving.lot = own.lot UNION ALL SELECT day FROM own JOIN lot_division ON source = own.lot UNION ALL "
        "SELECT day FROM own JOIN lot_version AS solvent ON solvent.lot = own.lot JOIN lot_dissolving ON "
        "solvent_version = solvent.id UNION ALL "
        "SELECT date(at_utc, at_offset_min || ' minutes') FROM own JOIN lot_movement ON lot_movement.lot = own.lot "
        "WHERE kind = 'used' UNION ALL "
        "SELECT date(mark.at_utc, mark.at_offset_min || ' minutes') FROM own JOIN lot_version ON lot_version.lot = "
        "own.lot JOIN pipetting_mark AS mark ON mark.lot_version = lot_version.id WHERE mark.kind = 'done' AND "
        "mark.volume_mL > 0 AND %1)"_s.arg(lastOfItsDose));
    query.run(lot.value);
    return query.next() ? dayOf(query, 0) : std::nullopt;
}

std::vector<planning::Lot> loadLots(const Database &database, std::optional<LotId> which)
{
    Statement query(
        database,
        u"SELECT version.lot, reagent, name, expires, CASE WHEN said.id IS NULL THEN lot_opening.day ELSE said.day "
        "END, keeps_opened_days, "
        "(SELECT total(change_mL) FROM lot_movement WHERE lot_movement.lot = version.lot) + "
        "(SELECT total(volume_mL) FROM lot_dissolving WHERE lot_dissolving.lot = version.lot) + "
        "(SELECT total(volume_mL) FROM lot_aliquot JOIN lot_division ON lot_division.id = division WHERE "
        "lot_aliquot.lot = version.lot) - "
        "(SELECT total(aliquots * volume_mL) FROM lot_division WHERE source = version.lot) - "
        "(SELECT total(lot_dissolving.volume_mL) FROM lot_version AS solvent JOIN lot_dissolving ON "
        "solvent_version = solvent.id WHERE solvent.lot = version.lot) - "
        "(SELECT total(mark.volume_mL) FROM lot_version AS any_version JOIN pipetting_mark AS mark "
        "ON mark.lot_version = any_version.id WHERE any_version.lot = version.lot AND mark.kind = "
        "'done' AND %1), dissolved_days "
        "FROM lot_version AS version LEFT JOIN lot_opening ON lot_opening.lot = version.lot "
        "LEFT JOIN lot_opening_change AS said ON said.id = (SELECT max(id) FROM lot_opening_change AS newer WHERE "
        "newer.lot = version.lot) "
        "LEFT JOIN lot_keeping ON lot_keeping.version = version.id "
        "WHERE version.id IN %2 AND %3 ORDER BY version.lot"_s.arg(lastOfItsDose, newestVersions,
                                                                   which ? u"version.lot = ?"_s : u"true"_s));
    if (which)
        query.run(which->value);
    else
        query.run();
    std::vector<planning::Lot> lots;
    while (query.next())
        lots.push_back({query.integer(0), query.text(1), query.text(2), dayOf(query, 3), dayOf(query, 4),
                        countOf(query, 5), toNanolitre(query.real(6)), countOf(query, 7)});
    placeKeeping(database, lots);
    return lots;
}

std::vector<LotTaking> loadTakings(const Database &database, LotId lot)
{
    currentLotVersion(database, lot);
    Statement query(
        database,
        u"WITH RECURSIVE touched (lot) AS (VALUES (?) UNION SELECT lot_aliquot.lot FROM touched JOIN "
        u"lot_division "
        "ON source = touched.lot JOIN lot_aliquot ON division = lot_division.id UNION SELECT "
        "lot_dissolving.lot "
        "FROM touched JOIN lot_version ON lot_version.lot = touched.lot JOIN lot_dissolving ON "
        "solvent_version = "
        "lot_version.id) "
        "SELECT tube.run, total(mark.volume_mL), count(DISTINCT mark.tube), own.lot, (SELECT reagent || ', ' "
        "|| "
        "name FROM lot_version WHERE lot = own.lot ORDER BY id DESC LIMIT 1), run.title, run.created_utc, "
        "run.created_offset_min FROM touched JOIN lot_version "
        "AS own "
        "ON own.lot = touched.lot JOIN pipetting_mark AS mark ON mark.lot_version = own.id JOIN tube ON "
        "tube.id = "
        "mark.tube JOIN run ON run.id = tube.run WHERE mark.kind = 'done' AND %1 GROUP BY tube.run, own.lot ORDER BY tube.run, own.lot"_s
            .arg(lastOfItsDose));
    query.run(lot.value);
    std::vector<LotTaking> takings;
    while (query.next())
        takings.push_back({{query.integer(0)},
                           toNanolitre(query.real(1)),
                           int(query.integer(2)),
                           query.integer(3) == lot.value ? QString() : query.text(4),
                           query.text(5),
                           query.time(6)});
    return takings;
}

} // namespace plateau::notebook
