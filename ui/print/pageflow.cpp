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
constexpr double caption_pt = 6.5;
constexpr double fieldGap_mm = 6;
constexpr double writingLine_mm = 6.5;
constexpr double captionGap_mm = 0.5;
constexpr int mostFieldLines = 8;

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
    m_headings.push_back({text, style, above_mm, below_mm, style.lines * m_canvas.lineHeight_mm(style)});
}

void PageFlow::heading(const QString &text)
{
    addHeading(text, headingStyle, 5, 1.8);
}

void PageFlow::subheading(const QString &text)
{
    addHeading(text, subheadingStyle, 2.6, 0.8);
}

void PageFlow::paragraph(const QString &text, double size_pt, double indent_mm)
{
    const TextStyle style{size_pt};
    const double line_mm = m_canvas.lineHeight_mm(style) * 1.08;
    const double paragraph_mm = width_mm() - indent_mm;
    for (const QString &part : text.split(u'\n')) {
        for (const QString &line : m_canvas.wrapped(prose(part), paragraph_mm, style)) {
            need(line_mm);
            m_canvas.text({left_mm() + indent_mm, m_y, paragraph_mm + 1, line_mm}, line, style);
            m_y += line_mm;
        }
    }
    m_y += 0.8;
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
    m_y += 1.6;
}

double PageFlow::fieldHeight_mm(const PrintedField &field, double width_mm, double size_pt) const
{
    const double caption_mm = m_canvas.lineHeight_mm({caption_pt}) + captionGap_mm;
    if (field.value.isEmpty())
        return caption_mm + field.blankLines * writingLine_mm;
    const qsizetype lines = m_canvas.wrapped(printable(field.value), width_mm, {size_pt}).size();
    return caption_mm +
           static_cast<double>(std::clamp<qsizetype>(lines, 1, mostFieldLines)) *
               m_canvas.lineHeight_mm({size_pt}) +
           1.2;
}

void PageFlow::paintField(const PrintedField &field, const QRectF &area, double size_pt)
{
    const double caption_mm = m_canvas.lineHeight_mm({caption_pt});
    m_canvas.text({area.left(), area.top(), area.width(), caption_mm}, field.caption, {caption_pt});
    if (field.value.isEmpty()) {
        for (int line = 1; line <= field.blankLines; ++line) {
            const double y = area.top() + caption_mm + line * writingLine_mm - 1.2;
            m_canvas.line({area.left(), y}, {area.right(), y}, 0.12);
        }
        return;
    }
    TextStyle style{size_pt, false, Qt::AlignLeft | Qt::AlignTop};
    style.lines = mostFieldLines;
    m_canvas.text(area.adjusted(0, caption_mm + captionGap_mm, 0, 0), field.value, style);
}

void PageFlow::fields(const std::vector<PrintedField> &fields, int columns, double size_pt)
{
    const double field_mm = (width_mm() - (columns - 1) * fieldGap_mm) / columns;
    const auto perRow = static_cast<std::size_t>(columns);
    for (std::size_t first = 0; first < fields.size(); first += perRow) {
        const std::size_t end = std::min(fields.size(), first + perRow);
        double height_mm = 0;
        for (std::size_t i = first; i < end; ++i)
            height_mm = std::max(height_mm, fieldHeight_mm(fields[i], field_mm, size_pt));
        need(height_mm);
        for (std::size_t i = first; i < end; ++i) {
            const double x = left_mm() + static_cast<double>(i - first) * (field_mm + fieldGap_mm);
            paintField(fields[i], {x, m_y, field_mm, height_mm}, size_pt);
        }
        m_y += height_mm + 0.8;
    }
}

} // namespace plateau::ui
