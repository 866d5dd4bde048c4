// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/pageflow.h"

#include <QPointF>

#include <vector>

namespace plateau::ui {

/// Where the cells of a table stand: columns as wide as they need to be, in smaller type where they would not
/// fit, rows as high as their highest cell.
class TableLayout
{
public:
    TableLayout(const Canvas &canvas, const PrintedTable &table, double width_mm);

    /// 0 where no column has a head.
    double headHeight_mm() const { return m_head_mm; }
    double height_mm() const;
    double rowHeight_mm(std::size_t row) const { return m_rows_mm[row]; }
    void paintHead(Canvas &canvas, const QPointF &corner) const;
    void paintRow(Canvas &canvas, const QPointF &corner, std::size_t row) const;

private:
    TextStyle headStyle(std::size_t column) const;
    TextStyle cellStyle(std::size_t column) const;
    /// True where every column got what it needs.
    bool setWidths(const Canvas &canvas, double width_mm);
    int linesOf(const Canvas &canvas, const QString &text, std::size_t column, const TextStyle &style) const;
    void paintBar(Canvas &canvas, const QRectF &cell, const QString &part) const;

    const PrintedTable &m_table;
    double m_size_pt;
    /// Even the smallest type is too wide: cells that hold words go on on more lines, whatever their column wanted.
    bool m_isTight = false;
    std::vector<double> m_columns_mm;
    double m_head_mm = 0;
    std::vector<double> m_rows_mm;
};

} // namespace plateau::ui
