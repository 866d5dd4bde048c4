// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

namespace plateau::run {

/// A working standard as weighed. One molecule of the substance holds analytePerMolecule molecules of the
/// analyte (potassium metabisulphite: two of sulphur dioxide).
struct Weighing {
    double mass_mg = 0;
    /// Fraction, 0 < purity <= 1; water of crystallisation belongs into the substance's molar mass.
    double purity = 1;
    double substanceMolarMass_g_per_mol = 0;
    double analyteMolarMass_g_per_mol = 0;
    double analytePerMolecule = 1;
    double flask_mL = 0;
};

/// The formula for any kind of number, so that its sensitivities come from itself. Only the molar masses and
/// molecules of weighing are read.
template <class T>
T preparedConcentration_g_per_L(const Weighing &weighing, const T &mass_mg, const T &purity,
                                const T &flask_mL)
{
    const double ratio = weighing.analytePerMolecule * weighing.analyteMolarMass_g_per_mol /
                         weighing.substanceMolarMass_g_per_mol;
    // mg / mL is g / L.
    return mass_mg * purity * ratio / flask_mL;
}

/// c0 = mass x purity x (n x analyte molar mass / substance molar mass) / flask, in g/L. Every field
/// positive.
double preparedConcentration_g_per_L(const Weighing &weighing);

} // namespace plateau::run
