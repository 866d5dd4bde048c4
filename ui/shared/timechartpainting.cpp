// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/timechartpainting.h"

#include "ui/shared/theme.h"
#include "ui/shared/timechartmarks.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct Words {
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
            m_painter.fillRect(across(span, m_layout.plot), m_theme.tint(State::Pending));
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
        m_painter.drawText(beside(m_layout.axis.top(), m_layout.axis.height()),
                           Qt::AlignRight | Qt::AlignVCenter, Words::tr("min"));
        m_painter.drawLine(m_layout.plot.topLeft(), m_layout.plot.topRight());
    }

    void paintRacks() const
    {
        int row = 0;
        for (std::size_t rack = 0; rack < m_view.data.racks.size(); ++rack) {
            if (rack < m_layout.headingTops.size())
                paintHeading(m_layout.headingTops[rack], m_view.data.racks[rack].name);
            for (std::size_t own = 0; own < m_view.data.racks[rack].rows.size(); ++own, ++row)
                paintRow(row, m_view.data.racks[rack].rows[own],
                         static_cast<int>(own) % m_layout.namedEvery == 0);
        }
    }

    /// The hands: a stroke for each thing they do, and a measured gap where they are free.
    void paintLane() const
    {
        const QRectF lane = m_layout.lane;
        m_painter.setPen(m_theme.text());
        m_painter.drawText(beside(lane.top(), lane.height()), Qt::AlignRight | Qt::AlignVCenter, handsWord());
        for (int row = 0; row < rowsOf(m_view.data); ++row) {
            for (const TimeBar &bar : rowOf(m_view.data, row).bars) {
                if (bar.kind == TimeBar::Kind::Wait)
                    continue;
                QRectF stroke = across({bar.start_s, bar.end_s}, lane);
                stroke.setWidth(std::max(1.0, stroke.width()));
                m_painter.fillRect(stroke.adjusted(0, lane.height() / 4, 0, -lane.height() / 4),
                                   m_theme.mutedText());
            }
        }
        for (const FreeTime &span : m_view.data.free)
            paintFree(span);
    }

    void paintNow() const
    {
        if (!m_view.data.now_s)
            return;
        const double x = m_layout.xOf(*m_view.data.now_s);
        m_painter.setPen(QPen(m_theme.colour(State::Bad), 2));
        m_painter.drawLine(QPointF(x, m_layout.plot.top()), QPointF(x, m_layout.lane.bottom()));
        m_painter.setBrush(m_theme.colour(State::Bad));
        m_painter.setPen(m_theme.text());
        const double top = m_layout.plot.top();
        m_painter.drawPolygon(QPolygonF({{x - 6, top}, {x + 6, top}, {x, top + 10}}));
    }

    void paintWords() const
    {
        if (m_view.chosen < 0)
            return;
        QString text = rowText(rowOf(m_view.data, m_view.chosen));
        const QString rack = rackOf(m_view.data, m_view.chosen).name;
        if (!rack.isEmpty())
            text = rack + u" – "_s + text;
        m_painter.setPen(m_theme.text());
        m_painter.drawText(m_layout.words, Qt::AlignLeft | Qt::AlignVCenter,
                           m_metrics.elidedText(text, Qt::ElideRight, m_layout.words.width()));
    }

    void paintKey() const
    {
        double x = m_layout.plot.left();
        const double side = m_layout.key.height() * 0.7;
        const double y = m_layout.key.center().y();
        const auto entry = [&](const QString &word, double width, auto paint) {
            paint(QRectF(x, y - side / 2, width, side));
            x += width + 6;
            m_painter.setPen(m_theme.text());
            const double length = m_metrics.horizontalAdvance(word);
            m_painter.drawText(QRectF(x, m_layout.key.top(), length + 2, m_layout.key.height()),
                               Qt::AlignVCenter, word);
            x += length + 3 * side / 2;
        };
        entry(Words::tr("add"), side * 0.6, [&](const QRectF &area) { paintDrop(m_painter, m_theme, area); });
        entry(Words::tr("wait"), side * 2,
              [&](const QRectF &area) { paintThread(m_painter, m_theme, area.left(), area.right(), y); });
        entry(Words::tr("read"), side * 0.6,
              [&](const QRectF &area) { paintCuvette(m_painter, m_theme, area); });
        if (m_view.data.now_s)
            entry(Words::tr("now"), 2,
                  [&](const QRectF &area) { m_painter.fillRect(area, m_theme.colour(State::Bad)); });
    }

private:
    QRectF across(const FreeTime &span, const QRectF &band) const
    {
        const double left = m_layout.xOf(span.start_s);
        return {left, band.top(), m_layout.xOf(span.end_s) - left, band.height()};
    }

    /// Left of the plot, where names go.
    QRectF beside(double top, double height) const { return {0, top, m_layout.plot.left() - 10, height}; }

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

    void paintRow(int row, const TimeRow &data, bool named) const
    {
        const QRectF area = m_layout.rowArea(row);
        const bool chosen = row == m_view.chosen;
        if (chosen) {
            m_painter.fillRect(area, m_theme.tint(State::Info));
            m_painter.setPen(QPen(m_theme.text(), m_view.focused ? 2 : 1));
            m_painter.setBrush(Qt::NoBrush);
            m_painter.drawRect(area);
        }
        if (chosen || (named && !isBesideChosen(row)))
            paintName(area, data.name, chosen);
        for (const TimeBar &bar : data.bars) {
            if (bar.kind == TimeBar::Kind::Wait)
                paintThread(m_painter, m_theme, m_layout.xOf(bar.start_s), m_layout.xOf(bar.end_s),
                            area.center().y());
        }
        for (const TimeBar &bar : data.bars)
            paintMark(m_painter, m_theme, m_layout.markArea(row, bar), bar.kind);
    }

    /// Where the name of the chosen row would be written over this one's.
    bool isBesideChosen(int row) const
    {
        if (m_view.chosen < 0)
            return false;
        const double apart = m_layout.rowArea(row).top() - m_layout.rowArea(m_view.chosen).top();
        return std::abs(apart) < 0.85 * m_metrics.lineSpacing();
    }

    void paintName(const QRectF &row, const QString &name, bool chosen) const
    {
        const double line = m_metrics.lineSpacing();
        const QRectF area = beside(row.center().y() - line / 2, line);
        if (chosen)
            m_painter.fillRect(area.adjusted(4, 0, 4, 0), m_theme.tint(State::Info));
        m_painter.setPen(m_theme.text());
        m_painter.drawText(area, Qt::AlignRight | Qt::AlignVCenter,
                           m_metrics.elidedText(name, Qt::ElideRight, area.width() - 4));
    }

    void paintFree(const FreeTime &span) const
    {
        const QRectF area = across(span, m_layout.lane);
        const double y = area.center().y();
        const QString text = Words::tr("free %1").arg(stopwatchText(span.end_s - span.start_s));
        const double length = m_metrics.horizontalAdvance(text) + 8;
        m_painter.setPen(QPen(m_theme.text(), 1));
        for (const double x : {area.left(), area.right()})
            m_painter.drawLine(QPointF(x, area.top() + 1), QPointF(x, area.bottom() - 1));
        const bool fits = length + 12 < area.width();
        const double left = fits ? area.center().x() - length / 2 : area.center().x();
        const double right = fits ? area.center().x() + length / 2 : area.center().x();
        m_painter.drawLine(QPointF(area.left(), y), QPointF(left, y));
        m_painter.drawLine(QPointF(right, y), QPointF(area.right(), y));
        if (fits)
            m_painter.drawText(QRectF(left, area.top(), length, area.height()), Qt::AlignCenter, text);
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
    return Words::tr("hands");
}

void paintTimeChart(QPainter &painter, const TimeChartView &view)
{
    painter.setRenderHint(QPainter::Antialiasing);
    if (rowsOf(view.data) == 0) {
        painter.setPen(view.theme.text());
        painter.drawText(painter.viewport(), Qt::AlignCenter, Words::tr("There is nothing to draw yet."));
        return;
    }
    const Picture picture(painter, view);
    picture.paintGround();
    picture.paintAxis();
    picture.paintRacks();
    picture.paintLane();
    picture.paintNow();
    picture.paintWords();
    picture.paintKey();
}

} // namespace plateau::ui
