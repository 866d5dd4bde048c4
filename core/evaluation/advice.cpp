// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/advice.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace plateau::evaluation {

namespace {

constexpr std::array preferredFactors{1.0,  2.0,   4.0,   5.0,   10.0,  20.0,  25.0,
                                      50.0, 100.0, 200.0, 250.0, 500.0, 1000.0};
/// A repeat should not land at the very edge of the window again.
constexpr double aimedPart = 0.8;

/// One-mark pipettes, and flasks with the handiest first.
constexpr std::array pipettes_mL{1.0, 2.0, 5.0, 10.0, 20.0, 25.0, 50.0};
constexpr std::array flasks_mL{50.0, 100.0, 25.0, 20.0, 10.0, 5.0};
/// First steps of a longer chain, the most precise first.
constexpr std::array firstFactors{10.0, 20.0, 5.0, 25.0, 50.0, 100.0, 4.0, 2.0};

std::optional<run::DilutionStep> singleStep(double factor)
{
    for (const double flask_mL : flasks_mL) {
        for (const double pipette_mL : pipettes_mL) {
            if (pipette_mL < flask_mL && std::abs(flask_mL / pipette_mL / factor - 1) < 1e-9)
                return run::DilutionStep{pipette_mL, flask_mL};
        }
    }
    return std::nullopt;
}

std::optional<std::vector<run::DilutionStep>> chain(double factor, int steps)
{
    if (const auto step = singleStep(factor))
        return std::vector{*step};
    if (steps == 1)
        return std::nullopt;
    for (const double first : firstFactors) {
        if (first >= factor)
            continue;
        if (auto rest = chain(factor / first, steps - 1)) {
            rest->insert(rest->begin(), *singleStep(first));
            return rest;
        }
    }
    return std::nullopt;
}

bool withinAfter(double factor, const assay::Method &method, const TubeState &tube)
{
    const assay::Window &window = method.window;
    if (tube.netSignal / factor > aimedPart * window.maxSignal)
        return false;
    const double largest = tube.blankAtLargest + (tube.largestReading - tube.blankAtLargest) / factor;
    if (window.maxAbsorbance && largest > *window.maxAbsorbance)
        return false;
    if (method.direction == assay::Direction::Rising || !window.reserveAbsorbance)
        return true;
    const double taken = tube.remainingWithoutSample - tube.remaining;
    return tube.remainingWithoutSample - taken / factor >= *window.reserveAbsorbance;
}

bool isWhole(double steps)
{
    return std::abs(steps - std::round(steps)) < 1e-6;
}

/// What a pipette is set to without thought, up to that volume: by 0.05 mL, else by 0.01 mL, where that is more than the
/// tube had, leaves as simple a volume of diluent and brings the signal into the window; else two figures. Common
/// practice, no source.
double settableBelow_mL(const assay::Method &method, const TubeState &tube, double exact_mL)
{
    constexpr std::array grids_mL{0.05, 0.01};
    const assay::Component *diluent = assay::findComponent(method, method.diluent);
    const double together_mL = diluent ? diluent->volume_mL + assay::findComponent(method, method.sample)->volume_mL : 0;
    const auto onGrid = [exact_mL](double grid_mL) {
        return std::round(std::floor(exact_mL / grid_mL + 1e-9) * grid_mL * 1e7) / 1e7;
    };
    for (const double grid_mL : grids_mL) {
        const double volume_mL = onGrid(grid_mL);
        const bool isMore = volume_mL > tube.sampleVolume_mL * (1 + 1e-9);
        const bool isMeasured = tube.netSignal * volume_mL / tube.sampleVolume_mL >= method.window.minSignal;
        if (isMore && isMeasured && (!diluent || isWhole((together_mL - volume_mL) / grid_mL)))
            return volume_mL;
    }
    return onGrid(std::pow(10.0, std::floor(std::log10(exact_mL)) - 1));
}

/// The largest volume the method allows, but not one that would overshoot the aim; nothing if that is no more
/// than what the tube had.
std::optional<double> largerVolume_mL(const assay::Method &method, const TubeState &tube, double aimed)
{
    const assay::Component *component = assay::findComponent(method, method.sample);
    if (!component || !component->range_mL)
        return std::nullopt;
    double volume_mL = component->range_mL->upper;
    if (tube.netSignal > 0 && tube.netSignal * volume_mL / tube.sampleVolume_mL > aimed) {
        volume_mL = settableBelow_mL(method, tube, tube.sampleVolume_mL * aimed / tube.netSignal);
    }
    if (volume_mL <= tube.sampleVolume_mL * (1 + 1e-9))
        return std::nullopt;
    return volume_mL;
}

} // namespace

std::optional<std::vector<run::DilutionStep>> dilutionChain(double factor)
{
    constexpr int longestChain = 3;
    if (std::abs(factor - 1) < 1e-9)
        return std::vector<run::DilutionStep>{};
    if (factor < 1)
        return std::nullopt;
    for (int steps = 1; steps <= longestChain; ++steps) {
        if (auto found = chain(factor, steps))
            return found;
    }
    return std::nullopt;
}

double strongerDilution(const assay::Method &method, const TubeState &tube)
{
    const auto found = std::ranges::find_if(
        preferredFactors, [&](double factor) { return factor > 1 && withinAfter(factor, method, tube); });
    return found == preferredFactors.end() ? preferredFactors.back() : *found;
}

Advice diluteAdvice(const assay::Method &method, const run::Sample &sample, const TubeState &tube)
{
    const double further = strongerDilution(method, tube);
    Advice advice;
    advice.kind = Advice::Kind::Dilute;
    advice.factor = run::dilutionFactor(sample.dilution) * further;
    advice.atLeast = tube.usedUp;
    if (const auto steps = dilutionChain(advice.factor)) {
        advice.steps = *steps;
    } else {
        // An odd dilution so far: keep it and dilute on.
        advice.steps = sample.dilution;
        const std::vector<run::DilutionStep> more =
            dilutionChain(further).value_or(std::vector<run::DilutionStep>{});
        advice.steps.insert(advice.steps.end(), more.begin(), more.end());
    }
    return advice;
}

std::optional<Advice> strengthenAdvice(const assay::Method &method, const run::Sample &sample,
                                       const TubeState &tube)
{
    const double aimed = aimedPart * method.window.maxSignal;
    if (const std::optional<double> volume_mL = largerVolume_mL(method, tube, aimed)) {
        Advice advice;
        advice.kind = Advice::Kind::IncreaseVolume;
        advice.sampleVolume_mL = *volume_mL;
        return advice;
    }
    const double present = run::dilutionFactor(sample.dilution);
    for (const double factor : preferredFactors) {
        if (factor >= present * (1 - 1e-9))
            break;
        if (tube.netSignal * present / factor > aimed)
            continue;
        Advice advice;
        advice.kind = Advice::Kind::Dilute;
        advice.factor = factor;
        advice.steps = dilutionChain(factor).value_or(std::vector<run::DilutionStep>{});
        return advice;
    }
    return std::nullopt;
}

} // namespace plateau::evaluation
