// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/rackpicture.h"

#include "core/run/waits.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/timewords.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace plateau::ui {

using namespace Qt::StringLiterals;

namespace {

struct RackPictureWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RackPicture)
};

/// Marks are of a moment; a bar needs a length to be seen.
constexpr int moment_s = 5;
constexpr double secondsInAMinute = 60;
/// The same half second by which a reading is not yet said to be early or late.
constexpr double slack_min = 0.5 / 60;

int seconds(double minutes)
{
    return static_cast<int>(std::lround(minutes * secondsInAMinute));
}

QString nameOf(const assay::Method &method, const run::TubeAct &act)
{
    if (act.kind == run::TubeAct::Kind::Read)
        return act.name;
    const assay::Component *component = assay::findComponent(method, act.name);
    return component ? component->name : act.name;
}

/// "A1 early by 0:30" where it is.
QString untimely(const run::TubeAct &act, double waited_min)
{
    if (!act.wait_min || act.kind != run::TubeAct::Kind::Read)
        return {};
    if (waited_min < act.wait_min->lower - slack_min)
        return RackPictureWords::tr("%1 early by %2")
            .arg(act.name, countText((act.wait_min->lower - waited_min) * secondsInAMinute));
    if (waited_min > act.wait_min->upper + slack_min)
        return RackPictureWords::tr("%1 late by %2")
            .arg(act.name, countText((waited_min - act.wait_min->upper) * secondsInAMinute));
    return {};
}

std::vector<TimeBar> barsOf(const Rack &rack, const run::Tube &tube)
{
    std::vector<TimeBar> bars;
    double before_min = 0;
    bool isKnown = false;
    for (const run::TubeAct &act : run::tubeActs(rack.stored.method, tube)) {
        const auto at_min = run::timeOf_min(tube, act);
        if (!at_min) {
            isKnown = false;
            continue;
        }
        const int at_s = seconds(*at_min);
        if (isKnown && act.wait_min)
            bars.push_back({TimeBar::Kind::Wait, seconds(before_min) + moment_s, at_s});
        const bool read = act.kind == run::TubeAct::Kind::Read;
        bars.push_back({read ? TimeBar::Kind::Read : TimeBar::Kind::Add, at_s, at_s + moment_s,
                        nameOf(rack.stored.method, act)});
        before_min = *at_min;
        isKnown = true;
    }
    return bars;
}

void appendWindow(std::vector<TimeBar> &bars, const Rack &rack, int tube)
{
    const auto due = std::ranges::find(rack.due, tube, &timing::Due::tube);
    if (due == rack.due.end() || !due->isTimed())
        return;
    const int opens_s = seconds(*due->opens_min);
    if (seconds(*due->since_min) + moment_s < opens_s)
        bars.push_back({TimeBar::Kind::Wait, seconds(*due->since_min) + moment_s, opens_s});
    TimeBar window{TimeBar::Kind::Window, opens_s, seconds(*due->closes_min),
                   nameOf(rack.stored.method, due->act)};
    window.awaited = true;
    bars.push_back(window);
}

} // namespace

QString untimelyText(const Rack &rack, int index)
{
    const run::Tube &tube = rack.stored.run.tubes.at(static_cast<std::size_t>(index));
    QStringList parts;
    for (const run::TubeAct &act : run::tubeActs(rack.stored.method, tube)) {
        const auto waited_min = run::waitedBefore_min(rack.stored.method, tube, act.name);
        if (const QString part = waited_min ? untimely(act, *waited_min) : QString(); !part.isEmpty())
            parts << part;
    }
    return parts.join(u", "_s);
}

TimeChartData pictureOf(const Rack &rack, double now_min)
{
    TimeChartData data;
    data.live = true;
    if (rack.stored.clock.isEmpty())
        return data;
    TimeRack rows;
    for (int index = 0; index < static_cast<int>(rack.stored.run.tubes.size()); ++index) {
        const run::Tube &tube = rack.stored.run.tubes[static_cast<std::size_t>(index)];
        TimeRow row;
        row.name =
            RackPictureWords::tr("%1  %2").arg(index + 1).arg(briefContentsText(rack.stored.run, index));
        row.spoilt = !tube.spoilt.isEmpty();
        row.bars = barsOf(rack, tube);
        if (!row.spoilt)
            appendWindow(row.bars, rack, index);
        if (const QString untimely = untimelyText(rack, index); !untimely.isEmpty())
            row.remark = TimeRemark{State::Attention, untimely};
        rows.rows.push_back(std::move(row));
    }
    data.racks.push_back(std::move(rows));
    data.now_s = seconds(now_min);
    return data;
}

} // namespace plateau::ui
