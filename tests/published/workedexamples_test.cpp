// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Worked examples and rules of published methods, from absorbances to the reported value.

#include "core/evaluation/evaluation.h"
#include "core/quality/line.h"
#include "tests/published/pipetting.h"
#include "tests/published/printed.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace plateau::published {

using namespace Qt::StringLiterals;
using evaluation::CheckId;
using run::Role;

namespace {

const evaluation::Check *failedCheck(const evaluation::Evaluation &evaluation, CheckId id)
{
    const auto found = std::find_if(evaluation.checks.begin(), evaluation.checks.end(),
                                    [id](const auto &check) { return check.id == id && !check.passed; });
    return found == evaluation.checks.end() ? nullptr : &*found;
}

run::Standard onlyStandard(double concentration_g_per_L)
{
    run::Standard standard;
    standard.id = u"STD"_s;
    standard.concentration_g_per_L = concentration_g_per_L;
    return standard;
}

run::Tube tubeOfOnlyStandard(double a1, double a2)
{
    run::Tube tube = tubeOf(Role::Standard, a1, a2);
    tube.standard = u"STD"_s;
    return tube;
}

/// Citric acid in juice (see factors_test.cpp): falling, window 0.100 to 0.800 (published, section 8).
assay::Method citricInJuice()
{
    assay::Method method = methodOf(ofTotal(3.12, 0.20), 192.1, nadhAndNadph);
    method.wavelength_nm = 340;
    method.direction = assay::Direction::Falling;
    method.window = {0.100, 0.800, {}, {}};
    return method;
}

} // namespace

// French baccalaureate paper, Polynesia, September 2005, exercise 2, with marking solution,
// https://studylibfr.com/doc/1656488/exo2.-fermentation-dans-le-vin-6-5pts: ethanol against a line through
// the origin, 0.48 at 300 mg/L; the sample at 0.30 was diluted 1 mL to 50 mL from a distillate of 20 mL wine
// made up to 200 mL. Published: slope 0.0016, 94 g/L; unrounded 93.75 (rounding is done last).
TEST(EthanolInWine, FromAbsorbanceThroughTwoDilutions)
{
    const std::vector<double> x{0, 300};
    const std::vector<double> y{0, 0.48};
    EXPECT_THAT(quality::fitLineThroughOrigin(x, y)->slope, Published("0.0016"));

    const auto method = methodOf(ofTotal(3.0, 0.1), 46.07, nadhAndNadph);
    auto run = runOf(liquidSample({{1, 50}, {20, 200}}),
                     {tubeOf(Role::Blank, 0.1, 0.1), tubeOfOnlyStandard(0.1, 0.58), sampleTube(0.1, 0.40)});
    run.standards = {onlyStandard(0.300)};
    run.calibration = run::Calibration::Standard;
    EXPECT_THAT(valueOf(method, run), Published("94"));
    EXPECT_THAT(valueOf(method, run), Recomputed(93.75));
}

// Russian standard for citric acid in juices, document 1200102279, section 8; the result is recomputed from
// published constants.
TEST(CitricAcidInJuice, HalfAnAbsorbanceUnit)
{
    const auto run = runOf(liquidSample(), {tubeOf(Role::Blank, 0.900, 0.890), sampleTube(0.910, 0.400)});
    EXPECT_NEAR(valueOf(citricInJuice(), run), 0.23784, 1e-5);
}

// The same text, published rule: a negative change of the blank is added to that of the sample.
TEST(CitricAcidInJuice, NegativeBlankAddsToTheResult)
{
    const auto level = runOf(liquidSample(), {tubeOf(Role::Blank, 0.900, 0.900), sampleTube(0.910, 0.410)});
    const auto rising = runOf(liquidSample(), {tubeOf(Role::Blank, 0.900, 0.950), sampleTube(0.910, 0.460)});
    EXPECT_THAT(valueOf(citricInJuice(), rising), Recomputed(valueOf(citricInJuice(), level)));
}

// The same text, published rule: the arithmetic mean of two parallels.
TEST(CitricAcidInJuice, ResultIsTheMeanOfTwoParallels)
{
    const auto run = runOf(liquidSample(), {tubeOf(Role::Blank, 0.900, 0.900), sampleTube(0.910, 0.420),
                                            sampleTube(0.910, 0.400)});
    const auto evaluation = evaluation::evaluate(citricInJuice(), run);
    EXPECT_EQ(evaluation.results.at(0).n, 2);
    EXPECT_NEAR(evaluation.results.at(0).value.value(), 0.475676 * 0.500, 1e-6);
    EXPECT_NEAR(*evaluation.results.at(0).spread, 0.475676 * 0.020, 1e-6);
}

// The same text, published rule: a change below 0.100 or above 0.800 asks for another dilution. At 340 nm
// that is 0.0476 to 0.3805 g/L (recomputed).
TEST(CitricAcidInJuice, WindowAsksForAnotherDilution)
{
    const auto evaluated = [](double change) {
        return evaluation::evaluate(citricInJuice(), runOf(liquidSample(), {tubeOf(Role::Blank, 1.0, 1.0),
                                                                            sampleTube(1.1, 1.1 - change)}));
    };
    EXPECT_TRUE(failedCheck(evaluated(0.098), CheckId::SignalLow));
    EXPECT_FALSE(failedCheck(evaluated(0.102), CheckId::SignalLow));
    EXPECT_FALSE(failedCheck(evaluated(0.798), CheckId::SignalHigh));
    EXPECT_TRUE(failedCheck(evaluated(0.802), CheckId::SignalHigh));
    EXPECT_EQ(evaluated(0.802).results.at(0).verdict, evaluation::Verdict::Repeat);
    EXPECT_NEAR(evaluated(0.100).results.at(0).value.value(), 0.0476, 5e-5);
    EXPECT_NEAR(evaluated(0.800).results.at(0).value.value(), 0.3805, 5e-5);
}

// Russian standard for sucrose and glucose in foods, document 1200111376, section 9: 2.0 g in 100 mL, total
// change 0.6, glucose change 0.25. Sucrose from the difference of the two; the value in g/100 g is recomputed
// from published constants, to the published two decimals.
TEST(SucroseAndGlucoseInFoods, GramsInAHundredGrams)
{
    const auto glucose = methodOf(ofTotal(3.54, 0.10), 180.16, nadhAndNadph);
    auto run = runOf(solidSample(2.0, 100), {tubeOf(Role::Blank, 0.1, 0.1), sampleTube(0.2, 0.45)});
    run.wavelength_nm = 340;
    EXPECT_NEAR(valueOf(glucose, run), 1.27, 0.005);

    // The glucose of the sample stands against the total as a blank of the sample's own does.
    const auto sucrose = methodOf(ofTotal(3.54, 0.10), 342.3, nadhAndNadph);
    run.tubes = {tubeOf(Role::Blank, 0.1, 0.1), sampleTube(0.2, 0.8), tubeOf(Role::SampleBlank, 0.2, 0.45)};
    run.tubes.back().sample = u"S"_s;
    EXPECT_NEAR(valueOf(sucrose, run), 3.37, 0.005);
}

// The same text, published rule: sucrose = total change - glucose change. As two runs of two methods, the
// second of which derives sucrose from both, the ratio of the published molar masses between them.
TEST(SucroseAndGlucoseInFoods, SucroseIsTheDifferenceOfTwoRuns)
{
    auto glucose = methodOf(ofTotal(3.54, 0.10), 180.16, nadhAndNadph);
    glucose.id = u"glucose"_s;
    auto total = glucose;
    total.id = u"total"_s;
    const double ratio = 342.3 / 180.16;
    total.derived = {
        {u"sucrose"_s, u"Sucrose"_s, {{{}, u"analyte"_s, ratio}, {u"glucose"_s, u"analyte"_s, -ratio}}}};
    const auto run = [](const assay::Method &method, double change) {
        auto made =
            runOf(solidSample(2.0, 100), {tubeOf(Role::Blank, 0.1, 0.1), sampleTube(0.2, 0.2 + change)});
        made.method = method.id;
        made.wavelength_nm = 340;
        return made;
    };
    const evaluation::Companion companion{glucose, run(glucose, 0.25)};
    const auto evaluation = evaluation::evaluate(total, run(total, 0.6), {}, {&companion, 1});
    ASSERT_EQ(evaluation.results.size(), 2U);
    EXPECT_EQ(evaluation.results[1].measurand, u"sucrose"_s);
    EXPECT_EQ(evaluation.results[1].unit, u"g/100 g"_s);
    EXPECT_NEAR(evaluation.results[1].value.value(), 3.37, 0.005);
    EXPECT_NEAR(evaluation.results[1].value.value(), 19.234 * 0.35 / 2.0, 1e-4);
}

// French order of 19 November 1987 (ECOC8700128A), annex VI, in
// github.com/etalab/lois-non-codifiees-et-reglements-francais,
// arrete/1988/arrete-du-19-novembre-1987-ecoc8700128a/ annexes/vi/article-annexe.md. Published rules: glucose
// = (AG2 - AG1) - (AGB2 - AGB1), fructose = (AG3 - AG2) - (AGB3 - AGB2), each change less that of the blank;
// above a change of 0.5, dilute.
TEST(SugarsInOneCuvette, EachChangeLessThatOfTheBlank)
{
    auto method = cascadeOf({{1.0}, 1.9, 0.1, 0.02}, 0.02, 180.16, nadhAndNadph);
    method.window.maxSignal = 0.5;
    auto blank = tubeOf(Role::Blank, 0.100, 0.112);
    blank.readings[u"A3"_s] = 0.117;
    auto sample = sampleTube(0.150, 0.462);
    sample.readings[u"A3"_s] = 0.987;
    const auto evaluation = evaluation::evaluate(method, runOf(liquidSample(), {blank, sample}));
    ASSERT_EQ(evaluation.tubes.size(), 4U);
    EXPECT_NEAR(evaluation.tubes[2].netSignal.value(), 0.312 - 0.012, 1e-12);
    EXPECT_NEAR(evaluation.tubes[3].netSignal.value(), 0.525 - 0.005, 1e-12);
    const auto *tooHigh = failedCheck(evaluation, CheckId::SignalHigh);
    ASSERT_TRUE(tooHigh);
    EXPECT_EQ(tooHigh->scope.measurand, u"second"_s);
    EXPECT_EQ(evaluation.results.at(1).verdict, evaluation::Verdict::Repeat);
}

// The same order, published rule: the standard carried along is to be found to 98 to 102 %.
TEST(SugarsInOneCuvette, StandardIsToBeFoundTo98To102Percent)
{
    auto method = methodOf(ofTotal(3.02, 0.1), 180.16, {{340, 6300}});
    method.acceptance.standardRecovery_percent = assay::Interval{98, 102};
    const double factor = factor_g_per_L(method, 340);
    const auto recoveryFails = [&](double found_percent) {
        auto run = runOf(liquidSample(), {tubeOf(Role::Blank, 0.1, 0.1), sampleTube(0.1, 0.5),
                                          tubeOfOnlyStandard(0.1, 0.1 + 0.4 * found_percent / 100)});
        run.standards = {onlyStandard(0.4 * factor)};
        return failedCheck(evaluation::evaluate(method, run), CheckId::StandardRecovery) != nullptr;
    };
    EXPECT_TRUE(recoveryFails(97.5));
    EXPECT_FALSE(recoveryFails(98.5));
    EXPECT_FALSE(recoveryFails(101.5));
    EXPECT_TRUE(recoveryFails(102.5));
}

// Acetic acid by ACS, citrate synthase and MDH: (A2 - A0) - (A1 - A0)^2 / (A2 - A0). Formula from memory; it
// follows from the malate equilibrium (x1 NADH = oxaloacetate before, x1^2 / x2 oxaloacetate left at the
// end).
TEST(AceticAcid, CoupledIndicatorFormula)
{
    auto method = cascadeOf({{1.0}, 1.9, 0.1, 0.02}, 0.02, 60.05, nadhAndNadph);
    method.measurands = {
        {u"acetic"_s, u"Acetic acid"_s, 60.05, 1, assay::CoupledIndicatorSignal{u"A1"_s, u"A2"_s, u"A3"_s}}};
    auto sample = sampleTube(0.300, 0.400);
    sample.readings[u"A3"_s] = 0.800;
    const auto evaluation = evaluation::evaluate(method, runOf(liquidSample(), {sample}));
    EXPECT_NEAR(evaluation.tubes.at(0).signal.value(), 0.480, 1e-12);
}

// Slow side reactions: the straight part is extrapolated to the addition of the enzyme. Published rule in
// Commission Regulation (EC) No 900/2008, Annex I, 5.2, in GOST R 51938-2002, appendix B, and in the French
// order of 19 November 1987, annexes V and VI. Numbers constructed: 0.002 a minute on an end point of 0.600.
TEST(SlowSideReaction, StraightPartIsExtrapolatedToTheAddition)
{
    auto method = methodOf({{1.00, 0.10, 0.10}, 1.90, 0.10, 0.02}, 180.16, {{340, 6300}});
    method.extrapolate = assay::Extrapolation{u"A2"_s, 4};
    auto sample = sampleTube(0.100, 0);
    sample.readings[u"A2"_s] =
        run::ReadingSeries{{5, 0.480}, {10, 0.590}, {15, 0.630}, {20, 0.640}, {25, 0.650}, {30, 0.660}};
    const auto run = runOf(liquidSample(), {tubeOf(Role::Blank, 0.1, 0.1), sample});
    const auto evaluation = evaluation::evaluate(method, run);
    EXPECT_NEAR(evaluation.tubes.at(1).signal.value(), 0.500, 1e-12);
    ASSERT_EQ(evaluation.series.size(), 1U);
    EXPECT_NEAR(evaluation.series[0].atStart, 0.600, 1e-12);
    EXPECT_NEAR(evaluation.series[0].slope_per_min, 0.002, 1e-12);
    EXPECT_TRUE(evaluation.series[0].ended);
}

// Course scripts on Nielsen, Food Analysis, chapter 3 (github.com/Tai-ShengYeh/food-analysis-statistics):
// spiked 9.6, native 5.1, added 5.0. Published: 90 %.
TEST(SpikeRecovery, FoundLessNativeOverAdded)
{
    const auto method = methodOf(ofTotal(3.02, 0.1), 180.16, {{340, 6300}});
    // One tenth of these numbers as absorbance; the spike brings the standard's 5.0 into the tube.
    auto spiked = tubeOf(Role::Spiked, 0.1, 0.1 + 0.96);
    spiked.sample = u"S"_s;
    spiked.spike = run::Spike{u"STD"_s, 0.05};
    auto run = runOf(liquidSample(), {tubeOf(Role::Blank, 0.1, 0.1), sampleTube(0.1, 0.1 + 0.51), spiked});
    run.standards = {onlyStandard(0.50 * factor_g_per_L(method, 340) * 0.1 / 0.05)};
    const auto evaluation = evaluation::evaluate(method, run);
    EXPECT_THAT(evaluation.spikes.at(0).recovery_percent.value(), Published("90"));
}

} // namespace plateau::published
