// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/planrecord.h"
#include "core/planning/uncertaintysources.h"

#include <optional>
#include <vector>

namespace plateau::planning {

/// What a plan keeps of these sources: everything but the replicates and the numbers.
std::vector<InputOwner> ownersToKeep(const std::vector<OwnedInput> &sources);

/// For a run whose numbers were put in elsewhere: of uncertaintySources those whose number the run has to its
/// last digit.
std::vector<InputOwner> ownersFor(const assay::Method &method, const Laboratory &laboratory,
                                  const run::Run &run);

/// Whose numbers the budgets of the run are made of, as its plan keeps it, in the order of UncertaintyInput:
/// the run's numbers with their owners, dilution steps that state their own with the glass they were planned
/// with (steps that are alike once), the standards where they calibrate, and the replicates. Absorptivity and
/// path length only where they calibrate; dilution and extract only where something rests on them. What is
/// not on record says so. sample: of its dilution alone; empty: of all. Empty where the run states no
/// uncertainty.
std::vector<OwnedInput> ownersOnRecord(const run::Run &run, const std::optional<PlanRecord> &plan,
                                       const QString &sample = {});

/// The same of all seven numbers that the run states, whether a budget holds them or not, and of the
/// standards that calibrate.
std::vector<OwnedInput> statedOnRecord(const run::Run &run, const std::optional<PlanRecord> &plan);

} // namespace plateau::planning
