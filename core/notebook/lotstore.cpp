// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/lotstore.h"

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
    Statement query(database, u"SELECT reagent, name, expires, keeps_opened_days, id FROM lot_version "
                              "WHERE lot = ? ORDER BY id DESC LIMIT 1"_s);
    query.run(lot.value);
    if (!query.next())
        throw Failure(
            Failure::Kind::Refused,
            Sentence::tr("The notebook holds no lot number %1; nothing was stored: choose one of its "
                         "list of lots.")
                .arg(lot.value));
    LotVersion version;
    version.reagent = query.text(0);
    version.lot = query.text(1);
    version.expires = dayOf(query, 2);
    version.keepsOpened_days = countOf(query, 3);
    version.row = query.integer(4);
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
    act.covers(u"lot_version"_s, insert.insertedId());
}

void storeLotOpening(Act &act, LotId lot, const QDate &day)
{
    Statement insert(
        act.database(),
        u"INSERT INTO lot_opening (lot, day, person, at_utc, at_offset_min) VALUES (?, ?, ?, ?, ?)"_s);
    insert.run(lot.value, day.toString(Qt::ISODate), act.person(), act.at());
    act.covers(u"lot_opening"_s, insert.insertedId());
}

void storeLotMovement(Act &act, LotId lot, LotMovementKind kind, double change_mL, const QString &note)
{
    Statement insert(act.database(), u"INSERT INTO lot_movement (lot, kind, change_mL, note, person, at_utc, "
                                     "at_offset_min) VALUES (?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(lot.value, movementWord(kind), change_mL, note, act.person(), act.at());
    act.covers(u"lot_movement"_s, insert.insertedId());
}

std::vector<planning::Lot> loadLots(const Database &database, std::optional<LotId> which)
{
    Statement query(
        database, u"SELECT version.lot, reagent, name, expires, day, keeps_opened_days, "
                  "(SELECT total(change_mL) FROM lot_movement WHERE lot_movement.lot = version.lot) - "
                  "(SELECT total(mark.volume_mL) FROM lot_version AS any_version JOIN pipetting_mark AS mark "
                  "ON mark.lot_version = any_version.id WHERE any_version.lot = version.lot AND mark.kind = "
                  "'done' AND %1) "
                  "FROM lot_version AS version LEFT JOIN lot_opening ON lot_opening.lot = version.lot "
                  "WHERE version.id IN %2 AND %3 ORDER BY version.lot"_s.arg(
                      lastOfItsDose, newestVersions, which ? u"version.lot = ?"_s : u"true"_s));
    if (which)
        query.run(which->value);
    else
        query.run();
    std::vector<planning::Lot> lots;
    while (query.next())
        lots.push_back({query.integer(0), query.text(1), query.text(2), dayOf(query, 3), dayOf(query, 4),
                        countOf(query, 5), toNanolitre(query.real(6))});
    return lots;
}

std::vector<LotMovement> loadMovements(const Database &database, LotId lot)
{
    currentLotVersion(database, lot);
    Statement query(database,
                    u"SELECT kind, change_mL, note, person, at_utc, at_offset_min FROM lot_movement "
                    "WHERE lot = ? ORDER BY id"_s);
    query.run(lot.value);
    std::vector<LotMovement> movements;
    while (query.next())
        movements.push_back(
            {movementKindOf(query.text(0)), query.real(1), query.text(2), query.text(3), query.time(4)});
    return movements;
}

std::vector<LotTaking> loadTakings(const Database &database, LotId lot)
{
    currentLotVersion(database, lot);
    Statement query(
        database,
        u"SELECT tube.run, total(mark.volume_mL), count(DISTINCT mark.tube) FROM lot_version "
        "JOIN pipetting_mark AS mark ON mark.lot_version = lot_version.id JOIN tube ON tube.id = mark.tube "
        "WHERE lot_version.lot = ? AND mark.kind = 'done' AND %1 GROUP BY tube.run ORDER BY tube.run"_s.arg(
            lastOfItsDose));
    query.run(lot.value);
    std::vector<LotTaking> takings;
    while (query.next())
        takings.push_back({{query.integer(0)}, toNanolitre(query.real(1)), int(query.integer(2))});
    return takings;
}

} // namespace plateau::notebook
