// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <gmock/gmock.h>

#include <cmath>
#include <cstdlib>
#include <string>

/// Matchers for a value in print. The word says where it comes from: published (seen in the source named
/// beside it), from memory (recalled, no page seen), recomputed (a second opinion by an independent program).
namespace plateau::published {

/// One unit of the last digit of "0.2410", "12" or "0.4297E-03".
inline double lastDigit(const std::string &printed)
{
    const auto exponentAt = printed.find_first_of("eE");
    const std::string digits = printed.substr(0, exponentAt);
    const auto point = digits.find('.');
    const int decimals = point == std::string::npos ? 0 : static_cast<int>(digits.size() - point - 1);
    const int exponent = exponentAt == std::string::npos ? 0 : std::atoi(printed.c_str() + exponentAt + 1);
    return std::pow(10.0, exponent - decimals);
}

/// Rounds to the printed digits, a tie either way.
inline bool roundsTo(double value, const std::string &printed, double units = 0.5)
{
    return std::abs(value - std::strtod(printed.c_str(), nullptr)) <= units * lastDigit(printed) * (1 + 1e-6);
}

MATCHER_P(Published, printed, std::string("rounds to the published ") + printed)
{
    return roundsTo(arg, printed);
}

/// For prints known to be off by rounding inside the source; the test says why.
MATCHER_P2(PublishedWithin, printed, units,
           std::string("lies within ") + std::to_string(units) + " last digits of the published " + printed)
{
    return roundsTo(arg, printed, units);
}

MATCHER_P(FromMemory, printed, std::string("rounds to ") + printed + " (from memory)")
{
    return roundsTo(arg, printed);
}

/// To a part in 1e9.
MATCHER_P(Recomputed, expected, "agrees with the recomputed " + ::testing::PrintToString(expected))
{
    return std::abs(arg - expected) <= 1e-9 * std::abs(expected);
}

} // namespace plateau::published
