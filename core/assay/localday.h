// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QDate>
#include <QDateTime>
#include <QString>

#include <optional>

namespace plateau::assay {

/// A day as it stands on a screen or on paper: two figures for day and month and four for the year, in the order and
/// with the sign of the desk's locale ("27.11.2026", "27/11/2026"); ISO 8601 where the locale is C or names the month.
/// Files and exports have ISO 8601 (core/exchange/moment.h). Empty for no day.
QString shownDay(const QDate &day);
/// With the time of day in 24 hours, of the offset that the moment has: "27.11.2026 08:10".
QString shownMoment(const QDateTime &moment);

/// A month so: "12.2026"; "2026-12" in ISO 8601.
QString shownMonth(const QDate &day);

/// Which day of a month that was keyed without one.
enum class MonthAlone { LastDay, FirstDay, NoDay };
/// A day as it is keyed: as shownDay writes it, in ISO 8601, or with one figure for day or month, two for the year (of
/// this century), and any of . / - between; a month alone ("2027-08", "08/2027") is one of its
/// days, the last as on a label. Nothing
/// for any other text; what the locale's order does not settle is none ("27.11.2026" where the locale is C).
std::optional<QDate> readDay(const QString &text, MonthAlone month = MonthAlone::LastDay);
/// Of something that has happened: as readDay reads it, never a month alone; a day without its year ("25.11.",
/// "25/11", in the locale's order) is the latest such day that is not after today.
std::optional<QDate> readPastDay(const QString &text, const QDate &today);

} // namespace plateau::assay
