// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/lineassembler.h"

#include <utility>

namespace plateau::exchange {

std::vector<LineAssembler::Line> LineAssembler::take(QByteArrayView bytes)
{
    std::vector<Line> lines;
    for (const char byte : bytes) {
        const bool secondHalf = byte == '\n' && m_afterCarriageReturn;
        m_afterCarriageReturn = byte == '\r';
        if (secondHalf)
            continue;
        if (byte == '\n' || byte == '\r') {
            endLine(lines);
        } else if (!m_dropping) {
            if (m_line.size() < longestLine_bytes) {
                m_line += byte;
                continue;
            }
            lines.push_back({std::exchange(m_line, {}), true});
            m_dropping = true;
        }
    }
    return lines;
}

void LineAssembler::endLine(std::vector<Line> &lines)
{
    if (!std::exchange(m_dropping, false))
        lines.push_back({std::exchange(m_line, {}), false});
}

QByteArray LineAssembler::takeRest()
{
    m_dropping = false;
    m_afterCarriageReturn = false;
    return std::exchange(m_line, {});
}

} // namespace plateau::exchange
