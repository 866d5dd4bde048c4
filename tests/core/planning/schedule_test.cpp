// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/schedule.h"
#include "tests/core/planning/benchsimulation.h"
#include "tests/support/print.h"

#include <gmock/gmock.h>

namespace plateau::planning {

void PrintTo(const Span &span, std::ostream *stream)
{
    *stream << span.start_s << " to " << span.end_s;
}

namespace {

using namespace Qt::StringLiterals;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

using enum Operation::Kind;

/// Every task 20 s; 3 to 10 min to A1, 15 to 40 min from the starter to A2.
Procedure plainProcedure()
{
    return {{{Add, {u"buffer"_s}, 10, 0, {}}, {Add, {u"water"_s}, 10, 0, {}}},
            {{Add, {u"sample"_s}, 20, 180, 600},
             {Read, {u"A1"_s}, 20, 0, {}},
             {Add, {u"starter"_s}, 20, 900, 2400},
             {Read, {u"A2"_s}, 20, 0, {}}}};
}

std::vector<Span> handsOf(const Schedule &schedule)
{
    std::vector<Span> busy;
    for (const Task &task : schedule.tasks)
        busy.push_back({task.start_s, task.end_s});
    return busy;
}

TEST(Schedule, TwelveTubesGoThroughInSweeps)
{
    const auto schedule = scheduleOf(plainProcedure(), 12);
    ASSERT_TRUE(schedule);
    // Samples 0 to 4:00. A1 from 4:00 on, 3:40 after each sample. Starter from 8:00 on, A2 15 min after it.
    EXPECT_EQ(schedule->interval_s, 20);
    EXPECT_THAT(schedule->offset_s, ElementsAre(0, 240, 480, 1400));
    EXPECT_THAT(freeBetween(handsOf(*schedule)), ElementsAre(Span{720, 1400}));
    EXPECT_EQ(schedule->firstReading_s, 240);
    EXPECT_EQ(schedule->lastReading_s, 1640);
    EXPECT_EQ(schedule->setUp_s, 240);
    ASSERT_EQ(schedule->tasks.size(), 48u);
    EXPECT_EQ(schedule->tasks[0], (Task{0, 0, 0, 20}));
    EXPECT_EQ(schedule->tasks[13], (Task{1, 1, 260, 280}));
    EXPECT_EQ(schedule->tasks[47], (Task{11, 3, 1620, 1640}));
    EXPECT_THAT(test::workedAtTheBench(*schedule, plainProcedure(), 12), IsEmpty());
}

TEST(Schedule, SweepsInterleaveWhereTheFirstWaitIsTooShortForAWholeOne)
{
    // 31 tubes are pipetted in 10:20, just when A1 of the first is due at the latest.
    EXPECT_EQ(scheduleOf(plainProcedure(), 31)->interval_s, 20);
    EXPECT_THAT(scheduleOf(plainProcedure(), 31)->offset_s, ElementsAre(0, 620, 1240, 2160));
    // With one more, each A1 is read between two samples; the starter takes the samples' turns from 21:20 on,
    // when those are done, and A2 is read between two starters.
    const auto schedule = scheduleOf(plainProcedure(), 32);
    EXPECT_EQ(schedule->interval_s, 40);
    EXPECT_THAT(schedule->offset_s, ElementsAre(0, 220, 1280, 2220));
    EXPECT_EQ(schedule->lastReading_s, 2220 + 31 * 40 + 20);
}

TEST(Schedule, SingleTubeWaitsNoLongerThanItMust)
{
    const auto schedule = scheduleOf(plainProcedure(), 1);
    EXPECT_EQ(schedule->interval_s, 0);
    EXPECT_THAT(schedule->offset_s, ElementsAre(0, 200, 220, 1140));
    EXPECT_THAT(freeBetween(handsOf(*schedule)), ElementsAre(Span{20, 200}, Span{240, 1140}));
}

TEST(Schedule, WaitWithoutPlayIsKeptToTheSecond)
{
    Procedure procedure = plainProcedure();
    procedure.timed[0] = {Add, {u"sample"_s}, 12, 60, 60};
    const auto schedule = scheduleOf(procedure, 3);
    // 12 s and 60 s: no line of the 5 s grid.
    EXPECT_EQ(schedule->offset_s[1], 72);
    EXPECT_EQ(schedule->interval_s, 20);
    EXPECT_THAT(test::workedAtTheBench(*schedule, procedure, 3), IsEmpty());
}

TEST(Schedule, NothingToScheduleGivesNothing)
{
    EXPECT_FALSE(scheduleOf(plainProcedure(), 0));
    EXPECT_FALSE(scheduleOf(plainProcedure(), -1));
    EXPECT_FALSE(scheduleOf({plainProcedure().setUp, {}}, 12));
}

TEST(Schedule, SecondRackWorksInTheWaitsOfTheFirst)
{
    const auto first = scheduleOf(plainProcedure(), 12);
    const auto second = scheduleOf(plainProcedure(), 12, {handsOf(*first), 0, {}});
    ASSERT_TRUE(second);
    EXPECT_EQ(second->interval_s, 20);
    // Samples and A1 from 12:00 to 20:00. The starter needs 4:00 and has 3:20 left before the first rack's
    // A2.
    EXPECT_THAT(second->offset_s, ElementsAre(0, 240, 920, 1840));
    EXPECT_EQ(second->tasks.front().start_s, 720);
    EXPECT_EQ(second->lastReading_s, 720 + 1840 + 240);
    std::vector<Span> both = handsOf(*first);
    for (const Span &span : handsOf(*second))
        both.push_back(span);
    EXPECT_THAT(freeBetween(both), ElementsAre(Span{1200, 1400}, Span{1880, 2560}));
    EXPECT_THAT(test::workedAtTheBench(*second, plainProcedure(), 12, handsOf(*first)), IsEmpty());
    EXPECT_EQ(first, scheduleOf(plainProcedure(), 12));
}

TEST(FreeBetween, IsAMinuteAtLeastBetweenAllThatIsDone)
{
    EXPECT_THAT(freeBetween({}), ElementsAre());
    EXPECT_THAT(freeBetween({{100, 130}}), ElementsAre());
    // In any order; one that lies within another does not end it.
    EXPECT_THAT(freeBetween({{300, 330}, {0, 200}, {20, 60}, {259, 270}, {390, 400}}),
                ElementsAre(Span{330, 390}));
}

TEST(Schedule, StartsNoEarlierThanAsked)
{
    const auto schedule = scheduleOf(plainProcedure(), 12, {{}, 61, {}});
    EXPECT_EQ(schedule->tasks.front().start_s, 65);
    EXPECT_THAT(schedule->offset_s, ElementsAre(0, 240, 480, 1400));
}

TEST(Schedule, LatestEndDecidesHowManyTubesThereCanBe)
{
    EXPECT_TRUE(scheduleOf(plainProcedure(), 12, {{}, 0, 1640}));
    EXPECT_FALSE(scheduleOf(plainProcedure(), 12, {{}, 0, 1639}));
    EXPECT_EQ(largestRack(plainProcedure(), 96, {{}, 0, 1640}), 12);
    EXPECT_EQ(largestRack(plainProcedure(), 96, {{}, 0, 1639}), 11);
    EXPECT_EQ(largestRack(plainProcedure(), 8, {{}, 0, 1640}), 8);
    // One tube needs 19:20.
    EXPECT_EQ(largestRack(plainProcedure(), 96, {{}, 0, 1160}), 1);
    EXPECT_EQ(largestRack(plainProcedure(), 96, {{}, 0, 1159}), 0);
    EXPECT_EQ(largestRack(plainProcedure(), 96), 96);
    EXPECT_EQ(largestRack(plainProcedure(), 0), 0);
}

TEST(Split, FillsAsFewRacksAsPossibleAlike)
{
    EXPECT_THAT(splitOf(40, 4, 24), ElementsAre(20, 20));
    EXPECT_THAT(splitOf(41, 4, 24), ElementsAre(14, 14, 13));
    EXPECT_THAT(splitOf(20, 4, 24), ElementsAre(20));
    EXPECT_THAT(splitOf(3, 0, 1), ElementsAre(1, 1, 1));
}

TEST(Split, KeepsReplicatesTogether)
{
    // Room for 9 beside the 4: four pairs.
    EXPECT_THAT(splitOf(10, 4, 13, 2), ElementsAre(6, 4));
    EXPECT_THAT(splitOf(9, 4, 13, 2), ElementsAre(6, 3));
}

TEST(Split, WithoutRoomThereIsNone)
{
    EXPECT_THAT(splitOf(10, 4, 4), IsEmpty());
    EXPECT_THAT(splitOf(10, 4, 0), IsEmpty());
    EXPECT_THAT(splitOf(10, 4, 5, 2), IsEmpty());
    EXPECT_THAT(splitOf(0, 4, 24), IsEmpty());
}

TEST(ScheduleFaults, GoodScheduleHasNone)
{
    EXPECT_THAT(faultsOf(*scheduleOf(plainProcedure(), 12), plainProcedure(), 12), IsEmpty());
}

TEST(ScheduleFaults, NamesTubeStepAndTimes)
{
    Schedule schedule = *scheduleOf(plainProcedure(), 1);
    schedule.tasks[1] = {0, 1, 190, 210};
    EXPECT_THAT(
        faultsOf(schedule, plainProcedure(), 1),
        ElementsAre(u"Tube 1: reading A1 comes 2:50 after adding sample, at least 3:00 is needed."_s));
    schedule.tasks[1] = {0, 1, 625, 645};
    schedule.tasks[2] = {0, 2, 650, 670};
    schedule.tasks[3] = {0, 3, 1570, 1590};
    EXPECT_THAT(
        faultsOf(schedule, plainProcedure(), 1),
        ElementsAre(u"Tube 1: reading A1 comes 10:05 after adding sample, at most 10:00 is allowed."_s));
}

TEST(ScheduleFaults, NamesTasksAtTheSameTime)
{
    Schedule schedule = *scheduleOf(plainProcedure(), 2);
    const auto task = std::find(schedule.tasks.begin(), schedule.tasks.end(), Task{1, 0, 20, 40});
    ASSERT_NE(task, schedule.tasks.end());
    *task = {1, 0, 15, 35};
    EXPECT_THAT(faultsOf(schedule, plainProcedure(), 2),
                ElementsAre(u"Tube 1 and tube 2 both need the hands at 0:15."_s));
    EXPECT_THAT(faultsOf(*scheduleOf(plainProcedure(), 2), plainProcedure(), 2, {{30, 33}}),
                ElementsAre(u"Tube 2 needs the hands at 0:30, when the other rack does too."_s));
}

TEST(ScheduleFaults, NamesWhatIsMissingTooMuchOrTooShort)
{
    Schedule schedule = *scheduleOf(plainProcedure(), 1);
    schedule.tasks[3].end_s -= 5;
    EXPECT_THAT(faultsOf(schedule, plainProcedure(), 1),
                ElementsAre(u"Tube 1: reading A2 has 0:15, it needs 0:20."_s));
    schedule.tasks[3] = schedule.tasks[2];
    schedule.tasks[3].start_s += 600;
    schedule.tasks[3].end_s += 600;
    EXPECT_THAT(
        faultsOf(schedule, plainProcedure(), 1),
        ElementsAre(u"Tube 1: adding starter is there twice."_s, u"Tube 1: reading A2 is missing."_s));
    schedule = *scheduleOf(plainProcedure(), 1);
    schedule.tasks.push_back({1, 0, 5000, 5020});
    EXPECT_THAT(
        faultsOf(schedule, plainProcedure(), 1),
        ElementsAre(u"At 83:20 there is a task for tube 2, step 1, which this rack does not have."_s));
}

} // namespace
} // namespace plateau::planning
