// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/schedule.h"

#include "core/planning/offsetsearch.h"

#include <algorithm>

namespace plateau::planning {

namespace {

constexpr int shortestFreeSpan_s = 60;

int unitsUp(int time_s, int unit_s)
{
    return time_s <= 0 ? 0 : (time_s + unit_s - 1) / unit_s;
}

/// From the start of an operation to the start of the next.
int soonest_s(const Operation &operation)
{
    return operation.handling_s + operation.smallestWait_s;
}

std::optional<int> latest_s(const Operation &operation)
{
    if (!operation.largestWait_s)
        return std::nullopt;
    return operation.handling_s + *operation.largestWait_s;
}

/// The grid, unless a wait is so narrow that it holds none of its lines.
int unitOf(const std::vector<Operation> &operations)
{
    const bool tight = std::any_of(operations.begin(), operations.end(), [](const Operation &operation) {
        const auto latest = latest_s(operation);
        return latest && unitsUp(soonest_s(operation), scheduleGrid_s) * scheduleGrid_s > *latest;
    });
    return tight ? 1 : scheduleGrid_s;
}

Sequence sequenceOf(const std::vector<Operation> &operations, int tubes, int unit_s)
{
    Sequence sequence;
    sequence.tubes = tubes;
    for (const Operation &operation : operations) {
        Sequence::Link link{unitsUp(operation.handling_s, unit_s), unitsUp(soonest_s(operation), unit_s), {}};
        if (const auto latest = latest_s(operation))
            link.latest = *latest / unit_s;
        sequence.links.push_back(link);
    }
    sequence.links.back().latest.reset();
    return sequence;
}

/// Where the hands may take up an operation of that length.
std::vector<bool> startsBeside(const std::vector<Span> &busy, int handling_s, int unit_s)
{
    int end_s = 0;
    for (const Span &span : busy)
        end_s = std::max(end_s, span.end_s);
    std::vector<bool> free(static_cast<std::size_t>(unitsUp(end_s, unit_s)), true);
    for (const Span &span : busy) {
        const int first = std::max(0, span.start_s - handling_s + 1);
        for (int start = unitsUp(first, unit_s); start * unit_s < span.end_s; ++start)
            free[static_cast<std::size_t>(start)] = false;
    }
    return free;
}

/// The parts between links that may take any time: they never get into each other's way, since each may be
/// put off until all tubes are through with the one before.
std::vector<Sequence> partsOf(const Sequence &sequence)
{
    std::vector<Sequence> parts;
    bool begins = true;
    for (const Sequence::Link &link : sequence.links) {
        if (begins)
            parts.push_back({{}, sequence.tubes, {}, 0});
        parts.back().links.push_back(link);
        begins = !link.latest;
    }
    return parts;
}

/// One procedure on one bench, interval by interval.
class Planning
{
public:
    Planning(const Procedure &procedure, int tubes, const Bench &bench)
        : m_operations(procedure.timed)
        , m_bench(bench)
        , m_unit_s(unitOf(procedure.timed))
        , m_sequence(sequenceOf(procedure.timed, tubes, m_unit_s))
        , m_parts(partsOf(m_sequence))
    {
        m_sequence.earliestStart = unitsUp(bench.earliestStart_s, m_unit_s);
        if (bench.busy.empty())
            return;
        for (const Operation &operation : m_operations)
            m_sequence.handsFree.push_back(startsBeside(bench.busy, operation.handling_s, m_unit_s));
    }

    struct Found {
        int interval_s = 0;
        std::vector<int> start_s;
    };

    std::optional<Found> find() const
    {
        const int step = scheduleGrid_s / m_unit_s;
        int longest = m_sequence.links.back().length;
        int length = 1;
        for (const Sequence::Link &link : m_sequence.links) {
            length = std::max(length, link.length);
            longest += link.soonest;
        }
        // At the longest interval one tube is finished before the next begins.
        for (int interval = unitsUp(length, step) * step; interval < longest + step; interval += step) {
            const auto latest = latestLast(interval);
            if (latest && *latest < 0)
                break;
            if (auto starts = startsAt(interval, latest))
                return inSeconds(interval, *starts);
        }
        return std::nullopt;
    }

private:
    std::optional<std::vector<int>> startsAt(int interval, std::optional<int> latest) const
    {
        const auto distances = Distances::of(m_sequence, interval);
        if (!distances || !partsFit(interval))
            return std::nullopt;
        OffsetSearch beside(m_sequence, *distances, interval, latest);
        auto starts = beside.find();
        if (starts || !beside.gaveUp() || m_sequence.handsFree.empty())
            return starts;
        // Too tangled to be worked beside the other rack: after it.
        Sequence behind = m_sequence;
        for (const std::vector<bool> &free : m_sequence.handsFree)
            behind.earliestStart = std::max(behind.earliestStart, static_cast<int>(free.size()));
        behind.handsFree.clear();
        return OffsetSearch(behind, *distances, interval, latest).find();
    }

    std::optional<int> latestLast(int interval) const
    {
        if (!m_bench.latestEnd_s)
            return std::nullopt;
        const int left_s = *m_bench.latestEnd_s - (m_sequence.tubes - 1) * interval * m_unit_s -
                           m_operations.back().handling_s;
        return left_s < 0 ? -1 : left_s / m_unit_s;
    }

    bool partsFit(int interval) const
    {
        // A single part on an empty bench is what is searched anyway.
        if (m_parts.size() == 1 && m_sequence.handsFree.empty() && !m_bench.latestEnd_s)
            return true;
        return std::all_of(m_parts.begin(), m_parts.end(), [interval](const Sequence &part) {
            const auto distances = Distances::of(part, interval);
            return distances && OffsetSearch(part, *distances, interval, {}).find();
        });
    }

    Found inSeconds(int interval, const std::vector<int> &starts) const
    {
        Found found{m_sequence.tubes == 1 ? 0 : interval * m_unit_s, {}};
        for (const int start : starts)
            found.start_s.push_back(start * m_unit_s);
        return found;
    }

    const std::vector<Operation> &m_operations;
    const Bench &m_bench;
    int m_unit_s;
    Sequence m_sequence;
    std::vector<Sequence> m_parts;
};

std::vector<Task> tasksOf(const Procedure &procedure, int tubes, const Planning::Found &found)
{
    std::vector<Task> tasks;
    for (int tube = 0; tube < tubes; ++tube) {
        for (std::size_t operation = 0; operation < procedure.timed.size(); ++operation) {
            const int start_s = found.start_s[operation] + tube * found.interval_s;
            tasks.push_back({tube, static_cast<int>(operation), start_s,
                             start_s + procedure.timed[operation].handling_s});
        }
    }
    std::sort(tasks.begin(), tasks.end(), [](const Task &one, const Task &other) {
        return std::tie(one.start_s, one.end_s, one.tube) < std::tie(other.start_s, other.end_s, other.tube);
    });
    return tasks;
}

void noteReadings(const Procedure &procedure, Schedule &schedule)
{
    bool first = true;
    for (const Task &task : schedule.tasks) {
        if (procedure.timed[static_cast<std::size_t>(task.operation)].kind != Operation::Kind::Read)
            continue;
        if (first)
            schedule.firstReading_s = task.start_s;
        schedule.lastReading_s = std::max(schedule.lastReading_s, task.end_s);
        first = false;
    }
}

} // namespace

std::optional<Schedule> scheduleOf(const Procedure &procedure, int tubes, const Bench &bench)
{
    if (tubes < 1 || procedure.timed.empty())
        return std::nullopt;
    const auto found = Planning(procedure, tubes, bench).find();
    if (!found)
        return std::nullopt;
    Schedule schedule;
    schedule.interval_s = found->interval_s;
    for (const int start_s : found->start_s)
        schedule.offset_s.push_back(start_s - found->start_s.front());
    schedule.tasks = tasksOf(procedure, tubes, *found);
    for (const Operation &operation : procedure.setUp)
        schedule.setUp_s += tubes * operation.handling_s;
    noteReadings(procedure, schedule);
    return schedule;
}

std::vector<Span> freeBetween(std::vector<Span> taken)
{
    std::ranges::sort(taken, {}, &Span::start_s);
    std::vector<Span> free;
    int until_s = taken.empty() ? 0 : taken.front().start_s;
    for (const Span &span : taken) {
        if (span.start_s - until_s >= shortestFreeSpan_s)
            free.push_back({until_s, span.start_s});
        until_s = std::max(until_s, span.end_s);
    }
    return free;
}

int largestRack(const Procedure &procedure, int limit, const Bench &bench)
{
    // A smaller rack has the schedule of the larger one, less its last tubes.
    int works = 0;
    int fails = std::max(0, limit) + 1;
    while (fails - works > 1) {
        const int tubes = works + (fails - works) / 2;
        (scheduleOf(procedure, tubes, bench) ? works : fails) = tubes;
    }
    return works;
}

std::vector<int> splitOf(int tubes, int overheadTubes, int largest, int together)
{
    const int group = std::max(1, together);
    const int room = (largest - std::max(0, overheadTubes)) / group;
    if (tubes < 1 || room < 1)
        return {};
    const int groups = (tubes + group - 1) / group;
    const int racks = (groups + room - 1) / room;
    std::vector<int> split;
    int left = tubes;
    for (int rack = 0; rack < racks; ++rack) {
        const int share = groups / racks + (rack < groups % racks ? 1 : 0);
        split.push_back(std::min(left, share * group));
        left -= split.back();
    }
    return split;
}

} // namespace plateau::planning
