// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

namespace plateau::equipment {

/// The room while something is weighed.
struct Surroundings {
    double temperature_C = 20;
    double pressure_kPa = 101.325;
    double humidity_percent = 50;
    bool operator==(const Surroundings &) const = default;
};

/// Air-free water at 0 to 40 °C. Tanaka et al., Metrologia 38 (2001) 301-309; coefficients from memory, held
/// against the printed table in tests/published.
double waterDensity_kg_per_m3(double temperature_C);
/// The simplified formula of ISO/TR 20461 and ISO 8655-6 (from memory): (0.34848 p - 0.009 h exp(0.061 t)) /
/// (t + 273.15) with p in hPa and h in %.
double airDensity_kg_per_m3(const Surroundings &room);
/// What one milligram of water on a balance that was adjusted with weights of 8000 kg/m3 takes up, in
/// microlitres: ISO 8655-6, Z = (1 - air / weights) / (water - air). In mL/g the number is the same.
double zFactor_uL_per_mg(const Surroundings &room);
/// A vessel's volume at 20 °C from that at another temperature: V (1 - g (t - 20)), with the glass's
/// coefficient of cubic expansion in 1/°C (ISO 4787; from memory).
double volumeAt20_mL(double volume_mL, double temperature_C, double expansion_per_C);
/// Borosilicate glass 3.3, from memory of ISO 4787.
inline constexpr double borosilicate_per_C = 9.9e-6;

} // namespace plateau::equipment
