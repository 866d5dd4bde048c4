// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// One slip in a run that is otherwise clean, and exactly what is said of it: one mistake, one statement,
// unless the numbers themselves say more.
#include "core/evaluation/evaluation.h"

#include "tests/core/evaluation/found.h"
#include "tests/support/benches.h"

#include <gtest/gtest.h>

using namespace plateau;
using namespace Qt::StringLiterals;
using evaluation::CheckId;
using evaluation::Verdict;
using test::find;

namespace {

/// Of the clean run, in the order of its tubes.
enum Tube : size_t { FirstBlank, SecondBlank, Standard, First, Second, Spiked };

/// A falling reagent: blanks 0.010, a standard and a sample of net signal 0.500 in duplicate, a spiked tube.
run::Run cleanRun()
{
    run::Run run = test::plainRun();
    run.method = u"falling"_s;
    run.standards = {{u"STD"_s, 0.5 * test::risingFactor_g_per_L, {}, {}, {}, 0}};
    run::Tube spiked = test::sampleTube("S", 1.402, 0.742); // 0.150 more than the sample alone
    spiked.role = run::Role::Spiked;
    spiked.spike = run::Spike{u"STD"_s, 0.03};
    run.tubes = {test::blank(1.400, 1.390),
                 test::blank(1.401, 1.391),
                 test::standardTube("STD", 1.400, 0.890),
                 test::sampleTube("S", 1.398, 0.888),
                 test::sampleTube("S", 1.399, 0.889),
                 spiked};
    return run;
}

struct Slip {
    const char *name;
    std::vector<std::tuple<Tube, const char *, double>> keyed;
    std::vector<CheckId> run;
    std::vector<CheckId> sample;
    /// Tubes the result still rests on; none: it has no value.
    int n;
    Verdict verdict;
};

std::vector<Slip> slips()
{
    using enum CheckId;
    using enum Verdict;
    return {
        {"nothing", {}, {}, {}, 2, Reportable},
        {"decimal point right, A2", {{First, "A2", 8.88}}, {}, {ReadingImplausible}, 1, Investigate},
        {"decimal point right, A1", {{First, "A1", 13.98}}, {}, {ReadingImplausible}, 1, Investigate},
        {"decimal point left out, A2", {{First, "A2", 888}}, {}, {ReadingImplausible}, 1, Investigate},
        {"decimal point right in both tubes",
         {{First, "A2", 8.88}, {Second, "A2", 8.89}},
         {},
         {ReadingImplausible},
         0,
         Investigate},
        {"decimal point left, A1", {{First, "A1", 0.1398}}, {}, {WrongDirection}, 1, Investigate},
        // An absorbance of 0.089 is what an exhausted reagent shows: only the other tube says otherwise.
        {"decimal point left, A2",
         {{First, "A2", 0.0888}},
         {},
         {ReserveLow, SignalHigh, DuplicateSpread},
         2,
         Repeat},
        {"A1 and A2 swapped",
         {{First, "A1", 0.888}, {First, "A2", 1.398}},
         {},
         {WrongDirection},
         1,
         Investigate},
        {"A1 and A2 swapped in both tubes",
         {{First, "A1", 0.888}, {First, "A2", 1.398}, {Second, "A1", 0.889}, {Second, "A2", 1.399}},
         {},
         {WrongDirection},
         0,
         Investigate},
        {"starter missing", {{First, "A2", 1.396}}, {}, {SignalLow, DuplicateSpread}, 2, Investigate},
        {"a blank read for the sample",
         {{First, "A1", 1.400}, {First, "A2", 1.390}},
         {},
         {SignalLow, DuplicateSpread},
         2,
         Investigate},
        {"first digit dropped, A1", {{First, "A1", 0.398}}, {}, {WrongDirection}, 1, Investigate},
        {"middle digit dropped, A1", {{First, "A1", 1.98}}, {}, {SignalHigh, DuplicateSpread}, 2, Repeat},
        {"last digit dropped, A2", {{First, "A2", 0.88}}, {}, {}, 2, Reportable},
        {"last two digits dropped, A2", {{First, "A2", 0.8}}, {}, {DuplicateSpread}, 2, Investigate},
        {"decimal point in a blank", {{FirstBlank, "A2", 13.9}}, {ReadingImplausible}, {}, 2, Investigate},
        {"decimal point in both blanks",
         {{FirstBlank, "A2", 13.9}, {SecondBlank, "A2", 13.91}},
         {ReadingImplausible},
         {},
         0,
         Investigate},
        {"A1 and A2 of a blank swapped",
         {{FirstBlank, "A1", 1.390}, {FirstBlank, "A2", 1.400}},
         {BlankSpread},
         {},
         2,
         Investigate},
        {"decimal point in the standard", {{Standard, "A2", 8.9}}, {ReadingImplausible}, {}, 2, Investigate},
        {"A1 and A2 of the standard swapped",
         {{Standard, "A1", 0.890}, {Standard, "A2", 1.400}},
         {WrongDirection},
         {},
         2,
         Investigate},
        {"starter missing in the standard",
         {{Standard, "A2", 1.398}},
         {SignalLow, StandardRecovery},
         {},
         2,
         Investigate},
        {"decimal point in the spiked tube",
         {{Spiked, "A2", 7.42}},
         {},
         {ReadingImplausible},
         2,
         Investigate},
        {"A1 and A2 of the spiked tube swapped",
         {{Spiked, "A1", 0.742}, {Spiked, "A2", 1.402}},
         {},
         {WrongDirection},
         2,
         Investigate},
    };
}

assay::Method fallingWithLimits()
{
    assay::Method method = test::fallingMethod();
    method.acceptance.spikeRecovery_percent = assay::Interval{90, 110};
    return method;
}

run::Run runWithSlip(const Slip &slip)
{
    run::Run run = cleanRun();
    for (const auto &[tube, reading, absorbance] : slip.keyed)
        run.tubes[tube].readings[QString::fromLatin1(reading)] = absorbance;
    return run;
}

std::string wordsOf(const std::vector<CheckId> &ids)
{
    QStringList words;
    for (const CheckId id : ids)
        words.append(evaluation::checkWord(id));
    return words.join(u", "_s).toStdString();
}

std::string failed(const evaluation::Evaluation &evaluation, bool ofSample)
{
    QStringList words;
    for (const evaluation::Check &check : evaluation.checks) {
        if (!check.passed && (check.scope.kind == evaluation::Scope::Kind::Sample) == ofSample)
            words.append(evaluation::checkWord(check.id));
    }
    return words.join(u", "_s).toStdString();
}

} // namespace

TEST(Slips, EachIsSaidOnceAndNothingElseFails)
{
    for (const Slip &slip : slips()) {
        SCOPED_TRACE(slip.name);
        run::Run run = runWithSlip(slip);
        run.uncertainty = test::uncertainties();
        const auto evaluation = evaluation::evaluate(fallingWithLimits(), run);
        EXPECT_EQ(failed(evaluation, false), wordsOf(slip.run));
        EXPECT_EQ(failed(evaluation, true), wordsOf(slip.sample));
        const evaluation::Result &result = evaluation.results.at(0);
        EXPECT_EQ(result.n, slip.n);
        EXPECT_EQ(result.value.has_value(), slip.n > 0);
        EXPECT_EQ(result.expandedUncertainty.has_value(), slip.n > 0);
        EXPECT_EQ(result.verdict, slip.verdict);
        EXPECT_EQ(evaluation.acceptable, slip.run.empty() && slip.sample.empty());
        if (slip.n == 1 || (slip.n == 2 && slip.sample.empty())) {
            EXPECT_NEAR(*result.value, 0.5 * test::risingFactor_g_per_L, 0.02 * test::risingFactor_g_per_L);
        }
    }
}

TEST(Slips, WhatRestsOnUntrustedTubesOnlyIsNotEvenSaidToPass)
{
    using enum CheckId;
    for (const Slip &slip : slips()) {
        if (slip.n > 0 || slip.sample.empty())
            continue;
        SCOPED_TRACE(slip.name);
        const auto evaluation = evaluation::evaluate(fallingWithLimits(), runWithSlip(slip));
        for (const CheckId id : {SignalLow, SignalHigh, AbsorbanceHigh, ReserveLow, DuplicateSpread,
                                 VolumeProportionality, SpikeRecovery})
            EXPECT_EQ(find(evaluation.checks, id, test::sampleS), nullptr)
                << evaluation::checkWord(id).toStdString();
    }
}

TEST(Slips, ImplausibleReadingsCarryNoNumbers)
{
    run::Run run = cleanRun();
    run.tubes[First].readings[u"A2"_s] = 8.88;
    const auto evaluation = evaluation::evaluate(test::fallingMethod(), run);
    EXPECT_FALSE(evaluation.tubes[First].signal);
    EXPECT_FALSE(evaluation.tubes[First].netSignal);
    EXPECT_FALSE(evaluation.tubes[First].concentration_g_per_L);
    const evaluation::Check *check = find(evaluation.checks, CheckId::ReadingImplausible, test::sampleS);
    EXPECT_EQ(check->tubes, std::vector<int>{First});
    EXPECT_EQ(evaluation.results[0].spread, 0);
}

TEST(Slips, BlankThatIsLeftStandsInForTheImplausibleOne)
{
    run::Run run = cleanRun();
    run.tubes[FirstBlank].readings[u"A2"_s] = 13.9;
    const auto evaluation = evaluation::evaluate(test::fallingMethod(), run);
    EXPECT_EQ(evaluation.blanks[0].n, 1);
    EXPECT_NEAR(*evaluation.blanks[0].mean, 0.010, 1e-12);
    EXPECT_NEAR(*evaluation.results[0].value, 0.5 * test::risingFactor_g_per_L, 1e-12);
}

TEST(Slips, BlanksThatAreAllImplausibleLeaveSignalsButNoNetSignals)
{
    run::Run run = cleanRun();
    run.tubes.erase(run.tubes.begin() + SecondBlank);
    run.tubes[FirstBlank].readings[u"A2"_s] = 13.9;
    const auto evaluation = evaluation::evaluate(test::fallingMethod(), run);
    EXPECT_FALSE(evaluation.blanks[0].mean);
    EXPECT_NEAR(*evaluation.tubes[2].signal, 0.510, 1e-12);
    EXPECT_FALSE(evaluation.tubes[2].netSignal);
    EXPECT_FALSE(evaluation.standards[0].recovery_percent);
    EXPECT_EQ(find(evaluation.checks, CheckId::BlankMissing, u"run"_s), nullptr);
}

TEST(Slips, ImplausibleSampleBlankLeavesItsSampleWithoutAValue)
{
    run::Run run = cleanRun();
    run::Tube sampleBlank = test::sampleTube("S", 1.395, 13.93);
    sampleBlank.role = run::Role::SampleBlank;
    run.tubes.push_back(sampleBlank);
    const auto evaluation = evaluation::evaluate(test::fallingMethod(), run);
    EXPECT_FALSE(evaluation.results[0].value);
    EXPECT_EQ(failed(evaluation, true), "reading-implausible");
    EXPECT_EQ(failed(evaluation, false), "");
    EXPECT_NEAR(*evaluation.standards[0].recovery_percent, 100, 1e-9);
}

TEST(Slips, NothingIsCalibratedByAStandardThatRanTheWrongWay)
{
    run::Run run = cleanRun();
    run.calibration = run::Calibration::Standard;
    run.tubes[Standard] = test::standardTube("STD", 0.890, 1.400);
    const auto evaluation = evaluation::evaluate(test::fallingMethod(), run);
    EXPECT_FALSE(evaluation.results[0].value);
    EXPECT_EQ(failed(evaluation, false), "wrong-direction");
    EXPECT_EQ(failed(evaluation, true), "");
}

TEST(Slips, ImplausiblePointOfAnExtrapolatedSeriesCountsThoughItIsNotTheLast)
{
    assay::Method method = test::risingMethod();
    method.extrapolate = assay::Extrapolation{u"A2"_s, 3};
    run::Run run = test::plainRun();
    run.tubes[1].readings[u"A2"_s] = run::ReadingSeries{{15, 0.63}, {20, 6.31}, {25, 0.632}};
    run.tubes[2].readings[u"A2"_s] = run::ReadingSeries{{15, 0.63}, {20, 0.631}, {25, 0.632}};
    const auto evaluation = evaluation::evaluate(method, run);
    EXPECT_EQ(failed(evaluation, true), "reading-implausible");
    EXPECT_EQ(evaluation.results[0].n, 1);
}

TEST(Slips, SmallFallOfAnAbsentAnalyteIsALowResultNotAWrongDirection)
{
    run::Run run = test::plainRun();
    for (const size_t i : {1U, 2U}) {
        run.tubes[i] = test::sampleTube("S", 0.120, 0.121); // net -0.009
        run.tubes[i].sampleVolume_mL = 0.5;
    }
    const auto result = evaluation::evaluate(test::risingMethod(), run).results.at(0);
    EXPECT_EQ(test::failedWords(result.checks), std::vector<QString>{u"signal-low"_s});
    EXPECT_EQ(result.verdict, Verdict::Reportable);
    EXPECT_LT(*result.value, 0);
    EXPECT_TRUE(result.lessThan);
}

TEST(Slips, StarterMissingInOneTubeIsNotAskedForMoreSample)
{
    run::Run run = cleanRun();
    run.tubes[First].readings[u"A2"_s] = 1.396;
    const auto result = evaluation::evaluate(test::fallingMethod(), run).results.at(0);
    const evaluation::Check *low = find(result.checks, CheckId::SignalLow, test::sampleS);
    EXPECT_FALSE(low->advice);
    EXPECT_TRUE(low->message().endsWith(u"look for a missing addition."_s)) << low->message().toStdString();
}
