// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/rackrepeat.h"

#include "core/run/soundness.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::planning {

namespace {

evaluation::Advice dilute(double factor)
{
    evaluation::Advice advice;
    advice.factor = factor;
    advice.steps = {{25, 25 * factor}};
    return advice;
}

Glassware glass()
{
    Glassware glassware;
    glassware.pipettes = {{u"bulb pipette 5 mL"_s, 5, 5, 0, 0.2}, {u"bulb pipette 10 mL"_s, 10, 10, 0, 0.1}};
    glassware.flasks = {{u"flask 50 mL"_s, 50, 0.1}, {u"flask 100 mL"_s, 100, 0.08}};
    return glassware;
}

/// A blank, the sample "S" in duplicate and a blank of its own.
run::Run rackWithOwnBlank()
{
    run::Run run = test::plainRun();
    run::Tube own = run.tubes.back();
    own.role = run::Role::SampleBlank;
    run.tubes.push_back(own);
    return run;
}

} // namespace

TEST(RackRepeat, TakesTheSmallestGlassThatMakesTheFactor)
{
    const auto repeat = repeatInRack(test::risingMethod(), rackWithOwnBlank(), u"S"_s, dilute(10), glass(), nullptr);
    ASSERT_TRUE(repeat);
    EXPECT_EQ(repeat->sample.id, u"S, 10-fold"_s);
    EXPECT_EQ(repeat->sample.repeats, u"S"_s);
    ASSERT_EQ(repeat->sample.dilution.size(), 1U);
    EXPECT_EQ(repeat->sample.dilution[0].take_mL, 5);
    EXPECT_EQ(repeat->sample.dilution[0].makeUpTo_mL, 50);
    // Pipette and flask as independent: root of 0.2² + 0.1².
    EXPECT_NEAR(*repeat->sample.dilution[0].uncertainty_percent, 0.223606797749979, 1e-12);
    EXPECT_EQ(repeat->planned.glass, (std::vector<StepGlass>{{u"bulb pipette 5 mL"_s, u"flask 50 mL"_s}}));
}

TEST(RackRepeat, KeepsTheAdvisedChainWhereNoGlassOfTheLaboratoryMakesIt)
{
    const auto repeat = repeatInRack(test::risingMethod(), rackWithOwnBlank(), u"S"_s, dilute(7), glass(), nullptr);
    ASSERT_TRUE(repeat);
    ASSERT_EQ(repeat->sample.dilution.size(), 1U);
    EXPECT_EQ(repeat->sample.dilution[0].take_mL, 25);
    EXPECT_EQ(repeat->sample.dilution[0].makeUpTo_mL, 175);
    EXPECT_FALSE(repeat->sample.dilution[0].uncertainty_percent);
    EXPECT_EQ(repeat->planned.glass, (std::vector<StepGlass>{{}}));
}

TEST(RackRepeat, WhereNoGlassMakesTheFactorAStrongerOneIsTakenThatCanBeMeasured)
{
    // Net signal 0.51 - 0.01: at most 5-fold leaves the 0.1 that can be measured.
    Glassware own;
    own.pipettes = {{u"fixed 1 mL"_s, 1, 1, 0, 0.5}};
    own.flasks = {{u"flask 5 mL"_s, 5, 0.2}, {u"flask 10 mL"_s, 10, 0.1}};
    evaluation::Advice advice = dilute(4);
    const auto repeat = repeatInRack(test::risingMethod(), test::plainRun(), u"S"_s, advice, own, nullptr);
    ASSERT_TRUE(repeat);
    EXPECT_EQ(repeat->sample.id, u"S, 5-fold"_s);
    ASSERT_EQ(repeat->sample.dilution.size(), 1U);
    EXPECT_EQ(repeat->sample.dilution[0].take_mL, 1);
    EXPECT_EQ(repeat->sample.dilution[0].makeUpTo_mL, 5);
    EXPECT_EQ(repeat->planned.glass, (std::vector<StepGlass>{{u"fixed 1 mL"_s, u"flask 5 mL"_s}}));
    own.flasks.erase(own.flasks.begin()); // 10-fold would be too weak: as advised
    EXPECT_EQ(repeatInRack(test::risingMethod(), test::plainRun(), u"S"_s, advice, own, nullptr)->sample.dilution[0].take_mL,
              25);
}

TEST(RackRepeat, TwoStepsMakeWhatOneCannotDeliver)
{
    Glassware own;
    own.pipettes = {{u"fixed 1 mL"_s, 1, 1, 0, 0.5}};
    own.flasks = {{u"flask 10 mL"_s, 10, 0.1}};
    evaluation::Advice advice = dilute(100);
    const auto repeat = repeatInRack(test::risingMethod(), rackWithOwnBlank(), u"S"_s, advice, own, nullptr);
    ASSERT_TRUE(repeat);
    EXPECT_EQ(repeat->sample.id, u"S, 100-fold"_s);
    ASSERT_EQ(repeat->sample.dilution.size(), 2U);
    for (const run::DilutionStep &step : repeat->sample.dilution) {
        EXPECT_EQ(step.take_mL, 1);
        EXPECT_EQ(step.makeUpTo_mL, 10);
    }
}

TEST(RackRepeat, ALargerVolumeIsOneThatAPipetteDeliversWithItsDiluent)
{
    // 0.1 mL gave 0.03 and 0.1 is wanted at least. 0.42 mL leaves 0.68 mL of water: not by steps of 0.05 mL.
    run::Run run = test::plainRun();
    for (std::size_t tube = 1; tube < 3; ++tube)
        run.tubes[tube].readings = {{u"A1"_s, 0.1}, {u"A2"_s, 0.14}};
    evaluation::Advice advice;
    advice.kind = evaluation::Advice::Kind::IncreaseVolume;
    advice.sampleVolume_mL = 0.42;
    Glassware own;
    own.pipettes = {{u"small"_s, 0.1, 0.5, 0.01, 0.6}, {u"large"_s, 0.6, 5, 0.05, 0.6}};
    const auto volumeWith = [&] {
        return repeatInRack(test::risingMethod(), run, u"S"_s, advice, own, nullptr)->tubes[0].sampleVolume_mL;
    };
    EXPECT_EQ(volumeWith(), 0.4); // leaves 0.7
    own.pipettes[1].step_mL = 0; // by 0.01 mL
    EXPECT_EQ(volumeWith(), 0.42);
    own.pipettes = {{u"fixed 0.2"_s, 0.2, 0.2, 0, 0.6}, {u"fixed 0.9"_s, 0.9, 0.9, 0, 0.6}};
    EXPECT_EQ(volumeWith(), 0.42) << "0.2 mL would give 0.06 only";
}

TEST(RackRepeat, HasTheTubesThatCount)
{
    run::Run run = rackWithOwnBlank();
    run.tubes[1].spoilt = u"dropped"_s;
    const auto repeat = repeatInRack(test::risingMethod(), run, u"S"_s, dilute(10), glass(), nullptr);
    ASSERT_TRUE(repeat);
    ASSERT_EQ(repeat->tubes.size(), 2U);
    EXPECT_EQ(repeat->tubes[0].role, run::Role::Sample);
    EXPECT_EQ(repeat->tubes[1].role, run::Role::SampleBlank);
    for (const run::Tube &tube : repeat->tubes) {
        EXPECT_EQ(tube.sample, u"S, 10-fold"_s);
        EXPECT_TRUE(tube.readings.empty());
        EXPECT_TRUE(tube.spoilt.isEmpty());
    }
}

TEST(RackRepeat, OfALargerVolumeKeepsTheDilution)
{
    run::Run run = rackWithOwnBlank();
    run.samples[0].dilution = {{5, 50, {}}};
    evaluation::Advice advice;
    advice.kind = evaluation::Advice::Kind::IncreaseVolume;
    advice.sampleVolume_mL = 0.5;
    const auto repeat = repeatInRack(test::risingMethod(), run, u"S"_s, advice, glass(), nullptr);
    ASSERT_TRUE(repeat);
    EXPECT_EQ(repeat->sample.id, u"S, 0.5 mL"_s);
    EXPECT_EQ(run::dilutionFactor(repeat->sample.dilution), 10);
    for (const run::Tube &tube : repeat->tubes)
        EXPECT_EQ(tube.sampleVolume_mL, 0.5);
}

TEST(RackRepeat, ANameIsNeverGivenTwiceAndTheFirstSampleIsTheOneRepeated)
{
    run::Run run = rackWithOwnBlank();
    const auto first = repeatInRack(test::risingMethod(), run, u"S"_s, dilute(10), glass(), nullptr);
    run.samples.push_back(first->sample);
    const auto second = repeatInRack(test::risingMethod(), run, u"S"_s, dilute(10), glass(), nullptr);
    EXPECT_EQ(second->sample.id, u"S, 10-fold (2)"_s);
    run.tubes.insert(run.tubes.end(), first->tubes.begin(), first->tubes.end());
    const auto third = repeatInRack(test::risingMethod(), run, first->sample.id, dilute(20), glass(), nullptr);
    EXPECT_EQ(third->sample.repeats, u"S"_s);
    EXPECT_EQ(third->tubes.size(), first->tubes.size());
    EXPECT_FALSE(repeatInRack(test::risingMethod(), run, u"nobody's"_s, dilute(2), glass(), nullptr));
}

TEST(RackRepeat, FitsIntoItsRun)
{
    run::Run run = rackWithOwnBlank();
    const auto repeat = repeatInRack(test::risingMethod(), run, u"S"_s, dilute(10), glass(), nullptr);
    run.samples.push_back(repeat->sample);
    run.tubes.insert(run.tubes.end(), repeat->tubes.begin(), repeat->tubes.end());
    for (const assay::Problem &problem : run::problemsOf(run, test::risingMethod()))
        EXPECT_NE(problem.severity, assay::Problem::Severity::Error) << problem.message.toStdString();
}

TEST(OpenAdvice, IsGivenOnceForASample)
{
    run::Run run = test::plainRun();
    run.tubes[1].readings[u"A2"_s] = 1.9;
    run.tubes[2].readings[u"A2"_s] = 1.9;
    const evaluation::Evaluation evaluation = evaluation::evaluate(test::risingMethod(), run);
    const auto advice = openAdvice(run, evaluation, u"S"_s);
    ASSERT_TRUE(advice);
    EXPECT_EQ(advice->kind, evaluation::Advice::Kind::Dilute);
    const auto repeat = repeatInRack(test::risingMethod(), run, u"S"_s, *advice, glass(), nullptr);
    run.samples.push_back(repeat->sample);
    EXPECT_FALSE(openAdvice(run, evaluation, u"S"_s));
    EXPECT_FALSE(
        openAdvice(test::plainRun(), evaluation::evaluate(test::risingMethod(), test::plainRun()), u"S"_s));
}

TEST(RepeatedBy, IsTheSampleOfTheRackThatCameOutReportable)
{
    run::Run run = test::plainRun();
    run.tubes[1].readings[u"A2"_s] = 1.9;
    run.tubes[2].readings[u"A2"_s] = 1.9;
    const auto evaluated = [&] { return evaluation::evaluate(test::risingMethod(), run); };
    evaluation::Evaluation evaluation = evaluated();
    ASSERT_EQ(evaluation.results[0].verdict, evaluation::Verdict::Repeat);
    EXPECT_TRUE(repeatedBy(run, evaluation, evaluation.results[0]).isEmpty());
    const auto repeat = repeatInRack(test::risingMethod(), run, u"S"_s, dilute(10), glass(), nullptr);
    run.samples.push_back(repeat->sample);
    run.tubes.insert(run.tubes.end(), repeat->tubes.begin(), repeat->tubes.end());
    evaluation = evaluated();
    EXPECT_TRUE(repeatedBy(run, evaluation, evaluation.results[0]).isEmpty()) << "not read yet";
    for (std::size_t tube = 3; tube < run.tubes.size(); ++tube)
        run.tubes[tube].readings = {{u"A1"_s, 0.1}, {u"A2"_s, 0.610}};
    evaluation = evaluated();
    EXPECT_EQ(repeatedBy(run, evaluation, evaluation.results[0]), u"S, 10-fold"_s);
    EXPECT_TRUE(repeatedBy(run, evaluation, evaluation.results[1]).isEmpty()) << "which is reportable itself";
    for (std::size_t tube = 3; tube < run.tubes.size(); ++tube)
        run.tubes[tube].readings[u"A2"_s] = 1.9;
    evaluation = evaluated();
    EXPECT_TRUE(repeatedBy(run, evaluation, evaluation.results[0]).isEmpty()) << "still too strong";
}

} // namespace plateau::planning
