// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

/// Failure(Refused).
Failure noSuchRun(RunId run);

/// The run's own rows: everything but its readings. methodRow: from storeMethod. Expects a sound run.
RunId storePlan(Act &act, const run::Run &run, qint64 methodRow);
/// More samples and tubes behind those the run has.
void storeFurther(Act &act, RunId run, const std::vector<run::Sample> &samples,
                  const std::vector<run::Tube> &tubes, const RackSize &before);
/// Without readings. Throws Failure(Refused) if there is no such run.
run::Run loadPlan(const Database &database, RunId run);

/// The row of the method it was put on the bench with.
qint64 methodRowOf(const Database &database, RunId run);

/// The row of the tube at that index. Throws Failure(Refused) if the run has no such tube.
qint64 tubeRow(const Database &database, RunId run, int index);

} // namespace plateau::notebook
