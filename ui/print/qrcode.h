// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <vector>

namespace plateau::ui {

/// A QR code (ISO/IEC 18004) as modules row by row, true for dark, without its quiet zone.
struct QrCode {
    int side = 0;
    std::vector<bool> dark;
    bool isDark(int row, int column) const { return dark[static_cast<std::size_t>(row * side + column)]; }
};

/// Four modules of white belong on every side.
inline constexpr int qrQuietZone = 4;

/// Error correction level Q: a quarter of it may be soiled. The text is kept short by the QR alphabet where
/// it consists of capitals, digits, blanks and $%*+-./: alone. side is 0 where the text is empty or too long.
QrCode qrCodeOf(const QString &text);

/// Of the library that is loaded.
QString qrCodeLibraryVersion();

} // namespace plateau::ui
