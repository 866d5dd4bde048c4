// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Combined uncertainty, effective degrees of freedom and coverage against the examples of JCGM 100:2008 (GUM)
// and of Eurachem/CITAC CG4, Quantifying Uncertainty in Analytical Measurement (QUAM). The GUM's numbers were
// read through github.com/MSLNZ/GTC (docs/API/GUM_H1.rst), github.com/sandialabs/suncal and
// github.com/cran/metRology, those of QUAM in its 2nd edition (www.measurementuncertainty.org/guide/) and
// through GTC (docs/API/CITAC_A*.rst).

#include "core/evaluation/evaluation.h"
#include "core/evaluation/uncertainty.h"
#include "core/quality/distributions.h"
#include "core/quality/line.h"
#include "tests/published/columns.h"
#include "tests/published/pipetting.h"
#include "tests/published/printed.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

namespace plateau::published {

using namespace Qt::StringLiterals;
using evaluation::combinedStandardUncertainty;
using evaluation::effectiveDegreesOfFreedom;
using evaluation::UncertaintyTerm;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

UncertaintyTerm known(double standardUncertainty)
{
    return {{}, standardUncertainty, infinite};
}

double rectangular(double halfWidth)
{
    return halfWidth / std::numbers::sqrt3;
}

double triangular(double halfWidth)
{
    return halfWidth / std::sqrt(6.0);
}

double combined(const std::vector<UncertaintyTerm> &terms)
{
    return combinedStandardUncertainty(terms);
}

} // namespace

// GUM H.1, end-gauge calibration, from the rounded uncertainties that are printed there: 9.7 nm with 25.6
// degrees of freedom, 0.58e-6 and 0.029 C, the last two times the gauge's 50 000 623 nm. Printed
// contributions 2.9 and 16.6.
TEST(GumH1, WelchSatterthwaiteOfTheEndGauge)
{
    constexpr double length_nm = 50000623;
    const std::vector<UncertaintyTerm> terms{{u"standard"_s, 25, 18},
                                             {u"comparator"_s, 9.7, 25.6},
                                             {u"expansion"_s, length_nm * 0.1 * 0.58e-6, 50},
                                             {u"temperature"_s, length_nm * 11.5e-6 * 0.029, 2}};
    EXPECT_THAT(combinedStandardUncertainty(terms), Published("31.71"));
    EXPECT_THAT(effectiveDegreesOfFreedom(terms), Published("16.66"));
    // The GUM truncates to 16 and multiplies 2.92 by the rounded 32.
    EXPECT_THAT(quality::studentTwoSided(0.99, 16), Published("2.92"));
    EXPECT_THAT(quality::studentTwoSided(0.99, 16) * 32, Published("93"));
}

// GUM H.1, the same from its inputs: u(d) of 5.8, 3.9 and 6.7 nm with 24, 5 and 8 degrees of freedom.
// Printed 9.7 and 25.6; 25.6 comes from the rounded 9.7, unrounded it is 25.447.
TEST(GumH1, ComparatorTermFromItsParts)
{
    const std::vector<UncertaintyTerm> parts{{{}, 5.8, 24}, {{}, 3.9, 5}, {{}, 6.7, 8}};
    EXPECT_THAT(combinedStandardUncertainty(parts), Published("9.7"));
    EXPECT_THAT(effectiveDegreesOfFreedom(parts), Recomputed(25.447250777362726));
}

// Four equal terms of ten degrees of freedom each have 40; read in the tests of github.com/sandialabs/suncal.
TEST(WelchSatterthwaite, OfEqualTermsAddsTheirDegreesOfFreedom)
{
    const std::vector<UncertaintyTerm> terms(4, UncertaintyTerm{{}, 0.3, 10});
    EXPECT_THAT(effectiveDegreesOfFreedom(terms), Published("40"));
    EXPECT_EQ(evaluation::coverageFactor(effectiveDegreesOfFreedom(terms)), 2);
}

// University of Tartu, GUM examples, sisu.ut.ee/measurement: a 10 mL pipette of +-0.03 mL, filled with a
// standard deviation of 0.04 mL from 51 fillings, at +-4 C of 0.00021 per C. Published: 0.0438579525285894 mL
// and 72.
TEST(TartuPipette, DegreesOfFreedomBesideKnownTerms)
{
    const std::vector<UncertaintyTerm> terms{
        known(rectangular(0.03)), {{}, 0.04, 50}, known(rectangular(4) * 0.00021 * 10)};
    EXPECT_THAT(combinedStandardUncertainty(terms), Published("0.0438579525285894"));
    EXPECT_THAT(effectiveDegreesOfFreedom(terms), Published("72"));
    EXPECT_EQ(evaluation::coverageFactor(effectiveDegreesOfFreedom(terms)), 2);
}

// QUAM 8.3.4: a term of 0.08 from five readings beside one of 0.01. Published: 0.081 and k = 2.8 (95 %, 4
// degrees of freedom). The program takes 95.45 % and the effective degrees of freedom, so its k is a little
// larger.
TEST(Quam834, FewReadingsAskForALargerCoverageFactor)
{
    const std::vector<UncertaintyTerm> terms{known(0.01), {{}, 0.08, 4}};
    EXPECT_THAT(combinedStandardUncertainty(terms), Published("0.081"));
    EXPECT_THAT(quality::studentTwoSided(0.95, 4), Published("2.8"));
    const double k = evaluation::coverageFactor(effectiveDegreesOfFreedom(terms));
    EXPECT_GT(k, quality::studentTwoSided(0.95, 4));
    EXPECT_LT(k, quality::studentTwoSided(0.9545, 4));
}

// QUAM 8.2.8: rule 1 (sums) and rule 2 (products).
TEST(Quam828, SumsAndProducts)
{
    EXPECT_THAT(combined({known(0.13), known(0.05), known(0.22)}), Published("0.26"));
    const double y = 2.46 * 4.32 / (6.38 * 2.99);
    EXPECT_THAT(y, Published("0.557"));
    EXPECT_THAT(
        y * combined({known(0.02 / 2.46), known(0.13 / 4.32), known(0.11 / 6.38), known(0.07 / 2.99)}),
        Published("0.024"));
}

// QUAM A1, cadmium standard: flask +-0.1 mL triangular, filling 0.02 mL, +-4 C at 2.1e-4 per C. Published
// with more digits by GTC; the guide's own 0.9 mg/L comes from the flask rounded to 0.07 mL.
TEST(QuamA1, CadmiumStandard)
{
    const double flask =
        combined({known(triangular(0.1)), known(0.02), known(rectangular(4) * 2.1e-4 * 100)});
    EXPECT_THAT(flask, Published("0.0664730521840743"));
    const double c = 1000 * 100.28 * 0.9999 / 100;
    EXPECT_THAT(c, Published("1002.7"));
    EXPECT_THAT(c * combined({known(0.05 / 100.28), known(rectangular(0.0001) / 0.9999), known(flask / 100)}),
                Published("0.835199"));
    EXPECT_THAT(c * combined({known(0.05 / 100.28), known(rectangular(0.0001) / 0.9999), known(0.07 / 100)}),
                Published("0.9"));
}

// QUAM A2, standardised sodium hydroxide: the contributions in print and their sum.
TEST(QuamA2, ContributionsAddUp)
{
    EXPECT_THAT(combined({known(7.47292e-5), known(5.10681e-5), known(3.21735e-5), known(2.94842e-5),
                          known(1.88312e-6)}),
                Published("0.0001005"));
}

// QUAM A4, pesticide in bread, Tables A4.4 and A4.5: precision 0.27, recovery 0.043/0.90, homogeneity 0.2.
TEST(QuamA4, RelativeTerms)
{
    EXPECT_THAT(combined({known(0.27), known(0.043 / 0.90), known(0.2)}), Published("0.34"));
}

// QUAM A5, through the whole evaluation: the calibration of tests/published/calibration_test.cpp as a run
// with calibration "line" (1 mL in the tube, so that mg in the tube stand for g/L), the standard deviation of
// one reading taken from the line itself. Published: 0.260 mg/L and u = 0.018.
TEST(QuamA5, CalibrationLineAsARun)
{
    const auto data = readColumns("quam_a5_calibration.csv");
    const auto line = quality::fitLine(data.at("c_mg_per_L"), data.at("absorbance")).value();
    auto method = methodOf({{1.0}, 0.5, 1.0, 0.02}, 112.41, {{340, 6300}});
    auto run = runOf(liquidSample(), {sampleTube(0, 0.0712), sampleTube(0, 0.0716)});
    for (std::size_t i = 0; i < data.at("absorbance").size(); ++i) {
        run::Standard standard;
        standard.id = u"level %1"_s.arg(i);
        standard.concentration_g_per_L = data.at("c_mg_per_L")[i];
        run.standards.push_back(standard);
        run.tubes.push_back(tubeOf(run::Role::Standard, 0, data.at("absorbance")[i]));
        run.tubes.back().standard = standard.id;
    }
    run.calibration = run::Calibration::Line;
    // A signal is the difference of two readings.
    run.uncertainty = run::UncertaintyInputs{};
    run.uncertainty->absorbance = line.residualStandardDeviation.value() / std::numbers::sqrt2;
    const auto evaluation = evaluation::evaluate(method, run);
    const auto &result = evaluation.results.at(0);
    EXPECT_THAT(result.value.value(), Published("0.260"));
    const double u = result.expandedUncertainty.value() / result.coverageFactor.value();
    EXPECT_THAT(u, Published("0.018"));
    EXPECT_NEAR(u, 0.01784461113, 1e-10); // recomputed
    ASSERT_EQ(result.budget.size(), 2U);
    const auto ofLine =
        std::ranges::find(result.budget, u"calibration line"_s, &evaluation::BudgetTerm::term);
    ASSERT_NE(ofLine, result.budget.end());
    EXPECT_NEAR(ofLine->standardUncertainty, *quality::readBack(line, 0.0714, 0)->standardUncertainty, 1e-12);
}

} // namespace plateau::published
