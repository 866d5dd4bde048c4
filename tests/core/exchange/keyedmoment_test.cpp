// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/keyedmoment.h"

#include "tests/support/print.h"

#include <QLocale>
#include <gtest/gtest.h>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

namespace {

const QDateTime now(QDate(2026, 3, 2), QTime(9, 10), Qt::LocalTime);

QDateTime local(const QDate &date, const QTime &time)
{
    return QDateTime(date, time, Qt::LocalTime);
}

} // namespace

TEST(KeyedMoment, ATimeOfDayIsTheLatestThatHasBeen)
{
    const QDate today(2026, 3, 2);
    const QDate yesterday(2026, 3, 1);
    const std::pair<const char *, QDateTime> rows[] = {
        {"8:10", local(today, {8, 10})},
        {"08:10", local(today, {8, 10})},
        {"8.10", local(today, {8, 10})},
        {"  9:10 ", local(today, {9, 10})},
        {"0:00", local(today, {0, 0})},
        {"9:11", local(yesterday, {9, 11})},
        {"23:40", local(yesterday, {23, 40})},
        {"2026-02-27 16:05", local({2026, 2, 27}, {16, 5})},
        {"2026-03-02T8:10", local(today, {8, 10})},
    };
    for (const auto &[text, expected] : rows) {
        const auto parsed = parseKeyedMoment(QString::fromUtf8(text), now);
        ASSERT_TRUE(std::holds_alternative<QDateTime>(parsed)) << text;
        EXPECT_EQ(std::get<QDateTime>(parsed), expected) << text;
        EXPECT_NE(std::get<QDateTime>(parsed).timeSpec(), Qt::LocalTime) << text << " says its offset";
        EXPECT_EQ(std::get<QDateTime>(parsed).offsetFromUtc(), expected.offsetFromUtc()) << text;
    }
}

TEST(KeyedMoment, ADayAloneStaysADayWhereThatIsEnough)
{
    QLocale::setDefault(QLocale(u"de_DE"_s));
    const std::pair<const char *, const char *> rows[] = {
        {"1.3.2026", "01.03.2026"},     {"1.3.", "01.03.2026"},   {"25.11.", "25.11.2025"}, {"2026-03-01", "01.03.2026"},
        {"1.3. 8:10", "01.03.2026 08:10"}, {"8:10", "02.03.2026 08:10"}, {"8.10", "02.03.2026 08:10"},
    };
    for (const auto &[text, expected] : rows) {
        const auto parsed = parseKeyedDayOrMoment(QString::fromUtf8(text), now);
        ASSERT_TRUE(std::holds_alternative<QDateTime>(parsed)) << text;
        const QString shown = dayOrMomentText(std::get<QDateTime>(parsed));
        EXPECT_EQ(shown, QString::fromUtf8(expected)) << text;
        EXPECT_EQ(parseKeyedDayOrMoment(shown, now), parsed) << text << " reads back";
    }
    EXPECT_EQ(std::get<MomentFault>(parseKeyedDayOrMoment(u"3.3.2026"_s, now)), MomentFault::InTheFuture);
    EXPECT_EQ(std::get<MomentFault>(parseKeyedDayOrMoment(u"soon"_s, now)), MomentFault::NotATime);
    EXPECT_EQ(std::get<MomentFault>(parseKeyedMoment(u"1.3.2026"_s, now)), MomentFault::NotATime)
        << "what is made has a time";
    EXPECT_EQ(dayOrMomentText({}), QString());
    QLocale::setDefault(QLocale::c());
}

TEST(KeyedMoment, NamesWhatIsWrong)
{
    const std::pair<const char *, MomentFault> rows[] = {
        {"", MomentFault::Empty},
        {"  ", MomentFault::Empty},
        {"early", MomentFault::NotATime},
        {"8", MomentFault::NotATime},
        {"810", MomentFault::NotATime},
        {"8:1", MomentFault::NotATime},
        {"2.3.2026 8:10", MomentFault::NotATime},
        {"8:10 pm", MomentFault::NotATime},
        {"24:00", MomentFault::NoSuchTime},
        {"8:60", MomentFault::NoSuchTime},
        {"2026-02-30 8:10", MomentFault::NoSuchTime},
        {"2026-03-02 9:11", MomentFault::InTheFuture},
        {"2027-03-02 8:10", MomentFault::InTheFuture},
    };
    for (const auto &[text, fault] : rows) {
        const auto parsed = parseKeyedMoment(QString::fromUtf8(text), now);
        ASSERT_TRUE(std::holds_alternative<MomentFault>(parsed)) << text;
        EXPECT_EQ(std::get<MomentFault>(parsed), fault) << text;
        EXPECT_FALSE(faultSentence(fault).isEmpty());
    }
}

} // namespace plateau::exchange
