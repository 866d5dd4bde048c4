// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Straight lines and reading back through them, against printed examples. Each test names title, section and
// address; "published" values were read there or in the public copy named, the others say what they are.

#include "core/quality/distributions.h"
#include "core/quality/line.h"
#include "core/quality/statistics.h"
#include "tests/published/columns.h"
#include "tests/published/printed.h"

#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

namespace plateau::published {

namespace {

quality::Line lineOf(const std::string &file, const std::string &x = "x", const std::string &y = "y")
{
    const auto data = readColumns(file);
    return quality::fitLine(data.at(x), data.at(y)).value();
}

double uncertaintyAt(const quality::Line &line, double y, int p)
{
    return quality::readBack(line, y, p).value().standardUncertainty.value();
}

double t95(double degreesOfFreedom)
{
    return quality::studentTwoSided(0.95, degreesOfFreedom);
}

} // namespace

// Eurachem/CITAC CG4, Quantifying Uncertainty in Analytical Measurement, 3rd ed. (2012), example A5: cadmium
// released from ceramic ware, five levels in triplicate, the sample read twice. Read in the 2nd edition
// (www.measurementuncertainty.org/guide/) and in github.com/MSLNZ/GTC, docs/API/CITAC_A5.rst.
TEST(QuamA5, CalibrationAndInversePrediction)
{
    const auto line = lineOf("quam_a5_calibration.csv", "c_mg_per_L", "absorbance");
    EXPECT_EQ(line.n, 15);
    EXPECT_THAT(line.intercept, Published("0.0087"));
    EXPECT_THAT(line.interceptStandardError.value(), Published("0.0029"));
    EXPECT_THAT(line.slope, Published("0.2410"));
    EXPECT_THAT(line.slopeStandardError.value(), Published("0.0050"));
    const double y = quality::mean(std::vector{0.0712, 0.0716}).value();
    const auto back = quality::readBack(line, y, 2).value();
    EXPECT_THAT(back.x, Published("0.260"));
    EXPECT_THAT(back.standardUncertainty.value(), Published("0.018"));
    EXPECT_THAT(back.x, Recomputed(0.2601659751037344));
    EXPECT_NEAR(back.standardUncertainty.value(), 0.01784461113, 1e-11); // recomputed
}

// ISO/TS 28037:2010, page 13: six points of known equal uncertainty 0.5 (the standard errors are scaled from
// the residual deviation to the known one). Read in github.com/MSLNZ/GTC, test/test_fitting.py.
TEST(IsoTs28037, LineWithKnownEqualUncertaintiesAndItsInverseUse)
{
    const std::vector<double> x{1, 2, 3, 4, 5, 6};
    const std::vector<double> y{3.3, 5.6, 7.1, 9.3, 10.7, 12.1};
    const auto line = quality::fitLine(x, y).value();
    EXPECT_THAT(line.intercept, Published("1.866667"));
    EXPECT_THAT(line.slope, Published("1.757143"));
    const double known = 0.5;
    const double scale = known / line.residualStandardDeviation.value();
    EXPECT_THAT(line.interceptStandardError.value() * scale, Published("0.4654747"));
    EXPECT_THAT(line.slopeStandardError.value() * scale, Published("0.1195229"));
    EXPECT_THAT(line.residualSumOfSquares / (known * known), Published("1.665"));
    const auto back = quality::readBack(line, 10.5, 1).value();
    EXPECT_THAT(back.x, Published("4.913"));
    EXPECT_THAT(back.standardUncertainty.value() * scale, Published("0.322"));
}

// Harvey, Modern Analytical Chemistry, examples 5.10 to 5.12, pages 120 to 123.
TEST(HarveyModernAnalyticalChemistry, LineAndAnUnknownReadThreeTimes)
{
    const auto line = lineOf("harvey_5_10.csv");
    EXPECT_THAT(line.slope, Published("120.706"));
    EXPECT_THAT(line.intercept, Published("0.209"));
    // From memory 0.4035, 0.965, 0.0024 and 0.007; the book's own rounding shows in the first two.
    EXPECT_NEAR(line.residualStandardDeviation.value(), 0.4032971255, 1e-9); // recomputed
    EXPECT_NEAR(line.slopeStandardError.value(), 0.9640645249, 1e-9);        // recomputed
    EXPECT_THAT(line.interceptStandardError.value(), FromMemory("0.292"));
    const double y = quality::mean(std::vector{29.32, 29.16, 29.51}).value();
    const auto back = quality::readBack(line, y, 3).value();
    EXPECT_THAT(back.x, Published("0.241"));
    EXPECT_THAT(back.standardUncertainty.value(), FromMemory("0.0024"));
    EXPECT_THAT(t95(4) * back.standardUncertainty.value(), FromMemory("0.007"));
}

// Harvey, Analytical Chemistry 2.0, practice exercise 5.4, page 205: Beer's law. The printed x are rounded,
// so slope and intercept (29.57, 0.0015, 0.3007) come out a little beside the print.
TEST(HarveyAnalyticalChemistry2, BeersLawPracticeExercise)
{
    const auto line = lineOf("harvey_practice_5_4.csv", "c_mol_per_l", "absorbance");
    EXPECT_NEAR(line.slope, 29.57, 0.001 * 29.57);      // published, within 0.1 %
    EXPECT_THAT(line.slope, Recomputed(29.59273291));   // recomputed
    EXPECT_NEAR(line.intercept, 0.001392717109, 1e-12); // recomputed, printed 0.0015
    EXPECT_THAT(line.residualStandardDeviation.value(), PublishedWithin("0.001997", 1.0));
    EXPECT_NEAR(line.slopeStandardError.value(), 0.3006250708, 1e-9); // recomputed, printed 0.3007
    EXPECT_THAT(line.interceptStandardError.value(), Published("0.001441"));
    EXPECT_THAT(t95(4) * line.interceptStandardError.value(), Published("0.0040"));
}

// Harvey, Analytical Chemistry 2.0/2.1, problem 5.8, cadmium by voltammetry at pH 4.6. The standard error of
// the slope is misprinted as 0.02278; the interval printed beside it uses 0.01278.
TEST(HarveyAnalyticalChemistry2, CadmiumAtPh46WithAMisprintedStandardError)
{
    const auto line = lineOf("harvey_5_8_pH46.csv");
    EXPECT_THAT(line.slope, Published("0.477"));
    EXPECT_THAT(line.intercept, Published("-2.69"));
    EXPECT_THAT(line.residualStandardDeviation.value(), Published("0.7550"));
    EXPECT_THAT(line.slopeStandardError.value(), Recomputed(0.01278321773));
    EXPECT_THAT(line.interceptStandardError.value(), Published("0.7258"));
    EXPECT_THAT(t95(4) * line.slopeStandardError.value(), PublishedWithin("0.036", 1.0));
}

// The same problem at pH 3.7 with an unknown; y data from memory, confirmed by the published residual
// deviation. The book reads 49.9 from the rounded line; unrounded it is 49.73.
TEST(HarveyAnalyticalChemistry2, CadmiumAtPh37WithAnUnknown)
{
    const auto line = lineOf("harvey_5_8_pH37.csv");
    EXPECT_THAT(line.slope, Published("1.43"));
    EXPECT_THAT(line.intercept, Published("-5.02"));
    EXPECT_THAT(line.residualStandardDeviation.value(), Published("2.826"));
    const auto back = quality::readBack(line, 66.3, 1).value();
    EXPECT_THAT(back.x, Recomputed(49.72661369));
    EXPECT_THAT(back.standardUncertainty.value(), Recomputed(2.12891312)); // printed 2.14
    EXPECT_THAT(t95(4) * back.standardUncertainty.value(), Published("5.9"));
}

// Fluorescein calibration (data of Miller and Miller, Statistics and Chemometrics for Analytical Chemistry)
// in a public worked example; address not kept.
TEST(Fluorescein, InversePredictionFromOneAndFromSixReadings)
{
    const auto line = lineOf("fluorescein.csv", "pg_per_ml", "signal");
    EXPECT_THAT(line.slope, Published("1.9304"));
    EXPECT_THAT(line.slopeStandardError.value(), Published("0.0409"));
    EXPECT_THAT(line.intercept, Published("1.5179"));
    EXPECT_THAT(line.interceptStandardError.value(), Published("0.2949"));
    EXPECT_THAT(line.residualStandardDeviation.value(), Published("0.43285"));
    EXPECT_THAT(line.rSquared.value(), Published("0.99776"));
    const auto back = quality::readBack(line, 13.5, 1).value();
    EXPECT_THAT(back.x, Published("6.207"));
    EXPECT_THAT(back.standardUncertainty.value(), Published("0.2398"));
    EXPECT_THAT(back.x - t95(5) * *back.standardUncertainty, Published("5.59"));
    EXPECT_THAT(back.x + t95(5) * *back.standardUncertainty, Published("6.82"));
    const double six = uncertaintyAt(line, 13.5, 6);
    EXPECT_THAT(six, Published("0.1248"));
    EXPECT_THAT(back.x - t95(5) * six, Published("5.89"));
    EXPECT_THAT(back.x + t95(5) * six, Published("6.53"));
    EXPECT_NEAR(uncertaintyAt(line, 2.9, 1), 0.264569771, 1e-9);   // recomputed
    EXPECT_NEAR(uncertaintyAt(line, 23.0, 1), 0.2631932593, 1e-9); // recomputed
}

// Massart et al. 1997, example 1, as in the tests of the R package chemCal (github.com/cran/chemCal,
// tests/testthat).
TEST(MassartExample1, InversePredictionFromOneAndFromFiveReadings)
{
    const auto line = lineOf("massart_ex1.csv");
    const auto low = quality::readBack(line, 15, 1).value();
    EXPECT_THAT(low.x, Published("6.09381"));
    EXPECT_THAT(low.standardUncertainty.value(), Published("1.767278"));
    EXPECT_THAT(t95(4) * *low.standardUncertainty, Published("4.906751"));
    const auto high = quality::readBack(line, 90, 1).value();
    EXPECT_THAT(high.x, Published("43.93983"));
    EXPECT_THAT(high.standardUncertainty.value(), Published("1.767747"));
    EXPECT_THAT(uncertaintyAt(line, 90, 5), Published("1.141204"));
    EXPECT_THAT(t95(4) * uncertaintyAt(line, 90, 5), Published("3.168489"));
}

// Nielsen, Food Analysis, chapter 4, problem 4: sodium, the unknown read three times; as quoted in
// github.com/Tai-ShengYeh/food-analysis-statistics.
TEST(NielsenFoodAnalysis, SodiumCalibration)
{
    const auto line = lineOf("nielsen_sodium.csv");
    EXPECT_THAT(line.slope, Published("0.0504"));
    EXPECT_THAT(line.intercept, Published("-0.0029"));
    EXPECT_THAT(line.rSquared.value(), Published("0.9990"));
    const auto back = quality::readBack(line, 0.555, 3).value();
    EXPECT_THAT(back.x, Published("11.1"));
    EXPECT_THAT(2 * back.standardUncertainty.value(), Published("0.4"));
    EXPECT_NEAR(back.standardUncertainty.value(), 0.208586234, 1e-9); // recomputed
}

// Bevington, Data Reduction and Error Analysis, table 6.1; read in github.com/MSLNZ/GTC, test/test_type_a.py.
TEST(Bevington, Table61)
{
    const auto line = lineOf("bevington.csv");
    EXPECT_THAT(line.intercept, Published("-0.222142"));
    EXPECT_THAT(line.interceptStandardError.value(), Published("0.06962967"));
    EXPECT_THAT(line.slope, Published("0.992780"));
    EXPECT_THAT(line.slopeStandardError.value(), Published("0.002636608"));
}

// Walpole and Myers, Probability and Statistics for Engineers, 33 points; read in github.com/MSLNZ/GTC,
// test/test_type_a.py.
TEST(WalpoleMyers, LineThroughThirtyThreePoints)
{
    const auto line = lineOf("walpole.csv");
    EXPECT_EQ(line.n, 33);
    EXPECT_THAT(line.intercept, Published("3.82963"));
    EXPECT_THAT(line.interceptStandardError.value(), Published("1.768447"));
    EXPECT_THAT(line.slope, Published("0.90364"));
    EXPECT_THAT(line.slopeStandardError.value(), PublishedWithin("0.05011898", 1.0));
    // The line's own uncertainty of y at x = 20, back through the line: u(y) = slope x u(x).
    EXPECT_THAT(uncertaintyAt(line, line.intercept + 20 * line.slope, 0) * line.slope, Published("0.877939"));
}

} // namespace plateau::published
