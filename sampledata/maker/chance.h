// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QtGlobal>

#include <array>
#include <cstddef>

namespace plateau::sampledata {

/// Numbers by chance that are the same on every machine: xoshiro256** (Blackman and Vigna, prng.di.unimi.it;
/// from memory), seeded by splitmix64. Nothing of it rests on the distributions of the standard library,
/// which every library makes in its own way. Each stream of a seed is independent of the others.
class Chance
{
public:
    Chance(quint64 seed, quint64 stream);

    quint64 next();
    /// Both ends belong to it.
    int whole(int least, int most);
    double part(double least, double most);
    /// Around zero, nearly normal: the sum of twelve even parts, never beyond six deviations.
    double scatter(double deviation);
    bool happens(double probability);
    template <class Range> const auto &oneOf(const Range &range)
    {
        return *(range.begin() + whole(0, int(std::size(range)) - 1));
    }

private:
    std::array<quint64, 4> m_state;
};

} // namespace plateau::sampledata
