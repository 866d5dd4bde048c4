// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <optional>
#include <span>

namespace plateau::quality {

/// What a solution had left at some age.
struct AgedValue {
    double age_h = 0;
    /// In any unit, greater than 0: a concentration, a recovery against the strength when made.
    double value = 0;
    /// Standard uncertainty of the value in its unit; it is the weight where every value has one.
    std::optional<double> standardUncertainty{};
};

/// c(t) = c0 (1 - p)^t, fitted as the straight line ln c = ln c0 + t ln(1 - p): by weights (value /
/// standardUncertainty)^2 where every value states one, else all alike. The uncertainty comes from the
/// scatter about the line in either case (n - 2 degrees of freedom), since values of several preparations
/// differ by more than each of them says.
struct ExponentialLoss {
    int n = 0;
    bool isWeighted = false;
    /// Fraction lost per hour; below 0 where the values rise.
    double lossPerHour = 0;
    /// At age 0, in the values' unit.
    double atStart = 0;
    /// First order, of lossPerHour; absent with two values, and so is the interval.
    std::optional<double> standardUncertainty;
    /// Within it p lies with a confidence of 95 % (Student's t, formed for ln(1 - p)).
    struct Interval {
        double lowest = 0;
        double highest = 0;
    };
    std::optional<Interval> interval95;
    double degreesOfFreedom = 0;
    /// Relative scatter of the values about the curve; absent with two values.
    std::optional<double> relativeScatter;
    /// The ages that the values cover.
    double youngest_h = 0;
    double oldest_h = 0;
};

/// Nothing for fewer than two values, ages that do not differ, or a value, an age or an uncertainty that
/// cannot be (not finite, value or uncertainty not greater than 0).
std::optional<ExponentialLoss> fitExponentialLoss(std::span<const AgedValue> values);

} // namespace plateau::quality
