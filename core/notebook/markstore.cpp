// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/markstore.h"

#include "core/notebook/runstore.h"
#include "core/notebook/words.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

template <class Fits> const StoredMark *lastOf(const std::vector<StoredMark> &marks, Fits fits)
{
    const auto found = std::find_if(marks.rbegin(), marks.rend(), fits);
    return found == marks.rend() ? nullptr : &*found;
}

StoredMark markOf(const Statement &row)
{
    StoredMark mark;
    mark.id = {row.integer(0)};
    mark.dose = {int(row.integer(1)), row.text(3), row.integer(4) != 0};
    mark.kind = markKindOf(row.text(2));
    mark.volume_mL = row.real(5);
    mark.planned_mL = row.real(6);
    if (!row.isNull(7))
        mark.lot = LotId{row.integer(7)};
    mark.lotName = row.text(8);
    if (!row.isNull(9))
        mark.lotExpires = QDate::fromString(row.text(9), Qt::ISODate);
    mark.pipette = row.text(10);
    mark.note = row.text(11);
    mark.person = row.text(12);
    mark.at = row.time(13);
    mark.order = row.integer(15);
    mark.boot = {row.text(16), row.integer(17)};
    return mark;
}

} // namespace

const StoredMark *doneMark(const std::vector<StoredMark> &marks, const Dose &dose)
{
    const StoredMark *last = lastOf(marks, [&](const StoredMark &mark) { return mark.dose == dose; });
    return last && last->kind == MarkKind::Done ? last : nullptr;
}

const StoredMark *spoiltMark(const std::vector<StoredMark> &marks, int tube)
{
    const Dose whole{tube, {}, false};
    const StoredMark *last = lastOf(marks, [&](const StoredMark &mark) { return mark.dose == whole; });
    return last && last->kind == MarkKind::Spoilt ? last : nullptr;
}

MarkId storeMark(Act &act, RunId run, const StoredMark &mark, std::optional<qint64> lotVersion)
{
    const bool done = mark.kind == MarkKind::Done;
    const auto component = mark.dose.component.isEmpty() ? std::nullopt : std::optional(mark.dose.component);
    Statement insert(act.database(),
                     u"INSERT INTO pipetting_mark (tube, kind, component, spike, volume_mL, planned_mL, "
                     "lot_version, pipette, note, person, at_utc, at_offset_min) "
                     "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(tubeRow(act.database(), run, mark.dose.tube), markWord(mark.kind), component,
               int(mark.dose.spike), done ? std::optional(mark.volume_mL) : std::nullopt,
               done ? std::optional(mark.planned_mL) : std::nullopt, lotVersion, mark.pipette, mark.note,
               act.person(), act.at());
    const MarkId id{insert.insertedId()};
    act.covers(u"pipetting_mark"_s, id.value);
    return id;
}

void storeLotDay(Act &act, MarkId mark, const QDate &lastGood)
{
    Statement insert(act.database(), u"INSERT INTO mark_lot_day (mark, day) VALUES (?, ?)"_s);
    insert.run(mark.value, lastGood.toString(Qt::ISODate));
    act.covers(u"mark_lot_day"_s, insert.insertedId());
}

std::vector<StoredMark> loadMarks(const Database &database, RunId run)
{
    Statement query(
        database,
        u"SELECT pipetting_mark.id, tube.position, kind, component, spike, volume_mL, planned_mL, "
        "lot_version.lot, lot_version.name, coalesce(mark_lot_day.day, lot_version.expires), pipette, note, pipetting_mark.person, "
        "pipetting_mark.at_utc, pipetting_mark.at_offset_min, coalesce(bench_stamp.id, 0), boot_id, boot_ms "
        "FROM pipetting_mark "
        "JOIN tube ON tube.id = pipetting_mark.tube "
        "LEFT JOIN bench_stamp ON bench_stamp.mark = pipetting_mark.id "
        "LEFT JOIN lot_version ON lot_version.id = pipetting_mark.lot_version "
        "LEFT JOIN mark_lot_day ON mark_lot_day.mark = pipetting_mark.id "
        "WHERE tube.run = ? ORDER BY pipetting_mark.id"_s);
    query.run(run.value);
    std::vector<StoredMark> marks;
    while (query.next())
        marks.push_back(markOf(query));
    return marks;
}

} // namespace plateau::notebook
