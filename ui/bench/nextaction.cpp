// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/nextaction.h"

#include "core/run/waits.h"
#include "ui/bench/benchsession.h"

#include <algorithm>
#include <iterator>

namespace plateau::ui {

namespace {

constexpr double secondsPerMinute = 60;

NextAction actionOn(const Rack &rack, NextAction::Kind kind)
{
    NextAction action;
    action.kind = kind;
    action.run = rack.id;
    action.letter = rack.letter;
    action.readingsTaken = rack.stored.summary.readingsTaken;
    action.readingsPlanned = rack.stored.summary.readingsPlanned;
    return action;
}

NextAction pipetting(const Rack &rack, const Dosing &dosing)
{
    NextAction action = actionOn(rack, NextAction::Kind::Pipette);
    action.dosing = dosing;
    action.count = rack.sheet.countOfRound(dosing.round);
    return action;
}

NextAction reading(const Rack &rack, const Place &place)
{
    NextAction action = actionOn(rack, NextAction::Kind::Read);
    action.place = place;
    return action;
}

/// The first dose of that component that is still to go into the tube.
std::optional<Dosing> dosingFor(const PipetteSheet &sheet, int tube, const QString &component)
{
    for (int round = 0; round < static_cast<int>(sheet.rounds().size()); ++round) {
        const Dosing dosing{round, tube};
        if (sheet.round(round).component == component && sheet.stateOf(dosing) == PipetteSheet::State::Due)
            return dosing;
    }
    return std::nullopt;
}

std::optional<NextAction> timed(const Rack &rack, const timing::Due &due, double now_min)
{
    if (!due.isTimed())
        return std::nullopt;
    NextAction action;
    if (due.act.kind == run::TubeAct::Kind::Read) {
        action = reading(rack, {due.tube, due.act.name});
    } else if (const auto dosing = dosingFor(rack.sheet, due.tube, due.act.name)) {
        action = pipetting(rack, *dosing);
    } else {
        return std::nullopt;
    }
    action.times = ActTimes{(*due.opens_min - now_min) * secondsPerMinute,
                            (*due.closes_min - now_min) * secondsPerMinute};
    return action;
}

/// Moments at which the round was ticked, in minutes on the rack's clock.
std::vector<double> ticksOf(const Rack &rack, int round)
{
    std::vector<double> ticks_min;
    const QString &component = rack.sheet.round(round).component;
    for (const run::Tube &tube : rack.stored.run.tubes) {
        if (const auto at = tube.addedAt_min.find(component); at != tube.addedAt_min.end())
            ticks_min.push_back(at->second);
    }
    return ticks_min;
}

/// The rhythm begins with the first tube, which comes when it comes.
std::optional<NextAction> onBeat(const Rack &rack, double now_min)
{
    if (!rack.beat)
        return std::nullopt;
    const auto dosing = rack.sheet.nextIn(rack.beat->round);
    const std::vector<double> ticks_min = ticksOf(rack, rack.beat->round);
    if (!dosing || ticks_min.empty())
        return std::nullopt;
    const auto [first, last] = std::ranges::minmax(ticks_min);
    NextAction action = pipetting(rack, *dosing);
    const double beat_min = timing::nextBeat_min(first, last, rack.beat->interval_s / secondsPerMinute);
    action.times = ActTimes{(beat_min - now_min) * secondsPerMinute, std::nullopt};
    return action;
}

/// Something that comes behind the reading was done.
bool isPast(const assay::Method &method, const run::Tube &tube, const QString &reading)
{
    bool behind = false;
    for (const run::TubeAct &act : run::tubeActs(method, tube)) {
        const bool isRead = act.kind == run::TubeAct::Kind::Read;
        if (behind && (isRead ? tube.readings.contains(act.name) : tube.addedAt_min.contains(act.name)))
            return true;
        behind = behind || (isRead && act.name == reading);
    }
    return false;
}

std::optional<NextAction> goingOn(const Rack &rack, const evaluation::SeriesFit &fit, double now_min)
{
    const run::Tube &tube = rack.stored.run.tubes[static_cast<std::size_t>(fit.tube)];
    const Place place{fit.tube, fit.reading};
    const run::Reading *read = readingAt(rack.stored.run, place);
    const auto *points = read ? std::get_if<run::ReadingSeries>(read) : nullptr;
    const auto readAt = tube.readAt_min.find(fit.reading);
    if (fit.ended || !tube.spoilt.isEmpty() || !points || points->size() < 2 ||
        readAt == tube.readAt_min.end() || isPast(rack.stored.method, tube, fit.reading))
        return std::nullopt;
    const double interval_min = points->back().at_min - (points->end() - 2)->at_min;
    const double opens_min = readAt->second + interval_min;
    if (now_min > opens_min + interval_min)
        return std::nullopt;
    NextAction action = reading(rack, place);
    action.readBefore = static_cast<int>(points->size());
    action.interval_s = interval_min * secondsPerMinute;
    action.times = ActTimes{(opens_min - now_min) * secondsPerMinute, std::nullopt};
    return action;
}

bool isTimed(const Rack &rack, int tube, run::TubeAct::Kind kind, const QString &name)
{
    return std::ranges::any_of(rack.due, [&](const timing::Due &due) {
        return due.tube == tube && due.isTimed() && due.act.kind == kind && due.act.name == name;
    });
}

/// An addition that needs no waiting for.
std::optional<NextAction> freePipetting(const Rack &rack)
{
    const auto next = rack.sheet.next();
    if (!next || onBeat(rack, 0))
        return std::nullopt;
    const QString &component = rack.sheet.round(next->round).component;
    for (const Dosing &dosing : rack.sheet.dueIn(next->round, 0, rack.sheet.tubes() - 1)) {
        if (!isTimed(rack, dosing.tube, run::TubeAct::Kind::Add, component))
            return pipetting(rack, dosing);
    }
    return std::nullopt;
}

std::optional<NextAction> freeReading(const Rack &rack)
{
    for (const Place &place : readingOrder(rack.stored.method, rack.stored.run)) {
        const run::Tube &tube = rack.stored.run.tubes[static_cast<std::size_t>(place.tube)];
        if (tube.spoilt.isEmpty() && !readingAt(rack.stored.run, place) &&
            rack.sheet.isReadable(place.tube, place.reading) &&
            !isTimed(rack, place.tube, run::TubeAct::Kind::Read, place.reading))
            return reading(rack, place);
    }
    return std::nullopt;
}

/// Of the oldest rack that has one.
std::optional<NextAction> freeAction(std::span<const Rack> racks)
{
    for (const Rack &rack : racks) {
        if (auto action = freePipetting(rack))
            return action;
        if (auto action = freeReading(rack))
            return action;
    }
    return std::nullopt;
}

/// What it keeps the hands from anything else.
double lengthOf_s(const NextAction &action, const planning::HandlingTimes &times)
{
    return action.kind == NextAction::Kind::Read ? times.reading_s : times.addition_s + times.mix_s;
}

bool isThrough(const Rack &rack)
{
    return !rack.sheet.next() && !nextUnread(rack.stored.method, rack.stored.run);
}

} // namespace

timing::Phase ActTimes::phase() const
{
    if (opens_s > 0)
        return timing::Phase::Waiting;
    return closes_s && *closes_s < 0 ? timing::Phase::Late : timing::Phase::Open;
}

std::vector<NextAction> seriesActions(const Rack &rack, double now_min)
{
    std::vector<NextAction> actions;
    for (const evaluation::SeriesFit &fit : rack.evaluation.series) {
        if (auto action = goingOn(rack, fit, now_min))
            actions.push_back(std::move(*action));
    }
    return actions;
}

std::vector<NextAction> timedActions(std::span<const Rack> racks, std::span<const double> now_min)
{
    std::vector<NextAction> all;
    for (std::size_t at = 0; at < racks.size(); ++at) {
        const Rack &rack = racks[at];
        for (const timing::Due &due : rack.due) {
            if (auto action = timed(rack, due, now_min[at]))
                all.push_back(std::move(*action));
        }
        std::ranges::move(seriesActions(rack, now_min[at]), std::back_inserter(all));
        if (auto action = onBeat(rack, now_min[at]))
            all.push_back(std::move(*action));
    }
    std::ranges::stable_sort(all, {}, [](const NextAction &action) { return action.times->opens_s; });
    return all;
}

std::optional<NextAction> nextAction(std::span<const Rack> racks, std::span<const double> now_min,
                                     notebook::RunId inHand, const Hands &hands)
{
    const std::vector<NextAction> timed = timedActions(racks, now_min);
    // Whoever begins something else is to be through with it when that comes next by its time.
    if (auto action = freeAction(racks);
        action && (timed.empty() || timed.front().times->opens_s > hands.lead_s + lengthOf_s(*action, hands.times)))
        return action;
    if (!timed.empty())
        return timed.front();
    std::optional<NextAction> review;
    for (const Rack &rack : racks) {
        if (isThrough(rack) && (!review || rack.id == inHand))
            review = actionOn(rack, NextAction::Kind::Review);
    }
    return review;
}

} // namespace plateau::ui
