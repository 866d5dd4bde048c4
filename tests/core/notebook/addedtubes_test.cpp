// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/runcode.h"
#include "tests/core/notebook/benchtime.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class AddedTubesTest : public BenchTimeTest
{
protected:
    void SetUp() override
    {
        BenchTimeTest::SetUp();
        m_run = m_book->addRun(strongRun(), risingMethod(), person);
    }
    /// Its sample "S" is too strong: to be repeated, half as strong.
    static run::Run strongRun()
    {
        run::Run run = plainRun();
        run.title = u"Strong"_s;
        for (run::Tube &tube : run.tubes)
            tube.readings[u"A2"_s] =
                std::get<double>(tube.readings[u"A2"_s]) + (tube.sample.isEmpty() ? 0 : 0.7);
        return run;
    }
    static run::Sample repeatSample(const char *id = "S/2", const QString &of = u"S"_s)
    {
        run::Sample sample = liquid(id, {{1, 4}});
        sample.repeats = of;
        return sample;
    }
    static run::Tube fresh(const char *sample)
    {
        run::Tube tube = sampleTube(sample, 0, 0);
        tube.readings.clear();
        return tube;
    }
    void addRepeat(const char *id = "S/2")
    {
        m_book->addTubes(m_run, {repeatSample(id)}, {fresh(id), fresh(id)}, {}, person);
    }
    /// Both tubes of the repeat, with that signal above the blank's.
    void readRepeat(double signal, int first = 3)
    {
        for (int index = first; index < first + 2; ++index) {
            read(m_run, index, u"A1", 0.1);
            read(m_run, index, u"A2", 0.11 + signal);
        }
    }
    std::vector<WaitingSample> waiting() const { return m_book->shelf().waiting(); }
    RunId m_run;
};

TEST_F(AddedTubesTest, StandBehindThoseThatWerePlanned)
{
    addRepeat();
    const StoredRun stored = load(m_run);
    EXPECT_THAT(stored.run.tubes, SizeIs(5));
    EXPECT_THAT(stored.run.samples, SizeIs(2));
    EXPECT_TRUE(stored.run.samples[1] == repeatSample());
    EXPECT_TRUE(stored.run.tubes[4] == fresh("S/2"));
    EXPECT_EQ(stored.plannedTubes, 3);
    EXPECT_EQ(stored.plannedSamples, 1);
    EXPECT_EQ(stored.summary.tubes, 5);
    EXPECT_EQ(stored.summary.readingsPlanned, 10);
    EXPECT_EQ(stored.summary.readingsTaken, 6);
    EXPECT_THAT(stored.summary.samples, ElementsAre(u"S"_s, u"S/2"_s));
    EXPECT_EQ(m_book->history(m_run).back().action, u"tubesAdded"_s);
    EXPECT_EQ(m_book->history(m_run).back().details, u"tubes 4, 5; samples S/2"_s);
    tick(m_run, 4, u"starter");
    pass(15);
    readRepeat(0.3);
    EXPECT_EQ(tube(m_run, 4).readAt_min.at(u"A2"_s), 15);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
    restartProgram();
    EXPECT_THAT(load(m_run).run.tubes, SizeIs(5));
}

TEST_F(AddedTubesTest, MayBeOfASampleThatIsThere)
{
    m_book->addTubes(m_run, {}, {fresh("S")}, {}, person);
    EXPECT_EQ(m_book->history(m_run).back().details, u"tube 4"_s);
    addRepeat();
    const StoredRun stored = load(m_run);
    EXPECT_EQ(stored.plannedTubes, 3);
    EXPECT_THAT(stored.run.tubes, SizeIs(6));
    EXPECT_EQ(stored.run.tubes[5].sample, u"S/2"_s);
}

TEST_F(AddedTubesTest, LeaveTheCodeOnPaperAsItIs)
{
    const QString code = run::runCode(strongRun(), risingMethod().version);
    EXPECT_EQ(load(m_run).runCode, code);
    addRepeat();
    addRepeat("S/3");
    EXPECT_EQ(load(m_run).runCode, code);
    EXPECT_THAT(m_book->findRuns(code), ElementsAre(m_run));
    EXPECT_THAT(m_book->findRuns(run::runCode(load(m_run).run, risingMethod().version)), IsEmpty());
}

TEST_F(AddedTubesTest, LeaveTheRunTheSameThatCame)
{
    addRepeat();
    readRepeat(0.3);
    EXPECT_EQ(m_book->findSameRun(strongRun(), risingMethod())->id, m_run);
    EXPECT_FALSE(m_book->findSameRun(load(m_run).run, risingMethod()));
}

TEST_F(AddedTubesTest, DecisionsMadeBeforeAreRepeatedWithoutThem)
{
    m_book->decide(m_run, DecisionKind::Accepted, person, u"to be repeated"_s);
    m_book->reopen(m_run, person, u"the rack stands here still"_s);
    addRepeat();
    readRepeat(0.3);
    m_book->decide(m_run, DecisionKind::Accepted, person, u"repeated"_s);
    EXPECT_THAT(load(m_run).decisions, SizeIs(2));
    const Verification verification = m_book->verify();
    EXPECT_THAT(verification.findings, IsEmpty());
    EXPECT_EQ(verification.decisionsChecked, 2);
}

TEST_F(AddedTubesTest, ARepeatThatIsReportableLeavesNothingWaiting)
{
    addRepeat();
    readRepeat(0.3);
    m_book->decide(m_run, DecisionKind::Accepted, person, u"repeated"_s);
    EXPECT_THAT(waiting(), IsEmpty());
    expectRefused([&] { m_book->shelf().waiveRepeat(m_run, u"S"_s, person, u"poured away"_s); }, ""_L1);
    m_book->reopen(m_run, person, u"look again"_s);
    m_book->decide(m_run, DecisionKind::Rejected, person, u"wrong buffer"_s);
    ASSERT_THAT(waiting(), SizeIs(1)) << "nothing of a rejected run is reported";
    EXPECT_EQ(waiting()[0].sample.id, u"S"_s);
}

TEST_F(AddedTubesTest, ARepeatThatAsksForAnotherSpeaksForItsSample)
{
    addRepeat();
    readRepeat(1.6); // too strong still; 4 times diluted
    m_book->decide(m_run, DecisionKind::Accepted, person, u"to be repeated"_s);
    const std::vector<WaitingSample> samples = waiting();
    ASSERT_THAT(samples, SizeIs(1));
    EXPECT_EQ(samples[0].sample.id, u"S"_s);
    ASSERT_THAT(samples[0].repeat->advice, SizeIs(1));
    EXPECT_FALSE(samples[0].repeat->failed.empty()) << "why it waits";
    EXPECT_GT(samples[0].repeat->advice[0].advice.factor, 4);
    m_book->shelf().waiveRepeat(m_run, u"S"_s, person, u"poured away"_s);
    EXPECT_THAT(waiting(), IsEmpty());
}

TEST_F(AddedTubesTest, ThatCannotBeWorkedOutAreRefusedAsAWhole)
{
    const auto add = [&](const std::vector<run::Sample> &samples, const std::vector<run::Tube> &tubes,
                         const std::vector<planning::PlannedSample> &planned = {}) {
        m_book->addTubes(m_run, samples, tubes, planned, person);
    };
    expectRefused([&] { add({}, {}); }, "no tube is named"_L1);
    expectRefused([&] { add({}, {fresh("X")}); }, "/tubes/3/sample"_L1);
    expectRefused([&] { add({liquid("S")}, {fresh("S")}); }, "is taken"_L1);
    expectRefused([&] { add({repeatSample("S/2", u"X"_s)}, {fresh("S/2")}); }, "/samples/1/repeats"_L1);
    expectRefused([&] { add({repeatSample("S/2", u"S/2"_s)}, {fresh("S/2")}); }, "cannot repeat itself"_L1);
    expectRefused([&] { add({}, {sampleTube("S", 0.1, 0.2)}); }, "with readings or marks"_L1);
    planning::PlannedSample planned;
    planned.sample.id = u"S"_s;
    expectRefused([&] { add({repeatSample()}, {fresh("S/2")}, {planned}); }, "not among the new"_L1);
    addRepeat();
    expectRefused([&] { add({repeatSample("S/3", u"S/2"_s)}, {fresh("S/3")}); }, "is a repeat itself"_L1);
    m_book->decide(m_run, DecisionKind::Rejected, person, u"spilt"_s);
    expectRefused([&] { addRepeat("S/4"); }, "is rejected"_L1);
}

TEST_F(AddedTubesTest, NeedRoomInTheRackAndBringTheirPlan)
{
    planning::PlanRecord plan;
    plan.rackRows = 1;
    plan.rackColumns = 5;
    const RunId run = m_book->addRun(strongRun(), risingMethod(), person, plan);
    planning::PlannedSample planned;
    planned.sample.id = u"S/2"_s;
    planned.sample.product = u"cider"_s;
    planned.glass = {{u"bulb pipette 1 mL"_s, u"flask 4 mL"_s}};
    m_book->addTubes(run, {repeatSample()}, {fresh("S/2"), fresh("S/2")}, {planned}, person);
    EXPECT_THAT(load(run).plan->samples, ElementsAre(planned));
    expectRefused([&] { m_book->addTubes(run, {}, {fresh("S")}, {}, person); }, "does not hold"_L1);
    m_book->addTubes(m_run, {repeatSample()}, {fresh("S/2")}, {planned}, person);
    EXPECT_FALSE(load(m_run).plan) << "a run without a plan stays one";
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(AddedTubesTest, ARunComesWithItsRepeatsToo)
{
    run::Run run = load(m_run).run;
    run.samples.insert(run.samples.begin(), repeatSample());
    run.tubes.push_back(fresh("S/2"));
    const StoredRun stored = load(m_book->addRun(run, risingMethod(), person));
    EXPECT_TRUE(stored.run == run);
    EXPECT_EQ(stored.plannedTubes, 4);
}

TEST_F(AddedTubesTest, RulesHoldForAnyOtherProgram)
{
    addRepeat();
    m_book->decide(m_run, DecisionKind::Rejected, person, u"spilt"_s);
    m_book.reset();
    RawFile raw(file());
    EXPECT_FALSE(
        raw.tryExecute(u"INSERT INTO tube_addition (run, samples_before, tubes_before) VALUES (1, 2, 5)"_s));
    EXPECT_TRUE(raw.error().contains("the run is decided"_L1)) << raw.error().toStdString();
    EXPECT_FALSE(raw.tryExecute(u"INSERT INTO sample_repeat (sample, repeats) VALUES (1, 2)"_s));
    EXPECT_TRUE(raw.error().contains("repeats none"_L1)) << raw.error().toStdString();
}

} // namespace plateau::test
