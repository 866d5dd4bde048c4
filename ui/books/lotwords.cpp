// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/lotwords.h"

#include "core/evaluation/format.h"
#include "core/run/reagent.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct LotWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::LotWords)
};

using planning::LotFitness;

std::optional<LotStanding> faultOf(const planning::Lot &lot, const QDateTime &now)
{
    if (lot.remaining_mL < 0)
        return LotStanding{State::Bad, LotWords::tr("more taken than it held")};
    switch (planning::fitnessOf(lot, now, now)) {
    case LotFitness::Empty:
        return LotStanding{State::Pending, LotWords::tr("used up")};
    case LotFitness::Expired:
    case LotFitness::ExpiresBeforeEnd:
        return LotStanding{State::Bad, LotWords::tr("expired on %1").arg(dayText(lot.expires))};
    case LotFitness::OpenTooLong:
        return LotStanding{State::Bad,
                           LotWords::tr("open too long, was good until %1").arg(dayText(lastGoodDay(lot)))};
    case LotFitness::Good:
        break;
    }
    return std::nullopt;
}

/// Tubes that it still serves, where that is less than a full rack.
std::optional<int> tubesIfLow(const planning::Lot &lot, const LotUse &use)
{
    if (!use.dose_mL || *use.dose_mL <= 0)
        return std::nullopt;
    const int tubes = run::tubesServed(lot.remaining_mL, *use.dose_mL);
    return tubes < use.rackPlaces ? std::optional(tubes) : std::nullopt;
}

} // namespace

LotStanding standingOf(const planning::Lot &lot, const QDateTime &now, const LotUse &use)
{
    if (const auto fault = faultOf(lot, now))
        return *fault;
    QStringList near;
    if (const auto last = lastGoodDay(lot); last && now.date().daysTo(*last) <= warnAhead_days) {
        const qint64 days = now.date().daysTo(*last);
        near << (days == 0 ? LotWords::tr("good until tonight")
                           : LotWords::tr("good until %1").arg(dayText(last)));
    }
    if (const auto tubes = tubesIfLow(lot, use))
        near << (*tubes == 0 ? LotWords::tr("too little for a tube")
                             : LotWords::tr("low, enough for tubes: %1").arg(*tubes));
    if (!near.isEmpty())
        return {State::Attention, near.join(LotWords::tr("; "))};
    return {State::Good, lot.opened ? LotWords::tr("in use") : LotWords::tr("not opened")};
}

QString lotVolume(double volume_mL)
{
    const double rounded = std::round(volume_mL * 1000) / 1000;
    return evaluation::withUnit(evaluation::plainText(rounded == 0 ? 0 : rounded), u"mL"_s);
}

QString dayText(const std::optional<QDate> &day)
{
    return day ? day->toString(Qt::ISODate) : QString();
}

std::variant<QDate, DayFault> parseDay(const QString &text)
{
    static const QRegularExpression form(u"^(\\d{4})-(\\d{1,2})(?:-(\\d{1,2}))?$"_s);
    const QString typed = text.trimmed();
    if (typed.isEmpty())
        return DayFault::Empty;
    const QRegularExpressionMatch match = form.match(typed);
    if (!match.hasMatch())
        return DayFault::NotADay;
    const int year = match.captured(1).toInt();
    const int month = match.captured(2).toInt();
    const bool monthOnly = match.captured(3).isEmpty();
    QDate day(year, month, monthOnly ? 1 : match.captured(3).toInt());
    if (!day.isValid())
        return DayFault::NotADay;
    return monthOnly ? day.addMonths(1).addDays(-1) : day;
}

QString dayFaultSentence(DayFault fault)
{
    return fault == DayFault::Empty ? LotWords::tr("Key the day as 2026-12-31.")
                                    : LotWords::tr("This is no day. Key it as 2026-12-31; a month alone, as "
                                                   "2026-12, is its last day.");
}

QString movementText(notebook::LotMovementKind kind)
{
    switch (kind) {
    case notebook::LotMovementKind::Received:
        return LotWords::tr("received");
    case notebook::LotMovementKind::Used:
        return LotWords::tr("taken outside a run");
    case notebook::LotMovementKind::Discarded:
        return LotWords::tr("thrown away");
    case notebook::LotMovementKind::Corrected:
        return LotWords::tr("corrected to what was found");
    }
    return {};
}

} // namespace plateau::ui
