// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/controlchart.h"

namespace plateau::charts {

/// The lines of a chart's panels, and what they come from.
struct Baselines {
    Basis basis;
    /// Of single values, of means, or of what averages and sums are made of; absent of a chart of ranges.
    std::optional<quality::ControlBaseline> values;
    /// Of moving ranges or the ranges of subgroups or duplicates.
    std::optional<quality::ControlBaseline> ranges;
};

/// Nothing where the earlier runs give fewer values than valuesForLimits.
std::optional<Baselines> baselinesOf(const Series &whole, const Settings &settings);

} // namespace plateau::charts
