// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/glassware.h"

#include <algorithm>
#include <cmath>

namespace plateau::planning {

namespace {

constexpr double slack = 1e-9;

/// A setting as its scale says it: sums of steps leave a tail of binary digits.
double rounded_mL(double volume_mL)
{
    constexpr double perMillilitre = 1e7;
    return std::round(volume_mL * perMillilitre) / perMillilitre;
}

bool isBetter(const PossibleStep &one, const PossibleStep &other)
{
    const double difference = *one.step.uncertainty_percent - *other.step.uncertainty_percent;
    if (std::abs(difference) > slack)
        return difference < 0;
    return one.step.makeUpTo_mL < other.step.makeUpTo_mL;
}

} // namespace

std::vector<double> settableVolumes_mL(const Pipette &pipette)
{
    if (!(pipette.step_mL > 0) || pipette.largest_mL <= pipette.smallest_mL)
        return {pipette.smallest_mL};
    std::vector<double> volumes;
    for (int i = 0; i < mostSettings; ++i) {
        const double volume_mL = pipette.smallest_mL + i * pipette.step_mL;
        if (volume_mL > pipette.largest_mL * (1 + slack))
            break;
        volumes.push_back(rounded_mL(volume_mL));
    }
    return volumes;
}

std::vector<PossibleStep> possibleSteps(const Glassware &glassware)
{
    std::vector<PossibleStep> all;
    for (std::size_t p = 0; p < glassware.pipettes.size(); ++p) {
        for (const double take_mL : settableVolumes_mL(glassware.pipettes[p])) {
            for (std::size_t f = 0; f < glassware.flasks.size(); ++f) {
                const Flask &flask = glassware.flasks[f];
                if (!(take_mL > 0) || take_mL >= flask.volume_mL * (1 - slack))
                    continue;
                const double uncertainty_percent =
                    std::hypot(glassware.pipettes[p].uncertainty_percent, flask.uncertainty_percent);
                all.push_back({{take_mL, flask.volume_mL, uncertainty_percent},
                               static_cast<int>(p),
                               static_cast<int>(f),
                               std::log10(flask.volume_mL / take_mL)});
            }
        }
    }
    std::ranges::stable_sort(all, {}, &PossibleStep::logFactor);
    std::vector<PossibleStep> best;
    for (const PossibleStep &step : all) {
        if (best.empty() || step.logFactor - best.back().logFactor > slack)
            best.push_back(step);
        else if (isBetter(step, best.back()))
            best.back() = step;
    }
    return best;
}

} // namespace plateau::planning
