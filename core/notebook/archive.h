// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/progress.h"

#include <QString>

namespace plateau::notebook {

/// The years that acts of the notebook are of, as the clock on the wall had them; ascending. Acts are in the
/// order of their time: a year that the clock was in by mistake, and left again, may be missing.
std::vector<int> yearsIn(const Database &database);

/// A notebook of its own that holds everything up to the last act of that year and nothing after it: the
/// same rows, the same beginning of the audit chain, the same hashes, so that it verifies by itself. Nothing
/// is taken out of the notebook: its chain could not be followed any more. The file may only be read.
/// Returns its audit head. Throws Failure and Stopped; then there is no file of that name.
AuditHead archiveYear(const Session &session, int year, const QString &target, const Watch &watch = {});

} // namespace plateau::notebook
