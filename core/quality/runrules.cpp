// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/runrules.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace plateau::quality {

namespace {

/// Looks back from one value; each function gives how many values the pattern that ends there has, or 0.
class Pattern
{
public:
    Pattern(std::span<const double> z, std::size_t last)
        : m_z(z)
        , m_last(last)
    {
    }

    std::size_t lengthOf(RunRule rule) const
    {
        switch (rule) {
        case RunRule::OneBeyond3:
            return std::abs(back(0)) > 3 ? 1 : 0;
        case RunRule::OneBeyond2:
            return std::abs(back(0)) > 2 ? 1 : 0;
        case RunRule::TwoOfThreeBeyond2:
            return beyond(2, 3, 2);
        case RunRule::FourOfFiveBeyond1:
            return beyond(4, 5, 1);
        case RunRule::TwoInARowBeyond2:
            return beyond(2, 2, 2);
        case RunRule::FourInARowBeyond1:
            return beyond(4, 4, 1);
        case RunRule::SevenOnOneSide:
            return beyond(7, 7, 0);
        case RunRule::EightOnOneSide:
            return beyond(8, 8, 0);
        case RunRule::NineOnOneSide:
            return beyond(9, 9, 0);
        case RunRule::TenOnOneSide:
            return beyond(10, 10, 0);
        case RunRule::OppositeBeyond2:
            return has(2) && std::min(back(0), back(1)) < -2 && std::max(back(0), back(1)) > 2 ? 2 : 0;
        case RunRule::SixRisingOrFalling:
            return trend(6);
        case RunRule::FourteenAlternating:
            return alternating(14);
        case RunRule::FifteenWithin1:
            return every(15, [](double z) { return std::abs(z) < 1; });
        case RunRule::EightBeyond1OnBothSides:
            return bothSides(8);
        }
        return 0;
    }

private:
    double back(std::size_t places) const { return m_z[m_last - places]; }
    bool has(std::size_t values) const { return m_last + 1 >= values; }

    template <class Test> std::size_t every(std::size_t length, const Test &test) const
    {
        if (!has(length))
            return 0;
        for (std::size_t place = 0; place < length; ++place) {
            if (!test(back(place)))
                return 0;
        }
        return length;
    }

    /// So many, the last among them, of at most so many values on its side beyond the line; the pattern is
    /// as short as that allows.
    std::size_t beyond(std::size_t needed, std::size_t window, double line) const
    {
        const double side = back(0) > 0 ? 1 : -1;
        std::size_t found = 0;
        for (std::size_t place = 0; place < window && has(place + 1); ++place) {
            if (side * back(place) > line)
                ++found;
            else if (place == 0)
                return 0;
            if (found == needed)
                return place + 1;
        }
        return 0;
    }

    std::size_t trend(std::size_t length) const
    {
        if (!has(length))
            return 0;
        bool rising = true;
        bool falling = true;
        for (std::size_t place = 0; place + 1 < length; ++place) {
            rising = rising && back(place) > back(place + 1);
            falling = falling && back(place) < back(place + 1);
        }
        return rising || falling ? length : 0;
    }

    std::size_t alternating(std::size_t length) const
    {
        if (!has(length))
            return 0;
        for (std::size_t place = 0; place + 2 < length; ++place) {
            const double step = back(place) - back(place + 1);
            const double before = back(place + 1) - back(place + 2);
            if (!(step > 0 && before < 0) && !(step < 0 && before > 0))
                return 0;
        }
        return length;
    }

    std::size_t bothSides(std::size_t length) const
    {
        if (!every(length, [](double z) { return std::abs(z) > 1; }))
            return 0;
        bool above = false;
        bool below = false;
        for (std::size_t place = 0; place < length; ++place) {
            above = above || back(place) > 0;
            below = below || back(place) < 0;
        }
        return above && below ? length : 0;
    }

    std::span<const double> m_z;
    std::size_t m_last;
};

} // namespace

std::span<const RunRule> allRunRules()
{
    static constexpr std::array rules{
        RunRule::OneBeyond3,         RunRule::TwoOfThreeBeyond2,
        RunRule::FourOfFiveBeyond1,  RunRule::NineOnOneSide,
        RunRule::SixRisingOrFalling, RunRule::FourteenAlternating,
        RunRule::FifteenWithin1,     RunRule::EightBeyond1OnBothSides,
        RunRule::EightOnOneSide,     RunRule::SevenOnOneSide,
        RunRule::TenOnOneSide,       RunRule::OneBeyond2,
        RunRule::TwoInARowBeyond2,   RunRule::OppositeBeyond2,
        RunRule::FourInARowBeyond1,
    };
    return rules;
}

const std::set<RunRule> &usualRunRules()
{
    static const std::set<RunRule> rules{RunRule::OneBeyond3, RunRule::TwoOfThreeBeyond2,
                                         RunRule::NineOnOneSide};
    return rules;
}

bool isWarning(RunRule rule)
{
    return rule == RunRule::OneBeyond2;
}

bool holdsForRanges(RunRule rule)
{
    switch (rule) {
    case RunRule::OneBeyond3:
    case RunRule::OneBeyond2:
    case RunRule::TwoOfThreeBeyond2:
    case RunRule::TwoInARowBeyond2:
        return true;
    default:
        return false;
    }
}

std::vector<Violation> violationsOf(std::span<const double> z, const std::set<RunRule> &rules)
{
    std::vector<Violation> violations;
    for (std::size_t last = 0; last < z.size(); ++last) {
        const Pattern pattern(z, last);
        for (const RunRule rule : rules) {
            if (const std::size_t length = pattern.lengthOf(rule))
                violations.push_back({rule, last + 1 - length, last});
        }
    }
    return violations;
}

} // namespace plateau::quality
