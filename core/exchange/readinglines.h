// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/lineassembler.h"
#include "core/exchange/readingtext.h"

#include <variant>

namespace plateau::exchange {

/// How one line of a photometer becomes an absorbance, in what an analyst can see in the line.
struct LinePattern {
    enum class Which {
        Only,  ///< the one number of the line; a line with several is refused
        Nth,   ///< the n-th number from the left
        After, ///< the first number behind a text, as behind "ABS"
    };

    TextEncoding encoding = TextEncoding::Utf8;
    DecimalSign decimal = DecimalSign::Either;
    Which which = Which::Only;
    /// From 1 to mostNumbers; for Which::Nth.
    int nth = 1;
    /// For Which::After. Upper and lower case are the same; it is looked for as a word of its own.
    QString after;
    /// Lines without it are passed over; empty: every line counts. Upper and lower case are the same.
    QString mustContain;
    /// Lines with it are passed over; empty: none. Upper and lower case are the same.
    QString leaveOut;
    bool operator==(const LinePattern &) const = default;
};
inline constexpr int mostNumbers = 50;

/// What keeps the pattern from being used, in one sentence; empty if nothing does.
QString faultOf(const LinePattern &pattern);

/// Why a line gives no absorbance.
struct LineRefusal {
    /// The pattern passes over such lines: no reading was lost.
    bool isPassedOver = false;
    /// One sentence.
    QString sentence;
    bool operator==(const LineRefusal &) const = default;
};
/// The absorbance, finite but not judged otherwise, or why there is none. Frame signs at both ends (STX, ETX,
/// NUL and the like) do not count; a control character within is refused. The pattern is sound.
std::variant<double, LineRefusal> readLine(const LineAssembler::Line &line, const LinePattern &pattern);

} // namespace plateau::exchange
