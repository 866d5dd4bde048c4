// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/worksheetlists.h"

#include <algorithm>
#include <iterator>
#include <numeric>

namespace plateau::ui {

std::vector<std::pair<std::size_t, std::size_t>> listPagesOf(const std::vector<double> &heights_mm, double room_mm)
{
    std::vector<std::pair<std::size_t, std::size_t>> pages{{0, 0}};
    double used_mm = 0;
    for (std::size_t line = 0; line < heights_mm.size(); ++line) {
        if (pages.back().second > pages.back().first && used_mm + heights_mm[line] > room_mm) {
            pages.emplace_back(line, line);
            used_mm = 0;
        }
        used_mm += heights_mm[line];
        pages.back().second = line + 1;
    }
    return pages;
}

WorksheetLists::WorksheetLists(const Canvas &canvas, const WorksheetContent &content, const SheetTable &table,
                               double room_mm)
    : m_dilutions(canvas, content, table)
    , m_additions(canvas, content, table)
    , m_heights_mm(m_dilutions.lineHeights_mm())
    , m_dilutionLines(m_heights_mm.size())
{
    std::ranges::copy(m_additions.lineHeights_mm(), std::back_inserter(m_heights_mm));
    m_pages = listPagesOf(m_heights_mm, room_mm);
}

double WorksheetLists::lastHeight_mm() const
{
    const auto [first, end] = m_pages.back();
    return std::accumulate(m_heights_mm.begin() + static_cast<std::ptrdiff_t>(first),
                           m_heights_mm.begin() + static_cast<std::ptrdiff_t>(end), 0.0);
}

void WorksheetLists::paint(Canvas &canvas, int page, double top_mm) const
{
    const auto [first, end] = m_pages[static_cast<std::size_t>(page)];
    for (std::size_t line = first; line < end; ++line) {
        if (line < m_dilutionLines)
            m_dilutions.paintLine(canvas, line, top_mm);
        else
            m_additions.paintLine(canvas, line - m_dilutionLines, top_mm);
        top_mm += m_heights_mm[line];
    }
}

} // namespace plateau::ui
