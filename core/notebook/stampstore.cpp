// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/stampstore.h"

#include "core/notebook/runstore.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

void store(Act &act, std::optional<qint64> reading, std::optional<qint64> mark)
{
    const timing::BootTime boot = act.stamp().boot;
    Statement insert(act.database(),
                     u"INSERT INTO bench_stamp (reading, mark, boot_id, boot_ms) VALUES (?, ?, ?, ?)"_s);
    insert.run(reading, mark, boot.id, boot.ms);
    act.covers(u"bench_stamp"_s, insert.insertedId());
}

constexpr auto addedWord = "added"_L1;
constexpr auto readWord = "read"_L1;

} // namespace

void storeStamp(Act &act, ReadingId reading)
{
    store(act, reading.value, {});
}

void storeStamp(Act &act, MarkId mark)
{
    store(act, {}, mark.value);
}

void storeTimes(Act &act, RunId run, const std::vector<run::Tube> &tubes)
{
    Statement insert(act.database(),
                     u"INSERT INTO tube_time (tube, kind, name, at_min) VALUES (?, ?, ?, ?)"_s);
    for (std::size_t tube = 0; tube < tubes.size(); ++tube) {
        const auto storeAll = [&](QLatin1StringView kind, const std::map<QString, double> &times_min) {
            for (const auto &[name, time_min] : times_min) {
                insert.run(tubeRow(act.database(), run, static_cast<int>(tube)), QString(kind), name,
                           time_min);
                act.covers(u"tube_time"_s, insert.insertedId());
            }
        };
        storeAll(addedWord, tubes[tube].addedAt_min);
        storeAll(readWord, tubes[tube].readAt_min);
    }
}

void loadTimes(const Database &database, RunId run, std::vector<run::Tube> &tubes)
{
    Statement query(database, u"SELECT tube.position, kind, tube_time.name, at_min FROM tube_time JOIN tube "
                              "ON tube.id = tube_time.tube WHERE tube.run = ?"_s);
    query.run(run.value);
    while (query.next()) {
        const auto place = static_cast<std::size_t>(query.integer(0));
        if (place >= tubes.size()) // of a file that was changed; verify says so
            continue;
        run::Tube &tube = tubes[place];
        auto &times_min = query.text(1) == addedWord ? tube.addedAt_min : tube.readAt_min;
        times_min[query.text(2)] = query.real(3);
    }
}

} // namespace plateau::notebook
