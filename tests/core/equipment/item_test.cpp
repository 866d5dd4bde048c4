// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/item.h"

#include "core/equipment/protocol.h"
#include "tests/support/keyedchecks.h"
#include "tests/support/print.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace plateau::test {
namespace {

using namespace Qt::StringLiterals;
using namespace equipment;

TEST(Item, WordsLeadBack)
{
    for (const Kind kind : allKinds()) {
        EXPECT_EQ(kindFromWord(kindWord(kind)), kind);
        for (const Aspect aspect : aspectsOf(kind))
            EXPECT_EQ(aspectFromWord(aspectWord(aspect)), aspect);
    }
    EXPECT_FALSE(kindFromWord(u"lamp"_s));
    EXPECT_FALSE(aspectFromWord(u"colour"_s));
}

TEST(Item, SoundOnesHaveNoProblem)
{
    EXPECT_TRUE(problemsOf(photometer()).empty());
    EXPECT_TRUE(problemsOf(pistonPipette()).empty());
}

TEST(Item, WhatIsWrongIsNamed)
{
    Item item = pistonPipette();
    item.name = u" "_s;
    item.nominal_mL = 0;
    item.every_days = {{Aspect::Noise, 30}};
    const assay::Problems problems = problemsOf(item);
    ASSERT_GE(problems.size(), 3U);
    EXPECT_EQ(problems[0].pointer, u"/name"_s);
    EXPECT_EQ(problems[1].pointer, u"/nominal_mL"_s);
    EXPECT_EQ(problems.back().pointer, u"/every_days/noise"_s);
    item = pistonPipette();
    item.every_days = {};
    EXPECT_EQ(problemsOf(item).front().message,
              u"names nothing to be checked; give at least one number of days"_s);
}

TEST(Protocol, APistonPipetteIsCheckedAtAllHalfAndATenth)
{
    const Protocol protocol = protocolFor(pistonPipette(), Aspect::Volume);
    ASSERT_EQ(protocol.rows.size(), 30U);
    EXPECT_EQ(protocol.rows[0][0], 200.0);
    EXPECT_EQ(protocol.rows[10][0], 100.0);
    EXPECT_EQ(protocol.rows[20][0], 20.0);
    Item narrow = pistonPipette();
    narrow.smallest_mL = 0.15;
    EXPECT_EQ(protocolFor(narrow, Aspect::Volume).rows.size(), 20U) << "not below what it is used for";
}

TEST(Protocol, ANumberOutOfBoundsIsNamedWithItsPlace)
{
    Check check = volumeCheck(pistonPipette(), 199.4, QDate(2026, 3, 2));
    check.conditions[u"pressure_kPa"_s] = 1013;
    check.rows[3][1] = 1994;
    const assay::Problems problems = problemsOf(pistonPipette(), check, QDate(2026, 3, 2));
    ASSERT_EQ(problems.size(), 2U);
    EXPECT_EQ(problems[0].pointer, u"/conditions/pressure_kPa"_s);
    EXPECT_EQ(problems[1].pointer, u"/rows/3/1"_s);
}

TEST(Protocol, ADayToComeIsRefused)
{
    const Check check = volumeCheck(pistonPipette(), 199.4, QDate(2026, 3, 3));
    EXPECT_EQ(problemsOf(pistonPipette(), check, QDate(2026, 3, 2)).front().pointer, u"/day"_s);
}

} // namespace
} // namespace plateau::test
