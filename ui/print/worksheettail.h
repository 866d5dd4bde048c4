// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/canvas.h"
#include "ui/print/worksheettable.h"

#include <functional>

namespace plateau::ui {

/// What stands below the table: names that did not fit into their cells, spoilt tubes, cautions.
class WorksheetTail
{
public:
    WorksheetTail(const Canvas &canvas, const WorksheetContent &content, const SheetTable &table);
    void addNames(const Canvas &canvas, const std::vector<TubeGroup> &names);

    double height_mm() const;
    /// How many pages it takes by itself.
    int pages(double top_mm, double bottom_mm) const;
    /// From top_mm on; nextTop_mm begins a page and says where on it.
    /// What room is left below becomes a box for notes.
    void paint(Canvas &canvas, double top_mm, double bottom_mm,
               const std::function<double()> &nextTop_mm) const;

private:
    struct Line {
        QString text;
        bool heading = false;
    };
    /// Where each line begins; nextTop_mm as above, place gets the line and its upper edge.
    template <class Place>
    void flow(double top_mm, double bottom_mm, const std::function<double()> &nextTop_mm, Place place) const;
    void addHeading(const QString &heading);
    void addParagraph(const Canvas &canvas, const QString &text);

    const SheetTable &m_table;
    std::vector<Line> m_lines;
};

} // namespace plateau::ui
