// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/canvas.h"

#include <functional>
#include <vector>

namespace plateau::ui {

/// A column of a table on paper. Natural: as wide as what stands in it. Wrap: what is left, text on several
/// lines. Bar: a number from 0 to 1 in C format, drawn as a bar.
struct TableColumn {
    QString head;
    enum class Fit { Natural, Wrap, Bar } fit = Fit::Natural;
    bool isNumber = false;
    bool bold = false;
    /// Of the table's width, so that tables below each other have the same columns; 0: as fit says.
    double part = 0;
};
struct PrintedTable {
    std::vector<TableColumn> columns;
    /// As many cells in each as there are columns.
    std::vector<QStringList> rows;
    /// What is longer is cut in the middle.
    int mostLines = 6;
    double size_pt = 8;
};

/// A caption with what is known; nothing becomes a line to write on.
struct PrintedField {
    QString caption;
    QString value;
    /// Lines to write on where there is no value.
    int blankLines = 1;
};

/// A document that flows over pages: every call puts its part below what is there and begins a page where it
/// does not fit. Headings stay with what follows, rows and short paragraphs are never torn apart, a table repeats
/// its head.
class PageFlow
{
public:
    struct Frame {
        double left_mm = 18;
        double width_mm = 174;
        /// Where text begins on the first page and on the others, and where it ends.
        double firstTop_mm = 20;
        double top_mm = 20;
        double bottom_mm = 277;
        /// What is left free between the parts, 1 as usual.
        double spacing = 1;
        /// Head and foot of a page, counted from 1.
        std::function<void(Canvas &canvas, int page)> paint;
    };
    PageFlow(Canvas &canvas, const Frame &frame, std::function<void()> newPage);

    Canvas &canvas() const { return m_canvas; }
    double left_mm() const { return m_frame.left_mm; }
    double width_mm() const { return m_frame.width_mm; }
    double y_mm() const { return m_y; }
    int page() const { return m_page; }

    void advance(double height_mm) { m_y += height_mm; }
    /// Leaves room between two parts: as much, or less where the document is set close.
    void gap(double height_mm) { m_y += height_mm * m_frame.spacing; }
    /// Begins a page where less than that is left of this one, headings that wait included; then paints them.
    void need(double height_mm);

    /// Wait for what they are headings of, and go to its page.
    void heading(const QString &text);
    void subheading(const QString &text);
    void paragraph(const QString &text, double size_pt = 8, double indent_mm = 0);
    void table(const PrintedTable &table);
    /// In so many columns side by side, filled row by row.
    void fields(const std::vector<PrintedField> &fields, int columns, double size_pt = 8);

    /// How high these would be, for what has to stay on one page with them.
    double paragraphHeight_mm(const QString &text, double size_pt = 8, double indent_mm = 0) const;
    double fieldsHeight_mm(const std::vector<PrintedField> &fields, int columns, double size_pt = 8) const;

private:
    struct Heading {
        QString text;
        TextStyle style;
        double above_mm = 0;
        double below_mm = 0;
        double height_mm = 0;
    };
    void addHeading(const QString &text, TextStyle style, double above_mm, double below_mm);
    void beginPage();
    double paragraphLine_mm(double size_pt) const;
    QStringList linesOf(const QString &text, double size_pt, double indent_mm) const;
    /// Fields that stand side by side: their captions are as high as the highest of them, so that values begin
    /// on one line.
    struct FieldRow {
        std::vector<PrintedField> fields;
        double caption_mm = 0;
        double height_mm = 0;
    };
    double fieldWidth_mm(int columns) const;
    std::vector<FieldRow> rowsOf(const std::vector<PrintedField> &fields, int columns, double size_pt) const;
    double valueHeight_mm(const PrintedField &field, double width_mm, double size_pt) const;
    void paintField(const PrintedField &field, const QRectF &area, double caption_mm, double size_pt);

    Canvas &m_canvas;
    Frame m_frame;
    std::function<void()> m_newPage;
    std::vector<Heading> m_headings;
    int m_page = 0;
    double m_y = 0;
};

} // namespace plateau::ui
