// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Preparing a standard by weighing, against Eurachem/CITAC CG4, Quantifying Uncertainty in Analytical
// Measurement (QUAM), 2nd edition (www.measurementuncertainty.org/guide/), example A1; its unrounded numbers
// were read through github.com/MSLNZ/GTC (docs/API/CITAC_A1.rst).

#include "core/planning/standardrecipe.h"

#include "tests/published/printed.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

namespace plateau::published {

using namespace Qt::StringLiterals;
using planning::StrengthMade;
using planning::StrengthTerm;
using run::Weighing;

namespace {

/// 100.28 mg of cadmium, purity 0.9999, in 100 mL.
Weighing cadmium()
{
    Weighing weighing;
    weighing.mass_mg = 100.28;
    weighing.purity = 0.9999;
    weighing.substanceMolarMass_g_per_mol = 112.41;
    weighing.analyteMolarMass_g_per_mol = 112.41;
    weighing.flask_mL = 100;
    return weighing;
}

/// Mass 0.05 mg; purity 0.0001 rectangular; flask 0.1 mL triangular; filling 0.02 mL; 4 °C rectangular.
planning::WeighingUncertainty statedOfWeighing()
{
    return {0.05, planning::rectangular(0.0001), planning::triangular(0.1), 0.02,
            planning::temperatureEffect_mL(100, 4)};
}

double termOf_mg_per_L(const StrengthMade &made, const QString &name)
{
    const auto found = std::ranges::find(made.budget, name, &StrengthTerm::term);
    return found == made.budget.end() ? 0 : 1000 * found->standardUncertainty_g_per_L;
}

} // namespace

TEST(QuamA1, StrengthOfTheCadmiumStandardAndItsBudget)
{
    EXPECT_THAT(planning::rectangular(0.0001), Published("0.000058"));
    EXPECT_THAT(planning::triangular(0.1), Published("0.04"));
    EXPECT_THAT(planning::temperatureEffect_mL(100, 4), Published("0.05"));

    const StrengthMade made = planning::strengthMade(cadmium(), statedOfWeighing());
    EXPECT_THAT(1000 * made.concentration_g_per_L, Published("1002.7"));
    // The guide prints 0.9, from the volume's rounded 0.07 mL; from unrounded inputs it is this.
    EXPECT_THAT(1000 * made.standardUncertainty_g_per_L, Published("0.835199"));
    EXPECT_THAT(termOf_mg_per_L(made, u"mass"_s), Published("0.49995"));
    EXPECT_THAT(termOf_mg_per_L(made, u"purity"_s), Published("0.0578967"));
    EXPECT_THAT(termOf_mg_per_L(made, u"flask"_s), Published("0.40935"));
    EXPECT_THAT(termOf_mg_per_L(made, u"filling to the mark"_s), Published("0.20054"));
    EXPECT_THAT(termOf_mg_per_L(made, u"temperature"_s), Published("0.486284"));
}

TEST(QuamA1, ThePrintedUncertaintyComesFromRoundedInputs)
{
    const StrengthMade made = planning::strengthMade(cadmium(), {0.05, 0.000058, 0.07, 0, 0});
    EXPECT_THAT(1000 * made.standardUncertainty_g_per_L, Published("0.9"));
    EXPECT_THAT(1000 * made.standardUncertainty_g_per_L, Recomputed(0.8637025902));
}

TEST(QuamA1, TheBudgetIsSortedAndItsSharesAddUp)
{
    const StrengthMade made = planning::strengthMade(cadmium(), statedOfWeighing());
    ASSERT_EQ(made.budget.size(), 5U);
    EXPECT_TRUE(
        std::ranges::is_sorted(made.budget, std::greater(), &StrengthTerm::standardUncertainty_g_per_L));
    double whole = 0;
    for (const StrengthTerm &term : made.budget)
        whole += term.share;
    EXPECT_NEAR(whole, 1, 1e-12);
    EXPECT_EQ(made.budget.front().term, u"mass"_s);
}

} // namespace plateau::published
