// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/timechartpainting.h"

#include "ui/shared/timechartmarks.h"
#include "ui/shared/timechartrows.h"
#include "ui/shared/timechartwords.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct TimechartpaintingWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::TimeChart)
};

class Picture
{
public:
    Picture(QPainter &painter, const TimeChartView &view)
        : m_painter(painter)
        , m_view(view)
        , m_theme(view.theme)
        , m_layout(view.layout)
        , m_metrics(painter.font(), painter.device())
    {
    }

    void paintGround() const
    {
        m_painter.fillRect(m_layout.plot, m_theme.base());
        for (const FreeTime &span : m_view.data.free)
            m_painter.fillRect(m_layout.across(span.start_s, span.end_s, m_layout.plot),
                               m_theme.tint(State::Pending));
    }

    void paintAxis() const
    {
        const int tick_s = m_layout.tick_s;
        const int first_s =
            static_cast<int>(std::ceil(static_cast<double>(m_layout.first_s) / tick_s)) * tick_s;
        for (int time_s = first_s; time_s <= m_layout.last_s; time_s += tick_s) {
            const double x = m_layout.xOf(time_s);
            m_painter.setPen(QPen(m_theme.tint(State::Pending), 1));
            m_painter.drawLine(QPointF(x, m_layout.plot.top()), QPointF(x, m_layout.plot.bottom()));
            m_painter.setPen(m_theme.text());
            m_painter.drawLine(QPointF(x, m_layout.plot.top() - 4), QPointF(x, m_layout.plot.top()));
            const double half = m_layout.xOf(first_s + tick_s) - m_layout.xOf(first_s);
            m_painter.drawText(QRectF(x - half / 2, m_layout.axis.top(), half, m_layout.axis.height()),
                               Qt::AlignCenter, numberText(time_s));
        }
        m_painter.setPen(m_theme.mutedText());
        // The first time stands half to the left of its tick.
        QRectF unit = m_layout.nameArea(m_layout.axis.top(), m_layout.axis.height());
        const double firstTime = m_layout.xOf(first_s) - m_metrics.horizontalAdvance(numberText(first_s)) / 2.0;
        unit.setRight(std::min(unit.right(), firstTime - m_metrics.averageCharWidth()));
        m_painter.drawText(unit, Qt::AlignRight | Qt::AlignVCenter, TimechartpaintingWords::tr("min"));
        m_painter.drawLine(m_layout.plot.topLeft(), m_layout.plot.topRight());
    }

    void paintRacks() const
    {
        int row = 0;
        for (std::size_t rack = 0; rack < m_view.data.racks.size(); ++rack) {
            if (rack < m_layout.headingTops.size())
                paintHeading(m_layout.headingTops[rack], m_view.data.racks[rack].name);
            for (std::size_t own = 0; own < m_view.data.racks[rack].rows.size(); ++own, ++row)
                paintTimeRow(m_painter, m_view, row, static_cast<int>(own) % m_layout.namedEvery == 0);
        }
    }

    /// The hands: a stroke for each thing they do, and a measured gap where they are free.
    void paintLane() const
    {
        const QRectF lane = m_layout.lane;
        if (lane.isNull())
            return;
        m_painter.setPen(m_theme.text());
        m_painter.drawText(m_layout.nameArea(lane.top(), lane.height()), Qt::AlignRight | Qt::AlignVCenter,
                           handsWord());
        for (int row = 0; row < rowsOf(m_view.data); ++row) {
            for (const TimeBar &bar : rowOf(m_view.data, row).bars) {
                if (bar.kind == TimeBar::Kind::Wait || bar.kind == TimeBar::Kind::Window ||
                    !m_layout.isInSight(bar.start_s, bar.end_s))
                    continue;
                QRectF stroke = m_layout.across(bar.start_s, bar.end_s, lane);
                stroke.setWidth(std::max(1.0, stroke.width()));
                m_painter.fillRect(stroke.adjusted(0, lane.height() / 4, 0, -lane.height() / 4),
                                   m_theme.mutedText());
            }
        }
        for (const FreeTime &span : m_view.data.free)
            paintFree(span);
    }

    void paintWords() const
    {
        if (m_view.chosen < 0)
            return;
        QString text = rowText(rowOf(m_view.data, m_view.chosen), m_view.data.now_s);
        const QString rack = rackOf(m_view.data, m_view.chosen).name;
        if (!rack.isEmpty())
            text = rack + u" – "_s + text;
        m_painter.setPen(m_theme.text());
        const QRectF &words = m_layout.words;
        const bool hasTwoLines = words.height() > 1.5 * m_metrics.height();
        qsizetype end = text.size();
        while (hasTwoLines && end > 0 && m_metrics.horizontalAdvance(text.left(end)) > words.width())
            end = text.lastIndexOf(u' ', end - 1);
        QRectF below = words;
        if (end > 0 && end < text.size()) {
            below.setTop(words.center().y());
            m_painter.drawText(QRectF(words.topLeft(), below.topRight()), Qt::AlignLeft | Qt::AlignVCenter,
                               text.left(end));
            text = text.mid(end + 1);
        }
        m_painter.drawText(below, Qt::AlignLeft | Qt::AlignVCenter,
                           m_metrics.elidedText(text, Qt::ElideRight, words.width()));
    }

    /// As many entries as there is room for.
    void paintKey() const
    {
        if (m_layout.key.isNull())
            return;
        double x = m_view.data.live ? m_layout.key.left() : m_layout.plot.left();
        const double side = m_layout.key.height() * 0.7;
        const double y = m_layout.key.center().y();
        const auto entry = [&](const QString &word, double width, auto paint) {
            const double length = m_metrics.horizontalAdvance(word);
            if (x + width + 6 + length > m_layout.key.right())
                return;
            paint(QRectF(x, y - side / 2, width, side));
            x += width + 6;
            m_painter.setPen(m_theme.text());
            m_painter.drawText(QRectF(x, m_layout.key.top(), length + 2, m_layout.key.height()),
                               Qt::AlignVCenter, word);
            x += length + 3 * side / 2;
        };
        entry(TimechartpaintingWords::tr("add"), side * 0.6,
              [&](const QRectF &area) { paintDrop(m_painter, m_theme, area); });
        entry(TimechartpaintingWords::tr("wait"), side * 2,
              [&](const QRectF &area) { paintThread(m_painter, m_theme, area.left(), area.right(), y); });
        entry(TimechartpaintingWords::tr("read"), side * 0.6,
              [&](const QRectF &area) { paintCuvette(m_painter, m_theme, area); });
        if (m_view.data.live) {
            entry(TimechartpaintingWords::tr("time for it"), side * 2, [&](const QRectF &area) {
                paintWindow(m_painter, m_theme, area, WindowLook::Awaited, false);
            });
            entry(TimechartpaintingWords::tr("due"), side * 2,
                  [&](const QRectF &area) { paintWindow(m_painter, m_theme, area, WindowLook::Due, false); });
            entry(TimechartpaintingWords::tr("late"), side * 2, [&](const QRectF &area) {
                paintLateness(m_painter, m_theme, area.left(), area.right(), y);
            });
        }
        if (m_view.data.now_s)
            entry(TimechartpaintingWords::tr("now"), 2,
                  [&](const QRectF &area) { m_painter.fillRect(area, m_theme.colour(State::Bad)); });
    }

private:
    QString numberText(int time_s) const
    {
        const bool half = m_layout.tick_s < 60;
        return half ? stopwatchText(time_s) : QString::number(time_s / 60);
    }

    void paintHeading(double top, const QString &name) const
    {
        QFont bold = m_painter.font();
        const QFont plain = bold;
        bold.setBold(true);
        m_painter.fillRect(
            QRectF(m_layout.plot.left(), top, m_layout.plot.width(), m_metrics.lineSpacing() + 5),
            m_theme.base());
        m_painter.setFont(bold);
        m_painter.setPen(m_theme.text());
        m_painter.drawText(
            QRectF(m_layout.plot.left() + 4, top, m_layout.plot.width() - 8, m_metrics.lineSpacing() + 4),
            Qt::AlignLeft | Qt::AlignVCenter,
            m_metrics.elidedText(name, Qt::ElideRight, m_layout.plot.width() - 8));
        m_painter.setFont(plain);
    }

    void paintFree(const FreeTime &span) const
    {
        if (!m_layout.isInSight(span.start_s, span.end_s))
            return;
        const QRectF area = m_layout.across(span.start_s, span.end_s, m_layout.lane);
        const double y = area.center().y();
        const QString text =
            TimechartpaintingWords::tr("free %1").arg(stopwatchText(span.end_s - span.start_s));
        const FreeLook look = freeLook(area.width(), m_metrics.horizontalAdvance(text));
        m_painter.setPen(QPen(m_theme.text(), 1));
        for (const double x : {area.left(), area.right()})
            m_painter.drawLine(QPointF(x, area.top() + 1), QPointF(x, area.bottom() - 1));
        if (look.lineLength > 0) {
            m_painter.drawLine(QPointF(area.left(), y), QPointF(area.left() + look.lineLength, y));
            m_painter.drawLine(QPointF(area.right() - look.lineLength, y), QPointF(area.right(), y));
        }
        if (look.isWritten)
            m_painter.drawText(area, Qt::AlignCenter, text);
    }

    QPainter &m_painter;
    const TimeChartView &m_view;
    const Theme &m_theme;
    const TimeChartLayout &m_layout;
    QFontMetricsF m_metrics;
};

} // namespace

QString handsWord()
{
    return TimechartpaintingWords::tr("hands");
}

void paintTimeChart(QPainter &painter, const TimeChartView &view)
{
    painter.setRenderHint(QPainter::Antialiasing);
    if (rowsOf(view.data) == 0) {
        painter.setPen(view.theme.text());
        painter.drawText(painter.viewport(), Qt::AlignCenter,
                         TimechartpaintingWords::tr("There is nothing to draw yet."));
        return;
    }
    const Picture picture(painter, view);
    picture.paintGround();
    picture.paintAxis();
    picture.paintRacks();
    picture.paintLane();
    picture.paintWords();
    picture.paintKey();
}

} // namespace plateau::ui
