// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
// Schedules of random procedures, racks and benches, held against a simulated bench and against trying
// everything.
#include "core/planning/schedule.h"
#include "tests/core/planning/benchsimulation.h"
#include "tests/support/print.h"
#include "tests/support/random.h"
#include "tests/support/soundmethods.h"

#include <gmock/gmock.h>

namespace plateau::planning {
namespace {

using test::forSeeds;
using test::Random;
using ::testing::IsEmpty;

Procedure randomProcedure(Random &random, int operations, int longestHandling_s, int longestWait_s)
{
    Procedure procedure;
    for (int i = 0; i < operations; ++i) {
        Operation operation;
        operation.kind = random.chance() ? Operation::Kind::Add : Operation::Kind::Read;
        operation.handling_s = random.whole(1, longestHandling_s);
        operation.smallestWait_s = random.chance(0.2) ? 0 : random.whole(0, longestWait_s);
        if (random.chance(0.7))
            operation.largestWait_s =
                operation.smallestWait_s + (random.chance(0.3) ? 0 : random.whole(0, longestWait_s));
        procedure.timed.push_back(operation);
    }
    return procedure;
}

std::vector<Span> randomBusySpans(Random &random, int until_s)
{
    std::vector<Span> busy;
    for (int i = random.whole(0, 5); i > 0; --i) {
        const int start_s = random.whole(0, until_s);
        busy.push_back({start_s, start_s + random.whole(1, until_s / 4)});
    }
    return busy;
}

std::vector<int> startsOf(const Schedule &schedule)
{
    std::vector<int> starts;
    for (const int offset_s : schedule.offset_s)
        starts.push_back(schedule.tasks.front().start_s + offset_s);
    return starts;
}

/// The smallest interval that works by trying everything, with its starts; starts are empty if none does.
std::pair<int, std::vector<int>> smallestByTrial(const Procedure &procedure, int tubes, const Bench &bench,
                                                 int longestInterval_s)
{
    for (int interval_s = scheduleGrid_s; interval_s <= longestInterval_s; interval_s += scheduleGrid_s) {
        std::vector<int> starts = test::startsByTrial(procedure, tubes, interval_s, bench);
        if (!starts.empty())
            return {tubes == 1 ? 0 : interval_s, starts};
    }
    return {0, {}};
}

TEST(RandomSchedules, AreTheSmallestIntervalAndTheEarliestOffsetsThereAre)
{
    forSeeds(400, [](Random &random) {
        const Procedure procedure = randomProcedure(random, random.whole(1, 4), 22, 50);
        const int tubes = random.whole(1, 4);
        const auto schedule = scheduleOf(procedure, tubes);
        ASSERT_TRUE(schedule);
        const auto [interval_s, starts] = smallestByTrial(procedure, tubes, {}, 1000);
        EXPECT_EQ(schedule->interval_s, interval_s);
        EXPECT_EQ(startsOf(*schedule), starts);
    });
}

TEST(RandomSchedules, OfNarrowWaitsInALongChainAreTheBestThereAre)
{
    // Where the first choice often leads nowhere.
    forSeeds(1500, [](Random &random) {
        Procedure procedure = randomProcedure(random, random.whole(4, 6), 20, 30);
        for (Operation &operation : procedure.timed)
            operation.largestWait_s = operation.smallestWait_s + random.whole(0, 40);
        const int tubes = random.whole(2, 4);
        const auto schedule = scheduleOf(procedure, tubes);
        ASSERT_TRUE(schedule);
        const auto [interval_s, starts] = smallestByTrial(procedure, tubes, {}, 1000);
        EXPECT_EQ(schedule->interval_s, interval_s);
        EXPECT_EQ(startsOf(*schedule), starts);
    });
}

TEST(RandomSchedules, OnABusyBenchAndWithAnEndAreTheBestThereAreOrThereIsNone)
{
    int none = 0;
    int late = 0;
    forSeeds(400, [&](Random &random) {
        const Procedure procedure = randomProcedure(random, random.whole(1, 3), 22, 50);
        const int tubes = random.whole(1, 4);
        Bench bench{randomBusySpans(random, 200), random.whole(0, 60), {}};
        if (random.chance(0.7))
            bench.latestEnd_s = random.whole(20, 450);
        const auto [interval_s, starts] =
            smallestByTrial(procedure, tubes, bench, bench.latestEnd_s.value_or(1000));
        const auto schedule = scheduleOf(procedure, tubes, bench);
        ASSERT_EQ(schedule.has_value(), !starts.empty());
        if (!schedule) {
            ++none;
            return;
        }
        EXPECT_EQ(schedule->interval_s, interval_s);
        EXPECT_EQ(startsOf(*schedule), starts);
        EXPECT_THAT(test::workedAtTheBench(*schedule, procedure, tubes, bench.busy), IsEmpty());
        late += starts.front() > bench.earliestStart_s + scheduleGrid_s ? 1 : 0;
    });
    // Both ends of what is to be tried did come up.
    EXPECT_GT(none, 50);
    EXPECT_GT(late, 50);
}

TEST(RandomSchedules, LargestRackIsTheLastThatWorks)
{
    forSeeds(100, [](Random &random) {
        const Procedure procedure = randomProcedure(random, random.whole(1, 3), 22, 50);
        const Bench bench{randomBusySpans(random, 100), 0, random.whole(20, 450)};
        const int largest = largestRack(procedure, 6, bench);
        for (int tubes = 1; tubes <= 6; ++tubes) {
            const bool works = !smallestByTrial(procedure, tubes, bench, *bench.latestEnd_s).second.empty();
            EXPECT_EQ(works, tubes <= largest) << tubes << " tubes, largest " << largest;
        }
    });
}

TEST(RandomSchedules, LeaveNoTubeOutsideItsLimitsAtTheBench)
{
    forSeeds(200, [](Random &random) {
        const Procedure procedure = randomProcedure(random, random.whole(1, 10), 40, 1200);
        const int tubes = random.whole(1, 96);
        const auto schedule = scheduleOf(procedure, tubes);
        ASSERT_TRUE(schedule);
        EXPECT_THAT(test::workedAtTheBench(*schedule, procedure, tubes), IsEmpty());
        EXPECT_THAT(faultsOf(*schedule, procedure, tubes), IsEmpty());
    });
}

TEST(RandomSchedules, OfLongChainsAreFoundBesideAnotherRackToo)
{
    forSeeds(20, [](Random &random) {
        Procedure chain = randomProcedure(random, 8, 30, 600);
        for (Operation &operation : chain.timed)
            operation.largestWait_s = operation.smallestWait_s + random.whole(0, 600);
        const Bench bench{randomBusySpans(random, 3000), 0, {}};
        const int tubes = random.whole(12, 48);
        const auto schedule = scheduleOf(chain, tubes, bench);
        ASSERT_TRUE(schedule);
        EXPECT_THAT(test::workedAtTheBench(*schedule, chain, tubes, bench.busy), IsEmpty());
    });
}

TEST(RandomSchedules, KeepEveryMethodThatIsSound)
{
    forSeeds(200, [](Random &random) {
        const assay::Method method = test::soundMethod(random);
        const HandlingTimes handling{random.between(1, 20), random.between(1, 10), random.between(5, 40)};
        const Procedure procedure = procedureOf(method, handling, random.chance());
        const int tubes = random.whole(1, 96);
        const auto schedule = scheduleOf(procedure, tubes);
        ASSERT_TRUE(schedule);
        EXPECT_THAT(test::workedAtTheBench(*schedule, procedure, tubes), IsEmpty());
    });
}

TEST(RandomSchedules, SecondRackLeavesTheFirstAsItIs)
{
    forSeeds(100, [](Random &random) {
        const Procedure one = randomProcedure(random, random.whole(1, 5), 30, 900);
        const Procedure other = randomProcedure(random, random.whole(1, 5), 30, 900);
        const int tubes = random.whole(1, 24);
        const auto first = scheduleOf(one, random.whole(1, 24));
        ASSERT_TRUE(first);
        Bench bench;
        for (const Task &task : first->tasks)
            bench.busy.push_back({task.start_s, task.end_s});
        const auto second = scheduleOf(other, tubes, bench);
        ASSERT_TRUE(second);
        EXPECT_THAT(test::workedAtTheBench(*second, other, tubes, bench.busy), IsEmpty());
        EXPECT_THAT(faultsOf(*second, other, tubes, bench.busy), IsEmpty());
        // Two racks take no longer an interval than each alone.
        EXPECT_EQ(second->interval_s, scheduleOf(other, tubes)->interval_s);
    });
}

} // namespace
} // namespace plateau::planning
