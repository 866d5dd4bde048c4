// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <string_view>
#include <variant>

namespace plateau::exchange {

/// Why a text is not a number, for a sentence beside the field.
enum class DecimalFault { Empty, TwoDecimalMarks, Grouping, Letter, OtherDigits, NoDigits, TooLong };

/// The one number parser of the program, for keyed numbers, pasted columns and delimited files, whatever the
/// locale: digits with at most one '.' or ',' (either is the decimal mark), an optional sign '+', '-' or
/// U+2212, blanks around trimmed; an exponent never. "0,512", "0.512", ".512" and "1," are numbers;
/// "1,500.2", "1 500", "1e-3", "nan" and Arabic digits are not. The result is finite.
std::variant<double, DecimalFault> parseDecimal(std::string_view utf8);
std::variant<double, DecimalFault> parseDecimal(const QString &text);
QString faultSentence(DecimalFault fault);

} // namespace plateau::exchange
