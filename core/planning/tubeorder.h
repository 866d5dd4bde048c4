// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/run/run.h"

#include <QString>

#include <optional>
#include <vector>

namespace plateau::planning {

/// Names a tube whatever else of its rack changes: its role, what is in it, and the how-manieth of its kind.
struct TubeKey {
    run::Role role = run::Role::Sample;
    /// Sample or standard; empty in a blank.
    QString content;
    std::optional<double> sampleVolume_mL;
    int number = 1;
    bool operator==(const TubeKey &) const = default;
};

/// One for each tube, in their order; no two are equal.
std::vector<TubeKey> keysOf(const std::vector<run::Tube> &tubes);

/// The tubes in the order that was wanted when the rack may have been another: those that it names come in
/// its order; each of the others stays behind the tube it stands behind by itself.
std::vector<run::Tube> arranged(const std::vector<run::Tube> &tubes, const std::vector<TubeKey> &wanted);

/// The keys with the one at `from` standing at `to`, those between moved up. Both in range.
std::vector<TubeKey> moved(std::vector<TubeKey> keys, int from, int to);

} // namespace plateau::planning
