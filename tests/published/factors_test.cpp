// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Method factors: the concentration that one unit of absorbance stands for, from a method's volumes, molar
// mass and absorptivity. Each block names title, section, address, and what of it was read there and what is
// from memory.

#include "tests/published/pipetting.h"
#include "tests/published/printed.h"

#include <gtest/gtest.h>

namespace plateau::published {

// OIV-MA-AS313-11 (R2009), L-malic acid, sections 3.3 to 5,
// https://studylibfr.com/doc/951654/acide-l-malique. Published: buffer 1.00, NAD 0.20, water 0.90, GOT 0.01,
// sample 0.10 mL. From memory: the last 0.01 mL (L-MDH) and the three factors. Molar mass 134.09 published in
// OIV resolution OENO 30/2004.
TEST(MethodFactor, MalicAcidInWine)
{
    const auto method = methodOf({{1.00, 0.20, 0.01}, 0.90, 0.10, 0.01}, 134.09, nadhAndNadph);
    EXPECT_THAT(factor_g_per_L(method, 340), FromMemory("0.473"));
    EXPECT_THAT(factor_g_per_L(method, 334), FromMemory("0.482"));
    EXPECT_THAT(factor_g_per_L(method, 365), FromMemory("0.876"));
    EXPECT_NEAR(factor_g_per_L(method, 340), 0.472508, 5e-7); // recomputed: only just rounds up
}

// The same text, published: 30 to 350 mg/L are 3 to 35 ug in the tube.
TEST(MethodFactor, MalicAcidRangeInTheTube)
{
    const auto method = methodOf({{1.00, 0.20, 0.01}, 0.90, 0.10, 0.01}, 134.09, nadhAndNadph);
    // 350 mg/L gives 0.741 at 340 nm and 0.400 at 365 nm (recomputed), inside a photometer's range.
    EXPECT_NEAR(0.350 / factor_g_per_L(method, 340), 0.741, 0.0005);
    EXPECT_NEAR(0.350 / factor_g_per_L(method, 365), 0.400, 0.0005);
}

// Commission Regulation (EEC) No 2676/90, Annex, citric acid, consolidated 13.08.2005, page 102 of
// https://www.yumpu.com/it/document/view/14990023/01990r2676-20050813-eur-lex/102 (also OIV-MA-AS313-09).
// Published: 1.00, 0.10, sample 0.20, water 1.80, 0.02, 0.02 mL, in all 3.14 mL. From memory: molar mass in
// this text and the three factors.
TEST(MethodFactor, CitricAcidInWine)
{
    const auto method = methodOf({{1.00, 0.10, 0.02}, 1.80, 0.20, 0.02}, 192.1, nadhAndNadph);
    EXPECT_THAT(factor_g_per_L(method, 340), FromMemory("0.479"));
    EXPECT_THAT(factor_g_per_L(method, 334), FromMemory("0.488"));
    EXPECT_THAT(factor_g_per_L(method, 365), FromMemory("0.887"));
}

// Russian standard for citric acid in juices, document 1200102279, section 8,
// https://docs.cntd.ru/document/1200102279/titles/7DM0KA. Published: V 3.12 mL, v 0.20 mL, M 192.1,
// absorptivities. No factor printed: recomputed.
TEST(MethodFactor, CitricAcidInJuice)
{
    const auto method = methodOf(ofTotal(3.12, 0.20), 192.1, nadhAndNadph);
    EXPECT_NEAR(factor_g_per_L(method, 340), 0.475676, 5e-7);
    EXPECT_NEAR(factor_g_per_L(method, 334), 0.484913, 5e-7);
    EXPECT_NEAR(factor_g_per_L(method, 365), 0.881400, 5e-7);
}

// Russian standard for sucrose and glucose in foods, document 1200111376, section 9,
// https://docs.cntd.ru/document/1200111376/titles/7E20KD. Published: V 3.54 mL (for sucrose; assumed for
// glucose), v 0.10 mL, M 342.3 and 180.16, absorptivities. No factor printed: recomputed.
TEST(MethodFactor, SucroseAndGlucoseInFoods)
{
    const auto sucrose = methodOf(ofTotal(3.54, 0.10), 342.3, nadhAndNadph);
    EXPECT_NEAR(factor_g_per_L(sucrose, 340), 1.92340, 5e-6);
    EXPECT_NEAR(factor_g_per_L(sucrose, 334), 1.96075, 5e-6);
    EXPECT_NEAR(factor_g_per_L(sucrose, 365), 3.56395, 5e-6);
    const auto glucose = methodOf(ofTotal(3.54, 0.10), 180.16, nadhAndNadph);
    EXPECT_NEAR(factor_g_per_L(glucose, 340), 1.01233, 5e-6);
    EXPECT_NEAR(factor_g_per_L(glucose, 334), 1.03198, 5e-6);
    EXPECT_NEAR(factor_g_per_L(glucose, 365), 1.87578, 5e-6);
}

// French order of 7 October 1987 (ECOC8700071A), annex X, D-sorbitol, in
// github.com/etalab/lois-non-codifiees-et-reglements-francais,
// arrete/1987/arrete-du-7-octobre-1987-ecoc8700071a/annexes/x/article-annexe.md. Published: 0.6 + 0.2 + 0.2 +
// water 1.9 + sample 0.1 + SDH 0.05 mL, M 182.17, formazan 19.9 L/(mmol cm) at 492 nm, factor 279.2. Its
// digits are mg/L of the solution pipetted; for mg/100 g of m grams in 100 mL the factor has to be 2792/m
// (the fraction is lost in the copy, and with it perhaps the factor of ten).
TEST(MethodFactor, SorbitolByFormazan)
{
    const auto method = methodOf({{0.6, 0.2, 0.2}, 1.9, 0.1, 0.05}, 182.17, {{492, 19900}});
    EXPECT_THAT(factor_g_per_L(method, 492) * 1000, Published("279.2"));
    const double perCent = valueOf(
        method, runOf(solidSample(3.0, 100), {tubeOf(run::Role::Blank, 0.1, 0.1), sampleTube(0.2, 1.2)}));
    EXPECT_NEAR(perCent * 1000, 2792 / 3.0, 0.05); // mg/100 g for an absorbance of 1
}

// Commission Regulation (EC) No 900/2008, Annex I, 5.1 and 5.2,
// https://lexaris.de/book/version/documentflat/head/ 2027593. Published: buffer 1.00, NADP 0.10, ATP 0.10,
// test solution 0.10, water 1.90, HK/G6PDH 0.02 mL. Molar mass and absorptivity from memory; no factor
// printed: recomputed.
TEST(MethodFactor, GlucoseAfterStarchDigestion)
{
    const auto method = methodOf({{1.00, 0.10, 0.10}, 1.90, 0.10, 0.02}, 180.16, nadhAndNadph);
    EXPECT_NEAR(factor_g_per_L(method, 340), 0.920818, 5e-7);
}

// OIV-MA-AS311-02, glucose and fructose in one cuvette: everything from memory (2.50 + 0.10 + 0.10 + sample
// 0.20 + HK 0.02, then PGI 0.02 mL), molar mass fitted: 180 gives all six factors, 180.16 only some. The
// second measurand has the larger volume of its own later reading.
TEST(MethodFactor, GlucoseAndFructoseInOneCuvette)
{
    // The 2.50 mL are buffer as a whole; 0.50 of it stands here as the diluent that a method has to name.
    const auto method = cascadeOf({{2.00, 0.10, 0.10}, 0.50, 0.20, 0.02}, 0.02, 180.0, nadhAndNadph);
    EXPECT_THAT(factor_g_per_L(method, 340, 0), FromMemory("0.417"));
    EXPECT_THAT(factor_g_per_L(method, 334, 0), FromMemory("0.425"));
    EXPECT_THAT(factor_g_per_L(method, 365, 0), FromMemory("0.773"));
    EXPECT_THAT(factor_g_per_L(method, 340, 1), FromMemory("0.420"));
    EXPECT_THAT(factor_g_per_L(method, 334, 1), FromMemory("0.428"));
    EXPECT_THAT(factor_g_per_L(method, 365, 1), FromMemory("0.778"));
}

// OIV-MA-AS313-12B, D-malic acid, low concentrations, https://www.oiv.int/standards/ (annex A,
// section 3.1.3). Published: sensitivity 0.0015 A per mg/L. From memory: 2.95 and 0.10 mL; they give 0.00159,
// one unit of the last printed digit away.
TEST(MethodFactor, DMalicAcidSensitivity)
{
    const auto method = methodOf(ofTotal(2.95, 0.10), 134.09, nadhAndNadph);
    EXPECT_NEAR(factor_g_per_L(method, 340), 0.627882, 5e-7); // recomputed
    EXPECT_THAT(1 / (factor_g_per_L(method, 340) * 1000), PublishedWithin("0.0015", 1.0));
}

// Choosing 6.22 (published, www.letstalkacademy.com, NAD+/NADH problem 33) instead of 6.3 raises a result
// by 1.29 %.
TEST(MethodFactor, FollowsTheAbsorptivityOfTheMethodsOwnTable)
{
    const auto scheme = ofTotal(3.12, 0.20);
    const double ratio = factor_g_per_L(methodOf(scheme, 192.1, {{340, 6220}}), 340) /
                         factor_g_per_L(methodOf(scheme, 192.1, {{340, 6300}}), 340);
    EXPECT_NEAR((ratio - 1) * 100, 1.29, 0.005);
}

} // namespace plateau::published
