// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/timechartdata.h"

#include <QCoreApplication>
#include <QStringList>

#include <cstdlib>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::TimeChart)
};

std::size_t index(int number)
{
    return static_cast<std::size_t>(number);
}

} // namespace

int rowsOf(const TimeChartData &data)
{
    int rows = 0;
    for (const TimeRack &rack : data.racks)
        rows += static_cast<int>(rack.rows.size());
    return rows;
}

const TimeRack &rackOf(const TimeChartData &data, int row)
{
    for (const TimeRack &rack : data.racks) {
        if (row < static_cast<int>(rack.rows.size()))
            return rack;
        row -= static_cast<int>(rack.rows.size());
    }
    return data.racks.back();
}

const TimeRow &rowOf(const TimeChartData &data, int row)
{
    for (const TimeRack &rack : data.racks) {
        if (row < static_cast<int>(rack.rows.size()))
            return rack.rows[index(row)];
        row -= static_cast<int>(rack.rows.size());
    }
    return data.racks.back().rows.back();
}

QString stopwatchText(int time_s)
{
    const int rest_s = std::abs(time_s);
    return (time_s < 0 ? u"-"_s : QString()) + QString::number(rest_s / 60) + u':' +
           QString::number(rest_s % 60).rightJustified(2, u'0');
}

QString rowText(const TimeRow &row)
{
    QStringList parts;
    for (const TimeBar &bar : row.bars) {
        if (bar.kind == TimeBar::Kind::Wait)
            continue;
        const QString name = !bar.name.isEmpty()               ? bar.name
                             : bar.kind == TimeBar::Kind::Read ? Words::tr("reading")
                                                               : Words::tr("addition");
        parts << name + QChar::Nbsp + stopwatchText(bar.start_s);
    }
    return Words::tr("%1: %2").arg(row.name, parts.join(Words::tr(", ")));
}

QString chartText(const TimeChartData &data)
{
    QStringList lines;
    for (const TimeRack &rack : data.racks) {
        if (!rack.name.isEmpty())
            lines << rack.name;
        for (const TimeRow &row : rack.rows)
            lines << rowText(row);
    }
    for (const FreeTime &span : data.free)
        lines << Words::tr("Hands free from %1 to %2")
                     .arg(stopwatchText(span.start_s), stopwatchText(span.end_s));
    if (data.now_s)
        lines << Words::tr("Now %1").arg(stopwatchText(*data.now_s));
    return lines.join(u'\n');
}

} // namespace plateau::ui
