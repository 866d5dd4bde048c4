// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/timechartdata.h"

namespace plateau::ui {

/// "12:05", minutes and seconds as a stopwatch counts them; "-0:30" before the start.
QString stopwatchText(int time_s);
/// What stands beside a row, "9  Perry base": its number, which may be empty, and the rest. Numbers stand in a column of
/// their own, so that names begin below each other.
struct RowLabel {
    QString number;
    QString name;
    bool operator==(const RowLabel &) const = default;
};
RowLabel labelOf(const TimeRow &row);
/// Between the two.
QString afterNumber();

/// One row in words: "P-104: A1 due 4:20 to 5:00, sample 0:40". What is awaited has its window, and how it
/// stands with it where now is given, by moments that don't change as time goes on.
QString rowText(const TimeRow &row, std::optional<int> now_s = {});
/// All of it in words, a row a line. A live chart says as of when.
QString chartText(const TimeChartData &data);

/// Remarks of a row: a reading outside its window, and by how much.
TimeRemark earlyRemark(const QString &reading, int by_s);
TimeRemark lateRemark(const QString &reading, int by_s);
TimeRemark spoiltRemark();

/// Beside a row: how it stands with its window, then its own remark. Nothing where there is nothing to say.
/// Late is by how much, which goes on with every second; due and the remark stay.
std::optional<TimeRemark> besideRow(const TimeRow &row, std::optional<int> now_s);
/// The longest that is to be expected of it as time goes on.
QString widestBeside(const TimeRow &row);

} // namespace plateau::ui
