// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/lotkeepingstore.h"

#include <map>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using planning::Lot;

namespace {

QDate keptDay(const QString &text)
{
    return QDate::fromString(text, Qt::ISODate);
}

std::optional<int> keptDays(const Statement &row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(int(row.integer(column)));
}

using LotsById = std::map<qint64, Lot *>;

void placeDry(const Database &database, const LotsById &lots)
{
    Statement query(database,
                    u"SELECT lot_dry.lot, mass_mg, volume_mL, solvent, day, lot_dry_disposal.id FROM lot_dry "
                    "LEFT JOIN lot_dissolving ON lot_dissolving.lot = lot_dry.lot LEFT JOIN lot_dry_disposal "
                    "ON lot_dry_disposal.lot = lot_dry.lot"_s);
    query.run();
    while (query.next()) {
        const auto found = lots.find(query.integer(0));
        if (found == lots.end())
            continue;
        Lot &lot = *found->second;
        lot.dry_mg = query.optionalReal(1);
        lot.isDry = query.isNull(2) && query.isNull(5);
        if (!query.isNull(2))
            lot.dissolved = planning::Dissolving{keptDay(query.text(4)), query.real(2), query.text(3)};
    }
}

void placePlaces(const Database &database, const LotsById &lots)
{
    Statement query(database,
                    u"SELECT lot, place, lowest_C, highest_C FROM lot_place WHERE id IN (SELECT max(id) "
                    "FROM lot_place GROUP BY lot)"_s);
    query.run();
    while (query.next()) {
        const auto found = lots.find(query.integer(0));
        if (found != lots.end())
            found->second->place =
                planning::StoragePlace{query.text(1), query.optionalReal(2), query.optionalReal(3)};
    }
}

/// The sources may be others than the lots that are asked for.
void placeAliquots(const Database &database, const LotsById &lots)
{
    Statement query(database,
                    u"SELECT lot_aliquot.lot, source, number, day, keeps_days FROM lot_aliquot JOIN "
                    "lot_division ON lot_division.id = division"_s);
    query.run();
    std::map<qint64, Lot> sources;
    while (query.next()) {
        const auto found = lots.find(query.integer(0));
        if (found == lots.end())
            continue;
        planning::AliquotOrigin origin;
        origin.source = query.integer(1);
        origin.number = int(query.integer(2));
        origin.day = keptDay(query.text(3));
        origin.keeps_days = keptDays(query, 4);
        const auto own = lots.find(origin.source);
        if (own == lots.end() && !sources.contains(origin.source)) {
            const std::vector<Lot> loaded = loadLots(database, LotId{origin.source});
            if (loaded.empty()) // a file that was changed from outside; verification names it
                continue;
            sources[origin.source] = loaded.front();
        }
        const Lot &source = own == lots.end() ? sources[origin.source] : *own->second;
        origin.sourceLastGood = planning::passedOn(source, origin.keeps_days.has_value());
        found->second->aliquot = origin;
    }
}

} // namespace

void storeDryLot(Act &act, LotId lot, std::optional<double> mass_mg)
{
    Statement insert(
        act.database(),
        u"INSERT INTO lot_dry (lot, mass_mg, person, at_utc, at_offset_min) VALUES (?, ?, ?, ?, ?)"_s);
    insert.run(lot.value, mass_mg, act.person(), act.at());
    act.covers(u"lot_dry"_s, insert.insertedId());
}

void storeDryDisposal(Act &act, LotId lot, const QString &reason)
{
    Statement insert(act.database(),
                     u"INSERT INTO lot_dry_disposal (lot, person, reason, at_utc, at_offset_min) "
                     "VALUES (?, ?, ?, ?, ?)"_s);
    insert.run(lot.value, act.person(), reason, act.at());
    act.covers(u"lot_dry_disposal"_s, insert.insertedId());
}

void storeLotKeeping(Act &act, qint64 version, int dissolved_days)
{
    Statement insert(act.database(), u"INSERT INTO lot_keeping (version, dissolved_days) VALUES (?, ?)"_s);
    insert.run(version, dissolved_days);
    act.covers(u"lot_keeping"_s, insert.insertedId());
}

void storeDissolving(Act &act, LotId lot, const LotDissolving &how, const std::optional<LotVersion> &solvent)
{
    Statement insert(
        act.database(),
        u"INSERT INTO lot_dissolving (lot, volume_mL, solvent, solvent_version, day, note, person, "
        "at_utc, at_offset_min) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)"_s);
    const std::optional<qint64> version = solvent ? std::optional(solvent->row) : std::nullopt;
    insert.run(lot.value, how.volume_mL, how.solvent, version, how.day.toString(Qt::ISODate), how.note,
               act.person(), act.at());
    act.covers(u"lot_dissolving"_s, insert.insertedId());
}

qint64 storeDivision(Act &act, LotId source, const LotDivision &how)
{
    Statement insert(act.database(),
                     u"INSERT INTO lot_division (source, aliquots, volume_mL, keeps_days, day, "
                     "note, person, at_utc, at_offset_min) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(source.value, how.aliquots, how.volume_mL, how.keeps_days, how.day.toString(Qt::ISODate),
               how.note, act.person(), act.at());
    act.covers(u"lot_division"_s, insert.insertedId());
    return insert.insertedId();
}

void storeAliquot(Act &act, qint64 division, LotId lot, int number)
{
    Statement insert(act.database(), u"INSERT INTO lot_aliquot (division, lot, number) VALUES (?, ?, ?)"_s);
    insert.run(division, lot.value, number);
    act.covers(u"lot_aliquot"_s, insert.insertedId());
}

void storePlace(Act &act, LotId lot, const planning::StoragePlace &place, const QString &note)
{
    Statement insert(act.database(),
                     u"INSERT INTO lot_place (lot, place, lowest_C, highest_C, note, person, at_utc, "
                     "at_offset_min) VALUES (?, ?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(lot.value, place.name, place.lowest_C, place.highest_C, note, act.person(), act.at());
    act.covers(u"lot_place"_s, insert.insertedId());
}

void storeLotNote(Act &act, LotId lot, const QString &text)
{
    Statement insert(
        act.database(),
        u"INSERT INTO lot_note (lot, note, person, at_utc, at_offset_min) VALUES (?, ?, ?, ?, ?)"_s);
    insert.run(lot.value, text, act.person(), act.at());
    act.covers(u"lot_note"_s, insert.insertedId());
}

int lastAliquotOf(const Database &database, LotId source)
{
    Statement query(database, u"SELECT coalesce(max(number), 0) FROM lot_aliquot JOIN lot_division ON "
                              "lot_division.id = division WHERE source = ?"_s);
    query.run(source.value);
    return query.next() ? int(query.integer(0)) : 0;
}

void placeKeeping(const Database &database, std::vector<Lot> &lots)
{
    LotsById byId;
    for (Lot &lot : lots)
        byId[lot.id] = &lot;
    placeDry(database, byId);
    placePlaces(database, byId);
    placeAliquots(database, byId); // last, since the days of their sources follow from the rest
}

} // namespace plateau::notebook
