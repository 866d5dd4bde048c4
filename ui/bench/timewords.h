// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <optional>

namespace plateau::ui {

/// "0:12", "14:05", "1:02:30": a length of time as a stopwatch shows it, without its sign.
QString countText(double seconds);

/// What is said of an act that opens and closes in so many seconds from now (negative: since): "in 0:12",
/// "now, 4:10 left", "now" where nothing closes it, "late by 0:30". Counts down in whole seconds that are
/// still left, and up in whole seconds that have passed.
QString countdownText(double opens_s, std::optional<double> closes_s);

/// "1 h 00 min forward", "0 min 05 s back": by how much a clock was set.
QString shiftText(qint64 shift_ms);

} // namespace plateau::ui
