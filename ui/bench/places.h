// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/run/run.h"

#include <QString>

#include <compare>
#include <optional>
#include <vector>

namespace plateau::ui {

/// Where one reading belongs: a tube by its index from 0, and a reading point.
struct Place {
    int tube = 0;
    QString reading;
    bool operator==(const Place &) const = default;
    bool operator<(const Place &other) const
    {
        return reading == other.reading ? tube < other.tube : reading < other.reading;
    }
};

/// All places of a rack in the order they are read: A1 of every tube, then A2 of every tube, and so on.
std::vector<Place> readingOrder(const assay::Method &method, const run::Run &run);
/// The stored reading there, or nullptr.
const run::Reading *readingAt(const run::Run &run, const Place &place);
/// The first place without a reading, looking from the given one (itself included) to the end and on from the
/// start. Nobody reads a spoilt tube.
std::optional<Place> nextUnread(const assay::Method &method, const run::Run &run,
                                const std::optional<Place> &from = std::nullopt);
/// The place behind that one in the order of reading; the first one behind the last.
Place placeAfter(const assay::Method &method, const run::Run &run, const Place &place);
/// A phrase with a role and %1 for the name, "control %1"; the name alone where it has the word in it, "Control SO2".
QString withRoleWord(const QString &phrase, const QString &name);
/// What the tube holds, in words: "blank 1 of 2", "sample P-104, 2 of 2", "standard STD".
QString contentsText(const run::Run &run, int tube);
/// The same in two parts, for a narrow place: "P-104" and "2 of 2"; the second is empty for the only one.
QString briefContentsText(const run::Run &run, int tube);
QString whichOfAlikeText(const run::Run &run, int tube);
/// "tube 7" counts from 1, as tubes are numbered in a rack.
int tubeNumber(const Place &place);
/// Three decimals, or as many as were read.
QString readingText(double absorbance);
/// The value, or for a series how many readings and the last of them.
QString readingText(const run::Reading &reading);

} // namespace plateau::ui
