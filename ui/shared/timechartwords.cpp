// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/timechartwords.h"

#include <QCoreApplication>
#include <QStringList>

#include <cstdlib>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

using Kind = TimeBar::Kind;
using Phase = TimeStanding::Phase;

struct TimechartWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::TimeChart)
};

QString nameOf(const TimeBar &bar)
{
    if (!bar.name.isEmpty())
        return bar.name;
    switch (bar.kind) {
    case Kind::Add:
        return TimechartWords::tr("addition");
    case Kind::Read:
        return TimechartWords::tr("reading");
    case Kind::Window:
    case Kind::Wait:
        break;
    }
    return TimechartWords::tr("next step");
}

QString windowText(const TimeBar &window, std::optional<Phase> phase)
{
    const QString name = nameOf(window);
    const QString start = stopwatchText(window.start_s);
    const QString end = stopwatchText(window.end_s);
    if (phase == Phase::Late)
        return TimechartWords::tr("%1 late since %2").arg(name, end);
    if (phase == Phase::Due)
        return window.openEnded ? TimechartWords::tr("%1 due now").arg(name)
                                : TimechartWords::tr("%1 due now, until %2").arg(name, end);
    return window.openEnded ? TimechartWords::tr("%1 due from %2").arg(name, start)
                            : TimechartWords::tr("%1 due %2 to %3").arg(name, start, end);
}

const TimeBar &windowOf(const TimeRow &row, const TimeStanding &standing)
{
    return row.bars[static_cast<std::size_t>(standing.bar)];
}

} // namespace

QString stopwatchText(int time_s)
{
    const int rest_s = std::abs(time_s);
    return (time_s < 0 ? u"-"_s : QString()) + QString::number(rest_s / 60) + u':' +
           QString::number(rest_s % 60).rightJustified(2, u'0');
}

QString afterNumber()
{
    return u"  "_s;
}

RowLabel labelOf(const TimeRow &row)
{
    qsizetype digits = 0;
    while (digits < row.name.size() && row.name[digits].isDigit())
        ++digits;
    const QString rest = row.name.mid(digits);
    if (digits == 0 || !(rest.isEmpty() || rest.startsWith(afterNumber())))
        return {{}, row.name}; // "5-fold" is a name
    return {row.name.left(digits), rest.mid(afterNumber().size())};
}

QString rowText(const TimeRow &row, std::optional<int> now_s)
{
    const std::optional<TimeStanding> standing = now_s ? standingOf(row, *now_s) : std::nullopt;
    // What is still to be done comes first: the line may be cut off.
    QStringList parts;
    QStringList done;
    for (std::size_t i = 0; i < row.bars.size(); ++i) {
        const TimeBar &bar = row.bars[i];
        if (bar.kind == Kind::Add || bar.kind == Kind::Read)
            done << nameOf(bar) + QChar::Nbsp + stopwatchText(bar.start_s);
        else if (bar.kind == Kind::Window && bar.awaited && !row.spoilt)
            parts << windowText(bar, standing && standing->bar == static_cast<int>(i)
                                         ? std::optional(standing->phase)
                                         : std::nullopt);
    }
    if (row.remark)
        parts << row.remark->text;
    return TimechartWords::tr("%1: %2").arg(row.name, (parts + done).join(TimechartWords::tr(", ")));
}

QString chartText(const TimeChartData &data)
{
    QStringList lines;
    for (const TimeRack &rack : data.racks) {
        if (!rack.name.isEmpty())
            lines << rack.name;
        for (const TimeRow &row : rack.rows)
            lines << rowText(row, data.now_s);
    }
    for (const FreeTime &span : data.free)
        lines << TimechartWords::tr("Hands free from %1 to %2")
                     .arg(stopwatchText(span.start_s), stopwatchText(span.end_s));
    if (data.now_s)
        lines << (data.live ? TimechartWords::tr("As of %1") : TimechartWords::tr("Now %1"))
                     .arg(stopwatchText(*data.now_s));
    return lines.join(u'\n');
}

TimeRemark earlyRemark(const QString &reading, int by_s)
{
    return {State::Attention, TimechartWords::tr("%1 read early by %2").arg(reading, stopwatchText(by_s))};
}

TimeRemark lateRemark(const QString &reading, int by_s)
{
    return {State::Attention, TimechartWords::tr("%1 read late by %2").arg(reading, stopwatchText(by_s))};
}

TimeRemark spoiltRemark()
{
    return {State::Bad, TimechartWords::tr("spoilt")};
}

std::optional<TimeRemark> besideRow(const TimeRow &row, std::optional<int> now_s)
{
    const std::optional<TimeStanding> standing = now_s ? standingOf(row, *now_s) : std::nullopt;
    if (!standing || standing->phase == Phase::Waiting)
        return row.remark;
    const TimeBar &window = windowOf(row, *standing);
    TimeRemark remark =
        standing->phase == Phase::Due
            ? TimeRemark{State::Info, TimechartWords::tr("%1 due now").arg(nameOf(window))}
            : TimeRemark{State::Attention, TimechartWords::tr("%1 late by %2")
                                               .arg(nameOf(window), stopwatchText(*now_s - window.end_s))};
    if (row.remark)
        remark.text += TimechartWords::tr("; ") + row.remark->text;
    return remark;
}

QString widestBeside(const TimeRow &row)
{
    constexpr int tenMinutes_s = 600;
    const std::optional<TimeStanding> standing = standingOf(row, 0);
    if (!standing)
        return row.remark ? row.remark->text : QString();
    const TimeBar &window = windowOf(row, *standing);
    return besideRow(row, (window.openEnded ? window.start_s : window.end_s) + tenMinutes_s)->text;
}

} // namespace plateau::ui
