// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/controlchart.h"

namespace plateau::charts {

/// What speaks against a panel with its baseline: rules for values, means and ranges (of ranges those that
/// hold for them; a moving range shares a value with its neighbour and is only held against 3 s), limits for
/// averages and sums. A pattern that goes on is one finding.
std::vector<Finding> findingsOf(const Panel &panel, const Settings &settings);

} // namespace plateau::charts
