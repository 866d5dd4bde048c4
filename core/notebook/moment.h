// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QDateTime>
#include <QString>

#include <optional>

namespace plateau::notebook {

/// A time as it stands in the file: UTC to the millisecond, and the offset in minutes it was made in. A local
/// time would be ambiguous in the hour the clocks go back and would not exist in the hour they go forward.
struct Moment {
    /// "2026-03-02T08:10:00.000Z"
    QString utc;
    int offset_min = 0;
};

/// Throws Failure(Refused) for an invalid time or a year outside 0 to 9999.
Moment momentOf(const QDateTime &time);
std::optional<Moment> optionalMoment(const std::optional<QDateTime> &time);
/// The same instant, with the offset it was made in.
QDateTime timeOf(const Moment &moment);

} // namespace plateau::notebook
