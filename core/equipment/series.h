// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/item.h"

namespace plateau::equipment {

/// What was keyed in a column, without the gaps.
std::vector<double> columnOf(const Check &check, std::size_t column);

/// The weighings of one set volume, in the check's own units.
struct VolumeSeries {
    double set = 0;
    std::vector<double> masses{};
};
/// Of a piston pipette: in the order of the rows, also those without a weighing.
std::vector<VolumeSeries> volumeSeries(const Check &check);

} // namespace plateau::equipment
