// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/planning/laboratory.h"

#include <QString>

#include <optional>
#include <vector>

namespace plateau::planning {

/// What the hands do to one tube without putting it down: additions with their mixing, or one reading.
/// All times are whole seconds.
struct Operation {
    enum class Kind { Add, Read } kind = Kind::Add;
    /// Component ids of Add, none where it only mixes; of Read the reading's name.
    std::vector<QString> names;
    int handling_s = 0;
    /// From the end of this one to the start of the next for the same tube; largest absent: no limit.
    int smallestWait_s = 0;
    std::optional<int> largestWait_s;
    bool operator==(const Operation &) const = default;
};

/// The timed part of a method, from the last addition before its first wait or reading on; and the additions
/// before it, which are made to all tubes in advance.
struct Procedure {
    std::vector<Operation> setUp;
    std::vector<Operation> timed;
    bool operator==(const Procedure &) const = default;
};

/// From one reading of a series to the next, at least. Common practice, no source: methods don't say it.
inline constexpr int seriesSpacing_s = 120;

/// The procedure of a method, what one pair of hands does to each tube:
/// - handling is rounded up to whole seconds, at least one, a wait inwards; where no whole second is left of
/// a wait, it is
///   the first one after its beginning. Two steps without a wait between them may be any time apart.
/// - a reading that is extrapolated is taken as often as the extrapolation needs: the first time within the
///   method's wait, the others seriesSpacing_s or more after the one before, without a latest moment.
/// - withSpikes: the rack holds spiked tubes, so the sample takes two additions (planned for every tube).
Procedure procedureOf(const assay::Method &method, const HandlingTimes &handling, bool withSpikes = false);

} // namespace plateau::planning
