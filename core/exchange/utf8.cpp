// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/utf8.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::exchange {

namespace {

struct Utf8Wording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::TextPlace)
};

bool isTrail(unsigned char byte)
{
    return (byte & 0xC0) == 0x80;
}

/// Length of the well-formed sequence at the offset; 0 if there is none.
qsizetype sequenceLength(const QByteArray &bytes, qsizetype offset)
{
    const auto at = [&](qsizetype i) {
        return offset + i < bytes.size() ? static_cast<unsigned char>(bytes[offset + i])
                                         : static_cast<unsigned char>(0);
    };
    const unsigned char lead = at(0);
    if (lead < 0x80)
        return 1;
    if (lead >= 0xC2 && lead <= 0xDF)
        return isTrail(at(1)) ? 2 : 0;
    if (lead >= 0xE0 && lead <= 0xEF) {
        const bool second =
            isTrail(at(1)) && !(lead == 0xE0 && at(1) < 0xA0) && !(lead == 0xED && at(1) > 0x9F);
        return second && isTrail(at(2)) ? 3 : 0;
    }
    if (lead >= 0xF0 && lead <= 0xF4) {
        const bool second =
            isTrail(at(1)) && !(lead == 0xF0 && at(1) < 0x90) && !(lead == 0xF4 && at(1) > 0x8F);
        return second && isTrail(at(2)) && isTrail(at(3)) ? 4 : 0;
    }
    return 0;
}

} // namespace

std::optional<qsizetype> invalidUtf8(const QByteArray &bytes)
{
    for (qsizetype offset = 0; offset < bytes.size();) {
        const qsizetype length = sequenceLength(bytes, offset);
        if (length == 0)
            return offset;
        offset += length;
    }
    return std::nullopt;
}

TextPlace placeOf(const QByteArray &bytes, qsizetype offset)
{
    TextPlace place;
    for (qsizetype i = 0; i < std::min(offset, bytes.size()); ++i) {
        if (bytes[i] == '\n') {
            ++place.line;
            place.column = 1;
        } else if (!isTrail(static_cast<unsigned char>(bytes[i]))) {
            ++place.column;
        }
    }
    return place;
}

QString TextPlace::text() const
{
    return Utf8Wording::tr("line %1, column %2").arg(line).arg(column);
}

} // namespace plateau::exchange
