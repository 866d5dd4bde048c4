// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/timechartrows.h"

#include "ui/shared/timechartmarks.h"
#include "ui/shared/timechartwords.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace plateau::ui {

namespace {

using Kind = TimeBar::Kind;
using Phase = TimeStanding::Phase;

class RowPicture
{
public:
    RowPicture(QPainter &painter, const TimeChartView &view, int row)
        : m_painter(painter)
        , m_view(view)
        , m_theme(view.theme)
        , m_layout(view.layout)
        , m_number(row)
        , m_row(rowOf(view.data, row))
        , m_area(view.layout.rowArea(row))
        , m_chosen(row == view.chosen)
    {
    }

    void paintGround() const
    {
        if (!m_chosen)
            return;
        m_painter.fillRect(m_area, m_theme.tint(State::Info));
        m_painter.setPen(QPen(m_theme.text(), m_view.focused ? 2 : 1));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawRect(m_area);
    }

    void paintName(bool named) const
    {
        if (!m_chosen && (!named || isBesideChosen()))
            return;
        QFont font = m_painter.font();
        const QFont plain = font;
        font.setStrikeOut(m_row.spoilt);
        const QFontMetricsF metrics(font, m_painter.device());
        const double line = metrics.lineSpacing();
        const QRectF area = m_layout.nameArea(m_area.center().y() - line / 2, line);
        if (m_chosen)
            m_painter.fillRect(area.adjusted(4, 0, 4, 0), m_theme.tint(State::Info));
        m_painter.setFont(font);
        m_painter.setPen(m_theme.text());
        const RowLabel label = labelOf(m_row);
        QRectF name = area;
        if (!label.number.isEmpty()) {
            name = m_layout.behindTube(area);
            m_painter.drawText(m_layout.tubeArea(area, metrics.horizontalAdvance(afterNumber())),
                               Qt::AlignRight | Qt::AlignVCenter, label.number);
        }
        const double room = label.number.isEmpty() ? area.width() - 4 : name.width();
        m_painter.drawText(name, (label.number.isEmpty() ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter,
                           metrics.elidedText(label.name, Qt::ElideMiddle, room));
        m_painter.setFont(plain);
    }

    void paintBars() const
    {
        m_painter.save();
        // A pen may stand a little over the edges where all is shown.
        m_painter.setClipRect(m_view.data.visible_s ? m_area : m_area.adjusted(-3, 0, 8, 0));
        if (m_row.spoilt)
            m_painter.setOpacity(0.45);
        const double y = m_area.center().y();
        for (const TimeBar &bar : m_row.bars) {
            if (bar.kind != Kind::Wait)
                continue;
            const QRectF span = m_layout.across(bar.start_s, bar.end_s, m_layout.plot);
            paintThread(m_painter, m_theme, span.left(), span.right(), y);
        }
        for (std::size_t bar = 0; bar < m_row.bars.size(); ++bar) {
            if (m_row.bars[bar].kind == Kind::Window)
                paintWindow(m_painter, m_theme, windowArea(m_layout, m_number, m_row.bars[bar]),
                            lookOf(static_cast<int>(bar)), m_row.bars[bar].openEnded);
        }
        for (const TimeBar &bar : m_row.bars)
            paintMark(m_painter, m_theme, m_layout.markArea(m_number, bar), bar.kind);
        m_painter.restore();
    }

    void paintRemark() const
    {
        const std::optional<TimeStanding> &standing = m_view.standings[static_cast<std::size_t>(m_number)];
        if (!m_view.data.live || (standing && standing->phase == Phase::Late))
            return;
        if (const std::optional<TimeRemark> remark = besideRow(m_row, m_view.data.now_s))
            paintBeside(m_painter, m_view, m_number, *remark);
    }

private:
    /// Where the name of the chosen row would be written over this one's.
    bool isBesideChosen() const
    {
        if (m_view.chosen < 0)
            return false;
        const double apart = m_area.top() - m_layout.rowArea(m_view.chosen).top();
        const double line = QFontMetricsF(m_painter.font(), m_painter.device()).lineSpacing();
        return std::abs(apart) < smallestLiveRow * line - 1e-9;
    }

    WindowLook lookOf(int bar) const
    {
        if (!m_row.bars[static_cast<std::size_t>(bar)].awaited || m_row.spoilt)
            return WindowLook::Past;
        const std::optional<TimeStanding> &standing = m_view.standings[static_cast<std::size_t>(m_number)];
        const bool isDue = standing && standing->bar == bar && standing->phase == Phase::Due;
        return isDue ? WindowLook::Due : WindowLook::Awaited;
    }

    QPainter &m_painter;
    const TimeChartView &m_view;
    const Theme &m_theme;
    const TimeChartLayout &m_layout;
    int m_number;
    const TimeRow &m_row;
    QRectF m_area;
    bool m_chosen;
};

} // namespace

void paintTimeRow(QPainter &painter, const TimeChartView &view, int row, bool named)
{
    const RowPicture picture(painter, view, row);
    picture.paintGround();
    picture.paintName(named);
    picture.paintBars();
    picture.paintRemark();
}

void paintBeside(QPainter &painter, const TimeChartView &view, int row, const TimeRemark &remark)
{
    const QFontMetricsF metrics(painter.font(), painter.device());
    const QRectF area = view.layout.rowArea(row);
    const QRectF column = view.layout.remarks;
    const double side = std::min(area.height() - 1, 0.8 * metrics.lineSpacing());
    const double y = area.center().y();
    view.theme.paintShape(painter, {column.left(), y - side / 2, side, side}, remark.state);
    const double line = metrics.lineSpacing();
    const QRectF words(column.left() + side + 4, y - line / 2, column.width() - side - 4, line);
    painter.setPen(view.theme.text());
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(remark.text, Qt::ElideRight, words.width()));
}

QRectF windowArea(const TimeChartLayout &layout, int row, const TimeBar &window)
{
    QRectF area = layout.markArea(row, window);
    if (window.openEnded)
        area.setRight(std::max(area.left() + 1, layout.plot.right()));
    return area;
}

} // namespace plateau::ui
