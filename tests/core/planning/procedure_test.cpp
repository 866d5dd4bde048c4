// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/procedure.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

namespace plateau::planning {
namespace {

using namespace Qt::StringLiterals;
using namespace assay;

const HandlingTimes hands{8, 4, 15};
using enum Operation::Kind;

TEST(Procedure, BeginsWithTheLastAdditionBeforeTheFirstWait)
{
    const Procedure procedure = procedureOf(test::risingMethod(), hands);
    const std::vector<Operation> setUp{{Add, {u"buffer"_s}, 8, 0, {}}, {Add, {u"water"_s}, 8, 0, {}}};
    const std::vector<Operation> timed{{Add, {u"sample"_s}, 12, 180, 600},
                                       {Read, {u"A1"_s}, 15, 0, {}},
                                       {Add, {u"starter"_s}, 12, 900, 2400},
                                       {Read, {u"A2"_s}, 15, 0, {}}};
    EXPECT_EQ(procedure.setUp, setUp);
    EXPECT_EQ(procedure.timed, timed);
}

TEST(Procedure, AdditionsWithoutAWaitBetweenThemAreOne)
{
    Method method = test::risingMethod();
    method.steps = {
        AddStep{u"sample"_s}, WaitStep{{1, 2}, {}}, AddStep{u"buffer"_s}, AddStep{u"water"_s}, MixStep{},
        WaitStep{{3, 4}, {}}, ReadStep{u"A1"_s}};
    const std::vector<Operation> timed{{Add, {u"sample"_s}, 8, 60, 120},
                                       {Add, {u"buffer"_s, u"water"_s}, 20, 180, 240},
                                       {Read, {u"A1"_s}, 15, 0, {}}};
    EXPECT_EQ(procedureOf(method, hands).timed, timed);
    EXPECT_TRUE(procedureOf(method, hands).setUp.empty());
}

TEST(Procedure, WaitsInARowAreOne)
{
    Method method = test::risingMethod();
    method.steps = {AddStep{u"sample"_s}, WaitStep{{1, 2}, {}}, WaitStep{{3, 5}, {}}, ReadStep{u"A1"_s}};
    EXPECT_EQ(procedureOf(method, hands).timed.front(), (Operation{Add, {u"sample"_s}, 8, 240, 420}));
}

TEST(Procedure, MixingAfterAWaitIsAnOperationWithoutAName)
{
    Method method = test::risingMethod();
    method.steps = {AddStep{u"sample"_s}, WaitStep{{1, 2}, {}}, MixStep{}, WaitStep{{3, 5}, {}},
                    ReadStep{u"A1"_s}};
    EXPECT_EQ(procedureOf(method, hands).timed[1], (Operation{Add, {}, 4, 180, 300}));
}

TEST(Procedure, MethodThatReadsBeforeItWaitsIsTimedFromThere)
{
    Method method = test::risingMethod();
    method.steps = {AddStep{u"buffer"_s},  AddStep{u"sample"_s},   ReadStep{u"A1"_s},
                    AddStep{u"starter"_s}, WaitStep{{15, 40}, {}}, ReadStep{u"A2"_s}};
    const Procedure procedure = procedureOf(method, hands);
    ASSERT_EQ(procedure.timed.size(), 4u);
    EXPECT_EQ(procedure.timed.front(), (Operation{Add, {u"sample"_s}, 8, 0, {}}));
    EXPECT_EQ(procedure.setUp.size(), 1u);
}

TEST(Procedure, MethodWithoutWaitOrReadingHasNothingTimed)
{
    Method method = test::risingMethod();
    method.steps = {AddStep{u"buffer"_s}, MixStep{}, AddStep{u"sample"_s}};
    EXPECT_TRUE(procedureOf(method, hands).timed.empty());
    EXPECT_EQ(procedureOf(method, hands).setUp.front(), (Operation{Add, {u"buffer"_s}, 12, 0, {}}));
}

TEST(Procedure, ExtrapolatedReadingIsTakenAsOftenAsTheLineNeeds)
{
    Method method = test::risingMethod();
    method.extrapolate = Extrapolation{u"A2"_s, 3};
    const Procedure procedure = procedureOf(method, hands);
    ASSERT_EQ(procedure.timed.size(), 6u);
    EXPECT_EQ(procedure.timed[2].largestWait_s, 2400);
    EXPECT_EQ(procedure.timed[3], (Operation{Read, {u"A2"_s}, 15, 120, {}}));
    EXPECT_EQ(procedure.timed[4], (Operation{Read, {u"A2"_s}, 15, 120, {}}));
    EXPECT_EQ(procedure.timed[5], (Operation{Read, {u"A2"_s}, 15, 0, {}}));
}

TEST(Procedure, SpikesAreASecondAdditionOfTheSample)
{
    EXPECT_EQ(procedureOf(test::risingMethod(), hands, true).timed[0].handling_s, 20);
    EXPECT_EQ(procedureOf(test::risingMethod(), hands, true).timed[2].handling_s, 12);
}

TEST(Procedure, PartsOfASecondAreRoundedSoThatEveryLimitHolds)
{
    Method method = test::risingMethod();
    method.steps = {AddStep{u"sample"_s},  WaitStep{{0.1, 0.19}, {}},   ReadStep{u"A1"_s},
                    AddStep{u"starter"_s}, WaitStep{{0.105, 0.11}, {}}, ReadStep{u"A2"_s}};
    const Procedure procedure = procedureOf(method, {7.2, 0, 0.4});
    EXPECT_EQ(procedure.timed[0], (Operation{Add, {u"sample"_s}, 8, 6, 11}));
    EXPECT_EQ(procedure.timed[1].handling_s, 1);
    // 6.3 to 6.6 s holds no whole second.
    EXPECT_EQ(procedure.timed[2], (Operation{Add, {u"starter"_s}, 8, 7, 7}));
}

} // namespace
} // namespace plateau::planning
