// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"
#include "core/planning/planrecord.h"
#include "core/run/run.h"

#include <QString>

#include <map>
#include <optional>

namespace plateau::planning {

/// How the signal that a sample is expected to give lies to the method's window.
enum class SignalFit { TooWeak, Fits, TooStrong };

struct ExpectedSignal {
    double signal = 0;
    SignalFit fit = SignalFit::Fits;
    bool operator==(const ExpectedSignal &) const = default;
};

/// Expected concentrations as DilutionQuestion wants them: g/L of the undiluted sample, of a solid of its
/// extract. Nothing where a solid is not weighed yet.
std::optional<std::map<QString, double>> expectedConcentrations(const ShelfSample &what,
                                                                const run::Sample &sample);

/// By measurand, in a tube of that sample volume (absent: the method's), as the run dilutes the sample. A
/// signal fits between the window's smallest and largest.
std::map<QString, ExpectedSignal> expectedSignals(const assay::Method &method, const run::Run &run,
                                                  const run::Sample &sample, const ShelfSample &what,
                                                  const std::optional<double> &sampleVolume_mL);

/// A warning for every sample of the plan whose expected signal lies outside the window, at its place in a
/// plateau-run/1 document.
assay::Problems unfitExpectations(const assay::Method &method, const run::Run &run, const PlanRecord &plan);

} // namespace plateau::planning
