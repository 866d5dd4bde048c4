// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/startbounds.h"

#include <algorithm>
#include <cmath>

namespace plateau::evaluation {

std::optional<double> leastAtStart(const assay::Method &method, const run::Run &run)
{
    if (method.direction != assay::Direction::Falling || !method.window.reserveAbsorbance)
        return std::nullopt;
    const auto here = assay::absorptivity(method, run.wavelength_nm.value_or(method.wavelength_nm));
    const auto usual = assay::absorptivity(method, method.wavelength_nm);
    // The reagent is the same at every wavelength, and shows less at a weaker one.
    const double shown = here && usual && *usual > 0 && method.pathLength_mm > 0
                             ? *here / *usual * run.pathLength_mm.value_or(method.pathLength_mm) / method.pathLength_mm
                             : 1;
    return (method.window.maxSignal + *method.window.reserveAbsorbance) * shown;
}

std::optional<double> mostAtStart(const assay::Method &method)
{
    const auto &limit = method.window.maxAbsorbance;
    if (method.direction != assay::Direction::Rising || !limit)
        return std::nullopt;
    return std::max(*limit - method.window.maxSignal, *limit / 2);
}

bool isTenthOf(double least, double absorbance)
{
    return absorbance < least / std::sqrt(10.0);
}

} // namespace plateau::evaluation
