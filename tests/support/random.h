// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <random>
#include <span>
#include <string>
#include <vector>

namespace plateau::test {

/// Reproducible chance: the same seed gives the same values with every standard library, which the
/// distributions of <random> do not.
class Random
{
public:
    explicit Random(unsigned seed)
        : m_engine(seed)
    {
    }

    /// Uniform in [0, 1).
    double unit() { return static_cast<double>(m_engine() >> 5) / 134217728.0; }
    double between(double lower, double upper) { return lower + (upper - lower) * unit(); }
    /// Uniform in the logarithm; both above 0.
    double magnitude(double lower, double upper) { return lower * std::pow(upper / lower, unit()); }
    /// From lower to upper, both included.
    int whole(int lower, int upper)
    {
        return lower + static_cast<int>(unit() * (static_cast<double>(upper) - lower + 1));
    }
    bool chance(double probability = 0.5) { return unit() < probability; }
    template <class T> const T &oneOf(std::span<const T> choices)
    {
        return choices[static_cast<std::size_t>(whole(0, static_cast<int>(choices.size()) - 1))];
    }
    template <class T> const T &oneOf(const std::vector<T> &choices)
    {
        return oneOf(std::span<const T>(choices));
    }
    template <class T> void shuffle(std::vector<T> &items)
    {
        for (std::size_t i = items.size(); i > 1; --i)
            std::swap(items[i - 1], items[static_cast<std::size_t>(whole(0, static_cast<int>(i) - 1))]);
    }

private:
    std::mt19937 m_engine;
};

/// Calls property(random) for the seeds 1 to count, up to the first that fails, whose seed the message names.
template <class Property> void forSeeds(unsigned count, Property property)
{
    for (unsigned seed = 1; seed <= count; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Random random(seed);
        property(random);
        if (::testing::Test::HasFailure())
            return;
    }
}

} // namespace plateau::test
