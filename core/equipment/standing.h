// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/outcome.h"

namespace plateau::equipment {

/// How something stands on a day, best first.
enum class Standing { OutOfUse, InDate, DueSoon, Unchecked, Overdue, Failed };

/// So many days ahead a check is pointed out. Common practice, no source.
inline constexpr int pointedOut_days = 14;

struct AspectStanding {
    Aspect aspect = Aspect::Volume;
    Standing standing = Standing::Unchecked;
    /// The last check that counts on that day; nullptr: none. Lives as long as the item.
    const HeldCheck *last = nullptr;
    /// The last day that it covers.
    std::optional<QDate> due{};
};
/// One for each aspect that is asked for, as things were known with the checks of that day and before.
std::vector<AspectStanding> standingsOf(const HeldItem &held, const QDate &today);
/// The worst of them; of several as bad the one that is due first.
AspectStanding standingOf(const HeldItem &held, const QDate &today);
/// "in date until 2027-01-31", "due in 5 days", "overdue since 2026-11-01: volume", "failed on 2026-11-03:
/// volume", "never checked: volume", "out of use".
QString standingText(const AspectStanding &standing, const QDate &today);
/// Failed, overdue or never checked: not to be relied on.
bool isInDoubt(Standing standing);

/// The last check of that aspect that was passed and is not followed by one that failed, on that day; nullptr
/// otherwise.
const HeldCheck *validCheck(const HeldItem &held, Aspect aspect, const QDate &today);
/// "check 7 of 2026-11-03": in ISO 8601 at every desk, since it is kept with the runs and acts that name the check.
QString checkName(const HeldCheck &check);

} // namespace plateau::equipment
