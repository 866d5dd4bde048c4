// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/preparation.h"

namespace plateau::run {

double preparedConcentration_g_per_L(const Weighing &weighing)
{
    return preparedConcentration_g_per_L(weighing, weighing.mass_mg, weighing.purity, weighing.flask_mL);
}

} // namespace plateau::run
