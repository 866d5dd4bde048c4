// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/item.h"

#include "core/assay/limits.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace plateau::equipment {

using namespace Qt::StringLiterals;

namespace {

struct ItemWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::equipment::Item)
};

template <class T> struct Word {
    T value;
    QLatin1StringView word;
};
constexpr std::array<Word<Kind>, 7> kinds{{
    {Kind::Photometer, "photometer"_L1},
    {Kind::PistonPipette, "pistonPipette"_L1},
    {Kind::BulbPipette, "bulbPipette"_L1},
    {Kind::Flask, "flask"_L1},
    {Kind::Balance, "balance"_L1},
    {Kind::Thermometer, "thermometer"_L1},
    {Kind::Cuvettes, "cuvettes"_L1},
}};
constexpr std::array<Word<Aspect>, 7> aspects{{
    {Aspect::Wavelength, "wavelength"_L1},
    {Aspect::Absorbance, "absorbance"_L1},
    {Aspect::Noise, "noise"_L1},
    {Aspect::Volume, "volume"_L1},
    {Aspect::Weighing, "weighing"_L1},
    {Aspect::Temperature, "temperature"_L1},
    {Aspect::Match, "match"_L1},
}};

template <class T, std::size_t n>
std::optional<T> valueOf(const std::array<Word<T>, n> &words, const QString &word)
{
    const auto found = std::ranges::find_if(words, [&](const Word<T> &known) { return known.word == word; });
    return found == words.end() ? std::nullopt : std::optional(found->value);
}

} // namespace

const std::vector<Kind> &allKinds()
{
    using enum Kind;
    static const std::vector<Kind> all{Photometer, PistonPipette, BulbPipette, Flask,
                                       Balance,    Thermometer,   Cuvettes};
    return all;
}

std::vector<Aspect> aspectsOf(Kind kind)
{
    switch (kind) {
    case Kind::Photometer:
        return {Aspect::Wavelength, Aspect::Absorbance, Aspect::Noise};
    case Kind::Balance:
        return {Aspect::Weighing};
    case Kind::Thermometer:
        return {Aspect::Temperature};
    case Kind::Cuvettes:
        return {Aspect::Match};
    default:
        return {Aspect::Volume};
    }
}

QString kindName(Kind kind)
{
    switch (kind) {
    case Kind::Photometer:
        return ItemWording::tr("photometer");
    case Kind::PistonPipette:
        return ItemWording::tr("piston pipette");
    case Kind::BulbPipette:
        return ItemWording::tr("bulb pipette");
    case Kind::Flask:
        return ItemWording::tr("flask");
    case Kind::Balance:
        return ItemWording::tr("balance");
    case Kind::Thermometer:
        return ItemWording::tr("thermometer");
    default:
        return ItemWording::tr("set of cuvettes");
    }
}

QString aspectName(Aspect aspect)
{
    switch (aspect) {
    case Aspect::Wavelength:
        return ItemWording::tr("wavelength scale");
    case Aspect::Absorbance:
        return ItemWording::tr("absorbance scale");
    case Aspect::Noise:
        return ItemWording::tr("zero and noise");
    case Aspect::Volume:
        return ItemWording::tr("volume");
    case Aspect::Weighing:
        return ItemWording::tr("weighing");
    case Aspect::Temperature:
        return ItemWording::tr("temperature");
    default:
        return ItemWording::tr("match of the cuvettes");
    }
}

QString kindWord(Kind kind)
{
    return std::ranges::find(kinds, kind, &Word<Kind>::value)->word;
}

std::optional<Kind> kindFromWord(const QString &word)
{
    return valueOf(kinds, word);
}

QString aspectWord(Aspect aspect)
{
    return std::ranges::find(aspects, aspect, &Word<Aspect>::value)->word;
}

std::optional<Aspect> aspectFromWord(const QString &word)
{
    return valueOf(aspects, word);
}

bool holdsVolume(Kind kind)
{
    return kind == Kind::PistonPipette || kind == Kind::BulbPipette || kind == Kind::Flask;
}

QString titleOf(const Item &item)
{
    const QString kind = kindName(item.kind);
    return item.name.contains(kind, Qt::CaseInsensitive) ? item.name
                                                         : ItemWording::tr("%1 %2").arg(kind, item.name);
}

assay::Problems problemsOf(const Item &item)
{
    assay::Problems problems;
    assay::checkLabel(problems, u"/name"_s, item.name, ItemWording::tr("the name"));
    if (!item.number.isEmpty())
        assay::checkLabel(problems, u"/number"_s, item.number, ItemWording::tr("the number"));
    if (holdsVolume(item.kind))
        assay::checkAbove(problems, u"/nominal_mL"_s, item.nominal_mL, 0, largestNominal_mL, u"mL"_s);
    if (item.kind == Kind::PistonPipette)
        assay::checkAbove(problems, u"/smallest_mL"_s, item.smallest_mL, 0, item.nominal_mL, u"mL"_s);
    if (item.every_days.empty())
        problems.push_back(
            assay::error(u"/every_days"_s,
                         ItemWording::tr("names nothing to be checked; give at least one number of days")));
    const std::vector<Aspect> possible = aspectsOf(item.kind);
    for (const auto &[aspect, days] : item.every_days) {
        const QString pointer = assay::pointerTo(u"/every_days"_s, aspectWord(aspect));
        if (std::ranges::find(possible, aspect) == possible.end())
            problems.push_back(assay::error(
                pointer, ItemWording::tr("is not checked on a %1; leave it out").arg(kindName(item.kind))));
        else if (days < 1 || days > mostDays)
            problems.push_back(assay::error(
                pointer,
                ItemWording::tr("is every %1 days; it must be every 1 to %2 days").arg(days).arg(mostDays)));
    }
    return problems;
}

std::optional<Item> itemOn(const HeldItem &held, const QDate &day)
{
    if (held.versions.empty())
        return held.item;
    std::optional<Item> found;
    for (const ItemVersion &version : held.versions) {
        if (version.from <= day)
            found = version.item;
    }
    // A check of that day or before, keyed since, shows that it was there.
    const bool wasChecked = std::ranges::any_of(held.checks, [&](const HeldCheck &check) {
        return !check.withdrawn && check.check.day <= day;
    });
    if (!found && wasChecked)
        found = held.versions.front().item;
    return found;
}

} // namespace plateau::equipment
