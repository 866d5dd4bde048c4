// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/volumes.h"

#include "core/run/preparation.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

using namespace plateau;
using namespace Qt::StringLiterals;

namespace {

double added_mL(const assay::Method &method, const run::Tube &tube, const QString &component)
{
    double volume_mL = 0;
    for (const run::Addition &addition : run::additions(method, tube)) {
        if (addition.component == component)
            volume_mL += addition.volume_mL;
    }
    return volume_mL;
}

} // namespace

TEST(Volumes, DefaultTubeHoldsTheSumOfItsComponents)
{
    const assay::Method method = test::risingMethod();
    EXPECT_NEAR(run::volumeAt_mL(method, test::sampleTube("S", 0, 0), u"A1"_s), 2.10, 1e-12);
    EXPECT_NEAR(run::volumeAt_mL(method, test::sampleTube("S", 0, 0), u"A2"_s), 2.12, 1e-12);
    EXPECT_EQ(run::volumeAt_mL(method, test::sampleTube("S", 0, 0), u"A9"_s), 0);
}

TEST(Volumes, LargerSampleGetsLessDiluent)
{
    const assay::Method method = test::risingMethod();
    run::Tube tube = test::sampleTube("S", 0, 0);
    tube.sampleVolume_mL = 0.5;
    EXPECT_NEAR(added_mL(method, tube, u"water"_s), 0.6, 1e-12);
    EXPECT_NEAR(run::volumeAt_mL(method, tube, u"A2"_s), 2.12, 1e-12);
}

TEST(Volumes, DiluentThatRunsOutLetsTheVolumeGrow)
{
    const assay::Method method = test::risingMethod();
    run::Tube tube = test::sampleTube("S", 0, 0);
    tube.sampleVolume_mL = 1.3; // takes 1.2 more than planned, of 1.0 diluent
    EXPECT_EQ(added_mL(method, tube, u"water"_s), 0);
    EXPECT_NEAR(run::volumeAt_mL(method, tube, u"A2"_s), 2.32, 1e-12);
}

TEST(Volumes, BlankGetsDiluentInPlaceOfSample)
{
    const assay::Method method = test::risingMethod();
    const std::vector<run::Addition> added = run::additions(method, test::blank(0, 0));
    ASSERT_EQ(added.size(), 4U);
    EXPECT_EQ(added[2], (run::Addition{u"sample"_s, run::Addition::Content::Diluent, 0.1}));
    EXPECT_EQ(run::sampleVolume_mL(method, test::blank(0, 0)), 0);
}

TEST(Volumes, SampleBlankGetsDiluentInPlaceOfStarter)
{
    const assay::Method method = test::risingMethod();
    run::Tube tube = test::sampleTube("S", 0, 0);
    tube.role = run::Role::SampleBlank;
    const std::vector<run::Addition> added = run::additions(method, tube);
    ASSERT_EQ(added.size(), 4U);
    EXPECT_EQ(added[2].content, run::Addition::Content::Component);
    EXPECT_EQ(added[3], (run::Addition{u"starter"_s, run::Addition::Content::Diluent, 0.02}));
}

TEST(Volumes, SpikeTakesTheDiluentsPlace)
{
    const assay::Method method = test::risingMethod();
    run::Tube tube = test::sampleTube("S", 0, 0);
    tube.role = run::Role::Spiked;
    tube.spike = run::Spike{u"STD"_s, 0.2};
    EXPECT_NEAR(added_mL(method, tube, u"water"_s), 0.8, 1e-12);
    EXPECT_NEAR(run::volumeAt_mL(method, tube, u"A2"_s), 2.12, 1e-12);
}

TEST(Volumes, WhatWasPipettedOtherwiseIsNotMadeUpFor)
{
    const assay::Method method = test::risingMethod();
    run::Tube tube = test::sampleTube("S", 0, 0);
    tube.pipetted_mL = {{u"sample"_s, 0.2}, {u"buffer"_s, 0.9}};
    EXPECT_EQ(run::sampleVolume_mL(method, tube), 0.2);
    EXPECT_EQ(run::plannedSampleVolume_mL(method, tube), 0.1);
    EXPECT_EQ(added_mL(method, tube, u"water"_s), 1.0);
    EXPECT_EQ(added_mL(method, tube, u"buffer"_s), 0.9);
    EXPECT_NEAR(run::volumeAt_mL(method, tube, u"A2"_s), 2.12, 1e-12); // 0.1 more and 0.1 less
    EXPECT_EQ(run::plannedAdditions(method, tube), run::additions(method, test::sampleTube("S", 0, 0)));
}

TEST(Volumes, DiluentGivesUpForTheSampleThatWasPlannedNotForTheOnePipetted)
{
    const assay::Method method = test::risingMethod();
    run::Tube tube = test::sampleTube("S", 0, 0);
    tube.sampleVolume_mL = 0.5; // water 0.6
    tube.pipetted_mL = {{u"sample"_s, 0.4}};
    EXPECT_NEAR(added_mL(method, tube, u"water"_s), 0.6, 1e-12);
    EXPECT_NEAR(run::volumeAt_mL(method, tube, u"A2"_s), 2.02, 1e-12);
    tube.pipetted_mL[u"water"_s] = 0;
    EXPECT_NEAR(run::volumeAt_mL(method, tube, u"A2"_s), 1.42, 1e-12);
}

TEST(Volumes, StandInsGoByTheComponentAndASpikeKeepsItsVolume)
{
    const assay::Method method = test::risingMethod();
    run::Tube blank = test::blank(0, 0);
    blank.pipetted_mL = {{u"sample"_s, 0.15}};
    EXPECT_EQ(run::sampleVolume_mL(method, blank), 0); // diluent it is, whatever the volume
    EXPECT_NEAR(run::volumeAt_mL(method, blank, u"A2"_s), 2.17, 1e-12);

    run::Tube sampleBlank = test::sampleTube("S", 0, 0);
    sampleBlank.role = run::Role::SampleBlank;
    sampleBlank.pipetted_mL = {{u"starter"_s, 0.05}};
    EXPECT_EQ(run::additions(method, sampleBlank)[3],
              (run::Addition{u"starter"_s, run::Addition::Content::Diluent, 0.05}));

    run::Tube spiked = test::sampleTube("S", 0, 0);
    spiked.role = run::Role::Spiked;
    spiked.spike = run::Spike{u"STD"_s, 0.3};
    spiked.pipetted_mL = {{u"sample"_s, 0.12}};
    EXPECT_NEAR(added_mL(method, spiked, u"sample"_s), 0.42, 1e-12);
    EXPECT_NEAR(run::volumeAt_mL(method, spiked, u"A2"_s), 2.14, 1e-12);
}

TEST(Dilution, FactorIsTheProductOfTheSteps)
{
    EXPECT_EQ(run::dilutionFactor({}), 1);
    EXPECT_NEAR(run::dilutionFactor({{5, 50}, {2, 50}}), 250, 1e-12);
}

TEST(Standard, LosesItsPartEveryHour)
{
    run::Standard standard;
    standard.concentration_g_per_L = 0.3;
    standard.lossPerHour = 0.02;
    EXPECT_EQ(run::concentrationAtUse_g_per_L(standard), 0.3); // no times: worth what is stated
    standard.preparedAt = QDateTime::fromString(u"2026-03-02T08:10:00+01:00"_s, Qt::ISODate);
    standard.usedAt = QDateTime::fromString(u"2026-03-02T10:10:00Z"_s, Qt::ISODate); // three hours later
    EXPECT_EQ(run::ageAtUse_h(standard), 3);
    EXPECT_NEAR(run::concentrationAtUse_g_per_L(standard), 0.3 * 0.98 * 0.98 * 0.98, 1e-15);
}

TEST(Preparation, CountsTheAnalyteMoleculesOfTheSubstance)
{
    run::Weighing weighing;
    weighing.mass_mg = 222.312;
    weighing.purity = 0.5;
    weighing.substanceMolarMass_g_per_mol = 222.312;
    weighing.analyteMolarMass_g_per_mol = 64.058;
    weighing.analytePerMolecule = 2;
    weighing.flask_mL = 1000;
    EXPECT_NEAR(run::preparedConcentration_g_per_L(weighing), 0.064058, 1e-12);
}

TEST(Role, WordsReadBack)
{
    using enum run::Role;
    for (const run::Role role : {Blank, SampleBlank, Standard, Control, Sample, Spiked})
        EXPECT_EQ(run::roleFromWord(run::roleWord(role)), role);
    EXPECT_EQ(run::roleFromWord(u"Sample"_s), std::nullopt);
}
