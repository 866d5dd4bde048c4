// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

namespace plateau::run {

/// How many tubes a volume in hand serves at so much a tube; 0 if there is none or a tube takes none. A volume
/// that is an exact multiple serves the last tube too, whatever binary fractions make of it.
int tubesServed(double inHand_mL, double perTube_mL);

} // namespace plateau::run
