// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/writers.h"
#include "tests/core/notebook/fixture.h"

#include <algorithm>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;

/// P-104 is diluted in two steps, F-22 in one.
class DilutionMarks : public OpenNotebookTest
{
protected:
    void SetUp() override
    {
        OpenNotebookTest::SetUp();
        m_run = m_book->addRun(fullRun(), risingMethod(), person);
    }
    Pipetting &sheet() { return m_book->pipetting(); }
    StoredRun stored() const { return m_book->load(m_run); }
    bool isMade(const DilutionPlace &place) const { return doneMark(stored().dilutionMarks, place) != nullptr; }

    static constexpr DilutionPlace first{0, 0};
    static constexpr DilutionPlace second{0, 1};
    static constexpr DilutionPlace other{1, 0};
    RunId m_run;
};

TEST_F(DilutionMarks, StepsOfSeveralSamplesAreTickedInOneActAndChangeNothingOfTheRun)
{
    const QByteArray before = exchange::writeRun(stored().run, nullptr);
    const int entries = m_book->auditHead().entries;
    sheet().markDilutionsDone(m_run, {first, second, other}, person);
    EXPECT_EQ(m_book->auditHead().entries, entries + 1);
    const std::vector<StoredDilutionMark> marks = stored().dilutionMarks;
    ASSERT_THAT(marks, SizeIs(3));
    EXPECT_EQ(marks[1].place, second);
    EXPECT_EQ(marks[1].kind, MarkKind::Done);
    EXPECT_EQ(marks[1].person, person);
    EXPECT_EQ(marks[1].at, m_now);
    EXPECT_EQ(marks[1].after, MarkId{});
    EXPECT_TRUE(isMade(other));
    EXPECT_EQ(exchange::writeRun(stored().run, nullptr), before) << "a run file has no ticks, of doses neither";
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(DilutionMarks, TheRecordSaysWhoMadeWhichStep)
{
    sheet().markDilutionsDone(m_run, {second, other}, person);
    const AuditEntry entry = m_book->history(m_run).back();
    EXPECT_EQ(entry.action, u"dilutionsDone"_s);
    EXPECT_EQ(entry.person, person);
    EXPECT_EQ(entry.details, u"P-104, step 2; F-22, step 1"_s);
    const std::vector<AuditChange> changes = m_book->keeping().changes(entry.number);
    ASSERT_THAT(changes, SizeIs(2));
    EXPECT_EQ(changes[0].subject, u"mark of a dilution"_s);
    EXPECT_NE(std::ranges::find(changes[0].after, AuditValue{u"dilution step"_s, u"P-104, step 2"_s}),
              changes[0].after.end());
    EXPECT_NE(std::ranges::find(changes[0].after, AuditValue{u"kind"_s, u"done"_s}), changes[0].after.end());
    sheet().markDilutionsUndone(m_run, {other}, u"Tomas Brandl"_s);
    EXPECT_EQ(m_book->history(m_run).back().action, u"dilutionsUndone"_s);
    EXPECT_EQ(m_book->history(m_run).back().person, u"Tomas Brandl"_s);
    EXPECT_EQ(m_book->history(m_run).back().details, u"F-22, step 1"_s);
}

TEST_F(DilutionMarks, ATickIsTakenBackAndMadeAnew)
{
    sheet().markDilutionsDone(m_run, {first}, person);
    expectRefused([&] { sheet().markDilutionsDone(m_run, {second, first}, person); }, "is ticked already"_L1);
    EXPECT_FALSE(isMade(second)) << "an act is stored as a whole or not at all";
    sheet().markDilutionsUndone(m_run, {first}, person);
    EXPECT_FALSE(isMade(first));
    expectRefused([&] { sheet().markDilutionsUndone(m_run, {first}, person); }, "is not ticked"_L1);
    sheet().markDilutionsDone(m_run, {first}, person);
    EXPECT_TRUE(isMade(first));
    expectRefused([&] { sheet().markDilutionsDone(m_run, {second, second}, person); }, "is ticked already"_L1);
    EXPECT_THAT(stored().dilutionMarks, SizeIs(3));
}

TEST_F(DilutionMarks, AStepThatIsNoneIsRefused)
{
    expectRefused([&] { sheet().markDilutionsDone(m_run, {}, person); }, "no dilution is named"_L1);
    expectRefused([&] { sheet().markDilutionsDone(m_run, {{1, 1}}, person); }, "no sample 2 with a dilution step 2"_L1);
    expectRefused([&] { sheet().markDilutionsUndone(m_run, {{2, 0}}, person); }, "no sample 3"_L1);
    expectRefused([&] { sheet().markDilutionsDone({99}, {first}, person); }, "no run 99"_L1);
}

TEST_F(DilutionMarks, ADecidedRunTakesNone)
{
    sheet().markDilutionsDone(m_run, {first}, person);
    m_book->decide(m_run, DecisionKind::Rejected, person, u"lamp failed"_s);
    expectRefused([&] { sheet().markDilutionsDone(m_run, {second}, person); }, "rejected"_L1);
    expectRefused([&] { sheet().markDilutionsUndone(m_run, {first}, person); }, "rejected"_L1);
    m_book->reopen(m_run, person, u"lamp was fine"_s);
    sheet().markDilutionsDone(m_run, {second}, person);
    EXPECT_THAT(stored().dilutionMarks, SizeIs(2));
}

TEST_F(DilutionMarks, KnowTheirPlaceAmongTheTicksOfDoses)
{
    sheet().markDilutionsDone(m_run, {first}, person);
    sheet().markDone(m_run, {{{0, u"buffer"_s, false}}, {{1, u"buffer"_s, false}}}, person);
    const RunId next = m_book->addRun(unreadRun(), risingMethod(), person);
    sheet().markDone(next, {{{0, u"buffer"_s, false}}}, person);
    sheet().markDilutionsDone(m_run, {second}, person);
    const StoredRun run = stored();
    ASSERT_THAT(run.dilutionMarks, SizeIs(2));
    EXPECT_EQ(run.dilutionMarks[0].after, MarkId{});
    EXPECT_EQ(run.dilutionMarks[1].after, run.marks.back().id) << "those of another run are none of its own";
}

TEST_F(DilutionMarks, ARevisionHasThoseOfItsTime)
{
    sheet().markDilutionsDone(m_run, {first}, person);
    m_book->decide(m_run, DecisionKind::Rejected, person, u"lamp failed"_s);
    m_book->reopen(m_run, person, u"lamp was fine"_s);
    sheet().markDilutionsDone(m_run, {second}, person);
    m_book->decide(m_run, DecisionKind::Rejected, person, u"it was not"_s);
    EXPECT_THAT(m_book->loadRevision(m_run, 1).dilutionMarks, SizeIs(1));
    EXPECT_THAT(m_book->loadRevision(m_run, 2).dilutionMarks, SizeIs(2));
}

TEST_F(DilutionMarks, ATickSurvivesANewStart)
{
    sheet().markDilutionsDone(m_run, {second}, person);
    m_book.reset();
    m_book = reopen();
    EXPECT_TRUE(isMade(second));
    EXPECT_FALSE(isMade(first));
}

} // namespace plateau::test
