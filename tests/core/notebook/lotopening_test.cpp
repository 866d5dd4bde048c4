// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/keeping.h"
#include "tests/core/notebook/fixture.h"

#include <QLocale>
#include <QScopeGuard>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

/// Whoever takes from a lot has opened it. The clock of the tests stands at 2 March 2026.
class LotOpeningTest : public OpenNotebookTest
{
protected:
    using Kind = LotMovementKind;

    Lots &lots() { return m_book->lots(); }
    LotId receive(const QString &reagent, const QString &lot)
    {
        return lots().receive({reagent, lot, QDate(2026, 9, 30), 14}, 50, person);
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
    std::optional<QDate> openedOn(LotId id) { return lotOf(id).opened; }
    std::vector<Kind> kindsOf(LotId id)
    {
        std::vector<Kind> kinds;
        for (const LotMovement &line : lots().movements(id))
            kinds.push_back(line.kind);
        return kinds;
    }
    /// Nothing is read or ticked yet; it names these lots.
    RunId addRun(const std::vector<run::LotUse> &named = {})
    {
        run::Run run = unreadRun();
        run.lots = named;
        return m_book->addRun(run, risingMethod(), person);
    }
    /// It came with its readings, and names that lot of the buffer.
    RunId addRunReadOn(const QDate &day, const QString &lot = u"B-17"_s)
    {
        run::Run run = plainRun();
        run.startedAt = QDateTime(day, QTime(9, 0), Qt::OffsetFromUTC, 3600);
        run.lots = {named(u"buffer"_s, lot)};
        return m_book->addRun(run, risingMethod(), person);
    }
    std::vector<LotId> tick(RunId run, int tube, std::optional<LotId> lot = {})
    {
        return m_book->pipetting().markDone(run, {DoneDose{buffer(tube), {}, lot, {}, {}}}, person);
    }
    void read(RunId run, int tube, const QString &reading)
    {
        m_book->addReading(run, tube, reading, 0.1, u"0.1"_s, person);
    }
    void goTo(const QDate &day) { m_now = QDateTime(day, QTime(9, 0), Qt::OffsetFromUTC, 3600); }

    static Dose buffer(int tube) { return {tube, u"buffer"_s, false}; }
    static run::LotUse named(const QString &component, const QString &lot) { return {component, lot, {}}; }

    const QDate today{2026, 3, 2};
};

TEST_F(LotOpeningTest, TheFirstTickOpensTheLotInAnEntryOfItsOwn)
{
    const LotId lot = receive(u"Buffer"_s, u"B-17"_s);
    const RunId run = addRun();
    const int before = m_book->auditHead().entries;
    EXPECT_THAT(tick(run, 0, lot), ElementsAre(lot));
    EXPECT_EQ(openedOn(lot), today);
    EXPECT_EQ(m_book->auditHead().entries, before + 2);
    const std::vector<AuditItem> items = m_book->keeping().audit({.most = 2});
    ASSERT_THAT(items, SizeIs(2));
    EXPECT_EQ(items[0].entry.action, u"lotOpened"_s);
    EXPECT_EQ(items[0].entry.details, u"Buffer, lot B-17: something was taken from it"_s);
    EXPECT_EQ(items[0].entry.person, person);
    EXPECT_FALSE(items[0].entry.run);
    EXPECT_EQ(items[1].entry.action, u"dosesDone"_s);
    EXPECT_EQ(items[1].entry.run, std::optional(run));

    EXPECT_THAT(tick(run, 1, lot), IsEmpty()) << "once only";
    EXPECT_EQ(m_book->auditHead().entries, before + 3);
    EXPECT_THAT(kindsOf(lot), ElementsAre(Kind::Received, Kind::Opened));
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(LotOpeningTest, AMarkKeepsTheDayThatCountsAndNotTheLabels)
{
    const LotId lot = receive(u"Buffer"_s, u"B-17"_s);
    const RunId run = addRun();
    tick(run, 0, lot);
    const QDate last = today.addDays(14);
    EXPECT_EQ(m_book->load(run).marks.at(0).lotExpires, last);
    EXPECT_THAT(m_book->load(run).run.lots, ElementsAre(run::LotUse{u"buffer"_s, u"B-17"_s, last}));
    EXPECT_EQ(planning::useByOf(lotOf(lot)), (planning::UseBy{last, planning::LotLimit::Opened}));
}

TEST_F(LotOpeningTest, ADoseOfNothingOpensNoBottle)
{
    const LotId lot = receive(u"Buffer"_s, u"B-17"_s);
    const RunId run = addRun();
    const auto dose = [&](int tube, double volume_mL) {
        return DoneDose{buffer(tube), volume_mL, lot, {}, {}};
    };
    const auto lastGood = [&](std::size_t mark) { return m_book->load(run).marks.at(mark).lotExpires; };
    const QDate onLabel(2026, 9, 30);
    EXPECT_THAT(m_book->pipetting().markDone(run, {dose(0, 0)}, person), IsEmpty());
    EXPECT_FALSE(openedOn(lot));
    EXPECT_EQ(lastGood(0), onLabel) << "the label's day, and none that an opening would begin";
    EXPECT_THAT(m_book->pipetting().markDone(run, {dose(1, 0), dose(2, 1), dose(3, 0)}, person), ElementsAre(lot));
    EXPECT_EQ(openedOn(lot), today);
    EXPECT_EQ(lastGood(1), onLabel);
    EXPECT_EQ(lastGood(2), today.addDays(14));
    EXPECT_EQ(lastGood(3), today.addDays(14));
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(LotOpeningTest, ATickThatIsTakenBackClosesNoBottle)
{
    const LotId lot = receive(u"Buffer"_s, u"B-17"_s);
    const RunId run = addRun();
    tick(run, 0, lot);
    m_book->pipetting().markUndone(run, {buffer(0)}, person);
    EXPECT_EQ(openedOn(lot), today);
    EXPECT_EQ(lotOf(lot).remaining_mL, 50);
}

TEST_F(LotOpeningTest, ATickWithoutALotOpensTheOneThatTheRunNames)
{
    const LotId lot = receive(u"Buffer"_s, u"B-17"_s);
    const LotId other = receive(u"Buffer"_s, u"B-18"_s);
    const RunId two = addRun({named(u"buffer"_s, u"B-17"_s), named(u"buffer"_s, u"B-18"_s)});
    EXPECT_THAT(tick(two, 0), IsEmpty()) << "nobody knows which";
    const RunId run = addRun({named(u"buffer"_s, u"B-17"_s)});
    EXPECT_THAT(tick(run, 0), ElementsAre(lot));
    EXPECT_EQ(openedOn(lot), today);
    EXPECT_FALSE(openedOn(other));
}

TEST_F(LotOpeningTest, WhereNobodyTicksAReadingOpensWhatCameAheadOfIt)
{
    const LotId bottle = receive(u"Buffer"_s, u"B-17"_s);
    const LotId enzyme = receive(u"Enzyme"_s, u"E-3"_s);
    const LotId unnamed = receive(u"Water"_s, u"W-1"_s);
    const RunId run = addRun({named(u"buffer"_s, u"B-17"_s), named(u"starter"_s, u"E-3"_s)});
    EXPECT_FALSE(openedOn(bottle)) << "a run on the bench took nothing yet";
    const int before = m_book->auditHead().entries;
    read(run, 1, u"A1"_s);
    EXPECT_EQ(openedOn(bottle), today);
    EXPECT_FALSE(openedOn(enzyme)) << "it goes in after that reading";
    EXPECT_EQ(m_book->auditHead().entries, before + 2);
    read(run, 2, u"A1"_s);
    EXPECT_EQ(m_book->auditHead().entries, before + 3) << "once only";
    goTo(today.addDays(1));
    read(run, 1, u"A2"_s);
    EXPECT_EQ(openedOn(enzyme), today.addDays(1));
    EXPECT_FALSE(openedOn(unnamed));
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(LotOpeningTest, ADoseThatIsTickedSpeaksForItself)
{
    const LotId planned = receive(u"Buffer"_s, u"B-17"_s);
    const LotId taken = receive(u"Buffer"_s, u"B-18"_s);
    const RunId run = addRun({named(u"buffer"_s, u"B-17"_s)});
    EXPECT_THAT(tick(run, 0, taken), ElementsAre(taken));
    read(run, 0, u"A1"_s);
    EXPECT_FALSE(openedOn(planned));
    read(run, 1, u"A1"_s);
    EXPECT_EQ(openedOn(planned), today) << "that tube is not ticked";
}

TEST_F(LotOpeningTest, OfTwoContainersOfALotItIsTheOneInUse)
{
    const LotId sealed = receive(u"Buffer"_s, u"B-17"_s);
    const LotId inUse = receive(u"Buffer"_s, u"B-17"_s);
    lots().open(inUse, QDate(2026, 2, 27), person);
    read(addRun({named(u"buffer"_s, u"B-17"_s)}), 1, u"A1"_s);
    EXPECT_FALSE(openedOn(sealed));
    EXPECT_EQ(openedOn(inUse), QDate(2026, 2, 27));
}

TEST_F(LotOpeningTest, ARunThatCameReadOpensItsLotsOnTheDayItBegan)
{
    goTo(QDate(2026, 2, 20));
    const LotId lot = receive(u"Buffer"_s, u"B-17"_s);
    goTo(today);
    addRunReadOn(QDate(2026, 2, 20));
    EXPECT_EQ(openedOn(lot), QDate(2026, 2, 20));
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(LotOpeningTest, ARunThatCameReadOpensNothingThatCameAfterItsDay)
{
    const LotId later = receive(u"Buffer"_s, u"B-17"_s);
    addRunReadOn(today.addDays(-1));
    EXPECT_FALSE(openedOn(later));
    EXPECT_THAT(kindsOf(later), ElementsAre(Kind::Received));

    goTo(today.addDays(9));
    const LotId latest = lots().receive({u"Buffer"_s, u"B-17"_s, QDate(2026, 3, 15), 14}, 50, person);
    addRunReadOn(today.addDays(5));
    EXPECT_EQ(openedOn(later), today.addDays(5));
    EXPECT_FALSE(openedOn(latest));
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(LotOpeningTest, OfAliquotsTheDayCountsOnWhichTheyWereFilled)
{
    const LotId lot = receive(u"Buffer"_s, u"B-17"_s);
    goTo(today.addDays(9));
    const QDate filled = today.addDays(4);
    const LotId aliquot = lots().divide(lot, {1, 2, filled, 90, 1}, person).at(0);
    const QString name = lotOf(aliquot).lot;
    addRunReadOn(filled.addDays(-1), name);
    EXPECT_FALSE(openedOn(aliquot));
    addRunReadOn(filled, name);
    EXPECT_EQ(openedOn(aliquot), filled);
}

TEST_F(LotOpeningTest, WhatWasOpenBeforeItWasWrittenUpIsTheOneInUse)
{
    goTo(QDate(2026, 2, 10));
    const LotId sealed = receive(u"Buffer"_s, u"B-17"_s);
    goTo(today);
    const LotId inUse = receive(u"Buffer"_s, u"B-17"_s);
    lots().open(inUse, QDate(2026, 2, 12), person);
    addRunReadOn(QDate(2026, 2, 20));
    EXPECT_FALSE(openedOn(sealed));
    EXPECT_EQ(openedOn(inUse), QDate(2026, 2, 12));
}

TEST_F(LotOpeningTest, WhatARunSaysWasLeftOutOpensNothing)
{
    const LotId bottle = receive(u"Buffer"_s, u"B-17"_s);
    const LotId enzyme = receive(u"Enzyme"_s, u"E-3"_s);
    run::Run run = plainRun();
    run.lots = {named(u"buffer"_s, u"B-17"_s), named(u"starter"_s, u"E-3"_s)};
    for (run::Tube &tube : run.tubes)
        tube.pipetted_mL[u"starter"_s] = 0;
    m_book->addRun(run, risingMethod(), person);
    EXPECT_EQ(openedOn(bottle), today);
    EXPECT_FALSE(openedOn(enzyme));
}

TEST_F(LotOpeningTest, WhatIsDryIsOpenedByDissolvingIt)
{
    const LotId lot = lots().receiveDry({u"Buffer"_s, u"P-3"_s, {}, 14, 10}, 950, person);
    const RunId run = addRun({named(u"buffer"_s, u"P-3"_s)});
    EXPECT_THAT(tick(run, 0, lot), IsEmpty());
    read(run, 1, u"A1"_s);
    EXPECT_FALSE(openedOn(lot));
    lots().dissolve(lot, {4, u"water"_s, {}, today, 10}, person);
    EXPECT_EQ(openedOn(lot), today);
    EXPECT_THAT(tick(run, 2, lot), IsEmpty()) << "it is open";
}

TEST_F(LotOpeningTest, AnAliquotIsOpenedForItself)
{
    const LotId lot = receive(u"Buffer"_s, u"B-17"_s);
    const std::vector<LotId> aliquots = lots().divide(lot, {2, 2, today, 90, 1}, person);
    const RunId run = addRun();
    goTo(today.addDays(5));
    EXPECT_THAT(tick(run, 0, aliquots[0]), ElementsAre(aliquots[0]));
    EXPECT_EQ(openedOn(lot), today) << "when it was divided";
    EXPECT_FALSE(openedOn(aliquots[1]));
    EXPECT_EQ(planning::useByOf(lotOf(aliquots[0])),
              (planning::UseBy{today.addDays(6), planning::LotLimit::Opened}));
    EXPECT_EQ(m_book->load(run).marks.at(0).lotExpires, today.addDays(6));
}

TEST_F(LotOpeningTest, AnOpeningIsCorrectedWithAReason)
{
    const LotId lot = receive(u"Buffer"_s, u"B-17"_s);
    expectRefused([&] { lots().correctOpening(lot, today, person, u"a slip"_s); }, "not noted as opened"_L1);
    const RunId run = addRun();
    goTo(QDate(2026, 3, 6));
    tick(run, 0, lot);
    goTo(QDate(2026, 3, 10));
    const auto correct = [&](const std::optional<QDate> &day, const QString &reason) {
        return [this, lot, day, reason] { lots().correctOpening(lot, day, person, reason); };
    };
    expectRefused(correct(QDate(2026, 3, 4), u" "_s), "needs a reason"_L1);
    expectRefused(correct(QDate(2026, 3, 6), u"a slip"_s), "2026-03-06 already"_L1);
    expectRefused(correct(QDate(2026, 3, 11), u"a slip"_s), "in the future"_L1);
    expectRefused(correct(QDate(2026, 3, 8), u"a slip"_s),
                  "was taken from the lot \"B-17\" on 2026-03-06"_L1);
    expectRefused(correct(std::nullopt, u"a slip"_s), "open by then"_L1);
    lots().correctOpening(lot, QDate(2026, 3, 4), person, u"it stood open since Wednesday"_s);
    EXPECT_EQ(openedOn(lot), QDate(2026, 3, 4));
    EXPECT_EQ(planning::lastGoodDay(lotOf(lot)), QDate(2026, 3, 18));
    EXPECT_EQ(lots().movements(lot).back().note, u"on 2026-03-04; it stood open since Wednesday"_s);
    EXPECT_EQ(m_book->load(run).marks.at(0).lotExpires, QDate(2026, 3, 20)) << "what was known then";

    m_book->pipetting().markUndone(run, {buffer(0)}, person);
    lots().correctOpening(lot, std::nullopt, person, u"it was another bottle"_s);
    EXPECT_FALSE(openedOn(lot));
    EXPECT_EQ(lots().movements(lot).back().note, u"not opened; it was another bottle"_s);
    expectRefused(correct(QDate(2026, 3, 4), u"a slip"_s), "not noted as opened"_L1);
    EXPECT_THAT(tick(run, 1, lot), ElementsAre(lot)) << "it is opened anew";
    EXPECT_EQ(openedOn(lot), QDate(2026, 3, 10));
    EXPECT_THAT(kindsOf(lot), ElementsAre(Kind::Received, Kind::Opened, Kind::OpeningCorrected,
                                          Kind::OpeningCorrected, Kind::Opened));
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(LotOpeningTest, DaysStandInTheFormOfTheDesk)
{
    const LotId lot = receive(u"Buffer"_s, u"B-17"_s);
    tick(addRun(), 0, lot);
    const auto back = qScopeGuard([] { QLocale::setDefault(QLocale::c()); });
    QLocale::setDefault(QLocale(QLocale::German));
    expectRefused([&] { lots().correctOpening(lot, today, person, u"a slip"_s); }, "02.03.2026 already"_L1);
    expectRefused([&] { lots().correctOpening(lot, std::nullopt, person, u"a slip"_s); }, "on 02.03.2026, so"_L1);
    lots().correctOpening(lot, QDate(2026, 2, 27), person, u"on Friday"_s);
    const std::vector<LotMovement> lines = lots().movements(lot);
    ASSERT_THAT(lines, SizeIs(3));
    EXPECT_EQ(lines[1].note, u"on 02.03.2026"_s);
    EXPECT_EQ(lines[2].note, u"on 27.02.2026; on Friday"_s);
}

TEST_F(LotOpeningTest, WhatWasDissolvedOrDividedWasOpenThen)
{
    const LotId dry = lots().receiveDry({u"Coenzyme"_s, u"N-12"_s, {}, 30, 14}, 25, person);
    lots().dissolve(dry, {4, u"water"_s, {}, today, 14}, person);
    expectRefused([&] { lots().correctOpening(dry, std::nullopt, person, u"a slip"_s); }, "open by then"_L1);
    const LotId divided = receive(u"Buffer"_s, u"B-17"_s);
    lots().divide(divided, {2, 2, today, 90, 1}, person);
    expectRefused([&] { lots().correctOpening(divided, std::nullopt, person, u"a slip"_s); },
                  "open by then"_L1);
    lots().correctOpening(divided, QDate(2026, 3, 1), person, u"the day before"_s);
    EXPECT_EQ(openedOn(divided), QDate(2026, 3, 1));
}

TEST_F(LotOpeningTest, WhatAnotherWasDissolvedInWasOpenThen)
{
    const LotId solvent = receive(u"Buffer"_s, u"B-17"_s);
    const LotId dry = lots().receiveDry({u"Coenzyme"_s, u"N-12"_s, {}, 30, 14}, 25, person);
    goTo(today.addDays(9));
    LotDissolving how{4, {}, {}, today.addDays(4), 14};
    how.solventLot = solvent;
    lots().dissolve(dry, how, person);
    ASSERT_EQ(openedOn(solvent), today.addDays(4));
    const auto correct = [&](const std::optional<QDate> &day) {
        return [this, solvent, day] { lots().correctOpening(solvent, day, person, u"a slip"_s); };
    };
    expectRefused(correct(std::nullopt), "was taken from the lot \"B-17\" on 2026-03-06"_L1);
    expectRefused(correct(today.addDays(5)), "open by then"_L1);
    lots().correctOpening(solvent, today.addDays(3), person, u"the day before"_s);
    EXPECT_EQ(openedOn(solvent), today.addDays(3));
}

TEST_F(LotOpeningTest, WhatIsTakenByHandOpensToo)
{
    const LotId used = receive(u"Buffer"_s, u"B-17"_s);
    const LotId spilt = receive(u"Buffer"_s, u"B-18"_s);
    lots().use(used, 1, person, {});
    lots().discard(spilt, 50, person, u"the bottle broke"_s);
    EXPECT_EQ(openedOn(used), today);
    EXPECT_FALSE(openedOn(spilt)) << "it was thrown away as it came";

    lots().discard(used, 1, person, u"spilt"_s);
    goTo(today.addDays(9));
    expectRefused([&] { lots().correctOpening(used, std::nullopt, person, u"a slip"_s); },
                  "was taken from the lot \"B-17\" on 2026-03-02"_L1);
    expectRefused([&] { lots().correctOpening(used, today.addDays(1), person, u"a slip"_s); },
                  "open by then"_L1);
    lots().open(spilt, today.addDays(9), person);
    lots().correctOpening(spilt, std::nullopt, person, u"it was thrown away"_s);
    EXPECT_FALSE(openedOn(spilt)) << "who threw it away did not open it";
}

TEST_F(LotOpeningTest, NoOtherProgramCorrectsWithoutAReason)
{
    const LotId lot = receive(u"Buffer"_s, u"B-17"_s);
    lots().open(lot, today, person);
    m_book.reset();
    RawFile raw(file());
    const QString insert =
        u"INSERT INTO lot_opening_change (lot, day, person, reason, at_utc, at_offset_min) VALUES "
        "(1, %1, 'x', %2, '2026-03-02T08:10:00.000Z', 60)"_s;
    EXPECT_FALSE(raw.tryExecute(insert.arg(u"'2026-03-01'"_s, u"''"_s)));
    EXPECT_TRUE(raw.error().contains(u"needs a reason"_s)) << raw.error().toStdString();
    EXPECT_FALSE(raw.tryExecute(insert.arg(u"NULL"_s, u"' '"_s)));
    EXPECT_TRUE(raw.tryExecute(insert.arg(u"NULL"_s, u"'it was another'"_s))) << raw.error().toStdString();
    EXPECT_TRUE(raw.tryExecute(insert.arg(u"'2026-03-02'"_s, u"''"_s))) << "opened anew";
}

} // namespace plateau::test
