// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

RackSize sizeOf(const run::Run &run);
/// Leaves out the samples and tubes behind those.
void cutTo(run::Run &run, const RackSize &size);
/// What the run was planned with; nothing where no tube was added since.
std::optional<RackSize> plannedSize(const Database &database, RunId run);

/// See Notebook::addTubes.
void addTubes(Act &act, RunId run, const std::vector<run::Sample> &samples,
              const std::vector<run::Tube> &tubes, const std::vector<planning::PlannedSample> &planned);

} // namespace plateau::notebook
