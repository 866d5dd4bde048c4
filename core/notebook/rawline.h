// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::notebook {

/// In characters (UTF-16).
inline constexpr qsizetype longestRawLine = 1000;

/// Bytes that came from an instrument as a text that can be kept, at most longestRawLine of it: what is no
/// printable character stands as \t, \r, \n or \xNN, a backslash twice, and "..." for what was cut off.
QString rawLine(const QByteArray &bytes);

} // namespace plateau::notebook
