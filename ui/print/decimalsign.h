// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QStringList>

#include <optional>

class QLocale;

namespace plateau::ui {

/// All that a locale may change of a number on paper or in a table: thousands are never grouped, digits are
/// 0 to 9 and minus is a hyphen in every one, so that a program reads back what a person reads.
enum class DecimalSign { Point, Comma };

/// The locale's own, where it is one of the two; else the point.
DecimalSign usualDecimalSign(const QLocale &locale);
/// "point", "comma", in any case.
std::optional<DecimalSign> decimalSignFromWord(const QString &word);

/// A text that has its numbers in C format (core/evaluation/format.h) with that sign. What only looks like a
/// number (a version 1.2.3, a lot N1.5) stays as it is, and so does every one of the names in it.
QString localNumbers(const QString &text, DecimalSign sign, const QStringList &names = {});
/// The same with the sign of the window's locale, of what has no names in it.
QString localNumbers(const QString &text);

} // namespace plateau::ui
