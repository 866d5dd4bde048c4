// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/records.h"

namespace plateau::notebook {

/// As they are stored: in the run's order, the factor of an advised dilution from its steps. Throws
/// Failure(Refused) for a sample that the run does not hold or that is named twice, a rejection without a
/// reason, an accepted sample of a rejected run, and advice that is none.
std::vector<SampleDecision> requireSampleDecisions(const run::Run &run, const RunDecision &decision);

void storeSampleDecisions(Act &act, qint64 decisionRow, const std::vector<SampleDecision> &samples);
std::vector<SampleDecision> loadSampleDecisions(const Database &database, qint64 decisionRow);

/// The samples that a run's last decision before that one (a row; nothing: the one that stands) rejected or
/// wants repeated, each by itself. Nobody takes their results any more.
QStringList withdrawnSamples(const Database &database, RunId run, std::optional<qint64> before);

} // namespace plateau::notebook
