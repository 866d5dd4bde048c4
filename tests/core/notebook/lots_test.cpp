// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class LotsTest : public OpenNotebookTest
{
protected:
    LotId receive(double volume_mL = 50)
    {
        return m_book->lots().receive({u"Buffer"_s, u"B-17"_s, QDate(2026, 9, 30), 28}, volume_mL, person);
    }
    double left(LotId lot) const
    {
        for (const planning::Lot &known : m_book->lots().all()) {
            if (known.id == lot.value)
                return known.remaining_mL;
        }
        ADD_FAILURE() << "no such lot";
        return 0;
    }
};

TEST_F(LotsTest, AReceivedLotIsInHand)
{
    const LotId lot = receive();
    const std::vector<planning::Lot> lots = m_book->lots().inHand();
    ASSERT_THAT(lots, SizeIs(1));
    EXPECT_EQ(lots[0], (planning::Lot{lot.value, u"Buffer"_s, u"B-17"_s, QDate(2026, 9, 30), {}, 28, 50}));
    const std::vector<LotMovement> ledger = m_book->lots().movements(lot);
    ASSERT_THAT(ledger, SizeIs(1));
    EXPECT_EQ(ledger[0].kind, LotMovementKind::Received);
    EXPECT_EQ(ledger[0].change_mL, 50);
    EXPECT_EQ(ledger[0].person, person);
    EXPECT_EQ(ledger[0].at, m_now);
}

TEST_F(LotsTest, WhatIsLeftIsTheLedger)
{
    const LotId lot = receive();
    m_book->lots().use(lot, 0.1, person, {});
    m_book->lots().use(lot, 0.2, person, u"a trial"_s);
    EXPECT_EQ(left(lot), 49.7) << "to the nanolitre";
    m_book->lots().discard(lot, 9.7, person, u"spilt"_s);
    EXPECT_EQ(left(lot), 40);
    m_book->lots().correct(lot, 38.5, person, u"measured"_s);
    EXPECT_EQ(left(lot), 38.5);
    const std::vector<LotMovement> ledger = m_book->lots().movements(lot);
    ASSERT_THAT(ledger, SizeIs(6));
    EXPECT_EQ(ledger[2].kind, LotMovementKind::Opened) << "by what was taken first";
    EXPECT_EQ(ledger[4].kind, LotMovementKind::Discarded);
    EXPECT_EQ(ledger[4].change_mL, -9.7);
    EXPECT_EQ(ledger[4].note, u"spilt"_s);
    EXPECT_EQ(ledger[5].kind, LotMovementKind::Corrected);
    EXPECT_NEAR(ledger[5].change_mL, -1.5, 1e-12);
    m_book->lots().discard(lot, 38.5, person, u"past its day"_s);
    EXPECT_THAT(m_book->lots().inHand(), IsEmpty());
    EXPECT_THAT(m_book->lots().all(), SizeIs(1));
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(LotsTest, TickedDosesTakeFromTheirLot)
{
    const LotId lot = receive(3);
    const RunId run = m_book->addRun(unreadRun(), risingMethod(), person);
    const auto dose = [&](int tube, std::optional<double> volume_mL = {}) {
        return DoneDose{{tube, u"buffer"_s, false}, volume_mL, lot, {}, {}};
    };
    m_book->pipetting().markDone(run, {dose(0), dose(1)}, person);
    EXPECT_EQ(left(lot), 1);
    m_book->pipetting().markDone(run, {dose(1, 1.05)}, person);
    EXPECT_EQ(left(lot), 0.95) << "said again with another volume, it counts once";
    m_book->pipetting().markUndone(run, {{0, u"buffer"_s, false}}, person);
    EXPECT_EQ(left(lot), 1.95);
    m_book->pipetting().markDone(run, {dose(0), dose(2)}, person);
    EXPECT_EQ(left(lot), -0.05) << "what is in the tubes cannot be refused";
    EXPECT_THAT(m_book->lots().inHand(), SizeIs(1));
    EXPECT_THAT(m_book->lots().takings(lot),
                ElementsAre(LotTaking{run, 3.05, 3, {}, u"Unread"_s, m_book->runs().front().createdAt}));
    m_book->pipetting().markSpoilt(run, 2, person, u"fell over"_s);
    EXPECT_EQ(left(lot), -0.05) << "a spoilt tube took it all the same";
    m_book->lots().correct(lot, 0, person, u"the bottle is empty"_s);
    EXPECT_EQ(left(lot), 0);
}

TEST_F(LotsTest, NothingIsTakenByHandThatTheLedgerDoesNotHold)
{
    const LotId lot = receive(5);
    expectRefused([&] { m_book->lots().use(lot, 5.1, person, {}); },
                  "has 5 mL left, less than the 5.1 mL"_L1);
    expectRefused([&] { m_book->lots().discard(lot, 6, person, u"spilt"_s); }, "has 5 mL left"_L1);
    m_book->lots().use(lot, 5, person, {});
    EXPECT_EQ(left(lot), 0);
}

TEST_F(LotsTest, ALotIsOpenedOnceAndNotInAdvance)
{
    const LotId lot = receive();
    expectRefused([&] { m_book->lots().open(lot, QDate(2026, 3, 3), person); }, "in the future"_L1);
    expectRefused([&] { m_book->lots().open(lot, QDate(), person); }, "real date"_L1);
    m_book->lots().open(lot, QDate(2026, 2, 27), person);
    EXPECT_EQ(m_book->lots().all().at(0).opened, QDate(2026, 2, 27));
    expectRefused([&] { m_book->lots().open(lot, QDate(2026, 3, 2), person); }, "2026-02-27 already"_L1);
}

TEST_F(LotsTest, WhatMakesNoSenseIsRefused)
{
    Lots &lots = m_book->lots();
    const auto receiveAs = [&](const LotLabel &label, double volume_mL) {
        return [&lots, label, volume_mL, this] { lots.receive(label, volume_mL, person); };
    };
    expectRefused(receiveAs({u" "_s, u"B-17"_s, {}, {}}, 50), "the reagent cannot be used"_L1);
    expectRefused(receiveAs({u"Buffer"_s, u""_s, {}, {}}, 50), "the lot cannot be used"_L1);
    expectRefused(receiveAs({u"Buffer"_s, u"B-17"_s, QDate(), {}}, 50), "not a real date"_L1);
    expectRefused(receiveAs({u"Buffer"_s, u"B-17"_s, {}, 0}, 50), "keeps for 1 to"_L1);
    expectRefused(receiveAs({u"Buffer"_s, u"B-17"_s, {}, {}}, 0), "more than 0"_L1);
    expectRefused(receiveAs({u"Buffer"_s, u"B-17"_s, {}, {}}, qQNaN()), "more than 0"_L1);
    const LotId lot = receive();
    expectRefused([&] { lots.use(lot, -1, person, {}); }, "more than 0"_L1);
    expectRefused([&] { lots.use(lot, 1, person, u" "_s); }, "note is blank"_L1);
    expectRefused([&] { lots.discard(lot, 1, person, {}); }, "needs a reason"_L1);
    expectRefused([&] { lots.correct(lot, 40, person, {}); }, "needs a reason"_L1);
    expectRefused([&] { lots.correct(lot, -1, person, u"measured"_s); }, "must lie between 0"_L1);
    expectRefused([&] { lots.correct(lot, 50, person, u"measured"_s); }, "50 mL left already"_L1);
    expectRefused([&] { lots.use({9}, 1, person, {}); }, "no lot number 9"_L1);
    expectRefused([&] { lots.open({9}, QDate(2026, 3, 1), person); }, "no lot number 9"_L1);
    expectRefused([&] { lots.movements({9}); }, "no lot number 9"_L1);
    expectRefused([&] { lots.receive({u"Buffer"_s, u"B-17"_s, {}, {}}, 50, u" "_s); }, "no person"_L1);
}

TEST_F(LotsTest, AnotherLabelIsARowMore)
{
    const LotId lot = receive();
    const LotLabel corrected{u"Buffer pH 9"_s, u"B-17"_s, QDate(2027, 9, 30), {}};
    expectRefused([&] { m_book->lots().relabel(lot, corrected, person, u" "_s); }, "needs a reason"_L1);
    m_book->lots().relabel(lot, corrected, person, u"year misread"_s);
    expectRefused([&] { m_book->lots().relabel(lot, corrected, person, u"again"_s); }, "already"_L1);
    const planning::Lot stored = m_book->lots().all().at(0);
    EXPECT_EQ(stored.reagent, u"Buffer pH 9"_s);
    EXPECT_EQ(stored.expires, QDate(2027, 9, 30));
    EXPECT_FALSE(stored.keepsOpened_days);
    EXPECT_EQ(stored.remaining_mL, 50);
    m_book.reset();
    RawFile raw(file());
    EXPECT_EQ(raw.value(u"SELECT group_concat(coalesce(expires, '-')) FROM lot_version"_s).toString(),
              u"2026-09-30,2027-09-30"_s);
}

TEST_F(LotsTest, TwoContainersOfOneLotAreTwo)
{
    const LotId first = receive(10);
    const LotId second = receive(20);
    EXPECT_NE(first, second);
    m_book->lots().use(first, 4, person, {});
    EXPECT_EQ(left(first), 6);
    EXPECT_EQ(left(second), 20);
}

} // namespace plateau::test
