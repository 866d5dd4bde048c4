// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/run/run.h"

#include <optional>

namespace plateau::evaluation {

/// What the method itself says of the absorbance at the start, before anything reacted.

/// Of a falling reagent whose reserve the method states: the largest signal and the reserve, as the run's wavelength and
/// path length show them. Nothing of other methods: what falls may come with the sample.
std::optional<double> leastAtStart(const assay::Method &method, const run::Run &run);

/// Of a rising method with a limit of the photometer, in a tube without a sample: what leaves room for the largest
/// signal below the limit, but never less than half of it (common practice, no source).
std::optional<double> mostAtStart(const assay::Method &method);

/// Nearer to a tenth of the least than to it.
bool isTenthOf(double least, double absorbance);

} // namespace plateau::evaluation
