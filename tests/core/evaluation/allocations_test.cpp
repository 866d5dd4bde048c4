// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// What an evaluation asks of the heap, counted: it is worked out anew at every key. How long it takes is for the benchmarks.
#include "core/evaluation/evaluation.h"
#include "tests/benchmarks/racks.h"

#include <gtest/gtest.h>

#include <atomic>
#include <cstddef>

namespace {

std::atomic<long> allocations{0};

} // namespace

// Stands before the C library's own, for Qt's containers as well.
extern "C" void *__libc_malloc(std::size_t size);
extern "C" void *malloc(std::size_t size)
{
    ++allocations;
    return __libc_malloc(size);
}

namespace plateau::test {

namespace {

long allocationsOf(int tubes)
{
    const assay::Method method = risingMethod();
    const run::Run run = timedRackOf(tubes);
    evaluation::evaluate(method, run); // what is made once for all
    const long before = allocations;
    evaluation::evaluate(method, run);
    return allocations - before;
}

} // namespace

TEST(Allocations, OfAnEvaluationGrowWithItsTubesAndNoFaster)
{
    const long of24 = allocationsOf(24);
    const long of48 = allocationsOf(48);
    const long of96 = allocationsOf(96);
    EXPECT_GT(of24, 100) << "or they were not counted";
    const long perTube = (of48 - of24) / 24;
    EXPECT_LE(perTube, 400);
    // As many more for the last 48 tubes as for 24 twice; a quarter for the searches whose depth grows.
    EXPECT_LE(of96 - of48, 2 * (of48 - of24) * 5 / 4);
}

} // namespace plateau::test
