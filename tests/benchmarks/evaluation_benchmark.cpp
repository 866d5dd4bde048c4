// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
// Evaluation with full uncertainty beside reading the same run from JSON, over the number of tubes. Run by
// hand: cmake -DPLATEAU_BENCHMARKS=ON, then evaluation_benchmark.
#include "core/evaluation/evaluation.h"
#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "tests/support/benches.h"

#include <benchmark/benchmark.h>

using namespace plateau;

namespace {

/// Two blanks, two standards, the rest samples in duplicate, each diluted in two steps.
run::Run rackOf(int tubes)
{
    run::Run run = test::plainRun();
    run.uncertainty = test::uncertainties();
    run.standards = {{QStringLiteral("STD"), 0.168, {}, {}, {}, 0}};
    run.samples.clear();
    run.tubes = {test::blank(0.100, 0.110), test::blank(0.101, 0.111), test::standardTube("STD", 0.1, 0.61),
                 test::standardTube("STD", 0.1, 0.611)};
    for (int i = 4; i < tubes; ++i) {
        const QByteArray id = "S" + QByteArray::number(i / 2);
        if (i % 2 == 0)
            run.samples.push_back(test::liquid(id.constData(), {{5, 50}, {10, 25}}));
        run.tubes.push_back(test::sampleTube(id.constData(), 0.120, 0.5 + 0.001 * (i % 2)));
    }
    return run;
}

void evaluateRack(benchmark::State &state)
{
    const assay::Method method = test::risingMethod();
    const run::Run run = rackOf(static_cast<int>(state.range(0)));
    for (auto _ : state)
        benchmark::DoNotOptimize(evaluation::evaluate(method, run));
    state.SetComplexityN(state.range(0));
}

void readRack(benchmark::State &state)
{
    const assay::Method method = test::risingMethod();
    const QByteArray json = exchange::writeRun(rackOf(static_cast<int>(state.range(0))), &method);
    for (auto _ : state)
        benchmark::DoNotOptimize(exchange::readRun(json, [](const QString &) { return std::nullopt; }));
    state.SetComplexityN(state.range(0));
}

} // namespace

BENCHMARK(readRack)->Arg(14)->Arg(24)->Arg(48)->Arg(96)->Unit(benchmark::kMicrosecond)->Complexity();
BENCHMARK(evaluateRack)->Arg(14)->Arg(24)->Arg(48)->Arg(96)->Unit(benchmark::kMicrosecond)->Complexity();

BENCHMARK_MAIN();
