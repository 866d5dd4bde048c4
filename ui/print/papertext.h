// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::ui {

/// U+2060: behind it nothing is broken, and it has no width.
constexpr QChar wordJoiner(0x2060);

/// The text as lines of it are broken on paper: never within a unit (g/L, g/100 g) nor behind what a name begins with
/// (D-fructose, 6-phosphogluconate). To be laid out only: it holds joiners, which nobody wants to copy or search for.
QString withWholeUnits(QString text);
/// The same in the window, where columns are narrow: nor between a number and its unit (400 nm), in (k = 2), between a day and
/// its hour, nor in 10-fold. The no-break spaces that this takes would stay in the text of a page, where somebody searches.
QString unbroken(QString text);

/// Numbers below zero with a minus sign and not the hyphen that files have; a hyphen within a name, a date or a power of ten
/// stays.
QString withMinusSigns(QString text);
/// A formula that files have in ASCII, in letters or in numbers, with the signs of print: "2 x 10 - 1" is "2 × 10 − 1", and
/// "-0.3" has a minus sign and not the hyphen.
QString withPrintedSigns(const QString &formula);

} // namespace plateau::ui
