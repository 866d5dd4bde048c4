// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <optional>

namespace plateau::quality {

/// What turns the mean range of n values into limits of a control chart (normal distribution).
struct ChartConstants {
    int n = 2;
    /// Mean and standard deviation of the range of n values, in standard deviations of one value.
    double d2 = 0;
    double d3 = 0;
    /// Mean standard deviation of n values, in the same.
    double c4 = 0;
    /// Three standard deviations of a mean of n: A2 mean ranges, A3 mean standard deviations.
    double a2 = 0;
    double a3 = 0;
    /// Three-sigma limits of a standard deviation (B3, B4) and of a range (D3, D4), as parts of their mean.
    double b3 = 0;
    double b4 = 0;
    double lowerD3 = 0;
    double upperD4 = 0;
};

inline constexpr int largestSubgroup = 25;
inline constexpr int largestPrintedSubgroup = 10;

/// Computed, n = 2 to largestSubgroup; nothing for others.
std::optional<ChartConstants> chartConstants(int n);
/// As printed in tables of factors for control charts, to three decimals and four for c4, n = 2 to
/// largestPrintedSubgroup: for a laboratory whose procedure works from the table. Source: Factors for control
/// charts, table A.22 of a statistics text, scribd.com/document/575462347.
std::optional<ChartConstants> printedChartConstants(int n);

} // namespace plateau::quality
