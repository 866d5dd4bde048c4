// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/planning/photometer.h"
#include "core/planning/reporting.h"

#include <QString>

#include <optional>
#include <vector>

namespace plateau::planning {

/// What a volume is pipetted with. smallest = largest for a pipette of one volume (bulb pipettes).
struct Pipette {
    QString name;
    double smallest_mL = 0;
    double largest_mL = 0;
    /// Volumes it can be set to: smallest, smallest + step, … largest. 0 for a pipette of one volume; of a range: not
    /// known, and settingStep_mL says what is usual.
    double step_mL = 0;
    /// Relative standard uncertainty (k = 1) of a volume, in percent.
    double uncertainty_percent = 0;
    /// The check that says so (withChecks); empty: this list. Never stored with it.
    QString source{};
    bool operator==(const Pipette &) const = default;
};

/// A volumetric flask.
struct Flask {
    QString name;
    double volume_mL = 0;
    double uncertainty_percent = 0;
    /// As of a pipette.
    QString source{};
    bool operator==(const Flask &) const = default;
};

struct Glassware {
    std::vector<Pipette> pipettes;
    std::vector<Flask> flasks;
    bool operator==(const Glassware &) const = default;
};

/// Seconds that the analyst's hands need for one tube.
struct HandlingTimes {
    double addition_s = 8;
    double mix_s = 4;
    /// Into the photometer, read, written down, out again.
    double reading_s = 15;
    bool operator==(const HandlingTimes &) const = default;
};

/// What the laboratory has and how it works, where a method does not say so.
struct Laboratory {
    QString name;
    int rackRows = 4;
    int rackColumns = 6;
    HandlingTimes handling;
    /// Reagent beyond what the tubes take, of the need.
    double overage_percent = 10;
    Glassware glassware;
    ReviewRules review;
    ReportHead reportHead;
    std::vector<ProductUnit> reportUnits;
    std::optional<Photometer> photometer;
    std::vector<MethodUncertainty> methodUncertainties;
    bool operator==(const Laboratory &) const = default;
};

/// One-mark pipettes and flasks of the usual sizes, piston pipettes of the usual ranges, a rack of 4 x 6.
/// Uncertainties: the permissible error of class A glass (from memory of ISO 648 and ISO 1042) as the
/// half-width of a rectangular distribution; the laboratory puts its own in their place. Common practice, no
/// source.
Laboratory usualLaboratory();

/// A number outside is a slip of the pen. Common practice, no source; set wide on purpose.
inline constexpr double longestHandling_s = 600;
inline constexpr double largestOverage_percent = 1000;
inline constexpr double largestPipette_mL = 1000;
inline constexpr std::size_t mostGlassware = 100;

/// What is wrong with it (see also checkReporting, checkMeasuring): a rack of more than 96 places or none,
/// times and overage that cannot be, a pipette whose steps do not lead from its smallest to its largest
/// volume, glassware of one kind with one name. Places are JSON pointers in a plateau-laboratory/1 document.
assay::Problems problemsOf(const Laboratory &laboratory);

} // namespace plateau::planning
