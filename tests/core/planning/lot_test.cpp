// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/lotoutlook.h"
#include "core/planning/lotturns.h"
#include "core/planning/reagents.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

namespace plateau::planning {

using namespace Qt::StringLiterals;

namespace {

/// Monday, 2 March 2026.
const QDateTime runAt(QDate(2026, 3, 2), QTime(9, 10), Qt::OffsetFromUTC, 3600);
const QDate dayOfLots(2026, 3, 2);

Lot lotOfBuffer(double remaining_mL = 10)
{
    Lot lot;
    lot.id = 7;
    lot.reagent = u"Coenzyme"_s;
    lot.lot = u"N-12"_s;
    lot.remaining_mL = remaining_mL;
    return lot;
}

/// Good by its label until the end of the year, opened on 20 February, dissolved on 1 March.
Lot dissolved()
{
    Lot lot = lotOfBuffer();
    lot.expires = QDate(2026, 12, 31);
    lot.opened = QDate(2026, 2, 20);
    lot.dissolved = Dissolving{QDate(2026, 3, 1), 10, u"water"_s};
    return lot;
}

QString words(const Lot &lot)
{
    return outlookText(lot, outlookOf(lot, runAt, runAt));
}

} // namespace

TEST(NextLot, IsFitAndHoldsTheDoseAndIsUsedFirst)
{
    Lot nearlyEmpty = lotOfBuffer(0.1);
    Lot late = lotOfBuffer(5);
    late.id = 8;
    late.expires = QDate(2027, 12, 31);
    Lot early = late;
    early.id = 9;
    early.reagent = u"coenzyme "_s;
    early.expires = QDate(2026, 12, 31);
    Lot expired = late;
    expired.id = 10;
    expired.expires = QDate(2026, 3, 1);
    Lot other = early;
    other.id = 11;
    other.reagent = u"Buffer"_s;
    const std::vector lots{nearlyEmpty, late, early, expired, other};
    ASSERT_TRUE(nextLot(lots, u"Coenzyme"_s, 0.2, runAt));
    EXPECT_EQ(nextLot(lots, u"Coenzyme"_s, 0.2, runAt)->id, 9);
    EXPECT_EQ(nextLot(lots, u"Coenzyme"_s, 5.1, runAt), nullptr);
}

TEST(NextLot, HoldsItsLastDoseWhateverComputingLeaves)
{
    Lot lot = lotOfBuffer(2.4);
    for (int tube = 0; tube < 12; ++tube) {
        EXPECT_TRUE(holds(lot, 0.2)) << tube;
        lot.remaining_mL -= 0.2;
    }
    EXPECT_FALSE(holds(lot, 0.2));
    EXPECT_FALSE(holds(lotOfBuffer(0.1), 0.2));
}

TEST(LotTurns, GoFromContainerToContainerAndStayWithTheNewOne)
{
    Lot first = lotOfBuffer(0.5);
    Lot second = lotOfBuffer(0.45);
    second.id = 8;
    second.expires = QDate(2026, 12, 31);
    Lot third = second;
    third.id = 9;
    third.expires = QDate(2027, 12, 31);
    third.remaining_mL = 5;
    const std::vector lots{first, third, second};
    using Turns = std::vector<std::optional<qint64>>;
    // Behind two doses 0.1 mL is left of the first: it would hold the last dose, but the bench is with
    // another one then.
    EXPECT_EQ(lotsInTurn(7, lots, u"Coenzyme"_s, {0.2, 0.2, 0.2, 0.2, 0.2, 0.1}, runAt),
              (Turns{7, 7, 8, 8, 9, 9}));
    EXPECT_EQ(lotsInTurn(9, lots, u"Coenzyme"_s, {0.2, 0.2}, runAt), (Turns{9, 9}))
        << "the one in use, whatever ends first";
    EXPECT_EQ(lotsInTurn(7, lots, u"Coenzyme"_s, {0.2, 6, 0.2}, runAt),
              (Turns{7, std::nullopt, std::nullopt}))
        << "what a person decides there is not known";
    EXPECT_EQ(lotsInTurn(99, lots, u"Coenzyme"_s, {0.2}, runAt), Turns{8}) << "one that is not in hand";
    const Lot *next = goOnWith(7, lots, u"Coenzyme"_s, 0.5, runAt);
    ASSERT_TRUE(next);
    EXPECT_EQ(next->id, 7) << "its last drop";
    EXPECT_EQ(goOnWith(7, lots, u"Coenzyme"_s, 6, runAt), nullptr);
}

TEST(LotTurns, OfSeveralContainersOfALotTheOneThatEndsFirstIsMeant)
{
    Lot dry = lotOfBuffer();
    dry.isDry = true;
    dry.expires = QDate(2026, 3, 31);
    Lot late = lotOfBuffer();
    late.id = 8;
    late.expires = QDate(2026, 12, 31);
    Lot early = late;
    early.id = 9;
    early.expires = QDate(2026, 6, 30);
    const std::vector lots{dry, late, early};
    ASSERT_TRUE(containerOf(u"N-12"_s, u"coenzyme"_s, lots));
    EXPECT_EQ(containerOf(u"N-12"_s, u"coenzyme"_s, lots)->id, 9);
    EXPECT_EQ(containerOf(u"N-13"_s, u"coenzyme"_s, lots), nullptr);
    EXPECT_EQ(containerOf(u"N-12"_s, u"Buffer"_s, lots), nullptr);
}

TEST(LotUseBy, IsTheEarliestAndSaysWhatEndsIt)
{
    Lot lot = dissolved();
    EXPECT_EQ(useByOf(lotOfBuffer()), std::nullopt);
    EXPECT_EQ(useByOf(lot), (UseBy{QDate(2026, 12, 31), LotLimit::Label}));
    lot.keepsOpened_days = 30; // 20 February and 30 days: 22 March
    EXPECT_EQ(useByOf(lot), (UseBy{QDate(2026, 3, 22), LotLimit::Opened}));
    lot.keepsDissolved_days = 14; // 1 March and 14 days: 15 March
    EXPECT_EQ(useByOf(lot), (UseBy{QDate(2026, 3, 15), LotLimit::Dissolved}));
    EXPECT_EQ(useByText(*useByOf(lot)), u"2026-03-15 (dissolved)"_s);
    lot.expires = QDate(2026, 3, 15);
    EXPECT_EQ(useByOf(lot), (UseBy{QDate(2026, 3, 15), LotLimit::Label})) << "of equal ones the label's";
}

TEST(LotUseBy, AnAliquotHasItsOwnDaysUpToTheLabelsOrItsSources)
{
    Lot source = dissolved();
    source.keepsDissolved_days = 14;
    EXPECT_EQ(passedOn(source, true), QDate(2026, 12, 31)) << "frozen anew, only the label holds";
    EXPECT_EQ(passedOn(source, false), QDate(2026, 3, 15));
    Lot aliquot = lotOfBuffer(0.5);
    aliquot.aliquot = AliquotOrigin{7, 1, QDate(2026, 3, 1), {}, passedOn(source, false)};
    EXPECT_EQ(useByOf(aliquot), (UseBy{QDate(2026, 3, 15), LotLimit::Source}));
    aliquot.aliquot = AliquotOrigin{7, 1, QDate(2026, 3, 1), 90, passedOn(source, true)};
    EXPECT_EQ(useByOf(aliquot), (UseBy{QDate(2026, 5, 30), LotLimit::Stored}));
    aliquot.aliquot->keeps_days = 365;
    EXPECT_EQ(useByOf(aliquot), (UseBy{QDate(2026, 12, 31), LotLimit::Source})) << "never past the label";
    aliquot.opened = dayOfLots;
    aliquot.keepsOpened_days = 1;
    EXPECT_EQ(useByOf(aliquot), (UseBy{QDate(2026, 3, 3), LotLimit::Opened})) << "thawed";
}

TEST(LotFitnessOf, DissolvedStoredAndSourceEndItToo)
{
    Lot lot = dissolved();
    lot.keepsDissolved_days = 0;
    EXPECT_EQ(fitnessOf(lot, runAt, runAt), LotFitness::DissolvedTooLong);
    EXPECT_EQ(words(lot), u"dissolved too long ago, was to be used by 2026-03-01"_s);
    lot.keepsDissolved_days = 1;
    EXPECT_EQ(fitnessOf(lot, runAt, runAt), LotFitness::Good) << "2 March is its last day";
    EXPECT_EQ(words(lot), u"use by tonight"_s);
    EXPECT_EQ(fitnessOf(lot, runAt, runAt.addDays(1)), LotFitness::DissolvedTooLong);
    Lot aliquot = lotOfBuffer();
    aliquot.aliquot = AliquotOrigin{1, 2, QDate(2026, 2, 1), 28, {}};
    EXPECT_EQ(fitnessOf(aliquot, runAt, runAt), LotFitness::StoredTooLong);
    EXPECT_EQ(words(aliquot), u"stored too long, was to be used by 2026-03-01"_s);
    aliquot.aliquot = AliquotOrigin{1, 2, QDate(2026, 2, 1), {}, QDate(2026, 2, 28)};
    EXPECT_EQ(fitnessOf(aliquot, runAt, runAt), LotFitness::SourceTooOld);
    EXPECT_EQ(words(aliquot), u"what it was filled from was to be used by 2026-02-28"_s);
}

TEST(LotFitnessOf, NothingIsPipettedFromWhatIsDry)
{
    Lot lot = lotOfBuffer(0);
    EXPECT_TRUE(isUsedUp(lot));
    lot.isDry = true;
    EXPECT_FALSE(isUsedUp(lot));
    EXPECT_EQ(fitnessOf(lot, runAt, runAt), LotFitness::NotDissolved);
    lot.reagent = u"Buffer"_s;
    const ReagentNeed need =
        reagentNeeds(test::risingMethod(), test::plainRun(), 0, {lot}, runAt, runAt).at(0);
    EXPECT_TRUE(need.shares.empty());
    EXPECT_GT(need.short_mL, 0);
}

TEST(LotOutlookOf, WarnsAWeekAheadAndBelowARack)
{
    Lot lot = dissolved();
    lot.keepsDissolved_days = 8; // 9 March, in seven days
    const LotOutlook near = outlookOf(lot, runAt, runAt, {1.0, 24});
    EXPECT_EQ(near.daysLeft, 7);
    EXPECT_EQ(near.tubesLeft, 10);
    EXPECT_TRUE(near.isNear());
    EXPECT_EQ(outlookText(lot, near), u"use by 2026-03-09; low, enough for 10 tubes"_s);
    lot.keepsDissolved_days = 9;
    EXPECT_FALSE(outlookOf(lot, runAt, runAt).isNear());
    EXPECT_EQ(words(lot), u"in use, dissolved"_s);
    EXPECT_EQ(outlookOf(lot, runAt, runAt.addDays(1)).daysLeft, 7) << "counted from when the run ends";
}

TEST(LotOutlookOf, AReviewIsToldWhatWasOverWhenItWasTakenAndWhatEndsSoon)
{
    Lot lot = dissolved();
    lot.keepsDissolved_days = 14;
    EXPECT_EQ(usedLotText(lot, runAt, dayOfLots), QString()) << "good for 13 days more";
    lot.keepsDissolved_days = 5;
    EXPECT_EQ(usedLotText(lot, runAt, dayOfLots),
              u"Coenzyme, lot N-12: use by 2026-03-06; a repeat after that takes another."_s);
    EXPECT_EQ(usedLotText(lot, runAt, QDate(2026, 3, 7)), QString()) << "years later nobody asks";
    lot.keepsDissolved_days = 0;
    lot.remaining_mL = 0;
    EXPECT_EQ(
        usedLotText(lot, runAt, dayOfLots),
        u"Coenzyme, lot N-12: dissolved too long ago, was to be used by 2026-03-01, and this run took from it "
        "on 2026-03-02."_s)
        << "also when it is used up since";
}

TEST(LotPlace, SaysItsTemperaturesAsFarAsTheyAreKnown)
{
    EXPECT_EQ(placeText({u"freezer 2"_s, {}, -10}), u"freezer 2, at most \u221210\u00a0°C"_s);
    EXPECT_EQ(placeText({u"cold room"_s, 2, 8}), u"cold room, 2 to 8\u00a0°C"_s);
    EXPECT_EQ(placeText({u"bench"_s, 15, {}}), u"bench, at least 15\u00a0°C"_s);
    EXPECT_EQ(placeText({u"shelf"_s, {}, {}}), u"shelf"_s);
}

} // namespace plateau::planning
