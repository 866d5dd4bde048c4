// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"

#include <QString>

namespace plateau::assay {

/// What a cuvette, a flask or a photometer can be: a number outside is a slip of the pen. Common practice, no
/// source; they are set wide on purpose.
namespace limit {
inline constexpr double tubeVolume_mL = 100;
inline constexpr double smallestVolume_mL = 0.0001;
inline constexpr double flaskVolume_mL = 100000;
inline constexpr double pathLength_mm = 1000;
inline constexpr int shortestWavelength_nm = 190;
inline constexpr int longestWavelength_nm = 1100;
inline constexpr double molarMass_g_per_mol = 100000;
inline constexpr double absorptivity_L_per_mol_cm = 1e6;
inline constexpr double chromophorePerMolecule = 20;
inline constexpr double absorbance = 100;
inline constexpr double concentration_g_per_L = 10000;
inline constexpr double wait_min = 10080;
/// On the clock of a run: ten weeks.
inline constexpr double clock_min = 100000;
inline constexpr double mass_g = 100000;
inline constexpr double smallestMass_g = 1e-6;
inline constexpr double dilutionFactor = 1e9;
inline constexpr int tubesOfARack = 96;
inline constexpr int replicates = 20;
} // namespace limit

/// Each adds one problem at the pointer unless the value keeps the bounds; NaN never does. unit may be empty.
void checkAbove(Problems &problems, const QString &pointer, double value, double above, double atMost,
                const QString &unit);
void checkWithin(Problems &problems, const QString &pointer, double value, double lower, double upper,
                 const QString &unit);
/// Both ends within the bounds, and lower <= upper.
void checkInterval(Problems &problems, const QString &pointer, const Interval &interval, double lower,
                   double upper, const QString &unit);
/// what: "the id", "the name".
void checkLabel(Problems &problems, const QString &pointer, const QString &text, const QString &what);
void checkProse(Problems &problems, const QString &pointer, const QString &text, const QString &what);

} // namespace plateau::assay
