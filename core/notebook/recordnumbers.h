// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::notebook {

/// In C format: a number that somebody keyed as it was keyed, one that was worked out to 4 significant figures (more only
/// before the decimal point).
QString recordNumber(double value);

/// Whether the field holds a fraction that is keyed, and told, in percent.
bool isKeyedInPercent(const QString &field);
/// Such a fraction in percent; with the decimals of what stands beside it (a half-width, a fraction too), where that is not 0.
QString recordPercent(double fraction, double beside = 0);

} // namespace plateau::notebook
