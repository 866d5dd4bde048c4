// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/evaluation/evaluation.h"
#include "core/run/run.h"

#include <optional>
#include <vector>

namespace plateau::evaluation {

/// What is known of a tube that lies outside the window.
struct TubeState {
    double netSignal = 0;
    double sampleVolume_mL = 0;
    /// Reading that came nearest to the photometer's limit, and what the blanks show at the same point.
    double largestReading = 0;
    double blankAtLargest = 0;
    /// Later reading of a falling signal, and what a tube without analyte would show there.
    double remaining = 0;
    double remainingWithoutSample = 0;
    bool usedUp = false;
};

/// The smallest factor of the preferred series (2, 4, 5, 10, … 1000 times the present dilution) that is
/// predicted to bring the net signal to at most 0.8 of the window's top, every reading under the photometer's
/// limit and the falling reagent above its reserve. 1000 where none is predicted to suffice.
double strongerDilution(const assay::Method &method, const TubeState &tube);

/// Repeat more dilute: the total factor for the repeat with a chain of glassware that makes it.
Advice diluteAdvice(const assay::Method &method, const run::Sample &sample, const TubeState &tube);

/// For a net signal below the window: a larger sample volume, by simple steps, if the method's range allows, else a smaller
/// dilution, else nothing (it is below the limit of quantification).
std::optional<Advice> strengthenAdvice(const assay::Method &method, const run::Sample &sample,
                                       const TubeState &tube);

/// A chain of one-mark pipettes and flasks that dilutes by exactly this factor, in as few steps as it takes
/// with flasks of 5 to 100 mL. Empty for a factor of 1. Nothing if no chain of up to three steps makes it.
std::optional<std::vector<run::DilutionStep>> dilutionChain(double factor);

} // namespace plateau::evaluation
