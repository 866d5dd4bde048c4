// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/lot.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>

#include <array>
#include <tuple>
#include <utility>

namespace plateau::planning {

using namespace Qt::StringLiterals;

namespace {

struct LotPlaceWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::LotPlace)
};

std::optional<QDate> daysAfter(const std::optional<QDate> &day, const std::optional<int> &days)
{
    return day && days ? std::optional(day->addDays(*days)) : std::nullopt;
}

std::optional<QDate> endOf(const Lot &lot, LotLimit limit)
{
    switch (limit) {
    case LotLimit::Label:
        return lot.expires;
    case LotLimit::Opened:
        return daysAfter(lot.opened, lot.keepsOpened_days);
    case LotLimit::Dissolved:
        return lot.dissolved ? daysAfter(lot.dissolved->day, lot.keepsDissolved_days) : std::nullopt;
    case LotLimit::Stored:
        return lot.aliquot ? daysAfter(lot.aliquot->day, lot.aliquot->keeps_days) : std::nullopt;
    case LotLimit::Source:
        return lot.aliquot ? lot.aliquot->sourceLastGood : std::nullopt;
    }
    return std::nullopt;
}

constexpr std::array everyLimit{LotLimit::Label, LotLimit::Opened, LotLimit::Dissolved, LotLimit::Stored,
                                LotLimit::Source};

QString degrees(double temperature_C)
{
    QString text = evaluation::plainText(temperature_C);
    return evaluation::withUnit(text.replace(u'-', u'\u2212'), u"°C"_s);
}

} // namespace

QString placeText(const StoragePlace &place)
{
    if (place.lowest_C && place.highest_C)
        return LotPlaceWords::tr("%1, %2 to %3")
            .arg(place.name, evaluation::plainText(*place.lowest_C).replace(u'-', u'\u2212'),
                 degrees(*place.highest_C));
    if (place.highest_C)
        return LotPlaceWords::tr("%1, at most %2").arg(place.name, degrees(*place.highest_C));
    if (place.lowest_C)
        return LotPlaceWords::tr("%1, at least %2").arg(place.name, degrees(*place.lowest_C));
    return place.name;
}

bool isSameReagent(const QString &one, const QString &other)
{
    const auto plain = [](const QString &name) {
        return name.trimmed().normalized(QString::NormalizationForm_C).toCaseFolded();
    };
    return plain(one) == plain(other);
}

bool isUsedUp(const Lot &lot)
{
    return lot.remaining_mL == 0 && !lot.isDry;
}

std::optional<UseBy> useByOf(const Lot &lot)
{
    std::optional<UseBy> first;
    for (const LotLimit limit : everyLimit) {
        const std::optional<QDate> day = endOf(lot, limit);
        if (day && (!first || *day < first->day))
            first = UseBy{*day, limit};
    }
    return first;
}

std::optional<QDate> lastGoodDay(const Lot &lot)
{
    const std::optional<UseBy> useBy = useByOf(lot);
    return useBy ? std::optional(useBy->day) : std::nullopt;
}

std::optional<QDate> passedOn(const Lot &source, bool aliquotKeepsAreKnown)
{
    return aliquotKeepsAreKnown ? source.expires : lastGoodDay(source);
}

bool isUsedBefore(const Lot &one, const Lot &other)
{
    const auto order = [](const Lot &lot) {
        const std::optional<QDate> last = lastGoodDay(lot);
        return std::tuple(isUsedUp(lot), !last.has_value(), last.value_or(QDate()), !lot.opened.has_value());
    };
    return order(one) < order(other);
}

LotFitness fitnessOf(const Lot &lot, const QDateTime &from, const QDateTime &to)
{
    if (lot.isDry)
        return LotFitness::NotDissolved;
    if (!(lot.remaining_mL > 0))
        return LotFitness::Empty;
    if (lot.expires && from.date() > *lot.expires)
        return LotFitness::Expired;
    constexpr std::array others{std::pair{LotLimit::Opened, LotFitness::OpenTooLong},
                                std::pair{LotLimit::Dissolved, LotFitness::DissolvedTooLong},
                                std::pair{LotLimit::Stored, LotFitness::StoredTooLong},
                                std::pair{LotLimit::Source, LotFitness::SourceTooOld}};
    for (const auto &[limit, fault] : others) {
        if (const std::optional<QDate> end = endOf(lot, limit); end && to.date() > *end)
            return fault;
    }
    if (lot.expires && to.date() > *lot.expires)
        return LotFitness::ExpiresBeforeEnd;
    return LotFitness::Good;
}

bool holds(const Lot &lot, double volume_mL)
{
    constexpr double leftByComputing_mL = 1e-6; // what is left of 2.4 mL after twelve times 0.2 mL
    return !lot.isDry && lot.remaining_mL + leftByComputing_mL >= volume_mL;
}

const Lot *nextLot(const std::vector<Lot> &lots, const QString &reagent, double volume_mL, const QDateTime &at)
{
    const Lot *next = nullptr;
    for (const Lot &lot : lots) {
        if (isSameReagent(lot.reagent, reagent) && fitnessOf(lot, at, at) == LotFitness::Good && holds(lot, volume_mL) &&
            (!next || isUsedBefore(lot, *next)))
            next = &lot;
    }
    return next;
}

} // namespace plateau::planning
