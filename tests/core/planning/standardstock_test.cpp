// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/standardstock.h"

#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <cmath>

namespace plateau::test {
namespace {

using namespace Qt::StringLiterals;
using namespace planning;

const QDateTime made(QDate(2026, 3, 2), QTime(8, 0), Qt::UTC);

/// 99.0 ± 0.6 %, 2.0 ± 0.3 % of water, 200 g/mol.
Substance substance()
{
    Substance of;
    of.name = u"example acid"_s;
    of.purity = 0.99;
    of.purityHalfWidth = 0.006;
    of.water = 0.02;
    of.waterHalfWidth = 0.003;
    of.molarMass_g_per_mol = 200;
    return of;
}

/// Two portions, 100 mg together, in 100 mL, of an analyte of 100 g/mol that is in it twice.
Preparation preparation()
{
    Preparation preparation;
    preparation.name = u"STD-17"_s;
    preparation.measurand = u"acid"_s;
    preparation.analyteMolarMass_g_per_mol = 100;
    preparation.analytePerMolecule = 2;
    preparation.masses_mg = {60, 40};
    preparation.mass_u_mg = 0.1;
    preparation.flask_mL = 100;
    preparation.flask_u_mL = 0.06;
    preparation.madeAt = made;
    preparation.lossPerHour = 0.02;
    return preparation;
}

TEST(StandardStock, StrengthTakesPurityWaterAndBothPortions)
{
    const StrengthMade strength = strengthOf(substance(), preparation());
    EXPECT_NEAR(strength.concentration_g_per_L, 100 * 0.99 * 0.98 * 2 * 100 / 200 / 100, 1e-12);
    const double mass = 0.1 * std::sqrt(2.0) / 100;
    const double purity = std::hypot(0.98 * 0.006, 0.99 * 0.003) / std::sqrt(3.0) / (0.99 * 0.98);
    const double flask = 0.06 / 100;
    const double temperature = 2.1e-4 * 4 / std::sqrt(3.0);
    const double relative =
        std::sqrt(mass * mass + purity * purity + flask * flask + temperature * temperature);
    EXPECT_NEAR(strength.standardUncertainty_g_per_L / strength.concentration_g_per_L, relative, 1e-9);
    ASSERT_EQ(strength.budget.size(), 4U);
    EXPECT_EQ(strength.budget[0].term, u"purity"_s);
}

TEST(StandardStock, StrengthCountsDown)
{
    EXPECT_EQ(strengthAt_g_per_L(0.2, preparation(), made), 0.2);
    EXPECT_EQ(strengthAt_g_per_L(0.2, preparation(), made.addSecs(-60)), 0.2) << "not more than when made";
    EXPECT_NEAR(strengthAt_g_per_L(0.2, preparation(), made.addSecs(5400)), 0.2 * std::pow(0.98, 1.5), 1e-12);
}

TEST(StandardStock, GoodUntilTheEarlierOfLossAndRule)
{
    // 0.98^h = 0.85 after 8.04 h.
    EXPECT_EQ(goodUntil(preparation()), made.addSecs(482 * 60));
    Preparation ruled = preparation();
    ruled.useBy = made.addSecs(3600);
    EXPECT_EQ(goodUntil(ruled), made.addSecs(3600));
    ruled.lossPerHour = 0;
    ruled.useBy.reset();
    EXPECT_FALSE(goodUntil(ruled));
}

TEST(StandardStock, AliveUntilThenUnlessThrownAway)
{
    HeldPreparation held{1, substance(), preparation(), u"I. K."_s, {}};
    EXPECT_TRUE(isAlive(held, made.addSecs(482 * 60)));
    EXPECT_FALSE(isAlive(held, made.addSecs(482 * 60 + 1)));
    held.discarded = u"spilt"_s;
    EXPECT_FALSE(isAlive(held, made));
}

TEST(StandardStock, ARunTakesItWithItsUncertainty)
{
    const HeldPreparation held{1, substance(), preparation(), u"I. K."_s, {}};
    const run::Standard standard = standardOf(held);
    const StrengthMade strength = strengthOf(substance(), preparation());
    EXPECT_EQ(standard.id, u"STD-17"_s);
    EXPECT_EQ(standard.measurand, u"acid"_s);
    EXPECT_EQ(standard.concentration_g_per_L, strength.concentration_g_per_L);
    EXPECT_EQ(standard.preparedAt, made);
    EXPECT_EQ(standard.lossPerHour, 0.02);
    EXPECT_NEAR(*standard.uncertainty_percent,
                100 * strength.standardUncertainty_g_per_L / strength.concentration_g_per_L, 1e-12);
}

TEST(StandardStock, ARunsStandardIsKnownByNameAndMinute)
{
    const HeldPreparation held{1, substance(), preparation(), u"I. K."_s, {}};
    run::Standard standard;
    standard.id = u"std-17 "_s;
    EXPECT_TRUE(isStandardOf(held, standard)) << "the run does not say when";
    standard.preparedAt = made.addSecs(59);
    EXPECT_TRUE(isStandardOf(held, standard));
    standard.preparedAt = made.addSecs(60);
    EXPECT_FALSE(isStandardOf(held, standard)) << "another one of that name";
    standard.id = u"STD"_s;
    standard.preparedAt.reset();
    EXPECT_FALSE(isStandardOf(held, standard));
}

TEST(StandardStock, WhatIsWrongIsNamed)
{
    EXPECT_TRUE(problemsOf(substance()).empty());
    EXPECT_TRUE(problemsOf(preparation(), made).empty());
    Substance of = substance();
    of.purity = 1.2;
    of.molarMass_g_per_mol = 0;
    ASSERT_EQ(problemsOf(of).size(), 2U);
    EXPECT_EQ(problemsOf(of)[0].pointer, u"/purity"_s);
    EXPECT_EQ(problemsOf(of)[1].pointer, u"/molarMass_g_per_mol"_s);
    Preparation bad = preparation();
    bad.masses_mg = {};
    bad.lossPerHour = 1;
    bad.useBy = made;
    const assay::Problems problems = problemsOf(bad, made.addSecs(-1));
    ASSERT_EQ(problems.size(), 4U);
    EXPECT_EQ(problems[0].pointer, u"/masses_mg"_s);
    EXPECT_EQ(problems[1].pointer, u"/lossPerHour"_s);
    EXPECT_EQ(problems[2].pointer, u"/madeAt"_s);
    EXPECT_EQ(problems[3].pointer, u"/useBy"_s);
}

} // namespace
} // namespace plateau::test
