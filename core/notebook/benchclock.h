// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <set>

namespace plateau::notebook {

/// When things were done at the bench, in minutes on a run's own clock. The clock begins with the first of
/// them, and that of a run which came with times of its own with the run's start; where such a run does not
/// say when it started, nobody knows where later things lie on its clock.
class BenchClock
{
public:
    /// Of what counted when those were the newest. arrivedAt: when the run was put on the bench.
    BenchClock(const run::Run &planned, const QDateTime &arrivedAt,
               const std::vector<StoredReading> &readings, const std::vector<StoredMark> &marks,
               const Seen &newest);

    /// Up to the last of them.
    const timing::Timeline &timeline() const { return m_timeline; }
    /// Nothing for what was not done at the bench, or lies nowhere on the clock.
    std::optional<double> minutesOf(ReadingId reading) const;
    std::optional<double> minutesOf(MarkId mark) const;
    /// Whether it was made at the bench, and did not come with its run.
    bool isOfBench(MarkId mark) const { return m_ofBench.contains(mark); }

private:
    timing::Timeline m_timeline;
    std::map<ReadingId, double> m_readings_min;
    std::map<MarkId, double> m_marks_min;
    std::set<MarkId> m_ofBench;
};

/// Puts addedAt_min and readAt_min into the run, which holds what it came with. A dose is added when it was
/// ticked for the first time since it was not; a reading is read when it was stored for the first time, a
/// series when its last point was.
void placeTimes(run::Run &run, const BenchClock &clock, const std::vector<StoredReading> &readings,
                const std::vector<StoredMark> &marks, const Seen &newest);

/// Nobody knows while planning when a standard will be used: where the run does not say, it is when the first
/// dose that holds it was ticked (the clock's), else when the first reading of a tube that holds it was
/// keyed. clock: nullptr for readings alone, as older programs did it. A reading that came in a file was
/// keyed at no known time.
void placeTimesOfUse(run::Run &run, const assay::Method &method, const BenchClock *clock,
                     const std::vector<StoredReading> &readings, const std::vector<StoredMark> &marks,
                     const Seen &newest);

} // namespace plateau::notebook
