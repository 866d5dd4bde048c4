// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/run/run.h"

namespace plateau::run {

inline constexpr std::size_t maxTubes = 96;

/// What is wrong with the rack, whatever the method: too few or too many tubes, a role without the sample,
/// standard or spike it needs or with one it cannot have, a name that is not in the run, a reading that no
/// photometer shows, a series out of order, a time off the run's clock. A sample that no tube holds is a
/// warning.
void checkTubes(const Run &run, assay::Problems &problems);

} // namespace plateau::run
