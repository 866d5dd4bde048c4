// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/evaluation/layout.h"

#include <span>

namespace plateau::evaluation {

/// Adds a result for every sample and derived quantity of the method whose terms are all at hand, after those
/// of the sample's measurands. evaluation: complete but for these.
void addDerived(const Layout &layout, std::span<const Companion> companions, const Rules &rules,
                Evaluation &evaluation);

} // namespace plateau::evaluation
