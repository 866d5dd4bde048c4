// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::ui {

/// As a pipette is set, on screen and on paper alike: "20 µL" below one millilitre, "1.5 mL" from there on; in C
/// format.
QString volumeWords(double volume_mL);
/// The unit volumeWords takes for that volume.
QString volumeUnit(double volume_mL);
/// How many of that unit a millilitre is.
double volumeUnitsPer_mL(double volume_mL);
/// The volume in the unit that volumeWords takes for the other one, a number; what is finer than a hundredth of a
/// microlitre, which no hand pipettes, is left out.
double volumeInUnitOf(double volume_mL, double other_mL);

} // namespace plateau::ui
