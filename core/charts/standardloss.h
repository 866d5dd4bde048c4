// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/series.h"
#include "core/quality/exponentialloss.h"

#include <QString>

#include <optional>
#include <vector>

namespace plateau::charts {

/// What was left of a standard, as the laboratory found it.
struct AgedRecovery {
    double age_h = 0;
    /// Found against what was weighed in and not against what should be left: 0 to 100 % and scatter.
    double left_percent = 0;
};
/// Of the points that know their standard's age and were not left out.
std::vector<AgedRecovery> agedRecoveries(const Series &series);

/// The loss per hour in the laboratory's own recoveries, and whether it is what the method states.
struct StandardLoss {
    std::optional<quality::ExponentialLoss> fit;
    /// As stated: by the method, else by the runs.
    std::optional<double> statedPerHour;
    /// Agrees: the stated loss lies within the 95 % interval. NotTold: too few values, ages that are alike,
    /// nothing stated, or an interval so wide that no loss at all and twice the stated one lie in it.
    enum class Verdict { NotTold, Agrees, LosesFaster, LosesSlower } verdict = Verdict::NotTold;
    /// All of that in one sentence.
    QString sentence;
};
StandardLoss standardLoss(const std::vector<AgedRecovery> &recoveries, std::optional<double> statedPerHour);

} // namespace plateau::charts
