// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/run/preparation.h"

#include <QString>

#include <vector>

namespace plateau::planning {

/// The mass (mg) to weigh for this strength in that flask: weighing's own mass is not read.
double massToWeigh_mg(double wanted_g_per_L, const run::Weighing &weighing);

/// Standard uncertainties (k = 1) of what was done.
struct WeighingUncertainty {
    double mass_mg = 0;
    /// Of the purity as a fraction.
    double purity = 0;
    double flask_mL = 0;
    /// Of the temperature's effect on the flask's volume, the repeatability of filling, in mL; combined with
    /// flask_mL.
    double filling_mL = 0;
    double temperature_mL = 0;
};

struct StrengthTerm {
    QString term;
    double standardUncertainty_g_per_L = 0;
    /// Of the variance.
    double share = 0;
};

struct StrengthMade {
    double concentration_g_per_L = 0;
    double standardUncertainty_g_per_L = 0;
    /// Largest first.
    std::vector<StrengthTerm> budget;
};

/// The strength really made from the mass really weighed. First order (JCGM 100).
StrengthMade strengthMade(const run::Weighing &weighing, const WeighingUncertainty &uncertainty);

} // namespace plateau::planning
