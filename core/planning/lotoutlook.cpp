// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/lotoutlook.h"

#include "core/assay/localday.h"
#include "core/run/reagent.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::planning {

namespace {

struct LotOutlookWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::LotOutlook)
};

std::optional<qint64> daysIfNear(const std::optional<UseBy> &useBy, const QDate &day)
{
    if (!useBy)
        return std::nullopt;
    const qint64 days = day.daysTo(useBy->day);
    return days <= warnAhead_days ? std::optional(days) : std::nullopt;
}

std::optional<int> tubesIfLow(const Lot &lot, const LotDemand &demand)
{
    if (!demand.dose_mL || *demand.dose_mL <= 0)
        return std::nullopt;
    const int tubes = run::tubesServed(lot.remaining_mL, *demand.dose_mL);
    return tubes < demand.rackPlaces ? std::optional(tubes) : std::nullopt;
}

QString restingText(const Lot &lot)
{
    if (lot.dissolved)
        return LotOutlookWords::tr("in use, dissolved");
    return lot.opened ? LotOutlookWords::tr("in use") : LotOutlookWords::tr("not opened");
}

QString lowText(const LotOutlook &outlook)
{
    if (!outlook.tubesLeft)
        return {};
    return *outlook.tubesLeft == 0 ? LotOutlookWords::tr("too little for a tube")
                                   : LotOutlookWords::tr("low, enough for %n tubes", nullptr, *outlook.tubesLeft);
}

QString dayless(const Lot &lot, LotFitness fitness)
{
    switch (fitness) {
    case LotFitness::Good:
        break;
    case LotFitness::Empty:
        return LotOutlookWords::tr("used up");
    case LotFitness::Expired:
    case LotFitness::ExpiresBeforeEnd:
        return LotOutlookWords::tr("expired");
    case LotFitness::OpenTooLong:
        return LotOutlookWords::tr("open too long");
    case LotFitness::NotDissolved:
        return LotOutlookWords::tr("dry, not dissolved yet");
    case LotFitness::DissolvedTooLong:
        return LotOutlookWords::tr("dissolved too long ago");
    case LotFitness::StoredTooLong:
        return LotOutlookWords::tr("stored too long");
    case LotFitness::SourceTooOld:
        return LotOutlookWords::tr("what it was filled from is too old");
    }
    if (lot.dissolved)
        return LotOutlookWords::tr("dissolved");
    return lot.opened ? LotOutlookWords::tr("opened") : LotOutlookWords::tr("not opened");
}

QString endText(const Lot &lot, LotLimit limit)
{
    const std::optional<UseBy> useBy = useByOf(lot);
    const QString day = useBy ? lotDayText(useBy->day) : QString();
    switch (limit) {
    case LotLimit::Opened:
        return LotOutlookWords::tr("open too long, was to be used by %1").arg(day);
    case LotLimit::Dissolved:
        return LotOutlookWords::tr("dissolved too long ago, was to be used by %1").arg(day);
    case LotLimit::Stored:
        return LotOutlookWords::tr("stored too long, was to be used by %1").arg(day);
    case LotLimit::Source:
        return LotOutlookWords::tr("what it was filled from was to be used by %1").arg(day);
    case LotLimit::Label:
        break;
    }
    return LotOutlookWords::tr("expired on %1").arg(lot.expires ? lotDayText(*lot.expires) : day);
}

} // namespace

bool LotOutlook::isBad() const
{
    return isOverdrawn || (fitness != LotFitness::Good && fitness != LotFitness::Empty &&
                           fitness != LotFitness::NotDissolved);
}

LotOutlook outlookOf(const Lot &lot, const QDateTime &from, const QDateTime &to, const LotDemand &demand)
{
    LotOutlook outlook;
    outlook.fitness = fitnessOf(lot, from, to);
    outlook.isOverdrawn = lot.remaining_mL < 0;
    outlook.useBy = useByOf(lot);
    if (outlook.fitness == LotFitness::NotDissolved && outlook.useBy && outlook.useBy->day < from.date())
        outlook.fitness = LotFitness::Expired; // dry, it has no days but its label's
    const bool counts = outlook.fitness == LotFitness::Good || outlook.fitness == LotFitness::NotDissolved;
    if (counts)
        outlook.daysLeft = daysIfNear(outlook.useBy, to.date());
    if (outlook.fitness == LotFitness::Good)
        outlook.tubesLeft = lot.aliquot && !lot.opened ? std::nullopt : tubesIfLow(lot, demand); // small on purpose
    return outlook;
}

QString lotDayText(const QDate &day)
{
    return assay::shownDay(day);
}

QString useByText(const UseBy &useBy)
{
    const QString day = lotDayText(useBy.day);
    switch (useBy.limit) {
    case LotLimit::Opened:
        return LotOutlookWords::tr("%1 (opened)").arg(day);
    case LotLimit::Dissolved:
        return LotOutlookWords::tr("%1 (dissolved)").arg(day);
    case LotLimit::Stored:
        return LotOutlookWords::tr("%1 (as stored)").arg(day);
    case LotLimit::Source:
        return LotOutlookWords::tr("%1 (its source)").arg(day);
    case LotLimit::Label:
        break;
    }
    return day;
}

QString faultText(const Lot &lot, LotFitness fitness)
{
    switch (fitness) {
    case LotFitness::Good:
        break;
    case LotFitness::Empty:
        return LotOutlookWords::tr("used up");
    case LotFitness::Expired:
    case LotFitness::ExpiresBeforeEnd:
        return endText(lot, LotLimit::Label);
    case LotFitness::OpenTooLong:
        return endText(lot, LotLimit::Opened);
    case LotFitness::NotDissolved:
        return LotOutlookWords::tr("dry, not dissolved yet");
    case LotFitness::DissolvedTooLong:
        return endText(lot, LotLimit::Dissolved);
    case LotFitness::StoredTooLong:
        return endText(lot, LotLimit::Stored);
    case LotFitness::SourceTooOld:
        return endText(lot, LotLimit::Source);
    }
    return {};
}

QString outlookText(const Lot &lot, const LotOutlook &outlook)
{
    if (outlook.isOverdrawn)
        return LotOutlookWords::tr("more taken than it held");
    QStringList parts;
    if (const QString fault = faultText(lot, outlook.fitness); !fault.isEmpty())
        parts << fault;
    if (outlook.daysLeft && outlook.useBy)
        parts << (*outlook.daysLeft == 0
                      ? LotOutlookWords::tr("use by tonight")
                      : LotOutlookWords::tr("use by %1").arg(lotDayText(outlook.useBy->day)));
    if (const QString low = lowText(outlook); !low.isEmpty())
        parts << low;
    return parts.isEmpty() ? restingText(lot) : parts.join(LotOutlookWords::tr("; "));
}

QString stateText(const Lot &lot, const LotOutlook &outlook)
{
    if (outlook.isOverdrawn)
        return LotOutlookWords::tr("more taken than it held");
    QStringList parts{dayless(lot, outlook.fitness)};
    if (outlook.daysLeft && *outlook.daysLeft >= 0)
        parts << (*outlook.daysLeft == 0
                      ? LotOutlookWords::tr("use by tonight")
                      : LotOutlookWords::tr("good for %n more days", nullptr, static_cast<int>(*outlook.daysLeft)));
    if (const QString low = lowText(outlook); !low.isEmpty())
        parts << low;
    return parts.join(LotOutlookWords::tr("; "));
}

QString usedLotText(const Lot &lot, const QDateTime &usedAt, const QDate &today)
{
    Lot then = lot;
    then.isDry = false;
    then.remaining_mL = 1; // it held what was taken
    const QString name = LotOutlookWords::tr("%1, lot %2").arg(lot.reagent, lot.lot);
    const LotFitness fitness = fitnessOf(then, usedAt, usedAt);
    if (fitness != LotFitness::Good)
        return LotOutlookWords::tr("%1: %2, and this run took from it on %3.")
            .arg(name, faultText(then, fitness), lotDayText(usedAt.date()));
    const std::optional<UseBy> useBy = useByOf(lot);
    const qint64 daysLeft = useBy ? today.daysTo(useBy->day) : -1;
    if (daysLeft < 0 || daysLeft > warnAhead_days || isUsedUp(lot))
        return {};
    return LotOutlookWords::tr("%1: use by %2; a repeat after that takes another.")
        .arg(name, lotDayText(useBy->day));
}

} // namespace plateau::planning
