// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/calendar.h"
#include "sampledata/maker/chance.h"
#include "sampledata/maker/readings.h"

#include "core/exchange/library.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

namespace plateau::sampledata {

using namespace Qt::StringLiterals;

// The numbers of this seed, computed by a second program (Python, from the same two published generators).
TEST(Chance, GivesTheSameNumbersOnEveryMachine)
{
    Chance chance(1, 2);
    EXPECT_EQ(chance.next(), 9579208193359609190ULL);
    EXPECT_EQ(chance.next(), 5115929806209566993ULL);
}

TEST(Chance, StreamsOfOneSeedAndSeedsOfOneStreamDiffer)
{
    EXPECT_NE(Chance(1, 2).next(), Chance(1, 3).next());
    EXPECT_NE(Chance(1, 2).next(), Chance(2, 2).next());
}

TEST(Chance, ScattersAroundZeroByTheDeviationThatIsWanted)
{
    Chance chance(7, 1);
    constexpr int many = 20000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < many; ++i) {
        const double value = chance.scatter(2);
        sum += value;
        squares += value * value;
    }
    EXPECT_NEAR(sum / many, 0, 0.06); // four standard errors of 2 / sqrt(20000)
    EXPECT_NEAR(std::sqrt(squares / many), 2, 0.05);
}

TEST(Chance, WholeNumbersReachBothEndsAndNoFurther)
{
    Chance chance(7, 2);
    int least = 9;
    int most = 0;
    for (int i = 0; i < 500; ++i) {
        const int number = chance.whole(3, 6);
        least = std::min(least, number);
        most = std::max(most, number);
    }
    EXPECT_EQ(least, 3);
    EXPECT_EQ(most, 6);
}

TEST(WorkingDays, HoldAllRunsAndNoWeekend)
{
    WantedHistory wanted;
    wanted.runs = 500;
    wanted.until = QDate(2026, 11, 22); // a Sunday
    const std::vector<WorkingDay> days = workingDays(wanted);
    int runs = 0;
    for (const WorkingDay &day : days) {
        EXPECT_LE(day.day.dayOfWeek(), 5) << day.day.toString().toStdString();
        runs += day.runs;
    }
    EXPECT_EQ(runs, 500);
    EXPECT_EQ(days.back().day, QDate(2026, 11, 20));
    // About one a day: close to two years.
    EXPECT_NEAR(double(days.front().day.daysTo(days.back().day)), 700, 70);
}

TEST(Readings, ShowTheSignalThatTheMethodsArithmeticAsksFor)
{
    const auto malic = exchange::MethodLibrary::load(u":/methods"_s).find(u"l-malic-acid"_s);
    ASSERT_TRUE(malic);
    TubeTruth truth;
    truth.pipetted_g_per_L[u"l-malic-acid"_s] = 0.2;
    truth.blankSignal = 0;
    truth.noise = 0;
    Chance chance(1, 1);
    const auto shown = readingsOf(*malic, run::Tube(), truth, chance);
    // 0.2 g/L / 134.09 g/mol x 0.1 mL / 2.22 mL x 6300 L/(mol cm) x 1 cm = 0.4233 on top of 0.200.
    EXPECT_DOUBLE_EQ(shown.at(u"A1"_s), 0.200);
    EXPECT_DOUBLE_EQ(shown.at(u"A2"_s), 0.623);
}

} // namespace plateau::sampledata
