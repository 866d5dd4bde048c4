// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using Kind = Failure::Kind;

class ReviewTest : public OpenNotebookTest
{
protected:
    RunId add(const run::Run &run = twoSampleRun()) { return m_book->addRun(run, risingMethod(), person); }
    void setRules(const planning::ReviewRules &rules)
    {
        planning::Laboratory laboratory = planning::usualLaboratory();
        laboratory.review = rules;
        m_book->saveLaboratory(laboratory, person);
    }
    static RunDecision accepted(const Proof &by, std::vector<SampleDecision> samples = {},
                                const QString &reason = {})
    {
        return {DecisionKind::Accepted, by.name, by.passphrase, reason, std::move(samples)};
    }
    RunDecision typed(std::vector<SampleDecision> samples, DecisionKind kind = DecisionKind::Accepted) const
    {
        return {kind, other, {}, kind == DecisionKind::Rejected ? u"why"_s : QString(), std::move(samples)};
    }
    Decision last(RunId run) { return m_book->load(run).decisions.back(); }

    const QString other = u"Somebody Else"_s;
};

TEST_F(ReviewTest, WithoutPersonsATypedNameDecidesUnsigned)
{
    const RunId run = add();
    m_book->decide(run, accepted({other, u"ignored"_s}));
    EXPECT_EQ(last(run).person, other);
    EXPECT_FALSE(last(run).signedAs);
    EXPECT_THAT(last(run).samples, IsEmpty());
    EXPECT_THAT(last(run).repeats, IsEmpty());
    const RunSummary summary = m_book->runs().at(0);
    EXPECT_FALSE(summary.isSigned);
    EXPECT_TRUE(summary.acceptable);
    EXPECT_EQ(summary.revision, 1);
    const RunId second = add();
    expectRefused([&] { m_book->decide(second, accepted({u" "_s, {}})); }, "no person is named"_L1);
}

TEST_F(ReviewTest, WithPersonsADecisionIsSigned)
{
    fillPersons(*m_book);
    const RunId run = add();
    expectRefused([&] { m_book->decide(run, DecisionKind::Accepted, theReviewer.name, {}); },
                  "needs the passphrase"_L1);
    expectRefused(
        [&] {
            m_book->decide(run, accepted({other, theReviewer.passphrase}));
        },
        "Nobody who is set up is called so"_L1);
    const Failure wrong = failureOf([&] {
        m_book->decide(run, accepted({theReviewer.name, theHead.passphrase}));
    });
    EXPECT_EQ(wrong.kind(), Kind::Refused);
    EXPECT_TRUE(wrong.sentence().contains("This is not the passphrase of \"Tomas Brandl\""_L1));
    expectOneSentence(wrong);
    m_book->persons().retire(m_book->persons().find(theAnalyst.name)->id, theHead, u"leaves"_s);
    expectRefused([&] { m_book->decide(run, accepted(theAnalyst)); }, "is retired"_L1);
    EXPECT_EQ(m_book->load(run).summary.state, RunState::OnBench);

    m_book->decide(run, accepted({u"tomas brandl"_s, theReviewer.passphrase}));
    EXPECT_EQ(last(run).person, theReviewer.name) << "as the name stands in the list";
    EXPECT_EQ(last(run).signedAs, PersonRole::Reviewer);
    EXPECT_TRUE(m_book->runs().at(0).isSigned);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());

    m_book->persons().change(m_book->persons().find(theReviewer.name)->id, u"Tomas Weber"_s, PersonRole::Head,
                             theHead);
    EXPECT_EQ(last(run).person, theReviewer.name);
    EXPECT_EQ(last(run).signedAs, PersonRole::Reviewer) << "the role that was signed with stays";
}

TEST_F(ReviewTest, AnAnalystDecidesOnlyWhereNoReviewerIsWanted)
{
    fillPersons(*m_book);
    setRules({true, false, {}});
    const RunId run = add();
    expectRefused([&] { m_book->decide(run, accepted(theAnalyst)); }, "is an analyst"_L1);
    m_book->decide(run, accepted(theReviewer));
    const RunId second = add();
    m_book->decide(second, accepted(theHead));
    setRules({false, false, {}});
    const RunId third = add();
    m_book->decide(third, accepted(theAnalyst));
    EXPECT_EQ(last(third).signedAs, PersonRole::Analyst);
}

TEST_F(ReviewTest, ATypedNameHasNoRole)
{
    setRules({true, false, {}});
    const RunId run = add();
    m_book->decide(run, accepted({other, {}}));
    EXPECT_EQ(m_book->load(run).summary.state, RunState::Accepted);
}

TEST_F(ReviewTest, NobodyReviewsTheirOwnRunWhereASecondPersonIsWanted)
{
    setRules({false, true, {}});
    struct Row {
        const char *what;
        std::function<void(RunId, const QString &)> work;
    };
    const Row rows[] = {
        {"keyed",
         [&](RunId run, const QString &by) { m_book->addReading(run, 0, u"A1"_s, 0.1, u"0.1"_s, by); }},
        {"corrected",
         [&](RunId run, const QString &by) {
             m_book->addReading(run, 0, u"A1"_s, 0.1, u"0.1"_s, person);
             m_book->correctReading(run, 0, u"A1"_s, 0.2, u"0.2"_s, by, u"misread"_s);
         }},
        {"ticked",
         [&](RunId run, const QString &by) {
             m_book->pipetting().markDone(run, {{{0, u"buffer"_s, false}}}, by);
         }},
        {"spoilt",
         [&](RunId run, const QString &by) { m_book->pipetting().markSpoilt(run, 1, by, u"fell"_s); }},
    };
    for (const Row &row : rows) {
        SCOPED_TRACE(row.what);
        const RunId run = add(unreadRun());
        row.work(run, other);
        const RunDecision own{DecisionKind::Rejected, u" somebody ELSE"_s, {}, u"why"_s, {}};
        expectRefused([&] { m_book->decide(run, own); }, "nobody reviews their own run"_L1);
        const RunDecision planner{DecisionKind::Rejected, person, {}, u"why"_s, {}};
        expectRefused([&] { m_book->decide(run, planner); }, "nobody reviews their own run"_L1);
        m_book->decide(run, DecisionKind::Rejected, u"A Third"_s, u"why"_s);
        // Deciding and reopening is no work at the bench.
        m_book->reopen(run, u"A Third"_s, u"look again"_s);
        m_book->decide(run, DecisionKind::Rejected, u"A Third"_s, u"why"_s);
    }
    setRules({});
    const RunId run = add();
    m_book->decide(run, DecisionKind::Accepted, person, {});
}

TEST_F(ReviewTest, ANewNameMakesNoSecondPerson)
{
    fillPersons(*m_book);
    setRules({false, true, {}});
    const RunId run = m_book->addRun(twoSampleRun(), risingMethod(), theReviewer.name);
    m_book->persons().change(m_book->persons().find(theReviewer.name)->id, u"Tomas Weber"_s,
                             PersonRole::Reviewer, theHead);
    expectRefused(
        [&] {
            m_book->decide(run, accepted({u"Tomas Weber"_s, theReviewer.passphrase}));
        },
        "nobody reviews their own run"_L1);
    m_book->decide(run, accepted(theHead));
}

TEST_F(ReviewTest, SamplesAreDecidedOneByOneAndTheOthersFollowTheRun)
{
    run::Run three = twoSampleRun();
    three.samples.push_back(liquid("U"));
    three.tubes.push_back(sampleTube("U", 0.100, 0.500));
    three.tubes.push_back(sampleTube("U", 0.100, 0.502));
    const RunId run = add(three);
    m_book->decide(run, typed({{u"U"_s, SampleDecisionKind::Repeat, {}, {}},
                               {u"S"_s, SampleDecisionKind::Rejected, u"the wrong bottle"_s, {}}}));
    const Decision decision = last(run);
    ASSERT_THAT(decision.samples, SizeIs(2)); // in the run's order
    EXPECT_EQ(decision.samples[0],
              (SampleDecision{u"S"_s, SampleDecisionKind::Rejected, u"the wrong bottle"_s, {}}));
    EXPECT_EQ(decision.samples[1], (SampleDecision{u"U"_s, SampleDecisionKind::Repeat, {}, {}}));
    EXPECT_EQ(decidedOf(decision, u"S"_s), SampleDecisionKind::Rejected);
    EXPECT_EQ(decidedOf(decision, u"T"_s), SampleDecisionKind::Accepted);
    EXPECT_EQ(decidedOf(decision, u"U"_s), SampleDecisionKind::Repeat);
    EXPECT_THAT(decision.repeats, ElementsAre(u"U"_s));
    const RunSummary summary = m_book->runs().at(0);
    EXPECT_EQ(summary.state, RunState::Accepted);
    EXPECT_EQ(summary.samplesRejected, 1);
    EXPECT_EQ(summary.samplesToRepeat, 1);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(ReviewTest, ARejectedSampleNeedsAReason)
{
    const RunId run = add();
    for (const QString &blank : {QString(), u" \n"_s, u"\u200B"_s})
        expectRefused(
            [&] {
                m_book->decide(run, typed({{u"T"_s, SampleDecisionKind::Rejected, blank, {}}}));
            },
            "rejecting the sample \"T\" needs a reason"_L1);
    expectRefused(
        [&] {
            m_book->decide(run, typed({{u"T"_s, SampleDecisionKind::Repeat, u" "_s, {}}}));
        },
        "the reason for the sample \"T\" is blank"_L1);
    expectRefused(
        [&] {
            m_book->decide(run, typed({{u"T"_s, SampleDecisionKind::Accepted, u" "_s, {}}}));
        },
        "the reason for the sample \"T\" is blank"_L1);
    EXPECT_EQ(m_book->load(run).summary.state, RunState::OnBench);
}

TEST_F(ReviewTest, SampleDecisionsHaveToFitTheRun)
{
    const RunId run = add();
    const SampleDecision accept{u"S"_s, SampleDecisionKind::Accepted, {}, {}};
    expectRefused(
        [&] {
            m_book->decide(run, typed({{u"X"_s, SampleDecisionKind::Accepted, {}, {}}}));
        },
        "holds no sample \"X\""_L1);
    expectRefused([&] { m_book->decide(run, typed({accept, accept})); }, "two decisions on"_L1);
    expectRefused([&] { m_book->decide(run, typed({accept}, DecisionKind::Rejected)); },
                  "of a rejected run cannot be accepted"_L1);
    m_book->decide(run, typed({accept}));
    expectRefused([&] { m_book->decide(run, typed({accept})); }, "is accepted and takes no change"_L1);
    expectRefused([&] { m_book->decide({99}, typed({})); }, "no run 99"_L1);
}

TEST_F(ReviewTest, AdviceIsOfARepeatAndCanBeDone)
{
    const RunId run = add();
    const auto decide = [&](SampleDecisionKind kind, const evaluation::Advice &advice) {
        m_book->decide(run, typed({{u"S"_s, kind, u"because"_s, advice}}));
    };
    for (const SampleDecisionKind kind : {SampleDecisionKind::Accepted, SampleDecisionKind::Rejected})
        expectRefused([&] { decide(kind, moreSample(0.5)); }, "leave the advice out"_L1);
    const evaluation::Advice impossible[] = {dilution({}),
                                             dilution({{5, 4.999}}),
                                             dilution({{0, 50}}),
                                             dilution({{5, 1e6}}),
                                             dilution({{-5, 50}}),
                                             moreSample(0),
                                             moreSample(-0.5),
                                             moreSample(100.1),
                                             dilution({{std::nan(""), 50}}),
                                             moreSample(std::nan("")),
                                             dilution(std::vector<run::DilutionStep>(5, {0.1, 50}))};
    for (const evaluation::Advice &advice : impossible)
        expectRefused([&] { decide(SampleDecisionKind::Repeat, advice); },
                      "cannot be repeated as advised"_L1);
    decide(SampleDecisionKind::Repeat, dilution({{5, 50}, {5, 5}}));
    EXPECT_EQ(last(run).samples.at(0).advice, dilution({{5, 50}, {5, 5}}));
}

TEST_F(ReviewTest, ARepeatWaitsAsThePersonAdvisedIt)
{
    const RunId diluted = add();
    m_book->decide(diluted, typed({{u"T"_s, SampleDecisionKind::Repeat, u"foamed over"_s,
                                    dilution({{5, 50}, {10, 20}})}}));
    std::vector<WaitingSample> waiting = m_book->shelf().waiting();
    ASSERT_THAT(waiting, SizeIs(1));
    EXPECT_EQ(waiting[0].sample.id, u"T"_s);
    ASSERT_TRUE(waiting[0].repeat);
    EXPECT_EQ(waiting[0].repeat->run, diluted);
    EXPECT_EQ(waiting[0].repeat->reason, u"foamed over"_s);
    ASSERT_THAT(waiting[0].repeat->advice, SizeIs(1));
    EXPECT_EQ(waiting[0].repeat->advice[0].measurand, QString());
    EXPECT_EQ(waiting[0].repeat->advice[0].advice, dilution({{5, 50}, {10, 20}}));
    EXPECT_EQ(waiting[0].repeat->advice[0].advice.factor, 20);

    const RunId more = add(); // holds T again, so that the first repeat is made
    m_book->decide(more, typed({{u"T"_s, SampleDecisionKind::Repeat, {}, moreSample(0.25)}}));
    waiting = m_book->shelf().waiting();
    ASSERT_THAT(waiting, SizeIs(1));
    EXPECT_EQ(waiting[0].repeat->run, more);
    EXPECT_EQ(waiting[0].repeat->advice.at(0).advice, moreSample(0.25));
    EXPECT_EQ(waiting[0].repeat->reason, QString());
    m_book->decide(add(), typed({}));
    EXPECT_THAT(m_book->shelf().waiting(), IsEmpty());
}

TEST_F(ReviewTest, WhatAPersonSaysComesBeforeWhatTheEvaluationAdvises)
{
    run::Run strong = twoSampleRun(); // T is above the window: the evaluation wants it diluted
    strong.tubes[3].readings[u"A2"_s] = 1.5;
    strong.tubes[4].readings[u"A2"_s] = 1.5;
    const auto decide = [&](std::vector<SampleDecision> samples) {
        RunDecision decision = typed(std::move(samples));
        decision.reason = u"seen"_s;
        const RunId run = add(strong);
        m_book->decide(run, decision);
        return run;
    };
    decide({});
    ASSERT_THAT(m_book->shelf().waiting(), SizeIs(1));
    EXPECT_THAT(m_book->runs().at(0).samplesToRepeat, 1);
    EXPECT_FALSE(m_book->runs().at(0).acceptable);
    ASSERT_THAT(m_book->shelf().waiting()[0].repeat->advice, SizeIs(1));
    EXPECT_EQ(m_book->shelf().waiting()[0].repeat->advice[0].measurand, u"analyte"_s);
    decide({{u"T"_s, SampleDecisionKind::Repeat, u"as advised"_s, {}}});
    ASSERT_THAT(m_book->shelf().waiting(), SizeIs(1));
    EXPECT_THAT(m_book->shelf().waiting()[0].repeat->advice, SizeIs(1)) << "as the evaluation advises";
    decide({{u"T"_s, SampleDecisionKind::Accepted, u"enough for the customer"_s, {}}});
    EXPECT_THAT(m_book->shelf().waiting(), IsEmpty());
    decide({{u"T"_s, SampleDecisionKind::Rejected, u"not asked for"_s, {}}});
    EXPECT_THAT(m_book->shelf().waiting(), IsEmpty());
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(ReviewTest, ARepeatOfARejectedRunWaitsAsWell)
{
    const RunId run = add();
    m_book->decide(run, typed({{u"T"_s, SampleDecisionKind::Repeat, {}, {}}}, DecisionKind::Rejected));
    EXPECT_EQ(decidedOf(last(run), u"S"_s), SampleDecisionKind::Rejected);
    ASSERT_THAT(m_book->shelf().waiting(), SizeIs(1));
    EXPECT_EQ(m_book->shelf().waiting()[0].sample.id, u"T"_s);
}

TEST_F(ReviewTest, ARejectedSampleWaitsOnTheShelfAgain)
{
    planning::ShelfSample told;
    told.id = u"T"_s;
    m_book->shelf().registerSample(told, person);
    const RunId run = add();
    EXPECT_THAT(m_book->shelf().waiting(), IsEmpty());
    m_book->decide(run, typed({{u"T"_s, SampleDecisionKind::Rejected, u"mixed up"_s, {}}}));
    ASSERT_THAT(m_book->shelf().waiting(), SizeIs(1));
    EXPECT_FALSE(m_book->shelf().waiting()[0].repeat);
    m_book->reopen(run, other, u"it was not"_s);
    EXPECT_THAT(m_book->shelf().waiting(), IsEmpty());
}

TEST_F(ReviewTest, NobodyTakesAResultThatWasRejected)
{
    run::Run free = freeRun();
    const RunId of = m_book->addRun(free, freeMethod(), person);
    m_book->decide(of, typed({{u"S"_s, SampleDecisionKind::Rejected, u"the wrong bottle"_s, {}}}));
    const RunId total = m_book->addRun(totalRun(), totalMethod(), person);
    const auto bound = [&](RunId run) {
        for (const evaluation::Result &result : evaluationOf(m_book->load(run)).results) {
            if (result.measurand == u"bound"_s)
                return true;
        }
        return false;
    };
    EXPECT_FALSE(bound(total));
    m_book->decide(total, DecisionKind::Accepted, other, {});
    m_book->reopen(of, other, u"it was right"_s);
    m_book->decide(of, DecisionKind::Accepted, other, {});
    EXPECT_FALSE(bound(total)) << "a decision keeps what it rested on";
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
    m_book->reopen(total, other, u"with bound"_s);
    EXPECT_TRUE(bound(total));
}

TEST_F(ReviewTest, LastResultsLeaveOutWhatWasRejected)
{
    planning::ShelfSample told;
    told.id = u"T"_s;
    told.product = u"perry"_s;
    m_book->shelf().registerSample(told, person);
    const RunId run = add();
    m_book->decide(run, typed({}));
    EXPECT_THAT(m_book->shelf().lastResults(u"perry"_s, u"analyte"_s), SizeIs(1));
    m_book->reopen(run, other, u"look again"_s);
    m_book->decide(run, typed({{u"T"_s, SampleDecisionKind::Rejected, u"mixed up"_s, {}}}));
    EXPECT_THAT(m_book->shelf().lastResults(u"perry"_s, u"analyte"_s), IsEmpty());
}

TEST_F(ReviewTest, WithoutPersonsARunIsReopenedUnsigned)
{
    const RunId run = add();
    m_book->decide(run, accepted({other, {}}));
    m_book->reopen(run, other, u"look again"_s);
    ASSERT_THAT(m_book->load(run).reopenings, SizeIs(1));
    EXPECT_EQ(m_book->load(run).reopenings[0].person, other);
    EXPECT_FALSE(m_book->load(run).reopenings[0].signedAs);
}

TEST_F(ReviewTest, WithPersonsAReopeningIsSignedByWhoMayDecide)
{
    fillPersons(*m_book);
    setRules({true, false, {}});
    const RunId run = add();
    m_book->decide(run, accepted(theReviewer));
    const auto reopenAs = [&](const Proof &by, const QString &reason = u"look again"_s) {
        return [this, run, by, reason] { m_book->reopen(run, by.name, reason, by.passphrase); };
    };
    expectRefused(reopenAs({theReviewer.name, {}}), "needs the passphrase"_L1);
    const AuditHead before = m_book->auditHead();
    EXPECT_EQ(failureOf(reopenAs({theReviewer.name, u"not this one"_s})).kind(), Kind::Refused);
    EXPECT_EQ(m_book->auditHead().entries, before.entries + 1) << "the wrong try is on record";
    expectRefused(reopenAs(theAnalyst), "a reviewer or a head decides here"_L1);
    expectRefused(reopenAs({u"Nobody Known"_s, theHead.passphrase}), "Nobody who is set up is called so"_L1);
    expectRefused(reopenAs(theReviewer, u" "_s), "needs a reason"_L1);
    EXPECT_EQ(m_book->runs().at(0).state, RunState::Accepted);
    reopenAs(theReviewer)();
    EXPECT_EQ(m_book->runs().at(0).state, RunState::OnBench);
    EXPECT_EQ(m_book->load(run).reopenings.at(0).signedAs, PersonRole::Reviewer);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(ReviewTest, ADecisionThatWasChangedFromOutsideIsNamed)
{
    fillReview(*m_book);
    m_book.reset();
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] {
            raw.execute(u"UPDATE decision_sample SET kind = 'accepted' WHERE sample = 'T'"_s);
            raw.execute(u"UPDATE decision_signature SET person_version = 1"_s);
        });
    }
    std::vector<QString> places;
    for (const Finding &finding : reopen(Access::ReadOnly)->verify().findings)
        places.push_back(finding.place);
    EXPECT_THAT(places, ElementsAre(u"decision_sample 2"_s, u"decision_signature 1"_s));
}

} // namespace plateau::test
