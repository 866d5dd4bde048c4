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
    /// extract.
    std::map<QString, double> expected_g_per_L;
    int wavelength_nm = 340;
    double pathLength_mm = 10;
    /// Absent: any volume of the method's range that a pipette of the laboratory makes.
    std::optional<double> sampleVolume_mL;
};

/// One step of a chain with what it is made with: indices into Glassware.
struct ChainStep {
    run::DilutionStep step;
    int pipette = 0;
    int flask = 0;
    bool operator==(const ChainStep &) const = default;
};

struct DilutionProposal {
    double sampleVolume_mL = 0;
    /// Empty: undiluted.
    std::vector<ChainStep> chain;
    double factor = 1;
    /// Net signal by measurand.
    std::map<QString, double> predictedSignal;
    /// Relative standard uncertainty of the factor, in percent.
    double uncertainty_percent = 0;
    bool operator==(const DilutionProposal &) const = default;
};

/// Net signal that a sample of this strength gives: c v / (F x method factor at that volume).
double predictedSignal(const assay::Method &method, const QString &measurand, double expected_g_per_L,
                       double sampleVolume_mL, double dilutionFactor, int wavelength_nm,
                       double pathLength_mm);

/// Ways to bring all expected measurands between the window's smallest signal and 0.8 of its largest, best
/// first, of at most two steps (three where two do not do): fewer steps, then the signal nearest to the
/// middle of that span on a logarithmic scale within a tenth, then the method's own sample volume, then the
/// smaller uncertainty, then the smaller flasks. Empty where none does: whyNone says why.
std::vector<DilutionProposal> proposeDilutions(const assay::Method &method, const DilutionQuestion &question,
                                               const Glassware &glassware);
/// One sentence for an analyst: too weak at the largest volume, too strong for the glassware in hand,
/// measurands too far apart.
QString whyNone(const assay::Method &method, const DilutionQuestion &question, const Glassware &glassware);

} // namespace plateau::planning
