// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/waits.h"

#include "tests/support/benches.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::run {

namespace {

assay::Method timedMethod()
{
    assay::Method method = test::risingMethod();
    method.steps = {assay::WaitStep{{1, 2}, {}},   assay::AddStep{u"buffer"_s},  assay::AddStep{u"water"_s},
                    assay::AddStep{u"sample"_s},   assay::WaitStep{{3, 10}, {}}, assay::MixStep{},
                    assay::WaitStep{{1, 1}, {}},   assay::ReadStep{u"A1"_s},     assay::AddStep{u"starter"_s},
                    assay::WaitStep{{15, 40}, {}}, assay::ReadStep{u"A2"_s}};
    return method;
}

Tube emptyTube()
{
    Tube tube;
    tube.sample = u"S"_s;
    return tube;
}

} // namespace

TEST(TubeActs, CarryTheWaitsBetweenThem)
{
    const auto acts = tubeActs(timedMethod(), emptyTube());
    ASSERT_EQ(acts.size(), 6u);
    EXPECT_EQ(acts[0], (TubeAct{TubeAct::Kind::Add, u"buffer"_s, {}})); // nothing came before it
    EXPECT_EQ(acts[3], (TubeAct{TubeAct::Kind::Read, u"A1"_s, assay::Interval{4, 11}}));
    EXPECT_EQ(acts[4], (TubeAct{TubeAct::Kind::Add, u"starter"_s, {}}));
    EXPECT_EQ(acts[5], (TubeAct{TubeAct::Kind::Read, u"A2"_s, assay::Interval{15, 40}}));
}

TEST(TubeActs, LeaveOutWhatTheTubeGetsNothingOf)
{
    // So much sample that no water is left to add.
    Tube tube = emptyTube();
    tube.sampleVolume_mL = 1.1;
    const auto acts = tubeActs(timedMethod(), tube);
    ASSERT_EQ(acts.size(), 5u);
    EXPECT_EQ(acts[1].name, u"sample"_s);
}

TEST(WaitedBefore, IsBetweenTwoMomentsThatAreKnown)
{
    Tube tube = emptyTube();
    EXPECT_EQ(waitedBefore_min(timedMethod(), tube, u"A2"_s), std::nullopt);
    tube.readAt_min = {{u"A2"_s, 30.0}};
    EXPECT_EQ(waitedBefore_min(timedMethod(), tube, u"A2"_s), std::nullopt);
    tube.addedAt_min = {{u"sample"_s, 1.0}, {u"starter"_s, 12.0}};
    EXPECT_EQ(waitedBefore_min(timedMethod(), tube, u"A2"_s), 18.0);
    EXPECT_EQ(waitedBefore_min(timedMethod(), tube, u"A1"_s), std::nullopt);
    tube.readAt_min[u"A1"_s] = 9.5;
    EXPECT_EQ(waitedBefore_min(timedMethod(), tube, u"A1"_s), 8.5);
}

} // namespace plateau::run
