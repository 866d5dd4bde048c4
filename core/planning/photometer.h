// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"

#include <QDate>
#include <QString>

#include <optional>
#include <vector>

namespace plateau::planning {

struct Laboratory;

/// The photometer the runs are read in, and what its check records say. Absent numbers: no record says.
struct Photometer {
    QString name;
    /// Standard uncertainty (k = 1) of one reading.
    std::optional<double> absorbance{};
    /// Relative standard uncertainty (k = 1) of the cuvette's path length.
    std::optional<double> pathLength_percent{};
    /// Which record: never blank where there is a number.
    QString source{};
    std::optional<QDate> checkedOn{};
    /// Of the path length, where it is another (withChecks); never stored with it.
    QString pathSource{};
    bool operator==(const Photometer &) const = default;
};

/// What the laboratory knows of its own for one method (any version): these numbers come before those of the
/// photometer and the glassware. As the members of run::UncertaintyInputs; at least one of them.
struct MethodUncertainty {
    QString method;
    /// Where the numbers come from; never blank.
    QString source;
    std::optional<double> absorbance{};
    std::optional<double> absorptivity_percent{};
    std::optional<double> pathLength_percent{};
    std::optional<double> totalVolume_percent{};
    std::optional<double> sampleVolume_percent{};
    std::optional<double> dilution_percent{};
    std::optional<double> extract_percent{};
    bool operator==(const MethodUncertainty &) const = default;
};

/// Common practice, no source.
inline constexpr std::size_t mostMethodUncertainties = 1000;

/// Of these parts of a laboratory, with places in its document. Called by problemsOf(Laboratory).
void checkMeasuring(const Laboratory &laboratory, assay::Problems &problems);

} // namespace plateau::planning
