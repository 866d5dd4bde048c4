// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/pageflow.h"

#include "ui/print/tablelayout.h"

#include <algorithm>
#include <utility>

namespace plateau::ui {

namespace {

constexpr TextStyle headingStyle{11, true};
constexpr TextStyle subheadingStyle{8.5, true};
/// A caption is wrapped, not cut: other languages are longer. It stands right above its value.
constexpr TextStyle captionStyle{6.5, false, Qt::AlignLeft | Qt::AlignBottom, 3};
constexpr double fieldGap_mm = 6;
constexpr double writingLine_mm = 6.5;
constexpr double captionGap_mm = 0.5;
constexpr double belowFields_mm = 0.8;
constexpr double belowParagraph_mm = 0.8;
/// Of a page. Whatever was keyed for a report stands on it.
constexpr qsizetype mostFieldLines = 60;

/// Text of any length on one line without signs that reorder it; longer than what printable() keeps of a
/// name.
QString prose(const QString &text)
{
    constexpr qsizetype piece = 1000;
    QString whole;
    for (qsizetype at = 0; at < text.size(); at += piece)
        whole += printable(text.sliced(at, std::min(piece, text.size() - at)));
    return whole;
}

} // namespace

PageFlow::PageFlow(Canvas &canvas, const Frame &frame, std::function<void()> newPage)
    : m_canvas(canvas)
    , m_frame(frame)
    , m_newPage(std::move(newPage))
{
    beginPage();
}

void PageFlow::beginPage()
{
    if (m_page > 0)
        m_newPage();
    m_frame.paint(m_canvas, ++m_page);
    m_y = m_page == 1 ? m_frame.firstTop_mm : m_frame.top_mm;
}

void PageFlow::need(double height_mm)
{
    double wanted_mm = height_mm;
    for (const Heading &heading : m_headings)
        wanted_mm += heading.above_mm + heading.height_mm + heading.below_mm;
    const bool untouched = m_y <= (m_page == 1 ? m_frame.firstTop_mm : m_frame.top_mm);
    if (m_y + wanted_mm > m_frame.bottom_mm && !untouched)
        beginPage();
    for (const Heading &heading : std::exchange(m_headings, {})) {
        m_y += heading.above_mm;
        m_canvas.text({left_mm(), m_y, width_mm(), heading.height_mm}, heading.text, heading.style);
        m_y += heading.height_mm + heading.below_mm;
    }
}

void PageFlow::addHeading(const QString &text, TextStyle style, double above_mm, double below_mm)
{
    constexpr qsizetype mostLines = 3;
    const qsizetype lines = m_canvas.wrapped(printable(text), width_mm(), style).size();
    style.lines = static_cast<int>(std::clamp<qsizetype>(lines, 1, mostLines));
    m_headings.push_back({text, style, above_mm * m_frame.spacing, below_mm * m_frame.spacing,
                          style.lines * m_canvas.lineHeight_mm(style)});
}

void PageFlow::heading(const QString &text)
{
    addHeading(text, headingStyle, 5, 1.8);
}

void PageFlow::subheading(const QString &text)
{
    addHeading(text, subheadingStyle, 2.6, 0.8);
}

double PageFlow::paragraphLine_mm(double size_pt) const
{
    return m_canvas.lineHeight_mm({size_pt}) * 1.08;
}

QStringList PageFlow::linesOf(const QString &text, double size_pt, double indent_mm) const
{
    QStringList lines;
    for (const QString &part : text.split(u'\n'))
        lines += m_canvas.wrapped(prose(part), width_mm() - indent_mm, {size_pt});
    return lines;
}

double PageFlow::paragraphHeight_mm(const QString &text, double size_pt, double indent_mm) const
{
    return static_cast<double>(linesOf(text, size_pt, indent_mm).size()) * paragraphLine_mm(size_pt) +
           belowParagraph_mm * m_frame.spacing;
}

void PageFlow::paragraph(const QString &text, double size_pt, double indent_mm)
{
    // A longer one goes over to the next page, with two lines at least on either side.
    constexpr qsizetype mostTogether = 8;
    const TextStyle style{size_pt};
    const double line_mm = paragraphLine_mm(size_pt);
    const double paragraph_mm = width_mm() - indent_mm;
    const QStringList lines = linesOf(text, size_pt, indent_mm);
    const qsizetype count = lines.size();
    for (qsizetype i = 0; i < count; ++i) {
        qsizetype together = i == 0 || i == count - 2 ? std::min<qsizetype>(2, count - i) : 1;
        if (count <= mostTogether)
            together = count - i;
        need(static_cast<double>(together) * line_mm);
        m_canvas.text({left_mm() + indent_mm, m_y, paragraph_mm + 1, line_mm}, lines[i], style);
        m_y += line_mm;
    }
    gap(belowParagraph_mm);
}

void PageFlow::table(const PrintedTable &table)
{
    const TableLayout layout(m_canvas, table, width_mm());
    const auto paintHead = [&] {
        layout.paintHead(m_canvas, {left_mm(), m_y});
        m_y += layout.headHeight_mm();
    };
    // A short table stays whole; of a long one at least two rows stand below its head.
    constexpr double short_mm = 55;
    const double first_mm = layout.headHeight_mm() + (table.rows.empty() ? 0 : layout.rowHeight_mm(0)) +
                            (table.rows.size() > 1 ? layout.rowHeight_mm(1) : 0);
    need(layout.height_mm() < short_mm ? layout.height_mm() : first_mm);
    paintHead();
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        const int page = m_page;
        need(layout.rowHeight_mm(row));
        if (m_page != page)
            paintHead();
        layout.paintRow(m_canvas, {left_mm(), m_y}, row);
        m_y += layout.rowHeight_mm(row);
    }
    m_canvas.line({left_mm(), m_y}, {left_mm() + width_mm(), m_y}, 0.2);
    gap(1.6);
}

double PageFlow::fieldWidth_mm(int columns) const
{
    return (width_mm() - (columns - 1) * fieldGap_mm) / columns;
}

double PageFlow::valueHeight_mm(const PrintedField &field, double width_mm, double size_pt) const
{
    if (field.value.isEmpty())
        return field.blankLines * writingLine_mm;
    const qsizetype lines = m_canvas.wrapped(prose(field.value), width_mm, {size_pt}).size();
    return static_cast<double>(std::clamp<qsizetype>(lines, 1, mostFieldLines)) *
               m_canvas.lineHeight_mm({size_pt}) +
           1.2 * m_frame.spacing;
}

std::vector<PageFlow::FieldRow> PageFlow::rowsOf(const std::vector<PrintedField> &fields, int columns,
                                                 double size_pt) const
{
    const double field_mm = fieldWidth_mm(columns);
    const auto perRow = static_cast<std::size_t>(columns);
    std::vector<FieldRow> rows;
    for (std::size_t first = 0; first < fields.size(); first += perRow) {
        FieldRow row;
        double value_mm = 0;
        for (std::size_t i = first; i < std::min(fields.size(), first + perRow); ++i) {
            row.fields.push_back(fields[i]);
            const qsizetype lines = m_canvas.wrapped(printable(fields[i].caption), field_mm, captionStyle).size();
            row.caption_mm = std::max(
                row.caption_mm, static_cast<double>(std::clamp<qsizetype>(lines, 1, captionStyle.lines)) *
                                    m_canvas.lineHeight_mm(captionStyle));
            value_mm = std::max(value_mm, valueHeight_mm(fields[i], field_mm, size_pt));
        }
        row.height_mm = row.caption_mm + captionGap_mm + value_mm;
        rows.push_back(std::move(row));
    }
    return rows;
}

void PageFlow::paintField(const PrintedField &field, const QRectF &area, double caption_mm, double size_pt)
{
    m_canvas.text({area.left(), area.top(), area.width(), caption_mm}, field.caption, captionStyle);
    const double value = area.top() + caption_mm + captionGap_mm;
    if (field.value.isEmpty()) {
        for (int line = 1; line <= field.blankLines; ++line) {
            const double y = value + line * writingLine_mm - 1.7;
            m_canvas.line({area.left(), y}, {area.right(), y}, 0.12);
        }
        return;
    }
    const TextStyle style{size_pt, false, Qt::AlignLeft | Qt::AlignTop};
    const double line_mm = m_canvas.lineHeight_mm(style);
    QStringList lines = m_canvas.wrapped(prose(field.value), area.width(), style);
    if (lines.size() > mostFieldLines) {
        lines = lines.first(mostFieldLines);
        lines.back() += u'…';
    }
    // What was measured to fit may be drawn a hair wider.
    constexpr double slack_mm = 0.5;
    for (qsizetype i = 0; i < lines.size(); ++i)
        m_canvas.text({area.left(), value + static_cast<double>(i) * line_mm, area.width() + slack_mm, line_mm}, lines[i],
                      style);
}

double PageFlow::fieldsHeight_mm(const std::vector<PrintedField> &fields, int columns, double size_pt) const
{
    double height_mm = 0;
    for (const FieldRow &row : rowsOf(fields, columns, size_pt))
        height_mm += row.height_mm + belowFields_mm * m_frame.spacing;
    return height_mm;
}

void PageFlow::fields(const std::vector<PrintedField> &fields, int columns, double size_pt)
{
    const double field_mm = fieldWidth_mm(columns);
    for (const FieldRow &row : rowsOf(fields, columns, size_pt)) {
        need(row.height_mm);
        double x = left_mm();
        for (const PrintedField &field : row.fields) {
            paintField(field, {x, m_y, field_mm, row.height_mm}, row.caption_mm, size_pt);
            x += field_mm + fieldGap_mm;
        }
        m_y += row.height_mm;
        gap(belowFields_mm);
    }
}

} // namespace plateau::ui
