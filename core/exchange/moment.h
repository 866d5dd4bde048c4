// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QDate>
#include <QDateTime>
#include <QString>

#include <optional>

namespace plateau::exchange {

/// A time of the file contract: ISO 8601 calendar date, "T", hours and minutes, seconds and their decimal
/// fraction if wanted (kept to the millisecond), then "Z" or an offset +hh:mm of at most 14 hours. Nothing
/// for any other text, for one without an offset above all.
std::optional<QDateTime> parseMoment(const QString &text);
/// The same with the offset it was made in: "2026-03-02T09:10:00+01:00", "Z" for UTC.
QString momentText(const QDateTime &moment);

/// "2026-03-02".
std::optional<QDate> parseDate(const QString &text);
QString dateText(const QDate &date);

} // namespace plateau::exchange
