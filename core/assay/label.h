// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <optional>

namespace plateau::assay {

/// Longest id or name, and longest running text (source, principle, caution), in characters.
inline constexpr qsizetype maxLabelLength = 200;
inline constexpr qsizetype maxProseLength = 4000;

/// Why the text cannot be an id or a name, as a sentence part after a colon; nothing if it can. Refused are
/// blank texts, control characters, line separators, the signs that reorder a line (U+202A to U+202E, U+2066
/// to U+2069) and more than maxLabelLength characters.
std::optional<QString> labelFault(const QString &text);

/// The same for running text, where line feeds and tabs are welcome. A blank text is no fault here.
std::optional<QString> proseFault(const QString &text);

/// The text as a sentence names it: on one line, signs that are refused in labels shown as their codes, and cut
/// after some sixty characters.
QString named(const QString &text);
/// The same in the quotation marks of the language.
QString quoted(const QString &text);

/// A number as a sentence shows it: at most six significant digits, decimal point.
QString shown(double value);

} // namespace plateau::assay
