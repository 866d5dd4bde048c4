// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/water.h"

#include <cmath>

namespace plateau::equipment {

double waterDensity_kg_per_m3(double temperature_C)
{
    const double t = temperature_C;
    const double fromMaximum = t - 3.983035;
    return 999.97495 * (1 - fromMaximum * fromMaximum * (t + 301.797) / (522528.9 * (t + 69.34881)));
}

double airDensity_kg_per_m3(const Surroundings &room)
{
    constexpr double hPa_per_kPa = 10;
    const double vapour = 0.009 * room.humidity_percent * std::exp(0.061 * room.temperature_C);
    return (0.34848 * room.pressure_kPa * hPa_per_kPa - vapour) / (room.temperature_C + 273.15);
}

double zFactor_uL_per_mg(const Surroundings &room)
{
    constexpr double weights_kg_per_m3 = 8000;
    constexpr double uL_per_mg = 1000; // m3/kg in µL/mg
    const double air = airDensity_kg_per_m3(room);
    return uL_per_mg * (1 - air / weights_kg_per_m3) / (waterDensity_kg_per_m3(room.temperature_C) - air);
}

double volumeAt20_mL(double volume_mL, double temperature_C, double expansion_per_C)
{
    return volume_mL * (1 - expansion_per_C * (temperature_C - 20));
}

} // namespace plateau::equipment
