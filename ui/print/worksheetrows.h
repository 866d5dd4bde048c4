// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/canvas.h"
#include "ui/print/worksheettable.h"

namespace plateau::ui {

/// The table of tubes: its head, and the rows of one page.
class WorksheetRows
{
public:
    WorksheetRows(const Canvas &canvas, const WorksheetContent &content, const SheetTable &table);

    /// As high as the names of the additions need it to be.
    double headHeight_mm() const { return m_head_mm; }
    /// How many names, and texts below them, such pages would cut or show in smaller type than usual.
    int cutOn(const Canvas &canvas, const SheetPages &pages) const;

    void paintHead(Canvas &canvas, double top_mm) const;
    /// The tubes from first to end (not included); headTop_mm: where the head of this page begins.
    void paintRows(Canvas &canvas, double headTop_mm, int first, int end, double row_mm);

    /// Names that did not fit, with the tube they begin at; of everything painted so far.
    const std::vector<TubeGroup> &cutNames() const { return m_cut; }

private:
    double neededHead_mm(const Canvas &canvas, const SheetColumn &column) const;
    /// Where the name of an addition stands in its head.
    QRectF roundName(const QRectF &cell, const SheetColumn &column) const;
    QRectF groupCell(double top_mm, double height_mm) const;
    void paintRoundHead(Canvas &canvas, const QRectF &cell, const SheetColumn &column) const;
    void paintReadingHead(Canvas &canvas, const QRectF &cell, const SheetColumn &column) const;
    void paintTube(Canvas &canvas, const QRectF &row, int tube) const;
    void paintDose(Canvas &canvas, QRectF cell, const SheetColumn &column, int tube) const;
    /// When the tube is to get it, in the upper right corner.
    void paintStart(Canvas &canvas, const QRectF &area, const planning::Round &round, int tube) const;
    void paintReading(Canvas &canvas, const QRectF &cell, const SheetColumn &column, int tube) const;
    void paintGroup(Canvas &canvas, const QRectF &cell, const TubeGroup &group);
    void paintRules(Canvas &canvas, double headTop_mm, double bottom_mm) const;
    void paintPauses(Canvas &canvas, double headTop_mm, double bottom_mm) const;
    /// Left edge and width of every column.
    template <class Use> void eachColumn(Use use) const;

    const WorksheetContent &m_content;
    const SheetTable &m_table;
    std::vector<TubeGroup> m_groups;
    double m_head_mm = 0;
    std::vector<TubeGroup> m_cut;
};

} // namespace plateau::ui
