// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace plateau::planning {

/// Operations that every tube goes through, in units of time (5 s or 1 s), everything whole.
///
/// With all tubes one interval apart, two operations of one tube, D apart, meet on some pair of tubes unless
/// D modulo the interval lies in [length of the earlier, interval - length of the later], or D is so large
/// that the last tube is through with the earlier when the first comes to the later.
struct Sequence {
    struct Link {
        /// How long the hands are at the operation, rounded up; at least 1.
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

    /// From the start of an operation on the first tube to its end on the last.
    int through(std::size_t operation, int interval) const
    {
        return (tubes - 1) * interval + links[operation].length;
    }
};

/// The smallest distance from the start of the earlier operation to that of the later, at least `apart`, at
/// which they do not meet.
int nextApart(const Sequence &sequence, int interval, std::size_t earlier, std::size_t later, int apart);
/// The largest one, at most `apart`; negative where there is none.
int lastApart(const Sequence &sequence, int interval, std::size_t earlier, std::size_t later, int apart);

/// What every schedule at one interval has to keep between the starts of the operations of one tube.
class Distances
{
public:
    /// Nothing where no schedule can.
    static std::optional<Distances> of(const Sequence &sequence, int interval);

    /// Largest value of the second operation's start less the first's, whichever comes first in the sequence;
    /// unlimited for none.
    int largest(std::size_t from, std::size_t to) const { return m_largest[from * m_count + to]; }
    int smallest(std::size_t from, std::size_t to) const { return -largest(to, from); }
    static constexpr int unlimited = 1000000000;

private:
    explicit Distances(const Sequence &sequence);
    void limit(std::size_t from, std::size_t to, int value);
    bool close();
    void keepApart(const Sequence &sequence, int interval);
    void keepRoom(const Sequence &sequence, int interval);

    std::size_t m_count;
    std::vector<int> m_largest;
    bool m_changed = false;
};

} // namespace plateau::planning
