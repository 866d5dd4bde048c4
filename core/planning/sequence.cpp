// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/sequence.h"

#include <algorithm>

namespace plateau::planning {

int nextApart(const Sequence &sequence, int interval, std::size_t earlier, std::size_t later, int apart)
{
    const int through = sequence.through(earlier, interval);
    const int before = sequence.links[earlier].length;
    const int after = sequence.links[later].length;
    if (apart >= through)
        return apart;
    if (before + after > interval)
        return through;
    const int phase = apart % interval;
    if (phase < before)
        return apart + before - phase;
    if (phase > interval - after)
        return apart + interval - phase + before;
    return apart;
}

int lastApart(const Sequence &sequence, int interval, std::size_t earlier, std::size_t later, int apart)
{
    const int before = sequence.links[earlier].length;
    const int after = sequence.links[later].length;
    if (apart >= sequence.through(earlier, interval))
        return apart;
    if (before + after > interval)
        return -1;
    const int phase = apart % interval;
    if (phase < before)
        return apart - phase - after;
    return apart - std::max(0, phase - (interval - after));
}

Distances::Distances(const Sequence &sequence)
    : m_count(sequence.links.size())
    , m_largest(m_count * m_count, unlimited)
{
    for (std::size_t i = 0; i < m_count; ++i) {
        limit(i, i, 0);
        if (i + 1 == m_count)
            break;
        limit(i + 1, i, -sequence.links[i].soonest);
        if (sequence.links[i].latest)
            limit(i, i + 1, *sequence.links[i].latest);
    }
}

std::optional<Distances> Distances::of(const Sequence &sequence, int interval)
{
    // Each round may let another pair be drawn closer; what is left after some is for the search.
    constexpr int rounds = 20;
    Distances distances(sequence);
    for (int round = 0; round < rounds; ++round) {
        if (!distances.close())
            return std::nullopt;
        distances.m_changed = false;
        distances.keepApart(sequence, interval);
        distances.keepRoom(sequence, interval);
        if (!distances.m_changed)
            return distances;
    }
    if (!distances.close())
        return std::nullopt;
    return distances;
}

void Distances::limit(std::size_t from, std::size_t to, int value)
{
    int &largest = m_largest[from * m_count + to];
    m_changed = m_changed || value < largest;
    largest = std::min(largest, value);
}

/// Draws the conclusions from limits over one another (shortest paths); false where they contradict.
bool Distances::close()
{
    for (std::size_t by = 0; by < m_count; ++by) {
        for (std::size_t from = 0; from < m_count; ++from) {
            if (largest(from, by) == unlimited)
                continue;
            for (std::size_t to = 0; to < m_count; ++to) {
                if (largest(by, to) != unlimited)
                    limit(from, to, largest(from, by) + largest(by, to));
            }
        }
    }
    for (std::size_t i = 0; i < m_count; ++i) {
        if (largest(i, i) < 0)
            return false;
    }
    return true;
}

void Distances::keepApart(const Sequence &sequence, int interval)
{
    for (std::size_t earlier = 0; earlier < m_count; ++earlier) {
        for (std::size_t later = earlier + 1; later < m_count; ++later) {
            limit(later, earlier, -nextApart(sequence, interval, earlier, later, smallest(earlier, later)));
            if (largest(earlier, later) != unlimited)
                limit(earlier, later, lastApart(sequence, interval, earlier, later, largest(earlier, later)));
        }
    }
}

/// Operations in a row of which some two must not run at the same time, because all of them are more than an
/// interval holds: then the last begins when all tubes are through with the first.
void Distances::keepRoom(const Sequence &sequence, int interval)
{
    for (std::size_t last = 0; last < m_count; ++last) {
        int needed = 0;
        for (std::size_t first = last + 1; first-- > 0;) {
            needed += sequence.links[first].length;
            if (needed > interval && first != last)
                limit(last, first, -sequence.through(first, interval));
        }
    }
}

} // namespace plateau::planning
