// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/specification.h"
#include "core/notebook/audit.h"

namespace plateau::notebook {

/// As they were saved last; none where nobody saved any. Throws Failure(Damaged) where what was saved is none
/// any more.
std::vector<evaluation::Specification> loadSpecifications(const Database &database);
/// As that row of the document store has them.
std::vector<evaluation::Specification> loadSpecifications(const Database &database,
                                                          std::optional<qint64> row);
/// False where exactly these were saved last.
bool storeSpecifications(Act &act, const std::vector<evaluation::Specification> &specifications,
                         const QString &reason);

} // namespace plateau::notebook
