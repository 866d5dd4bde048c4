// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/quality/chartconstants.h"

#include <limits>
#include <optional>
#include <span>
#include <vector>

namespace plateau::quality {

/// What a control chart holds its points against. Formulas: NIST/SEMATECH e-Handbook of Statistical Methods,
/// sections 6.3.2.1 and 6.3.2.2, www.itl.nist.gov/div898/handbook/pmc/section3/pmc32.htm.
struct ControlBaseline {
    double centre = 0;
    /// Of what is plotted: of a single value, a mean of a subgroup, a range. Not below 0.
    double deviation = 0;
    /// No line lies below it: 0 for ranges.
    double lowest = -std::numeric_limits<double>::infinity();

    /// The line so many standard deviations from the centre.
    double line(double deviations) const;
    /// How many standard deviations from the centre a value lies; on the centre 0, beside one without
    /// scatter infinite.
    double deviationsOf(double value) const;
    bool operator==(const ControlBaseline &) const = default;
};

/// From what the standard deviation of single values comes. The moving range sees the scatter from one value
/// to the next only; the standard deviation what drifts and steps between them add as well.
enum class SpreadFrom { MovingRange, StandardDeviation };

/// |x_i - x_(i-1)|: one fewer than the values.
std::vector<double> movingRanges(std::span<const double> values);
/// Of size values one after the other; what is left over at the end makes no subgroup. size >= 1.
std::vector<double> subgroupMeans(std::span<const double> values, int size);
std::vector<double> subgroupRanges(std::span<const double> values, int size);

/// Single values; nothing for fewer than two. constants: of n = 2.
std::optional<ControlBaseline> baselineOfValues(std::span<const double> values, SpreadFrom spread,
                                                const ChartConstants &constants);
/// Of means of subgroups of constants.n values, by their ranges: centre +- A2 mean range. Nothing without a
/// subgroup or for lists of unequal length.
std::optional<ControlBaseline> baselineOfMeans(std::span<const double> means, std::span<const double> ranges,
                                               const ChartConstants &constants);
/// Of ranges of constants.n values each, a moving range counting as a range of two: D3 and D4 mean ranges.
/// Nothing without a range.
std::optional<ControlBaseline> baselineOfRanges(std::span<const double> ranges,
                                                const ChartConstants &constants);

/// Where the laboratory has fixed the standard deviation of a single value. constants: of the subgroup.
ControlBaseline fixedBaselineOfMeans(double centre, double deviation, int size);
ControlBaseline fixedBaselineOfRanges(double deviation, const ChartConstants &constants);

} // namespace plateau::quality
