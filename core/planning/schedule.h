// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/planning/laboratory.h"

#include <QString>

#include <optional>
#include <vector>

namespace plateau::planning {

/// What the hands do to one tube without putting it down: additions with their mixing, or one reading.
/// All times are whole seconds.
struct Operation {
    enum class Kind { Add, Read } kind = Kind::Add;
    /// Component ids of Add; of Read the reading's name.
    std::vector<QString> names;
    int handling_s = 0;
    /// From the end of this one to the start of the next for the same tube; largest absent: no limit.
    int smallestWait_s = 0;
    std::optional<int> largestWait_s;
    bool operator==(const Operation &) const = default;
};

/// The timed part of a method, from the last addition before its first wait on; and the additions before it,
/// which are made to all tubes in advance.
struct Procedure {
    std::vector<Operation> setUp;
    std::vector<Operation> timed;
};
Procedure procedureOf(const assay::Method &method, const HandlingTimes &handling);

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
    int interval_s = 0;
    /// Of each operation after its tube's start.
    std::vector<int> offset_s;
    /// In the order of time.
    std::vector<Task> tasks;
    int setUp_s = 0;
    int firstReading_s = 0;
    int lastReading_s = 0;
    /// When the hands are free for at least a minute, between the first task and the last.
    std::vector<Span> free;
};

/// Intervals and offsets are tried on this grid.
inline constexpr int scheduleGrid_s = 5;

/// The schedule with the smallest start interval that keeps every tube inside its waits, and of those the
/// earliest offsets, operation by operation. Nothing where no interval up to the longest possible one does.
/// busy: what the hands do already (another rack), in seconds of the same clock; the rack then starts at or
/// after earliestStart_s and tasks are of that clock too.
std::optional<Schedule> scheduleOf(const Procedure &procedure, int tubes, const std::vector<Span> &busy = {},
                                   int earliestStart_s = 0);

/// The largest rack that has a schedule, at most limit; 0 where not even one tube has.
int largestRack(const Procedure &procedure, int limit);

/// How many racks, where every one needs overheadTubes of its own (blanks, standards), and how many of the
/// others each takes.
std::vector<int> splitOf(int tubes, int overheadTubes, int largest);

/// Every tube that a schedule would leave outside its waits, and every two tasks at the same time; empty for
/// a good one. For tests and for schedules that were changed by hand.
std::vector<QString> faultsOf(const Schedule &schedule, const Procedure &procedure, int tubes,
                              const std::vector<Span> &busy = {});

} // namespace plateau::planning
