// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/standardlife.h"

#include <algorithm>
#include <cmath>

namespace plateau::planning {

std::optional<double> standardLife_h(const run::Standard &standard, const evaluation::Rules &rules)
{
    if (standard.lossPerHour <= 0)
        return std::nullopt;
    // (1 - p)^h = what must remain
    const double remaining_h = std::log(rules.minStandardRemaining) / std::log1p(-standard.lossPerHour);
    return std::min(remaining_h, rules.maxStandardAge_h);
}

std::optional<QDateTime> useStandardBy(const run::Standard &standard, const evaluation::Rules &rules)
{
    const auto life_h = standardLife_h(standard, rules);
    if (!life_h || !standard.preparedAt)
        return std::nullopt;
    const auto minutes = static_cast<qint64>(std::floor(*life_h * 60 + 1e-9));
    return standard.preparedAt->addSecs(minutes * 60);
}

} // namespace plateau::planning
