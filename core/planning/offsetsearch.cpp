// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/offsetsearch.h"

#include <algorithm>

namespace plateau::planning {

OffsetSearch::OffsetSearch(const Sequence &sequence, const Distances &distances, int interval,
                           std::optional<int> latestLast)
    : m_sequence(sequence)
    , m_distances(distances)
    , m_interval(interval)
    , m_latestLast(latestLast)
    , m_reach(sequence.links.size())
    , m_start(sequence.links.size())
{
    for (const std::vector<bool> &starts : sequence.handsFree)
        m_benchFree = std::max(m_benchFree, static_cast<int>(starts.size()));
    for (std::size_t i = sequence.links.size() - 1; i-- > 0;) {
        if (sequence.links[i].latest)
            m_reach[i] = m_reach[i + 1] + distances.largest(i, i + 1);
    }
}

std::optional<std::vector<int>> OffsetSearch::find()
{
    // Where nothing else is to do, a later start is the same search again.
    const int latestStart = std::max(m_sequence.earliestStart, m_benchFree);
    if (choose(0, m_sequence.earliestStart, latestStart))
        return m_start;
    return std::nullopt;
}

bool OffsetSearch::choose(std::size_t operation, int from, int to)
{
    if (m_latestLast)
        to = std::min(to, *m_latestLast - m_distances.smallest(operation, m_start.size() - 1));
    for (int start = firstFree(operation, from); start <= to; start = firstFree(operation, start + 1)) {
        m_start[operation] = start;
        if (complete(operation + 1))
            return true;
        if (gaveUp())
            break;
    }
    return false;
}

/// Places this operation and those after it.
bool OffsetSearch::complete(std::size_t operation)
{
    if (operation == m_sequence.links.size())
        return true;
    std::vector<int> situation = this->situation(operation - 1);
    if (m_hopeless.contains(situation))
        return false;
    if (choose(operation, soonestChoice(operation), latestChoice(operation)))
        return true;
    if (!gaveUp())
        m_hopeless.insert(std::move(situation));
    return false;
}

int OffsetSearch::soonestChoice(std::size_t operation) const
{
    int soonest = 0;
    for (std::size_t earlier = 0; earlier < operation; ++earlier)
        soonest = std::max(soonest, m_start[earlier] + m_distances.smallest(earlier, operation));
    return soonest;
}

int OffsetSearch::latestChoice(std::size_t operation) const
{
    int latest = Distances::unlimited;
    // When all tubes are through with all that was, and no other rack is left, later is no better.
    int clear = std::max(m_benchFree, soonestChoice(operation));
    for (std::size_t earlier = 0; earlier < operation; ++earlier) {
        if (m_distances.largest(earlier, operation) != Distances::unlimited)
            latest = std::min(latest, m_start[earlier] + m_distances.largest(earlier, operation));
        clear = std::max(clear, throughAt(earlier));
    }
    return std::min(latest, clear);
}

int OffsetSearch::firstFree(std::size_t operation, int from) const
{
    int start = from;
    for (bool moved = true; moved;) {
        moved = false;
        for (std::size_t earlier = 0; earlier < operation; ++earlier) {
            const int clear = m_start[earlier] +
                              nextApart(m_sequence, m_interval, earlier, operation, start - m_start[earlier]);
            moved = moved || clear != start;
            start = clear;
        }
        while (!handsFreeFor(operation, start)) {
            ++start;
            moved = true;
        }
    }
    return start;
}

bool OffsetSearch::handsFreeFor(std::size_t operation, int start) const
{
    if (m_sequence.handsFree.empty())
        return true;
    const std::vector<bool> &starts = m_sequence.handsFree[operation];
    for (int tube = 0; tube < m_sequence.tubes; ++tube, start += m_interval) {
        if (start >= static_cast<int>(starts.size()))
            return true;
        if (!starts[static_cast<std::size_t>(start)])
            return false;
    }
    return true;
}

int OffsetSearch::throughAt(std::size_t operation) const
{
    return m_start[operation] + m_sequence.through(operation, m_interval);
}

std::vector<int> OffsetSearch::situation(std::size_t operation) const
{
    constexpr int past = -1;
    constexpr int throughout = -2;
    const int here = m_start[operation];
    const int next = here + m_sequence.links[operation].soonest;
    std::vector<int> key{static_cast<int>(operation), m_latestLast || here < m_benchFree ? here : past};
    for (std::size_t earlier = 0; earlier <= operation; ++earlier) {
        const int through = throughAt(earlier);
        if (through <= next) {
            key.push_back(past);
            continue;
        }
        key.push_back((here - m_start[earlier]) % m_interval);
        // Behind a link without a latest moment everything finds its place, unless there is a latest end.
        const int reach = m_latestLast ? *m_latestLast : here + m_reach[operation];
        key.push_back(through > reach ? throughout : through - here);
    }
    return key;
}

} // namespace plateau::planning
