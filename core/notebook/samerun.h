// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"
#include "core/notebook/records.h"

namespace plateau::notebook {

/// The newest run that came here with exactly this content: method, title, start, samples, standards, tubes
/// and readings. What was keyed or corrected here since does not count. A run without any reading is a plan,
/// and used again as often as one likes: it is the same only as one of which nothing is read either.
std::optional<RunSummary> findSameRun(const Database &database, const run::Run &run,
                                      const assay::Method &method);

} // namespace plateau::notebook
