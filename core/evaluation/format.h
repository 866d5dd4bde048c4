// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <optional>

namespace plateau::evaluation {

/// Absorbances and signals: three decimals, C number format, no negative zero.
QString absorbanceText(double absorbance);
/// A value to as many decimals as two significant figures of its expanded uncertainty have; three significant
/// figures where there is none. Display only: stored values keep full precision.
QString valueText(double value, std::optional<double> expandedUncertainty = std::nullopt);
/// Two significant figures.
QString uncertaintyText(double expandedUncertainty);
/// A number to so many significant figures, never in exponent form, trailing zeros kept.
QString significantText(double value, int figures);
/// A volume or mass as keyed: shortest form.
QString plainText(double value);

} // namespace plateau::evaluation
