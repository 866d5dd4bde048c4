// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>
#include <QByteArrayView>

#include <vector>

namespace plateau::exchange {

/// Longest line, in bytes: no photometer writes more into one.
inline constexpr qsizetype longestLine_bytes = 1024;

/// Whole lines out of whatever pieces a serial line or a network brings them in. A line ends with LF, CR or
/// CRLF, even if the two arrive apart. The bytes of a line are kept as they are; a line that does not end
/// within longestLine_bytes is given at once, cut there and marked, and what follows of it up to its end is
/// dropped. So memory is bounded.
class LineAssembler
{
public:
    struct Line {
        QByteArray bytes;
        bool isTooLong = false;
        bool operator==(const Line &) const = default;
    };

    /// The lines that the bytes complete, in order.
    std::vector<Line> take(QByteArrayView bytes);
    /// What has come of a line that has not ended, to be said when the connection ends; forgets it.
    QByteArray takeRest();

private:
    void endLine(std::vector<Line> &lines);

    QByteArray m_line;
    bool m_dropping = false;
    bool m_afterCarriageReturn = false;
};

} // namespace plateau::exchange
