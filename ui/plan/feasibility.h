// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/planning/schedule.h"
#include "ui/shared/sentencelist.h"

#include <optional>
#include <vector>

namespace plateau::ui {

/// A rack as far as its times depend on it.
struct TimedRack {
    assay::Method method;
    int tubes = 0;
    /// Blanks, standards and controls: every rack of a split needs them again.
    int ownTubes = 0;
    bool withSpikes = false;
    /// Tubes that must stand in one rack: the replicates of a sample.
    int together = 1;
};

/// One pair of hands and its time.
struct BenchTime {
    planning::HandlingTimes handling;
    /// From the first start to the last reading.
    std::optional<int> most_s;
};

/// Whether one pair of hands can work the rack inside the method's waits, and how.
struct Feasibility {
    planning::Procedure procedure;
    std::optional<planning::Schedule> schedule;
    /// Of a second rack in the waits of the first, in the clock of the first; where one is wanted and fits.
    planning::Procedure secondProcedure;
    std::optional<planning::Schedule> second;
    /// When the hands are free of both racks: what is said of it, and what the picture shows.
    std::vector<planning::Span> free;
    std::vector<Sentence> sentences;
};

Feasibility feasibilityOf(const TimedRack &rack, const BenchTime &time,
                          const std::optional<TimedRack> &second = std::nullopt);

/// "25 s", "12 min", "1 h 05 min": seconds below two minutes, above that whole minutes.
QString durationText(int seconds);
/// Minutes and seconds after the first start, as the picture has them: "8:12 min".
QString afterStartText(int seconds);

} // namespace plateau::ui
