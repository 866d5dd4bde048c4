// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/chartaxes.h"

#include "ui/shared/theme.h"

#include <QChart>
#include <QChartView>
#include <QGraphicsLayout>
#include <QLegend>
#include <QLocale>
#include <QValueAxis>

#include <algorithm>
#include <cmath>

namespace plateau::ui {

namespace {

/// The smallest of 1, 2 and 5 times a power of ten that is at least that.
double roundStep(double least)
{
    const double power = std::pow(10, std::floor(std::log10(least)));
    for (const double digit : {1.0, 2.0, 5.0}) {
        if (digit * power >= least * (1 - 1e-9))
            return digit * power;
    }
    return 10 * power;
}

} // namespace

QChartView *plainChartView(QWidget *parent)
{
    auto *view = new QChartView(parent);
    view->setFocusPolicy(Qt::NoFocus);
    view->setInteractive(false);
    view->setRenderHint(QPainter::Antialiasing);
    view->setFrameShape(QFrame::NoFrame);
    // Its own hint is larger than the places these charts have.
    view->setMinimumSize(1, 1);
    view->chart()->legend()->hide();
    view->chart()->setMargins({});
    view->chart()->setBackgroundRoundness(0);
    view->chart()->layout()->setContentsMargins(0, 0, 0, 0);
    return view;
}

void dressChart(const Theme &theme, QChart &chart, const QFont &font)
{
    chart.setBackgroundBrush(theme.base());
    QLocale numbers;
    numbers.setNumberOptions(QLocale::OmitGroupSeparator); // a point or comma among digits is the decimal sign
    chart.setLocale(numbers);
    chart.setLocalizeNumbers(true);
    for (QAbstractAxis *axis : chart.axes()) {
        axis->setLabelsBrush(theme.text());
        axis->setTitleBrush(theme.text());
        axis->setLabelsFont(font);
        axis->setTitleFont(font);
        axis->setGridLineColor(theme.tint(State::Pending));
        axis->setLinePenColor(theme.mutedText());
    }
}

AxisScale roundScale(double lowest, double highest, int mostSteps, double smallestRange)
{
    if (highest - lowest < smallestRange) {
        const double middle = lowest + (highest - lowest) / 2;
        lowest = middle - smallestRange / 2;
        highest = middle + smallestRange / 2;
    }
    AxisScale scale;
    scale.step = roundStep((highest - lowest) / mostSteps);
    for (;;) {
        scale.lowest = std::floor(lowest / scale.step + 1e-9) * scale.step;
        scale.highest = std::ceil(highest / scale.step - 1e-9) * scale.step;
        if (std::lround((scale.highest - scale.lowest) / scale.step) <= mostSteps)
            break;
        scale.step = roundStep(1.5 * scale.step);
    }
    scale.decimals = std::max(0, -static_cast<int>(std::floor(std::log10(scale.step) + 1e-9)));
    return scale;
}

void setScale(QValueAxis &axis, const AxisScale &scale)
{
    // Marks on the outermost steps are not to be cut in half.
    const double aside = 0.04 * (scale.highest - scale.lowest);
    axis.setTickType(QValueAxis::TicksDynamic);
    axis.setTickAnchor(scale.lowest);
    axis.setTickInterval(scale.step);
    axis.setRange(scale.lowest - aside, scale.highest + aside);
    axis.setLabelFormat(QStringLiteral("%.%1f").arg(scale.decimals));
}

} // namespace plateau::ui
