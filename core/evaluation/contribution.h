// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/evaluation/layout.h"
#include "core/evaluation/uncertainty.h"

namespace plateau::evaluation {

/// The value of one tube and one measurand.
const TubeValue &valueAt(const Evaluation &evaluation, const Layout &layout, int tube, size_t measurand);
/// "g/L" of a liquid, "g/100 g" of a solid.
QString unitOf(const run::Sample &sample);
/// The tubes that a sample's result rests on, with their values; empty while there are none.
Contribution contributionOf(const Layout &layout, const Evaluation &evaluation, size_t measurand,
                            const run::Sample &sample);

} // namespace plateau::evaluation
