// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/canvas.h"
#include "ui/print/worksheettable.h"

#include <vector>

namespace plateau::ui {

/// The list before the table: every addition with its number, name, volume, pipette and lot. Volumes, lots
/// and days are as wide as they need; names and pipettes share what is left, and go on on another line where
/// that is too little.
class WorksheetAdditions
{
public:
    WorksheetAdditions(const Canvas &canvas, const WorksheetContent &content, const SheetTable &table);

    /// With the gap below the list.
    std::vector<double> lineHeights_mm() const;
    void paintLine(Canvas &canvas, std::size_t line, double top_mm) const;

private:
    struct Line {
        QString name;
        bool suspension = false;
        QString volume;
        QString pipette;
        /// False of the sample, which has none.
        bool hasLot = true;
        QString lot;
        QString until;
        /// Below: which tubes take which lot, where one is not enough for all.
        QString lots;
        /// Without and with what stands below.
        double row_mm = 0;
        double height_mm = 0;
    };
    static Line lineOf(const WorksheetContent &content, int round);
    /// From below the name to the right edge.
    double lotsRoom_mm() const;
    void setWidths(const Canvas &canvas);
    /// What the name has beside the mark of a suspension.
    double nameRoom_mm(const Line &line) const;
    void paintLine(Canvas &canvas, const Line &line, double top_mm, int number) const;

    const SheetTable &m_table;
    std::vector<Line> m_lines;
    double m_swirl_mm = 0;
    double m_name_mm = 0;
    double m_volume_mm = 0;
    double m_pipette_mm = 0;
    double m_lot_mm = 0;
    double m_until_mm = 0;
};

} // namespace plateau::ui
