// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Certified values of the NIST/ITL Statistical Reference Datasets (StRD), www.itl.nist.gov/div898/strd/,
// univariate summary statistics and linear regression, data set files *.dat. Status of every certified value:
// published, read in stored copies of the files (github.com/usnistgov/dataplot lib/data and two others).

#include "core/quality/line.h"
#include "core/quality/statistics.h"
#include "tests/published/columns.h"

#include <gtest/gtest.h>

#include <cmath>

namespace plateau::published {

namespace {

/// How many decimal digits agree with the certified value.
double goodDigits(double value, double certified)
{
    if (value == certified)
        return 17;
    return -std::log10(std::abs((value - certified) / certified));
}

struct Univariate {
    const char *file;
    double mean;
    double standardDeviation;
    double autocorrelation;
    // About one digit less than a careful program in double precision reaches on the set.
    double meanDigits;
    double deviationDigits;
    double autocorrelationDigits;
};

void PrintTo(const Univariate &set, std::ostream *out)
{
    *out << set.file;
}

class StrdUnivariate : public ::testing::TestWithParam<Univariate>
{
};

TEST_P(StrdUnivariate, AgreesWithTheCertifiedValues)
{
    const Univariate &set = GetParam();
    const auto y = readColumns(set.file).at("y");
    EXPECT_GE(goodDigits(quality::mean(y).value(), set.mean), set.meanDigits);
    EXPECT_GE(goodDigits(quality::standardDeviation(y).value(), set.standardDeviation), set.deviationDigits);
    EXPECT_GE(goodDigits(quality::lag1Autocorrelation(y).value(), set.autocorrelation),
              set.autocorrelationDigits);
}

// The data of NumAcc3 and NumAcc4 are not exact in binary: no program in double precision does better.
INSTANTIATE_TEST_SUITE_P(
    Sets, StrdUnivariate,
    ::testing::Values(
        Univariate{"strd_numacc1.csv", 10000002, 1, -0.5, 15, 15, 15},
        Univariate{"strd_numacc2.csv", 1.2, 0.1, -0.999, 13, 13.5, 12.7},
        Univariate{"strd_numacc3.csv", 1000000.2, 0.1, -0.999, 14, 8.5, 10},
        Univariate{"strd_numacc4.csv", 10000000.2, 0.1, -0.999, 13, 7.3, 8},
        Univariate{"strd_michelso.csv", 299.852400000000, 0.0790105478190518, 0.535199668621283, 14.7, 12.8,
                   12.4},
        Univariate{"strd_lew.csv", -177.435000000000, 277.332168044316, -0.307304800605679, 14.5, 14, 14},
        Univariate{"strd_mavro.csv", 2.00185600000000, 0.000429123454003053, 0.937989183438248, 14.5, 12,
                   12.7},
        Univariate{"strd_lottery.csv", 518.958715596330, 291.699727470969, -0.120948622967393, 14, 14, 14},
        Univariate{"strd_pidigits.csv", 4.53480000000000, 2.86733906028871, -0.00355099287237972, 14.5, 13.9,
                   12}));

} // namespace

TEST(StrdNorris, LineAgreesWithTheCertifiedValues)
{
    const auto data = readColumns("strd_norris.csv");
    const auto line = quality::fitLine(data.at("x"), data.at("y"));
    ASSERT_TRUE(line);
    EXPECT_GE(goodDigits(line->intercept, -0.262323073774029), 12.3);
    EXPECT_GE(goodDigits(line->slope, 1.00211681802045), 13.4);
    EXPECT_GE(goodDigits(line->interceptStandardError.value(), 0.232818234301152), 13);
    EXPECT_GE(goodDigits(line->slopeStandardError.value(), 0.429796848199937e-3), 13);
    EXPECT_GE(goodDigits(line->residualStandardDeviation.value(), 0.884796396144373), 13);
    EXPECT_GE(goodDigits(line->residualSumOfSquares, 26.6173985294224), 12.7);
    EXPECT_GE(goodDigits(line->rSquared.value(), 0.999993745883712), 13.5);
}

TEST(StrdNoInt1, LineThroughTheOriginAgreesWithTheCertifiedValues)
{
    const auto data = readColumns("strd_noint1.csv");
    const auto line = quality::fitLineThroughOrigin(data.at("x"), data.at("y"));
    ASSERT_TRUE(line);
    EXPECT_GE(goodDigits(line->slope, 2.07438016528926), 13.7);
    EXPECT_GE(goodDigits(line->slopeStandardError.value(), 0.165289256198347e-1), 13.7);
    EXPECT_GE(goodDigits(line->residualStandardDeviation.value(), 3.56753034006338), 13.7);
    EXPECT_GE(goodDigits(line->residualSumOfSquares, 127.272727272727), 13.7);
    EXPECT_GE(goodDigits(line->rSquared.value(), 0.999365492298663), 13.7);
}

TEST(StrdNoInt2, LineThroughTheOriginAgreesWithTheCertifiedValues)
{
    const auto data = readColumns("strd_noint2.csv");
    const auto line = quality::fitLineThroughOrigin(data.at("x"), data.at("y"));
    ASSERT_TRUE(line);
    EXPECT_GE(goodDigits(line->slope, 0.727272727272727), 13.7);
    EXPECT_GE(goodDigits(line->slopeStandardError.value(), 0.420827318078432e-1), 13.7);
    EXPECT_GE(goodDigits(line->residualStandardDeviation.value(), 0.369274472937998), 13.7);
    EXPECT_GE(goodDigits(line->residualSumOfSquares, 0.272727272727273), 13.7);
    EXPECT_GE(goodDigits(line->rSquared.value(), 0.993348115299335), 13.7);
}

} // namespace plateau::published
