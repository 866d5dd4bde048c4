// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
// What a keyed reading costs: the doubts about it at every key, and the evaluation of its rack once it is
// stored. One frame at 60 Hz is 16.7 ms. Run by hand: cmake -DPLATEAU_BENCHMARKS=ON, then entry_benchmark.
#include "core/evaluation/doubts.h"
#include "core/evaluation/evaluation.h"
#include "tests/benchmarks/percentiles.h"
#include "tests/benchmarks/racks.h"

#include <array>

using namespace plateau;

namespace {

constexpr int turns = 2000;

/// Another reading of another tube each turn, never the same twice in a row.
void changeOne(run::Run &run, int turn)
{
    run::Tube &tube = run.tubes[static_cast<size_t>(turn * 7) % run.tubes.size()];
    tube.readings[QStringLiteral("A2")] = 0.5 + 0.0001 * (turn % 100);
}

void update(benchmark::State &state, const assay::Method &method, run::Run run)
{
    test::Percentiles percentiles;
    int turn = 0;
    for (auto _ : state) {
        changeOne(run, ++turn);
        percentiles.time([&] { benchmark::DoNotOptimize(evaluation::evaluate(method, run)); });
    }
    percentiles.report(state);
}

void updateRack(benchmark::State &state)
{
    update(state, test::risingMethod(), test::timedRackOf(static_cast<int>(state.range(0))));
}

/// A line of three levels, two measurands, sample blanks.
void updateHardestRack(benchmark::State &state)
{
    update(state, test::sequentialMethod(), test::hardestRackOf(static_cast<int>(state.range(0))));
}

/// The last tube, as its number grows from key to key.
void doubt(benchmark::State &state, const assay::Method &method, const run::Run &run, const QString &reading)
{
    constexpr std::array keyed{0.0, 0.5, 0.51, 0.512};
    const int tube = static_cast<int>(run.tubes.size()) - 1;
    test::Percentiles percentiles;
    size_t turn = 0;
    for (auto _ : state) {
        const double absorbance = keyed[++turn % keyed.size()];
        percentiles.time([&] {
            benchmark::DoNotOptimize(evaluation::doubtsAbout(method, run, tube, reading, absorbance));
        });
    }
    percentiles.report(state);
}

void doubtAboutFirstReading(benchmark::State &state)
{
    doubt(state, test::risingMethod(), test::timedRackOf(static_cast<int>(state.range(0))),
          QStringLiteral("A1"));
}

void doubtAboutLaterReading(benchmark::State &state)
{
    doubt(state, test::risingMethod(), test::timedRackOf(static_cast<int>(state.range(0))),
          QStringLiteral("A2"));
}

void doubtInHardestRack(benchmark::State &state)
{
    doubt(state, test::sequentialMethod(), test::hardestRackOf(static_cast<int>(state.range(0))),
          QStringLiteral("A2"));
}

} // namespace

BENCHMARK(updateRack)->Arg(14)->Arg(96)->Iterations(turns)->Unit(benchmark::kMillisecond);
BENCHMARK(updateHardestRack)->Arg(96)->Iterations(turns)->Unit(benchmark::kMillisecond);
BENCHMARK(doubtAboutFirstReading)->Arg(96)->Iterations(turns)->Unit(benchmark::kMillisecond);
BENCHMARK(doubtAboutLaterReading)->Arg(96)->Iterations(turns)->Unit(benchmark::kMillisecond);
BENCHMARK(doubtInHardestRack)->Arg(96)->Iterations(turns)->Unit(benchmark::kMillisecond);

BENCHMARK_MAIN();
