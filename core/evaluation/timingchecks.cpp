// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checks.h"

#include "core/evaluation/format.h"
#include "core/run/waits.h"

#include <algorithm>
#include <cmath>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

/// Half a second: what is shown to the second is judged to the second.
constexpr double slack_min = 0.5 / 60;

/// How long a tube waited before one of its readings, and how long the method has it wait.
struct Waited {
    int tube = 0;
    QString reading;
    double waited_min = 0;
    assay::Interval wait_min;
    /// A series that is extrapolated goes on past the wait on purpose.
    bool mayGoOn = false;
};

struct Waits {
    std::vector<Waited> known;
    /// Readings that the method has a wait before, of which nobody marked the time.
    bool someUnknown = false;
};

/// Whether a series' minutes since the starter are what the method's wait before the reading counts.
bool countsFromStarter(const assay::Method &method, const QString &reading)
{
    bool starter = false;
    for (const assay::Step &step : method.steps) {
        if (const auto *add = std::get_if<assay::AddStep>(&step))
            starter = add->component == method.starter;
        else if (const auto *read = std::get_if<assay::ReadStep>(&step); read && read->reading == reading)
            return starter;
    }
    return false;
}

/// By the marks in the tube where both are there, else by a series' own minutes.
std::optional<double> waited_min(const assay::Method &method, const run::Tube &tube, const run::TubeAct &from,
                                 const run::TubeAct &to)
{
    const auto from_min = run::timeOf_min(tube, from);
    const auto to_min = run::timeOf_min(tube, to);
    if (from_min && to_min)
        return *to_min - *from_min;
    const auto *series = std::get_if<run::ReadingSeries>(&tube.readings.at(to.name));
    return series && countsFromStarter(method, to.name) ? std::optional(series->back().at_min) : std::nullopt;
}

void addWaits(const assay::Method &method, const run::Tube &tube, int index,
              const std::vector<QString> &readings, Waits &waits)
{
    const std::vector<run::TubeAct> acts = run::tubeActs(method, tube);
    for (std::size_t at = 1; at < acts.size(); ++at) {
        const run::TubeAct &act = acts[at];
        const auto read = tube.readings.find(act.name);
        if (act.kind != run::TubeAct::Kind::Read || !act.wait_min || read == tube.readings.end() ||
            std::ranges::find(readings, act.name) == readings.end())
            continue;
        const bool extrapolated = method.extrapolate && method.extrapolate->reading == act.name &&
                                  std::holds_alternative<run::ReadingSeries>(read->second);
        if (const auto time_min = waited_min(method, tube, acts[at - 1], act))
            waits.known.push_back({index, act.name, *time_min, *act.wait_min, extrapolated});
        else
            waits.someUnknown = true;
    }
}

/// Of the tubes that count.
Waits waitsOf(const CheckContext &context, const TubeGroup &group)
{
    const assay::Method &method = context.layout.method();
    const std::vector<QString> readings =
        assay::readingsOf(context.layout.measurands()[group.measurand].measurand->signal);
    Waits waits;
    for (const int index : group.tubes) {
        if (!context.term(index, group.measurand).spoilt)
            addWaits(method, context.tube(index), index, readings, waits);
    }
    return waits;
}

QString intervalText(const assay::Interval &wait_min)
{
    const QString upper = withUnit(plainText(wait_min.upper), u"min"_s);
    return wait_min.lower == wait_min.upper ? upper
                                            : CheckText::tr("%1 to %2").arg(plainText(wait_min.lower), upper);
}

QString detailOf(const Waited &waited, bool early)
{
    const QString interval = intervalText(waited.wait_min);
    if (waited.waited_min < -slack_min)
        return CheckText::tr("%1 is marked %2 before what precedes it (the method waits %3)")
            .arg(waited.reading, minutesText(-waited.waited_min), interval);
    const double off_min =
        early ? waited.wait_min.lower - waited.waited_min : waited.waited_min - waited.wait_min.upper;
    return (early ? CheckText::tr("%1 was read %2 early (after %3, the method waits %4)")
                  : CheckText::tr("%1 was read %2 late (after %3, the method waits %4)"))
        .arg(waited.reading, minutesText(off_min), minutesText(waited.waited_min), interval);
}

QString passedText(bool early, bool someUnknown)
{
    if (someUnknown)
        return early ? CheckText::tr("No reading whose time is known was taken too early.")
                     : CheckText::tr("No reading whose time is known was taken too late.");
    return early ? CheckText::tr("No reading was taken too early.")
                 : CheckText::tr("No reading was taken too late.");
}

Check timingCheck(const Waits &waits, const TubeGroup &group, CheckId id)
{
    const bool early = id == CheckId::ReadingEarly;
    CheckBuilder check(id, group, passedText(early, waits.someUnknown));
    for (const Waited &waited : waits.known) {
        const bool off = early ? waited.waited_min < waited.wait_min.lower - slack_min
                               : !waited.mayGoOn && waited.waited_min > waited.wait_min.upper + slack_min;
        if (off)
            check.fail(waited.tube, detailOf(waited, early));
    }
    return early ? check.finish({}, CheckText::tr("Read again when the wait is over."))
                 : check.finish(CheckText::tr("A slow side reaction may have added to the signal."), {});
}

} // namespace

std::vector<Check> timingChecks(const CheckContext &context, const TubeGroup &group)
{
    const Waits waits = waitsOf(context, group);
    if (waits.known.empty())
        return {};
    return {timingCheck(waits, group, CheckId::ReadingEarly),
            timingCheck(waits, group, CheckId::ReadingLate)};
}

} // namespace plateau::evaluation
