// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::ui {

/// What a field is preset with: the number as somebody at this desk would key it, with the decimal sign of the locale.
/// exchange::parseDecimal reads it back in every locale.
QString keyedText(double value);
/// The same of a number in C format (core/evaluation/format.h).
QString keyedText(QString number);

} // namespace plateau::ui
