// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/lot.h"

namespace plateau::planning {

/// So many days before its last good day a lot is pointed out. Common practice, no source.
inline constexpr int warnAhead_days = 7;

/// What tells whether a container is low: the most a tube takes of it, where a method does, and the places
/// of the laboratory's rack.
struct LotDemand {
    std::optional<double> dose_mL;
    int rackPlaces = 0;
};

/// How a container stands and what comes next, for every page that warns of it.
struct LotOutlook {
    LotFitness fitness = LotFitness::Good;
    /// More was taken than it held.
    bool isOverdrawn = false;
    std::optional<UseBy> useBy{};
    /// Of a good one: so many days to the last good one, where they are warnAhead_days or less.
    std::optional<qint64> daysLeft{};
    /// Of one that is good or still dry: tubes that it serves, where they are less than a full rack.
    std::optional<int> tubesLeft{};
    bool operator==(const LotOutlook &) const = default;

    /// It must not be pipetted from.
    bool isBad() const;
    /// It may, but soon not any more.
    bool isNear() const { return !isBad() && (daysLeft || tubesLeft); }
};

/// Between these moments; both the same: at that moment.
LotOutlook outlookOf(const Lot &lot, const QDateTime &from, const QDateTime &to,
                     const LotDemand &demand = {});

/// "2026-03-01"
QString lotDayText(const QDate &day);
/// "2026-03-01 (opened)": the day and what ends it, but for the label.
QString useByText(const UseBy &useBy);
/// "used up", "expired on 2026-03-01", "use by 2026-03-04", "low, enough for tubes: 3", "in use", …
QString outlookText(const Lot &lot, const LotOutlook &outlook);
/// The same without any day, for where that stands beside it: "expired", "opened; good for 5 more days", "opened", …
QString stateText(const Lot &lot, const LotOutlook &outlook);
/// What is wrong with it, as outlookText says it; empty where nothing is.
QString faultText(const Lot &lot, LotFitness fitness);

/// What speaks against a lot that a run took from on that day, or that it ends soon: a sentence for its
/// review; empty where neither is so. What it holds now does not count. today: for what ends soon.
QString usedLotText(const Lot &lot, const QDateTime &usedAt, const QDate &today);

} // namespace plateau::planning
