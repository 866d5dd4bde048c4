// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/photometric.h"

namespace plateau::equipment {

const std::vector<DichromateBand> &dichromateBands()
{
    static const std::vector<DichromateBand> bands{
        {235, 124.5, 122.9, 126.2, false}, {257, 144.5, 142.8, 146.2, false}, {313, 48.6, 47.0, 50.3, false},
        {350, 107.3, 105.6, 109.0, false}, {430, 15.9, 15.7, 16.1, true},
    };
    return bands;
}

double specificAbsorbance(double absorbance, double concentration_mg_per_L, double pathLength_mm)
{
    constexpr double onePercent_mg_per_L = 10000;
    constexpr double mm_per_cm = 10;
    return absorbance * onePercent_mg_per_L / concentration_mg_per_L * mm_per_cm / pathLength_mm;
}

const std::vector<WavelengthMark> &wavelengthMarks()
{
    using enum WavelengthMark::Source;
    static const std::vector<WavelengthMark> marks{
        {Holmium, 241.15}, {Holmium, 287.15}, {Holmium, 361.5},  {Holmium, 536.3},  {Deuterium, 486.0},
        {Mercury, 253.7},  {Mercury, 302.25}, {Mercury, 313.16}, {Mercury, 334.15}, {Mercury, 365.48},
        {Mercury, 404.66}, {Mercury, 435.83}, {Mercury, 546.07}, {Mercury, 576.96}, {Mercury, 579.07},
    };
    return marks;
}

double wavelengthTolerance_nm(double wavelength_nm)
{
    return wavelength_nm < 400 ? 1 : 3;
}

} // namespace plateau::equipment
