// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QtGlobal>

#include <compare>
#include <optional>

namespace plateau::notebook {

/// A row's number as a type of its own, so that a run is not mistaken for a reading.
template <class Row> struct Id {
    qint64 value = 0;
    bool operator==(const Id &) const = default;
    auto operator<=>(const Id &other) const { return value <=> other.value; }
};

using RunId = Id<struct RunRow>;
using ReadingId = Id<struct ReadingRow>;
using MethodId = Id<struct MethodRow>;
using MarkId = Id<struct MarkRow>;
using DilutionMarkId = Id<struct DilutionMarkRow>;
using ShelfId = Id<struct ShelfRow>;
using LotId = Id<struct LotRow>;
using ItemId = Id<struct ItemRow>;
using CheckId = Id<struct CheckRow>;
using SubstanceId = Id<struct SubstanceRow>;
using PreparationId = Id<struct PreparationRow>;
using PersonId = Id<struct PersonRow>;

/// How many samples and tubes a run has at some moment.
struct RackSize {
    int samples = 0;
    int tubes = 0;
    bool operator==(const RackSize &) const = default;
};

/// The newest reading and the newest mark of a run at some moment; 0 for none.
struct Seen {
    ReadingId reading;
    MarkId mark;
    /// Absent: seen by a program that did not know yet of times at the bench and of racks that grow.
    std::optional<RackSize> rack{};
    bool operator==(const Seen &) const = default;
};

} // namespace plateau::notebook
