// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/laboratory.h"
#include "core/run/run.h"

#include <vector>

namespace plateau::planning {

/// More settings than this are not told apart: nobody sets a pipette so finely.
inline constexpr int mostSettings = 10000;

/// Every volume the pipette can be set to, smallest first; the one volume of a bulb pipette.
std::vector<double> settableVolumes_mL(const Pipette &pipette);

/// A dilution step with the glassware that makes it.
struct PossibleStep {
    run::DilutionStep step;
    /// Indices into Glassware.
    int pipette = 0;
    int flask = 0;
    /// Decadic, of the factor.
    double logFactor = 0;
};

/// What a pipette and a flask make of one step, with its relative standard uncertainty: both volumes count,
/// as independent. Of each factor above 1 those that no other one equals in both uncertainty and flask; by
/// factor.
std::vector<PossibleStep> possibleSteps(const Glassware &glassware);

} // namespace plateau::planning
