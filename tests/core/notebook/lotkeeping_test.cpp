// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using planning::StoragePlace;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

/// The clock of the tests stands at 2 March 2026.
class LotKeepingTest : public OpenNotebookTest
{
protected:
    Lots &lots() { return m_book->lots(); }
    LotId receiveDry()
    {
        return lots().receiveDry({u"Coenzyme"_s, u"N-12"_s, QDate(2027, 1, 31), 30, 14}, 25, person);
    }
    /// 4 mL in water, today.
    LotId dissolved()
    {
        const LotId lot = receiveDry();
        lots().dissolve(lot, {4, u"water"_s, {}, today, 14}, person);
        return lot;
    }
    planning::Lot lotOf(LotId id)
    {
        for (const planning::Lot &lot : lots().all()) {
            if (lot.id == id.value)
                return lot;
        }
        ADD_FAILURE() << "no such lot";
        return {};
    }
    std::vector<LotMovementKind> kindsOf(LotId id)
    {
        std::vector<LotMovementKind> kinds;
        for (const LotMovement &line : lots().movements(id))
            kinds.push_back(line.kind);
        return kinds;
    }

    const QDate today{2026, 3, 2};
    using Kind = LotMovementKind;
};

TEST_F(LotKeepingTest, ADryContainerIsInHandAndHoldsNothing)
{
    const LotId lot = receiveDry();
    ASSERT_THAT(lots().inHand(), SizeIs(1));
    const planning::Lot stored = lotOf(lot);
    EXPECT_TRUE(stored.isDry);
    EXPECT_EQ(stored.dry_mg, 25);
    EXPECT_EQ(stored.remaining_mL, 0);
    EXPECT_EQ(planning::lastGoodDay(stored), QDate(2027, 1, 31));
    const std::vector<LotMovement> ledger = lots().movements(lot);
    ASSERT_THAT(ledger, SizeIs(1));
    EXPECT_EQ(ledger[0].kind, Kind::ReceivedDry);
    EXPECT_EQ(ledger[0].note, u"25\u00a0mg"_s);
    expectRefused([&] { lots().use(lot, 1, person, {}); }, "is dry"_L1);
    expectRefused([&] { lots().correct(lot, 1, person, u"measured"_s); }, "is dry"_L1);
    expectRefused([&] { lots().divide(lot, {1, 1, today}, person); }, "is dry"_L1);
}

TEST_F(LotKeepingTest, DissolvedItHasAVolumeAndItsDaysAreTheEarliest)
{
    const LotId lot = dissolved();
    const planning::Lot stored = lotOf(lot);
    EXPECT_FALSE(stored.isDry);
    EXPECT_EQ(stored.remaining_mL, 4);
    EXPECT_EQ(stored.opened, today) << "it counts as opened";
    EXPECT_EQ(stored.dissolved, (planning::Dissolving{today, 4, u"water"_s}));
    // Label 2027-01-31, opened 30 days: 1 April, dissolved 14 days: 16 March.
    EXPECT_EQ(planning::useByOf(stored),
              (planning::UseBy{QDate(2026, 3, 16), planning::LotLimit::Dissolved}));
    EXPECT_THAT(kindsOf(lot), ElementsAre(Kind::ReceivedDry, Kind::Opened, Kind::Dissolved));
    EXPECT_EQ(lots().movements(lot)[2].note, u"in water"_s);
    expectRefused(
        [&] {
            lots().dissolve(lot, {4, u"water"_s, {}, today, 14}, person);
        },
        "was dissolved on 2026-03-02 already"_L1);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(LotKeepingTest, HowLongItKeepsDissolvedGoesIntoTheLabelAndIsCorrectedThere)
{
    const LotId lot = receiveDry();
    lots().dissolve(lot, {4, u"water"_s, {}, today, 140}, person);
    EXPECT_EQ(lotOf(lot).keepsDissolved_days, 140);
    lots().relabel(lot, {u"Coenzyme"_s, u"N-12"_s, QDate(2027, 1, 31), 30, 0}, person, u"140 was a slip"_s);
    EXPECT_EQ(lotOf(lot).keepsDissolved_days, 0);
    EXPECT_EQ(planning::lastGoodDay(lotOf(lot)), today) << "on that day only";
}

TEST_F(LotKeepingTest, ASolventFromTheBookGivesItsVolume)
{
    const LotId buffer = lots().receive({u"Buffer"_s, u"B-17"_s, {}, {}}, 5, person);
    const LotId lot = receiveDry();
    expectRefused(
        [&] {
            lots().dissolve(lot, {6, {}, buffer, today}, person);
        },
        "has 5 mL left, less than the 6"_L1);
    lots().dissolve(lot, {4, {}, buffer, today}, person);
    EXPECT_EQ(lotOf(buffer).remaining_mL, 1);
    EXPECT_EQ(lotOf(lot).remaining_mL, 4);
    EXPECT_EQ(lotOf(lot).dissolved->solvent, u"Buffer, lot B-17"_s);
    const std::vector<LotMovement> ledger = lots().movements(buffer);
    ASSERT_THAT(ledger, SizeIs(3));
    EXPECT_EQ(ledger[1].kind, Kind::GaveSolvent);
    EXPECT_EQ(ledger[2].kind, Kind::Opened) << "to take from it";
    EXPECT_EQ(ledger[1].change_mL, -4);
    EXPECT_EQ(ledger[1].note, u"Coenzyme, N-12"_s);
}

TEST_F(LotKeepingTest, AliquotsAreContainersWithDaysOfTheirOwn)
{
    const LotId lot = dissolved();
    LotDivision how{5, 0.7, today, 90, 1};
    how.place = StoragePlace{u"freezer 2"_s, {}, -10};
    const std::vector<LotId> aliquots = lots().divide(lot, how, person);
    ASSERT_THAT(aliquots, SizeIs(5));
    EXPECT_EQ(lotOf(lot).remaining_mL, 0.5) << "4 - 5 x 0.7";
    const planning::Lot third = lotOf(aliquots[2]);
    EXPECT_EQ(third.lot, u"N-12, aliquot 3"_s);
    EXPECT_EQ(third.reagent, u"Coenzyme"_s);
    EXPECT_EQ(third.remaining_mL, 0.7);
    EXPECT_FALSE(third.opened);
    EXPECT_EQ(third.place, how.place);
    EXPECT_EQ(planning::placeText(*third.place), u"freezer 2, at most \u221210\u00a0\u00b0C"_s);
    // 90 days after 2 March; the source's 14 days end with the division, its label's day does not.
    EXPECT_EQ(planning::useByOf(third), (planning::UseBy{QDate(2026, 5, 31), planning::LotLimit::Stored}));
    lots().open(aliquots[2], today, person);
    EXPECT_EQ(planning::useByOf(lotOf(aliquots[2])),
              (planning::UseBy{QDate(2026, 3, 3), planning::LotLimit::Opened}));
    EXPECT_THAT(kindsOf(aliquots[2]), ElementsAre(Kind::Filled, Kind::Stored, Kind::Opened));
    EXPECT_EQ(lots().movements(aliquots[2])[0].note, u"from Coenzyme, N-12, keeps as stored: 90 days"_s);
    EXPECT_EQ(lots().divide(lot, {1, 0.5, today}, person).size(), 1U);
    EXPECT_EQ(lots().all().back().lot, u"N-12, aliquot 6"_s) << "numbers go on";
    expectRefused([&] { lots().divide(aliquots[0], {1, 0.1, today}, person); }, "is an aliquot itself"_L1);
    expectRefused([&] { lots().divide(lot, {1, 0.1, today}, person); }, "has 0 mL left"_L1);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(LotKeepingTest, WithoutDaysOfTheirOwnTheSourcesGoOn)
{
    const LotId lot = dissolved();
    const LotId aliquot = lots().divide(lot, {1, 1, today}, person).at(0);
    EXPECT_EQ(planning::useByOf(lotOf(aliquot)),
              (planning::UseBy{QDate(2026, 3, 16), planning::LotLimit::Source}));
    lots().relabel(lot, {u"Coenzyme"_s, u"N-12"_s, QDate(2026, 3, 10), 30, 14}, person, u"recalled early"_s);
    EXPECT_EQ(planning::lastGoodDay(lotOf(aliquot)), QDate(2026, 3, 10))
        << "what is corrected on the source holds for its aliquots";
}

TEST_F(LotKeepingTest, PlacesFollowOneAnother)
{
    const LotId lot = dissolved();
    lots().store(lot, {u"cold room"_s, 2, 8}, person, {});
    expectRefused(
        [&] {
            lots().store(lot, {u"cold room"_s, 2, 8}, person, {});
        },
        "is there already (cold room, 2 to 8"_L1);
    lots().store(lot, {u"bench"_s, {}, {}}, person, u"for the afternoon"_s);
    EXPECT_EQ(lotOf(lot).place, (StoragePlace{u"bench"_s, {}, {}}));
    EXPECT_EQ(lots().movements(lot).back().note, u"bench; for the afternoon"_s);
    expectRefused([&] { lots().store(lot, {u" "_s, {}, {}}, person, {}); }, "the place cannot be used"_L1);
    expectRefused([&] { lots().store(lot, {u"freezer"_s, -10, -30}, person, {}); }, "lower one first"_L1);
    expectRefused([&] { lots().store(lot, {u"freezer"_s, {}, -400}, person, {}); }, "not -400"_L1);
}

TEST_F(LotKeepingTest, NotesStandInTheLedger)
{
    const LotId lot = dissolved();
    lots().note(lot, u"a little turbid"_s, person);
    EXPECT_EQ(lots().movements(lot).back().note, u"a little turbid"_s);
    EXPECT_EQ(lots().movements(lot).back().change_mL, 0);
    expectRefused([&] { lots().note(lot, u" "_s, person); }, "note is blank"_L1);
}

TEST_F(LotKeepingTest, WhatMakesNoSenseIsRefused)
{
    const LotId lot = receiveDry();
    const auto dissolving = [&](double volume_mL, const QString &solvent, const QDate &day, int keeps_days) {
        return [=, this] { lots().dissolve(lot, {volume_mL, solvent, {}, day, keeps_days}, person); };
    };
    expectRefused(dissolving(0, u"water"_s, today, 14), "more than 0"_L1);
    expectRefused(dissolving(4, u" "_s, today, 14), "say in what"_L1);
    expectRefused(dissolving(4, u"water"_s, today.addDays(1), 14), "in the future"_L1);
    expectRefused(dissolving(4, u"water"_s, today, -1), "keeps for 0 to"_L1);
    lots().open(lot, today, person);
    expectRefused(dissolving(4, u"water"_s, today.addDays(-1), 14), "was opened on 2026-03-02"_L1);
    const LotId liquid = lots().receive({u"Buffer"_s, u"B-17"_s, {}, {}}, 5, person);
    expectRefused(
        [&] {
            lots().dissolve(liquid, {4, u"water"_s, {}, today}, person);
        },
        "not in the book as dry"_L1);
    expectRefused([&] { lots().divide(liquid, {0, 1, today}, person); }, "1 to 100 aliquots"_L1);
    expectRefused([&] { lots().divide(liquid, {101, 0.01, today}, person); }, "1 to 100 aliquots"_L1);
    expectRefused([&] { lots().divide(liquid, {3, 2, today}, person); }, "less than the 6 mL"_L1);
    expectRefused([&] { lots().receiveDry({u"Coenzyme"_s, u"N"_s, {}, {}}, 0, person); }, "more than 0"_L1);
}

TEST_F(LotKeepingTest, ADryOneThatBrokeIsOutOfTheBook)
{
    const LotId lot = receiveDry();
    expectRefused([&] { lots().discardDry(lot, person, {}); }, "needs a reason"_L1);
    lots().discardDry(lot, person, u"fell down"_s);
    EXPECT_THAT(lots().inHand(), IsEmpty());
    EXPECT_EQ(lots().movements(lot).back().kind, Kind::Discarded);
    expectRefused(
        [&] {
            lots().dissolve(lot, {4, u"water"_s, {}, today, 14}, person);
        },
        "not in the book as dry"_L1);
}

TEST_F(LotKeepingTest, WhatALotTouchedGoesThroughAliquotsAndSolutions)
{
    const LotId buffer = lots().receive({u"Buffer"_s, u"B-17"_s, {}, {}}, 50, person);
    const LotId dry = lots().receiveDry({u"Buffer"_s, u"P-3"_s, {}, {}}, 950, person);
    lots().dissolve(dry, {4, {}, buffer, today}, person);
    const LotId aliquot = lots().divide(dry, {2, 1.5, today}, person).at(1);
    const RunId run = m_book->addRun(unreadRun(), risingMethod(), person);
    m_book->pipetting().markDone(run,
                                 {DoneDose{{0, u"buffer"_s, false}, 1.0, buffer, {}, {}},
                                  DoneDose{{1, u"buffer"_s, false}, 1.0, aliquot, {}, {}}},
                                 person);
    const QString through = u"Buffer, P-3, aliquot 2"_s;
    const RunSummary told = m_book->runs().front();
    const LotTaking direct{run, 1, 1, {}, told.title, told.createdAt};
    const LotTaking indirect{run, 1, 1, through, told.title, told.createdAt};
    EXPECT_THAT(lots().takings(aliquot), ElementsAre(direct));
    EXPECT_THAT(lots().takings(dry), ElementsAre(indirect));
    EXPECT_THAT(lots().takings(buffer), ElementsAre(direct, indirect));
    EXPECT_EQ(lotOf(buffer).remaining_mL, 45) << "50 - 4 - 1";
    EXPECT_EQ(lotOf(aliquot).remaining_mL, 0.5);
}

} // namespace plateau::test
