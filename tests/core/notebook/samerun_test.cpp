// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;

class SameRunTest : public NotebookTest
{
};

TEST_F(SameRunTest, RunOfEqualContentIsFoundWhateverIsInIt)
{
    const auto notebook = create();
    EXPECT_FALSE(notebook->findSameRun(fullRun(), risingMethod()));
    const RunId id = notebook->addRun(fullRun(), risingMethod(), u"Ines"_s);
    notebook->addRun(plainRun(), risingMethod(), u"Ines"_s);
    const auto same = notebook->findSameRun(fullRun(), risingMethod());
    ASSERT_TRUE(same);
    EXPECT_EQ(same->id, id);
    EXPECT_EQ(same->title, fullRun().title);
}

TEST_F(SameRunTest, OtherReadingTitleStartOrMethodIsAnotherRun)
{
    const auto notebook = create();
    notebook->addRun(fullRun(), risingMethod(), u"Ines"_s);
    run::Run other = fullRun();
    other.tubes[0].readings[u"A1"_s] = 0.0999;
    EXPECT_FALSE(notebook->findSameRun(other, risingMethod()));
    other = fullRun();
    other.title += u" again"_s;
    EXPECT_FALSE(notebook->findSameRun(other, risingMethod()));
    other = fullRun();
    other.startedAt = fullRun().startedAt.value_or(m_now).addSecs(60);
    EXPECT_FALSE(notebook->findSameRun(other, risingMethod()));
    EXPECT_FALSE(notebook->findSameRun(fullRun(), otherRisingMethod()));
}

TEST_F(SameRunTest, WhatWasKeyedCorrectedAndDecidedSinceDoesNotHideIt)
{
    const auto notebook = create();
    run::Run unfinished = plainRun();
    unfinished.tubes[2].readings.erase(u"A2"_s);
    const RunId id = notebook->addRun(unfinished, risingMethod(), u"Ines"_s);
    notebook->addReading(id, 2, u"A2"_s, 0.631, u"0.631"_s, u"Ines"_s);
    notebook->correctReading(id, 1, u"A2"_s, 0.640, u"0.640"_s, u"Ines"_s, u"a digit"_s);
    notebook->decide(id, DecisionKind::Rejected, u"Tomas"_s, u"air bubble"_s);
    const auto same = notebook->findSameRun(unfinished, risingMethod());
    ASSERT_TRUE(same);
    EXPECT_EQ(same->id, id);
    EXPECT_EQ(same->state, RunState::Rejected);
    EXPECT_FALSE(notebook->findSameRun(plainRun(), risingMethod())) << "it came with one reading fewer";
}

TEST_F(SameRunTest, PlanIsUsedAgainOnceTheFirstIsBeingRead)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(unreadRun(), risingMethod(), u"Ines"_s);
    EXPECT_TRUE(notebook->findSameRun(unreadRun(), risingMethod()));
    notebook->addReading(id, 0, u"A1"_s, 0.100, u"0.100"_s, u"Ines"_s);
    EXPECT_FALSE(notebook->findSameRun(unreadRun(), risingMethod()));
}

} // namespace plateau::test
