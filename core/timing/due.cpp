// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/timing/due.h"

#include <cmath>

namespace plateau::timing {

namespace {

/// Minutes from stamps in milliseconds: a reading on the last tick of its wait is not late by arithmetic.
constexpr double hair_min = 1e-6;

bool isDone(const run::Tube &tube, int index, const run::TubeAct &act, const IsAdded &isAdded)
{
    return act.kind == run::TubeAct::Kind::Read ? tube.readings.contains(act.name) : isAdded(index, act.name);
}

std::optional<Due> nextOf(const assay::Method &method, const run::Tube &tube, int index,
                          const IsAdded &isAdded)
{
    const std::vector<run::TubeAct> acts = run::tubeActs(method, tube);
    for (std::size_t at = 0; at < acts.size(); ++at) {
        if (isDone(tube, index, acts[at], isAdded))
            continue;
        Due due{index, acts[at]};
        if (at > 0)
            due.since_min = run::timeOf_min(tube, acts[at - 1]);
        if (due.since_min && acts[at].wait_min) {
            due.opens_min = *due.since_min + acts[at].wait_min->lower;
            due.closes_min = *due.since_min + acts[at].wait_min->upper;
        }
        return due;
    }
    return std::nullopt;
}

} // namespace

Phase phaseAt(const Due &due, double now_min)
{
    if (!due.isTimed())
        return Phase::Free;
    if (now_min < *due.opens_min - hair_min)
        return Phase::Waiting;
    return now_min > *due.closes_min + hair_min ? Phase::Late : Phase::Open;
}

bool isEarly(const Due &due, double now_min)
{
    return phaseAt(due, now_min) == Phase::Waiting && now_min >= *due.since_min - hair_min;
}

bool mustWait(const std::vector<Due> &all, const QString &reading, double now_min)
{
    bool waits = false;
    for (const Due &due : all) {
        if (due.act.kind != run::TubeAct::Kind::Read || due.act.name != reading)
            continue;
        if (!isEarly(due, now_min))
            return false;
        waits = true;
    }
    return waits;
}

std::vector<Due> dueOf(const assay::Method &method, const run::Run &run, const IsAdded &isAdded)
{
    std::vector<Due> all;
    for (int index = 0; index < static_cast<int>(run.tubes.size()); ++index) {
        const run::Tube &tube = run.tubes[static_cast<std::size_t>(index)];
        if (!tube.spoilt.isEmpty())
            continue;
        if (auto due = nextOf(method, tube, index, isAdded))
            all.push_back(std::move(*due));
    }
    return all;
}

double nextBeat_min(double first_min, double last_min, double interval_min)
{
    const double beats = (last_min - first_min) / interval_min;
    return first_min + std::ceil(beats + 0.5 - hair_min) * interval_min;
}

} // namespace plateau::timing
