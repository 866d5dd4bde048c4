// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/glassware.h"
#include "core/planning/slack.h"

#include <algorithm>
#include <cmath>

namespace plateau::planning {

namespace {


/// A setting as its scale says it: sums of steps leave a tail of binary digits.
double rounded_mL(double volume_mL)
{
    constexpr double perMillilitre = 1e7;
    return std::round(volume_mL * perMillilitre) / perMillilitre;
}

/// Of one factor: no worse in anything that counts.
bool isAsGood(const PossibleStep &one, const PossibleStep &other)
{
    return *one.step.uncertainty_percent <= *other.step.uncertainty_percent + slack &&
           one.step.makeUpTo_mL <= other.step.makeUpTo_mL;
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
    std::size_t group = 0; // where the steps of this factor begin
    for (const PossibleStep &step : all) {
        if (group < best.size() && step.logFactor - best[group].logFactor > slack)
            group = best.size();
        const auto sameFactor =
            std::ranges::subrange(best.begin() + static_cast<std::ptrdiff_t>(group), best.end());
        if (std::ranges::any_of(sameFactor, [&](const PossibleStep &other) { return isAsGood(other, step); }))
            continue;
        std::erase_if(best, [&, place = std::size_t(0)](const PossibleStep &other) mutable {
            return place++ >= group && isAsGood(step, other);
        });
        best.push_back(step);
    }
    return best;
}

} // namespace plateau::planning
