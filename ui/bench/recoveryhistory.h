// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/bench/reviewbasis.h"
#include "ui/shared/pointchart.h"

#include <optional>

namespace plateau::ui {

class BenchSession;

/// As many runs back as a chart shows with sense.
inline constexpr int mostRuns = 60;

/// What a run is read against: as it holds now while it is on the bench, else as it held when it was decided
/// (revision: for that time, from 1); and what standards and controls recovered in the newest decided runs by
/// its method that began before it, accepted or rejected. Throws notebook::Failure.
ReviewBasis reviewBasisOf(const BenchSession &session, const notebook::StoredRun &stored,
                          std::optional<int> revision = {});

/// The recoveries that say something: those of standards that do not calibrate their own run.
std::vector<evaluation::StandardRecovery> tellingRecoveries(const run::Run &run,
                                                            const evaluation::Evaluation &evaluation);

/// The one that is shown of this measurand: the first outside the method's limits, else the first; nullptr:
/// none was measured.
const evaluation::StandardRecovery *shownRecovery(const std::vector<evaluation::StandardRecovery> &recoveries,
                                                  const assay::Method &method, const QString &measurand);

/// What was recovered so far, and this recovery behind it, against the method's limits.
PointHistory historyOf(const evaluation::StandardRecovery &newest, const notebook::StoredRun &stored,
                       const ReviewBasis &basis);

} // namespace plateau::ui
