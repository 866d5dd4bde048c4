// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

/// Everything of checks.h, and every decision's evaluation made again from the stored inputs, as they were
/// then, and compared in all but its wording: a later version of the program may say the same in other words.
/// So are the outcomes of checks of equipment.
Verification verifyNotebook(const Session &session, const std::vector<SchemaStep> &steps,
                            const Watch &watch = {});

} // namespace plateau::notebook
