// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/writers.h"
#include "tests/core/notebook/fixture.h"

#include <algorithm>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class PipettingTest : public OpenNotebookTest
{
protected:
    void SetUp() override
    {
        OpenNotebookTest::SetUp();
        m_run = m_book->addRun(unreadRun(), risingMethod(), person);
    }
    Pipetting &sheet() { return m_book->pipetting(); }
    StoredRun stored() const { return m_book->load(m_run); }
    run::Tube tube(int index) const { return stored().run.tubes.at(size_t(index)); }
    LotId receive(const QString &reagent, const QString &lot, double volume_mL = 100)
    {
        return m_book->lots().receive({reagent, lot, QDate(2026, 9, 30), {}}, volume_mL, person);
    }

    static Dose buffer(int tube) { return {tube, u"buffer"_s, false}; }
    RunId m_run;
};

TEST_F(PipettingTest, ARowOfTubesIsTickedInOneAct)
{
    const int before = m_book->auditHead().entries;
    sheet().markDone(m_run, {{buffer(0)}, {buffer(1)}, {buffer(2)}, {buffer(3)}}, person);
    EXPECT_EQ(m_book->auditHead().entries, before + 1);
    const std::vector<AuditEntry> history = m_book->history(m_run);
    EXPECT_EQ(history.back().action, u"dosesDone"_s);
    EXPECT_EQ(history.back().details, u"Buffer: tubes 1, 2, 3, 4"_s);
    const StoredRun run = stored();
    ASSERT_THAT(run.marks, SizeIs(4));
    EXPECT_EQ(run.marks[2].dose, buffer(2));
    EXPECT_EQ(run.marks[2].volume_mL, 1.0);
    EXPECT_EQ(run.marks[2].planned_mL, 1.0);
    EXPECT_EQ(run.marks[2].person, person);
    EXPECT_EQ(run.marks[2].at, m_now);
    EXPECT_TRUE(doneMark(run.marks, buffer(3)));
    EXPECT_FALSE(doneMark(run.marks, {3, u"water"_s, false}));
    run::Run timed = unreadRun();
    for (run::Tube &tube : timed.tubes)
        tube.addedAt_min = {{u"buffer"_s, 0}};
    EXPECT_TRUE(run.run == timed) << "what went as planned changes nothing else";
}

TEST_F(PipettingTest, ATickIsTakenBackAndMadeAnew)
{
    sheet().markDone(m_run, {{buffer(1)}}, person);
    sheet().markUndone(m_run, {buffer(1)}, person);
    EXPECT_FALSE(doneMark(stored().marks, buffer(1)));
    expectRefused([&] { sheet().markUndone(m_run, {buffer(1)}, person); }, "is not ticked"_L1);
    sheet().markDone(m_run, {{buffer(1)}}, person);
    EXPECT_EQ(doneMark(stored().marks, buffer(1))->id, MarkId{3});
    expectRefused([&] { sheet().markDone(m_run, {{buffer(1)}}, person); }, "is ticked already"_L1);
    expectRefused(
        [&] {
            sheet().markDone(m_run, {{buffer(2)}, {buffer(2)}}, person);
        },
        "is ticked already"_L1);
    EXPECT_FALSE(doneMark(stored().marks, buffer(2))) << "an act is stored as a whole or not at all";
}

TEST_F(PipettingTest, WhatWasReallyPipettedIsCarriedIntoTheRun)
{
    sheet().markDone(m_run, {{buffer(1), 1.0}, {{1, u"sample"_s, false}, 0.2}}, person);
    EXPECT_EQ(tube(1).pipetted_mL, (std::map<QString, double>{{u"sample"_s, 0.2}}))
        << "the planned volume said again is none that differs";
    sheet().markDone(m_run, {{{1, u"sample"_s, false}, 0.15}}, person);
    EXPECT_EQ(tube(1).pipetted_mL, (std::map<QString, double>{{u"sample"_s, 0.15}})) << "the last one counts";
    sheet().markDone(m_run, {{{1, u"sample"_s, false}, {}, {}, {}, u"it was 0.1 after all"_s}}, person);
    EXPECT_THAT(tube(1).pipetted_mL, IsEmpty());
    sheet().markDone(m_run, {{{2, u"starter"_s, false}, 0.0}}, person);
    EXPECT_EQ(tube(2).pipetted_mL, (std::map<QString, double>{{u"starter"_s, 0.0}}));
    sheet().markUndone(m_run, {{2, u"starter"_s, false}}, person);
    EXPECT_THAT(tube(2).pipetted_mL, IsEmpty());
}

TEST_F(PipettingTest, AnotherVolumeOfTheSampleGivesAnotherConcentration)
{
    const RunId read = m_book->addRun(plainRun(), risingMethod(), person);
    const auto value = [&](int tube) {
        const evaluation::Evaluation evaluation = evaluationOf(m_book->load(read));
        return evaluation.tubes.at(size_t(tube)).concentration_g_per_L.value();
    };
    const double planned = value(1);
    sheet().markDone(read, {{{1, u"sample"_s, false}, 0.2}}, person);
    // Twice the sample, in 2.22 mL instead of 2.12.
    EXPECT_NEAR(value(1), planned * 0.5 * 2.22 / 2.12, 1e-12);
}

TEST_F(PipettingTest, AnotherVolumeOfTheSpikeLeavesTheDiluentAsItWasPlanned)
{
    const RunId full = m_book->addRun(fullRun(), risingMethod(), person);
    const Dose spike{6, u"sample"_s, true};
    sheet().markDone(full, {{spike, 0.12}}, person);
    const run::Tube spiked = m_book->load(full).run.tubes[6];
    EXPECT_EQ(spiked.spike->volume_mL, 0.12);
    EXPECT_EQ(spiked.pipetted_mL, (std::map<QString, double>{{u"water"_s, 0.9}}));
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
    expectRefused([&] { sheet().markDone(full, {{{2, u"sample"_s, true}}}, person); }, "for a spike"_L1);
}

TEST_F(PipettingTest, ASpoiltTubeDoesNotCountAndKeepsItsReadings)
{
    m_book->addReading(m_run, 2, u"A1"_s, 0.1, u"0.1"_s, person);
    m_book->addReading(m_run, 1, u"A1"_s, 0.1, u"0.1"_s, person);
    EXPECT_EQ(stored().summary.readingsPlanned, 8);
    EXPECT_EQ(stored().summary.readingsTaken, 2);
    sheet().markSpoilt(m_run, 2, person, u"fell over"_s);
    EXPECT_EQ(tube(2).spoilt, u"fell over"_s);
    EXPECT_THAT(tube(2).readings, SizeIs(1));
    EXPECT_EQ(stored().summary.readingsPlanned, 6);
    EXPECT_EQ(stored().summary.readingsTaken, 1);
    EXPECT_EQ(m_book->runs().at(0).readingsPlanned, 6);
    EXPECT_EQ(spoiltMark(stored().marks, 2)->note, u"fell over"_s);
    expectRefused([&] { sheet().markSpoilt(m_run, 2, person, u"again"_s); }, "already"_L1);
    sheet().markUnspoilt(m_run, 2, person, u"it was tube 4"_s);
    EXPECT_EQ(tube(2).spoilt, QString());
    EXPECT_EQ(stored().summary.readingsPlanned, 8);
    EXPECT_EQ(stored().summary.readingsTaken, 2);
    EXPECT_FALSE(spoiltMark(stored().marks, 2));
    expectRefused([&] { sheet().markUnspoilt(m_run, 2, person, u"again"_s); }, "is not marked"_L1);
}

TEST_F(PipettingTest, SpoilingNeedsAReasonOfOneLine)
{
    expectRefused([&] { sheet().markSpoilt(m_run, 2, person, u" "_s); }, "needs a reason"_L1);
    expectRefused([&] { sheet().markSpoilt(m_run, 2, person, u"fell\nover"_s); }, "cannot be used"_L1);
    sheet().markSpoilt(m_run, 2, person, u"fell over"_s);
    expectRefused([&] { sheet().markUnspoilt(m_run, 2, person, {}); }, "needs a reason"_L1);
}

TEST_F(PipettingTest, ADoseThatIsNoneIsRefused)
{
    expectRefused([&] { sheet().markDone(m_run, {}, person); }, "no tube is named"_L1);
    expectRefused([&] { sheet().markUndone(m_run, {}, person); }, "no tube is named"_L1);
    expectRefused([&] { sheet().markDone(m_run, {{buffer(4)}}, person); }, "no tube 5"_L1);
    expectRefused([&] { sheet().markDone({99}, {{buffer(0)}}, person); }, "no run 99"_L1);
    expectRefused([&] { sheet().markDone(m_run, {{{0, u"ink"_s, false}}}, person); }, "gets no ink"_L1);
    expectRefused([&] { sheet().markDone(m_run, {{{1, u"sample"_s, true}}}, person); }, "for a spike"_L1);
    expectRefused([&] { sheet().markDone(m_run, {{buffer(0), -0.1}}, person); }, "must lie between"_L1);
    expectRefused([&] { sheet().markDone(m_run, {{buffer(0), qQNaN()}}, person); }, "must lie between"_L1);
    expectRefused([&] { sheet().markDone(m_run, {{buffer(0), {}, {}, u"a\nb"_s}}, person); }, "pipette"_L1);
    expectRefused([&] { sheet().markDone(m_run, {{buffer(0)}}, u" "_s); }, "no person"_L1);
}

TEST_F(PipettingTest, ATubeThatWouldRunOverIsRefused)
{
    expectRefused([&] { sheet().markDone(m_run, {{buffer(0), 99.5}}, person); }, "Tube 1 was not ticked"_L1);
}

TEST_F(PipettingTest, PipetteLotAndNoteAreKept)
{
    const LotId lot = receive(u"buffer"_s, u"B-17"_s);
    sheet().markDone(m_run, {{buffer(0), {}, lot, u"piston pipette 1 mL"_s, u"foamed"_s}}, person);
    const StoredMark mark = *doneMark(stored().marks, buffer(0));
    EXPECT_EQ(mark.lot, lot);
    EXPECT_EQ(mark.lotName, u"B-17"_s);
    EXPECT_EQ(mark.lotExpires, QDate(2026, 9, 30));
    EXPECT_EQ(mark.pipette, u"piston pipette 1 mL"_s);
    EXPECT_EQ(mark.note, u"foamed"_s);
}

TEST_F(PipettingTest, ALotOfAnotherReagentIsRefused)
{
    const LotId enzyme = receive(u"Enzyme"_s, u"E-3"_s);
    const LotId water = receive(u"WATER"_s, u"W-1"_s);
    expectRefused([&] { sheet().markDone(m_run, {{buffer(0), {}, enzyme}}, person); }, "not of Buffer"_L1);
    expectRefused(
        [&] {
            sheet().markDone(m_run, {{buffer(0), {}, LotId{77}}}, person);
        },
        "no lot number 77"_L1);
    expectRefused(
        [&] {
            sheet().markDone(m_run, {{{1, u"sample"_s, false}, {}, water}}, person);
        },
        "from no lot"_L1);
    // A blank gets diluent in place of the sample.
    sheet().markDone(m_run, {{{0, u"sample"_s, false}, {}, water}}, person);
    EXPECT_THAT(stored().run.lots, ElementsAre(run::LotUse{u"water"_s, u"W-1"_s, QDate(2026, 9, 30)}));
}

TEST_F(PipettingTest, LotsThatWereTakenStandInPlaceOfThosePlanned)
{
    run::Run run = unreadRun();
    run.lots = {{u"buffer"_s, u"B-16"_s, {}}, {u"starter"_s, u"E-3"_s, {}}};
    const RunId id = m_book->addRun(run, risingMethod(), person);
    const LotId lot = receive(u"Buffer"_s, u"B-17"_s);
    const auto lots = [&] {
        QStringList names;
        for (const run::LotUse &use : m_book->load(id).run.lots)
            names << use.component + u' ' + use.lot;
        return names.join(u", "_s);
    };
    sheet().markDone(id, {{buffer(0), {}, lot}, {buffer(1), {}, lot}}, person);
    EXPECT_EQ(lots(), u"starter E-3, buffer B-17"_s);
    sheet().markDone(id, {{buffer(2)}}, person);
    EXPECT_EQ(lots(), u"buffer B-16, starter E-3, buffer B-17"_s) << "that one may come from the planned lot";
    // A label that is changed afterwards changes no mark.
    m_book->lots().relabel(lot, {u"Buffer"_s, u"B-71"_s, {}, {}}, person, u"misread"_s);
    EXPECT_EQ(lots(), u"buffer B-16, starter E-3, buffer B-17"_s);
    sheet().markUndone(id, {buffer(0), buffer(1)}, person);
    EXPECT_EQ(lots(), u"buffer B-16, starter E-3"_s);
}

TEST_F(PipettingTest, ADecidedRunTakesNoMark)
{
    sheet().markDone(m_run, {{buffer(0)}}, person);
    m_book->decide(m_run, DecisionKind::Rejected, person, u"lamp failed"_s);
    expectRefused([&] { sheet().markDone(m_run, {{buffer(1)}}, person); }, "rejected"_L1);
    expectRefused([&] { sheet().markUndone(m_run, {buffer(0)}, person); }, "rejected"_L1);
    expectRefused([&] { sheet().markSpoilt(m_run, 1, person, u"fell over"_s); }, "rejected"_L1);
    m_book->reopen(m_run, person, u"lamp was fine"_s);
    sheet().markDone(m_run, {{buffer(1)}}, person);
    EXPECT_THAT(stored().marks, SizeIs(2));
}

TEST_F(PipettingTest, ADecisionKeepsTheMarksItRestedOn)
{
    const RunId read = m_book->addRun(plainRun(), risingMethod(), person);
    sheet().markDone(read, {{{1, u"sample"_s, false}, 0.101}}, person);
    m_book->decide(read, DecisionKind::Accepted, person, {});
    const QByteArray first = m_book->load(read).decisions.at(0).evaluation;
    m_book->reopen(read, person, u"the volume was another"_s);
    sheet().markDone(read, {{{1, u"sample"_s, false}, 0.102}}, person);
    sheet().markSpoilt(read, 2, person, u"scratched cuvette"_s);
    m_book->decide(read, DecisionKind::Accepted, person, u"one tube is left"_s);
    EXPECT_NE(m_book->load(read).decisions.at(1).evaluation, first);
    const Verification verification = m_book->verify();
    EXPECT_THAT(verification.findings, IsEmpty());
    EXPECT_EQ(verification.decisionsChecked, 2);
}

TEST_F(PipettingTest, WhatARunFileSaysOfItsTubesComesBack)
{
    run::Run run = plainRun();
    run.tubes[1].pipetted_mL = {{u"sample"_s, 0.2}, {u"starter"_s, 0.03}};
    run.tubes[2].spoilt = u"fell over"_s;
    const RunId id = m_book->addRun(run, risingMethod(), person);
    EXPECT_TRUE(m_book->load(id).run == run);
    EXPECT_THAT(m_book->load(id).marks, SizeIs(3));
    sheet().markUnspoilt(id, 2, person, u"it was tube 2"_s);
    EXPECT_EQ(m_book->load(id).run.tubes[2].spoilt, QString());
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(PipettingTest, ATickSurvivesANewStart)
{
    sheet().markDone(m_run, {{buffer(0)}}, person);
    m_book.reset();
    m_book = reopen();
    EXPECT_TRUE(doneMark(stored().marks, buffer(0)));
}

} // namespace plateau::test
