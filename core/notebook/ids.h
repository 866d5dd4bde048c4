// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QtGlobal>

#include <compare>

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
using ShelfId = Id<struct ShelfRow>;
using LotId = Id<struct LotRow>;
using PersonId = Id<struct PersonRow>;

/// The newest reading and the newest mark of a run at some moment; 0 for none.
struct Seen {
    ReadingId reading;
    MarkId mark;
    bool operator==(const Seen &) const = default;
};

} // namespace plateau::notebook
