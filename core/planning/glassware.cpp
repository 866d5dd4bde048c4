// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/glassware.h"
#include "core/planning/slack.h"

#include <algorithm>
#include <array>
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

double settingStep_mL(const Pipette &pipette)
{
    if (pipette.largest_mL <= pipette.smallest_mL)
        return 0;
    if (pipette.step_mL > 0)
        return pipette.step_mL;
    if (pipette.largest_mL <= 0.2)
        return 0.001;
    return pipette.largest_mL <= 1 ? 0.005 : 0.01;
}

std::vector<double> settableVolumes_mL(const Pipette &pipette)
{
    const double step_mL = settingStep_mL(pipette);
    if (step_mL <= 0)
        return {pipette.smallest_mL};
    std::vector<double> volumes;
    for (int i = 0; i < mostSettings; ++i) {
        const double volume_mL = pipette.smallest_mL + i * step_mL;
        if (volume_mL > pipette.largest_mL * (1 + slack))
            break;
        volumes.push_back(rounded_mL(volume_mL));
    }
    return volumes;
}

std::optional<double> nearestSettable_mL(double volume_mL, const Glassware &glassware)
{
    constexpr double near = 0.05;
    std::optional<double> nearest_mL;
    double distance_mL = near * volume_mL * (1 + slack);
    for (const Pipette &pipette : glassware.pipettes) {
        for (const double settable_mL : settableVolumes_mL(pipette)) {
            if (std::abs(settable_mL - volume_mL) >= distance_mL)
                continue;
            nearest_mL = settable_mL;
            distance_mL = std::abs(settable_mL - volume_mL);
        }
    }
    return nearest_mL;
}

Glassware withUsualGlass(const Glassware &listed)
{
    Glassware glassware = listed;
    if (!listed.pipettes.empty() && !listed.flasks.empty())
        return glassware;
    const Glassware usual = usualLaboratory().glassware;
    if (listed.pipettes.empty()) {
        constexpr double largest_mL = 10;
        for (const Pipette &pipette : usual.pipettes) {
            if (settingStep_mL(pipette) <= 0 && pipette.largest_mL <= largest_mL)
                glassware.pipettes.push_back(pipette);
        }
    }
    if (listed.flasks.empty()) {
        constexpr double largest_mL = 100;
        glassware.flasks.push_back({{}, 5, 100 * 0.025 / std::sqrt(3.0) / 5});
        for (const Flask &flask : usual.flasks) {
            if (flask.volume_mL <= largest_mL)
                glassware.flasks.push_back(flask);
        }
    }
    return glassware;
}

std::vector<PossibleStep> simpleOnes(const std::vector<PossibleStep> &steps)
{
    constexpr std::array easyFactors{1.0, 2.0, 2.5, 4.0, 5.0};
    constexpr double same = 1e-6;
    std::vector<PossibleStep> simple;
    for (const PossibleStep &step : steps) {
        const double ofTheDecade = std::pow(10.0, step.logFactor - std::floor(step.logFactor + slack));
        if (std::ranges::any_of(easyFactors,
                                [&](double easy) { return std::abs(ofTheDecade - easy) < same * easy; }))
            simple.push_back(step);
    }
    return simple;
}

std::vector<PossibleStep> possibleSteps(const Glassware &glassware, double leastTaken_mL)
{
    std::vector<PossibleStep> all;
    for (std::size_t p = 0; p < glassware.pipettes.size(); ++p) {
        for (const double take_mL : settableVolumes_mL(glassware.pipettes[p])) {
            for (std::size_t f = 0; f < glassware.flasks.size(); ++f) {
                const Flask &flask = glassware.flasks[f];
                if (!(take_mL > 0) || take_mL < leastTaken_mL * (1 - slack) ||
                    take_mL >= flask.volume_mL * (1 - slack))
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
        const auto worse =
            std::ranges::remove_if(sameFactor, [&](const PossibleStep &other) { return isAsGood(step, other); });
        best.erase(worse.begin(), worse.end());
        best.push_back(step);
    }
    return best;
}

} // namespace plateau::planning
