// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/format.h"
#include "ui/shared/absorbancechart.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace plateau::ui {

namespace {

struct AbsorbanceWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::AbsorbanceChart)
};

QString fixedText(double value, int decimals)
{
    const double unit = std::pow(10, -decimals);
    // No negative zero.
    return QString::number(std::abs(value) < unit / 2 ? 0 : value, 'f', decimals);
}

QString slopeText(const AbsorbanceSeries::Line &line)
{
    constexpr int usualDecimals = 5;
    const double error_per_min = line.slopeError_per_min.value_or(0);
    const int decimals =
        error_per_min > 0 ? std::clamp(evaluation::decimalsFor(error_per_min, 2), 3, 6) : usualDecimals;
    const QString slope = fixedText(line.slope_per_min, decimals);
    if (!line.slopeError_per_min)
        return AbsorbanceWords::tr("slope %1 per min").arg(slope);
    return AbsorbanceWords::tr("slope %1 per min, standard error %2")
        .arg(slope, fixedText(error_per_min, decimals));
}

QString endText(const AbsorbanceSeries &series)
{
    if (!series.ended)
        return AbsorbanceWords::tr("Too few readings to say whether it has ended.");
    return *series.ended ? AbsorbanceWords::tr("Ended: it changes steadily.")
                         : AbsorbanceWords::tr("Not ended yet: it still changes, or not steadily.");
}

QString lineText(const AbsorbanceSeries &series)
{
    const AbsorbanceSeries::Line &line = *series.line;
    const int used = static_cast<int>(series.points.size()) - line.firstUsedPoint;
    const QString value = evaluation::absorbanceText(line.atStart);
    if (series.start.isEmpty())
        return AbsorbanceWords::tr("%1 at 0 min by the line through the last %2 points, %3.")
            .arg(value, QString::number(used), slopeText(line));
    return AbsorbanceWords::tr("%1 at the addition of %2 by the line through the last %3 points, %4.")
        .arg(value, series.start, QString::number(used), slopeText(line));
}

} // namespace

QString seriesText(const AbsorbanceSeries &series)
{
    if (series.points.empty())
        return AbsorbanceWords::tr("No reading of this series yet.");
    QStringList sentences{endText(series)};
    if (series.line)
        sentences << lineText(series);
    return sentences.join(QChar::Space);
}

QString seriesDescription(const AbsorbanceSeries &series)
{
    QStringList lines{seriesText(series)};
    for (std::size_t i = 0; i < series.points.size(); ++i) {
        const AbsorbanceSeries::Point &point = series.points[i];
        const QString time = evaluation::minutesText(point.time_min);
        const QString value = evaluation::absorbanceText(point.absorbance);
        const bool isUsed = series.line && static_cast<int>(i) >= series.line->firstUsedPoint;
        lines << (isUsed ? AbsorbanceWords::tr("%1: %2, in the line") : AbsorbanceWords::tr("%1: %2"))
                     .arg(time, value);
    }
    return lines.join(QChar::LineFeed);
}

} // namespace plateau::ui
