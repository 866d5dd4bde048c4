// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/worksheet.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gmock/gmock.h>

namespace plateau::planning {

void PrintTo(const Round::Dose &dose, std::ostream *stream)
{
    *stream << dose.volume_mL << " mL of \"" << dose.content.toStdString() << '"'
            << (dose.odd ? ", odd" : "");
}

namespace {

using namespace Qt::StringLiterals;
using ::testing::DoubleNear;
using ::testing::ElementsAre;

using Dose = std::optional<Round::Dose>;

/// A blank, a standard, the sample twice, once with 0.2 mL instead of 0.1.
run::Run mixedRun()
{
    run::Run run;
    run.samples = {test::liquid("S")};
    run.standards = {{u"STD"_s, 0.2, {}, {}, {}, 0}};
    run.tubes = {test::blank(0.1, 0.1), test::standardTube("STD", 0.1, 0.5), test::sampleTube("S", 0.1, 0.5),
                 test::sampleTube("S", 0.1, 0.9)};
    run.tubes[3].sampleVolume_mL = 0.2;
    return run;
}

std::vector<Round> roundsOfMixed(const run::Run &run = mixedRun())
{
    return roundsOf(test::risingMethod(), run, usualLaboratory().glassware);
}

std::vector<double> volumesOfRound(const Round &round)
{
    std::vector<double> volumes;
    for (const Dose &dose : round.doses)
        volumes.push_back(dose ? dose->volume_mL : -1);
    return volumes;
}

std::vector<bool> oddOnes(const Round &round)
{
    std::vector<bool> odd;
    for (const Dose &dose : round.doses)
        odd.push_back(dose && dose->odd);
    return odd;
}

TEST(Worksheet, GoesByTheMethodsStepsWithEveryTubeInEachRound)
{
    const std::vector<Round> rounds = roundsOfMixed();
    ASSERT_EQ(rounds.size(), 4u);
    QStringList components;
    std::vector<int> steps;
    for (const Round &round : rounds) {
        components << round.component;
        steps.push_back(round.step);
        EXPECT_EQ(round.doses.size(), 4u);
        EXPECT_TRUE(std::holds_alternative<assay::AddStep>(
            test::risingMethod().steps[static_cast<std::size_t>(round.step)]));
    }
    EXPECT_EQ(components, QStringList({u"buffer"_s, u"water"_s, u"sample"_s, u"starter"_s}));
    EXPECT_TRUE(std::is_sorted(steps.begin(), steps.end()));
    EXPECT_THAT(rounds[0].doses, ElementsAre(Dose({1.0, {}, false}), Dose({1.0, {}, false}),
                                             Dose({1.0, {}, false}), Dose({1.0, {}, false})));
}

TEST(Worksheet, NamesWhatGoesInWhereTheSampleGoes)
{
    const assay::Method method = test::risingMethod();
    const QString diluent = assay::findComponent(method, method.diluent)->name;
    EXPECT_THAT(roundsOfMixed()[2].doses,
                ElementsAre(Dose({0.1, diluent, false}), Dose({0.1, u"STD"_s, false}),
                            Dose({0.1, u"S"_s, false}), Dose({0.2, u"S"_s, true})));
}

TEST(Worksheet, DiluentMakesUpForAnotherVolumeAndStandsOut)
{
    const Round water = roundsOfMixed()[1];
    EXPECT_THAT(volumesOfRound(water), ElementsAre(1.0, 1.0, 1.0, DoubleNear(0.9, 1e-12)));
    EXPECT_THAT(oddOnes(water), ElementsAre(false, false, false, true));
    EXPECT_EQ(water.usualVolume_mL, 1.0);
}

TEST(Worksheet, WhatMostTubesGetIsUsualWhateverTheMethodSays)
{
    run::Run run = mixedRun();
    for (std::size_t tube = 1; tube < 4; ++tube)
        run.tubes[tube].sampleVolume_mL = 0.3;
    const Round sample = roundsOfMixed(run)[2];
    EXPECT_EQ(sample.usualVolume_mL, 0.3);
    EXPECT_THAT(oddOnes(sample), ElementsAre(true, false, false, false));
}

TEST(Worksheet, OfTwoVolumesAsFrequentTheMethodsIsUsual)
{
    run::Run run = mixedRun();
    run.tubes[2].sampleVolume_mL = 0.05;
    run.tubes[3].sampleVolume_mL = 0.05;
    EXPECT_EQ(roundsOfMixed(run)[2].usualVolume_mL, 0.1);
    EXPECT_THAT(oddOnes(roundsOfMixed(run)[2]), ElementsAre(false, false, true, true));
}

TEST(Worksheet, SampleBlankGetsDiluentForTheStarter)
{
    run::Run run = mixedRun();
    run.tubes[3].role = run::Role::SampleBlank;
    run.tubes[3].sampleVolume_mL.reset();
    const assay::Method method = test::risingMethod();
    const QString diluent = assay::findComponent(method, method.diluent)->name;
    const std::vector<Round> rounds = roundsOfMixed(run);
    EXPECT_EQ(rounds[2].doses[3], Dose({0.1, u"S"_s, false}));
    EXPECT_EQ(rounds[3].doses[2], Dose({0.02, {}, false}));
    EXPECT_EQ(rounds[3].doses[3], Dose({0.02, diluent, false}));
}

TEST(Worksheet, SpikeIsARoundOfItsOwnAfterTheSample)
{
    run::Run run = mixedRun();
    run.tubes[3] = test::sampleTube("S", 0.1, 0.9);
    run.tubes[3].role = run::Role::Spiked;
    run.tubes[3].spike = run::Spike{u"STD"_s, 0.15};
    const std::vector<Round> rounds = roundsOfMixed(run);
    ASSERT_EQ(rounds.size(), 5u);
    EXPECT_EQ(rounds[3].step, rounds[2].step);
    EXPECT_THAT(rounds[3].doses, ElementsAre(Dose(), Dose(), Dose(), Dose({0.15, u"STD"_s, false})));
    EXPECT_EQ(rounds[3].usualVolume_mL, 0.15);
    EXPECT_THAT(volumesOfRound(rounds[1]), ElementsAre(1.0, 1.0, 1.0, DoubleNear(0.85, 1e-12)));
}

TEST(Worksheet, ControlNamesItsSampleOrItsStandard)
{
    run::Run run = mixedRun();
    run.tubes[1].role = run::Role::Control;
    run.tubes[2].role = run::Role::Control;
    EXPECT_EQ(roundsOfMixed(run)[2].doses[1]->content, u"STD"_s);
    EXPECT_EQ(roundsOfMixed(run)[2].doses[2]->content, u"S"_s);
}

TEST(Worksheet, TubeWithoutRoomForDiluentGetsNone)
{
    run::Run run = mixedRun();
    run.tubes[3].sampleVolume_mL = 1.1;
    EXPECT_EQ(roundsOfMixed(run)[1].doses[3], Dose());
}

TEST(Worksheet, WhatWasReallyPipettedStandsInPlaceOfThePlan)
{
    run::Run run = mixedRun();
    run.tubes[0].pipetted_mL = {{u"buffer"_s, 1.05}};
    run.tubes[1].pipetted_mL = {{u"starter"_s, 0.0}};
    const std::vector<Round> rounds = roundsOfMixed(run);
    EXPECT_THAT(volumesOfRound(rounds[0]), ElementsAre(1.05, 1.0, 1.0, 1.0));
    EXPECT_THAT(oddOnes(rounds[0]), ElementsAre(true, false, false, false));
    EXPECT_THAT(volumesOfRound(rounds[3]), ElementsAre(0.02, 0.0, 0.02, 0.02));
    EXPECT_THAT(oddOnes(rounds[3]), ElementsAre(false, true, false, false));
}

TEST(Worksheet, SaysWhatToSwirlAndWhichLot)
{
    assay::Method method = test::risingMethod();
    for (assay::Component &component : method.components)
        component.suspension = component.id == method.starter;
    run::Run run = mixedRun();
    run.lots = {{u"buffer"_s, u"B-17"_s, {}}, {u"starter"_s, u"E-3"_s, {}}};
    const std::vector<Round> rounds = roundsOf(method, run, {});
    EXPECT_FALSE(rounds[0].suspension);
    EXPECT_TRUE(rounds[3].suspension);
    EXPECT_EQ(rounds[0].lot, u"B-17"_s);
    EXPECT_EQ(rounds[1].lot, QString());
    EXPECT_EQ(rounds[3].lot, u"E-3"_s);
}

TEST(Worksheet, TakesTheSmallestPipetteThatMakesTheVolume)
{
    const Glassware glassware{{{u"large"_s, 0.5, 5, 0.05, 0.6},
                               {u"bulb"_s, 1, 1, 0, 0.5},
                               {u"middle"_s, 0.1, 1, 0.01, 0.6},
                               {u"small"_s, 0.01, 0.1, 0.001, 0.8}},
                              {}};
    const std::vector<Round> rounds = roundsOf(test::risingMethod(), mixedRun(), glassware);
    EXPECT_EQ(rounds[0].pipette, u"middle"_s);
    EXPECT_EQ(rounds[2].pipette, u"small; middle"_s) << "one tube gets twice as much";
    EXPECT_EQ(rounds[3].pipette, u"small"_s);
    assay::Method method = test::risingMethod();
    method.components[0].volume_mL = 1.05;
    EXPECT_EQ(roundsOf(method, mixedRun(), glassware)[0].pipette, u"large"_s);
    method.components[0].volume_mL = 1.02;
    EXPECT_EQ(roundsOf(method, mixedRun(), glassware)[0].pipette, QString());
}

TEST(Worksheet, DosesOfAReagentAreThoseWhereItStandsInToo)
{
    run::Run run = mixedRun();
    const QString water = roundsOfMixed()[1].name;
    run.samples.push_back(test::liquid("another"));
    run.samples.back().id = water; // a sample of that name is no reagent
    run.tubes.push_back(test::sampleTube("S", 0.1, 0.5));
    run.tubes.back().sample = water;
    const std::vector<ReagentDose> doses = dosesOf(water, roundsOfMixed(run), run);
    ASSERT_EQ(doses.size(), 6u);
    for (int tube = 0; tube < 5; ++tube) {
        EXPECT_EQ(doses[static_cast<std::size_t>(tube)].round, 1);
        EXPECT_EQ(doses[static_cast<std::size_t>(tube)].tube, tube);
    }
    EXPECT_NEAR(doses[3].volume_mL, 0.9, 1e-12);
    EXPECT_EQ(doses[5], (ReagentDose{2, 0, 0.1})) << "in the blank in place of the sample";
}

TEST(Worksheet, OfARackWithoutTubesIsTheListOfRounds)
{
    run::Run run = mixedRun();
    run.tubes.clear();
    const std::vector<Round> rounds = roundsOfMixed(run);
    ASSERT_EQ(rounds.size(), 4u);
    EXPECT_TRUE(rounds[2].doses.empty());
    EXPECT_EQ(rounds[2].usualVolume_mL, 0.1);
}

} // namespace
} // namespace plateau::planning
