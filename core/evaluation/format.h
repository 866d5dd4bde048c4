// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace plateau::evaluation {

/// Absorbances and signals: three decimals, C number format, no negative zero.
QString absorbanceText(double absorbance);
/// A value to as many decimals as two significant figures of its expanded uncertainty have; three significant
/// figures where there is none. Display only: stored values keep full precision.
QString valueText(double value, std::optional<double> expandedUncertainty = std::nullopt);
/// What a standard holds, as far as two figures of its expanded uncertainty go (k = 2; its relative standard uncertainty is
/// given), as valueText; without one, and never farther than, six figures.
QString strengthText(double concentration_g_per_L, std::optional<double> uncertainty_percent);
/// Two significant figures.
QString uncertaintyText(double expandedUncertainty);
/// A number to so many significant figures, never in exponent form, trailing zeros kept.
QString significantText(double value, int figures);
/// The spread of values near value, to so many significant figures; "0.0000" where it is but what the last bits
/// of the computation leave.
QString spreadText(double spread, double value, int figures);
/// A bound to so many significant figures, rounded to its safe side: what stands behind ">" downwards, behind
/// "<" upwards.
QString lowerBoundText(double bound, int figures);
QString upperBoundText(double bound, int figures);
/// A volume or mass as keyed: shortest form, without an exponent between 1e-12 and 1e15.
QString plainText(double value);
/// Of something that was computed: no more than so many significant figures, without trailing zeros.
QString roundedText(double value, int figures);
/// A value as it was keyed and what belongs to it (a half-width), both with the decimals of the one that has more:
/// "98.0" and "0.5". Value first.
QStringList pairedTexts(double value, double width);
/// A value beside what it is held against, all with the same decimals: as many as asked for, or more where a
/// limit that differs from the value would look the same. Value first.
QStringList comparedTexts(double value, const std::vector<double> &limits, int decimals);
/// Decimals that show so many significant figures of the value.
int decimalsFor(double value, int figures);
/// "0.151 g/L", "95 %": number and unit with a no-break space (U+00A0), so that they stay on one line.
QString withUnit(const QString &number, const QString &unit);
/// A length of time to the second: "1:30 min", "75:05 min". Its sign is left out.
QString minutesText(double time_min);
/// The sentence with a capital at its beginning.
QString capitalised(const QString &sentence);
/// A sentence of ours that goes on behind a colon: with a small letter, but for German, where a whole sentence keeps its capital.
/// What begins otherwise (A2, NADH, L-malic acid) stays. Not for what begins with somebody's name.
QString afterColon(const QString &sentence, const QLocale &locale = QLocale());
/// "A, B and C" in the language of the window.
QString andJoined(const QStringList &names, const QLocale &locale = QLocale());

} // namespace plateau::evaluation
