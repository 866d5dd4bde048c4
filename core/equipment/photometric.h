// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <vector>

namespace plateau::equipment {

/// One wavelength of the pharmacopoeia's control of absorbances: potassium dichromate in 0.005 mol/L
/// sulphuric acid. European Pharmacopoeia 2.2.25 and Indian Pharmacopoeia 2.4.7, as quoted by teaching pages;
/// later editions of the European one state a band of absorbance instead (from memory).
struct DichromateBand {
    int wavelength_nm = 0;
    /// A(1 %, 1 cm): of ten grams in a litre over one centimetre.
    double specificAbsorbance = 0;
    double lowest = 0;
    double highest = 0;
    /// Measured in the solution of ten times the strength.
    bool strong = false;
};
const std::vector<DichromateBand> &dichromateBands();
/// From the absorbance less that of the acid, the dichromate in the litre and the path.
double specificAbsorbance(double absorbance, double concentration_mg_per_L, double pathLength_mm);

/// A wavelength that a solution or a lamp marks. European Pharmacopoeia, table 2.2.25-1, as reproduced by a
/// teaching page.
struct WavelengthMark {
    enum class Source { Holmium, Deuterium, Mercury } source = Source::Holmium;
    double wavelength_nm = 0;
};
const std::vector<WavelengthMark> &wavelengthMarks();
/// 1 nm below 400 nm, 3 nm from there on. The same table.
double wavelengthTolerance_nm(double wavelength_nm);

} // namespace plateau::equipment
