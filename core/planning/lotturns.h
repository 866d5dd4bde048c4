// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/lot.h"

namespace plateau::planning {

/// nullptr for one that is not among them.
const Lot *lotWith(qint64 id, const std::vector<Lot> &lots);

/// Of several containers of a lot the one that is to be used up first, as the plan counts on it; nullptr
/// where none can be pipetted from.
const Lot *containerOf(const QString &lot, const QString &reagent, const std::vector<Lot> &lots);

/// From which container the next dose is taken: the one in use as long as it holds the dose by the book, else
/// the next one that is fit then (nextLot); nullptr where none is. Bench, paper and plan go by this.
const Lot *goOnWith(qint64 inUse, const std::vector<Lot> &lots, const QString &reagent, double volume_mL,
                    const QDateTime &at);

/// The same for one dose after another, as each leaves less for the next: by dose the container. Behind a
/// dose that none holds nothing is known, since a person decides there how it goes on.
std::vector<std::optional<qint64>> lotsInTurn(qint64 inUse, std::vector<Lot> lots, const QString &reagent,
                                              const std::vector<double> &doses_mL, const QDateTime &at);

} // namespace plateau::planning
