// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/decisionbasis.h"

namespace plateau::notebook {

/// Keeps with a decision which settings and limits held.
void storeDecisionBasis(Act &act, qint64 decisionRow);

/// Notebook::decisionBasis. Of a decision that was made before this was kept, the audit trail tells.
DecisionBasis loadDecisionBasis(const Database &database, RunId run, std::optional<int> revision);

} // namespace plateau::notebook
