// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/readingtext.h"

#include <string_view>
#include <variant>
#include <vector>

namespace plateau::exchange {

/// A number as it stands in a line among other words.
struct NumberWord {
    /// A part of the line, sign included.
    std::string_view text;
    /// Its value, or one sentence why it gives none: the other decimal sign, an exponent, a limit as
    /// ">3.000", a minus that stands apart.
    std::variant<double, QString> value;
};

/// The numbers that a person would see in the line, left to right: "0.512", "ABS=0.512", "340nm", "-0.003A".
/// A unit may follow directly. No number are digits behind letters ("A1", "P-104"), dates, times and anything
/// else that goes on after the digits ("12-3", "10:32", "25.11.2026").
std::vector<NumberWord> numbersIn(std::string_view utf8Line, DecimalSign sign);

} // namespace plateau::exchange
