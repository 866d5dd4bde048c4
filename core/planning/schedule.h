// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/procedure.h"

#include <QString>

#include <optional>
#include <vector>

namespace plateau::planning {

/// One operation on one tube, seconds from the start of the first tube's first timed operation.
struct Task {
    int tube = 0;
    int operation = 0;
    int start_s = 0;
    int end_s = 0;
    bool operator==(const Task &) const = default;
};

struct Span {
    int start_s = 0;
    int end_s = 0;
    bool operator==(const Span &) const = default;
};

/// Every tube goes through the same operations at the same times after its own start, and tubes start one
/// interval apart; the analyst and the one cuvette holder do one task at a time.
struct Schedule {
    /// 0 for a single tube.
    int interval_s = 0;
    /// Of each operation after its tube's start.
    std::vector<int> offset_s;
    /// In the order of time.
    std::vector<Task> tasks;
    /// Of all tubes together; over before the first task. A second rack is set up before the first one
    /// starts.
    int setUp_s = 0;
    /// When the first reading begins, and when the last one is done; 0 where nothing is read.
    int firstReading_s = 0;
    int lastReading_s = 0;
    bool operator==(const Schedule &) const = default;
};

/// Intervals are multiples of it; so are offsets, but where a wait has room for none they are whole seconds.
inline constexpr int scheduleGrid_s = 5;

/// Where a schedule has to fit in.
struct Bench {
    /// What the hands do already (another rack), in seconds of the same clock; in any order.
    std::vector<Span> busy;
    /// The rack starts at or after it, and its tasks are of the same clock.
    int earliestStart_s = 0;
    /// Its last task ends at or before it.
    std::optional<int> latestEnd_s;
};

/// The schedule with the smallest start interval that keeps every tube inside its waits, and of those the
/// earliest start and the earliest offsets, operation by operation. Nothing where there are no tubes or
/// nothing is timed, and where the rack is not done by the latest end. Without a latest end there always is
/// one: at the worst one tube after the other, and behind what the hands do already.
///
/// Where more than some five operations hang together by waits with an end, an interval may be passed over
/// that would do (OffsetSearch::mostInVain), and with it a rack that would just be done by the latest end;
/// what is returned is kept by every tube all the same.
std::optional<Schedule> scheduleOf(const Procedure &procedure, int tubes, const Bench &bench = {});

/// When nothing of that is done for at least a minute, between the first start and the last end.
std::vector<Span> freeBetween(std::vector<Span> taken);

/// The largest rack that has a schedule, at most limit; 0 where not even one tube has.
int largestRack(const Procedure &procedure, int limit, const Bench &bench = {});

/// How many tubes each rack takes besides the overheadTubes that every one needs of its own (blanks,
/// standards): as few racks as possible, filled alike. together: so many tubes (the replicates of a sample)
/// stay in one rack. Empty where a rack of the largest size has no room for any, or there are none.
std::vector<int> splitOf(int tubes, int overheadTubes, int largest, int together = 1);

/// Every tube that a schedule leaves outside its waits or leaves out, and every two tasks at the same time,
/// as sentences; empty for a good one. For tests and for schedules that were changed by hand.
std::vector<QString> faultsOf(const Schedule &schedule, const Procedure &procedure, int tubes,
                              const std::vector<Span> &busy = {});

} // namespace plateau::planning
