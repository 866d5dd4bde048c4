// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <cstddef>
#include <optional>
#include <set>
#include <vector>

namespace plateau::planning {

/// Operations that every tube goes through, in units of time (5 s or 1 s), everything whole.
struct Sequence {
    struct Link {
        /// How long the hands are at the operation, rounded up.
        int length = 0;
        /// From its start to the start of the next; latest absent: whenever.
        int soonest = 0;
        std::optional<int> latest;
    };
    std::vector<Link> links;
    int tubes = 0;
    /// By operation, then unit of time from 0 on: whether it may start there as far as other racks go. Beyond
    /// the end it may. Empty: nothing else to do.
    std::vector<std::vector<bool>> handsFree;
    int earliestStart = 0;
};

/// Finds starts of the first tube's operations at which, with all tubes one interval apart, no two operations
/// on any tubes overlap.
///
/// Two operations i before j of one tube, D apart, meet on some pair of tubes unless D modulo the interval
/// lies in [length i, interval - length j], or D is so large that the last tube has left i when the first
/// comes to j. So whether an end can be completed depends on the earlier operations only by where they lie
/// within the interval and when their tubes are through; ends that could not be completed are remembered by
/// that.
class OffsetSearch
{
public:
    /// latestLast: latest start of the last operation of the first tube.
    OffsetSearch(const Sequence &sequence, int interval, std::optional<int> latestLast);

    /// The first in lexicographic order; nothing where there is none.
    std::optional<std::vector<int>> find();

private:
    bool complete(std::size_t operation);
    bool choose(std::size_t operation, int from, int to);
    int firstFree(std::size_t operation, int from) const;
    int clearOf(std::size_t earlier, std::size_t operation, int start) const;
    bool handsFreeFor(std::size_t operation, int start) const;
    /// When the last tube has left it.
    int throughAt(std::size_t operation) const;
    int latestChoice(std::size_t operation) const;
    std::vector<int> situation(std::size_t operation) const;

    const Sequence &m_sequence;
    int m_interval;
    std::optional<int> m_latestLast;
    /// When no other rack is in the way any more.
    int m_benchFree = 0;
    /// Shortest and longest time from each operation's start to the last one's, the longest up to where a
    /// link has no latest moment.
    std::vector<int> m_toLast;
    std::vector<int> m_reach;
    std::vector<int> m_start;
    std::set<std::vector<int>> m_hopeless;
};

/// Whether some operations that cannot but overlap in time need more of every interval than there is of it.
bool isOverfull(const Sequence &sequence, int interval);

} // namespace plateau::planning
