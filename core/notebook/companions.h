// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/inputs.h"

namespace plateau::notebook {

/// Another run that derived quantities take from, as it stood when those were its newest reading and mark.
struct CompanionRow {
    RunId run;
    Seen newest;
};

/// Which runs the derived quantities of this one take from now: accepted runs by the methods its method
/// names, put on the bench within a week of it, that share a sample; newest first. (A week: common practice,
/// no source; an older run of a sample of that name is hardly the same sample any more.)
std::vector<CompanionRow> findCompanions(const Database &database, RunId run, const Inputs &inputs);
/// Those a decision rested on, in their order.
std::vector<CompanionRow> loadCompanionRows(const Database &database, qint64 decisionRow);
void storeCompanions(Act &act, qint64 decisionRow, const std::vector<CompanionRow> &companions);

/// decisionRow: the decision that takes from them; nothing where that is still to come. A sample that the
/// companion's own decision, the last before, rejected or wants repeated is not in its run.
std::vector<evaluation::Companion> loadCompanions(const Database &database,
                                                  const std::vector<CompanionRow> &rows,
                                                  std::optional<qint64> decisionRow);

/// What the decision of a run rested on, worked out again.
evaluation::Evaluation evaluationAt(const Database &database, RunId run, const DecisionRow &decision);

} // namespace plateau::notebook
