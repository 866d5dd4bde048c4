// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/run/run.h"

#include <QString>

#include <optional>
#include <vector>

namespace plateau::run {

/// Something that is done to a tube at one moment, as its method says, with what has to pass before it.
struct TubeAct {
    enum class Kind { Add, Read } kind = Kind::Add;
    /// Component id of Add, name of Read.
    QString name;
    /// Since the act before it in the same tube; absent where the method lets it follow at once, or names no
    /// limit.
    std::optional<assay::Interval> wait_min;
    bool operator==(const TubeAct &) const = default;
};

/// What the tube goes through, in the method's order: additions of which it gets more than nothing, and
/// readings. Waits that follow each other are one; a wait before the first act is none.
std::vector<TubeAct> tubeActs(const assay::Method &method, const Tube &tube);

/// When it was done, in minutes on the run's clock; nothing where nobody marked it.
std::optional<double> timeOf_min(const Tube &tube, const TubeAct &act);

/// How long the tube really waited before that reading, in minutes, since what came before it; nothing where
/// the method has no wait there, or one of the two moments is not known.
std::optional<double> waitedBefore_min(const assay::Method &method, const Tube &tube, const QString &reading);

} // namespace plateau::run
