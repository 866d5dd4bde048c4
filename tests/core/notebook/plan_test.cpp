// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class PlanTest : public OpenNotebookTest
{
protected:
    void expectRefused(const run::Run &run, const planning::PlanRecord &plan, QLatin1StringView words)
    {
        OpenNotebookTest::expectRefused([&] { m_book->addRun(run, risingMethod(), person, plan); }, words);
        EXPECT_THAT(m_book->runs(), IsEmpty());
    }
};

TEST_F(PlanTest, APlanComesBackWithItsRun)
{
    m_book->addRun(plainRun(), risingMethod(), person);
    planning::PlanRecord plan = fullPlan();
    run::Run run = fullRun();
    run.samples[0].id = u"S"_s;
    for (run::Tube &tube : run.tubes) {
        if (tube.sample == u"P-104"_s)
            tube.sample = u"S"_s;
    }
    plan.samples[0].sample.id = u"S"_s;
    plan.samples[0].repeats = 1;
    const RunId id = m_book->addRun(run, risingMethod(), person, plan);
    m_book.reset();
    m_book = reopen();
    const StoredRun stored = m_book->load(id);
    ASSERT_TRUE(stored.plan);
    EXPECT_TRUE(*stored.plan == plan);
    EXPECT_TRUE(stored.run == run);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(PlanTest, OwnersOfUncertaintiesAreKeptByTheNotebooksOwnRules)
{
    m_book->addRun(fullRun(), risingMethod(), person, fullPlan());
    EXPECT_EQ(m_book->load(RunId{1}).plan->owners, fullPlan().owners);
    m_book.reset();
    RawFile raw(file());
    const auto insert = [&](const QString &values) {
        return raw.tryExecute(
            u"INSERT INTO plan_owner (plan, input, standard, owner, source, is_usual) VALUES "_s + values);
    };
    EXPECT_FALSE(insert(u"(1, 'absorbance', NULL, 'x', 'x', 0)"_s)) << "there is one";
    EXPECT_FALSE(insert(u"(1, 'standard', NULL, 'x', 'x', 0)"_s)) << "of which?";
    EXPECT_FALSE(insert(u"(1, 'dilution', 1, 'x', 'x', 0)"_s)) << "of no standard";
    EXPECT_FALSE(insert(u"(1, 'replicates', NULL, 'x', 'x', 0)"_s)) << "nobody answers for them";
    EXPECT_FALSE(insert(u"(1, 'dilution', NULL, ' ', 'x', 0)"_s)) << "nobody";
    EXPECT_TRUE(insert(u"(1, 'dilution', NULL, 'x', 'x', 0)"_s));
}

TEST_F(PlanTest, ARunWithoutAPlanHasNone)
{
    EXPECT_FALSE(m_book->load(m_book->addRun(fullRun(), risingMethod(), person)).plan);
}

TEST_F(PlanTest, APlanMayKnowNothingOfASample)
{
    planning::PlanRecord plan = fullPlan();
    plan.samples.erase(plan.samples.begin());
    plan.samples[0].glass.clear();
    plan.interval_s.reset();
    const RunId id = m_book->addRun(fullRun(), risingMethod(), person, plan);
    EXPECT_TRUE(m_book->load(id).plan == plan);
}

TEST_F(PlanTest, AStepKeepsItsOwnUncertainty)
{
    run::Run run = fullRun();
    run.samples[0].dilution[1].uncertainty_percent = 0.31;
    run.samples[1].dilution[0].uncertainty_percent = 0;
    const RunId id = m_book->addRun(run, risingMethod(), person);
    EXPECT_TRUE(m_book->load(id).run == run);
    EXPECT_FALSE(m_book->load(id).run.samples[0].dilution[0].uncertainty_percent);
}

TEST_F(PlanTest, APlanThatDoesNotFitItsRunIsRefused)
{
    planning::PlanRecord plan = fullPlan();
    plan.samples[0].sample.id = u"P-1"_s;
    expectRefused(fullRun(), plan, "/samples/0/sample/id: the run has no sample"_L1);
    plan = fullPlan();
    plan.samples[1].sample.form = run::Form::Liquid;
    expectRefused(fullRun(), plan, "/samples/1/sample/form"_L1);
    plan = fullPlan();
    plan.samples[0].glass.pop_back();
    expectRefused(fullRun(), plan, "/samples/0/glass"_L1);
    plan = fullPlan();
    plan.samples[0].glass[1].flask = u" "_s;
    expectRefused(fullRun(), plan, "/samples/0/glass/1/flask"_L1);
    plan = fullPlan();
    plan.samples.push_back(plan.samples[0]);
    expectRefused(fullRun(), plan, "planned twice"_L1);
    plan = fullPlan();
    plan.rackRows = 2;
    plan.rackColumns = 3;
    expectRefused(fullRun(), plan, "does not hold the run's 7 tubes"_L1);
    plan.rackRows = 0;
    expectRefused(fullRun(), plan, "1 to 96 positions"_L1);
    plan = fullPlan();
    plan.interval_s = -1;
    expectRefused(fullRun(), plan, "/interval_s"_L1);
    plan = fullPlan();
    plan.owners[2].standard = u"CTRL"_s;
    expectRefused(fullRun(), plan, "/owners/2/standard"_L1);
    plan = fullPlan();
    plan.owners[0].source.clear();
    expectRefused(fullRun(), plan, "/owners/0/source"_L1);
    plan = fullPlan();
    plan.samples[0].repeats = 7;
    expectRefused(fullRun(), plan, "run 7"_L1);
}

TEST_F(PlanTest, LastResultsGoByThePlanRatherThanTheShelf)
{
    planning::ShelfSample told;
    told.id = u"S"_s;
    told.product = u"perry"_s;
    m_book->shelf().registerSample(told, person);
    planning::PlanRecord plan;
    told.product = u"cider"_s;
    plan.samples = {{told, {}, {}}};
    const RunId id = m_book->addRun(plainRun(), risingMethod(), person, plan);
    m_book->decide(id, DecisionKind::Accepted, person, {});
    EXPECT_THAT(m_book->shelf().lastResults(u"cider"_s, u"analyte"_s), SizeIs(1));
    EXPECT_THAT(m_book->shelf().lastResults(u"perry"_s, u"analyte"_s), IsEmpty());
}

} // namespace plateau::test
