// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/dilutionmarks.h"

namespace plateau::notebook {

/// Refuses a step that the run has not.
qint64 dilutionRow(const Database &database, RunId run, const DilutionPlace &place);

/// kind: Done or Undone.
void storeDilutionMark(Act &act, RunId run, qint64 dilution, MarkKind kind);

/// All of the run, oldest first.
std::vector<StoredDilutionMark> loadDilutionMarks(const Database &database, RunId run);

} // namespace plateau::notebook
