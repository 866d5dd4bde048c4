// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"
#include "core/notebook/progress.h"
#include "core/notebook/schema.h"

namespace plateau::notebook {

// What can be wrong with a notebook, from the file up. Each check says what it found and never throws for
// damage; a part that cannot be read at all is a finding, too. Those that are given a progress count what
// they have looked at with it, and throw what it throws.

/// SQLite's own integrity check and the foreign keys. Neither sees a changed value.
std::vector<Finding> fileFindings(const Database &database);
/// Tables, triggers, indexes and views that are missing, changed or foreign.
std::vector<Finding> schemaFindings(const Database &database, const Layout &expected);
/// Every audit entry continues the one before it and is as it was written. Names entries.
/// Counts entries.
std::vector<Finding> chainFindings(const Database &database, Progress *progress = nullptr);
/// The same of the last entries alone, and of what they cover.
std::vector<Finding> lastChainFindings(const Database &database, qint64 entries);
/// Every row of every table is covered by an audit entry and has the content it had then; none is gone.
std::vector<Finding> recordFindings(const Database &database, const std::vector<SchemaStep> &steps,
                                    int version, Progress *progress = nullptr);
/// The same of some tables only. Counts rows.
std::vector<Finding> recordFindings(const Database &database, const std::vector<SchemaStep> &steps,
                                    int version, const QStringList &tables, Progress *progress = nullptr);

/// Every check of equipment comes to the outcome that is stored, worked out again from its numbers. Names
/// checks, and counts them. programNow: the version that looks.
std::vector<Finding> equipmentFindings(const Database &database, const QString &programNow, int &checked);

/// "reading 17: ..." in one line each.
QString findingLines(const std::vector<Finding> &findings);

} // namespace plateau::notebook
