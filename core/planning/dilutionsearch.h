// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/dilutionplan.h"
#include "core/planning/glassware.h"

#include <vector>

namespace plateau::planning {

/// What a sample volume asks of the dilution: decadic logarithms of factors.
struct DilutionTarget {
    double sampleVolume_mL = 0;
    bool usual = true;
    /// The factors that bring every measurand into the span; none where lowest > highest.
    double lowest = 0;
    double highest = 0;
    /// The factor that brings them to its middle, and how far the outermost then are from it.
    double middle = 0;
    double spread = 0;
};

/// Part of a decade within which signals count as equally near the middle: one-mark pipettes and flasks of
/// the usual sizes (factors of 2, 2.5, 4, 5, 10) come so near to every one.
inline constexpr double equallyNear = 0.15;
/// Proposals kept for each number of steps.
inline constexpr std::size_t proposalsForEachLength = 5;

struct RankedProposal {
    /// Its signals are left to the caller.
    DilutionProposal proposal;
    int nearness = 0;
    bool usualVolume = true;
};

/// The best chains of exactly so many steps, best first, one for each set of pipettes and flasks: nearest to
/// the middle, usual sample volume first, smaller uncertainty, smaller flasks.
std::vector<RankedProposal> bestChains(const std::vector<DilutionTarget> &targets,
                                       const std::vector<PossibleStep> &steps, int length);

} // namespace plateau::planning
