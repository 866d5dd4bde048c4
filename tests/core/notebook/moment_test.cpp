// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/moment.h"

#include "tests/support/print.h"

#include <gtest/gtest.h>

namespace plateau::test {

using namespace Qt::StringLiterals;
using notebook::Moment;
using notebook::momentOf;
using notebook::timeOf;

namespace {

/// What Qt's own reader makes of it.
QDateTime readByQt(const Moment &moment)
{
    return QDateTime::fromString(moment.utc, Qt::ISODateWithMs).toOffsetFromUtc(moment.offset_min * 60);
}

} // namespace

TEST(Moment, IsReadBackAsItWasWritten)
{
    for (const QString &text : {u"2026-03-02T09:10:11.012+01:00"_s, u"2024-02-29T23:59:59.999-03:30"_s,
                                u"1969-12-31T23:59:59.001Z"_s, u"1970-01-01T00:00:00.000Z"_s,
                                u"0001-01-01T00:00:00.000Z"_s, u"9999-12-31T23:59:59.999Z"_s}) {
        const QDateTime time = QDateTime::fromString(text, Qt::ISODateWithMs);
        ASSERT_TRUE(time.isValid()) << text.toStdString();
        const Moment moment = momentOf(time);
        EXPECT_EQ(timeOf(moment), time) << text.toStdString();
        EXPECT_EQ(timeOf(moment).offsetFromUtc(), time.offsetFromUtc()) << text.toStdString();
        EXPECT_EQ(timeOf(moment).timeSpec(), readByQt(moment).timeSpec()) << text.toStdString();
    }
}

TEST(Moment, EveryDayOfFourYearsIsWhatQtReads)
{
    for (QDate day(2023, 12, 30); day < QDate(2028, 1, 3); day = day.addDays(1)) {
        const Moment moment{day.toString(Qt::ISODate) + u"T12:34:56.789Z"_s, day.day() - 15};
        EXPECT_EQ(timeOf(moment), readByQt(moment)) << moment.utc.toStdString();
    }
}

TEST(Moment, WhatIsNoTimeIsNoneAndAnotherFormIsReadAllTheSame)
{
    for (const QString &text : {u""_s, u"2026-02-30T09:10:11.012Z"_s, u"2026-03-02T24:10:11.012Z"_s,
                                u"2026-03-02T09:60:11.012Z"_s, u"2026-03-0xT09:10:11.012Z"_s, u"yesterday"_s})
        EXPECT_FALSE(timeOf({text, 0}).isValid()) << text.toStdString();
    EXPECT_EQ(timeOf({u"2026-03-02T09:10:11Z"_s, 60}), readByQt({u"2026-03-02T09:10:11Z"_s, 60}));
}

} // namespace plateau::test
