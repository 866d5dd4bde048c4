// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>
#include <QString>

#include <optional>

namespace plateau::exchange {

/// Offset of the first byte that is not part of well-formed UTF-8 (Unicode 15, table 3-7: no overlong forms,
/// no surrogates, nothing above U+10FFFF); nothing if all is.
std::optional<qsizetype> invalidUtf8(const QByteArray &bytes);

/// Line and column of a byte, both from 1, the column in characters.
struct TextPlace {
    qsizetype line = 1;
    qsizetype column = 1;
    /// "line 3, column 12".
    QString text() const;
};
/// offset may lie at or beyond the end: the place behind the last character.
TextPlace placeOf(const QByteArray &bytes, qsizetype offset);

} // namespace plateau::exchange
