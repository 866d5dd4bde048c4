// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
// Evaluation with full uncertainty beside reading the same run from JSON, over the number of tubes. Run by
// hand: cmake -DPLATEAU_BENCHMARKS=ON, then evaluation_benchmark.
#include "core/evaluation/evaluation.h"
#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "tests/benchmarks/racks.h"

#include <benchmark/benchmark.h>

using namespace plateau;

namespace {

void evaluateRack(benchmark::State &state)
{
    const assay::Method method = test::risingMethod();
    const run::Run run = test::rackOf(static_cast<int>(state.range(0)));
    for (auto _ : state)
        benchmark::DoNotOptimize(evaluation::evaluate(method, run));
    state.SetComplexityN(state.range(0));
}

void readRack(benchmark::State &state)
{
    const assay::Method method = test::risingMethod();
    const QByteArray json = exchange::writeRun(test::rackOf(static_cast<int>(state.range(0))), &method);
    for (auto _ : state)
        benchmark::DoNotOptimize(exchange::readRun(json, [](const QString &) { return std::nullopt; }));
    state.SetComplexityN(state.range(0));
}

} // namespace

BENCHMARK(readRack)->Arg(14)->Arg(24)->Arg(48)->Arg(96)->Unit(benchmark::kMicrosecond)->Complexity();
BENCHMARK(evaluateRack)->Arg(14)->Arg(24)->Arg(48)->Arg(96)->Unit(benchmark::kMicrosecond)->Complexity();

BENCHMARK_MAIN();
