// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/reagents.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace plateau::planning {

using namespace Qt::StringLiterals;

namespace {

/// A run from the evening of 30 November to the small hours of 1 December 2026.
const QDateTime from(QDate(2026, 11, 30), QTime(22, 0), Qt::UTC);
const QDateTime to(QDate(2026, 12, 1), QTime(1, 0), Qt::UTC);
const QDate dayBefore(2026, 11, 29);
const QDate firstDay(2026, 11, 30);
const QDate lastDay(2026, 12, 1);

Lot lotOf(qint64 id, const QString &reagent, double remaining_mL)
{
    Lot lot;
    lot.id = id;
    lot.reagent = reagent;
    lot.lot = u"L%1"_s.arg(id);
    lot.remaining_mL = remaining_mL;
    return lot;
}

Lot expiring(qint64 id, const QDate &expires, double remaining_mL = 10)
{
    Lot lot = lotOf(id, u"Buffer"_s, remaining_mL);
    lot.expires = expires;
    return lot;
}

Lot opened(const QDate &day, int keeps_days)
{
    Lot lot = lotOf(1, u"Buffer"_s, 10);
    lot.opened = day;
    lot.keepsOpened_days = keeps_days;
    return lot;
}

const ReagentNeed &needOf(const std::vector<ReagentNeed> &needs, const QString &component)
{
    return *std::ranges::find(needs, component, &ReagentNeed::component);
}

/// Of the plain run: a blank and two samples of 1.0 mL buffer each.
ReagentNeed bufferNeed(const std::vector<Lot> &lots, double overage_percent = 0)
{
    return needOf(reagentNeeds(test::risingMethod(), test::plainRun(), overage_percent, lots, from, to),
                  u"buffer"_s);
}

std::vector<qint64> orderOf(const ReagentNeed &need)
{
    std::vector<qint64> ids;
    for (const auto &[id, fitness] : need.lots)
        ids.push_back(id);
    return ids;
}

} // namespace

TEST(LotFitness, GoodUpToTheDayItExpires)
{
    EXPECT_EQ(fitnessOf(expiring(1, lastDay), from, to), LotFitness::Good);
    EXPECT_EQ(fitnessOf(expiring(1, lastDay.addDays(1)), from, to), LotFitness::Good);
    EXPECT_EQ(fitnessOf(expiring(1, firstDay), from, to), LotFitness::ExpiresBeforeEnd);
    EXPECT_EQ(fitnessOf(expiring(1, dayBefore), from, to), LotFitness::Expired);
    EXPECT_EQ(fitnessOf(expiring(1, firstDay), from, from), LotFitness::Good);
    EXPECT_EQ(fitnessOf(lotOf(1, u"Buffer"_s, 1), from, to), LotFitness::Good);
}

TEST(LotFitness, OpenedItKeepsSoManyDays)
{
    EXPECT_EQ(fitnessOf(opened(lastDay.addDays(-7), 7), from, to), LotFitness::Good);
    EXPECT_EQ(fitnessOf(opened(lastDay.addDays(-8), 7), from, to), LotFitness::OpenTooLong);
    EXPECT_EQ(fitnessOf(opened(lastDay, 0), from, to), LotFitness::Good);
    EXPECT_EQ(fitnessOf(opened(firstDay, 0), from, to), LotFitness::OpenTooLong);
    EXPECT_EQ(fitnessOf(opened(firstDay, 0), from, from), LotFitness::Good);

    Lot unopened = opened(lastDay, 0);
    unopened.opened.reset();
    EXPECT_EQ(fitnessOf(unopened, from, to), LotFitness::Good);
    Lot unlimited = opened(dayBefore, 0);
    unlimited.keepsOpened_days.reset();
    EXPECT_EQ(fitnessOf(unlimited, from, to), LotFitness::Good);
}

TEST(LotFitness, SaysTheFirstThatApplies)
{
    Lot lot = opened(dayBefore, 0);
    lot.expires = dayBefore;
    lot.remaining_mL = 0;
    EXPECT_EQ(fitnessOf(lot, from, to), LotFitness::Empty);
    lot.remaining_mL = 1e-6;
    EXPECT_EQ(fitnessOf(lot, from, to), LotFitness::Expired);
    lot.expires = firstDay;
    EXPECT_EQ(fitnessOf(lot, from, to), LotFitness::OpenTooLong);
    lot.opened = lastDay;
    EXPECT_EQ(fitnessOf(lot, from, to), LotFitness::ExpiresBeforeEnd);
    lot.expires = lastDay;
    EXPECT_EQ(fitnessOf(lot, from, to), LotFitness::Good);
}

TEST(LotFitness, DaysAreThoseWhereTheBenchStands)
{
    // 23:30 UTC is the next day an hour further east.
    const QDateTime evening(QDate(2026, 11, 30), QTime(23, 30), Qt::UTC);
    EXPECT_EQ(fitnessOf(expiring(1, firstDay), evening, evening), LotFitness::Good);
    EXPECT_EQ(fitnessOf(expiring(1, firstDay), evening.toOffsetFromUtc(3600), evening.toOffsetFromUtc(3600)),
              LotFitness::Expired);
}

TEST(LastGoodDay, IsTheEarlierOfExpiryAndOpening)
{
    EXPECT_EQ(lastGoodDay(lotOf(1, u"Buffer"_s, 1)), std::nullopt);
    EXPECT_EQ(lastGoodDay(expiring(1, lastDay)), lastDay);
    Lot lot = opened(dayBefore, 1);
    EXPECT_EQ(lastGoodDay(lot), firstDay);
    lot.expires = lastDay;
    EXPECT_EQ(lastGoodDay(lot), firstDay);
    lot.expires = dayBefore;
    EXPECT_EQ(lastGoodDay(lot), dayBefore);
}

TEST(ReagentNeeds, EveryComponentButTheSampleInTheMethodsOrder)
{
    // A blank with 0.1 mL of water in place of the sample, two samples, one of 0.3 mL with so much less
    // water.
    run::Run run = test::plainRun();
    run.tubes[2].sampleVolume_mL = 0.3;
    const auto needs = reagentNeeds(test::risingMethod(), run, 10, {}, from, to);
    ASSERT_EQ(needs.size(), 3U);
    EXPECT_EQ(needs[0].component, u"buffer"_s);
    EXPECT_EQ(needs[0].reagent, u"Buffer"_s);
    EXPECT_NEAR(needs[0].tubes_mL, 3.0, 1e-12);
    EXPECT_NEAR(needs[0].withOverage_mL, 3.3, 1e-12);
    EXPECT_EQ(needs[1].component, u"water"_s);
    EXPECT_NEAR(needs[1].tubes_mL, 1.1 + 1.0 + 0.8, 1e-12);
    EXPECT_EQ(needs[2].component, u"starter"_s);
    EXPECT_NEAR(needs[2].tubes_mL, 0.06, 1e-12);
    EXPECT_NEAR(needs[2].short_mL, 0.066, 1e-12);
    EXPECT_EQ(needs[2].tubesServed, 0);
}

TEST(ReagentNeeds, StandardsAndSpikesAreNoReagentsButTakeDiluent)
{
    run::Run run = test::plainRun();
    run.standards = {{u"STD"_s, 0.2, {}, {}, {}, 0}};
    run::Tube spiked = run.tubes[1];
    spiked.role = run::Role::Spiked;
    spiked.spike = run::Spike{u"STD"_s, 0.25};
    run::Tube sampleBlank = run.tubes[1];
    sampleBlank.role = run::Role::SampleBlank;
    run.tubes = {test::standardTube("STD", 0, 0), spiked, sampleBlank};
    const auto needs = reagentNeeds(test::risingMethod(), run, 0, {}, from, to);
    EXPECT_NEAR(needOf(needs, u"water"_s).tubes_mL, 1.0 + 0.75 + 1.0 + 0.02, 1e-12);
    EXPECT_NEAR(needOf(needs, u"starter"_s).tubes_mL, 0.04, 1e-12); // none in the sample blank
}

TEST(ReagentNeeds, WhatWasReallyPipettedIsGone)
{
    run::Run run = test::plainRun();
    run.tubes[1].pipetted_mL = {{u"buffer"_s, 1.5}};
    run.tubes[2].spoilt = u"knocked over"_s;
    EXPECT_NEAR(reagentNeeds(test::risingMethod(), run, 0, {}, from, to)[0].tubes_mL, 3.5, 1e-12);
}

TEST(ReagentNeeds, LotsAreFoundByNameWhateverItsCase)
{
    const ReagentNeed need =
        bufferNeed({lotOf(1, u" BUFFER "_s, 10), lotOf(2, u"Buffer pH 9"_s, 10), lotOf(3, u"buffer"_s, 10)});
    EXPECT_EQ(orderOf(need), (std::vector<qint64>{1, 3}));
}

TEST(ReagentNeeds, TheOldestGoodLotComesFirstAndTheUnfitLast)
{
    Lot openOne = expiring(6, lastDay.addDays(30));
    openOne.opened = dayBefore;
    const ReagentNeed need =
        bufferNeed({expiring(1, dayBefore), lotOf(2, u"Buffer"_s, 10), expiring(3, lastDay.addDays(30)),
                    expiring(4, lastDay.addDays(5)), expiring(5, lastDay.addDays(30)), openOne,
                    lotOf(7, u"Buffer"_s, 0)});
    EXPECT_EQ(orderOf(need), (std::vector<qint64>{4, 6, 3, 5, 2, 1, 7}));
    EXPECT_EQ(need.lots[5].second, LotFitness::Expired);
    EXPECT_EQ(need.lots[6].second, LotFitness::Empty);
}

TEST(ReagentNeeds, AnOpenedLotThatKeepsShortlyGoesBeforeOneThatExpiresLater)
{
    Lot openOne = expiring(1, lastDay.addDays(300));
    openOne.opened = dayBefore;
    openOne.keepsOpened_days = 10;
    EXPECT_EQ(orderOf(bufferNeed({expiring(2, lastDay.addDays(30)), openOne})), (std::vector<qint64>{1, 2}));
}

TEST(ReagentNeeds, SharesEmptyTheOldestLotFirst)
{
    const ReagentNeed need = bufferNeed(
        {expiring(1, lastDay.addDays(9), 2.0), expiring(2, lastDay.addDays(5), 0.5), expiring(3, dayBefore)},
        10); // 3.3 mL
    ASSERT_EQ(need.shares.size(), 2U);
    EXPECT_EQ(need.shares[0], (LotShare{2, 0.5}));
    EXPECT_EQ(need.shares[1], (LotShare{1, 2.0}));
    EXPECT_NEAR(need.short_mL, 0.8, 1e-12);
    EXPECT_EQ(need.tubesServed, 2); // 2.5 mL at 1.0 mL
}

TEST(ReagentNeeds, ExactlyEnoughIsNotShort)
{
    // 3 x 0.02 with 10 % is 0.066, whatever binary fractions make of it.
    const auto needs = reagentNeeds(test::risingMethod(), test::plainRun(), 10,
                                    {lotOf(1, u"Enzyme"_s, 0.066), lotOf(2, u"Buffer"_s, 3.2999)}, from, to);
    EXPECT_EQ(needOf(needs, u"starter"_s).short_mL, 0);
    EXPECT_EQ(needOf(needs, u"starter"_s).tubesServed, 3);
    EXPECT_NEAR(needOf(needs, u"buffer"_s).short_mL, 0.0001, 1e-9);
}

TEST(ReagentNeeds, TwoComponentsOfOneNameShareTheLot)
{
    assay::Method method = test::sequentialMethod();
    method.components.back().name = u"Enzyme"_s; // like the starter
    run::Run run = test::plainRun();
    const auto needs =
        reagentNeeds(method, run, 0, {lotOf(1, u"Enzyme"_s, 0.08), lotOf(2, u"Enzyme"_s, 0.01)}, from, to);
    EXPECT_EQ(needOf(needs, u"starter"_s).short_mL, 0);
    EXPECT_NEAR(needOf(needs, u"second"_s).short_mL, 0.03, 1e-12);
    ASSERT_EQ(needOf(needs, u"second"_s).shares.size(), 2U);
    EXPECT_NEAR(needOf(needs, u"second"_s).shares[0].volume_mL, 0.02, 1e-12);
}

} // namespace plateau::planning
