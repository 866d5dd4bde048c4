// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

/// What was planned of a run whose own rows are stored. Expects a plan that planning::problemsOf finds no
/// error in; throws Failure(Refused) where it repeats a sample of a run that is not there.
void storePlanRecord(Act &act, RunId run, const planning::PlanRecord &plan);
/// Further ones, behind those it has. Of a run without a plan they are kept too, and loadPlanRecord gives
/// none.
void storePlannedSamples(Act &act, RunId run, const std::vector<planning::PlannedSample> &samples);
std::optional<planning::PlanRecord> loadPlanRecord(const Database &database, RunId run);

} // namespace plateau::notebook
