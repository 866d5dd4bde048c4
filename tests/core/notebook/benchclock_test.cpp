// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/inputs.h"
#include "tests/core/notebook/benchtime.h"

#include <QTimeZone>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;

using Times = std::map<QString, double>;

class BenchClockTest : public BenchTimeTest
{
protected:
    void SetUp() override
    {
        BenchTimeTest::SetUp();
        m_run = m_book->addRun(unreadRun(), risingMethod(), person);
    }
    /// A tube's buffer at 0, its starter 5 min later, and so the run's clock at 5 min.
    void begin()
    {
        tick(m_run, 0, u"buffer");
        pass(5);
        tick(m_run, 0, u"starter");
    }
    RunId m_run;
};

TEST_F(BenchClockTest, BeginsWithTheFirstThingThatIsMarked)
{
    EXPECT_TRUE(load(m_run).clock.isEmpty());
    pass(90);
    EXPECT_EQ(now_min(m_run), 0);
    begin();
    pass(2.5);
    read(m_run, 1, u"A1", 0.1);
    EXPECT_EQ(tube(m_run, 0).addedAt_min, (Times{{u"buffer"_s, 0}, {u"starter"_s, 5}}));
    EXPECT_THAT(tube(m_run, 0).readAt_min, IsEmpty());
    EXPECT_EQ(tube(m_run, 1).readAt_min, (Times{{u"A1"_s, 7.5}}));
    EXPECT_THAT(tube(m_run, 1).addedAt_min, IsEmpty());
    pass(1);
    EXPECT_DOUBLE_EQ(now_min(m_run), 8.5);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(BenchClockTest, KeepsTheStampOfBothClocks)
{
    begin();
    read(m_run, 0, u"A1", 0.1);
    const StoredRun stored = load(m_run);
    EXPECT_EQ(stored.marks.at(1).boot, m_boot);
    EXPECT_EQ(stored.marks.at(1).at, m_now);
    EXPECT_EQ(stored.readings.at(0).boot, m_boot);
    EXPECT_LT(stored.marks.at(0).order, stored.marks.at(1).order);
    EXPECT_LT(stored.marks.at(1).order, stored.readings.at(0).order);
    const StoredRun filed = load(m_book->addRun(plainRun(), risingMethod(), person));
    EXPECT_EQ(filed.readings.at(0).boot, timing::BootTime{}) << "it came with its run";
    EXPECT_EQ(filed.readings.at(0).order, 0);
    EXPECT_TRUE(filed.run == plainRun());
    EXPECT_TRUE(filed.clock.isEmpty());
}

TEST_F(BenchClockTest, AWallThatIsSetMovesNothing)
{
    begin();
    for (const double shift_min : {60.0, -180.0}) {
        SCOPED_TRACE(shift_min);
        const double before_min = now_min(m_run);
        setWall(shift_min);
        pass(2);
        EXPECT_DOUBLE_EQ(now_min(m_run), before_min + 2);
        read(m_run, shift_min > 0 ? 0 : 1, u"A1", 0.1);
    }
    EXPECT_EQ(tube(m_run, 0).readAt_min, (Times{{u"A1"_s, 7}}));
    EXPECT_EQ(tube(m_run, 1).readAt_min, (Times{{u"A1"_s, 9}}));
    restartProgram();
    EXPECT_EQ(tube(m_run, 1).readAt_min, (Times{{u"A1"_s, 9}}));
    EXPECT_DOUBLE_EQ(now_min(m_run), 9);
}

TEST_F(BenchClockTest, SleepOfTheMachineAndRestartOfTheProgramLoseNothing)
{
    begin();
    pass(47); // asleep: both clocks go on
    EXPECT_DOUBLE_EQ(now_min(m_run), 52);
    restartProgram();
    EXPECT_DOUBLE_EQ(now_min(m_run), 52);
    EXPECT_EQ(tube(m_run, 0).addedAt_min, (Times{{u"buffer"_s, 0}, {u"starter"_s, 5}}));
    EXPECT_EQ(m_book->runs().at(0).state, RunState::OnBench);
}

TEST_F(BenchClockTest, ARestartOfTheMachineIsBridgedByTheWall)
{
    begin();
    pass(2);
    restartMachine(3); // 10 min on the run's clock, and a boot clock that begins anew
    EXPECT_DOUBLE_EQ(now_min(m_run), 10);
    tick(m_run, 1, u"buffer");
    setWall(600);
    pass(4);
    tick(m_run, 1, u"starter");
    EXPECT_EQ(tube(m_run, 1).addedAt_min, (Times{{u"buffer"_s, 10}, {u"starter"_s, 14}}))
        << "within the new start of the machine the wall may be set again";
}

TEST_F(BenchClockTest, MidnightIsLikeAnyOtherMinute)
{
    m_now = QDateTime(QDate(2026, 3, 2), QTime(23, 58), Qt::OffsetFromUTC, 3600);
    m_boot = {}; // by the wall alone
    begin();
    EXPECT_EQ(m_now.date(), QDate(2026, 3, 3));
    EXPECT_EQ(tube(m_run, 0).addedAt_min, (Times{{u"buffer"_s, 0}, {u"starter"_s, 5}}));
}

TEST_F(BenchClockTest, DaylightSavingIsNoTimeAtAll)
{
    m_boot = {};
    const QTimeZone zone("Europe/Berlin");
    ASSERT_TRUE(zone.isValid());
    m_now = QDateTime(QDate(2026, 3, 29), QTime(1, 58), zone);
    begin();
    EXPECT_EQ(m_now.time(), QTime(3, 3)) << "the clocks went forward in between";
    EXPECT_EQ(tube(m_run, 0).addedAt_min, (Times{{u"buffer"_s, 0}, {u"starter"_s, 5}}));
    EXPECT_EQ(load(m_run).marks.at(0).at.offsetFromUtc(), 3600);
    EXPECT_EQ(load(m_run).marks.at(1).at.offsetFromUtc(), 7200);

    const RunId autumn = m_book->addRun(unreadRun(), risingMethod(), person);
    m_now = QDateTime(QDate(2026, 10, 25), QTime(0, 58), Qt::UTC).toTimeZone(zone);
    tick(autumn, 0, u"buffer");
    m_now = m_now.toUTC().addSecs(300).toTimeZone(zone);
    EXPECT_EQ(m_now.time(), QTime(2, 3)) << "an hour that comes twice";
    tick(autumn, 0, u"starter");
    EXPECT_EQ(tube(autumn, 0).addedAt_min, (Times{{u"buffer"_s, 0}, {u"starter"_s, 5}}));
}

TEST_F(BenchClockTest, ALaterWordOnADoseDoesNotMoveIt)
{
    begin();
    pass(3);
    m_book->pipetting().markDone(m_run, {{{0, u"buffer"_s, false}, 1.1, {}, {}, u"foamed"_s}}, person);
    EXPECT_EQ(tube(m_run, 0).addedAt_min, (Times{{u"buffer"_s, 0}, {u"starter"_s, 5}}));
    EXPECT_EQ(tube(m_run, 0).pipetted_mL, (std::map<QString, double>{{u"buffer"_s, 1.1}}));
}

TEST_F(BenchClockTest, ADoseThatIsTakenBackHasNoTimeUntilItIsTickedAnew)
{
    begin();
    m_book->pipetting().markUndone(m_run, {{0, u"starter"_s, false}}, person);
    EXPECT_EQ(tube(m_run, 0).addedAt_min, (Times{{u"buffer"_s, 0}}));
    pass(2);
    tick(m_run, 0, u"starter");
    pass(2);
    m_book->pipetting().markDone(m_run, {{{0, u"starter"_s, false}, {}, {}, {}, u"cold"_s}}, person);
    EXPECT_EQ(tube(m_run, 0).addedAt_min, (Times{{u"buffer"_s, 0}, {u"starter"_s, 7}}));
}

TEST_F(BenchClockTest, ACorrectionDoesNotMoveAReading)
{
    begin();
    read(m_run, 0, u"A1", 0.1);
    pass(30);
    m_book->correctReading(m_run, 0, u"A1"_s, 0.2, u"0.2"_s, person, u"misread"_s);
    EXPECT_EQ(tube(m_run, 0).readAt_min, (Times{{u"A1"_s, 5}}));
    EXPECT_DOUBLE_EQ(now_min(m_run), 35) << "but the clock has gone on";
}

TEST_F(BenchClockTest, ASpikeHasNoTimeOfItsOwn)
{
    run::Run planned = fullRun();
    planned.startedAt.reset();
    planned.standards[0].usedAt.reset();
    planned.standards[0].preparedAt.reset();
    for (run::Tube &tube : planned.tubes)
        tube.readings.clear();
    const RunId run = m_book->addRun(planned, risingMethod(), person);
    m_book->pipetting().markDone(run, {{{6, u"sample"_s, true}}}, person);
    EXPECT_THAT(tube(run, 6).addedAt_min, IsEmpty());
    pass(1);
    tick(run, 6, u"sample");
    EXPECT_EQ(tube(run, 6).addedAt_min, (Times{{u"sample"_s, 1}}));
}

TEST_F(BenchClockTest, WhatIsDoneMonthsLaterIsTimedByNobody)
{
    begin();
    pass(200'000);
    tick(m_run, 1, u"buffer");
    read(m_run, 1, u"A1", 0.1);
    EXPECT_THAT(tube(m_run, 1).addedAt_min, IsEmpty());
    EXPECT_THAT(tube(m_run, 1).readAt_min, IsEmpty());
    EXPECT_DOUBLE_EQ(now_min(m_run), 200'005);
}

TEST_F(BenchClockTest, ARunKeepsTheTimesItCameWith)
{
    run::Run said = plainRun();
    said.startedAt = m_now.addSecs(-3600);
    said.tubes[1].addedAt_min = {{u"buffer"_s, 0.5}, {u"starter"_s, 6.25}};
    said.tubes[1].readAt_min = {{u"A1"_s, 6}, {u"A2"_s, 22}};
    said.tubes[2].readings.erase(u"A2"_s);
    const RunId run = m_book->addRun(said, risingMethod(), person);
    EXPECT_TRUE(load(run).run == said);
    EXPECT_TRUE(m_book->findSameRun(said, risingMethod()));
    pass(1);
    tick(run, 1, u"buffer");
    tick(run, 2, u"starter");
    pass(15);
    read(run, 2, u"A2", 0.6);
    EXPECT_EQ(tube(run, 1).addedAt_min, said.tubes[1].addedAt_min) << "its word goes first";
    EXPECT_EQ(tube(run, 2).addedAt_min, (Times{{u"starter"_s, 61}}))
        << "an hour and a minute after its start";
    EXPECT_EQ(tube(run, 2).readAt_min, (Times{{u"A2"_s, 76}}));
    m_book->pipetting().markUndone(run, {{1, u"buffer"_s, false}}, person);
    EXPECT_EQ(tube(run, 1).addedAt_min, (Times{{u"starter"_s, 6.25}})) << "but what is taken back has none";
    EXPECT_TRUE(m_book->findSameRun(said, risingMethod())) << "as it came";
    EXPECT_THAT(m_book->verify().findings, IsEmpty());

    said.startedAt.reset();
    const RunId unknown = m_book->addRun(said, risingMethod(), person);
    tick(unknown, 2, u"starter");
    EXPECT_THAT(tube(unknown, 2).addedAt_min, IsEmpty()) << "nobody knows where its clock stands now";
    EXPECT_EQ(tube(unknown, 1).addedAt_min, said.tubes[1].addedAt_min);
    EXPECT_TRUE(load(unknown).clock.isEmpty());
}

TEST_F(BenchClockTest, MarksThatCameWithTheRunHaveNoTime)
{
    run::Run said = unreadRun();
    said.tubes[1].pipetted_mL = {{u"buffer"_s, 1.2}};
    const RunId run = m_book->addRun(said, risingMethod(), person);
    pass(5);
    tick(run, 1, u"starter");
    pass(1);
    m_book->pipetting().markDone(run, {{{1, u"buffer"_s, false}, 1.3}}, person);
    EXPECT_EQ(tube(run, 1).addedAt_min, (Times{{u"starter"_s, 0}})) << "nobody knows when the buffer went in";
}

/// A standard that is made up now and goes into tubes 1 and 2 (spike).
class TimeOfUseTest : public BenchClockTest
{
protected:
    void SetUp() override
    {
        BenchClockTest::SetUp();
        run::Run planned = unreadRun();
        planned.startedAt = m_now;
        run::Standard standard;
        standard.id = u"STD"_s;
        standard.concentration_g_per_L = 0.2;
        standard.preparedAt = m_now;
        planned.standards = {standard};
        planned.tubes.push_back(standardTube("STD", 0, 0));
        planned.tubes.back().readings.clear();
        run::Tube spiked = planned.tubes[1];
        spiked.role = run::Role::Spiked;
        spiked.spike = run::Spike{u"STD"_s, 0.1};
        planned.tubes.push_back(spiked);
        m_run = m_book->addRun(planned, risingMethod(), person);
        pass(60);
    }
    std::optional<QDateTime> used() const { return load(m_run).run.standards.at(0).usedAt; }
    const int m_standard = 4;
    const int m_spiked = 5;
};

TEST_F(TimeOfUseTest, IsThatOfItsFirstDose)
{
    tick(m_run, 0, u"sample");
    tick(m_run, m_standard, u"buffer");
    EXPECT_FALSE(used()) << "neither a blank nor its buffer holds the standard";
    tick(m_run, m_spiked, u"sample");
    EXPECT_FALSE(used()) << "nor the sample of the spiked tube";
    pass(1);
    const QDateTime ticked = m_now;
    tick(m_run, m_standard, u"sample");
    pass(1);
    m_book->pipetting().markDone(m_run, {{{m_spiked, u"sample"_s, true}}}, person);
    pass(5);
    read(m_run, m_standard, u"A1", 0.1);
    EXPECT_EQ(used(), ticked);
    m_book->pipetting().markUndone(m_run, {{m_standard, u"sample"_s, false}}, person);
    EXPECT_EQ(used(), ticked.addSecs(60)) << "then it is that of the spike";
    m_book->pipetting().markUndone(m_run, {{m_spiked, u"sample"_s, true}}, person);
    EXPECT_EQ(used(), ticked.addSecs(360)) << "then that of the first reading";
}

TEST_F(TimeOfUseTest, NothingPipettedIsNoUse)
{
    m_book->pipetting().markDone(m_run, {{{m_standard, u"sample"_s, false}, 0.0}}, person);
    EXPECT_FALSE(used());
}

TEST_F(BenchClockTest, AJumpOfTheClockIsKeptWithEveryRunOnTheBench)
{
    const RunId decided = m_book->addRun(plainRun(), risingMethod(), person);
    m_book->decide(decided, DecisionKind::Accepted, person, {});
    begin();
    setWall(60);
    m_book->noteClockJump(3'600'000, person);
    const RunId later = m_book->addRun(unreadRun(), risingMethod(), person);
    m_book->noteClockJump(-2'500, person);
    const std::vector<ClockJump> jumps = load(m_run).clockJumps;
    ASSERT_THAT(jumps, SizeIs(2));
    EXPECT_EQ(jumps[0].shift_ms, 3'600'000);
    EXPECT_EQ(jumps[0].at, m_now);
    EXPECT_EQ(jumps[0].person, person);
    EXPECT_EQ(jumps[1].shift_ms, -2'500);
    EXPECT_THAT(load(later).clockJumps, SizeIs(1));
    EXPECT_THAT(load(decided).clockJumps, IsEmpty());
    const std::vector<AuditEntry> history = m_book->history(m_run);
    EXPECT_EQ(history.back().action, u"clockJumped"_s);
    EXPECT_FALSE(history.back().run) << "it is of the notebook as a whole";
    EXPECT_EQ(history.back().details, u"-2.5 s"_s);
    EXPECT_NE(m_book->history(decided).back().action, u"clockJumped"_s);
    expectRefused([&] { m_book->noteClockJump(0, person); }, "was not set"_L1);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(BenchClockTest, DecisionsAreRepeatedWithTheTimesOfThen)
{
    const run::Run full = plainRun();
    for (int index = 0; index < 4; ++index) {
        const run::Tube &values = full.tubes[size_t(std::min(index, 2))];
        tick(m_run, index, u"starter");
        pass(16);
        read(m_run, index, u"A1", std::get<double>(values.readings.at(u"A1"_s)));
        read(m_run, index, u"A2", std::get<double>(values.readings.at(u"A2"_s)));
    }
    m_book->decide(m_run, DecisionKind::Rejected, person, u"once more"_s);
    const StoredRun before = load(m_run);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
    m_book->reopen(m_run, person, u"look again"_s);
    pass(10);
    m_book->pipetting().markUndone(m_run, {{0, u"starter"_s, false}}, person);
    tick(m_run, 0, u"starter");
    m_book->correctReading(m_run, 1, u"A2"_s, 0.6, u"0.6"_s, person, u"misread"_s);
    m_book->decide(m_run, DecisionKind::Rejected, person, u"and once more"_s);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
    EXPECT_THAT(load(m_run).decisions, SizeIs(2));

    m_book.reset();
    const Database database(file(), Access::ReadOnly);
    const Inputs inputs = loadInputs(database, m_run);
    Seen then{before.readings.back().id, before.marks.back().id, RackSize{1, 4}};
    EXPECT_TRUE(inputs.runAsOf(then) == before.run);
    then.rack.reset();
    for (const run::Tube &tube : inputs.runAsOf(then).tubes) {
        EXPECT_THAT(tube.addedAt_min, IsEmpty()) << "a decision of an older program knew of no times";
        EXPECT_THAT(tube.readAt_min, IsEmpty());
    }
}

} // namespace plateau::test
