// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/localday.h"

#include "tests/support/print.h"

#include <QLocale>
#include <gtest/gtest.h>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

class LocalDayIn
{
public:
    explicit LocalDayIn(const char *name) { QLocale::setDefault(QLocale(QLatin1StringView(name))); }
    ~LocalDayIn() { QLocale::setDefault(QLocale::c()); }
    Q_DISABLE_COPY_MOVE(LocalDayIn)
};

const QDate sixthOfAugust(2027, 8, 6);

} // namespace

TEST(LocalDay, StandsInTheOrderOfTheLocaleWithItsYearInFull)
{
    const std::pair<const char *, QString> expected[] = {
        {"C", u"2027-08-06"_s},     {"de_DE", u"06.08.2027"_s}, {"fr_FR", u"06/08/2027"_s},
        {"es_ES", u"06/08/2027"_s}, {"en_GB", u"06/08/2027"_s}, {"en_US", u"08/06/2027"_s},
        {"sv_SE", u"2027-08-06"_s},
    };
    for (const auto &[locale, text] : expected) {
        const LocalDayIn spoken(locale);
        EXPECT_EQ(shownDay(sixthOfAugust), text) << locale;
        EXPECT_EQ(readDay(text), sixthOfAugust) << locale;
        EXPECT_EQ(shownDay({}), QString()) << locale;
    }
}

TEST(LocalDay, StandsWithItsTimeIn24Hours)
{
    const LocalDayIn spoken("de_DE");
    EXPECT_EQ(shownMoment(QDateTime(sixthOfAugust, QTime(18, 5))), u"06.08.2027 18:05"_s);
    EXPECT_EQ(shownMoment({}), QString());
    EXPECT_EQ(shownMonth(sixthOfAugust), u"08.2027"_s);
}

TEST(LocalDay, IsReadAsIso8601InEveryLocale)
{
    for (const char *locale : {"C", "de_DE", "fr_FR", "es_ES", "en_GB", "en_US"}) {
        const LocalDayIn spoken(locale);
        EXPECT_EQ(readDay(u" 2027-08-06 "_s), sixthOfAugust) << locale;
        EXPECT_EQ(readDay(u"2027-8-6"_s), sixthOfAugust) << locale;
    }
}

TEST(LocalDay, IsReadAsItIsKeyedInAHurry)
{
    const LocalDayIn spoken("de_DE");
    for (const QString &text : {u"6.8.2027"_s, u"6.8.27"_s, u"06/08/27"_s, u"6-8-2027"_s})
        EXPECT_EQ(readDay(text), sixthOfAugust) << text.toStdString();
}

TEST(LocalDay, AMonthAloneIsTheDayThatIsAskedFor)
{
    for (const QString &text : {u"2027-08"_s, u"08/2027"_s, u"8.2027"_s}) {
        EXPECT_EQ(readDay(text), QDate(2027, 8, 31)) << text.toStdString();
        EXPECT_EQ(readDay(text, MonthAlone::FirstDay), QDate(2027, 8, 1)) << text.toStdString();
        EXPECT_EQ(readDay(text, MonthAlone::NoDay), std::nullopt) << text.toStdString();
    }
}

TEST(LocalDay, OneThatHasBeenNeedsNoYear)
{
    const QDate today(2026, 11, 27);
    {
        const LocalDayIn spoken("de_DE");
        for (const QString &text : {u"25.11."_s, u"25.11"_s, u"25.11.2026"_s, u" 25-11 "_s, u"2026-11-25"_s})
            EXPECT_EQ(readPastDay(text, today), QDate(2026, 11, 25)) << text.toStdString();
        EXPECT_EQ(readPastDay(u"27.11."_s, today), today);
        EXPECT_EQ(readPastDay(u"28.11."_s, today), QDate(2025, 11, 28));
        EXPECT_EQ(readPastDay(u"29.2."_s, today), QDate(2024, 2, 29));
        for (const QString &text : {u"31.11."_s, u"11.2026"_s, u"25."_s, u"25.13."_s, u""_s})
            EXPECT_EQ(readPastDay(text, today), std::nullopt) << text.toStdString();
    }
    {
        const LocalDayIn spoken("en_US");
        EXPECT_EQ(readPastDay(u"11/25"_s, today), QDate(2026, 11, 25));
        EXPECT_EQ(readPastDay(u"25/11"_s, today), std::nullopt);
    }
    EXPECT_EQ(readPastDay(u"11-25"_s, today), std::nullopt) << "in C nothing says which is the month";
}

TEST(LocalDay, WhatIsNoneOrCouldBeTwoIsNotGuessed)
{
    // The C locale has the year first: which of 6 and 8 is the month, nothing says.
    for (const QString &text : {u""_s, u"6.8.2027"_s, u"06/08/27"_s, u"2027-02-30"_s, u"2027-13"_s, u"13.2027"_s,
                                u"20270806"_s, u"6 August"_s, u"2027-08-06x"_s, u"0000-08-06"_s})
        EXPECT_EQ(readDay(text), std::nullopt) << text.toStdString();
    const LocalDayIn spoken("en_GB");
    EXPECT_EQ(readDay(u"08/31/2027"_s), std::nullopt);
    EXPECT_EQ(readDay(u"31/08/2027"_s), QDate(2027, 8, 31));
}

} // namespace plateau::assay
