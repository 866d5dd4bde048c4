// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <cstddef>
#include <set>
#include <span>
#include <vector>

namespace plateau::quality {

/// Patterns that values in control seldom show, each named by what it tests; s is the standard deviation of
/// what is plotted, beyond is strictly beyond (a value on a line is not), a value on the centre is on neither
/// side.
///
/// Sources: the first eight as on the page "Nelson rules", w.owiki.org/wiki/Nelson_rules; EightOnOneSide:
/// Western Electric rules, uncp.edu course page; SevenOnOneSide: Analytical Sciences Digital Library,
/// property control chart page, asdlib.org; OneBeyond2 (a warning), TwoInARowBeyond2, OppositeBeyond2,
/// FourInARowBeyond1, TenOnOneSide: Multirule quality control, PMC3909142, Table 1.
enum class RunRule {
    OneBeyond3,
    TwoOfThreeBeyond2,
    FourOfFiveBeyond1,
    NineOnOneSide,
    SixRisingOrFalling,
    FourteenAlternating,
    FifteenWithin1,
    EightBeyond1OnBothSides,
    EightOnOneSide,
    SevenOnOneSide,
    TenOnOneSide,
    OneBeyond2,
    TwoInARowBeyond2,
    OppositeBeyond2,
    FourInARowBeyond1,
};
/// In the order of the enumeration.
std::span<const RunRule> allRunRules();
/// Those that are switched on until somebody chooses others: what lies beyond the action lines, two of three
/// beyond the warning line, and nine on one side. Common practice, no source.
const std::set<RunRule> &usualRunRules();
/// OneBeyond2 asks for a look, the others for action.
bool isWarning(RunRule rule);
/// Rules that only hold for values that scatter to both sides alike. A range does not: it has a floor at
/// zero and a long tail, so of its rules only those that look beyond 2 or 3 s are used.
bool holdsForRanges(RunRule rule);

/// The pattern is complete with the value last; it began at first.
struct Violation {
    RunRule rule = RunRule::OneBeyond3;
    std::size_t first = 0;
    std::size_t last = 0;
    bool operator==(const Violation &) const = default;
};

/// z: values as standard deviations from the centre, in their order. Every value that completes a pattern is
/// named, so a pattern that goes on is named again with each further value. In the order of last, then of the
/// rules.
std::vector<Violation> violationsOf(std::span<const double> z, const std::set<RunRule> &rules);

} // namespace plateau::quality
