// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/tablelayout.h"

#include <algorithm>
#include <numeric>

namespace plateau::ui {

namespace {

constexpr double padding_mm = 0.9;
constexpr double gap_mm = 3;
constexpr double smallestWrap_mm = 26;
constexpr double bar_mm = 42;
constexpr double smallest_pt = 5.5;
constexpr double step_pt = 0.5;

using Fit = TableColumn::Fit;

} // namespace

TableLayout::TableLayout(const Canvas &canvas, const PrintedTable &table, double width_mm)
    : m_table(table)
    , m_size_pt(table.size_pt)
{
    while (!setWidths(canvas, width_mm) && m_size_pt > smallest_pt)
        m_size_pt -= step_pt;
    const auto heightOf = [&](const QStringList &cells, auto style) {
        double height_mm = 0;
        for (std::size_t column = 0; column < m_table.columns.size(); ++column) {
            const TextStyle used = (this->*style)(column);
            const int lines = linesOf(canvas, cells[static_cast<qsizetype>(column)], column, used);
            height_mm = std::max(height_mm, lines * canvas.lineHeight_mm(used));
        }
        return height_mm + 2 * padding_mm;
    };
    QStringList heads;
    for (const TableColumn &column : table.columns)
        heads << column.head;
    if (!heads.join(QString()).isEmpty())
        m_head_mm = heightOf(heads, &TableLayout::headStyle);
    for (const QStringList &row : table.rows)
        m_rows_mm.push_back(heightOf(row, &TableLayout::cellStyle));
}

double TableLayout::height_mm() const
{
    return std::accumulate(m_rows_mm.begin(), m_rows_mm.end(), m_head_mm);
}

TextStyle TableLayout::headStyle(std::size_t column) const
{
    TextStyle style = cellStyle(column);
    style.bold = true;
    // Where a column has to give way, its head wraps.
    style.lines = std::max(style.lines, 3);
    style.size_pt = std::max(smallest_pt, m_size_pt - 1);
    style.alignment.setFlag(Qt::AlignTop, false);
    style.alignment.setFlag(Qt::AlignBottom);
    return style;
}

TextStyle TableLayout::cellStyle(std::size_t column) const
{
    const TableColumn &known = m_table.columns[column];
    TextStyle style{m_size_pt, known.bold};
    style.alignment = (known.isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignTop;
    const bool wraps = known.fit == Fit::Wrap || (m_isTight && !known.isNumber && known.fit != Fit::Bar);
    style.lines = wraps ? m_table.mostLines : 1;
    return style;
}

bool TableLayout::setWidths(const Canvas &canvas, double width_mm)
{
    const std::size_t count = m_table.columns.size();
    std::vector<double> wanted_mm(count, 0);
    for (std::size_t i = 0; i < count; ++i) {
        const auto widen = [&](const QString &text, const TextStyle &style) {
            wanted_mm[i] = std::max(wanted_mm[i], canvas.width_mm(printable(text).left(300), style) + 0.4);
        };
        if (m_table.columns[i].fit == Fit::Bar || m_table.columns[i].part > 0) {
            wanted_mm[i] = m_table.columns[i].part > 0 ? m_table.columns[i].part * width_mm : bar_mm;
            continue;
        }
        widen(m_table.columns[i].head, headStyle(i));
        for (const QStringList &row : m_table.rows)
            widen(row[static_cast<qsizetype>(i)], cellStyle(i));
    }
    const double room_mm = width_mm - static_cast<double>(count - 1) * gap_mm;
    const auto isWrap = [&](std::size_t i) {
        return m_table.columns[i].fit == Fit::Wrap && m_table.columns[i].part == 0;
    };
    double fixed_mm = 0;
    double wrapped_mm = 0;
    double leastWrap_mm = 0;
    for (std::size_t i = 0; i < count; ++i) {
        (isWrap(i) ? wrapped_mm : fixed_mm) += wanted_mm[i];
        leastWrap_mm += isWrap(i) ? std::min(smallestWrap_mm, wanted_mm[i]) : 0;
    }
    m_columns_mm = wanted_mm;
    const double rest_mm = room_mm - fixed_mm;
    m_isTight = rest_mm < leastWrap_mm;
    if (m_isTight) {
        // Words give way, on more lines; a number torn in two would be read as another one.
        const auto isKept = [&](std::size_t i) {
            return m_table.columns[i].isNumber && m_table.columns[i].fit == Fit::Natural;
        };
        double kept_mm = 0;
        for (std::size_t i = 0; i < count; ++i)
            kept_mm += isKept(i) ? wanted_mm[i] : 0;
        constexpr double mostForNumbers = 0.6;
        const bool keeps = kept_mm < mostForNumbers * room_mm;
        const double part = keeps ? (room_mm - kept_mm) / (fixed_mm + wrapped_mm - kept_mm)
                                  : room_mm / (fixed_mm + wrapped_mm);
        for (std::size_t i = 0; i < count; ++i)
            m_columns_mm[i] *= keeps && isKept(i) ? 1 : part;
        return false;
    }
    const double spare_mm = rest_mm - wrapped_mm;
    if (spare_mm >= 0) {
        // Everything fits on one line: what is left goes between the columns, to none of them alone.
        for (double &column_mm : m_columns_mm)
            column_mm += spare_mm / static_cast<double>(count);
        return true;
    }
    // Short ones get all they want, the rest is for those that want more than their part.
    std::vector<std::size_t> wraps;
    for (std::size_t i = 0; i < count; ++i) {
        if (isWrap(i))
            wraps.push_back(i);
    }
    std::ranges::sort(wraps, {}, [&](std::size_t i) { return wanted_mm[i]; });
    double left_mm = rest_mm;
    for (std::size_t k = 0; k < wraps.size(); ++k) {
        const double part_mm = left_mm / static_cast<double>(wraps.size() - k);
        m_columns_mm[wraps[k]] = std::min(wanted_mm[wraps[k]], part_mm);
        left_mm -= m_columns_mm[wraps[k]];
    }
    return true;
}

int TableLayout::linesOf(const Canvas &canvas, const QString &text, std::size_t column,
                         const TextStyle &style) const
{
    if (style.lines == 1)
        return 1;
    const qsizetype lines = canvas.wrapped(printable(text), m_columns_mm[column], style).size();
    return static_cast<int>(std::clamp<qsizetype>(lines, 1, style.lines));
}

void TableLayout::paintHead(Canvas &canvas, const QPointF &corner) const
{
    if (m_head_mm == 0)
        return;
    double x = corner.x();
    for (std::size_t i = 0; i < m_columns_mm.size(); ++i) {
        canvas.text({x, corner.y() + padding_mm, m_columns_mm[i], m_head_mm - 2 * padding_mm},
                    m_table.columns[i].head, headStyle(i));
        x += m_columns_mm[i] + gap_mm;
    }
    const double y = corner.y() + m_head_mm;
    canvas.line({corner.x(), y}, {x - gap_mm, y}, 0.3);
}

void TableLayout::paintRow(Canvas &canvas, const QPointF &corner, std::size_t row) const
{
    double x = corner.x();
    for (std::size_t i = 0; i < m_columns_mm.size(); ++i) {
        const QRectF cell(x, corner.y() + padding_mm, m_columns_mm[i], m_rows_mm[row] - 2 * padding_mm);
        const QString &text = m_table.rows[row][static_cast<qsizetype>(i)];
        if (m_table.columns[i].fit == Fit::Bar)
            paintBar(canvas, cell, text);
        else
            canvas.text(cell, text, cellStyle(i));
        x += m_columns_mm[i] + gap_mm;
    }
    if (row > 0)
        canvas.line(corner, {x - gap_mm, corner.y()}, 0.06);
}

void TableLayout::paintBar(Canvas &canvas, const QRectF &cell, const QString &part) const
{
    const double length_mm = std::clamp(part.toDouble(), 0.0, 1.0) * cell.width();
    constexpr double height_mm = 2;
    const double y = cell.center().y() - height_mm / 2;
    canvas.line({cell.left(), y - 0.6}, {cell.left(), y + height_mm + 0.6}, 0.15);
    if (length_mm > 0)
        canvas.fill({cell.left(), y, length_mm, height_mm});
}

} // namespace plateau::ui
