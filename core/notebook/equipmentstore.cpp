// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/equipmentstore.h"

#include "core/notebook/moment.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using equipment::Aspect;
using equipment::Check;
using equipment::HeldCheck;
using equipment::HeldItem;
using equipment::Item;

namespace {

Failure damaged()
{
    return Failure(Failure::Kind::Damaged,
                   Sentence::tr("The notebook is damaged: its book of equipment does not hold together; go "
                                "back to the latest backup."));
}

template <class T> T wanted(const std::optional<T> &value)
{
    if (!value)
        throw damaged();
    return *value;
}

std::map<qint64, std::map<Aspect, int>> loadDuties(const Database &database)
{
    Statement query(database, u"SELECT version, aspect, every_days FROM equipment_duty"_s);
    query.run();
    std::map<qint64, std::map<Aspect, int>> duties;
    while (query.next())
        duties[query.integer(0)][wanted(equipment::aspectFromWord(query.text(1)))] = int(query.integer(2));
    return duties;
}

struct VersionRow {
    qint64 item = 0;
    Item content;
    QDate from;
};

/// By their rows, so that the last of an item is its newest.
std::map<qint64, VersionRow> loadItemVersions(const Database &database)
{
    std::map<qint64, std::map<Aspect, int>> duties = loadDuties(database);
    Statement query(database, u"SELECT id, item, kind, name, number, nominal_mL, smallest_mL, in_use, at_utc, "
                              "at_offset_min FROM equipment_version ORDER BY id"_s);
    query.run();
    std::map<qint64, VersionRow> versions;
    while (query.next()) {
        const qint64 row = query.integer(0);
        versions[row] = {query.integer(1),
                         {wanted(equipment::kindFromWord(query.text(2))), query.text(3), query.text(4),
                          query.optionalReal(5).value_or(0), query.optionalReal(6).value_or(0), duties[row],
                          query.integer(7) == 1},
                         timeOf({query.text(8), int(query.integer(9))}).date()};
    }
    return versions;
}

/// That one of them which a row says it belongs to.
equipment::Check &checkAt(std::map<qint64, HeldCheck> &checks, qint64 id)
{
    const auto found = checks.find(id);
    if (found == checks.end())
        throw damaged();
    return found->second.check;
}

void loadConditions(const Database &database, std::map<qint64, HeldCheck> &checks)
{
    Statement query(database, u"SELECT of_check, name, value FROM equipment_condition"_s);
    query.run();
    while (query.next())
        checkAt(checks, query.integer(0)).conditions[query.text(1)] = query.real(2);
}

void loadRows(const Database &database, std::map<qint64, HeldCheck> &checks)
{
    Statement extents(database, u"SELECT of_check, row_count, column_count FROM equipment_extent"_s);
    extents.run();
    while (extents.next()) {
        constexpr qint64 most = 10000; // whatever somebody wrote into the file
        const auto side = [most](qint64 count) {
            return static_cast<std::size_t>(std::clamp<qint64>(count, 0, most));
        };
        checkAt(checks, extents.integer(0)).rows.assign(
            side(extents.integer(1)), std::vector<std::optional<double>>(side(extents.integer(2))));
    }
    Statement query(database, u"SELECT of_check, place, column_place, value FROM equipment_value"_s);
    query.run();
    while (query.next()) {
        auto &rows = checkAt(checks, query.integer(0)).rows;
        const auto row = static_cast<std::size_t>(query.integer(1));
        const auto column = static_cast<std::size_t>(query.integer(2));
        if (row >= rows.size() || column >= rows[row].size())
            throw damaged();
        rows[row][column] = query.real(3);
    }
}

/// By their rows.
std::map<qint64, HeldCheck> loadChecks(const Database &database, const std::map<qint64, VersionRow> &versions,
                                       std::map<qint64, qint64> &items)
{
    Statement query(database,
                    u"SELECT equipment_check.id, version, aspect, day, source, note, equipment_check.person, "
                    "equipment_withdrawal.id FROM equipment_check LEFT JOIN equipment_withdrawal ON "
                    "equipment_withdrawal.of_check = equipment_check.id"_s);
    query.run();
    std::map<qint64, HeldCheck> checks;
    while (query.next()) {
        const auto version = versions.find(query.integer(1));
        if (version == versions.end())
            throw damaged();
        HeldCheck &held = checks[query.integer(0)];
        held.id = query.integer(0);
        held.of = version->second.content;
        items[held.id] = version->second.item;
        held.check.aspect = wanted(equipment::aspectFromWord(query.text(2)));
        held.check.day = QDate::fromString(query.text(3), Qt::ISODate);
        held.check.source = query.text(4);
        held.check.note = query.text(5);
        held.person = query.text(6);
        held.withdrawn = !query.isNull(7);
    }
    loadConditions(database, checks);
    loadRows(database, checks);
    return checks;
}

} // namespace

ItemId storeItem(Act &act)
{
    Statement insert(act.database(), u"INSERT INTO equipment_item DEFAULT VALUES"_s);
    insert.run();
    act.covers(u"equipment_item"_s, insert.insertedId());
    return {insert.insertedId()};
}

void storeItemVersion(Act &act, ItemId id, const Item &item, const QString &reason)
{
    Statement insert(act.database(),
                     u"INSERT INTO equipment_version (item, kind, name, name_key, number, nominal_mL, "
                     "smallest_mL, in_use, person, reason, at_utc, at_offset_min) VALUES (?, ?, ?, ?, ?, ?, "
                     "?, ?, ?, ?, ?, ?)"_s);
    const bool sized = equipment::holdsVolume(item.kind);
    const bool set = item.kind == equipment::Kind::PistonPipette;
    insert.run(id.value, equipment::kindWord(item.kind), item.name, comparisonKey(item.name), item.number,
               sized ? std::optional(item.nominal_mL) : std::nullopt,
               set ? std::optional(item.smallest_mL) : std::nullopt, int(item.inUse), act.person(), reason,
               act.at());
    const qint64 version = insert.insertedId();
    act.covers(u"equipment_version"_s, version);
    Statement duty(act.database(),
                   u"INSERT INTO equipment_duty (version, aspect, every_days) VALUES (?, ?, ?)"_s);
    for (const auto &[aspect, days] : item.every_days) {
        duty.run(version, equipment::aspectWord(aspect), days);
        act.covers(u"equipment_duty"_s, duty.insertedId());
    }
}

CheckId storeCheck(Act &act, ItemId id, const Check &check, bool passed)
{
    Statement insert(act.database(),
                     u"INSERT INTO equipment_check (version, aspect, day, passed, source, note, person, "
                     "at_utc, at_offset_min) SELECT max(id), ?, ?, ?, ?, ?, ?, ?, ? FROM equipment_version "
                     "WHERE item = ?"_s);
    insert.run(equipment::aspectWord(check.aspect), check.day.toString(Qt::ISODate), int(passed),
               check.source, check.note, act.person(), act.at(), id.value);
    const qint64 stored = insert.insertedId();
    act.covers(u"equipment_check"_s, stored);
    Statement condition(act.database(),
                        u"INSERT INTO equipment_condition (of_check, name, value) VALUES (?, ?, ?)"_s);
    for (const auto &[name, value] : check.conditions) {
        condition.run(stored, name, value);
        act.covers(u"equipment_condition"_s, condition.insertedId());
    }
    Statement extent(act.database(),
                     u"INSERT INTO equipment_extent (of_check, row_count, column_count) VALUES (?, ?, ?)"_s);
    extent.run(stored, qint64(check.rows.size()), qint64(check.rows.front().size()));
    act.covers(u"equipment_extent"_s, extent.insertedId());
    Statement value(
        act.database(),
        u"INSERT INTO equipment_value (of_check, place, column_place, value) VALUES (?, ?, ?, ?)"_s);
    for (std::size_t row = 0; row < check.rows.size(); ++row) {
        for (std::size_t column = 0; column < check.rows[row].size(); ++column) {
            if (!check.rows[row][column])
                continue;
            value.run(stored, qint64(row), qint64(column), *check.rows[row][column]);
            act.covers(u"equipment_value"_s, value.insertedId());
        }
    }
    return {stored};
}

void storeCheckWithdrawal(Act &act, CheckId id, const QString &reason)
{
    Statement insert(act.database(), u"INSERT INTO equipment_withdrawal (of_check, person, reason, at_utc, "
                                     "at_offset_min) VALUES (?, ?, ?, ?, ?)"_s);
    insert.run(id.value, act.person(), reason, act.at());
    act.covers(u"equipment_withdrawal"_s, insert.insertedId());
}

std::vector<HeldItem> loadEquipment(const Database &database)
{
    const std::map<qint64, VersionRow> versions = loadItemVersions(database);
    std::map<qint64, qint64> itemOfCheck;
    std::map<qint64, HeldCheck> checks = loadChecks(database, versions, itemOfCheck);
    std::map<qint64, HeldItem> items;
    for (const auto &[row, version] : versions) {
        items[version.item].id = version.item;
        items[version.item].item = version.content;
        items[version.item].versions.push_back({version.from, version.content});
    }
    for (auto &[id, check] : checks)
        items[itemOfCheck[id]].checks.push_back(std::move(check));
    std::vector<HeldItem> all;
    for (auto &[id, held] : items)
        all.push_back(std::move(held));
    return all;
}

} // namespace plateau::notebook
