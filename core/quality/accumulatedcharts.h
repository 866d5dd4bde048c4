// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/quality/controlbaseline.h"

#include <span>
#include <vector>

namespace plateau::quality {

/// One point of an exponentially weighted moving average, with the limits that hold for it.
struct WeightedAverage {
    double value = 0;
    double lower = 0;
    double upper = 0;
    bool isOutside() const { return value < lower || value > upper; }
};

/// z_i = lambda x_i + (1 - lambda) z_(i-1), begun at the centre; limits centre +- width deviation
/// sqrt(lambda / (2 - lambda) (1 - (1 - lambda)^(2i))), which widen over the first points. 0 < lambda <= 1,
/// width > 0. Formulas: NIST/SEMATECH e-Handbook, section 6.3.2.4,
/// www.itl.nist.gov/div898/handbook/pmc/section3/pmc324.htm (from memory).
std::vector<WeightedAverage> weightedAverages(std::span<const double> values, const ControlBaseline &baseline,
                                              double lambda, double width);

/// One point of a cumulative sum, in the unit of the values; both sums are at least 0.
struct CumulativeSum {
    double above = 0;
    double below = 0;
    /// Of the values' differences from the centre, as they are.
    double plain = 0;
};

/// S_i = max(0, S_(i-1) + x_i - centre - k) above, max(0, S_(i-1) + centre - k - x_i) below; k in the unit
/// of the values, >= 0. A sum that passed its decision limit goes on. Formulas: NIST/SEMATECH e-Handbook,
/// section 6.3.2.3, www.itl.nist.gov/div898/handbook/pmc/section3/pmc323.htm.
std::vector<CumulativeSum> cumulativeSums(std::span<const double> values, double centre, double k);

} // namespace plateau::quality
