// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/timefit.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/run/waits.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::run {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct TimeFitWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::run::TimeFit)
};

QString addedPlace(const QString &pointer, const QString &component)
{
    return pointerTo(pointerTo(pointer, u"addedAt_min"_s), component);
}

QString readPlace(const QString &pointer, const QString &reading)
{
    return pointerTo(pointerTo(pointer, u"readAt_min"_s), reading);
}

void checkNames(const Tube &tube, const Method &method, const std::vector<QString> &readings,
                const QString &pointer, Problems &problems)
{
    for (const auto &[component, time_min] : tube.addedAt_min) {
        if (!findComponent(method, component))
            problems.push_back(error(
                addedPlace(pointer, component),
                TimeFitWording::tr("the method has no component %1; correct it").arg(quoted(component))));
    }
    for (const auto &[name, time_min] : tube.readAt_min) {
        if (std::ranges::find(readings, name) == readings.end())
            problems.push_back(
                error(readPlace(pointer, name),
                      TimeFitWording::tr("the method takes no reading %1; correct it").arg(quoted(name))));
    }
}

/// Of a time off the clock only that is said.
std::optional<double> soundTimeOf_min(const Tube &tube, const TubeAct &act)
{
    const auto time_min = timeOf_min(tube, act);
    return time_min && *time_min >= 0 && *time_min <= limit::clock_min ? time_min : std::nullopt;
}

void checkOrder(const Tube &tube, const Method &method, const QString &pointer, Problems &problems)
{
    std::optional<TubeAct> latest;
    double latest_min = 0;
    bool apart = false;
    for (const TubeAct &act : tubeActs(method, tube)) {
        const bool reading = act.kind == TubeAct::Kind::Read;
        apart = apart || reading || act.wait_min;
        const auto time_min = soundTimeOf_min(tube, act);
        if (time_min && latest && apart && *time_min < latest_min) {
            problems.push_back(
                warning(reading ? readPlace(pointer, act.name) : addedPlace(pointer, act.name),
                        TimeFitWording::tr("%1 min lies before %2 (%3 min), which comes first in the method; "
                                           "one of the two was marked at the wrong time")
                            .arg(shown(*time_min), quoted(latest->name), shown(latest_min))));
        }
        if (time_min && (!latest || *time_min >= latest_min)) {
            latest = act;
            latest_min = *time_min;
            apart = false;
        }
        apart = apart || reading;
    }
}

} // namespace

void checkTimes(const Run &run, const Method &method, Problems &problems)
{
    const std::vector<QString> readings = readingsInOrder(method);
    for (std::size_t i = 0; i < run.tubes.size(); ++i) {
        const Tube &tube = run.tubes[i];
        if (tube.addedAt_min.empty() && tube.readAt_min.empty())
            continue;
        const QString pointer = pointerTo(u"/tubes"_s, static_cast<qsizetype>(i));
        checkNames(tube, method, readings, pointer, problems);
        checkOrder(tube, method, pointer, problems);
    }
}

} // namespace plateau::run
