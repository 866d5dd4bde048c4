// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/run/preparation.h"

#include <QString>

#include <vector>

namespace plateau::planning {

/// The mass (mg) to weigh for this strength in that flask: weighing's own mass is not read. Every other field
/// positive.
double massToWeigh_mg(double wanted_g_per_L, const run::Weighing &weighing);

/// Standard uncertainties (k = 1) of what was done.
struct WeighingUncertainty {
    double mass_mg = 0;
    /// Of the purity as a fraction.
    double purity = 0;
    /// Of the flask's volume: its permissible error, how well it is filled to the mark, and the effect of
    /// another temperature than it was made for. Independent of each other.
    double flask_mL = 0;
    double filling_mL = 0;
    double temperature_mL = 0;
    bool operator==(const WeighingUncertainty &) const = default;
};

/// From a half-width: a value equally likely anywhere in it, and one more likely in its middle (JCGM
/// 100, 4.3.7 and 4.3.9).
double rectangular(double halfWidth);
double triangular(double halfWidth);
/// Volume of water that a glass flask holds at other temperatures within this of 20 °C, equally
/// likely: 2.1e-4 per °C (QUAM, example A1).
double temperatureEffect_mL(double flask_mL, double halfWidth_C);

struct StrengthTerm {
    QString term;
    double standardUncertainty_g_per_L = 0;
    /// Of the variance.
    double share = 0;
    bool operator==(const StrengthTerm &) const = default;
};

struct StrengthMade {
    double concentration_g_per_L = 0;
    double standardUncertainty_g_per_L = 0;
    /// Largest first; what contributes nothing is left out.
    std::vector<StrengthTerm> budget;
    bool operator==(const StrengthMade &) const = default;
};

/// The strength really made from the mass really weighed. First order (JCGM 100).
StrengthMade strengthMade(const run::Weighing &weighing, const WeighingUncertainty &uncertainty);

} // namespace plateau::planning
