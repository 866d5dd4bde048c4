// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/planning/laboratory.h"

namespace plateau::notebook {

/// As it was saved last, or planning::usualLaboratory. Throws Failure(Damaged) where what was saved is none
/// any more.
planning::Laboratory loadLaboratory(const Database &database);
/// As that row of the document store has it.
planning::Laboratory loadLaboratory(const Database &database, std::optional<qint64> row);
/// False where exactly this was saved last.
bool storeLaboratory(Act &act, const planning::Laboratory &laboratory);

} // namespace plateau::notebook
