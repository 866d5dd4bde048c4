// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/standing.h"

#include "core/assay/localday.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::equipment {

namespace {

struct StandingWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::equipment::Standing)
};

/// By their days; of one day the one that was keyed last.
const HeldCheck *lastCheck(const HeldItem &held, Aspect aspect, const QDate &today)
{
    const HeldCheck *last = nullptr;
    for (const HeldCheck &check : held.checks) {
        const bool counts = check.check.aspect == aspect && !check.withdrawn && check.check.day <= today;
        if (counts && (!last || check.check.day >= last->check.day))
            last = &check;
    }
    return last;
}

bool passed(const HeldCheck &check)
{
    const auto outcome = outcomeOf(check.of, check.check);
    return outcome && outcome->passed;
}

AspectStanding standingOfAspect(const HeldItem &held, Aspect aspect, int every_days, const QDate &today)
{
    AspectStanding found{aspect, Standing::Unchecked, lastCheck(held, aspect, today), std::nullopt};
    if (!found.last)
        return found;
    found.due = found.last->check.day.addDays(every_days);
    const qint64 left_days = today.daysTo(*found.due);
    found.standing = !passed(*found.last)          ? Standing::Failed
                     : left_days < 0               ? Standing::Overdue
                     : left_days < pointedOut_days ? Standing::DueSoon
                                                   : Standing::InDate;
    return found;
}

} // namespace

std::vector<AspectStanding> standingsOf(const HeldItem &held, const QDate &today)
{
    std::vector<AspectStanding> all;
    for (const auto &[aspect, days] : held.item.every_days)
        all.push_back(standingOfAspect(held, aspect, days, today));
    return all;
}

AspectStanding standingOf(const HeldItem &held, const QDate &today)
{
    if (!held.item.inUse)
        return {Aspect::Volume, Standing::OutOfUse, nullptr, std::nullopt};
    const std::vector<AspectStanding> all = standingsOf(held, today);
    const auto worse = [](const AspectStanding &one, const AspectStanding &other) {
        if (one.standing != other.standing)
            return one.standing < other.standing;
        return one.due && other.due && *one.due > *other.due;
    };
    return all.empty() ? AspectStanding{} : *std::ranges::max_element(all, worse);
}

QString standingText(const AspectStanding &standing, const QDate &today)
{
    switch (standing.standing) {
    case Standing::OutOfUse:
        return StandingWording::tr("out of use");
    case Standing::InDate:
        return StandingWording::tr("in date until %1").arg(assay::shownDay(*standing.due));
    case Standing::DueSoon: {
        const auto left_days = static_cast<int>(today.daysTo(*standing.due));
        const QString when = left_days == 0   ? StandingWording::tr("due today")
                             : left_days == 1 ? StandingWording::tr("due in 1 day")
                                              : StandingWording::tr("due in %1 days").arg(left_days);
        return StandingWording::tr("%1: %2").arg(when, aspectName(standing.aspect));
    }
    case Standing::Overdue:
        return StandingWording::tr("overdue since %1: %2")
            .arg(assay::shownDay(*standing.due), aspectName(standing.aspect));
    case Standing::Failed:
        return StandingWording::tr("failed on %1: %2")
            .arg(assay::shownDay(standing.last->check.day), aspectName(standing.aspect));
    default:
        return StandingWording::tr("never checked: %1").arg(aspectName(standing.aspect));
    }
}

bool isInDoubt(Standing standing)
{
    return standing == Standing::Unchecked || standing == Standing::Overdue || standing == Standing::Failed;
}

const HeldCheck *validCheck(const HeldItem &held, Aspect aspect, const QDate &today)
{
    const HeldCheck *last = lastCheck(held, aspect, today);
    return last && passed(*last) ? last : nullptr;
}

QString checkName(const HeldCheck &check)
{
    return StandingWording::tr("check %1 of %2").arg(check.id).arg(check.check.day.toString(Qt::ISODate));
}

} // namespace plateau::equipment
