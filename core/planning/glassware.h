// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/laboratory.h"
#include "core/run/run.h"

#include <optional>
#include <vector>

namespace plateau::planning {

/// More settings than this are not told apart: nobody sets a pipette so finely.
inline constexpr int mostSettings = 10000;

/// The step between two settings (mL); 0 for a pipette of one volume. Where the list says none for a range: 1 µL up to
/// 200 µL, 5 µL up to 1 mL, 10 µL above, by the largest volume (common practice, no source).
double settingStep_mL(const Pipette &pipette);

/// Every volume the pipette can be set to, smallest first; the one volume of a bulb pipette.
std::vector<double> settableVolumes_mL(const Pipette &pipette);

/// The settable volume nearest to this one, of all pipettes; nothing where none is within 5 %.
std::optional<double> nearestSettable_mL(double volume_mL, const Glassware &glassware);

/// What is listed; in place of an empty list of pipettes one-mark ones of 1, 2, 5 and 10 mL, in place of an empty
/// list of flasks those of 5, 10, 20, 25, 50 and 100 mL, with the permissible errors of class A (as usualLaboratory).
/// Common practice, no source.
Glassware withUsualGlass(const Glassware &listed);

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
/// factor. Nothing that takes less than leastTaken_mL.
std::vector<PossibleStep> possibleSteps(const Glassware &glassware, double leastTaken_mL = 0);

/// Those that dilute by a factor that is easily worked with: 2, 2.5, 4, 5, 10 and so on by tens.
std::vector<PossibleStep> simpleOnes(const std::vector<PossibleStep> &steps);

} // namespace plateau::planning
