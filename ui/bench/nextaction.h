// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/laboratory.h"
#include "core/timing/due.h"
#include "ui/bench/pipettesheet.h"
#include "ui/bench/places.h"

#include <span>
#include <vector>

namespace plateau::ui {

struct Rack;

/// A steady rhythm for one round of additions, tube after tube.
struct Beat {
    int round = 0;
    int interval_s = 30;
    bool operator==(const Beat &) const = default;
};

/// When something may be done, in seconds from now: negative is past.
struct ActTimes {
    double opens_s = 0;
    /// Absent: it may come late without harm.
    std::optional<double> closes_s;
    timing::Phase phase() const;
    bool operator==(const ActTimes &) const = default;
};

/// The next thing to do on the bench.
struct NextAction {
    enum class Kind { Pipette, Read, Review } kind = Kind::Read;
    notebook::RunId run;
    QString letter;
    /// Of Read only, with how often that point was read already: more than once is a series that goes on.
    Place place{};
    int readBefore = 0;
    /// Of such a series, between its last two readings.
    double interval_s = 0;
    int readingsTaken = 0;
    int readingsPlanned = 0;
    /// Of Pipette only, with how many tubes of its round are through.
    Dosing dosing{};
    StepCount count{};
    /// Absent: at any time.
    std::optional<ActTimes> times{};
    int tube() const { return kind == Kind::Pipette ? dosing.tube : place.tube; }
    bool operator==(const NextAction &) const = default;
};

/// The next readings of the series that were begun in the rack and have not ended, each as long after the
/// last as that came after the one before. Whoever lets another such time go by has done with it.
std::vector<NextAction> seriesActions(const Rack &rack, double now_min);

/// Everything of the racks that has its time, the earliest first: readings after their waits, additions after
/// theirs, series that go on, and the next beat. now: minutes on each rack's own clock, in the order of the
/// racks.
std::vector<NextAction> timedActions(std::span<const Rack> racks, std::span<const double> now_min);

/// How the hands work, as far as it decides what is next.
struct Hands {
    /// How long before its time something is next already.
    double lead_s = 0;
    planning::HandlingTimes times{};
};

/// What to do now. Of what has its time the nearest, on whatever rack, where it is due, or comes due within the lead or
/// before the hands would be free for it again; else the oldest rack's addition or reading that may be done at any time;
/// else what comes due next; else the review of the rack in hand, or of the oldest one.
std::optional<NextAction> nextAction(std::span<const Rack> racks, std::span<const double> now_min,
                                     notebook::RunId inHand, const Hands &hands);

} // namespace plateau::ui
