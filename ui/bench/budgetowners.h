// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/notebook/records.h"
#include "ui/shared/sentencelist.h"

#include <vector>

namespace plateau::ui {

/// Whose numbers the budget of this result is made of, as the run's plan keeps it: what is the laboratory's
/// own, what is common practice, and what no record says. Empty where there is no budget.
std::vector<Sentence> budgetOwners(const notebook::StoredRun &stored, const evaluation::Result &result);

} // namespace plateau::ui
