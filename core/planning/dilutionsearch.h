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
    /// The factor that brings them to the signal aimed at, and how far the outermost then are from it.
    double middle = 0;
    double spread = 0;
};

/// Part of a decade within which signals count as equally near the one aimed at: a factor of two, so that no
/// sample is diluted, and no sample volume changed, for less.
inline constexpr double equallyNear = 0.3;
/// Within so much a smaller flask is worth more than a smaller uncertainty of the factor, in percent: it
/// saves sample, and the result's own uncertainty is several times that.
inline constexpr double equallyCertain_percent = 0.5;
/// Proposals kept for each number of steps.
inline constexpr std::size_t proposalsForEachLength = 5;

struct RankedProposal {
    /// Its signals are left to the caller.
    DilutionProposal proposal;
    int nearness = 0;
    bool usualVolume = true;
};

/// The best chains of exactly so many steps, best first, one for each set of pipettes and flasks: in the
/// order of proposeDilutions.
std::vector<RankedProposal> bestChains(const std::vector<DilutionTarget> &targets,
                                       const std::vector<PossibleStep> &steps, int length);

} // namespace plateau::planning
