// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/worksheetadditions.h"
#include "ui/print/worksheetdilutions.h"

#include <utility>
#include <vector>

namespace plateau::ui {

/// Which of so many things below one another stand on which page, from and to (not included): as many as there is room
/// for, and one at least. Always one page.
std::vector<std::pair<std::size_t, std::size_t>> listPagesOf(const std::vector<double> &heights_mm, double room_mm);

/// What stands before the table of the tubes: the dilutions to make, then the additions, over as many pages as that takes.
class WorksheetLists
{
public:
    /// room_mm: of a page below its head.
    WorksheetLists(const Canvas &canvas, const WorksheetContent &content, const SheetTable &table, double room_mm);

    int pages() const { return static_cast<int>(m_pages.size()); }
    /// What the last page has of it.
    double lastHeight_mm() const;
    /// page: counted from 0.
    void paint(Canvas &canvas, int page, double top_mm) const;

private:
    WorksheetDilutions m_dilutions;
    WorksheetAdditions m_additions;
    /// Of the lines of the dilutions, then of the additions.
    std::vector<double> m_heights_mm;
    std::size_t m_dilutionLines = 0;
    std::vector<std::pair<std::size_t, std::size_t>> m_pages;
};

} // namespace plateau::ui
