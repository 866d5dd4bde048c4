// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/series.h"

namespace plateau::equipment {

std::vector<double> columnOf(const Check &check, std::size_t column)
{
    std::vector<double> values;
    for (const auto &row : check.rows) {
        if (column < row.size() && row[column])
            values.push_back(*row[column]);
    }
    return values;
}

std::vector<VolumeSeries> volumeSeries(const Check &check)
{
    std::vector<VolumeSeries> all;
    for (const auto &row : check.rows) {
        if (row.size() < 2 || !row[0])
            continue;
        if (all.empty() || all.back().set != *row[0])
            all.push_back({*row[0], {}});
        if (row[1])
            all.back().masses.push_back(*row[1]);
    }
    return all;
}

} // namespace plateau::equipment
