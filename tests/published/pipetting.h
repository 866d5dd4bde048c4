// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/evaluation/evaluation.h"
#include "core/run/run.h"

#include <map>
#include <vector>

/// Published pipetting schemes as methods and runs of the program.
namespace plateau::published {

/// Molar absorptivities in L/(mol cm) by wavelength in nm.
using Absorptivities = std::map<int, double>;

/// NADH and NADPH: 6.3, 6.18 and 3.4 L/(mmol cm) at 340, 334 and 365 nm. Published: Russian standard for
/// citric acid in juices, document 1200102279, section 8
/// (https://docs.cntd.ru/document/1200102279/titles/7DM0KA), and for sucrose and glucose in foods, document
/// 1200111376, section 9 (https://docs.cntd.ru/document/1200111376/titles/7E20KD).
extern const Absorptivities nadhAndNadph;

/// reagents, diluent, sample; reading A1; starter; reading A2. One measurand "analyte" from A1 to A2, rising.
struct Pipetting {
    std::vector<double> reagents_mL;
    double diluent_mL = 0;
    double sample_mL = 0;
    double starter_mL = 0;
};
assay::Method methodOf(const Pipetting &pipetting, double molarMass_g_per_mol,
                       const Absorptivities &absorptivities);
/// The same with a second starter and reading A3: "first" from A1 to A2, "second" from A2 to A3.
assay::Method cascadeOf(const Pipetting &pipetting, double secondStarter_mL, double molarMass_g_per_mol,
                        const Absorptivities &absorptivities);
/// Where only the sum of the volumes was printed: the diluent takes what sample and starter leave.
Pipetting ofTotal(double total_mL, double sample_mL);

run::Tube tubeOf(run::Role role, double a1, double a2);
run::Tube sampleTube(double a1, double a2);
run::Sample liquidSample(std::vector<run::DilutionStep> dilution = {});
run::Sample solidSample(double mass_g, double extract_mL);
/// A run of one sample "S".
run::Run runOf(run::Sample sample, std::vector<run::Tube> tubes);

/// The factor (g/L for one unit of net signal) that the evaluation states for the measurand at the
/// wavelength.
double factor_g_per_L(const assay::Method &method, int wavelength_nm, std::size_t measurand = 0);
/// The value of the run's first result.
double valueOf(const assay::Method &method, const run::Run &run);

} // namespace plateau::published
