// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/planning/laboratory.h"
#include "core/run/run.h"

#include <map>
#include <optional>
#include <vector>

namespace plateau::planning {

/// What is to be brought into a method's window.
struct DilutionQuestion {
    /// What the sample is expected to hold as received, by measurand: g/L, of a solid in its undiluted
    /// extract. One that the method does not have, or that is expected at nothing, is not asked for.
    std::map<QString, double> expected_g_per_L;
    int wavelength_nm = 340;
    double pathLength_mm = 10;
    /// Absent: the method's own, and any volume of its range that a pipette of the laboratory makes.
    std::optional<double> sampleVolume_mL;
};

/// In place of an index: the laboratory lists none of the kind, and the usual glass stands in.
inline constexpr int notListed = -1;

/// One step of a chain with what it is made with: indices into Glassware, or notListed.
struct ChainStep {
    run::DilutionStep step;
    int pipette = 0;
    int flask = 0;
    bool operator==(const ChainStep &) const = default;
};

struct DilutionProposal {
    double sampleVolume_mL = 0;
    /// Empty: undiluted. From the largest flask to the smallest, so that each holds what the next step takes;
    /// every step carries its own uncertainty, pipette and flask as independent.
    std::vector<ChainStep> chain;
    double factor = 1;
    /// Net signal by measurand.
    std::map<QString, double> predictedSignal;
    /// Relative standard uncertainty of the factor, in percent.
    double uncertainty_percent = 0;
    bool operator==(const DilutionProposal &) const = default;
};

/// Smallest signal aimed at where the window has none: 10/3.3 of an absorbance of 0.005, as in
/// evaluation::appraise (common practice, no source).
inline constexpr double smallestAimedSignal = 0.005 * 10 / 3.3;

/// From the window's smallest signal to 0.8 of its largest, or to the largest where that leaves nothing.
assay::Interval aimedSignals(const assay::Window &window);
/// Half of the largest signal, within aimedSignals: there the readings' own error counts little, and a sample
/// twice as strong as expected still is inside the window.
double aimedSignal(const assay::Window &window);

/// Net signal that a sample of this strength gives: c v e d n / (F V M), with V of a tube of that sample
/// volume. 0 where the method lacks the measurand or an absorptivity at the wavelength.
double predictedSignal(const assay::Method &method, const QString &measurand, double expected_g_per_L,
                       double sampleVolume_mL, double dilutionFactor, int wavelength_nm,
                       double pathLength_mm);

/// Ways to bring all expected measurands into aimedSignals, best first, of at most two steps (three where two
/// do not do). Only volumes that a listed pipette can be set to and listed flasks; where none is listed,
/// withUsualGlass. Another sample volume than the method's leaves a volume of diluent that a pipette can be set
/// to, as long as there is such a way.
///
/// Order: fewer steps; then simple factors (simpleOnes: the others only where no chain of so many simple steps
/// does); then the outermost signal nearest to aimedSignal, |log10| in whole steps of 0.3; then the method's own
/// sample volume; then the smaller uncertainty in whole steps of half a percent; then the smaller flasks together;
/// then the smaller uncertainty; then a sample volume in steps of 0.05 mL. At most five of each number of steps,
/// no two with the same pipettes and flasks, and no longer chain that a shorter one equals in signal, sample
/// volume and uncertainty. The factor is that of the volumes. Empty where none does: whyNone says why.
std::vector<DilutionProposal> proposeDilutions(const assay::Method &method, const DilutionQuestion &question,
                                               const Glassware &glassware);
/// One sentence for an analyst: nothing expected, too weak at the largest volume, too strong for the
/// glassware in hand, measurands too far apart. Empty where there is a proposal.
QString whyNone(const assay::Method &method, const DilutionQuestion &question, const Glassware &glassware);

} // namespace plateau::planning
