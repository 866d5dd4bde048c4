// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"

namespace plateau::notebook {

/// The audit entries of one run, oldest first.
std::vector<AuditEntry> loadHistory(const Database &database, RunId run);

} // namespace plateau::notebook
