// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/barchart.h"

#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace plateau::ui {

namespace {

/// The rows themselves. As narrow as its longest label: a label that is cut says nothing.
class BarRows : public QWidget
{
public:
    BarRows(const Theme &theme, const std::vector<BarChart::Bar> &bars)
        : m_theme(theme)
        , m_bars(bars)
    {
    }

    QSize minimumSizeHint() const override
    {
        int widest = 0;
        for (const BarChart::Bar &bar : m_bars)
            widest = std::max(widest, fontMetrics().horizontalAdvance(bar.label));
        return {widest + 2 * m_theme.gap(), static_cast<int>(m_bars.size()) * rowHeight()};
    }
    QSize sizeHint() const override { return minimumSizeHint(); }

protected:
    void paintEvent(QPaintEvent *) override
    {
        QPainter painter(this);
        double longest = 0;
        for (const BarChart::Bar &bar : m_bars)
            longest = std::max(longest, bar.value);
        int top = 0;
        for (const BarChart::Bar &bar : m_bars) {
            const double share = longest > 0 ? bar.value / longest : 0;
            const QRectF row(0.5, top + 1.5, width() - 1.0, rowHeight() - 3.0);
            painter.setPen(m_theme.mutedText());
            painter.setBrush(m_theme.tint(State::Info));
            painter.drawRect(QRectF(row.topLeft(), QSizeF(share * row.width(), row.height())));
            painter.setPen(m_theme.text());
            painter.drawText(row.adjusted(m_theme.gap(), 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, bar.label);
            top += rowHeight();
        }
    }

private:
    int rowHeight() const { return fontMetrics().height() + m_theme.gap(); }

    const Theme &m_theme;
    const std::vector<BarChart::Bar> &m_bars;
};

} // namespace

BarChart::BarChart(const Theme &theme, const QString &accessibleName, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_caption(plainLabel({}, this))
    , m_scroll(new QScrollArea(this))
    , m_nothing(plainLabel(tr("There is nothing to draw yet."), this))
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(theme.gap(), theme.gap(), theme.gap(), 0);
    layout->setSpacing(theme.gap());
    layout->addWidget(m_caption);
    layout->addWidget(m_scroll, 1);
    layout->addWidget(m_nothing, 0, Qt::AlignCenter);
    m_caption->hide();
    m_scroll->hide();
    m_scroll->setAccessibleName(accessibleName);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setMinimumHeight(3 * (fontMetrics().height() + theme.gap()));
    auto *rows = new BarRows(theme, m_bars);
    m_scroll->setWidget(rows);
    rows->setAccessibleName(accessibleName);
    connect(&theme, &Theme::changed, rows, [rows] {
        rows->updateGeometry();
        rows->update();
    });
}

void BarChart::setBars(std::vector<Bar> bars, const QString &caption)
{
    if (bars == m_bars && caption == m_caption->text())
        return;
    m_bars = std::move(bars);
    m_caption->setText(caption);
    m_caption->setVisible(!m_bars.empty());
    m_scroll->setVisible(!m_bars.empty());
    m_nothing->setVisible(m_bars.empty());
    QStringList lines;
    for (const Bar &bar : m_bars)
        lines << bar.label;
    m_scroll->setAccessibleDescription(lines.join(u'\n'));
    m_scroll->widget()->updateGeometry();
    m_scroll->widget()->update();
}

} // namespace plateau::ui
