// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

#include <cmath>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

/// Several runs of one sample.
class ResultsTest : public OpenNotebookTest
{
protected:
    /// plainRun with a net signal that is larger by so much, its sample diluted and named as asked.
    run::Run runOf(double more, const std::vector<run::DilutionStep> &dilution = {},
                   const QString &name = u"S"_s)
    {
        run::Run run = plainRun();
        run.samples[0].id = name;
        run.samples[0].dilution = dilution;
        run.uncertainty = uncertainties();
        for (run::Tube &tube : run.tubes) {
            if (tube.sample.isEmpty())
                continue;
            tube.sample = name;
            tube.readings[u"A2"_s] = std::get<double>(tube.readings[u"A2"_s]) + more;
        }
        return run;
    }
    RunId accept(const run::Run &run, const std::optional<planning::PlanRecord> &plan = {})
    {
        const RunId id = m_book->addRun(run, risingMethod(), person, plan);
        m_book->decide(id, DecisionKind::Accepted, other, u"seen"_s);
        return id;
    }
    planning::PlanRecord planOf(const QString &product, std::optional<qint64> repeats = {})
    {
        planning::PlanRecord plan;
        planning::PlannedSample sample;
        sample.sample.id = u"S"_s;
        sample.sample.product = product;
        sample.repeats = repeats;
        plan.samples = {sample};
        return plan;
    }
    void registerSample(const QString &product = {})
    {
        planning::ShelfSample told;
        told.id = u"S"_s;
        told.product = product;
        m_book->shelf().registerSample(told, person);
    }
    SampleResults results(std::optional<RunId> of = {})
    {
        return m_book->resultsOf(u"S"_s, u"analyte"_s, of);
    }
    std::vector<RunId> runsOf(const SampleResults &found)
    {
        std::vector<RunId> runs;
        for (const AcceptedResult &one : found.accepted)
            runs.push_back(one.from.run);
        return runs;
    }
    void choose(ReportRule rule, std::optional<ResultSource> named = {}, const QString &reason = u"agreed"_s)
    {
        m_book->chooseReported(u"S"_s, u"analyte"_s, {rule, named, other, {}, reason});
    }

    const QString other = u"Somebody Else"_s;
};

TEST_F(ResultsTest, OfASampleThatNobodyMeasuredThereAreNone)
{
    const SampleResults none = results();
    EXPECT_THAT(none.accepted, IsEmpty());
    EXPECT_FALSE(none.reported);
    EXPECT_EQ(none.obstacle, u"No result of this sample is accepted yet."_s);
    m_book->addRun(runOf(0), risingMethod(), person);
    EXPECT_THAT(results().accepted, IsEmpty()) << "on the bench";
}

TEST_F(ResultsTest, WithoutAChoiceTheLastAcceptedIsReported)
{
    const RunId first = accept(runOf(0));
    const RunId second = accept(runOf(0.05, {{5, 50}}));
    const SampleResults found = results();
    EXPECT_EQ(runsOf(found), (std::vector{first, second}));
    EXPECT_EQ(found.rule, ReportRule::LastAccepted);
    EXPECT_FALSE(found.choice);
    ASSERT_TRUE(found.reported);
    EXPECT_THAT(found.reportedFrom, ElementsAre(ResultSource{second, 1, u"S"_s}));
    EXPECT_EQ(found.accepted[0].dilutionFactor, 1);
    EXPECT_EQ(found.accepted[1].dilutionFactor, 10);
    EXPECT_EQ(found.accepted[1].decidedBy, other);
    EXPECT_FALSE(found.accepted[1].isSigned);
    EXPECT_EQ(found.accepted[1].methodId, u"rising"_s);
    // The numbers are those of the decision's evaluation, to the bit.
    const evaluation::Result then = evaluationOf(m_book->load(second)).results.at(0);
    EXPECT_EQ(found.reported->value, then.value);
    EXPECT_EQ(found.reported->expandedUncertainty, then.expandedUncertainty);
    EXPECT_EQ(found.reported->coverageFactor, then.coverageFactor);
    EXPECT_EQ(found.reported->unit, u"g/L"_s);
    EXPECT_EQ(found.reported->verdict, then.verdict);
}

TEST_F(ResultsTest, WhatIsNotAcceptedDoesNotCount)
{
    const RunId good = accept(runOf(0));
    const RunId rejected = m_book->addRun(runOf(0.01), risingMethod(), person);
    m_book->decide(rejected, DecisionKind::Rejected, other, u"blank"_s);
    const RunId reopened = accept(runOf(0.02));
    m_book->reopen(reopened, other, u"look again"_s);
    for (const SampleDecisionKind kind : {SampleDecisionKind::Rejected, SampleDecisionKind::Repeat}) {
        const RunId run = m_book->addRun(runOf(0.03), risingMethod(), person);
        m_book->decide(run, {DecisionKind::Accepted, other, {}, {}, {{u"S"_s, kind, u"why"_s, {}}}});
    }
    EXPECT_EQ(runsOf(results()), std::vector{good});
    const RunId strong = accept(runOf(0.7)); // its evaluation wants it diluted
    EXPECT_EQ(runsOf(results()), std::vector{good});
    m_book->reopen(strong, other, u"it is enough"_s);
    m_book->decide(strong, {DecisionKind::Accepted,
                            other,
                            {},
                            u"enough for the customer"_s,
                            {{u"S"_s, SampleDecisionKind::Accepted, {}, {}}}});
    EXPECT_EQ(runsOf(results()), (std::vector{good, strong})) << "somebody accepted it by itself";
    EXPECT_EQ(results().accepted[1].from.revision, 2);
    EXPECT_THAT(m_book->resultsOf(u"S"_s, u"other"_s).accepted, IsEmpty());
}

TEST_F(ResultsTest, OneMeasurandOfASampleMayBeAcceptedWhileAnotherIsRepeated)
{
    Decision decision;
    decision.repeats = {u"S"_s}; // as the evaluation says of one of its measurands
    evaluation::Result good;
    good.sample = u"S"_s;
    good.verdict = evaluation::Verdict::Reportable;
    evaluation::Result doubtful = good;
    doubtful.verdict = evaluation::Verdict::Investigate;
    evaluation::Result high = good;
    high.verdict = evaluation::Verdict::Repeat;
    EXPECT_TRUE(acceptsResult(decision, good));
    EXPECT_TRUE(acceptsResult(decision, doubtful));
    EXPECT_FALSE(acceptsResult(decision, high));
    for (const auto kind : {SampleDecisionKind::Rejected, SampleDecisionKind::Repeat}) {
        decision.samples = {{u"S"_s, kind, u"why"_s, {}}};
        EXPECT_FALSE(acceptsResult(decision, good));
        EXPECT_FALSE(acceptsResult(decision, high));
    }
    decision.samples = {{u"S"_s, SampleDecisionKind::Accepted, {}, {}}};
    EXPECT_TRUE(acceptsResult(decision, high));
    decision.kind = DecisionKind::Rejected;
    EXPECT_FALSE(acceptsResult(decision, good));
}

TEST_F(ResultsTest, TheMeanKeepsTheMeanOfTheUncertainties)
{
    const RunId first = accept(runOf(0));
    const RunId second = accept(runOf(0.03));
    choose(ReportRule::MeanOfAccepted);
    const SampleResults found = results();
    EXPECT_EQ(found.rule, ReportRule::MeanOfAccepted);
    EXPECT_THAT(found.reportedFrom,
                ElementsAre(ResultSource{first, 1, u"S"_s}, ResultSource{second, 1, u"S"_s}));
    const evaluation::Result &a = found.accepted[0].result;
    const evaluation::Result &b = found.accepted[1].result;
    ASSERT_TRUE(found.reported);
    EXPECT_NEAR(*found.reported->value, (*a.value + *b.value) / 2, 1e-12);
    EXPECT_NEAR(*found.reported->expandedUncertainty, (*a.expandedUncertainty + *b.expandedUncertainty) / 2,
                1e-12);
    EXPECT_GT(*found.reported->expandedUncertainty,
              std::hypot(*a.expandedUncertainty, *b.expandedUncertainty) / 2)
        << "as independent results would have";
    EXPECT_NEAR(*found.reported->spread, *b.value - *a.value, 1e-12);
    EXPECT_EQ(found.reported->n, 2);
    EXPECT_EQ(found.reported->unit, u"g/L"_s);
    EXPECT_EQ(found.choice->reason, u"agreed"_s);
    EXPECT_EQ(found.choice->person, other);
    EXPECT_EQ(found.choice->at, m_now);
}

TEST_F(ResultsTest, AMeanNeedsPlainValuesInOneUnitAndUncertaintiesOfAll)
{
    SampleResults made;
    const auto add = [&](const evaluation::Result &result) {
        made.accepted.push_back(
            {{{int(made.accepted.size()) + 1}, 1, u"S"_s}, u"m"_s, 1, {}, {}, false, 1, result});
    };
    evaluation::Result plain;
    plain.value = 2;
    plain.unit = u"g/L"_s;
    plain.expandedUncertainty = 0.2;
    plain.coverageFactor = 2;
    add(plain);
    made.rule = ReportRule::MeanOfAccepted;
    followRule(made);
    EXPECT_EQ(made.reported->value, 2);
    EXPECT_EQ(made.reported->coverageFactor, 2);
    plain.value = 3;
    plain.coverageFactor = 2.1;
    add(plain);
    followRule(made);
    EXPECT_EQ(made.reported->value, 2.5);
    EXPECT_EQ(made.reported->expandedUncertainty, 0.2);
    EXPECT_FALSE(made.reported->coverageFactor) << "they have not the same";
    plain.expandedUncertainty.reset();
    add(plain);
    followRule(made);
    EXPECT_TRUE(made.reported->value);
    EXPECT_FALSE(made.reported->expandedUncertainty);
    made.accepted[2].result.unit = u"g/100 g"_s;
    followRule(made);
    EXPECT_FALSE(made.reported);
    EXPECT_TRUE(made.obstacle.contains("not all in one unit"_L1)) << made.obstacle.toStdString();
    made.accepted[2].result.unit = u"g/L"_s;
    made.accepted[1].result.lessThan = 0.1;
    followRule(made);
    EXPECT_FALSE(made.reported);
    EXPECT_TRUE(made.obstacle.contains("below or above"_L1)) << made.obstacle.toStdString();
    made.rule = ReportRule::LastAccepted;
    followRule(made);
    EXPECT_EQ(made.reportedFrom, std::vector{made.accepted[2].from});
    EXPECT_EQ(made.obstacle, QString());
}

TEST_F(ResultsTest, ANamedResultStaysUntilItIsNotAcceptedAnyMore)
{
    const RunId first = accept(runOf(0));
    const RunId second = accept(runOf(0.05));
    choose(ReportRule::Named, ResultSource{first, 1, u"S"_s}, u"the least diluted"_s);
    EXPECT_EQ(results().reportedFrom, (std::vector{ResultSource{first, 1, u"S"_s}}));
    EXPECT_EQ(results().choice->named, (ResultSource{first, 1, u"S"_s}));
    EXPECT_FALSE(results().choice->olderThanResults);
    accept(runOf(0.06));
    EXPECT_TRUE(results().choice->olderThanResults);
    EXPECT_EQ(results().reportedFrom.at(0).run, first);
    m_book->reopen(first, other, u"look again"_s);
    EXPECT_FALSE(results().reported);
    EXPECT_TRUE(results().obstacle.contains("run 1 at revision 1, is no longer accepted"_L1));
    m_book->decide(first, DecisionKind::Accepted, other, {});
    EXPECT_FALSE(results().reported) << "revision 2 is another result";
    choose(ReportRule::Named, ResultSource{second, 1, u"S"_s});
    EXPECT_EQ(results().reportedFrom.at(0).run, second);
    choose(ReportRule::LastAccepted);
    EXPECT_EQ(results().reportedFrom.at(0), (ResultSource{first, 2, u"S"_s})) << "decided last";
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(ResultsTest, AChoiceThatCannotBeIsRefused)
{
    expectRefused([&] { choose(ReportRule::LastAccepted); }, "No result of this sample"_L1);
    const RunId first = accept(runOf(0));
    for (const QString &blank : {QString(), u" "_s, u"\u200B"_s})
        expectRefused([&] { choose(ReportRule::LastAccepted, {}, blank); }, "needs a reason"_L1);
    expectRefused([&] { choose(ReportRule::Named); }, "none is named"_L1);
    for (const ResultSource &none : {ResultSource{first, 2, u"S"_s}, ResultSource{{9}, 1, u"S"_s},
                                     ResultSource{first, 1, u"T"_s}, ResultSource{first, 0, u"S"_s}})
        expectRefused([&] { choose(ReportRule::Named, none); }, "is no longer accepted"_L1);
    expectRefused(
        [&] {
            m_book->chooseReported(u"S"_s, u"analyte"_s,
                                   {ReportRule::LastAccepted, {}, u" "_s, {}, u"why"_s});
        },
        "no person is named"_L1);
    expectRefused(
        [&] {
            m_book->chooseReported(u"S"_s, u"x"_s, {ReportRule::LastAccepted, {}, other, {}, u"y"_s});
        },
        "No result of this sample"_L1);
}

TEST_F(ResultsTest, AChoiceIsSignedAsADecisionIs)
{
    accept(runOf(0));
    fillPersons(*m_book);
    const auto chooseAs = [&](const Proof &by) {
        m_book->chooseReported(u"S"_s, u"analyte"_s,
                               {ReportRule::MeanOfAccepted, {}, by.name, by.passphrase, u"both"_s});
    };
    expectRefused([&] { chooseAs({theReviewer.name, {}}); }, "needs the passphrase"_L1);
    expectRefused([&] { chooseAs({other, u"whatever it is"_s}); }, "Nobody who is set up is called so"_L1);
    planning::Laboratory laboratory = planning::usualLaboratory();
    laboratory.review.reviewerDecides = true;
    m_book->saveLaboratory(laboratory, person);
    expectRefused([&] { chooseAs(theAnalyst); }, "is an analyst"_L1);
    chooseAs(theReviewer);
    EXPECT_TRUE(results().choice->isSigned);
    EXPECT_EQ(results().choice->person, theReviewer.name);
}

TEST_F(ResultsTest, NamesAreComparedAndProductsWhereBothAreKnown)
{
    const RunId first = accept(runOf(0), planOf(u"Perry"_s));
    const RunId unknown = accept(runOf(0.01));
    const RunId same = accept(runOf(0.02, {}, u" s"_s));
    const RunId another = accept(runOf(0.03), planOf(u"Cider"_s));
    accept(runOf(0.04, {}, u"T"_s));
    EXPECT_EQ(results(first).product, u"Perry"_s);
    EXPECT_EQ(runsOf(results(first)), (std::vector{first, unknown, same}));
    EXPECT_EQ(results().product, u"Cider"_s);
    EXPECT_EQ(runsOf(results()), (std::vector{unknown, same, another}));
    EXPECT_EQ(runsOf(m_book->resultsOf(u"s"_s, u"analyte"_s, another)),
              (std::vector{unknown, same, another}));
}

TEST_F(ResultsTest, ANameThatWasRegisteredAnewIsAnotherSample)
{
    registerSample();
    const RunId first = accept(runOf(0));
    choose(ReportRule::MeanOfAccepted);
    registerSample();
    EXPECT_EQ(runsOf(results()), std::vector{first}) << "the new one is not measured yet";
    const RunId second = accept(runOf(0.01));
    EXPECT_EQ(runsOf(results()), std::vector{second});
    EXPECT_FALSE(results().choice);
    EXPECT_EQ(runsOf(results(first)), std::vector{first});
    EXPECT_EQ(results(first).rule, ReportRule::MeanOfAccepted);
    expectRefused([&] { results(RunId{99}); }, "no run 99"_L1);
    registerSample();
    const RunId repeat = accept(runOf(0.02), planOf({}, second.value));
    EXPECT_EQ(runsOf(results()), (std::vector{second, repeat})) << "it says that it repeats that one";
}

TEST_F(ResultsTest, TheUsualBlankIsTheMiddleOfWhatAcceptedRunsShow)
{
    const auto usual = [&] { return m_book->runHistory().usualBlank(u"rising"_s, u"A1"_s); };
    const auto withBlanks = [&](double absorbance) {
        run::Run run = runOf(0);
        for (run::Tube &tube : run.tubes) {
            if (tube.role == run::Role::Blank)
                tube.readings[u"A1"_s] = absorbance;
        }
        return run;
    };
    const auto blanks = std::ranges::count(runOf(0).tubes, run::Role::Blank, &run::Tube::role);
    ASSERT_EQ(blanks, 1);
    EXPECT_FALSE(usual());
    accept(withBlanks(0.100));
    accept(withBlanks(0.110));
    EXPECT_FALSE(usual()) << "of two blanks";
    accept(withBlanks(0.105));
    EXPECT_NEAR(*usual(), 0.105, 1e-12);
    m_book->decide(m_book->addRun(withBlanks(0.9), risingMethod(), person), DecisionKind::Rejected, other, u"no"_s);
    m_book->addRun(withBlanks(0.9), risingMethod(), person);
    m_book->reopen(accept(withBlanks(0.9)), other, u"look again"_s);
    EXPECT_NEAR(*usual(), 0.105, 1e-12) << "only what stands accepted";
    for (int i = 0; i < 10; ++i)
        accept(withBlanks(0.120));
    EXPECT_NEAR(*usual(), 0.120, 1e-12) << "the newest ten";
    EXPECT_FALSE(m_book->runHistory().usualBlank(u"rising"_s, u"A9"_s));
    EXPECT_FALSE(m_book->runHistory().usualBlank(u"other"_s, u"A1"_s));
}

TEST_F(ResultsTest, ANameThatWasReceivedOnAnotherDayIsAnotherSample)
{
    const auto receivedOn = [&](int day, int hour = 8) {
        planning::PlanRecord plan = planOf({});
        plan.samples[0].sample.receivedAt = QDateTime({2026, 3, day}, {hour, 0}, Qt::OffsetFromUTC, 3600);
        return plan;
    };
    const RunId untold = accept(runOf(0));
    const RunId march3 = accept(runOf(0.01), receivedOn(3));
    choose(ReportRule::MeanOfAccepted);
    const RunId later = accept(runOf(0.02), receivedOn(3, 23));
    EXPECT_EQ(runsOf(results()), (std::vector{untold, march3, later})) << "the day counts, where it is told";
    const RunId march4 = accept(runOf(0.03), receivedOn(4, 0)); // the day of the place, not that of Greenwich
    EXPECT_EQ(runsOf(results()), std::vector{march4});
    EXPECT_EQ(results().rule, ReportRule::LastAccepted) << "the choice is the other sample's";
    const RunId again = accept(runOf(0.04));
    EXPECT_EQ(runsOf(results()), (std::vector{march4, again})) << "of the newest";
    const RunId back = accept(runOf(0.05), receivedOn(3));
    EXPECT_EQ(runsOf(results()), (std::vector{untold, march3, later, back}));
    EXPECT_EQ(results().rule, ReportRule::MeanOfAccepted);
    EXPECT_EQ(runsOf(results(march4)), (std::vector{march4, again}));
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

} // namespace plateau::test
