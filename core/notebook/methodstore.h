// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

/// The row of the method with exactly this content; a new one where there is none.
qint64 storeMethod(Act &act, const assay::Method &method);
/// Throws Failure(Damaged) where the stored document is no method any more.
assay::Method loadMethod(const Database &database, qint64 row);

} // namespace plateau::notebook
