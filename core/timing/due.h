// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/run/waits.h"

#include <functional>

namespace plateau::timing {

/// What is next for one tube, and when. Times are minutes on the run's clock.
struct Due {
    int tube = 0;
    run::TubeAct act;
    /// When what came before it was done; absent where nobody marked it, or it is the first.
    std::optional<double> since_min{};
    /// The earliest and the latest moment; absent where the method has no wait before it, or since_min is not
    /// known: it may be done at any time.
    std::optional<double> opens_min{};
    std::optional<double> closes_min{};
    bool isTimed() const { return opens_min.has_value(); }
    bool operator==(const Due &) const = default;
};

/// Free: at any time. Waiting, Open, Late: before, within and after its time; both ends belong to Open.
enum class Phase { Free, Waiting, Open, Late };
Phase phaseAt(const Due &due, double now_min);

/// Whether it is too early for it. Not where the clock stands before what it waits for, since then nobody knows.
bool isEarly(const Due &due, double now_min);
/// Whether the reading is next for some of the tubes, and too early for each of them.
bool mustWait(const std::vector<Due> &all, const QString &reading, double now_min);

/// Whether a component went into a tube, whether or not anybody marked when.
using IsAdded = std::function<bool(int tube, const QString &component)>;

/// The next act of every tube that counts and is not through, in the order of the rack.
std::vector<Due> dueOf(const assay::Method &method, const run::Run &run, const IsAdded &isAdded);

/// The beats of a steady rhythm, for additions tube after tube: first_min is the first tube's, last_min that
/// of the one before. The beat after it, or the next one that is at least half an interval away, so that a
/// tube that came late doesn't push the others.
double nextBeat_min(double first_min, double last_min, double interval_min);

} // namespace plateau::timing
