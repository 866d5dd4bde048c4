// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/item.h"

#include <map>
#include <vector>

namespace plateau::equipment {

/// One figure of a check held against its limits.
struct Finding {
    QString what;
    double value = 0;
    QString unit;
    /// Allowed from and to; absent: on that side there is no limit.
    std::optional<double> lowest{};
    std::optional<double> highest{};
    bool passed = true;
    /// Where the limits come from; empty where there are none.
    QString source{};
    /// Decimals that show it well.
    int decimals = 3;
    bool operator==(const Finding &) const = default;
};
/// "0.06 µL", and "at most 0.30 µL", "-0.80 to 0.80 µL", "at least 2.0"; empty without limits.
QString foundText(const Finding &finding);
QString limitText(const Finding &finding);

/// What a check is worth to a budget: standard uncertainties (k = 1). Absent: this check does not say.
struct Figures {
    /// Of one reading.
    std::optional<double> absorbance{};
    /// Of the absorbance scale: it acts as a path length does.
    std::optional<double> scale_percent{};
    std::optional<double> pathLength_percent{};
    /// Of a volume, the least exact of those checked.
    std::optional<double> volume_percent{};
    /// Of one weighing.
    std::optional<double> weighing_mg{};
    std::optional<double> temperature_C{};
    bool operator==(const Figures &) const = default;
};

struct Outcome {
    std::vector<Finding> findings{};
    Figures figures{};
    bool passed = false;
    bool operator==(const Outcome &) const = default;
};

/// check: without problems (protocol.h); one with problems gives nothing.
///   piston pipette  mean of (mass + evaporation) x Z at each volume; systematic error = mean - set volume,
///                   random error = s (n - 1), each against its limit (ISO 8655-6); uncertainty
///                   sqrt(s² + systematic²) of a delivery, since nobody corrects for the latter
///   glass           the same at 20 °C; the mean against the permissible error; uncertainty likewise
///   wavelength      found - expected against the pharmacopoeia's tolerance
///   absorbance      A(1 %, 1 cm) in its band; scale: root mean square of the relative deviations
///   noise           s and mean of the zero, s of a cuvette taken out and put back; the larger s with the
///                   last digit's rectangular part is the uncertainty of a reading
///   balance         s of one load, deviations from weights; sqrt(s² + (largest deviation)²/3)
///   thermometer     deviations; the largest / √3
///   cuvettes        range of the absorbances; the stated tolerance of the path / √3
/// What the combinations rest on: JCGM 100:2008, 4.3.7 and 5.1.2; which of them is taken is common practice.
std::optional<Outcome> outcomeOf(const Item &item, const Check &check);

} // namespace plateau::equipment
