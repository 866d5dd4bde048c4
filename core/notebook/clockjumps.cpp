// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/clockjumps.h"

#include "core/assay/label.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

constexpr double msPerSecond = 1000;

std::vector<qint64> runsOnBench(const Database &database)
{
    Statement query(database, u"SELECT id FROM run WHERE id NOT IN (SELECT run FROM decision "
                              "WHERE id NOT IN (SELECT decision FROM reopening)) ORDER BY id"_s);
    query.run();
    std::vector<qint64> runs;
    while (query.next())
        runs.push_back(query.integer(0));
    return runs;
}

} // namespace

void storeClockJump(Act &act, qint64 shift_ms)
{
    const timing::BootTime boot = act.stamp().boot;
    Statement insert(act.database(), u"INSERT INTO clock_jump (shift_ms, person, at_utc, at_offset_min, "
                                     "boot_id, boot_ms) VALUES (?, ?, ?, ?, ?, ?)"_s);
    insert.run(shift_ms, act.person(), act.at(), boot.id, boot.ms);
    const qint64 jump = insert.insertedId();
    act.covers(u"clock_jump"_s, jump);
    Statement insertRun(act.database(), u"INSERT INTO clock_jump_run (jump, run) VALUES (?, ?)"_s);
    for (const qint64 run : runsOnBench(act.database())) {
        insertRun.run(jump, run);
        act.covers(u"clock_jump_run"_s, insertRun.insertedId());
    }
    act.note(u"%1%2 s"_s.arg(shift_ms > 0 ? u"+"_s : QString(),
                             assay::shown(static_cast<double>(shift_ms) / msPerSecond)));
}

std::vector<ClockJump> loadClockJumps(const Database &database, RunId run)
{
    Statement query(database,
                    u"SELECT shift_ms, person, at_utc, at_offset_min FROM clock_jump_run JOIN "
                    "clock_jump ON clock_jump.id = clock_jump_run.jump WHERE clock_jump_run.run = ? "
                    "ORDER BY clock_jump.id"_s);
    query.run(run.value);
    std::vector<ClockJump> jumps;
    while (query.next())
        jumps.push_back({query.time(2), query.integer(0), query.text(1)});
    return jumps;
}

} // namespace plateau::notebook
