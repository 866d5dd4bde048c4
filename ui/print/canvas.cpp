// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/canvas.h"

#include "ui/print/papertext.h"

#include <QBuffer>
#include <QImageReader>
#include <QPainterPath>
#include <QSvgRenderer>
#include <QTextBoundaryFinder>
#include <QTextLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

constexpr double mmPerInch = 25.4;
constexpr QChar narrowNoBreakSpace(0x202f);

/// Laid out in lines of that width (dots); left to right as a paragraph, whatever script it is in, so that
/// all cells of a column begin at the same edge.
void layOut(QTextLayout &layout, double width, bool wrap)
{
    QTextOption option(Qt::AlignLeft | Qt::AlignAbsolute);
    option.setWrapMode(wrap ? QTextOption::WrapAtWordBoundaryOrAnywhere : QTextOption::NoWrap);
    option.setTextDirection(Qt::LeftToRight);
    layout.setTextOption(option);
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine())
        line.setLineWidth(width);
    layout.endLayout();
}

bool fitsInto(const QTextLayout &layout, double width, int lines)
{
    if (layout.lineCount() > lines)
        return false;
    for (int i = 0; i < layout.lineCount(); ++i) {
        if (layout.lineAt(i).naturalTextWidth() > width)
            return false;
    }
    return true;
}

/// As it is painted: a joiner has done its work then, and would only stand in the way of who searches for "g/L".
QString lineOf(const QString &text, const QTextLine &line)
{
    return text.sliced(line.textStart(), line.textLength()).remove(wordJoiner);
}

/// What no-break spaces and joiners hold together and is wider than a line is broken where they stand, as at any blank:
/// better there than within a word.
QString loosened(const QString &text, double width, const QFontMetricsF &metrics)
{
    QStringList runs = text.split(u' ');
    for (QString &run : runs) {
        const bool isHeld = run.contains(QChar::Nbsp) || run.contains(narrowNoBreakSpace) || run.contains(wordJoiner);
        if (!isHeld || metrics.horizontalAdvance(run) <= width)
            continue;
        run.replace(QChar::Nbsp, u' ').replace(narrowNoBreakSpace, u' ');
        QStringList words = run.split(u' ');
        for (QString &word : words) {
            if (metrics.horizontalAdvance(word) > width)
                word.remove(wordJoiner); // else a unit stays whole
        }
        run = words.join(u' ');
    }
    return runs.join(u' ');
}

/// The first and the last of the text, so many signs together, none of them torn apart.
QString middleCut(const QString &text, qsizetype keep)
{
    qsizetype head = (keep + 1) / 2;
    qsizetype tail = keep / 2;
    if (head > 0 && text[head - 1].isHighSurrogate())
        --head;
    if (tail > 0 && text[text.size() - tail].isLowSurrogate())
        --tail;
    return text.first(head).trimmed() + u'…' + text.last(tail).trimmed();
}

} // namespace

QString printable(const QString &text)
{
    constexpr qsizetype longest = 1000;
    QString shown;
    const QList<uint> signs = text.left(2 * longest + 2).toUcs4();
    for (const char32_t sign : signs.first(std::min(longest, signs.size()))) {
        const auto category = QChar::category(sign);
        const bool breaks = category == QChar::Other_Control || category == QChar::Separator_Line ||
                            category == QChar::Separator_Paragraph;
        const bool reorders = (sign >= 0x202A && sign <= 0x202E) || (sign >= 0x2066 && sign <= 0x2069);
        shown += breaks || reorders ? u" "_s : QString::fromUcs4(&sign, 1);
    }
    if (signs.size() > longest)
        shown += u'…';
    return shown;
}

Canvas::Canvas(QPainter &painter)
    : m_painter(painter)
    , m_dotsPerMm(painter.device()->logicalDpiX() / mmPerInch)
{
    m_painter.setPen(Qt::black);
}

QFont Canvas::font(const TextStyle &style) const
{
    // The one font that every installation has; hinting is for screens.
    QFont font(u"DejaVu Sans"_s);
    font.setPointSizeF(style.size_pt);
    font.setBold(style.bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    // Spaced by next to nothing, Qt leaves out ligatures: who searches for "buffer" has to find it.
    constexpr double hardlyAny_dots = 0.02;
    font.setLetterSpacing(QFont::AbsoluteSpacing, hardlyAny_dots);
    return QFont(font, m_painter.device());
}

QRectF Canvas::dots(const QRectF &area) const
{
    return {area.topLeft() * m_dotsPerMm, area.size() * m_dotsPerMm};
}

QPointF Canvas::dots(const QPointF &point) const
{
    return point * m_dotsPerMm;
}

bool Canvas::fits(const QSizeF &cell, const QString &text, const TextStyle &style) const
{
    return fitsAsItIs(cell.width(), laid(text, cell.width(), style), style);
}

bool Canvas::fitsAsItIs(double width_mm, const QString &text, const TextStyle &style) const
{
    QTextLayout layout(text, font(style));
    layOut(layout, width_mm * m_dotsPerMm, style.lines > 1);
    return fitsInto(layout, width_mm * m_dotsPerMm, style.lines);
}

QString Canvas::held(const QString &text, double width_mm, const TextStyle &style) const
{
    return loosened(withWholeUnits(text), width_mm * m_dotsPerMm, QFontMetricsF(font(style), m_painter.device()));
}

QString Canvas::laid(const QString &text, double width_mm, const TextStyle &style) const
{
    if (style.lines == 1)
        return text;
    const QString whole = held(text, width_mm, style);
    return whole == text || fitsAsItIs(width_mm, whole, style) ? whole : text;
}

QString Canvas::cut(const QString &text, const QSizeF &cell, const TextStyle &style) const
{
    if (fits(cell, text, style))
        return text;
    qsizetype fitting = 0;
    qsizetype tooLong = text.size();
    while (tooLong - fitting > 1) {
        const qsizetype middle = (fitting + tooLong) / 2;
        (fits(cell, middleCut(text, middle), style) ? fitting : tooLong) = middle;
    }
    return middleCut(text, fitting);
}

double Canvas::width_mm(const QString &text, const TextStyle &style) const
{
    return QFontMetricsF(font(style), m_painter.device()).horizontalAdvance(text) / m_dotsPerMm;
}

double Canvas::lineHeight_mm(const TextStyle &style) const
{
    return QFontMetricsF(font(style), m_painter.device()).height() / m_dotsPerMm;
}

bool Canvas::tears(const QString &text, double width_mm, const TextStyle &style) const
{
    const QString shown = held(text, width_mm, style);
    QTextLayout layout(shown, font(style));
    layOut(layout, width_mm * m_dotsPerMm, true);
    QTextBoundaryFinder breaks(QTextBoundaryFinder::Line, shown);
    for (int i = 1; i < layout.lineCount(); ++i) {
        breaks.setPosition(layout.lineAt(i).textStart());
        if (!breaks.isAtBoundary())
            return true;
    }
    return false;
}

QStringList Canvas::wrapped(const QString &text, double width_mm, const TextStyle &style) const
{
    const QString shown = held(text, width_mm, style);
    QTextLayout layout(shown, font(style));
    layOut(layout, width_mm * m_dotsPerMm, true);
    QStringList lines;
    for (int i = 0; i < layout.lineCount(); ++i)
        lines << lineOf(shown, layout.lineAt(i)).trimmed();
    if (lines.size() == 1 && lines.front().isEmpty())
        lines.clear();
    return lines;
}

bool Canvas::text(const QRectF &cell, const QString &wanted, const TextStyle &style)
{
    const QString whole = printable(wanted);
    const QString shown = cut(whole, cell.size(), style);
    const QRectF area = dots(cell);
    const QString broken = laid(shown, cell.width(), style);
    QTextLayout layout(broken, font(style));
    layOut(layout, area.width(), style.lines > 1);
    const double height = layout.lineCount() * layout.lineAt(0).height();
    double y = area.top();
    if (style.alignment & Qt::AlignVCenter)
        y += (area.height() - height) / 2;
    else if (style.alignment & Qt::AlignBottom)
        y += area.height() - height;

    m_painter.save();
    m_painter.setClipRect(area);
    m_painter.setPen(style.inverse ? Qt::white : Qt::black);
    for (int i = 0; i < layout.lineCount(); ++i) {
        QTextLayout single(lineOf(broken, layout.lineAt(i)), font(style));
        const bool isJoined = broken.contains(wordJoiner);
        if (isJoined)
            layOut(single, area.width(), false);
        const QTextLine line = isJoined ? single.lineAt(0) : layout.lineAt(i);
        double x = area.left();
        if (style.alignment & Qt::AlignHCenter)
            x += (area.width() - line.naturalTextWidth()) / 2;
        else if (style.alignment & Qt::AlignRight)
            x += area.width() - line.naturalTextWidth();
        line.draw(&m_painter, QPointF(x, y + i * line.height()) - line.position());
    }
    m_painter.restore();
    return shown == whole;
}

bool Canvas::shrunkText(const QRectF &cell, const QString &text, TextStyle style, double smallest_pt)
{
    const QString whole = printable(text);
    while (style.size_pt > smallest_pt && !fits(cell.size(), whole, style))
        style.size_pt = std::max(smallest_pt, style.size_pt - 0.5);
    constexpr double slack_mm = 0.5;
    while (!fits(cell.size(), whole, style) &&
           (style.lines + 1) * lineHeight_mm(style) <= cell.height() + slack_mm)
        ++style.lines;
    return Canvas::text(cell, whole, style);
}

void Canvas::uprightText(const QRectF &cell, const QString &text, const TextStyle &style)
{
    m_painter.save();
    const QRectF area = dots(cell);
    m_painter.translate(area.center());
    m_painter.rotate(-90);
    const QSizeF turned = cell.size().transposed();
    Canvas(m_painter).text({QPointF(-turned.width() / 2, -turned.height() / 2), turned}, text, style);
    m_painter.restore();
}

void Canvas::line(const QPointF &from, const QPointF &to, double width_mm)
{
    m_painter.setPen(QPen(Qt::black, width_mm * m_dotsPerMm, Qt::SolidLine, Qt::FlatCap));
    m_painter.drawLine(dots(from), dots(to));
}

void Canvas::box(const QRectF &area, double line_mm)
{
    m_painter.setPen(QPen(Qt::black, line_mm * m_dotsPerMm, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawRect(dots(area));
}

void Canvas::fill(const QRectF &area)
{
    m_painter.fillRect(dots(area), Qt::black);
}

void Canvas::clear(const QRectF &area)
{
    m_painter.fillRect(dots(area), Qt::white);
}

void Canvas::fillDisc(const QRectF &area)
{
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(Qt::black);
    m_painter.drawEllipse(dots(area));
}

void Canvas::qrCode(const QRectF &area, const QrCode &code)
{
    if (code.side == 0)
        return;
    const double module = area.width() * m_dotsPerMm / (code.side + 2 * qrQuietZone);
    const QPointF origin = dots(area.topLeft()) + QPointF(module, module) * qrQuietZone;
    // One path for all modules: viewers would draw hairlines between separate ones.
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (int row = 0; row < code.side; ++row) {
        for (int column = 0; column < code.side; ++column) {
            if (code.isDark(row, column))
                path.addRect(QRectF(origin + QPointF(column, row) * module, QSizeF(module, module)));
        }
    }
    m_painter.fillPath(path, Qt::black);
}

bool Canvas::picture(const QRectF &area, const QByteArray &bytes, Qt::Alignment alignment)
{
    constexpr int largest_px = 8192;
    const auto placed = [&](const QSizeF &size) {
        QRectF target(QPointF(), size.scaled(area.size(), Qt::KeepAspectRatio));
        target.moveTopLeft(area.topLeft());
        if (alignment & Qt::AlignRight)
            target.moveRight(area.right());
        if (alignment & Qt::AlignBottom)
            target.moveBottom(area.bottom());
        return dots(target);
    };
    if (bytes.trimmed().startsWith('<')) {
        QSvgRenderer drawing(bytes);
        if (!drawing.isValid() || drawing.defaultSize().isEmpty())
            return false;
        drawing.render(&m_painter, placed(drawing.defaultSize()));
        return true;
    }
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    const QSize size = reader.size();
    if (size.isEmpty() || size.width() > largest_px || size.height() > largest_px)
        return false;
    const QImage image = reader.read();
    if (image.isNull())
        return false;
    m_painter.drawImage(placed(image.size()), image);
    return true;
}

} // namespace plateau::ui
