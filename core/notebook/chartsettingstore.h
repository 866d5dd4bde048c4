// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/charts.h"

namespace plateau::notebook {

/// As they were saved last. Throws Failure(Damaged) where a word in them is none.
std::optional<StoredChartSettings> loadChartSettings(const Database &database,
                                                     const charts::Subject &subject);
void storeChartSettings(Act &act, const charts::Subject &subject, const charts::Settings &settings);

} // namespace plateau::notebook
