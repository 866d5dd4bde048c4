// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/standardrecipe.h"

#include "tests/support/print.h"
#include "tests/support/random.h"

#include <gtest/gtest.h>

#include <cmath>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using run::Weighing;
using test::Random;

namespace {

// Molar masses by addition of the standard atomic weights (from memory: Na 22.990, K 39.098, S 32.06, O
// 15.999, H 1.008).
constexpr double sulphurDioxide_g_per_mol = 64.058;
constexpr double sodiumSulphite_g_per_mol = 126.037;
constexpr double water_g_per_mol = 18.015;
constexpr double potassiumMetabisulphite_g_per_mol = 222.311;

Weighing sulphite(double substance_g_per_mol, double perMolecule = 1)
{
    Weighing weighing;
    weighing.substanceMolarMass_g_per_mol = substance_g_per_mol;
    weighing.analyteMolarMass_g_per_mol = sulphurDioxide_g_per_mol;
    weighing.analytePerMolecule = perMolecule;
    weighing.flask_mL = 1000;
    return weighing;
}

} // namespace

// Common practice, no source: 590 mg of anhydrous sodium sulphite in 1 L for 300 mg/L of sulphur dioxide.
TEST(StandardRecipe, AnhydrousSodiumSulphiteForThreeHundredMilligrams)
{
    EXPECT_NEAR(massToWeigh_mg(0.3, sulphite(sodiumSulphite_g_per_mol)), 590, 1);
    Weighing weighed = sulphite(sodiumSulphite_g_per_mol);
    weighed.mass_mg = 590;
    EXPECT_NEAR(strengthMade(weighed, {}).concentration_g_per_L, 0.300, 0.0005);
}

TEST(StandardRecipe, WaterOfCrystallisationIsWeighedToo)
{
    const double hydrate_g_per_mol = sodiumSulphite_g_per_mol + 7 * water_g_per_mol;
    const double anhydrous_mg = massToWeigh_mg(0.3, sulphite(sodiumSulphite_g_per_mol));
    EXPECT_NEAR(massToWeigh_mg(0.3, sulphite(hydrate_g_per_mol)),
                anhydrous_mg * 252.142 / sodiumSulphite_g_per_mol, 1e-9);
}

TEST(StandardRecipe, MetabisulphiteGivesTwoSulphurDioxides)
{
    // 0.3 x 222.311 / (2 x 64.058) = 0.52057 g in a litre
    EXPECT_NEAR(massToWeigh_mg(0.3, sulphite(potassiumMetabisulphite_g_per_mol, 2)), 520.57, 0.01);
}

TEST(StandardRecipe, AnImpureSubstanceAndASmallerFlaskCount)
{
    Weighing weighing = sulphite(sodiumSulphite_g_per_mol);
    weighing.purity = 0.98;
    weighing.flask_mL = 100;
    EXPECT_NEAR(massToWeigh_mg(0.3, weighing),
                massToWeigh_mg(0.3, sulphite(sodiumSulphite_g_per_mol)) / 10 / 0.98, 1e-9);
}

TEST(StandardRecipe, WhatWasWeighedGivesTheStrengthThatWasWanted)
{
    test::forSeeds(100, [](Random &random) {
        Weighing weighing;
        weighing.purity = random.between(0.5, 1);
        weighing.substanceMolarMass_g_per_mol = random.between(20, 800);
        weighing.analyteMolarMass_g_per_mol = random.between(20, 800);
        weighing.analytePerMolecule = random.whole(1, 4);
        weighing.flask_mL = random.magnitude(5, 2000);
        const double wanted_g_per_L = random.magnitude(0.001, 100);
        weighing.mass_mg = massToWeigh_mg(wanted_g_per_L, weighing);
        EXPECT_NEAR(strengthMade(weighing, {}).concentration_g_per_L, wanted_g_per_L, 1e-12 * wanted_g_per_L);
    });
}

TEST(StrengthMade, UncertaintyAgreesWithSmallChangesOfEveryInput)
{
    test::forSeeds(100, [](Random &random) {
        Weighing weighing = sulphite(random.between(50, 300), random.whole(1, 2));
        weighing.mass_mg = random.between(10, 1000);
        weighing.purity = random.between(0.5, 1);
        weighing.flask_mL = random.magnitude(5, 1000);
        const WeighingUncertainty uncertainty{0.1, 0.001, 0.02, 0.03, 0.04};
        const auto moved = [&](double mass_mg, double purity, double flask_mL) {
            constexpr double part = 1e-4;
            const auto at = [&](double sign) {
                Weighing other = weighing;
                other.mass_mg += sign * part * mass_mg;
                other.purity += sign * part * purity;
                other.flask_mL += sign * part * flask_mL;
                return run::preparedConcentration_g_per_L(other);
            };
            return (at(1) - at(-1)) / (2 * part);
        };
        const double expected =
            std::sqrt(std::pow(moved(0.1, 0, 0), 2) + std::pow(moved(0, 0.001, 0), 2) +
                      std::pow(moved(0, 0, std::sqrt(0.02 * 0.02 + 0.03 * 0.03 + 0.04 * 0.04)), 2));
        EXPECT_NEAR(strengthMade(weighing, uncertainty).standardUncertainty_g_per_L, expected,
                    1e-6 * expected);
    });
}

TEST(StrengthMade, NothingUncertainHasNoBudget)
{
    Weighing weighing = sulphite(sodiumSulphite_g_per_mol);
    weighing.mass_mg = 590;
    const StrengthMade made = strengthMade(weighing, {});
    EXPECT_EQ(made.standardUncertainty_g_per_L, 0);
    EXPECT_TRUE(made.budget.empty());
    const StrengthMade massOnly = strengthMade(weighing, {0.5, 0, 0, 0, 0});
    ASSERT_EQ(massOnly.budget.size(), 1U);
    EXPECT_EQ(massOnly.budget[0].term, u"mass"_s);
    EXPECT_NEAR(massOnly.budget[0].share, 1, 1e-12);
    EXPECT_NEAR(massOnly.standardUncertainty_g_per_L, massOnly.concentration_g_per_L * 0.5 / 590, 1e-15);
}

} // namespace plateau::planning
