// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/standing.h"

#include "tests/support/keyedchecks.h"
#include "tests/support/print.h"

#include <QLocale>
#include <gtest/gtest.h>

namespace plateau::test {
namespace {

using namespace Qt::StringLiterals;
using namespace equipment;

HeldItem heldPipette(std::vector<std::pair<QDate, double>> checks)
{
    HeldItem held{1, pistonPipette(), {}};
    for (const auto &[day, mean_mg] : checks)
        held.checks.push_back({qint64(held.checks.size()) + 1, volumeCheck(held.item, mean_mg, day),
                               held.item, u"I. K."_s, false});
    return held;
}

QString textOn(const HeldItem &held, const QDate &day)
{
    return standingText(standingOf(held, day), day);
}

TEST(Standing, FollowsTheDays)
{
    const HeldItem held = heldPipette({{QDate(2026, 1, 1), 199.4}}); // due on 2026-04-01
    EXPECT_EQ(textOn(held, QDate(2025, 12, 31)), u"never checked: volume"_s);
    EXPECT_EQ(textOn(held, QDate(2026, 3, 1)), u"in date until 2026-04-01"_s);
    EXPECT_EQ(textOn(held, QDate(2026, 3, 19)), u"due in 13 days: volume"_s);
    EXPECT_EQ(textOn(held, QDate(2026, 3, 31)), u"due in 1 day: volume"_s);
    EXPECT_EQ(textOn(held, QDate(2026, 4, 1)), u"due today: volume"_s);
    EXPECT_EQ(textOn(held, QDate(2026, 4, 2)), u"overdue since 2026-04-01: volume"_s);
}

TEST(Standing, AFailedCheckCountsUntilOneIsPassed)
{
    const HeldItem held =
        heldPipette({{QDate(2026, 1, 1), 199.4}, {QDate(2026, 2, 1), 190}, {QDate(2026, 2, 3), 199.4}});
    EXPECT_EQ(textOn(held, QDate(2026, 2, 2)), u"failed on 2026-02-01: volume"_s);
    EXPECT_TRUE(isInDoubt(standingOf(held, QDate(2026, 2, 2)).standing));
    EXPECT_EQ(validCheck(held, Aspect::Volume, QDate(2026, 2, 2)), nullptr);
    EXPECT_EQ(standingOf(held, QDate(2026, 2, 3)).standing, Standing::InDate);
    EXPECT_EQ(validCheck(held, Aspect::Volume, QDate(2026, 2, 3))->id, 3);
}

TEST(Standing, OneThatWasTakenBackDoesNotCount)
{
    HeldItem held = heldPipette({{QDate(2026, 1, 1), 199.4}, {QDate(2026, 2, 1), 190}});
    held.checks[1].withdrawn = true;
    EXPECT_EQ(textOn(held, QDate(2026, 2, 2)), u"in date until 2026-04-01"_s);
}

TEST(Standing, ThePhotometerStandsAsItsWorstMatter)
{
    HeldItem held{2, photometer(), {}};
    Check noise = blankCheck(held.item, Aspect::Noise, QDate(2026, 3, 1));
    for (std::size_t i = 0; i < 10; ++i)
        noise.rows[i][0] = 0.0005 * double(i % 2);
    held.checks.push_back({1, noise, held.item, u"I. K."_s, false});
    EXPECT_EQ(standingsOf(held, QDate(2026, 3, 2)).size(), 3U);
    EXPECT_EQ(standingOf(held, QDate(2026, 3, 2)).standing, Standing::Unchecked);
    held.item.every_days = {{Aspect::Noise, 30}};
    EXPECT_EQ(textOn(held, QDate(2026, 3, 2)), u"in date until 2026-03-31"_s);
    held.item.inUse = false;
    EXPECT_EQ(textOn(held, QDate(2026, 3, 2)), u"out of use"_s);
}

TEST(Standing, ACheckHasANameForTheBudget)
{
    const HeldItem held = heldPipette({{QDate(2026, 2, 1), 199.4}});
    QLocale::setDefault(QLocale(QLocale::French));
    const QString name = checkName(held.checks[0]);
    QLocale::setDefault(QLocale::c());
    EXPECT_EQ(name, u"check 1 of 2026-02-01"_s) << "it is kept, and read at other desks";
}

} // namespace
} // namespace plateau::test
