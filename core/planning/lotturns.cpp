// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/lotturns.h"

#include <algorithm>

namespace plateau::planning {

const Lot *lotWith(qint64 id, const std::vector<Lot> &lots)
{
    const auto found = std::ranges::find(lots, id, &Lot::id);
    return found == lots.end() ? nullptr : &*found;
}

const Lot *containerOf(const QString &lot, const QString &reagent, const std::vector<Lot> &lots)
{
    const Lot *best = nullptr;
    for (const Lot &one : lots) {
        if (!one.isDry && one.lot == lot && isSameReagent(one.reagent, reagent) &&
            (!best || isUsedBefore(one, *best)))
            best = &one;
    }
    return best;
}

const Lot *goOnWith(qint64 inUse, const std::vector<Lot> &lots, const QString &reagent, double volume_mL,
                    const QDateTime &at)
{
    const Lot *own = lotWith(inUse, lots);
    return own && holds(*own, volume_mL) ? own : nextLot(lots, reagent, volume_mL, at);
}

std::vector<std::optional<qint64>> lotsInTurn(qint64 inUse, std::vector<Lot> lots, const QString &reagent,
                                              const std::vector<double> &doses_mL, const QDateTime &at)
{
    std::vector<std::optional<qint64>> turns;
    for (const double volume_mL : doses_mL) {
        const Lot *taken = goOnWith(inUse, lots, reagent, volume_mL, at);
        if (!taken)
            break;
        inUse = taken->id;
        turns.emplace_back(inUse);
        std::ranges::find(lots, inUse, &Lot::id)->remaining_mL -= volume_mL;
    }
    turns.resize(doses_mL.size());
    return turns;
}

} // namespace plateau::planning
