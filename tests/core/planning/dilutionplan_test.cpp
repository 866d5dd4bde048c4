// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Proposals against hand calculations, and against a search that tries everything, written here on its own.

#include "core/planning/dilutionplan.h"

#include "core/evaluation/evaluation.h"
#include "core/run/volumes.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "tests/support/random.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <set>
#include <tuple>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using test::Random;

namespace {

/// Two bulb pipettes and three flasks, nothing to set.
Glassware bulbs()
{
    Glassware glass;
    glass.pipettes = {{u"1"_s, 1, 1, 0, 0.4}, {u"5"_s, 5, 5, 0, 0.15}};
    glass.flasks = {{u"50"_s, 50, 0.07}, {u"100"_s, 100, 0.06}, {u"250"_s, 250, 0.03}};
    return glass;
}

DilutionQuestion expecting(double g_per_L, std::optional<double> sampleVolume_mL = std::nullopt)
{
    return {{{u"analyte"_s, g_per_L}}, 340, 10, sampleVolume_mL};
}

std::vector<std::pair<double, double>> volumesOfSteps(const DilutionProposal &proposal)
{
    std::vector<std::pair<double, double>> steps;
    for (const ChainStep &step : proposal.chain)
        steps.emplace_back(step.step.take_mL, step.step.makeUpTo_mL);
    return steps;
}

} // namespace

TEST(PredictedSignal, IsWhatTheEvaluationReadsBack)
{
    const assay::Method method = test::risingMethod();
    const double signal = predictedSignal(method, u"analyte"_s, 1.5, 0.2, 10, 334, 20);
    // 0.15 g/L x 0.2 / 2.12 mL x 6180 x 2 cm / 100
    EXPECT_NEAR(signal, 0.15 * 0.2 / 2.12 * 6180 * 2 / 100, 1e-12);

    run::Run run = test::plainRun();
    run.wavelength_nm = 334;
    run.pathLength_mm = 20;
    run.samples[0].dilution = {{5, 50}};
    run.tubes = {test::blank(0.1, 0.1), test::sampleTube("S", 0.1, 0.1 + signal)};
    run.tubes[1].sampleVolume_mL = 0.2;
    EXPECT_NEAR(*evaluation::evaluate(method, run).results[0].value, 1.5, 1e-12);
}

TEST(PredictedSignal, IsNothingWithoutMeasurandOrAbsorptivity)
{
    const assay::Method method = test::risingMethod();
    EXPECT_EQ(predictedSignal(method, u"other"_s, 1.5, 0.1, 1, 340, 10), 0);
    EXPECT_EQ(predictedSignal(method, u"analyte"_s, 1.5, 0.1, 1, 405, 10), 0);
}

TEST(AimedSignals, StayBelowTheTopAndAboveNothing)
{
    EXPECT_EQ(aimedSignals({0.1, 1.0, {}, {}}), (assay::Interval{0.1, 0.8}));
    EXPECT_EQ(aimedSignals({0, 1.0, {}, {}}), (assay::Interval{0.05 / 3.3, 0.8}));
    EXPECT_EQ(aimedSignals({0.5, 0.6, {}, {}}), (assay::Interval{0.5, 0.6}));
}

TEST(DilutionPlan, AWeakSampleStaysUndiluted)
{
    // One unit of signal is 2.12 x 100 / (6300 x 0.1) = 0.3365 g/L: 0.1 g/L gives 0.297 at 0.1 mL, near the
    // middle of 0.1 to 0.8, which is 0.283.
    const auto proposals = proposeDilutions(test::risingMethod(), expecting(0.1), bulbs());
    ASSERT_FALSE(proposals.empty());
    EXPECT_EQ(proposals[0].sampleVolume_mL, 0.1);
    EXPECT_TRUE(proposals[0].chain.empty());
    EXPECT_EQ(proposals[0].factor, 1);
    EXPECT_EQ(proposals[0].uncertainty_percent, 0);
    EXPECT_NEAR(proposals[0].predictedSignal.at(u"analyte"_s), 0.1 * 0.1 / 2.12 * 63, 1e-12);
}

TEST(DilutionPlan, GlasswareAndItsUncertaintyGoWithTheStep)
{
    const auto proposals = proposeDilutions(test::risingMethod(), expecting(1.0), bulbs());
    ASSERT_FALSE(proposals.empty());
    // Signal 2.97 undiluted: 10-fold 0.297, 20-fold 0.149, 50-fold 0.059 (too weak).
    EXPECT_EQ(volumesOfSteps(proposals[0]), (std::vector<std::pair<double, double>>{{5, 50}}));
    EXPECT_EQ(proposals[0].chain[0].pipette, 1);
    EXPECT_EQ(proposals[0].chain[0].flask, 0);
    EXPECT_NEAR(proposals[0].uncertainty_percent, std::hypot(0.15, 0.07), 1e-12);
    EXPECT_NEAR(*proposals[0].chain[0].step.uncertainty_percent, std::hypot(0.15, 0.07), 1e-12);
    EXPECT_EQ(volumesOfSteps(proposals[1]), (std::vector<std::pair<double, double>>{{5, 100}}));
}

TEST(DilutionPlan, TheMethodsOwnSampleVolumeComesBeforeAnother)
{
    Glassware glass = bulbs();
    glass.pipettes.push_back({u"piston"_s, 0.05, 0.5, 0.01, 0.8});
    const auto proposals = proposeDilutions(test::risingMethod(), expecting(1.0), glass);
    ASSERT_FALSE(proposals.empty());
    EXPECT_EQ(proposals[0].sampleVolume_mL, 0.1);
    // 0.06 mL of a sample of 0.2 g/L needs no dilution, 0.1 mL neither; a given volume is kept.
    EXPECT_EQ(proposeDilutions(test::risingMethod(), expecting(1.0, 0.2), glass)[0].sampleVolume_mL, 0.2);
}

TEST(DilutionPlan, SampleVolumeMayServeInPlaceOfADilution)
{
    Glassware glass = bulbs();
    glass.pipettes.push_back({u"piston"_s, 0.05, 0.5, 0.01, 0.8});
    // Signal 0.089 at 0.1 mL is below 0.1; 0.5 mL gives 0.446, the nearest to 0.5.
    const auto proposals = proposeDilutions(test::risingMethod(), expecting(0.03), glass);
    ASSERT_FALSE(proposals.empty());
    EXPECT_TRUE(proposals[0].chain.empty());
    EXPECT_NEAR(proposals[0].sampleVolume_mL, 0.5, 1e-12);
}

TEST(DilutionPlan, TwoStepsGoFromTheLargeFlaskToTheSmallOne)
{
    // 2970 undiluted: 5000-fold gives 0.594, and one step makes 250-fold at most. 5 in 250 and 1 in 100, or 5
    // in 100 and 1 in 250, is more certain than 1 in 100 and 1 in 50 by more than half a percent counts.
    auto proposals = proposeDilutions(test::risingMethod(), expecting(1000), bulbs());
    ASSERT_FALSE(proposals.empty());
    EXPECT_NEAR(proposals[0].factor, 5000, 1e-9);
    ASSERT_EQ(proposals[0].chain.size(), 2U);
    EXPECT_EQ(proposals[0].chain[0].step.makeUpTo_mL, 250);
    EXPECT_EQ(proposals[0].chain[1].step.makeUpTo_mL, 100);
    EXPECT_NEAR(proposals[0].uncertainty_percent,
                std::sqrt(0.4 * 0.4 + 0.15 * 0.15 + 0.03 * 0.03 + 0.06 * 0.06), 1e-12);
    Glassware onlyOne = bulbs();
    onlyOne.pipettes.pop_back();
    proposals = proposeDilutions(test::risingMethod(), expecting(1000), onlyOne);
    EXPECT_EQ(volumesOfSteps(proposals[0]), (std::vector<std::pair<double, double>>{{1, 100}, {1, 50}}));
}

TEST(DilutionPlan, AThirdStepIsTakenOnlyWhereTwoDoNotDo)
{
    const auto proposals = proposeDilutions(test::risingMethod(), expecting(1e5), bulbs());
    ASSERT_FALSE(proposals.empty());
    for (const DilutionProposal &proposal : proposals)
        EXPECT_EQ(proposal.chain.size(), 3U);
    for (const DilutionProposal &proposal : proposeDilutions(test::risingMethod(), expecting(1000), bulbs()))
        EXPECT_EQ(proposal.chain.size(), 2U);
}

TEST(DilutionPlan, AllMeasurandsComeIntoTheWindowTogether)
{
    const assay::Method method = test::sequentialMethod();
    DilutionQuestion question{{{u"first"_s, 1.0}, {u"second"_s, 3.0}}, 340, 10, {}};
    const auto proposals = proposeDilutions(method, question, bulbs());
    ASSERT_FALSE(proposals.empty());
    for (const DilutionProposal &proposal : proposals) {
        ASSERT_EQ(proposal.predictedSignal.size(), 2U);
        for (const auto &[measurand, signal] : proposal.predictedSignal) {
            EXPECT_GE(signal, 0.1 * (1 - 1e-8)) << measurand.toStdString();
            EXPECT_LE(signal, 0.8 * (1 + 1e-8)) << measurand.toStdString();
        }
    }
    question.expected_g_per_L[u"second"_s] = 0; // none expected: nothing to bring anywhere
    EXPECT_EQ(proposeDilutions(method, question, bulbs())[0].predictedSignal.size(), 1U);
}

TEST(DilutionPlan, TheUsualLaboratoryDilutesWhateverComes)
{
    for (double g_per_L = 0.02; g_per_L < 2e6; g_per_L *= 3.7) {
        const auto proposals =
            proposeDilutions(test::risingMethod(), expecting(g_per_L), usualLaboratory().glassware);
        ASSERT_FALSE(proposals.empty()) << g_per_L;
        EXPECT_LE(proposals[0].chain.size(), 2U) << g_per_L;
        EXPECT_GE(proposals[0].predictedSignal.at(u"analyte"_s), 0.1) << g_per_L;
        EXPECT_LE(proposals[0].predictedSignal.at(u"analyte"_s), 0.8) << g_per_L;
        EXPECT_LE(proposals.size(), 15U);
    }
}

TEST(DilutionPlan, OneMarkGlassComesBeforeAPistonPipetteAndNoGlassTwice)
{
    // Signal 2.97 undiluted at 0.1 mL: 5-fold and 10-fold are both near enough to 0.5; 2 in 10 is more
    // certain.
    const Glassware glass = usualLaboratory().glassware;
    const auto proposals = proposeDilutions(test::risingMethod(), expecting(1.0), glass);
    ASSERT_FALSE(proposals.empty());
    EXPECT_EQ(proposals[0].factor, 5);
    EXPECT_EQ(proposals[0].chain[0].step.makeUpTo_mL, 10) << "no more sample than is needed";
    EXPECT_EQ(proposals[0].sampleVolume_mL, 0.1);
    EXPECT_EQ(glass.pipettes[static_cast<std::size_t>(proposals[0].chain[0].pipette)].step_mL, 0);
    std::set<std::multiset<std::pair<int, int>>> sets;
    for (const DilutionProposal &proposal : proposals) {
        std::multiset<std::pair<int, int>> pieces;
        for (const ChainStep &step : proposal.chain)
            pieces.emplace(step.pipette, step.flask);
        EXPECT_TRUE(sets.insert(pieces).second);
    }
}

TEST(DilutionPlan, ALongerChainMustBeWorthIt)
{
    // Undiluted at the usual volume the signal is in the middle: nothing else is proposed.
    EXPECT_EQ(proposeDilutions(test::risingMethod(), expecting(0.095), usualLaboratory().glassware).size(),
              1U);
    // 1 in 100 with a poor pipette; 10 in 100 twice with a good one is more certain.
    Glassware glass;
    glass.pipettes = {{u"1"_s, 1, 1, 0, 2}, {u"10"_s, 10, 10, 0, 0.1}};
    glass.flasks = {{u"100"_s, 100, 0.05}};
    const auto proposals = proposeDilutions(test::risingMethod(), expecting(10), glass);
    ASSERT_EQ(proposals.size(), 2U);
    EXPECT_EQ(volumesOfSteps(proposals[0]), (std::vector<std::pair<double, double>>{{1, 100}}));
    EXPECT_EQ(volumesOfSteps(proposals[1]), (std::vector<std::pair<double, double>>{{10, 100}, {10, 100}}));
}

TEST(DilutionPlan, SaysWhyThereIsNone)
{
    const auto why = [](const DilutionQuestion &question, const Glassware &glass,
                        const assay::Method &method = test::risingMethod()) {
        EXPECT_TRUE(proposeDilutions(method, question, glass).empty());
        return whyNone(method, question, glass);
    };
    EXPECT_EQ(why({}, bulbs()),
              u"Say how much the sample is expected to hold: a dilution is planned from that."_s);
    EXPECT_EQ(why(expecting(0), bulbs()), why({}, bulbs()));
    EXPECT_EQ(why({{{u"analyte"_s, 1}}, 405, 10, {}}, bulbs()),
              u"The method has no absorptivity at 405\u00a0nm, so no signal can be predicted."_s);
    Glassware glass = bulbs();
    glass.pipettes.push_back({u"piston"_s, 0.05, 0.5, 0.01, 0.8});
    EXPECT_EQ(why(expecting(0.005), glass),
              u"0.5\u00a0mL of the undiluted sample would give a net signal of 0.074 for Analyte, less than the "
              "0.100 that can be measured well."_s);
    EXPECT_EQ(why({{{u"first"_s, 1.0}, {u"second"_s, 10.0}}, 340, 10, {}}, bulbs(), test::sequentialMethod()),
              u"The net signals of Second and First are expected 9.9-fold apart, more than the 8.0-fold that one "
              "dilution can serve: plan a dilution for each."_s);
    const Glassware onlyLarge{{{u"50"_s, 50, 50, 0, 0.1}}, {{u"10"_s, 10, 0.1}}};
    EXPECT_EQ(why(expecting(1), onlyLarge), u"The sample has to be diluted, but no pipette and flask of the "
                                            "laboratory make a dilution."_s);
    // 250 x 250 x 250 is 1.6e7-fold; 1e8 g/L needs 3.7e8-fold.
    EXPECT_EQ(
        why(expecting(1e8), bulbs()),
        u"With 0.1\u00a0mL of sample it has to be diluted 371000000- to 2970000000-fold; no chain of up "
        "to 3 steps with the laboratory's pipettes and flasks does that."_s);
    EXPECT_EQ(whyNone(test::risingMethod(), expecting(1), bulbs()), QString());
}

TEST(DilutionPlan, TheEdgesOfTheSpanBelongToIt)
{
    const assay::Method method = test::risingMethod();
    const double atOne_g_per_L = 2.12 * 100 / (6300 * 0.1);
    const Glassware onlyLarge{{{u"50"_s, 50, 50, 0, 0.1}}, {{u"10"_s, 10, 0.1}}}; // makes no dilution
    EXPECT_FALSE(proposeDilutions(method, expecting(0.8 * atOne_g_per_L), onlyLarge).empty());
    EXPECT_TRUE(proposeDilutions(method, expecting(0.8001 * atOne_g_per_L), onlyLarge).empty());
    EXPECT_FALSE(proposeDilutions(method, expecting(0.1 * atOne_g_per_L), onlyLarge).empty());
    EXPECT_TRUE(proposeDilutions(method, expecting(0.0999 * atOne_g_per_L), onlyLarge).empty());
}

TEST(DilutionPlan, AFixedPipetteTakesItsOneVolume)
{
    Glassware glass;
    glass.pipettes = {{u"fixed 1"_s, 1, 1, 0, 0.5}};
    glass.flasks = {{u"10"_s, 10, 0.1}, {u"25"_s, 25, 0.1}, {u"50"_s, 50, 0.1}};
    // 2.97 undiluted: 10-fold gives 0.297; 29.7: 50-fold 0.594; 297: two steps.
    EXPECT_EQ(volumesOfSteps(proposeDilutions(test::risingMethod(), expecting(1), glass)[0]),
              (std::vector<std::pair<double, double>>{{1, 10}}));
    EXPECT_EQ(volumesOfSteps(proposeDilutions(test::risingMethod(), expecting(10), glass)[0]),
              (std::vector<std::pair<double, double>>{{1, 50}}));
    const auto strong = proposeDilutions(test::risingMethod(), expecting(100), glass);
    ASSERT_FALSE(strong.empty());
    EXPECT_EQ(strong[0].chain.size(), 2U) << "a tenth of what the pipette delivers is no step";
    for (const ChainStep &step : strong[0].chain)
        EXPECT_EQ(step.step.take_mL, 1);
}

TEST(DilutionPlan, ASimplePairComesBeforeANearerOne)
{
    // 3.8 g/L needs 22.6-fold for a signal of 0.5, which 0.44 mL in 10 mL makes best: 0.4 or 0.5 mL do as well.
    Glassware glass;
    glass.pipettes = {{u"piston"_s, 0.1, 1, 0.01, 0.6}};
    glass.flasks = {{u"10"_s, 10, 0.1}};
    for (double g_per_L = 2; g_per_L < 25; g_per_L *= 1.17) {
        const auto proposals = proposeDilutions(test::risingMethod(), expecting(g_per_L), glass);
        ASSERT_FALSE(proposals.empty()) << g_per_L;
        const DilutionProposal &best = proposals[0];
        ASSERT_EQ(best.chain.size(), 1U) << g_per_L;
        const double take_mL = best.chain[0].step.take_mL;
        const std::set<double> simple{1, 0.5, 0.4, 0.25, 0.2, 0.1};
        EXPECT_TRUE(simple.contains(take_mL)) << take_mL;
        EXPECT_EQ(best.factor, 10 / take_mL);
        EXPECT_GE(best.predictedSignal.at(u"analyte"_s), 0.1 * (1 - 1e-9));
        EXPECT_LE(best.predictedSignal.at(u"analyte"_s), 0.8 * (1 + 1e-9));
    }
}

TEST(DilutionPlan, AnOddPairIsTakenWhereNoSimpleOneDoes)
{
    // Signal 2.972 undiluted, 0.35 to 0.36 wanted: 8.25- to 8.49-fold, and by steps of 0.1 mL only 1.2 in 10 does.
    assay::Method method = test::risingMethod();
    method.window.minSignal = 0.35;
    method.window.maxSignal = 0.36 / 0.8;
    Glassware glass;
    glass.pipettes = {{u"piston"_s, 0.1, 2, 0.1, 0.6}};
    glass.flasks = {{u"10"_s, 10, 0.1}};
    const auto proposals = proposeDilutions(method, expecting(1, 0.1), glass);
    ASSERT_FALSE(proposals.empty());
    EXPECT_EQ(volumesOfSteps(proposals[0]), (std::vector<std::pair<double, double>>{{1.2, 10}}));
    EXPECT_EQ(proposals[0].factor, 10 / 1.2) << "never rounded";
}

TEST(DilutionPlan, ASampleVolumeLeavesDiluentThatAPipetteDelivers)
{
    // 0.47 mL would come nearest to 0.5 (0.503), but leaves 0.63 mL of water, and above 0.49 mL the pipette goes by
    // 0.05 mL: 0.45 mL leaves 0.65 mL.
    Glassware glass;
    glass.pipettes = {{u"small"_s, 0.1, 0.49, 0.01, 0.6}, {u"large"_s, 0.5, 5, 0.05, 0.6}};
    const auto proposals = proposeDilutions(test::risingMethod(), expecting(0.036), glass);
    ASSERT_FALSE(proposals.empty());
    EXPECT_NEAR(proposals[0].sampleVolume_mL, 0.45, 1e-12);
    EXPECT_NEAR(proposals[0].predictedSignal.at(u"analyte"_s), 0.036 * 0.45 / 2.12 * 63, 1e-9);
}

TEST(DilutionPlan, WithoutAListSimplePairsOfUsualGlassAreProposed)
{
    const auto proposals = proposeDilutions(test::risingMethod(), expecting(1), {});
    ASSERT_FALSE(proposals.empty());
    // 4-, 5- and 10-fold are near enough; 1 in 5 is less certain by class A than 2 in 10.
    EXPECT_EQ(volumesOfSteps(proposals[0]), (std::vector<std::pair<double, double>>{{2, 10}}));
    for (const DilutionProposal &proposal : proposals) {
        for (const ChainStep &step : proposal.chain) {
            EXPECT_EQ(step.pipette, notListed);
            EXPECT_EQ(step.flask, notListed);
            EXPECT_LE(step.step.makeUpTo_mL, 100);
        }
    }
}

// ---- against a search that tries everything

namespace {

/// What is compared, in the order of the header.
using Order = std::tuple<std::size_t, bool, int, bool, long long, long long, long long>;

struct Bench {
    assay::Method method;
    DilutionQuestion question;
    Glassware glass;
};

double randomVolume_mL(Random &random, double lower, double upper)
{
    return std::round(random.magnitude(lower, upper) * 1000) / 1000;
}

Glassware randomGlassware(Random &random)
{
    Glassware glass;
    for (int i = random.whole(1, 3); i > 0; --i) {
        Pipette pipette;
        pipette.smallest_mL = randomVolume_mL(random, 0.02, 20);
        pipette.step_mL = random.chance() ? 0 : randomVolume_mL(random, 0.002, 5);
        pipette.largest_mL = pipette.step_mL > 0 ? pipette.smallest_mL + random.whole(0, 2) * pipette.step_mL
                                                 : pipette.smallest_mL;
        pipette.uncertainty_percent = random.chance(0.3) ? 0.5 : random.between(0, 2);
        glass.pipettes.push_back(pipette);
    }
    for (int i = random.whole(1, 3); i > 0; --i)
        glass.flasks.push_back({{},
                                random.oneOf(std::vector<double>{5, 10, 20, 50, 100}),
                                random.chance(0.3) ? 0.1 : random.between(0, 1)});
    return glass;
}

Bench randomBench(Random &random)
{
    Bench bench;
    bench.method = random.chance() ? test::risingMethod() : test::sequentialMethod();
    bench.method.window.minSignal = random.chance(0.1) ? 0 : random.between(0.02, 0.5);
    bench.method.window.maxSignal = random.between(0.51, 2);
    assay::Component &sample = bench.method.components[2];
    if (random.chance(0.3))
        sample.range_mL.reset();
    else
        sample.range_mL = assay::Interval{0.02, random.between(0.1, 1.4)}; // beyond what water makes up for
    for (const assay::Measurand &measurand : bench.method.measurands)
        bench.question.expected_g_per_L[measurand.id] =
            random.chance(0.1) ? 0 : random.magnitude(0.003, 3000);
    if (bench.method.measurands.size() == 2 && random.chance(0.7))
        bench.question.expected_g_per_L[u"second"_s] =
            bench.question.expected_g_per_L[u"first"_s] * random.between(0.4, 2.5);
    bench.question.wavelength_nm = random.oneOf(std::vector<int>{334, 340, 365});
    bench.question.pathLength_mm = random.chance() ? 10 : 20;
    if (random.chance(0.2))
        bench.question.sampleVolume_mL = random.between(0.05, 0.3);
    bench.glass = randomGlassware(random);
    return bench;
}

/// What a chain of steps comes to.
struct Made {
    double factor = 1;
    double variance = 0;
    double flasks_mL = 0;
    bool odd = false;
};

/// Other than 2, 2.5, 4, 5, 10 and so on by tens.
bool isOdd(double factor)
{
    for (double decade = 1; decade < 1e6; decade *= 10) {
        for (const double easy : {1.0, 2.0, 2.5, 4.0, 5.0}) {
            if (std::abs(factor / (easy * decade) - 1) < 1e-6)
                return false;
        }
    }
    return true;
}

/// Tries every sample volume with every chain, step by step, each step from the flask before it.
class TryEverything
{
public:
    explicit TryEverything(const Bench &bench)
        : m_bench(bench)
    {
        for (const Flask &flask : bench.glass.flasks) {
            for (const Pipette &pipette : bench.glass.pipettes) {
                for (const double take_mL : settings(pipette)) {
                    if (take_mL < flask.volume_mL)
                        m_steps.push_back({take_mL, flask.volume_mL,
                                           std::pow(pipette.uncertainty_percent, 2) +
                                               std::pow(flask.uncertainty_percent, 2)});
                }
            }
        }
    }

    /// Nothing where no chain does.
    std::optional<Order> best()
    {
        for (const bool withDiluent : {true, false}) {
            for (const std::size_t longest : {std::size_t(2), std::size_t(3)}) {
                for (const double volume_mL : sampleVolumes(withDiluent))
                    extend(volume_mL, longest, {}, {1, 0, 0, false});
                if (m_best)
                    return m_best;
            }
        }
        return m_best;
    }

    /// Of any plan; nothing where it leaves the span.
    std::optional<Order> orderOf(double sampleVolume_mL, std::size_t steps, const Made &made) const
    {
        const auto &[factor, variance, flasks_mL, odd] = made;
        const assay::Window &window = m_bench.method.window;
        const double lower = window.minSignal > 0 ? window.minSignal : 0.005 * 10 / 3.3;
        const double upper = lower < 0.8 * window.maxSignal ? 0.8 * window.maxSignal : window.maxSignal;
        double farthest = 0;
        bool any = false;
        for (const auto &[measurand, g_per_L] : m_bench.question.expected_g_per_L) {
            if (g_per_L <= 0)
                continue;
            any = true;
            const double signal = g_per_L / factor / gramsOfOne(measurand, sampleVolume_mL);
            if (signal < lower * (1 - 1e-9) || signal > upper * (1 + 1e-9))
                return std::nullopt;
            farthest = std::max(
                farthest, std::abs(std::log10(signal / std::clamp(window.maxSignal / 2, lower, upper))));
        }
        if (!any)
            return std::nullopt;
        const long long uncertainty = std::llround(std::sqrt(variance) * 1e7);
        return Order{steps,
                     odd,
                     static_cast<int>(std::floor(farthest / 0.3 + 1e-9)),
                     std::abs(sampleVolume_mL - 0.1) > 1e-9,
                     uncertainty / 5'000'000,
                     std::llround(flasks_mL * 1e7),
                     uncertainty};
    }

private:
    struct Step {
        double take_mL;
        double flask_mL;
        double variance;
    };

    static std::vector<double> settings(const Pipette &pipette)
    {
        std::vector<double> volumes;
        double volume_mL = pipette.smallest_mL;
        do {
            volumes.push_back(volume_mL);
            volume_mL += pipette.step_mL;
        } while (pipette.step_mL > 0 && volume_mL <= pipette.largest_mL + 1e-7);
        return volumes;
    }

    std::vector<double> sampleVolumes(bool withDiluent) const
    {
        if (m_bench.question.sampleVolume_mL)
            return {*m_bench.question.sampleVolume_mL};
        std::vector<double> volumes{0.1};
        const auto &range = m_bench.method.components[2].range_mL;
        for (const Pipette &pipette : m_bench.glass.pipettes) {
            for (const double volume_mL : settings(pipette)) {
                if (range && volume_mL > range->lower - 1e-9 && volume_mL < range->upper + 1e-9 &&
                    (!withDiluent || isSet(1.1 - volume_mL)))
                    volumes.push_back(volume_mL);
            }
        }
        return volumes;
    }

    /// Of water, or there is none to pipette.
    bool isSet(double volume_mL) const
    {
        return volume_mL < 1e-6 || std::ranges::any_of(m_bench.glass.pipettes, [&](const Pipette &pipette) {
                   return std::ranges::any_of(settings(pipette), [&](double setting_mL) {
                       return std::abs(setting_mL - volume_mL) < 1e-6;
                   });
               });
    }

    /// V M / (e d v n), V from the recipe of the benches: what water cannot make up for makes the tube
    /// larger.
    double gramsOfOne(const QString &measurand, double sampleVolume_mL) const
    {
        const double lacking_mL = std::max(0.0, sampleVolume_mL - 0.1 - 1.0);
        const double volume_mL = (measurand == u"second"_s ? 2.14 : 2.12) + lacking_mL;
        const double absorptivity =
            m_bench.method.absorptivity_L_per_mol_cm.at(m_bench.question.wavelength_nm);
        return volume_mL * 100 / (absorptivity * m_bench.question.pathLength_mm / 10 * sampleVolume_mL);
    }

    void extend(double sampleVolume_mL, std::size_t longest, const std::vector<Step> &chain, const Made &made)
    {
        const auto order = orderOf(sampleVolume_mL, chain.size(), made);
        if (order && (!m_best || *order < *m_best))
            m_best = order;
        if (chain.size() == longest)
            return;
        for (const Step &step : m_steps) {
            if (!chain.empty() && step.take_mL > chain.back().flask_mL)
                continue;
            std::vector<Step> longer = chain;
            longer.push_back(step);
            extend(sampleVolume_mL, longest, longer,
                   {made.factor * step.flask_mL / step.take_mL, made.variance + step.variance,
                    made.flasks_mL + step.flask_mL, made.odd || isOdd(step.flask_mL / step.take_mL)});
        }
    }

    const Bench &m_bench;
    std::vector<Step> m_steps;
    std::optional<Order> m_best;
};

void expectSound(const Bench &bench, const DilutionProposal &proposal, const TryEverything &everything)
{
    double factor = 1;
    double variance = 0;
    double flasks_mL = 0;
    bool odd = false;
    double last_mL = std::numeric_limits<double>::infinity();
    for (const ChainStep &made : proposal.chain) {
        const Pipette &pipette = bench.glass.pipettes.at(static_cast<std::size_t>(made.pipette));
        const Flask &flask = bench.glass.flasks.at(static_cast<std::size_t>(made.flask));
        EXPECT_EQ(made.step.makeUpTo_mL, flask.volume_mL);
        EXPECT_GE(made.step.take_mL, pipette.smallest_mL - 1e-7);
        EXPECT_LE(made.step.take_mL, pipette.largest_mL + 1e-7);
        if (pipette.step_mL > 0) {
            EXPECT_LT(std::abs(std::remainder(made.step.take_mL - pipette.smallest_mL, pipette.step_mL)),
                      1e-6);
        }
        EXPECT_LE(made.step.take_mL, last_mL) << "more than the flask before holds";
        last_mL = flask.volume_mL;
        factor *= flask.volume_mL / made.step.take_mL;
        variance += std::pow(pipette.uncertainty_percent, 2) + std::pow(flask.uncertainty_percent, 2);
        flasks_mL += flask.volume_mL;
        odd = odd || isOdd(flask.volume_mL / made.step.take_mL);
    }
    EXPECT_NEAR(proposal.factor, factor, 1e-9 * factor);
    EXPECT_NEAR(proposal.uncertainty_percent, std::sqrt(variance), 1e-9);
    EXPECT_TRUE(
        everything.orderOf(proposal.sampleVolume_mL, proposal.chain.size(), {factor, variance, flasks_mL, odd}))
        << "outside the span";
}

} // namespace

TEST(DilutionPlanProperties, NoneIsBetterThanTheFirstAndNoneIsMissed)
{
    int found = 0;
    int none = 0;
    int longChains = 0;
    for (unsigned seed = 1; seed <= 2000; ++seed) {
        SCOPED_TRACE(seed);
        Random random(seed);
        const Bench bench = randomBench(random);
        const auto proposals = proposeDilutions(bench.method, bench.question, bench.glass);
        TryEverything everything(bench);
        const std::optional<Order> best = everything.best();
        ASSERT_EQ(best.has_value(), !proposals.empty());
        EXPECT_EQ(whyNone(bench.method, bench.question, bench.glass).isEmpty(), best.has_value());
        if (!best) {
            ++none;
            continue;
        }
        ++found;
        std::optional<Order> before;
        for (const DilutionProposal &proposal : proposals) {
            expectSound(bench, proposal, everything);
            Made made{proposal.factor};
            for (const ChainStep &step : proposal.chain) {
                made.variance += std::pow(*step.step.uncertainty_percent, 2);
                made.flasks_mL += step.step.makeUpTo_mL;
                made.odd = made.odd || isOdd(step.step.makeUpTo_mL / step.step.take_mL);
            }
            const auto order = everything.orderOf(proposal.sampleVolume_mL, proposal.chain.size(), made);
            if (!before) {
                EXPECT_EQ(order, best);
            } else {
                EXPECT_LE(*before, *order);
            }
            before = order;
        }
        longChains += proposals[0].chain.size() == 3 ? 1 : 0;
    }
    EXPECT_GT(found, 500);
    EXPECT_GT(none, 200);
    EXPECT_GT(longChains, 20);
}

} // namespace plateau::planning
