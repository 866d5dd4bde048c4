// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The shipped methods that name a published source give its figures. The sources, and which of their numbers
// were read and which are from memory, stand in factors_test.cpp.

#include "core/exchange/library.h"
#include "core/run/volumes.h"
#include "tests/published/pipetting.h"
#include "tests/published/printed.h"

#include <gtest/gtest.h>

namespace plateau::published {

using namespace Qt::StringLiterals;

namespace {

assay::Method shipped(const QString &id)
{
    const auto library =
        exchange::MethodLibrary::load(QStringLiteral(PLATEAU_SOURCE_DIR) + u"/resources/methods"_s);
    return library.find(id).value();
}

} // namespace

TEST(ShippedMethods, AreAllRead)
{
    const auto library =
        exchange::MethodLibrary::load(QStringLiteral(PLATEAU_SOURCE_DIR) + u"/resources/methods"_s);
    for (const auto &problem : library.problems())
        ADD_FAILURE() << problem.fileName.toStdString() << ": " << problem.problem.message.toStdString();
    EXPECT_GE(library.methods().size(), 7U);
    for (const auto &method : library.methods())
        EXPECT_FALSE(method.source.isEmpty()) << method.id.toStdString();
}

TEST(ShippedMethods, MalicAcidHasTheFactorsOfItsSource)
{
    const auto method = shipped(u"l-malic-acid"_s);
    EXPECT_THAT(factor_g_per_L(method, 340), FromMemory("0.473"));
    EXPECT_THAT(factor_g_per_L(method, 334), FromMemory("0.482"));
    EXPECT_THAT(factor_g_per_L(method, 365), FromMemory("0.876"));
}

// Published in the same text: 30 to 350 mg/L in the solution pipetted.
TEST(ShippedMethods, MalicAcidWindowIsTheRangeOfItsSource)
{
    const auto method = shipped(u"l-malic-acid"_s);
    EXPECT_NEAR(method.window.minSignal * factor_g_per_L(method, 340), 0.030, 0.002);
    EXPECT_NEAR(method.window.maxSignal * factor_g_per_L(method, 340), 0.350, 0.002);
}

TEST(ShippedMethods, CitricAcidHasTheFactorsOfItsSource)
{
    const auto method = shipped(u"citric-acid-wine"_s);
    EXPECT_THAT(factor_g_per_L(method, 340), FromMemory("0.479"));
    EXPECT_THAT(factor_g_per_L(method, 334), FromMemory("0.488"));
    EXPECT_THAT(factor_g_per_L(method, 365), FromMemory("0.887"));
    // Published in the same text: 20 to 400 mg/L direct.
    EXPECT_NEAR(method.window.minSignal * factor_g_per_L(method, 340), 0.020, 0.002);
    EXPECT_NEAR(method.window.maxSignal * factor_g_per_L(method, 340), 0.400, 0.002);
}

TEST(ShippedMethods, SorbitolHasTheFactorOfItsSource)
{
    const auto method = shipped(u"d-sorbitol"_s);
    EXPECT_THAT(factor_g_per_L(method, 492) * 1000, Published("279.2"));
    // Published in the same text: the optimum ends at 350 mg/100 g with 3 g in 100 mL, 10.5 mg/100 mL.
    EXPECT_NEAR(method.window.maxSignal * factor_g_per_L(method, 492), 0.105, 0.0005);
}

// Common practice, no source: 0.5 + 0.2 + 0.1 + 2.5 + 0.02 mL.
TEST(ShippedMethods, SulphiteTubeVolumesAddUp)
{
    const auto method = shipped(u"total-sulphite"_s);
    EXPECT_NEAR(run::volumeAt_mL(method, run::Tube{}, assay::laterReading(method.measurands.at(0).signal)),
                3.32, 1e-12);
}

// CIAAW abridged weights, from memory (C 12.011, H 1.008, O 15.999, S 32.06), to the two decimals the methods
// print.
TEST(ShippedMethods, MolarMassesFollowFromAtomicWeights)
{
    const auto molarMass = [](const QString &id, std::size_t measurand = 0) {
        return shipped(id).measurands.at(measurand).molarMass_g_per_mol;
    };
    const auto mass = [](int c, int h, int o) { return 12.011 * c + 1.008 * h + 15.999 * o; };
    EXPECT_NEAR(molarMass(u"l-malic-acid"_s), mass(4, 6, 5), 0.006);
    EXPECT_NEAR(molarMass(u"citric-acid-wine"_s), mass(6, 8, 7), 0.06); // printed 192.1
    EXPECT_NEAR(molarMass(u"d-sorbitol"_s), mass(6, 14, 6), 0.006);
    EXPECT_NEAR(molarMass(u"glucose-fructose"_s, 0), mass(6, 12, 6), 0.006);
    EXPECT_NEAR(molarMass(u"glucose-fructose"_s, 1), mass(6, 12, 6), 0.006);
    EXPECT_NEAR(molarMass(u"acetic-acid"_s), mass(2, 4, 2), 0.006);
    EXPECT_NEAR(molarMass(u"glycerol"_s), mass(3, 8, 3), 0.006);
    EXPECT_NEAR(molarMass(u"total-sulphite"_s), 32.06 + mass(0, 0, 2), 0.006);
}

} // namespace plateau::published
