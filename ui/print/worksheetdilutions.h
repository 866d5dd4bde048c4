// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/canvas.h"
#include "ui/print/worksheettable.h"

#include <vector>

namespace plateau::ui {

/// What is to be known and done before the first addition, ahead of the list of them: the standards that lose strength, with
/// the time they were made and their loss, and how each sample is diluted, with a box to tick; as large as is read at
/// arm's length. Nothing, and no height, where there is neither.
class WorksheetDilutions
{
public:
    WorksheetDilutions(const Canvas &canvas, const WorksheetContent &content, const SheetTable &table);

    /// Of its lines from first to last, with the gap below it; none where nothing is diluted.
    std::vector<double> lineHeights_mm() const;
    void paintLine(Canvas &canvas, std::size_t line, double top_mm) const;

private:
    struct Item {
        QString text;
        bool isCaption = false;
        bool hasBox = false;
        int lines = 1;
        /// From the left edge of the table and the top of the list, in mm; box and text.
        QRectF place_mm;
    };
    void addStandards(const Canvas &canvas, const run::Run &run);
    void add(const Canvas &canvas, Item item);
    void beginLine() { m_next_mm = m_width_mm; }
    /// Where lines begin.
    std::vector<double> lineTops_mm() const;

    double m_left_mm = 0;
    double m_width_mm = 0;
    double m_height_mm = 0;
    /// Where the next one goes, if it fits on the line.
    double m_next_mm = 0;
    std::vector<Item> m_items;
};

} // namespace plateau::ui
