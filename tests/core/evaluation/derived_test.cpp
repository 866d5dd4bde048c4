// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Quantities that are not measured but come from others, of one run or of two.
#include "core/evaluation/derivedbound.h"
#include "core/evaluation/evaluation.h"
#include "core/evaluation/uncertainty.h"
#include "core/evaluation/working.h"

#include "tests/core/evaluation/found.h"
#include "tests/support/benches.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

using namespace plateau;
using namespace Qt::StringLiterals;
using evaluation::CheckId;
using evaluation::Companion;
using evaluation::Verdict;

namespace {

constexpr double first_g_per_L = 2.12 * 100 / (6300 * 0.1);
constexpr double second_g_per_L = 2.14 * 100 / (6300 * 0.1);

/// Two measurands in sequence, their sum and their difference.
assay::Method sequence()
{
    assay::Method method = test::sequentialMethod();
    method.derived = {{u"total"_s, u"Total"_s, {{{}, u"first"_s, 1}, {{}, u"second"_s, 1}}},
                      {u"excess"_s, u"Excess"_s, {{{}, u"first"_s, 1}, {{}, u"second"_s, -1}}}};
    return method;
}

run::Tube withThird(run::Tube tube, double a3)
{
    tube.readings[u"A3"_s] = a3;
    return tube;
}

run::Run sequenceRun()
{
    run::Run run = test::plainRun();
    run.method = u"sequential"_s;
    run.tubes = {withThird(test::blank(0.100, 0.110), 0.118),
                 withThird(test::sampleTube("S", 0.120, 0.630), 0.938)};
    run.uncertainty = test::uncertainties();
    return run;
}

/// Glucose before and after the inversion of sucrose, each a run of its own: A1 to A2, 2.12 mL, 0.1 mL of
/// sample.
assay::Method glucoseMethod()
{
    assay::Method method = test::risingMethod();
    method.id = u"glucose"_s;
    method.measurands = {{u"glucose"_s, u"Glucose"_s, 180.16, 1, assay::DifferenceSignal{u"A1"_s, u"A2"_s}}};
    return method;
}

constexpr double inversionRatio = 342.30 / 180.16;

assay::Method inversionMethod()
{
    assay::Method method = glucoseMethod();
    method.id = u"inversion"_s;
    method.measurands.front().id = u"all-glucose"_s;
    method.measurands.front().name = u"Glucose after inversion"_s;
    method.derived = {
        {u"sucrose"_s,
         u"Sucrose"_s,
         {{{}, u"all-glucose"_s, inversionRatio}, {u"glucose"_s, u"glucose"_s, -inversionRatio}}}};
    return method;
}

run::Run glucoseRun(double a2 = 0.530)
{
    run::Run run = test::plainRun();
    run.samples = {test::liquid("S", {{5, 50}})};
    run.tubes = {test::blank(0.100, 0.110), test::sampleTube("S", 0.120, a2)};
    run.uncertainty = test::uncertainties();
    return run;
}

run::Run inversionRun()
{
    run::Run run = glucoseRun();
    run.samples = {test::liquid("S", {{5, 50}, {10, 25}})};
    run.tubes = {test::blank(0.101, 0.113), test::sampleTube("S", 0.130, 0.642)};
    return run;
}

const evaluation::Result *resultNamed(const evaluation::Evaluation &evaluation, const QString &quantity)
{
    const auto found = std::ranges::find(evaluation.results, quantity, &evaluation::Result::measurand);
    return found == evaluation.results.end() ? nullptr : &*found;
}

evaluation::Evaluation sucrose(const run::Run &inversion, const run::Run &glucose)
{
    const std::vector<Companion> companions{{glucoseMethod(), glucose}};
    return evaluation::evaluate(inversionMethod(), inversion, {}, companions);
}

} // namespace

TEST(Derived, StandsBehindTheMeasurandsOfItsSample)
{
    run::Run run = sequenceRun();
    run.samples.push_back(test::liquid("T"));
    run.tubes.push_back(withThird(test::sampleTube("T", 0.120, 0.630), 0.938));
    const auto evaluation = evaluation::evaluate(sequence(), run);
    QStringList order;
    for (const evaluation::Result &result : evaluation.results)
        order.append(result.sample + result.measurand);
    EXPECT_EQ(order, (QStringList{u"Sfirst"_s, u"Ssecond"_s, u"Stotal"_s, u"Sexcess"_s, u"Tfirst"_s,
                                  u"Tsecond"_s, u"Ttotal"_s, u"Texcess"_s}));
    EXPECT_TRUE(evaluation.acceptable);
}

TEST(Derived, SumsWhatOneRunMeasured)
{
    const auto evaluation = evaluation::evaluate(sequence(), sequenceRun());
    const evaluation::Result &total = *resultNamed(evaluation, u"total"_s);
    EXPECT_NEAR(*total.value, 0.500 * first_g_per_L + 0.300 * second_g_per_L, 1e-12);
    EXPECT_EQ(total.unit, u"g/L"_s);
    EXPECT_EQ(total.n, 1);
    EXPECT_EQ(total.verdict, Verdict::Reportable);
    ASSERT_EQ(total.terms.size(), 2U);
    EXPECT_EQ(total.terms[1].method, u"sequential"_s);
    EXPECT_EQ(total.terms[1].measurand, u"second"_s);
    EXPECT_NEAR(*total.terms[1].value, 0.300 * second_g_per_L, 1e-12);
    EXPECT_TRUE(resultNamed(evaluation, u"first"_s)->terms.empty());
}

TEST(Derived, ReadingThatTwoTermsShareCountsWithItsSigns)
{
    const auto evaluation = evaluation::evaluate(sequence(), sequenceRun());
    // total = f1 (A2 - A1) + f2 (A3 - A2): A2 all but cancels; in the excess it counts with f1 + f2
    const double uA = 0.002;
    const double f1 = first_g_per_L;
    const double f2 = second_g_per_L;
    const double total = uA * std::sqrt(f1 * f1 + (f1 - f2) * (f1 - f2) + f2 * f2);
    const double excess = uA * std::sqrt(f1 * f1 + (f1 + f2) * (f1 + f2) + f2 * f2);
    EXPECT_NEAR(test::termOf(*resultNamed(evaluation, u"total"_s), u"repeatability"_s), total, 1e-14);
    EXPECT_NEAR(test::termOf(*resultNamed(evaluation, u"total"_s), u"blank"_s), total, 1e-14);
    EXPECT_NEAR(test::termOf(*resultNamed(evaluation, u"excess"_s), u"repeatability"_s), excess, 1e-14);
    EXPECT_NEAR(test::termOf(*resultNamed(evaluation, u"excess"_s), u"blank"_s), excess, 1e-14);
}

TEST(Derived, WhatARunSharesAddsInASumAndCancelsInADifference)
{
    const auto evaluation = evaluation::evaluate(sequence(), sequenceRun());
    const evaluation::Result &total = *resultNamed(evaluation, u"total"_s);
    const evaluation::Result &excess = *resultNamed(evaluation, u"excess"_s);
    const std::vector<std::pair<QString, double>> shared{{u"absorptivity"_s, 0.005},
                                                         {u"path length"_s, 0.002},
                                                         {u"total volume"_s, 0.005},
                                                         {u"sample volume"_s, 0.008}};
    for (const auto &[name, relative] : shared) {
        EXPECT_NEAR(test::termOf(total, name), *total.value * relative, 1e-14) << name.toStdString();
        EXPECT_NEAR(test::termOf(excess, name), *excess.value * relative, 1e-14) << name.toStdString();
    }
}

TEST(Derived, ScatterIsThatOfTheSumInEachTube)
{
    // What the first measurand has too much the second has too little: the sum does not scatter.
    run::Run run = sequenceRun();
    run.tubes = {withThird(test::blank(0.100, 0.110), 0.118),
                 withThird(test::sampleTube("S", 0.120, 0.630), 0.938),
                 withThird(test::sampleTube("S", 0.120, 0.650), 0.938)};
    const auto evaluation = evaluation::evaluate(sequence(), run);
    EXPECT_LT(*resultNamed(evaluation, u"first"_s)->degreesOfFreedom, 30);
    EXPECT_EQ(*resultNamed(evaluation, u"total"_s)->degreesOfFreedom,
              std::numeric_limits<double>::infinity());
    const evaluation::Result &excess = *resultNamed(evaluation, u"excess"_s);
    // s / sqrt(2) of two values d apart is d / 2, and 0.020 counts in both terms
    EXPECT_NEAR(test::termOf(excess, u"repeatability"_s), 0.010 * (first_g_per_L + second_g_per_L), 1e-12);
    EXPECT_LT(*excess.degreesOfFreedom, 30);
    EXPECT_EQ(excess.n, 2);
}

TEST(Derived, SucroseFromTheGlucoseOfTwoRuns)
{
    // Net signals 0.500 and 0.400; 2.12 x 180.16 / (6300 x 0.1) = 0.606253 g/L for one unit.
    // After inversion, diluted 25-fold: 7.57816 g/L; free, diluted tenfold: 2.42501 g/L.
    // (7.57816 - 2.42501) x 342.30 / 180.16 = 9.79086 g/L
    const auto evaluation = sucrose(inversionRun(), glucoseRun());
    ASSERT_EQ(evaluation.results.size(), 2U);
    const evaluation::Result &result = evaluation.results[1];
    EXPECT_NEAR(*result.terms[0].value, 7.57816, 5e-6);
    EXPECT_NEAR(*result.terms[1].value, 2.42501, 5e-6);
    EXPECT_NEAR(*result.value, 9.79086, 2e-5);
    EXPECT_EQ(result.terms[1].method, u"glucose"_s);
    EXPECT_EQ(result.verdict, Verdict::Reportable);
    EXPECT_FALSE(result.lessThan);
    EXPECT_TRUE(evaluation.acceptable);
}

TEST(Derived, AcrossRunsOnlyTheAbsorptivityIsShared)
{
    const evaluation::Result result = sucrose(inversionRun(), glucoseRun()).results[1];
    const double inverted = inversionRatio * *result.terms[0].value;
    const double free = inversionRatio * *result.terms[1].value;
    EXPECT_NEAR(test::termOf(result, u"absorptivity"_s), 0.005 * (inverted - free), 1e-12);
    EXPECT_NEAR(test::termOf(result, u"inversion: path length"_s), 0.002 * inverted, 1e-12);
    EXPECT_NEAR(test::termOf(result, u"glucose: path length"_s), 0.002 * free, 1e-12);
    EXPECT_NEAR(test::termOf(result, u"inversion: dilution step 2 (10 mL to 25 mL)"_s), 0.004 * inverted,
                1e-12);
    EXPECT_NEAR(test::termOf(result, u"glucose: dilution step 1 (5 mL to 50 mL)"_s), 0.004 * free, 1e-12);
    const double factor = inversionRatio * 2.12 * 180.16 / 630;
    EXPECT_NEAR(test::termOf(result, u"glucose: repeatability"_s), 0.002 * std::sqrt(2.0) * factor * 10,
                1e-12);
    EXPECT_NEAR(test::termOf(result, u"inversion: blank"_s), 0.002 * std::sqrt(2.0) * factor * 25, 1e-12);
}

TEST(Derived, AtAnotherWavelengthEachRunHasItsOwnAbsorptivity)
{
    run::Run glucose = glucoseRun();
    glucose.wavelength_nm = 334;
    const evaluation::Result result = sucrose(inversionRun(), glucose).results[1];
    EXPECT_EQ(test::termOf(result, u"absorptivity"_s), 0);
    EXPECT_NEAR(test::termOf(result, u"inversion: absorptivity"_s),
                0.005 * inversionRatio * *result.terms[0].value, 1e-12);
    EXPECT_NEAR(test::termOf(result, u"glucose: absorptivity"_s),
                0.005 * inversionRatio * *result.terms[1].value, 1e-12);
}

TEST(Derived, ScatterInOneRunLimitsTheDegreesOfFreedomOfAll)
{
    run::Run glucose = glucoseRun();
    glucose.tubes.push_back(test::sampleTube("S", 0.120, 0.550)); // 0.020 apart
    const evaluation::Result result = sucrose(inversionRun(), glucose).results[1];
    const double combined = *result.expandedUncertainty / *result.coverageFactor;
    const double scatter = test::termOf(result, u"glucose: repeatability"_s);
    // one term with one degree of freedom (Welch-Satterthwaite)
    EXPECT_NEAR(*result.degreesOfFreedom, std::pow(combined, 4) / std::pow(scatter, 4), 1e-9);
    EXPECT_NEAR(*result.coverageFactor, evaluation::coverageFactor(*result.degreesOfFreedom), 1e-12);
    EXPECT_EQ(result.n, 1);
}

TEST(Derived, WithoutTheOtherRunTheRunStandsOnItsOwn)
{
    const auto alone = evaluation::evaluate(inversionMethod(), inversionRun());
    EXPECT_EQ(alone.results.size(), 1U);
    EXPECT_TRUE(alone.acceptable);

    run::Run otherSample = glucoseRun();
    otherSample.samples[0].id = u"T"_s;
    otherSample.tubes[1].sample = u"T"_s;
    EXPECT_EQ(sucrose(inversionRun(), otherSample), alone);
}

TEST(Derived, MethodWithoutDerivedQuantitiesTakesNothingFromCompanions)
{
    const std::vector<Companion> companions{{inversionMethod(), inversionRun()}};
    EXPECT_EQ(evaluation::evaluate(glucoseMethod(), glucoseRun(), {}, companions),
              evaluation::evaluate(glucoseMethod(), glucoseRun()));
}

TEST(Derived, OfTwoRunsOfTheOtherMethodTheFirstWithTheSampleCounts)
{
    run::Run otherSample = glucoseRun(0.900);
    otherSample.samples[0].id = u"T"_s;
    otherSample.tubes[1].sample = u"T"_s;
    const std::vector<Companion> companions{{glucoseMethod(), otherSample},
                                            {glucoseMethod(), glucoseRun()},
                                            {glucoseMethod(), glucoseRun(0.700)}};
    const auto evaluation = evaluation::evaluate(inversionMethod(), inversionRun(), {}, companions);
    EXPECT_NEAR(*evaluation.results[1].value, 9.79086, 2e-5);
}

/// The sample once more, a hundredfold instead of tenfold, in tubes behind the others.
run::Run withRepeat(run::Run run, double a2, double repeated_a2)
{
    run.tubes.back().readings[u"A2"_s] = a2;
    run.samples.push_back(test::liquid("S again", {{1, 100}}));
    run.samples.back().repeats = u"S"_s;
    run.tubes.push_back(test::sampleTube("S again", 0.120, repeated_a2));
    return run;
}

TEST(Derived, ARepeatTakesTheOtherTermFromWhatItRepeats)
{
    run::Run inversion = inversionRun();
    inversion.samples.push_back(test::liquid("S again", {{1, 100}}));
    inversion.samples.back().repeats = u"S"_s;
    inversion.tubes.push_back(test::sampleTube("S again", 0.130, 0.242)); // net 0.100, hundredfold: 6.06253
    const auto evaluation = sucrose(inversion, glucoseRun());
    ASSERT_EQ(evaluation.results.size(), 4U);
    EXPECT_EQ(evaluation.results[3].sample, u"S again"_s);
    EXPECT_EQ(evaluation.results[3].measurand, u"sucrose"_s);
    EXPECT_NEAR(*evaluation.results[3].value, (6.06253 - 2.42501) * inversionRatio, 2e-5);
}

TEST(Derived, OfASampleThatWasRepeatedInTheOtherRunTheReportableResultCounts)
{
    // Net 1.990 is above the window; the repeat, net 0.100, is within.
    const auto evaluation = sucrose(inversionRun(), withRepeat(glucoseRun(), 2.120, 0.230));
    ASSERT_EQ(evaluation.results.size(), 2U);
    EXPECT_NEAR(*evaluation.results[1].terms[1].value, 0.100 * 100 * 0.606253, 5e-5);

    const auto both = sucrose(inversionRun(), withRepeat(glucoseRun(), 0.530, 0.230));
    EXPECT_NEAR(*both.results[1].terms[1].value, 2.42501, 5e-6) << "its own name first, where both are good";
}

TEST(Derived, ARepeatStandsForASampleThatWasTakenOutOfTheOtherRun)
{
    run::Run glucose = withRepeat(glucoseRun(), 0.530, 0.230);
    std::erase_if(glucose.tubes, [](const run::Tube &tube) { return tube.sample == u"S"_s; });
    std::erase_if(glucose.samples, [](const run::Sample &sample) { return sample.id == u"S"_s; });
    const auto evaluation = sucrose(inversionRun(), glucose);
    ASSERT_EQ(evaluation.results.size(), 2U);
    EXPECT_NEAR(*evaluation.results[1].terms[1].value, 0.100 * 100 * 0.606253, 5e-5);
}

TEST(Derived, UnreadTermLeavesItWithoutAValueAndSaysSo)
{
    run::Run glucose = glucoseRun();
    glucose.tubes[1].readings.erase(u"A2"_s);
    const auto evaluation = sucrose(inversionRun(), glucose);
    const evaluation::Result &result = evaluation.results[1];
    EXPECT_FALSE(result.value);
    EXPECT_FALSE(result.expandedUncertainty);
    EXPECT_EQ(result.verdict, Verdict::Investigate);
    EXPECT_FALSE(evaluation.acceptable);
    const evaluation::Check *check =
        test::find(evaluation.checks, CheckId::ReadingMissing, u"sample S, sucrose"_s);
    ASSERT_NE(check, nullptr);
    EXPECT_FALSE(check->passed);
    EXPECT_EQ(check->message().toStdString(), "Sucrose is not calculated: Glucose (glucose) has no value.");
}

TEST(Derived, TermsOfDifferentUnitsAreNotAddedUp)
{
    run::Run inversion = inversionRun();
    inversion.samples[0] = test::solid("S", 5, 100);
    const auto evaluation = sucrose(inversion, glucoseRun());
    EXPECT_FALSE(evaluation.results[1].value);
    EXPECT_EQ(evaluation.results[1].verdict, Verdict::Investigate);
    EXPECT_TRUE(test::find(evaluation.checks, CheckId::ReadingMissing, u"sample S, sucrose"_s)
                    ->message().contains(u"in g/100 g and Glucose (glucose) in g/L"_s));
}

TEST(Derived, SolidsAddUpInTheirOwnUnit)
{
    run::Run inversion = inversionRun();
    inversion.samples[0] = test::solid("S", 5, 100, {{5, 50}, {10, 25}});
    run::Run glucose = glucoseRun();
    glucose.samples[0] = test::solid("S", 4, 50, {{5, 50}});
    const evaluation::Result result = sucrose(inversion, glucose).results[1];
    EXPECT_EQ(result.unit, u"g/100 g"_s);
    EXPECT_NEAR(*result.value, (7.57816 * 0.1 / 5 - 2.42501 * 0.05 / 4) * 100 * inversionRatio, 2e-4);
}

TEST(Derived, OtherMethodWithoutTheMeasurandIsSaid)
{
    assay::Method other = glucoseMethod();
    other.measurands.front().id = u"hexose"_s;
    const std::vector<Companion> companions{{other, glucoseRun()}};
    const auto evaluation = evaluation::evaluate(inversionMethod(), inversionRun(), {}, companions);
    EXPECT_TRUE(test::find(evaluation.checks, CheckId::ReadingMissing, u"sample S, sucrose"_s)
                    ->message().contains(u"has no measurand glucose"_s));
}

TEST(Derived, AFaultOfAnOwnTermIsReferredToAndNotRepeated)
{
    run::Run strong = inversionRun();
    strong.tubes[1] = test::sampleTube("S", 0.130, 1.400);
    const auto evaluation = sucrose(strong, glucoseRun());
    const evaluation::Check *own = test::find(evaluation.checks, CheckId::SignalHigh, u"sample S"_s);
    ASSERT_NE(own, nullptr);
    EXPECT_TRUE(own->message().startsWith(u"tube 2: net signal 1.258"_s)) << own->message().toStdString();
    const evaluation::Check *derived =
        test::find(evaluation.checks, CheckId::SignalHigh, u"sample S, sucrose"_s);
    ASSERT_NE(derived, nullptr);
    EXPECT_EQ(derived->message().toStdString(), "Glucose after inversion: the net signal is too high; see there.");
    EXPECT_FALSE(derived->passed);
    EXPECT_FALSE(evaluation.results[1].spread) << "its terms come from different tubes";
    EXPECT_EQ(evaluation.results[0].spread, 0);
}

TEST(Derived, IsNoBetterThanItsWorstTermAndSaysWhy)
{
    run::Run strong = glucoseRun(1.400); // net 1.270
    auto evaluation = sucrose(inversionRun(), strong);
    EXPECT_EQ(evaluation.results[0].verdict, Verdict::Reportable);
    EXPECT_EQ(evaluation.results[1].verdict, Verdict::Repeat);
    const evaluation::Check *high =
        test::find(evaluation.checks, CheckId::SignalHigh, u"sample S, sucrose"_s);
    ASSERT_NE(high, nullptr);
    EXPECT_TRUE(high->message().startsWith(u"Glucose (glucose): tube 2: net signal 1.270"_s))
        << high->message().toStdString();
    EXPECT_TRUE(high->tubes.empty()); // they are of the other run

    run::Run badBlank = glucoseRun();
    badBlank.tubes[0] = test::blank(0.100, 0.180);
    evaluation = sucrose(inversionRun(), badBlank);
    EXPECT_EQ(evaluation.results[1].verdict, Verdict::Investigate);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::BlankHigh, u"sample S, sucrose"_s)->passed);
    EXPECT_TRUE(test::find(evaluation.checks, CheckId::BlankHigh, u"run"_s)->passed);
    EXPECT_FALSE(evaluation.acceptable);
}

TEST(Derived, WhatFailedInTheRunItselfIsNotSaidTwice)
{
    run::Run run = sequenceRun();
    run.tubes[1] = withThird(test::sampleTube("S", 0.120, 1.330), 1.630); // first 1.200
    const auto evaluation = evaluation::evaluate(sequence(), run);
    EXPECT_EQ(resultNamed(evaluation, u"total"_s)->verdict, Verdict::Repeat);
    EXPECT_EQ(test::failedWords(resultNamed(evaluation, u"total"_s)->checks),
              std::vector<QString>{u"signal-high"_s});
    EXPECT_EQ(test::failedWords(evaluation.checks), std::vector<QString>{u"signal-high"_s});
}

TEST(Derived, DifferenceWithinItsUncertaintyIsReportedAsLessThan)
{
    run::Run inversion = inversionRun();
    inversion.samples[0].dilution = {{5, 50}};
    inversion.tubes[1] = test::sampleTube("S", 0.130, 0.543); // net 0.401 where the free has 0.400
    const evaluation::Result above = sucrose(inversion, glucoseRun()).results[1];
    EXPECT_EQ(above.verdict, Verdict::Reportable);
    EXPECT_GT(*above.value, 0);
    EXPECT_LT(*above.value, *above.expandedUncertainty);
    EXPECT_NEAR(*above.lessThan, *above.value + *above.expandedUncertainty, 1e-12);

    inversion.tubes[1] = test::sampleTube("S", 0.130, 0.540); // net 0.398
    const evaluation::Result below = sucrose(inversion, glucoseRun()).results[1];
    EXPECT_LT(*below.value, 0);
    EXPECT_NEAR(*below.lessThan, *below.expandedUncertainty, 1e-12);
}

TEST(Derived, DifferenceOfWhatIsBelowItsLimitIsBelowThatLimit)
{
    run::Run inversion = inversionRun();
    inversion.samples[0].dilution.clear();
    inversion.tubes[1] = test::sampleTube("S", 0.130, 0.192); // net 0.050
    inversion.tubes[1].sampleVolume_mL = 0.5;
    run::Run glucose = inversion;
    glucose.tubes[1] = test::sampleTube("S", 0.130, 0.143);
    glucose.tubes[1].sampleVolume_mL = 0.5;
    const evaluation::Evaluation evaluation = sucrose(inversion, glucose);
    EXPECT_EQ(evaluation.results[1].verdict, Verdict::Reportable);
    EXPECT_GT(*evaluation.results[1].value, *evaluation.results[1].expandedUncertainty);
    EXPECT_NEAR(*evaluation.results[1].lessThan, inversionRatio * 0.1 * 2.12 * 180.16 / (6300 * 0.5), 1e-12);
}

namespace {

/// Falling: a reserve below 0.1 says that the reagent was used up.
assay::Method fallingSequence()
{
    assay::Method method = sequence();
    method.direction = assay::Direction::Falling;
    method.window.maxSignal = 2.0;
    method.window.reserveAbsorbance = 0.1;
    return method;
}

run::Run fallingRun(double a2, double a3)
{
    run::Run run = sequenceRun();
    run.tubes = {withThird(test::blank(1.800, 1.800), 1.800),
                 withThird(test::sampleTube("S", 1.800, a2), a3)};
    return run;
}

/// Sucrose in a falling reagent, by the net signals of the two runs; 0.100 or more must remain of 1.700.
evaluation::Result fallingSucrose(double inverted, double free)
{
    assay::Method inversion = inversionMethod();
    assay::Method glucose = glucoseMethod();
    for (assay::Method *method : {&inversion, &glucose}) {
        method->direction = assay::Direction::Falling;
        method->window = {0.1, 1.65, 2.0, 0.1};
    }
    run::Run run = inversionRun();
    run.samples = glucoseRun().samples;
    run.tubes = {test::blank(1.700, 1.700), test::sampleTube("S", 1.700, 1.700 - inverted)};
    run::Run other = run;
    other.tubes[1].readings[u"A2"_s] = 1.700 - free;
    const std::vector<Companion> companions{{glucose, other}};
    return evaluation::evaluate(inversion, run, {}, companions).results[1];
}

} // namespace

TEST(Derived, SumOfWhatIsOnlyKnownToBeLargerIsGreaterThan)
{
    const auto evaluation = evaluation::evaluate(fallingSequence(), fallingRun(1.300, 0.050));
    const evaluation::Result &second = *resultNamed(evaluation, u"second"_s);
    ASSERT_TRUE(second.greaterThan) << "the reagent was used up by the second";
    ASSERT_FALSE(resultNamed(evaluation, u"first"_s)->greaterThan);
    const evaluation::Result &total = *resultNamed(evaluation, u"total"_s);
    EXPECT_NEAR(*total.greaterThan, 0.500 * first_g_per_L + 1.250 * second_g_per_L, 1e-12);
    EXPECT_EQ(*total.greaterThan, *total.value);
    EXPECT_FALSE(total.lessThan);
    EXPECT_EQ(total.verdict, Verdict::Repeat);
    const auto sections =
        evaluation::working(fallingSequence(), fallingRun(1.300, 0.050), evaluation, u"S"_s, u"total"_s);
    EXPECT_TRUE(sections[1].lines.back().value.startsWith(u"> "_s));
}

TEST(Derived, WhatIsTakenOffAndOnlyKnownToBeLargerLeavesAnUpperBound)
{
    const auto evaluation = evaluation::evaluate(fallingSequence(), fallingRun(0.800, 0.050));
    ASSERT_TRUE(resultNamed(evaluation, u"second"_s)->greaterThan);
    const evaluation::Result &excess = *resultNamed(evaluation, u"excess"_s);
    EXPECT_FALSE(excess.greaterThan);
    EXPECT_NEAR(*excess.lessThan, 1.000 * first_g_per_L - 0.750 * second_g_per_L, 1e-12);
    EXPECT_EQ(excess.verdict, Verdict::Repeat);
}

TEST(Derived, UpperBoundThatIsNotAboveZeroSaysNothing)
{
    const auto evaluation = evaluation::evaluate(fallingSequence(), fallingRun(1.300, 0.050));
    const evaluation::Result &excess = *resultNamed(evaluation, u"excess"_s);
    EXPECT_FALSE(excess.value);
    EXPECT_FALSE(excess.lessThan);
    EXPECT_FALSE(excess.greaterThan);
    EXPECT_FALSE(excess.expandedUncertainty);
    EXPECT_EQ(excess.verdict, Verdict::Repeat);
    EXPECT_TRUE(excess.checks.front().message().startsWith(
        u"Excess is not calculated: Second is only known to be larger"_s))
        << excess.checks.front().message().toStdString();
}

TEST(Derived, OnlyKnownToBeLargerOnBothSidesHasNoValue)
{
    const evaluation::Result added = fallingSucrose(1.650, 0.400);
    EXPECT_EQ(*added.greaterThan, *added.value);
    const evaluation::Result both = fallingSucrose(1.650, 1.620);
    EXPECT_TRUE(both.terms[0].value && both.terms[1].value);
    EXPECT_FALSE(both.value);
    EXPECT_FALSE(both.greaterThan);
    EXPECT_FALSE(both.lessThan);
    EXPECT_EQ(both.verdict, Verdict::Repeat);
}

TEST(Derived, LowerBoundCountsWhatIsBelowItsLimitOnItsSafeSide)
{
    const double limit = inversionRatio * 10 * 0.1 * 2.12 * 180.16 / (6300 * 0.5);
    evaluation::Result open;
    open.value = open.greaterThan = 5;
    evaluation::Result below;
    below.value = 0.05;
    below.lessThan = limit;
    EXPECT_NEAR(evaluation::boundOf({{2, &open}, {1, &below}})->value, 10, 1e-12);
    EXPECT_NEAR(evaluation::boundOf({{2, &open}, {-1, &below}})->value, 10 - limit, 1e-12);
    evaluation::Result known;
    known.value = 20;
    const auto upper = evaluation::boundOf({{1, &known}, {1, &below}, {-2, &open}});
    EXPECT_FALSE(upper->isLower);
    EXPECT_NEAR(upper->value, 20 + limit - 10, 1e-12);
    EXPECT_FALSE(evaluation::boundOf({{1, &known}, {1, &below}}));
}

TEST(Derived, WithoutUncertaintyOfEveryRunThereIsNone)
{
    run::Run glucose = glucoseRun();
    glucose.uncertainty.reset();
    const evaluation::Result result = sucrose(inversionRun(), glucose).results[1];
    EXPECT_NEAR(*result.value, 9.79086, 2e-5);
    EXPECT_FALSE(result.expandedUncertainty);
    EXPECT_TRUE(result.budget.empty());
}

TEST(Derived, IsWrittenOutFromTheResultsItComesFrom)
{
    const auto evaluation = sucrose(inversionRun(), glucoseRun());
    const auto sections =
        evaluation::working(inversionMethod(), inversionRun(), evaluation, u"S"_s, u"sucrose"_s);
    ASSERT_EQ(sections.size(), 3U);
    EXPECT_EQ(sections[0].lines[1].what, u"c2: glucose"_s);
    EXPECT_EQ(sections[0].lines[1].value, u"2.4250\u00a0g/L"_s);
    EXPECT_EQ(sections[1].lines[0].formula, u"1.9000 x c1 - 1.9000 x c2"_s);
    EXPECT_EQ(sections[1].lines[0].numbers, u"1.9000 x 7.5782 - 1.9000 x 2.4250"_s);
    EXPECT_EQ(sections[1].lines[0].value, u"9.7909\u00a0g/L"_s);
}
