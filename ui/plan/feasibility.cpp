// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/feasibility.h"

#include "core/evaluation/format.h"
#include "ui/shared/timechartwords.h"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct FeasibilityWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Feasibility)
};

void add(std::vector<Sentence> &sentences, State state, const QString &text)
{
    sentences.push_back({state, text});
}

void sayFree(std::vector<Sentence> &sentences, const std::vector<planning::Span> &free)
{
    QStringList spans;
    for (const planning::Span &span : free)
        spans << FeasibilityWords::tr("%1 to %2").arg(stopwatchText(span.start_s), afterStartText(span.end_s));
    if (spans.isEmpty())
        add(sentences, State::Info,
            FeasibilityWords::tr("The hands are never free for a minute until the last reading."));
    else
        add(sentences, State::Info,
            FeasibilityWords::tr("Hands free, counted from the first start: %1.")
                .arg(spans.join(FeasibilityWords::tr(", "))));
}

void saySchedule(std::vector<Sentence> &sentences, const planning::Schedule &schedule)
{
    if (schedule.interval_s > 0)
        add(sentences, State::Good,
            FeasibilityWords::tr("Start a tube every %1: then every tube is read within its waiting times.")
                .arg(durationText(schedule.interval_s)));
    else
        add(sentences, State::Good, FeasibilityWords::tr("The tube can be read within its waiting times."));
    if (schedule.setUp_s > 0)
        add(sentences, State::Info,
            FeasibilityWords::tr("Pipetting before the first start takes about %1.")
                .arg(durationText(schedule.setUp_s)));
    if (schedule.lastReading_s > 0)
        add(sentences, State::Info,
            FeasibilityWords::tr("First reading %1 after the first start, last one done after %2.")
                .arg(afterStartText(schedule.firstReading_s), afterStartText(schedule.lastReading_s)));
}

void saySplit(std::vector<Sentence> &sentences, const TimedRack &rack, const planning::Procedure &procedure,
              const planning::Bench &bench)
{
    const int largest = planning::largestRack(procedure, rack.tubes, bench);
    const QString room = bench.latestEnd_s ? durationText(*bench.latestEnd_s) : QString();
    if (largest == 0) {
        add(sentences, State::Bad,
            FeasibilityWords::tr(
                "Not even one tube is done within %1: this method takes longer. Allow more time.")
                .arg(room));
        return;
    }
    add(sentences, State::Bad,
        FeasibilityWords::tr("One person cannot read %1 tubes within their waiting times in %2: at most %3.")
            .arg(QString::number(rack.tubes), room, QString::number(largest)));
    const std::vector<int> parts =
        planning::splitOf(rack.tubes - rack.ownTubes, rack.ownTubes, largest, rack.together);
    if (parts.empty()) {
        add(sentences, State::Bad,
            FeasibilityWords::tr(
                "Blanks and standards alone fill such a rack; fewer of them, or more time, leave room for "
                "samples."));
        return;
    }
    QStringList tubes;
    for (const int part : parts)
        tubes << QString::number(part + rack.ownTubes);
    add(sentences, State::Attention,
        FeasibilityWords::tr(
            "Allow more time, or split it into %1 racks of %2 tubes, each with its own blanks and standards.")
            .arg(QString::number(parts.size()), tubes.join(FeasibilityWords::tr(" and "))));
}

std::vector<planning::Span> busyIn(const planning::Schedule &schedule)
{
    std::vector<planning::Span> busy;
    for (const planning::Task &task : schedule.tasks)
        busy.push_back({task.start_s, task.end_s});
    return busy;
}

void addSecond(Feasibility &result, const TimedRack &second, const BenchTime &time)
{
    planning::Bench bench;
    bench.busy = busyIn(*result.schedule);
    bench.latestEnd_s = time.most_s;
    result.secondProcedure = planning::procedureOf(second.method, time.handling, second.withSpikes);
    result.second = planning::scheduleOf(result.secondProcedure, second.tubes, bench);
    const QString name =
        FeasibilityWords::tr("second rack (%1, tubes: %2)").arg(second.method.name).arg(second.tubes);
    if (!result.second || result.second->tasks.empty()) {
        add(result.sentences, State::Bad,
            FeasibilityWords::tr(
                "A %1 cannot be done beside this one in the time allowed; start it afterwards.")
                .arg(name));
        return;
    }
    const int start_s = result.second->tasks.front().start_s;
    const int end_s = result.schedule->tasks.empty() ? 0 : result.schedule->tasks.back().end_s;
    if (start_s >= end_s)
        add(result.sentences, State::Attention,
            FeasibilityWords::tr("A %1 does not fit into the waiting times of this one: it can start at %2, "
                                 "when this one is done.")
                .arg(name, afterStartText(start_s)));
    else
        add(result.sentences, State::Good,
            FeasibilityWords::tr("A %1 can start at %2, a tube every %3; both racks keep their waiting "
                                 "times, and the last reading is done at %4.")
                .arg(name, afterStartText(start_s), durationText(result.second->interval_s),
                     afterStartText(result.second->lastReading_s)));
    if (start_s < end_s && result.second->setUp_s > 0)
        add(result.sentences, State::Info,
            FeasibilityWords::tr("It is pipetted before either starts, too: about %1 more.")
                .arg(durationText(result.second->setUp_s)));
}

} // namespace

QString durationText(int seconds)
{
    if (seconds < 120)
        return evaluation::withUnit(QString::number(seconds), u"s"_s);
    const int minutes = (seconds + 30) / 60;
    if (minutes < 60)
        return evaluation::withUnit(QString::number(minutes), u"min"_s);
    return evaluation::withUnit(QString::number(minutes / 60), u"h"_s) + QChar::Nbsp +
           evaluation::withUnit(QString::number(minutes % 60).rightJustified(2, u'0'), u"min"_s);
}

QString afterStartText(int seconds)
{
    return evaluation::withUnit(stopwatchText(seconds), u"min"_s);
}

Feasibility feasibilityOf(const TimedRack &rack, const BenchTime &time,
                          const std::optional<TimedRack> &second)
{
    Feasibility result;
    if (rack.tubes == 0)
        return result;
    planning::Bench bench;
    bench.latestEnd_s = time.most_s;
    result.procedure = planning::procedureOf(rack.method, time.handling, rack.withSpikes);
    result.schedule = planning::scheduleOf(result.procedure, rack.tubes, bench);
    if (!result.schedule) {
        saySplit(result.sentences, rack, result.procedure, bench);
        return result;
    }
    saySchedule(result.sentences, *result.schedule);
    if (second && second->tubes > 0)
        addSecond(result, *second, time);
    std::vector<planning::Span> taken = busyIn(*result.schedule);
    if (result.second)
        std::ranges::copy(busyIn(*result.second), std::back_inserter(taken));
    result.free = planning::freeBetween(std::move(taken));
    sayFree(result.sentences, result.free);
    return result;
}

} // namespace plateau::ui
