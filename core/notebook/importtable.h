// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/exporttables.h"

namespace plateau::notebook {

/// Puts the rows of an exported table's JSON into the table, and says how many those were. Throws Failure,
/// also where the file is none of that table.
qint64 importTable(const Database &database, const ExportedTable &table, const QString &jsonPath,
                   Progress &progress);

} // namespace plateau::notebook
