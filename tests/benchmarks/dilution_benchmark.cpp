// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
// The proposals of a sample's dilution, which the plan makes at one key, with the pipettes and flasks that a laboratory
// starts with. Run by hand: cmake -DPLATEAU_BENCHMARKS=ON, then dilution_benchmark.
#include "core/planning/dilutionplan.h"
#include "core/planning/dilutionsearch.h"
#include "core/planning/glassware.h"
#include "tests/support/benches.h"

#include <benchmark/benchmark.h>

#include <cmath>

using namespace plateau;

namespace {

/// The shipped list.
const planning::Glassware &glassware()
{
    static const planning::Glassware shipped = planning::usualLaboratory().glassware;
    return shipped;
}

/// Two quantities whose signals lie as far apart as the window is wide: a single factor, which no chain of simple steps and
/// none of two makes, serves both. Every chain of up to three steps is looked for.
planning::DilutionQuestion inVain(const assay::Method &method)
{
    const assay::Interval span = planning::aimedSignals(method.window);
    const double strong_g_per_L = 37.123457;
    planning::DilutionQuestion question;
    question.expected_g_per_L = {{QStringLiteral("first"), strong_g_per_L},
                                 {QStringLiteral("second"), strong_g_per_L * span.lower / span.upper}};
    return question;
}

void propose(benchmark::State &state, const assay::Method &method, const planning::DilutionQuestion &question)
{
    std::size_t found = 0;
    for (auto _ : state) {
        const auto proposals = planning::proposeDilutions(method, question, glassware());
        found = proposals.size();
        benchmark::DoNotOptimize(proposals.data());
    }
    state.counters["proposals"] = static_cast<double>(found);
}

/// What is asked day by day: one quantity, one or two steps.
void everyDay(benchmark::State &state)
{
    planning::DilutionQuestion question;
    question.expected_g_per_L = {{QStringLiteral("analyte"), 20}};
    propose(state, test::risingMethod(), question);
}

/// Stronger than two steps with the smallest volume and the largest flask can bring down, 6.25 x 10^8 times: no sample is,
/// but nothing else makes three steps of a full list necessary.
void beyondTwoSteps(benchmark::State &state)
{
    planning::DilutionQuestion question;
    question.expected_g_per_L = {{QStringLiteral("analyte"), 1e9}};
    propose(state, test::risingMethod(), question);
}

/// The worst that can be asked: nearly nothing is found, in any volume of sample that a pipette of the list makes.
void inVainAtEveryVolume(benchmark::State &state)
{
    const assay::Method method = test::sequentialMethod();
    propose(state, method, inVain(method));
}

/// The same where the volume of the sample is given.
void inVainAtOneVolume(benchmark::State &state)
{
    const assay::Method method = test::sequentialMethod();
    planning::DilutionQuestion question = inVain(method);
    question.sampleVolume_mL = 0.1;
    propose(state, method, question);
}

/// The search alone: so many steps out of all that the list makes, to a factor that none of them makes (decadic
/// logarithm 4.123456789).
void searchAlone(benchmark::State &state)
{
    const std::vector<planning::PossibleStep> steps = planning::possibleSteps(glassware());
    constexpr double logFactor = 4.123456789;
    const std::vector<planning::DilutionTarget> targets{{0.1, true, logFactor, logFactor, logFactor, 0}};
    for (auto _ : state)
        benchmark::DoNotOptimize(planning::bestChains(targets, steps, static_cast<int>(state.range(0))));
    state.counters["steps"] = static_cast<double>(steps.size());
}

} // namespace

BENCHMARK(everyDay)->Unit(benchmark::kMillisecond);
BENCHMARK(beyondTwoSteps)->Unit(benchmark::kMillisecond);
BENCHMARK(inVainAtOneVolume)->Unit(benchmark::kMillisecond);
BENCHMARK(inVainAtEveryVolume)->Unit(benchmark::kMillisecond);
BENCHMARK(searchAlone)->Arg(1)->Arg(2)->Arg(3)->Unit(benchmark::kMillisecond);

BENCHMARK_MAIN();
