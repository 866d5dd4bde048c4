// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/waits.h"

#include "core/run/volumes.h"

#include <algorithm>

namespace plateau::run {

namespace {

/// The components of which something goes in; a dose that was left out is planned, and its moment passes all
/// the same.
bool gets(const std::vector<Addition> &planned, const QString &component)
{
    return std::ranges::any_of(planned, [&component](const Addition &addition) {
        return addition.component == component && addition.volume_mL > 0;
    });
}

} // namespace

std::vector<TubeAct> tubeActs(const assay::Method &method, const Tube &tube)
{
    const std::vector<Addition> planned = plannedAdditions(method, tube);
    std::vector<TubeAct> acts;
    std::optional<assay::Interval> wait_min;
    const auto take = [&](TubeAct::Kind kind, const QString &name) {
        acts.push_back({kind, name, acts.empty() ? std::nullopt : wait_min});
        wait_min.reset();
    };
    for (const assay::Step &step : method.steps) {
        if (const auto *add = std::get_if<assay::AddStep>(&step)) {
            if (gets(planned, add->component))
                take(TubeAct::Kind::Add, add->component);
        } else if (const auto *read = std::get_if<assay::ReadStep>(&step)) {
            take(TubeAct::Kind::Read, read->reading);
        } else if (const auto *wait = std::get_if<assay::WaitStep>(&step)) {
            const assay::Interval before_min = wait_min.value_or(assay::Interval{});
            wait_min = assay::Interval{before_min.lower + wait->wait_min.lower,
                                       before_min.upper + wait->wait_min.upper};
        }
    }
    return acts;
}

std::optional<double> timeOf_min(const Tube &tube, const TubeAct &act)
{
    const auto &times = act.kind == TubeAct::Kind::Add ? tube.addedAt_min : tube.readAt_min;
    const auto found = times.find(act.name);
    return found == times.end() ? std::nullopt : std::optional(found->second);
}

std::optional<double> waitedBefore_min(const assay::Method &method, const Tube &tube, const QString &reading)
{
    const std::vector<TubeAct> acts = tubeActs(method, tube);
    for (std::size_t at = 1; at < acts.size(); ++at) {
        if (acts[at].kind != TubeAct::Kind::Read || acts[at].name != reading || !acts[at].wait_min)
            continue;
        const auto from_min = timeOf_min(tube, acts[at - 1]);
        const auto to_min = timeOf_min(tube, acts[at]);
        return from_min && to_min ? std::optional(*to_min - *from_min) : std::nullopt;
    }
    return std::nullopt;
}

} // namespace plateau::run
