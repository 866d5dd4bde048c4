// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/qrcode.h"

#include <QFont>
#include <QPainter>
#include <QRectF>
#include <QString>

namespace plateau::ui {

/// How text stands in its cell. Sizes in points.
struct TextStyle {
    double size_pt = 8;
    bool bold = false;
    Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter;
    /// Wrapped into so many lines at most.
    int lines = 1;
    /// White, for a dark ground.
    bool inverse = false;
};

/// The text as one can print it: on one line, without control characters and without the signs that reorder a
/// line, however long it was at most its first 1000 characters.
QString printable(const QString &text);

/// Draws on paper in millimetres from the sheet's upper left corner, in black and white. Text never leaves
/// its cell: what is too long is cut in the middle, where names of one series differ least, and clipped.
class Canvas
{
public:
    explicit Canvas(QPainter &painter);

    /// True if all of the text could be seen.
    bool text(const QRectF &cell, const QString &text, const TextStyle &style);
    /// The same, in smaller type down to smallest_pt where it does not fit, and then on as many lines of that as the cell
    /// is high.
    bool shrunkText(const QRectF &cell, const QString &text, TextStyle style, double smallest_pt);
    /// From bottom to top, in the middle of the cell.
    void uprightText(const QRectF &cell, const QString &text, const TextStyle &style);
    /// What text() would draw, without drawing: whether it fits, and how high a text of that width is.
    bool fits(const QSizeF &cell, const QString &text, const TextStyle &style) const;
    double width_mm(const QString &text, const TextStyle &style) const;
    /// The lines that a paragraph of that width has; none where it is blank.
    QStringList wrapped(const QString &text, double width_mm, const TextStyle &style) const;
    /// Whether a paragraph of that width breaks a word where no hyphen, slash or blank lets it.
    bool tears(const QString &text, double width_mm, const TextStyle &style) const;
    double lineHeight_mm(const TextStyle &style) const;

    void line(const QPointF &from, const QPointF &to, double width_mm);
    void box(const QRectF &area, double line_mm);
    void fill(const QRectF &area);
    /// White, over what was drawn there.
    void clear(const QRectF &area);
    void fillDisc(const QRectF &area);
    /// With its quiet zone inside the area.
    void qrCode(const QRectF &area, const QrCode &code);
    /// A PNG, JPEG or SVG file's bytes, as large as the area lets it be without being distorted. False where
    /// they are none, or hold a picture of absurd size: nothing is drawn then.
    bool picture(const QRectF &area, const QByteArray &bytes, Qt::Alignment alignment);

private:
    QFont font(const TextStyle &style) const;
    QRectF dots(const QRectF &area) const;
    QPointF dots(const QPointF &point) const;
    QString cut(const QString &text, const QSizeF &cell, const TextStyle &style) const;
    /// With what keeps units and names whole where lines are broken (papertext.h), but for what is wider than a line.
    QString held(const QString &text, double width_mm, const TextStyle &style) const;
    /// The same where the lines of the style are enough for it, else the text as it is.
    QString laid(const QString &text, double width_mm, const TextStyle &style) const;
    bool fitsAsItIs(double width_mm, const QString &text, const TextStyle &style) const;

    QPainter &m_painter;
    double m_dotsPerMm;
};

} // namespace plateau::ui
