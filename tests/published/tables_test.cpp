// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Student's t and the critical range factors against printed tables.

#include "core/quality/distributions.h"
#include "core/quality/statistics.h"
#include "tests/published/columns.h"
#include "tests/published/printed.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace plateau::published {

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, www.itl.nist.gov/div898/handbook/eda/section3/
// eda3672.htm: upper 0.975 points. Status: published for every printed value.
TEST(StudentTable, ThirtyRowsOfTheNistHandbook)
{
    const auto table = readColumns("table_t.csv");
    ASSERT_EQ(table.at("df").size(), 30U);
    for (std::size_t i = 0; i < 30; ++i) {
        const double df = table.at("df")[i];
        const double t = quality::studentTwoSided(0.95, df);
        EXPECT_NEAR(t, table.at("t975_printed")[i], 0.000501) << df; // published, three decimals
        // Recomputed by an independent program, itself good to some eight decimals only.
        EXPECT_NEAR(t, table.at("t975")[i], 2e-8) << df;
        EXPECT_NEAR(quality::studentTwoSided(0.90, df), table.at("t95")[i], 2e-8) << df;
        EXPECT_NEAR(quality::studentTwoSided(0.99, df), table.at("t995")[i], 2e-8) << df;
    }
}

// JCGM 100:2008 (GUM), table G.2; read in the t-table test of github.com/sandialabs/suncal. Status:
// published.
TEST(GumTableG2, CoverageFactors)
{
    EXPECT_THAT(quality::studentTwoSided(0.6827, 1), Published("1.84"));
    EXPECT_THAT(quality::studentTwoSided(0.95, 1), Published("12.71"));
    EXPECT_THAT(quality::studentTwoSided(0.9973, 5), Published("5.51"));
    EXPECT_THAT(quality::studentTwoSided(0.90, 20), Published("1.72"));
    EXPECT_THAT(quality::studentTwoSided(0.99, 11), Published("3.11"));
    EXPECT_THAT(quality::studentTwoSided(0.95, 20), Published("2.09"));
}

// ISO 5725-6, critical range factors f(n) at 95 %. f(2) and f(3) read in metrology.wordpress.com, "acceptance
// control - r" (the standard itself was not readable): published. f(4) to f(10): from memory; all equal the
// rounded point of the studentised range.
TEST(Iso5725CriticalRange, FactorsForTwoToTenResults)
{
    EXPECT_THAT(quality::criticalRangeFactor(2), Published("2.8"));
    EXPECT_THAT(quality::criticalRangeFactor(3), Published("3.3"));
    const auto table = readColumns("table_critical_range.csv");
    for (std::size_t i = 0; i < table.at("n").size(); ++i) {
        const int n = static_cast<int>(table.at("n")[i]);
        EXPECT_NEAR(quality::criticalRangeFactor(n), table.at("f_printed")[i], 0.05) << n; // from memory
        EXPECT_NEAR(quality::criticalRangeFactor(n), table.at("f_exact")[i], 5e-7) << n;   // recomputed
    }
}

// Harvey, Modern Analytical Chemistry, example 4.16, page 86: mean of five against a reference value of 98.76
// %. Printed t = 3.91 comes from the mean rounded to 98.59; unrounded it is 3.952.
TEST(HarveyModernAnalyticalChemistry, MeanOfFiveAgainstAReferenceValue)
{
    const std::vector found{98.71, 98.59, 98.62, 98.44, 98.58};
    const double m = quality::mean(found).value();
    const double s = quality::standardDeviation(found).value();
    EXPECT_THAT(m, Published("98.59"));
    EXPECT_THAT(s, Published("0.0973"));
    EXPECT_THAT(std::abs(98.59 - 98.76) * std::sqrt(5.0) / s, Published("3.91"));
    EXPECT_THAT(std::abs(m - 98.76) * std::sqrt(5.0) / s, Recomputed(3.952195866));
    EXPECT_THAT(quality::studentTwoSided(0.95, 4), Published("2.78"));
}

} // namespace plateau::published
