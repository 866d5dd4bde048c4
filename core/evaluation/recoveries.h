// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/evaluation/layout.h"

namespace plateau::evaluation {

/// Found against expected, of every standard that holds the measurand and is in a tube.
void addStandards(const Layout &layout, size_t measurand, Evaluation &evaluation);
/// Of every sample that is in a spiked tube.
void addSpikes(const Layout &layout, size_t measurand, Evaluation &evaluation);

} // namespace plateau::evaluation
