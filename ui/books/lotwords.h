// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/lots.h"
#include "ui/shared/theme.h"

#include <optional>
#include <variant>

namespace plateau::ui {

/// So many days before its last good day a lot is pointed out. Common practice, no source.
inline constexpr int warnAhead_days = 7;

/// How a container stands, in a shape and in words.
struct LotStanding {
    State shape = State::Info;
    QString words;
    bool operator==(const LotStanding &) const = default;
};

/// What tells whether a container is low: the most a tube takes of it, where a method does, and the places
/// of the laboratory's rack.
struct LotUse {
    std::optional<double> dose_mL;
    int rackPlaces = 0;
};

/// Used up, more taken than it held, expired, open too long; else what is near: good until a day soon, or not
/// enough for a full rack; else opened or not.
LotStanding standingOf(const planning::Lot &lot, const QDateTime &now, const LotUse &use);
/// "12.5 mL", to the microlitre.
QString lotVolume(double volume_mL);
/// "2026-12-31"; empty for none.
QString dayText(const std::optional<QDate> &day);

/// A day as it is keyed or printed on a label: "2026-12-31", or "2026-12" for the last day of that month.
enum class DayFault { Empty, NotADay };
std::variant<QDate, DayFault> parseDay(const QString &text);
/// What would be right, for a sentence beside the field.
QString dayFaultSentence(DayFault fault);

/// "received", "taken outside a run" and so on.
QString movementText(notebook::LotMovementKind kind);

} // namespace plateau::ui
