// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/standardloss.h"

#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace plateau::charts {

using namespace Qt::StringLiterals;

namespace {

constexpr std::array<double, 8> ages{0.5, 1, 2, 3.5, 5, 6, 7.5, 9};
constexpr std::array<double, 8> left{99.6, 98.1, 97.2, 93.9, 91.8, 90.1, 87.0, 84.9};

/// As runs report them that state this loss: against what should be left.
Series recoveries(double stated)
{
    Series series;
    const auto run = std::make_shared<RunFacts>();
    for (std::size_t i = 0; i < ages.size(); ++i) {
        Point point;
        point.run = run;
        point.value = left[i] / std::pow(1 - stated, ages[i]);
        point.standard = StandardUse{ages[i], 0.2, stated};
        series.push_back(point);
    }
    return series;
}

} // namespace

TEST(StandardLoss, IsTheSameWhateverLossTheRunsReckonedWith)
{
    for (const double stated : {0.0, 0.02, 0.1}) {
        const StandardLoss loss = standardLoss(agedRecoveries(recoveries(stated)), stated);
        ASSERT_TRUE(loss.fit);
        // Independent computation: tests/core/quality/exponentialloss_test.cpp.
        EXPECT_NEAR(loss.fit->lossPerHour, 0.01849714142867994, 1e-12) << stated;
    }
}

TEST(StandardLoss, IsHeldAgainstWhatIsStatedInOneSentence)
{
    const StandardLoss agrees = standardLoss(agedRecoveries(recoveries(0.019)), 0.019);
    EXPECT_EQ(agrees.verdict, StandardLoss::Verdict::Agrees);
    EXPECT_EQ(agrees.sentence, u"8 recoveries at ages of 0.5\u00a0h to 9.0\u00a0h show a loss of 1.85\u00a0% "
                               u"an hour (95 % interval "
                               u"1.74\u00a0% to 1.96\u00a0%), which agrees with the 1.90\u00a0% stated."_s);
    const StandardLoss faster = standardLoss(agedRecoveries(recoveries(0.01)), 0.01);
    EXPECT_EQ(faster.verdict, StandardLoss::Verdict::LosesFaster);
    EXPECT_TRUE(faster.sentence.endsWith(
        u"so the standard loses its strength faster than the 1.00\u00a0% stated."_s));
    const StandardLoss slower = standardLoss(agedRecoveries(recoveries(0.02)), 0.02);
    EXPECT_EQ(slower.verdict, StandardLoss::Verdict::LosesSlower);
}

TEST(StandardLoss, SaysWhatIsMissing)
{
    Series two = recoveries(0);
    two.resize(2);
    EXPECT_EQ(standardLoss(agedRecoveries(two), 0.0).sentence,
              u"The loss per hour cannot be told yet: it takes three recoveries or more whose standard's age "
              u"is known."_s);
    Series alike = recoveries(0);
    for (Point &point : alike)
        point.standard->age_h = 1;
    EXPECT_EQ(standardLoss(agedRecoveries(alike), 0.0).sentence,
              u"The loss per hour cannot be told yet: all these standards were used at one age."_s);
    const StandardLoss nothingStated = standardLoss(agedRecoveries(recoveries(0)), {});
    EXPECT_EQ(nothingStated.verdict, StandardLoss::Verdict::NotTold);
    EXPECT_TRUE(nothingStated.sentence.endsWith(u"and no loss is stated to hold it against."_s));
}

TEST(StandardLoss, IsNotSaidToAgreeWhereAnythingWould)
{
    Series series = recoveries(0.02);
    series.resize(6);
    constexpr std::array<double, 6> noise{99.1, 100.8, 99.7, 100.3, 99.2, 100.6};
    for (std::size_t i = 0; i < series.size(); ++i) {
        series[i].value = noise[i];
        series[i].standard->age_h = 0.4 + 0.02 * double(i);
    }
    const StandardLoss loss = standardLoss(agedRecoveries(series), 0.02);
    ASSERT_TRUE(loss.fit && loss.fit->interval95);
    ASSERT_LE(loss.fit->interval95->lowest, 0);
    ASSERT_GE(loss.fit->interval95->highest, 0.04);
    EXPECT_EQ(loss.verdict, StandardLoss::Verdict::NotTold);
    EXPECT_TRUE(loss.sentence.contains(u"too wide to tell whether the 2"_s)) << loss.sentence.toStdString();
}

TEST(AgedRecoveries, LeaveOutWhatDoesNotCount)
{
    Series series = recoveries(0);
    series[0].standard.reset();
    series[1].omission = std::make_shared<Omission>(Omission{u"bubble"_s, u"A"_s, {}});
    series[2].isAccepted = false;
    EXPECT_EQ(agedRecoveries(series).size(), 5u);
}

} // namespace plateau::charts
