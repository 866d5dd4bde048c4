// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/barchart.h"

#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QChartView>
#include <QHorizontalBarSeries>
#include <QLabel>
#include <QVBoxLayout>
#include <QValueAxis>

namespace plateau::ui {

BarChart::BarChart(const Theme &theme, const QString &accessibleName, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_view(new QChartView(this))
    , m_nothing(plainLabel(tr("There is nothing to draw yet."), this))
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_view);
    layout->addWidget(m_nothing, 0, Qt::AlignCenter);
    m_view->hide();
    m_view->setAccessibleName(accessibleName);
    m_view->setFocusPolicy(Qt::NoFocus);
    m_view->setInteractive(false);
    m_view->setRenderHint(QPainter::Antialiasing);
    m_view->setFrameShape(QFrame::NoFrame);
    connect(&theme, &Theme::changed, this, &BarChart::draw);
}

void BarChart::setBars(std::vector<Bar> bars, const QString &axis)
{
    if (bars == m_bars && axis == m_axis)
        return;
    m_bars = std::move(bars);
    m_axis = axis;
    draw();
}

void BarChart::draw()
{
    m_view->setVisible(!m_bars.empty());
    m_nothing->setVisible(m_bars.empty());
    if (m_bars.empty())
        return;
    auto *chart = new QChart;
    auto *set = new QBarSet(m_axis);
    QStringList labels;
    // The category axis counts from the bottom.
    for (auto bar = m_bars.rbegin(); bar != m_bars.rend(); ++bar) {
        set->append(bar->value);
        labels << bar->label;
    }
    set->setColor(m_theme.colour(State::Info));
    set->setBorderColor(m_theme.text());
    auto *series = new QHorizontalBarSeries;
    series->append(set);
    chart->addSeries(series);

    auto *names = new QBarCategoryAxis;
    names->append(labels);
    auto *lengths = new QValueAxis;
    lengths->setTitleText(m_axis);
    chart->addAxis(names, Qt::AlignLeft);
    chart->addAxis(lengths, Qt::AlignBottom);
    series->attachAxis(names);
    series->attachAxis(lengths);
    lengths->setMin(0);
    lengths->applyNiceNumbers();
    for (QAbstractAxis *axis : {static_cast<QAbstractAxis *>(names), static_cast<QAbstractAxis *>(lengths)}) {
        axis->setLabelsBrush(m_theme.text());
        axis->setTitleBrush(m_theme.text());
        axis->setLabelsFont(font());
        axis->setTitleFont(font());
        axis->setGridLineColor(m_theme.tint(State::Pending));
        axis->setLinePenColor(m_theme.mutedText());
    }
    names->setGridLineVisible(false);
    chart->legend()->hide();
    chart->setBackgroundBrush(m_theme.base());
    chart->setMargins({});
    m_view->setBackgroundBrush(m_theme.base());

    QChart *old = m_view->chart();
    m_view->setChart(chart);
    delete old; // the view gives the former chart back to its caller

    QStringList lines;
    for (const Bar &bar : m_bars)
        lines << bar.label;
    m_view->setAccessibleDescription(lines.join(u'\n'));
}

} // namespace plateau::ui
