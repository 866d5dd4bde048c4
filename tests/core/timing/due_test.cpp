// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/timing/due.h"

#include "tests/support/benches.h"

#include <gtest/gtest.h>

#include <set>

using namespace Qt::StringLiterals;

namespace plateau::timing {

namespace {

/// risingMethod waits 3 to 10 min before A1 and 15 to 40 min before A2 where nothing else is said.
assay::Method timedMethod()
{
    assay::Method method = test::risingMethod();
    method.steps = {assay::AddStep{u"buffer"_s},   assay::AddStep{u"water"_s},
                    assay::AddStep{u"sample"_s},   assay::MixStep{},
                    assay::WaitStep{{3, 10}, {}},  assay::ReadStep{u"A1"_s},
                    assay::AddStep{u"starter"_s},  assay::MixStep{},
                    assay::WaitStep{{15, 40}, {}}, assay::ReadStep{u"A2"_s}};
    return method;
}

run::Run oneTube()
{
    run::Run run = test::plainRun();
    run.tubes = {test::sampleTube("S", 0, 0)};
    run.tubes[0].readings.clear();
    return run;
}

IsAdded all(const std::set<QString> &components)
{
    return [components](int, const QString &component) { return components.contains(component); };
}

} // namespace

TEST(Due, TakesTheActsOfATubeInTheirOrder)
{
    run::Run run = oneTube();
    const auto next = [&](const std::set<QString> &added) {
        return dueOf(timedMethod(), run, all(added)).at(0).act.name;
    };
    EXPECT_EQ(next({}), u"buffer"_s);
    EXPECT_EQ(next({u"buffer"_s}), u"water"_s);
    EXPECT_EQ(next({u"buffer"_s, u"water"_s, u"sample"_s}), u"A1"_s);
    run.tubes[0].readings[u"A1"_s] = 0.1;
    EXPECT_EQ(next({u"buffer"_s, u"water"_s, u"sample"_s}), u"starter"_s);
    EXPECT_EQ(next({u"buffer"_s, u"water"_s, u"sample"_s, u"starter"_s}), u"A2"_s);
    run.tubes[0].readings[u"A2"_s] = 0.5;
    EXPECT_TRUE(dueOf(timedMethod(), run, all({u"buffer"_s, u"water"_s, u"sample"_s, u"starter"_s})).empty());
}

TEST(Due, OpensAndClosesAfterWhatCameBefore)
{
    run::Run run = oneTube();
    run.tubes[0].addedAt_min = {{u"sample"_s, 2.5}};
    const Due due = dueOf(timedMethod(), run, all({u"buffer"_s, u"water"_s, u"sample"_s})).at(0);
    EXPECT_EQ(due.since_min, 2.5);
    EXPECT_EQ(due.opens_min, 5.5);
    EXPECT_EQ(due.closes_min, 12.5);
    EXPECT_EQ(phaseAt(due, 5.4), Phase::Waiting);
    EXPECT_EQ(phaseAt(due, 5.5), Phase::Open);
    EXPECT_EQ(phaseAt(due, 12.5), Phase::Open);
    EXPECT_EQ(phaseAt(due, 12.6), Phase::Late);
}

TEST(Due, IsFreeWhereNobodyMarkedWhatCameBefore)
{
    run::Run run = oneTube();
    const Due due = dueOf(timedMethod(), run, all({u"buffer"_s, u"water"_s, u"sample"_s})).at(0);
    EXPECT_EQ(due.act.name, u"A1"_s);
    EXPECT_FALSE(due.isTimed());
    EXPECT_EQ(phaseAt(due, 1000), Phase::Free);
}

TEST(Due, AReadingMustWaitWhileItIsTooEarlyForEveryTube)
{
    run::Run run = oneTube();
    run.tubes.push_back(run.tubes[0]);
    run.tubes[0].addedAt_min = {{u"sample"_s, 2.5}};
    run.tubes[1].addedAt_min = {{u"sample"_s, 3.0}};
    const auto due = dueOf(timedMethod(), run, all({u"buffer"_s, u"water"_s, u"sample"_s}));
    EXPECT_TRUE(isEarly(due[0], 5.4));
    EXPECT_FALSE(isEarly(due[0], 5.5));
    EXPECT_FALSE(isEarly(due[0], 2.4)) << "a clock that stands before the mark knows nothing";
    EXPECT_TRUE(mustWait(due, u"A1"_s, 5.4));
    EXPECT_FALSE(mustWait(due, u"A1"_s, 5.6)) << "the first may be read";
    EXPECT_FALSE(mustWait(due, u"A2"_s, 5.4)) << "that is not what is next";
}

TEST(Due, LeavesOutSpoiltTubes)
{
    run::Run run = oneTube();
    run.tubes.push_back(run.tubes[0]);
    run.tubes[0].spoilt = u"spilt"_s;
    const auto due = dueOf(timedMethod(), run, all({}));
    ASSERT_EQ(due.size(), 1u);
    EXPECT_EQ(due[0].tube, 1);
}

TEST(Beat, KeepsItsRhythmWhenATubeCameLate)
{
    // First tube at 10, a beat each half minute.
    EXPECT_DOUBLE_EQ(nextBeat_min(10, 10, 0.5), 10.5);
    EXPECT_DOUBLE_EQ(nextBeat_min(10, 10.52, 0.5), 11);
    EXPECT_DOUBLE_EQ(nextBeat_min(10, 10.74, 0.5), 11);
    EXPECT_DOUBLE_EQ(nextBeat_min(10, 10.76, 0.5), 11.5);
    EXPECT_DOUBLE_EQ(nextBeat_min(10, 10.49, 0.5), 11); // a little early is that beat all the same
}

} // namespace plateau::timing
