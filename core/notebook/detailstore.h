// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/planning/shelf.h"

namespace plateau::notebook {

/// What is told of a sample, on the shelf or in a plan: the row it was stored in.
qint64 storeDetail(Act &act, const planning::ShelfSample &sample);
planning::ShelfSample loadDetail(const Database &database, qint64 row);

} // namespace plateau::notebook
