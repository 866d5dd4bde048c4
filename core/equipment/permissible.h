// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <optional>

namespace plateau::equipment {

/// What a piston pipette may be off, at every volume it can be set to.
struct PistonLimits {
    double systematic_uL = 0;
    double random_uL = 0;
    /// Of the table: the pipette's own or the next larger one.
    double nominal_uL = 0;
    bool operator==(const PistonLimits &) const = default;
};
/// ISO 8655-2:2002, type A with air cushion, 1 µL to 10 mL (read in data of a university's package, not in
/// the standard; the edition of 2022 has other limits). Nothing outside of that.
std::optional<PistonLimits> pistonLimits(double nominal_mL);

/// The permissible error (mL) of class A glass of exactly that size: ISO 648:2008, ISO 1042:1998 (read in the
/// same data). Nothing for a size that is not listed.
std::optional<double> bulbPipetteLimit_mL(double nominal_mL);
std::optional<double> flaskLimit_mL(double nominal_mL);

} // namespace plateau::equipment
