// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/pointchart.h"

#include "ui/shared/shownnumbers.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace plateau::ui {

namespace {

struct PointhistoryWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::PointChart)
};

QString numberText(const PointHistory &history, double value)
{
    return shownNumber(QString::number(value, 'f', history.decimals));
}

QString bandText(const PointHistory &history)
{
    if (history.lower && history.upper)
        return PointhistoryWords::tr("limits %1 to %2")
            .arg(numberText(history, *history.lower), numberText(history, *history.upper));
    if (history.lower)
        return PointhistoryWords::tr("lower limit %1").arg(numberText(history, *history.lower));
    if (history.upper)
        return PointhistoryWords::tr("upper limit %1").arg(numberText(history, *history.upper));
    return PointhistoryWords::tr("no limits");
}

QString sideText(const PointHistory &history, double value)
{
    if (!history.lower && !history.upper)
        return {};
    switch (sideOf(history, value)) {
    case BandSide::Below:
        return PointhistoryWords::tr("below the limit");
    case BandSide::Above:
        return PointhistoryWords::tr("above the limit");
    case BandSide::Within:
        break;
    }
    return PointhistoryWords::tr("within the limits");
}

/// "102.1 on 2026-11-25, within the limits"
QString pointText(const PointHistory &history, const PointHistory::Point &point)
{
    QString text = PointhistoryWords::tr("%1 on %2").arg(numberText(history, point.value), point.label);
    if (const QString side = sideText(history, point.value); !side.isEmpty())
        text = PointhistoryWords::tr("%1, %2").arg(text, side);
    return text;
}

} // namespace

BandSide sideOf(const PointHistory &history, double value)
{
    if (history.lower && value < *history.lower)
        return BandSide::Below;
    if (history.upper && value > *history.upper)
        return BandSide::Above;
    return BandSide::Within;
}

QString historyText(const PointHistory &history)
{
    if (history.points.empty())
        return PointhistoryWords::tr("There is no history yet.");
    const auto outside =
        std::count_if(history.points.begin(), history.points.end(), [&](const PointHistory::Point &point) {
            return sideOf(history, point.value) != BandSide::Within;
        });
    QString text = PointhistoryWords::tr("Newest %1; %2.")
                       .arg(pointText(history, history.points.back()), bandText(history));
    if (history.lower || history.upper)
        text += QChar::Space + PointhistoryWords::tr("Outside: %1 of %2.")
                                   .arg(QString::number(outside), QString::number(history.points.size()));
    return text;
}

QString historyDescription(const PointHistory &history)
{
    // Nobody listens to ten thousand numbers; they stand in a table.
    constexpr std::size_t mostPoints = 30;
    QStringList lines{historyText(history)};
    if (!history.quantity.isEmpty())
        lines.prepend(history.quantity);
    const std::size_t count = std::min(mostPoints, history.points.size());
    if (count < history.points.size())
        lines << PointhistoryWords::tr("The newest %1 of %2:")
                     .arg(QString::number(count), QString::number(history.points.size()));
    for (std::size_t back = 0; back < count; ++back)
        lines << pointText(history, history.points[history.points.size() - 1 - back]);
    return lines.join(QChar::LineFeed);
}

std::vector<int> thinned(const PointHistory &history, int pixels)
{
    const int count = static_cast<int>(history.points.size());
    std::vector<int> shown;
    const auto valueOf = [&](int point) { return history.points[static_cast<std::size_t>(point)].value; };
    if (count <= 2 * pixels || pixels < 1) {
        for (int point = 0; point < count; ++point)
            shown.push_back(point);
        return shown;
    }
    for (int pixel = 0; pixel < pixels; ++pixel) {
        const int first = static_cast<int>(static_cast<long long>(count) * pixel / pixels);
        const int end = static_cast<int>(static_cast<long long>(count) * (pixel + 1) / pixels);
        int lowest = first;
        int highest = first;
        for (int point = first; point < end; ++point) {
            lowest = valueOf(point) < valueOf(lowest) ? point : lowest;
            highest = valueOf(point) > valueOf(highest) ? point : highest;
        }
        shown.push_back(std::min(lowest, highest));
        if (lowest != highest)
            shown.push_back(std::max(lowest, highest));
    }
    if (shown.back() != count - 1)
        shown.push_back(count - 1);
    return shown;
}

} // namespace plateau::ui
