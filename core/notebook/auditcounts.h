// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audittrail.h"

#include <map>

namespace plateau::notebook {

/// How many rows of which table an act added.
using RecordCounts = std::map<QString, int>;

/// "tube: 40", one for each table.
std::vector<AuditChange> countedChanges(const RecordCounts &counts);

/// A run that was put on the bench: how many tubes by which method, then how much of what else there was, and its lots.
AuditChange benchChange(const Database &database, qint64 run, const RecordCounts &counts);

} // namespace plateau::notebook
