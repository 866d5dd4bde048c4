// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/delimited.h"

#include <algorithm>

namespace plateau::ui {

namespace {

class Splitter
{
public:
    Splitter(const QString &text, bool withMarks)
        : m_withMarks(withMarks)
        , m_separator(text.contains(u'\t') ? u'\t' : u';')
    {
        for (const QChar character : text)
            take(character);
        leftOpen = m_quoted;
        endLine();
    }
    std::vector<DelimitedLine> lines;
    /// A quotation mark has no partner.
    bool leftOpen = false;

private:
    void take(QChar character)
    {
        if (m_withMarks && character == u'"' && (m_quoted || m_cell.trimmed().isEmpty() || m_closed)) {
            // Two in a row within quotation marks stand for one.
            if (m_closed)
                m_cell += character;
            m_quoted = !m_quoted;
            m_closed = !m_quoted;
            return;
        }
        m_closed = false;
        if (m_quoted && character == u'\n')
            ++m_number;
        if (m_quoted)
            m_cell += character;
        else if (character == m_separator)
            endCell();
        else if (character == u'\n' || character == u'\r')
            endLine(character == u'\n');
        else
            m_cell += character;
    }
    void endCell()
    {
        m_cells << m_cell.simplified();
        m_cell.clear();
        m_closed = false;
    }
    void endLine(bool counts = true)
    {
        endCell();
        if (std::ranges::any_of(m_cells, [](const QString &cell) { return !cell.isEmpty(); }))
            lines.push_back({m_first, m_cells});
        m_cells.clear();
        m_number += counts ? 1 : 0;
        m_first = m_number;
    }

    bool m_withMarks;
    QChar m_separator;
    QString m_cell;
    QStringList m_cells;
    bool m_quoted = false;
    bool m_closed = false;
    int m_number = 1;
    int m_first = 1;
};

} // namespace

std::vector<DelimitedLine> splitDelimited(const QString &text)
{
    Splitter withMarks(text, true);
    return withMarks.leftOpen ? std::move(Splitter(text, false).lines) : std::move(withMarks.lines);
}

} // namespace plateau::ui
