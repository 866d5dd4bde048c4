// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"
#include "core/notebook/records.h"

namespace plateau::notebook {

/// Notebook::load and Notebook::loadRevision.
StoredRun loadStored(const Database &database, RunId run);
StoredRun loadStoredRevision(const Database &database, RunId run, int revision);

} // namespace plateau::notebook
