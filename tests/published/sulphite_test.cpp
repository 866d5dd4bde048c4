// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The sulphite standard and the tube of a sulphite assay.

#include "core/run/run.h"
#include "core/run/volumes.h"
#include "tests/published/pipetting.h"
#include "tests/published/printed.h"

#include <gtest/gtest.h>

namespace plateau::published {

using namespace Qt::StringLiterals;

namespace {

// CIAAW, abridged standard atomic weights 2021, https://www.ciaaw.org/abridged-atomic-weights.htm (values
// from memory; each lies inside the interval published at https://www.ciaaw.org/atomic-weights.htm).
constexpr double sodium = 22.990;
constexpr double sulphur = 32.06;
constexpr double oxygen = 15.999;
constexpr double sulphurDioxide = sulphur + 2 * oxygen;
constexpr double sodiumSulphite = 2 * sodium + sulphur + 3 * oxygen;

run::Standard sulphiteStandard(double concentration_g_per_L)
{
    run::Standard standard;
    standard.id = u"SO2"_s;
    standard.concentration_g_per_L = concentration_g_per_L;
    standard.preparedAt = QDateTime(QDate(2026, 3, 2), QTime(8, 0), Qt::UTC);
    standard.usedAt = standard.preparedAt->addSecs(3 * 3600);
    standard.lossPerHour = 0.02;
    return standard;
}

} // namespace

// 590 mg of anhydrous sodium sulphite in a litre make about 300 mg/L as sulphur dioxide, of which 2 % are
// lost an hour, so that 94 % are left after 3 h: common practice, no source. Exactly: 299.87 mg/L, and 0.98^3
// = 0.941192.
TEST(SulphiteStandard, LosesTwoPercentAnHour)
{
    const double made_g_per_L = 0.590 * sulphurDioxide / sodiumSulphite;
    EXPECT_NEAR(made_g_per_L, 0.299866, 5e-7);
    const auto standard = sulphiteStandard(made_g_per_L);
    EXPECT_DOUBLE_EQ(run::ageAtUse_h(standard), 3);
    EXPECT_NEAR(run::concentrationAtUse_g_per_L(standard) / made_g_per_L, 0.941192, 1e-12);
    EXPECT_NEAR(run::concentrationAtUse_g_per_L(standard), 0.282232, 5e-7);
}

// Molar masses in print: Na2SO3 126.04 and 48 % SO2 at 95 % assay, Food Additives Data Book,
// https://www.yumpu.com/en/document/view/15887055/food-additives-data-book-wordpres/799.
TEST(SulphiteStandard, MolarMassesAgreeWithPrint)
{
    EXPECT_THAT(sodiumSulphite, Published("126.04"));
    EXPECT_THAT(sulphurDioxide, PublishedWithin("64.06", 0.5));
    EXPECT_THAT(100 * 0.95 * sulphurDioxide / sodiumSulphite, Published("48"));
}

// 0.5 + 0.2 + 0.1 + 2.5 + 0.02 mL make 3.32 mL: common practice, no source.
TEST(SulphiteTube, VolumesAddUp)
{
    const auto method = methodOf({{0.5, 0.2}, 2.5, 0.1, 0.02}, 64.058, nadhAndNadph);
    EXPECT_NEAR(run::volumeAt_mL(method, sampleTube(0, 0), u"A1"_s), 3.30, 1e-12);
    EXPECT_NEAR(run::volumeAt_mL(method, sampleTube(0, 0), u"A2"_s), 3.32, 1e-12);
    EXPECT_NEAR(run::volumeAt_mL(method, tubeOf(run::Role::Blank, 0, 0), u"A2"_s), 3.32, 1e-12);
}

} // namespace plateau::published
