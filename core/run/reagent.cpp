// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/reagent.h"

#include <cmath>

namespace plateau::run {

int tubesServed(double inHand_mL, double perTube_mL)
{
    if (!(inHand_mL > 0) || !(perTube_mL > 0))
        return 0;
    constexpr double roundingSlack = 1e-9;
    return static_cast<int>(std::floor(inHand_mL / perTube_mL * (1 + roundingSlack)));
}

} // namespace plateau::run
