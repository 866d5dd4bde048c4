// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QDateTime>
#include <QString>

#include <variant>

namespace plateau::exchange {

/// Why a text is no time in the past, for a sentence beside the field.
enum class MomentFault { Empty, NotATime, NoSuchTime, InTheFuture };

/// A time as it is keyed at the bench, when something was made: "8:10" or "08.10" is the latest such time of
/// day that is not after now (so that "23:40" just after midnight is yesterday's), "2026-03-02 8:10" the time
/// of that day, which assay::readPastDay reads. Both are read in now's local time and come back with the offset that holds then; a time after
/// now is a fault, for nothing is noted before it happened.
std::variant<QDateTime, MomentFault> parseKeyedMoment(const QString &text, const QDateTime &now);
/// Of what is often known by its day only, as when a sample came in: the same, and a day alone, which is its midnight.
/// "10.11" is a time of day, "10.11." a day.
std::variant<QDateTime, MomentFault> parseKeyedDayOrMoment(const QString &text, const QDateTime &now);
/// What parseKeyedDayOrMoment reads back: the day alone for a midnight in local time. Empty for none.
QString dayOrMomentText(const QDateTime &moment);
QString faultSentence(MomentFault fault);

} // namespace plateau::exchange
