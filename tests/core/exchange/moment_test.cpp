// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/moment.h"

#include "tests/support/print.h"

#include <QTimeZone>

#include <gtest/gtest.h>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

TEST(Moment, OffsetIsReadAndGivenBack)
{
    for (const QString &text : {u"2026-03-02T09:10:00+01:00"_s, u"2026-03-02T09:10:00Z"_s,
                                u"2026-03-02T09:10:00-03:30"_s, u"2024-02-29T23:59:59+14:00"_s,
                                u"2026-03-29T02:30:00+01:00"_s, u"2026-03-02T09:10:00.250+05:45"_s}) {
        const auto moment = parseMoment(text);
        ASSERT_TRUE(moment) << text.toStdString();
        EXPECT_EQ(momentText(*moment), text);
    }
}

TEST(Moment, OffsetCountsTowardsTheMoment)
{
    const auto moment = parseMoment(u"2026-03-02T09:10:00+01:00"_s);
    ASSERT_TRUE(moment);
    EXPECT_EQ(moment->toUTC(), QDateTime(QDate(2026, 3, 2), QTime(8, 10), Qt::UTC));
    EXPECT_EQ(moment->offsetFromUtc(), 3600);
}

TEST(Moment, SecondsMayBeLeftOutAndFractionsAreKeptToTheMillisecond)
{
    EXPECT_EQ(momentText(*parseMoment(u"2026-03-02T09:10Z"_s)), u"2026-03-02T09:10:00Z"_s);
    EXPECT_EQ(momentText(*parseMoment(u"2026-03-02T09:10:00.5Z"_s)), u"2026-03-02T09:10:00.500Z"_s);
    EXPECT_EQ(momentText(*parseMoment(u"2026-03-02T09:10:00.123456789Z"_s)), u"2026-03-02T09:10:00.123Z"_s);
    EXPECT_EQ(momentText(*parseMoment(u"2026-03-02T09:10:00+00:00"_s)), u"2026-03-02T09:10:00Z"_s);
}

TEST(Moment, WhatIsNoMomentIsRefused)
{
    for (const QString &text : {QString(),
                                u"2026-03-02T09:10:00"_s,
                                u"2026-03-02"_s,
                                u"2026-03-02 09:10:00+01:00"_s,
                                u"2026-02-29T09:10:00Z"_s,
                                u"2026-13-02T09:10:00Z"_s,
                                u"2026-03-02T24:00:00Z"_s,
                                u"2026-03-02T09:60:00Z"_s,
                                u"2026-03-02T09:10:60Z"_s,
                                u"2026-03-02T09:10:00+15:00"_s,
                                u"2026-03-02T09:10:00+01:60"_s,
                                u"2026-03-02T09:10:00+0100"_s,
                                u"2026-03-02T09:10:00+01"_s,
                                u"2026-03-02T09:10:00.Z"_s,
                                u"2026-03-02T09:10:00,5Z"_s,
                                u"2026-03-02T09:10:00Z "_s,
                                u" 2026-03-02T09:10:00Z"_s,
                                u"26-03-02T09:10:00Z"_s,
                                u"2026-3-2T09:10:00Z"_s,
                                u"2026-03-02t09:10:00z"_s,
                                u"2026-03-02T09:10:00z"_s,
                                u"٢٠٢٦-03-02T09:10:00Z"_s,
                                u"yesterday"_s,
                                u"2026-03-02T09:10:00+-1:00"_s})
        EXPECT_FALSE(parseMoment(text)) << text.toStdString();
}

TEST(Moment, LocalAndZonedTimesAreWrittenWithTheirOffset)
{
    const QDateTime summer(QDate(2026, 7, 1), QTime(12, 0), QTimeZone("Europe/Berlin"));
    EXPECT_EQ(momentText(summer), u"2026-07-01T12:00:00+02:00"_s);
    const QDateTime local(QDate(2026, 7, 1), QTime(12, 0), Qt::LocalTime);
    EXPECT_EQ(*parseMoment(momentText(local)), local);
}

TEST(Moment, DatesAreDaysOfTheCalendar)
{
    EXPECT_EQ(parseDate(u"2027-01-31"_s), QDate(2027, 1, 31));
    EXPECT_EQ(dateText(QDate(2027, 1, 31)), u"2027-01-31"_s);
    for (const QString &text :
         {u"2027-02-30"_s, u"31.01.2027"_s, u"2027-1-31"_s, u"2027-01-31T00:00:00Z"_s, u""_s})
        EXPECT_FALSE(parseDate(text)) << text.toStdString();
}

} // namespace plateau::exchange
