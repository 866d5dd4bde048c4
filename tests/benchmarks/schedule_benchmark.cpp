// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
// The schedule of a rack, which the plan makes anew at every key, over the number of tubes. Run by hand:
// cmake -DPLATEAU_BENCHMARKS=ON, then schedule_benchmark.
#include "core/planning/schedule.h"
#include "tests/support/benches.h"

#include <benchmark/benchmark.h>

using namespace plateau;

namespace {

const planning::HandlingTimes hands{8, 4, 15};

int tubesOf(const benchmark::State &state)
{
    return static_cast<int>(state.range(0));
}

/// One reading before and one after the starter: 3 to 10 min, 15 to 40 min.
void twoReadings(benchmark::State &state)
{
    const planning::Procedure procedure = planning::procedureOf(test::risingMethod(), hands);
    for (auto _ : state)
        benchmark::DoNotOptimize(planning::scheduleOf(procedure, tubesOf(state)));
}

/// Waits of 1 to 2 min and 4 to 6 min.
void shortWaits(benchmark::State &state)
{
    planning::Procedure procedure = planning::procedureOf(test::risingMethod(), hands);
    procedure.timed[0].smallestWait_s = 60;
    procedure.timed[0].largestWait_s = 120;
    procedure.timed[2].smallestWait_s = 240;
    procedure.timed[2].largestWait_s = 360;
    for (auto _ : state)
        benchmark::DoNotOptimize(planning::scheduleOf(procedure, tubesOf(state)));
}

/// Six operations, none of which may be put off.
void sixInAChain(benchmark::State &state)
{
    planning::Procedure procedure;
    for (int i = 0; i < 6; ++i)
        procedure.timed.push_back({i % 2 ? planning::Operation::Kind::Read : planning::Operation::Kind::Add,
                                   {},
                                   i % 2 ? 15 : 12,
                                   180 + 60 * i,
                                   240 + 90 * i});
    for (auto _ : state)
        benchmark::DoNotOptimize(planning::scheduleOf(procedure, tubesOf(state)));
}

/// A second rack as large, in the waits of the first.
void secondRack(benchmark::State &state)
{
    const planning::Procedure procedure = planning::procedureOf(test::risingMethod(), hands);
    planning::Bench bench;
    const auto first = planning::scheduleOf(procedure, tubesOf(state));
    for (const planning::Task &task : first->tasks)
        bench.busy.push_back({task.start_s, task.end_s});
    for (auto _ : state)
        benchmark::DoNotOptimize(planning::scheduleOf(procedure, tubesOf(state), bench));
}

/// To be done in an hour and a half.
void largestRack(benchmark::State &state)
{
    const planning::Procedure procedure = planning::procedureOf(test::risingMethod(), hands);
    for (auto _ : state)
        benchmark::DoNotOptimize(planning::largestRack(procedure, tubesOf(state), {{}, 0, 5400}));
}

} // namespace

BENCHMARK(twoReadings)->Arg(24)->Arg(96)->Unit(benchmark::kMicrosecond);
BENCHMARK(shortWaits)->Arg(24)->Arg(96)->Unit(benchmark::kMicrosecond);
BENCHMARK(sixInAChain)->Arg(24)->Arg(96)->Unit(benchmark::kMicrosecond);
BENCHMARK(secondRack)->Arg(24)->Arg(96)->Unit(benchmark::kMicrosecond);
BENCHMARK(largestRack)->Arg(24)->Arg(96)->Unit(benchmark::kMicrosecond);

BENCHMARK_MAIN();
