// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/timing/timeline.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::timing {

namespace {

Stamp stamp(const QString &wall, const QString &boot, qint64 boot_s)
{
    return {QDateTime::fromString(wall, Qt::ISODate), {boot, boot_s * 1000}};
}

} // namespace

TEST(BootClock, GoesForwardAndKeepsItsId)
{
    const BootTime first = bootTime();
    const BootTime second = bootTime();
    EXPECT_FALSE(first.id.isEmpty());
    EXPECT_EQ(first.id, second.id);
    EXPECT_GT(first.ms, 0);
    EXPECT_GE(second.ms, first.ms);
}

TEST(Timeline, BeginsWithItsFirstStamp)
{
    Timeline line;
    EXPECT_TRUE(line.isEmpty());
    EXPECT_EQ(line.add(stamp(u"2026-03-02T09:00:00Z"_s, u"one"_s, 100)), 0);
    EXPECT_FALSE(line.isEmpty());
    EXPECT_DOUBLE_EQ(line.add(stamp(u"2026-03-02T09:01:30Z"_s, u"one"_s, 190)), 1.5);
    EXPECT_DOUBLE_EQ(line.minutesOf(stamp(u"2026-03-02T09:02:30Z"_s, u"one"_s, 250)), 2.5);
}

TEST(Timeline, FollowsTheBootClockWhenTheWallClockIsSet)
{
    Timeline line;
    line.add(stamp(u"2026-03-02T09:00:00Z"_s, u"one"_s, 100));
    // Set forward by an hour, then back by two.
    EXPECT_DOUBLE_EQ(line.add(stamp(u"2026-03-02T10:01:00Z"_s, u"one"_s, 160)), 1);
    EXPECT_DOUBLE_EQ(line.add(stamp(u"2026-03-02T08:02:00Z"_s, u"one"_s, 220)), 2);
}

TEST(Timeline, GoesOnThroughMidnightAndTheChangeToSummerTime)
{
    Timeline line;
    line.add(stamp(u"2026-03-28T23:59:30+01:00"_s, u"one"_s, 100));
    EXPECT_DOUBLE_EQ(line.add(stamp(u"2026-03-29T00:00:30+01:00"_s, u"one"_s, 160)), 1);
    // 01:59:30+01:00 and, a minute later, 03:00:30+02:00; once by the boot clock, once without one.
    line.add(stamp(u"2026-03-29T01:59:30+01:00"_s, u"one"_s, 7300));
    EXPECT_DOUBLE_EQ(line.minutesOf(stamp(u"2026-03-29T03:00:30+02:00"_s, u"one"_s, 7360)), 121);
    EXPECT_DOUBLE_EQ(line.minutesOf(stamp(u"2026-03-29T03:00:30+02:00"_s, {}, 0)), 121);
}

TEST(Timeline, TrustsTheWallClockOverAStartOfTheMachineAndNeverGoesBack)
{
    Timeline line;
    line.add(stamp(u"2026-03-02T09:00:00Z"_s, u"one"_s, 100));
    EXPECT_DOUBLE_EQ(line.add(stamp(u"2026-03-02T09:04:00Z"_s, u"two"_s, 20)), 4);
    EXPECT_DOUBLE_EQ(line.add(stamp(u"2026-03-02T12:00:00Z"_s, u"two"_s, 80)), 5);
    EXPECT_DOUBLE_EQ(line.add(stamp(u"2026-03-02T11:00:00Z"_s, u"three"_s, 10)), 5);
}

TEST(Jump, IsSaidFromTwoSecondsOn)
{
    const Stamp before = stamp(u"2026-03-02T09:00:00Z"_s, u"one"_s, 100);
    EXPECT_EQ(jump_ms(before, stamp(u"2026-03-02T09:01:00Z"_s, u"one"_s, 160)), std::nullopt);
    EXPECT_EQ(jump_ms(before, stamp(u"2026-03-02T09:01:01Z"_s, u"one"_s, 160)), std::nullopt);
    EXPECT_EQ(jump_ms(before, stamp(u"2026-03-02T09:01:02Z"_s, u"one"_s, 160)), 2000);
    EXPECT_EQ(jump_ms(before, stamp(u"2026-03-02T08:01:00Z"_s, u"one"_s, 160)), -3600 * 1000);
    // Asleep for an hour: both clocks went on.
    EXPECT_EQ(jump_ms(before, stamp(u"2026-03-02T10:00:00Z"_s, u"one"_s, 3700)), std::nullopt);
    EXPECT_EQ(jump_ms(before, stamp(u"2026-03-02T12:00:00Z"_s, u"two"_s, 5)), std::nullopt);
    EXPECT_EQ(jump_ms(stamp(u"2026-03-02T09:00:00Z"_s, {}, 0), stamp(u"2026-03-02T12:00:00Z"_s, {}, 5)),
              std::nullopt);
}

} // namespace plateau::timing
