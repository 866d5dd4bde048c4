// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/tubedrawing.h"

#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"

#include <QEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

Qt::BrushStyle pattern(TubePart part)
{
    switch (part) {
    case TubePart::Sample:
        return Qt::BDiagPattern;
    case TubePart::Starter:
        return Qt::DiagCrossPattern;
    case TubePart::Diluent:
        return Qt::Dense7Pattern;
    case TubePart::Reagent:
        break;
    }
    return Qt::HorPattern;
}

QPainterPath tubePath(const QRectF &area)
{
    // Straight above, round below.
    const double radius = area.width() / 2;
    QPainterPath path(area.topLeft());
    path.lineTo(area.left(), area.bottom() - radius);
    path.arcTo(QRectF(area.left(), area.bottom() - 2 * radius, 2 * radius, 2 * radius), 180, 180);
    path.lineTo(area.topRight());
    return path;
}

/// Where the middles of texts go that are so high: as near to what they name as they can, none over another.
std::vector<double> spread(std::vector<double> middles, const std::vector<double> &heights, double top, double bottom)
{
    // From the bottom up, as the tube is filled.
    double limit = bottom;
    for (std::size_t i = 0; i < middles.size(); ++i) {
        middles[i] = std::min(middles[i], limit - heights[i] / 2);
        limit = middles[i] - heights[i] / 2;
    }
    double floor = top;
    for (std::size_t i = middles.size(); i-- > 0;) {
        middles[i] = std::max(middles[i], floor + heights[i] / 2);
        floor = middles[i] + heights[i] / 2;
    }
    return middles;
}

QString shownLabel(const TubeLayer &layer)
{
    return unbroken(withDecimalSigns(layerLabel(layer)));
}

constexpr int ofLabel = Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap;

} // namespace

TubeDrawing::TubeDrawing(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setObjectName(u"tubeDrawing"_s);
    setAccessibleName(tr("The tube"));
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true); // long names go on on another line
    setSizePolicy(policy);
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
}

void TubeDrawing::setPicture(TubePicture picture)
{
    if (picture == m_picture)
        return;
    m_picture = std::move(picture);
    setAccessibleDescription(pictureWords(m_picture));
    setToolTip(accessibleDescription());
    updateGeometry();
    update();
}

QSize TubeDrawing::sizeHint() const
{
    const int least = fontMetrics().lineSpacing() * 16;
    const int wide = std::max(width(), least);
    return {least, heightForWidth(wide)};
}

int TubeDrawing::heightForWidth(int width) const
{
    const int line = fontMetrics().lineSpacing();
    double labels = 0;
    for (const double height : labelHeights(width))
        labels += height;
    return std::max(8 * line, static_cast<int>(std::ceil(labels)) + 2 * line) + 2 * m_theme.gap();
}

double TubeDrawing::labelsLeft() const
{
    return tubeArea().right() + 5 * m_theme.gap();
}

std::vector<double> TubeDrawing::labelHeights(int width) const
{
    const QRectF room(0, 0, std::max(1.0, width - labelsLeft()), QWIDGETSIZE_MAX);
    std::vector<double> heights;
    for (const TubeLayer &layer : m_picture.layers)
        heights.push_back(QFontMetricsF(font()).boundingRect(room, ofLabel, shownLabel(layer)).height());
    return heights;
}

QSize TubeDrawing::minimumSizeHint() const
{
    return sizeHint();
}

void TubeDrawing::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        updateGeometry();
}

QRectF TubeDrawing::tubeArea() const
{
    int left = 0;
    for (const TubeMark &mark : m_picture.marks)
        left = std::max(left, fontMetrics().horizontalAdvance(mark.reading));
    left = std::min(left, fontMetrics().averageCharWidth() * 12) + 3 * m_theme.gap();
    return QRectF(left, m_theme.gap(), fontMetrics().height() * 3.2, height() - 2 * m_theme.gap());
}

double TubeDrawing::heightOf(double volume_mL) const
{
    const double whole_mL = filled_mL(m_picture);
    constexpr double fullPart = 0.86; // a tube is not filled to the rim
    return whole_mL > 0 ? tubeArea().height() * fullPart * volume_mL / whole_mL : 0;
}

void TubeDrawing::paintLayers(QPainter &painter) const
{
    const QRectF area = tubeArea();
    const QPainterPath tube = tubePath(area);
    painter.save();
    painter.setClipPath(tube);
    double filled_mL = 0;
    for (const TubeLayer &layer : m_picture.layers) {
        const double bottom = area.bottom() - heightOf(filled_mL);
        filled_mL += layer.volume_mL;
        const double top = area.bottom() - heightOf(filled_mL);
        const QRectF band(area.left(), top, area.width(), bottom - top);
        painter.fillRect(band, m_theme.part(static_cast<int>(layer.part)));
        painter.fillRect(band, QBrush(m_theme.text(), pattern(layer.part)));
        painter.setPen(QPen(m_theme.text(), 1));
        painter.drawLine(band.topLeft(), band.topRight());
    }
    painter.restore();
    painter.setPen(QPen(m_theme.text(), 1.5));
    painter.drawPath(tube);
}

void TubeDrawing::paintLabels(QPainter &painter) const
{
    const QRectF area = tubeArea();
    std::vector<double> middles;
    double filled_mL = 0;
    for (const TubeLayer &layer : m_picture.layers) {
        middles.push_back(area.bottom() - heightOf(filled_mL + layer.volume_mL / 2));
        filled_mL += layer.volume_mL;
    }
    const std::vector<double> heights = labelHeights(width());
    const std::vector<double> places = spread(middles, heights, 0, height());
    const double left = labelsLeft();
    for (std::size_t i = 0; i < places.size(); ++i) {
        painter.setPen(m_theme.mutedText());
        painter.drawLine(QPointF(area.right() + 2, middles[i]), QPointF(left - m_theme.gap(), places[i]));
        painter.setPen(m_theme.text());
        painter.drawText(QRectF(left, places[i] - heights[i] / 2, width() - left, heights[i]), ofLabel,
                         shownLabel(m_picture.layers[i]));
    }
}

void TubeDrawing::paintMarks(QPainter &painter) const
{
    const QRectF area = tubeArea();
    const double line = fontMetrics().lineSpacing();
    std::vector<double> heights;
    for (const TubeMark &mark : m_picture.marks)
        heights.push_back(area.bottom() - heightOf(mark.filled_mL));
    const std::vector<double> places = spread(heights, std::vector<double>(heights.size(), line), 0, height());
    const double textRight = area.left() - 2 * m_theme.gap();
    for (std::size_t i = 0; i < places.size(); ++i) {
        painter.setPen(QPen(m_theme.text(), 2));
        painter.drawLine(QPointF(textRight + m_theme.gap() / 2.0, places[i]),
                         QPointF(area.left(), heights[i]));
        painter.drawText(QRectF(0, places[i] - line / 2, textRight, line), Qt::AlignRight | Qt::AlignVCenter,
                         fontMetrics().elidedText(m_picture.marks[i].reading, Qt::ElideRight,
                                                  static_cast<int>(textRight)));
    }
}

void TubeDrawing::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_picture.layers.empty()) {
        painter.setPen(m_theme.mutedText());
        painter.drawText(rect(), Qt::AlignCenter | Qt::TextWordWrap, pictureWords(m_picture));
        return;
    }
    paintLayers(painter);
    paintLabels(painter);
    paintMarks(painter);
}

} // namespace plateau::ui
