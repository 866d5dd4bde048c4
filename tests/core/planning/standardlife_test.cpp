// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/standardlife.h"

#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <cmath>

namespace plateau::planning {

namespace {

run::Standard losing(double lossPerHour)
{
    run::Standard standard;
    standard.id = QStringLiteral("STD");
    standard.concentration_g_per_L = 0.2;
    standard.lossPerHour = lossPerHour;
    standard.preparedAt = QDateTime(QDate(2026, 3, 2), QTime(8, 10), Qt::UTC);
    return standard;
}

} // namespace

TEST(StandardLife, EndsWhenEightyFivePercentAreLeft)
{
    const double life_h = standardLife_h(losing(0.02)).value();
    EXPECT_NEAR(life_h, 8.0444, 1e-4); // ln 0.85 / ln 0.98
    EXPECT_NEAR(std::pow(0.98, life_h), 0.85, 1e-12);
    // 8 h 2 min 39 s: the last whole minute
    EXPECT_EQ(useStandardBy(losing(0.02)), QDateTime(QDate(2026, 3, 2), QTime(16, 12), Qt::UTC));
}

TEST(StandardLife, EndsAfterADayAtTheLatest)
{
    EXPECT_EQ(standardLife_h(losing(0.001)), 24);
    EXPECT_EQ(useStandardBy(losing(0.001)), QDateTime(QDate(2026, 3, 3), QTime(8, 10), Qt::UTC));
}

TEST(StandardLife, IsNotLimitedWhereNothingIsLostNorKnownWithoutATime)
{
    EXPECT_EQ(standardLife_h(losing(0)), std::nullopt);
    EXPECT_EQ(useStandardBy(losing(0)), std::nullopt);
    run::Standard undated = losing(0.02);
    undated.preparedAt.reset();
    EXPECT_EQ(useStandardBy(undated), std::nullopt);
}

} // namespace plateau::planning
