// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/dilutionmarkstore.h"

#include "core/notebook/sentence.h"
#include "core/notebook/words.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

qint64 newestMarkInATube(const Database &database, RunId run)
{
    Statement query(database, u"SELECT coalesce(max(pipetting_mark.id), 0) FROM tube JOIN pipetting_mark ON "
                              "pipetting_mark.tube = tube.id WHERE tube.run = ?"_s);
    query.run(run.value);
    return query.next() ? query.integer(0) : 0;
}

} // namespace

const StoredDilutionMark *doneMark(const std::vector<StoredDilutionMark> &marks, const DilutionPlace &place)
{
    const auto last = std::find_if(marks.rbegin(), marks.rend(), [&place](const StoredDilutionMark &mark) {
        return mark.place == place;
    });
    return last != marks.rend() && last->kind == MarkKind::Done ? &*last : nullptr;
}

qint64 dilutionRow(const Database &database, RunId run, const DilutionPlace &place)
{
    Statement query(database, u"SELECT dilution.id FROM sample JOIN dilution ON dilution.sample = sample.id "
                              "WHERE sample.run = ? AND sample.position = ? AND dilution.position = ?"_s);
    query.run(run.value, place.sample, place.step);
    if (!query.next())
        throw Failure(Failure::Kind::Refused,
                      Sentence::tr("Run %1 has no sample %3 with a dilution step %2; nothing was stored.")
                          .arg(run.value)
                          .arg(place.step + 1)
                          .arg(place.sample + 1));
    return query.integer(0);
}

void storeDilutionMark(Act &act, RunId run, qint64 dilution, MarkKind kind)
{
    Statement insert(act.database(),
                     u"INSERT INTO dilution_mark (dilution, kind, last_mark, person, at_utc, at_offset_min) "
                     "VALUES (?, ?, ?, ?, ?, ?)"_s);
    insert.run(dilution, markWord(kind), newestMarkInATube(act.database(), run), act.person(), act.at());
    act.covers(u"dilution_mark"_s, insert.insertedId());
}

std::vector<StoredDilutionMark> loadDilutionMarks(const Database &database, RunId run)
{
    Statement query(database,
                    u"SELECT dilution_mark.id, dilution_mark.kind, sample.position, dilution.position, last_mark, "
                    "person, at_utc, at_offset_min FROM sample JOIN dilution ON dilution.sample = sample.id "
                    "JOIN dilution_mark ON dilution_mark.dilution = dilution.id WHERE sample.run = ? "
                    "ORDER BY dilution_mark.id"_s);
    query.run(run.value);
    std::vector<StoredDilutionMark> marks;
    while (query.next())
        marks.push_back({{query.integer(0)},
                         markKindOf(query.text(1)),
                         {int(query.integer(2)), int(query.integer(3))},
                         {query.integer(4)},
                         query.text(5),
                         query.time(6)});
    return marks;
}

} // namespace plateau::notebook
