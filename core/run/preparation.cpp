// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/preparation.h"

namespace plateau::run {

double preparedConcentration_g_per_L(const Weighing &weighing)
{
    const double ratio = weighing.analytePerMolecule * weighing.analyteMolarMass_g_per_mol /
                         weighing.substanceMolarMass_g_per_mol;
    // mg / mL is g / L.
    return weighing.mass_mg * weighing.purity * ratio / weighing.flask_mL;
}

} // namespace plateau::run
