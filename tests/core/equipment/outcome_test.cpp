// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/outcome.h"

#include "core/equipment/protocol.h"
#include "core/equipment/water.h"
#include "tests/support/keyedchecks.h"
#include "tests/support/print.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

namespace plateau::test {
namespace {

using namespace Qt::StringLiterals;
using namespace equipment;

const QDate day(2026, 3, 2);

QString firstProblem(const Item &item, const Check &check)
{
    const assay::Problems problems = problemsOf(item, check, day);
    return problems.empty() ? QString() : problems.front().pointer + u' ' + problems.front().message;
}

TEST(VolumeOutcome, SystematicAndRandomErrorAreHeldAgainstTheLimitsOfThePipette)
{
    const Check check = volumeCheck(pistonPipette(), 199.4, day);
    const auto outcome = outcomeOf(pistonPipette(), check);
    ASSERT_TRUE(outcome);
    const double z = zFactor_uL_per_mg({21, 101.3, 50});
    ASSERT_EQ(outcome->findings.size(), 2U);
    EXPECT_NEAR(outcome->findings[0].value, 199.4 * z - 200, 1e-9);
    EXPECT_EQ(outcome->findings[0].lowest, -1.6);
    EXPECT_EQ(outcome->findings[0].highest, 1.6);
    EXPECT_EQ(outcome->findings[0].source, u"ISO 8655-2:2002"_s);
    const double s_uL = 0.2 * std::sqrt(10.0 / 9) * z;
    EXPECT_NEAR(outcome->findings[1].value, s_uL, 1e-9);
    EXPECT_EQ(outcome->findings[1].highest, 0.6);
    EXPECT_TRUE(outcome->passed);
    EXPECT_NEAR(*outcome->figures.volume_percent, 100 * std::hypot(199.4 * z - 200, s_uL) / 200, 1e-9);
    EXPECT_EQ(foundText(outcome->findings[0]), u"0.01\u00a0µL"_s);
    EXPECT_EQ(limitText(outcome->findings[0]), u"-1.60 to 1.60\u00a0µL"_s);
    EXPECT_EQ(limitText(outcome->findings[1]), u"at most 0.60\u00a0µL"_s);
}

TEST(VolumeOutcome, FailsBeyondTheSystematicLimitAlone)
{
    const auto outcome = outcomeOf(pistonPipette(), volumeCheck(pistonPipette(), 197, day));
    ASSERT_TRUE(outcome);
    EXPECT_FALSE(outcome->findings[0].passed);
    EXPECT_TRUE(outcome->findings[1].passed);
    EXPECT_FALSE(outcome->passed);
}

TEST(VolumeOutcome, EvaporationIsAddedToEachMass)
{
    Check check = volumeCheck(pistonPipette(), 199.4, day);
    check.conditions[u"evaporation_mg"_s] = 0.3;
    const auto outcome = outcomeOf(pistonPipette(), check);
    ASSERT_TRUE(outcome);
    EXPECT_NEAR(outcome->findings[0].value, 199.7 * zFactor_uL_per_mg({21, 101.3, 50}) - 200, 1e-9);
}

TEST(VolumeOutcome, AnOwnLimitHasItsOwnSource)
{
    Check check = volumeCheck(pistonPipette(), 199.4, day);
    check.conditions[u"random_limit_uL"_s] = 0.1;
    check.source = u"instruction 12"_s;
    const auto outcome = outcomeOf(pistonPipette(), check);
    ASSERT_TRUE(outcome);
    EXPECT_EQ(outcome->findings[0].source, u"ISO 8655-2:2002"_s);
    EXPECT_EQ(outcome->findings[1].source, u"instruction 12"_s);
    EXPECT_FALSE(outcome->passed);
}

TEST(VolumeOutcome, OneWeighingShortIsNotJudged)
{
    Check check = volumeCheck(pistonPipette(), 199.4, day);
    check.rows[9][1].reset();
    EXPECT_FALSE(outcomeOf(pistonPipette(), check));
    EXPECT_EQ(firstProblem(pistonPipette(), check),
              u"/rows hold 9 of 10 weighings of 200 µL; key the others, or leave this volume out"_s);
}

TEST(VolumeOutcome, AFlaskIsHeldAgainstClassAAtTwentyDegrees)
{
    Item flask;
    flask.kind = Kind::Flask;
    flask.name = u"flask 50 mL"_s;
    flask.nominal_mL = 50;
    flask.every_days = {{Aspect::Volume, 365}};
    Check check = blankCheck(flask, Aspect::Volume, day);
    for (std::size_t i = 0; i < 3; ++i)
        check.rows[i][0] = 49.85;
    const auto outcome = outcomeOf(flask, check);
    ASSERT_TRUE(outcome);
    const double found_mL = 49.85 * zFactor_uL_per_mg({21, 101.3, 50}) * (1 - 9.9e-6);
    EXPECT_NEAR(outcome->findings[0].value, found_mL - 50, 1e-9);
    EXPECT_EQ(outcome->findings[0].highest, 0.06);
    EXPECT_EQ(outcome->findings[1].value, 0);
    EXPECT_TRUE(limitText(outcome->findings[1]).isEmpty());
    EXPECT_TRUE(outcome->passed);
    EXPECT_NEAR(*outcome->figures.volume_percent, 2 * std::abs(found_mL - 50), 1e-9);
}

TEST(PhotometerOutcome, AWavelengthIsHeldAgainstThePharmacopoeia)
{
    Check check = blankCheck(photometer(), Aspect::Wavelength, day);
    check.rows[2][1] = 362.4;
    check.rows[3][1] = 534.0;
    auto outcome = outcomeOf(photometer(), check);
    ASSERT_TRUE(outcome);
    ASSERT_EQ(outcome->findings.size(), 2U);
    EXPECT_NEAR(outcome->findings[0].value, 0.9, 1e-9);
    EXPECT_NEAR(outcome->findings[1].value, -2.3, 1e-9);
    EXPECT_TRUE(outcome->passed) << "1 nm below 400 nm, 3 nm from there";
    check.rows[2][1] = 362.6;
    outcome = outcomeOf(photometer(), check);
    EXPECT_FALSE(outcome->passed);
}

TEST(PhotometerOutcome, TheScaleIsTheRootMeanSquareOfItsDeviations)
{
    Check check = blankCheck(photometer(), Aspect::Absorbance, day);
    check.conditions[u"weak_mg_per_L"_s] = 60;
    check.rows[1][1] = 0.867 * 1.01;   // 144.5 x 1.01
    check.rows[3][1] = 0.6438 * 0.995; // 107.3 x 0.995
    const auto outcome = outcomeOf(photometer(), check);
    ASSERT_TRUE(outcome);
    ASSERT_EQ(outcome->findings.size(), 2U);
    EXPECT_NEAR(outcome->findings[0].value, 145.945, 1e-9);
    EXPECT_TRUE(outcome->passed);
    EXPECT_NEAR(*outcome->figures.scale_percent, std::sqrt((1.0 + 0.25) / 2), 1e-9);
}

TEST(PhotometerOutcome, ASolutionThatWasReadNeedsItsStrength)
{
    Check check = blankCheck(photometer(), Aspect::Absorbance, day);
    check.rows[4][1] = 0.95;
    EXPECT_EQ(firstProblem(photometer(), check),
              u"/conditions/strong_mg_per_L is missing, though that solution was read; key it"_s);
}

TEST(PhotometerOutcome, TheLargerScatterAndTheLastDigitMakeTheReadingsUncertainty)
{
    Check check = blankCheck(photometer(), Aspect::Noise, day);
    for (std::size_t i = 0; i < 10; ++i) {
        check.rows[i][0] = i % 2 == 0 ? 0.0 : 0.001;
        check.rows[i][1] = i % 2 == 0 ? 0.702 : 0.704;
    }
    const auto outcome = outcomeOf(photometer(), check);
    ASSERT_TRUE(outcome);
    ASSERT_EQ(outcome->findings.size(), 3U);
    EXPECT_NEAR(outcome->findings[1].value, 0.0005, 1e-12);
    const double s = 0.001 * std::sqrt(10.0 / 9);
    EXPECT_NEAR(outcome->findings[2].value, s, 1e-12);
    EXPECT_NEAR(*outcome->figures.absorbance, std::hypot(s, 0.001 / std::sqrt(12.0)), 1e-12);
    EXPECT_TRUE(outcome->passed);
}

TEST(OtherOutcomes, ABalanceThermometerAndCuvettes)
{
    Item balance;
    balance.kind = Kind::Balance;
    balance.name = u"B-1"_s;
    balance.every_days = {{Aspect::Weighing, 30}};
    Check check = blankCheck(balance, Aspect::Weighing, day);
    EXPECT_EQ(firstProblem(balance, check), u"/conditions/repeat_limit_mg is missing; key a number"_s);
    check.conditions[u"repeat_limit_mg"_s] = 0.2;
    check.conditions[u"deviation_limit_mg"_s] = 0.5;
    for (std::size_t i = 0; i < 6; ++i)
        check.rows[i][0] = i % 2 == 0 ? 100.0001 : 100.0003;
    check.rows[0][1] = 50;
    check.rows[0][2] = 50.0006;
    const auto weighed = outcomeOf(balance, check);
    ASSERT_TRUE(weighed);
    EXPECT_NEAR(weighed->findings[0].value, 0.1 * std::sqrt(6.0 / 5), 1e-6);
    EXPECT_FALSE(weighed->findings[1].passed);
    EXPECT_NEAR(*weighed->figures.weighing_mg, std::hypot(0.1 * std::sqrt(6.0 / 5), 0.6 / std::sqrt(3.0)),
                1e-6);

    Item thermometer;
    thermometer.kind = Kind::Thermometer;
    thermometer.name = u"T-1"_s;
    thermometer.every_days = {{Aspect::Temperature, 365}};
    check = blankCheck(thermometer, Aspect::Temperature, day);
    check.rows[0] = {20.0, 20.3};
    check.rows[1] = {37.0, 36.8};
    const auto warm = outcomeOf(thermometer, check);
    ASSERT_TRUE(warm);
    EXPECT_TRUE(warm->passed);
    EXPECT_NEAR(*warm->figures.temperature_C, 0.3 / std::sqrt(3.0), 1e-9);

    Item cuvettes;
    cuvettes.kind = Kind::Cuvettes;
    cuvettes.name = u"set 1"_s;
    cuvettes.every_days = {{Aspect::Match, 365}};
    check = blankCheck(cuvettes, Aspect::Match, day);
    check.rows[0][0] = 0.031;
    check.rows[1][0] = 0.043;
    const auto match = outcomeOf(cuvettes, check);
    ASSERT_TRUE(match);
    EXPECT_FALSE(match->passed);
    EXPECT_NEAR(*match->figures.pathLength_percent, 0.1 / std::sqrt(3.0), 1e-12);
}

TEST(OtherOutcomes, CautionsStandWhereTheSolutionsAreHazardous)
{
    EXPECT_TRUE(protocolFor(photometer(), Aspect::Absorbance).cautions.join(u' ').contains(u"cancer"_s));
    EXPECT_TRUE(
        protocolFor(photometer(), Aspect::Wavelength).cautions.join(u' ').contains(u"perchloric acid"_s));
    for (const Aspect aspect : {Aspect::Absorbance, Aspect::Wavelength})
        EXPECT_TRUE(
            protocolFor(photometer(), aspect).cautions.front().startsWith(u"Follow your local rules"_s));
}

} // namespace
} // namespace plateau::test
