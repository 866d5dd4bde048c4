// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/item.h"

namespace plateau::test {

equipment::Item photometer();
/// 20 to 200 µL.
equipment::Item pistonPipette();
/// A check of that aspect on that day with the usual conditions (21 °C, 101.3 kPa where asked) and nothing in
/// its lines.
equipment::Check blankCheck(const equipment::Item &item, equipment::Aspect aspect, const QDate &day);
/// Ten deliveries of 200 µL that weigh so much on average, 0.2 mg apart to either side.
equipment::Check volumeCheck(const equipment::Item &item, double mean_mg, const QDate &day);

} // namespace plateau::test
