// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"

#include <QDate>
#include <QString>

#include <map>
#include <optional>
#include <vector>

namespace plateau::equipment {

enum class Kind { Photometer, PistonPipette, BulbPipette, Flask, Balance, Thermometer, Cuvettes };
/// What is checked of it: one matter of most, three of a photometer.
enum class Aspect { Wavelength, Absorbance, Noise, Volume, Weighing, Temperature, Match };

const std::vector<Kind> &allKinds();
std::vector<Aspect> aspectsOf(Kind kind);
/// "photometer", "absorbance scale": for a person.
QString kindName(Kind kind);
QString aspectName(Aspect aspect);
/// As they stand in a file; nothing for a word that is none.
QString kindWord(Kind kind);
std::optional<Kind> kindFromWord(const QString &word);
QString aspectWord(Aspect aspect);
std::optional<Aspect> aspectFromWord(const QString &word);
bool holdsVolume(Kind kind);

/// Something that is checked. Pipettes, flasks and the photometer bear the names that the laboratory's list
/// has: by them the figures of a check reach the budgets.
struct Item {
    Kind kind = Kind::PistonPipette;
    QString name;
    /// Serial or inventory number; may be empty.
    QString number{};
    /// Pipettes and flasks only; of a piston pipette the smallest volume it is used for, too.
    double nominal_mL = 0;
    double smallest_mL = 0;
    /// Every so many days; what is not listed is not asked for.
    std::map<Aspect, int> every_days{};
    bool inUse = true;
    bool operator==(const Item &) const = default;
};

/// "piston pipette P-100"; the name alone where it says already what it is.
QString titleOf(const Item &item);

/// Common practice, no source.
inline constexpr int mostDays = 3660;
inline constexpr double largestNominal_mL = 10000;
/// A blank name, no size where there has to be one, nothing to check, days outside 1 to mostDays. Pointers
/// as the members are called.
assay::Problems problemsOf(const Item &item);

/// A check as it was keyed: the protocol (protocol.h) says what its numbers are.
struct Check {
    Aspect aspect = Aspect::Volume;
    QDate day;
    /// By the key of the protocol's field.
    std::map<QString, double> conditions{};
    /// The protocol's rows by its columns; absent where nothing was keyed.
    std::vector<std::vector<std::optional<double>>> rows{};
    /// Where limits come from that are not the published ones; certificate or record; may be empty.
    QString source{};
    QString note{};
    bool operator==(const Check &) const = default;
};

/// What is known of a check afterwards.
struct HeldCheck {
    qint64 id = 0;
    Check check;
    /// The item as it was then.
    Item of;
    QString person{};
    bool withdrawn = false;
    bool operator==(const HeldCheck &) const = default;
};

/// What the book said of an item from that day on.
struct ItemVersion {
    QDate from;
    Item item;
    bool operator==(const ItemVersion &) const = default;
};

struct HeldItem {
    qint64 id = 0;
    Item item;
    /// In the order they were keyed.
    std::vector<HeldCheck> checks{};
    /// In their order, the last one as it is now; none: nobody wrote down since when.
    std::vector<ItemVersion> versions{};
    bool operator==(const HeldItem &) const = default;
};
/// As the book said at the end of that day; nothing where it did not have the item yet.
std::optional<Item> itemOn(const HeldItem &held, const QDate &day);

} // namespace plateau::equipment
