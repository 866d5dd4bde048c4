// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QDate>
#include <QDateTime>
#include <QString>

#include <optional>
#include <vector>

namespace plateau::planning {

/// How a dry reagent became a solution.
struct Dissolving {
    QDate day;
    /// Of the solution; in what.
    double volume_mL = 0;
    QString solvent{};
    bool operator==(const Dissolving &) const = default;
};

/// What a container was filled from, when another was divided.
struct AliquotOrigin {
    /// The id of that other container.
    qint64 source = 0;
    /// From 1, over all aliquots of it.
    int number = 1;
    QDate day;
    /// Days it may be used after that day, as it is stored; absent: nobody says, and the source's days go on.
    std::optional<int> keeps_days{};
    /// The last good day that comes from the source: where keeps_days is known the one of its label, else the
    /// earliest of all of its days.
    std::optional<QDate> sourceLastGood{};
    bool operator==(const AliquotOrigin &) const = default;
};

struct StoragePlace {
    QString name;
    /// The temperatures of the place, as far as they are known: "below -10 °C" has only the upper one.
    std::optional<double> lowest_C{};
    std::optional<double> highest_C{};
    bool operator==(const StoragePlace &) const = default;
};
/// "freezer 2, at most -10 °C", "cold room, 2 to 8 °C"
QString placeText(const StoragePlace &place);

/// One container of a reagent in hand. It serves every component of that name, whatever the method.
struct Lot {
    qint64 id = 0;
    /// As the component is named in the method; compared without regard to case and to spaces around it.
    QString reagent;
    QString lot;
    /// Last good day.
    std::optional<QDate> expires;
    std::optional<QDate> opened;
    /// Days it may be used after the day of opening; 0: on that day only.
    std::optional<int> keepsOpened_days;
    double remaining_mL = 0;
    /// The same after the day it was dissolved.
    std::optional<int> keepsDissolved_days{};
    /// It came dry and is not dissolved yet: nothing can be pipetted from it.
    bool isDry = false;
    /// Of the dry reagent, as the label says.
    std::optional<double> dry_mg{};
    std::optional<Dissolving> dissolved{};
    std::optional<AliquotOrigin> aliquot{};
    std::optional<StoragePlace> place{};
    bool operator==(const Lot &) const = default;
};

bool isSameReagent(const QString &one, const QString &other);
/// Nothing remains, and nothing is there to be dissolved.
bool isUsedUp(const Lot &lot);

/// What ends a container's days.
enum class LotLimit { Label, Opened, Dissolved, Stored, Source };
struct UseBy {
    QDate day;
    LotLimit limit = LotLimit::Label;
    bool operator==(const UseBy &) const = default;
};
/// The last day on which it may be used, and why: the earliest of its label's, of what it keeps once opened
/// and once dissolved, and of an aliquot what it keeps as stored and what its source passes on; of equal ones
/// the first in that order. Nothing where none is known. So nothing that is done to a container prolongs its
/// days; only aliquots of which the laboratory says how long they keep begin anew, up to the label's day.
std::optional<UseBy> useByOf(const Lot &lot);
std::optional<QDate> lastGoodDay(const Lot &lot);
/// What an aliquot of it takes over as sourceLastGood.
std::optional<QDate> passedOn(const Lot &source, bool aliquotKeepsAreKnown);

/// Of containers of one lot the one that is used first: what is used up comes last, then by the last good
/// day, then what is opened before what is not.
bool isUsedBefore(const Lot &one, const Lot &other);

enum class LotFitness {
    Good,
    Empty,
    Expired,
    ExpiresBeforeEnd,
    OpenTooLong,
    NotDissolved,
    DissolvedTooLong,
    StoredTooLong,
    SourceTooOld
};

/// Over a run; the first that applies in the order NotDissolved, Empty (nothing remains), Expired (before the
/// run's first day), OpenTooLong, DissolvedTooLong, StoredTooLong, SourceTooOld (on its last day),
/// ExpiresBeforeEnd (before its last day). Days are those of the moments' own offsets.
LotFitness fitnessOf(const Lot &lot, const QDateTime &from, const QDateTime &to);

/// Whether so much can still be taken from it by the book.
bool holds(const Lot &lot, double volume_mL);
/// Of the containers of a reagent that are fit then and hold so much, the one that is used first; nullptr where there is
/// none.
const Lot *nextLot(const std::vector<Lot> &lots, const QString &reagent, double volume_mL, const QDateTime &at);

} // namespace plateau::planning
