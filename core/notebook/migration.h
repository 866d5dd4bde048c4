// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"
#include "core/notebook/schema.h"
#include "core/notebook/updating.h"

namespace plateau::notebook {

/// user_version; 0 in a file that is not ours or not made yet.
int schemaVersion(const Database &database);

/// Brings the file to the last of the steps, each in one transaction together with its number, its audit
/// entry and a check of the foreign keys, which are off meanwhile so that tables may be rebuilt. Stops at the
/// first failure, and where the watch says so, with what was reached before it.
void migrate(Database &database, const std::vector<SchemaStep> &steps, const Surroundings &surroundings,
             UpdateProgress &progress);
/// Makes what runs are found by anew where it does not know them all, as after a migration; in a large
/// notebook that takes minutes.
void completeSearch(const Database &database, UpdateProgress &progress);

/// "notebook-20260302-091500-schema1.plateau" beside "notebook.plateau".
QString backupPath(const QString &notebook, const QDateTime &now, int version);
/// What a program that was killed while it made such a copy left.
void removeHalfCopies(const QString &notebook);

} // namespace plateau::notebook
