// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/sequence.h"

#include <set>

namespace plateau::planning {

/// Finds starts of the first tube's operations at which, with all tubes one interval apart, no two operations
/// on any tubes overlap.
///
/// Whether a beginning can be completed depends on the operations placed only by where they lie within the
/// interval and when their tubes are through; beginnings that could not be completed are remembered by that.
class OffsetSearch
{
public:
    /// So many beginnings are tried in vain, then the search is given up: a plan has to follow the keys.
    /// Methods as they are need some dozens; a chain of many operations, none of which may be put off, can
    /// need millions.
    static constexpr std::size_t mostInVain = 10000;

    /// latestLast: latest start of the last operation of the first tube. What it refers to must stay.
    OffsetSearch(const Sequence &sequence, const Distances &distances, int interval,
                 std::optional<int> latestLast);

    /// The first in lexicographic order; nothing where there is none.
    std::optional<std::vector<int>> find();
    /// Nothing was found, but there may be something.
    bool gaveUp() const { return m_hopeless.size() >= mostInVain; }

private:
    bool complete(std::size_t operation);
    bool choose(std::size_t operation, int from, int to);
    int firstFree(std::size_t operation, int from) const;
    bool handsFreeFor(std::size_t operation, int start) const;
    /// When the last tube has left it.
    int throughAt(std::size_t operation) const;
    int soonestChoice(std::size_t operation) const;
    int latestChoice(std::size_t operation) const;
    std::vector<int> situation(std::size_t operation) const;

    const Sequence &m_sequence;
    const Distances &m_distances;
    int m_interval;
    std::optional<int> m_latestLast;
    /// When no other rack is in the way any more.
    int m_benchFree = 0;
    /// From each operation's start to the last one's before a link without a latest moment, at most.
    std::vector<int> m_reach;
    std::vector<int> m_start;
    std::set<std::vector<int>> m_hopeless;
};

} // namespace plateau::planning
