// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/writers.h"
#include "tests/core/notebook/fixture.h"

#include <QCryptographicHash>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using Kind = Failure::Kind;

class DecisionsTest : public NotebookTest
{
protected:
    const QString analyst = u"Ines Kaddour"_s;
    const QString reviewer = u"Tomas Brandl"_s;

    RunState stateOf(const Notebook &notebook, RunId run) { return notebook.load(run).summary.state; }
    void expectRefused(const std::function<void()> &action)
    {
        const Failure failure = failureOf(action);
        EXPECT_EQ(failure.kind(), Kind::Refused) << failure.what() << " " << failure.details().toStdString();
        expectOneSentence(failure);
    }
    void expectLocked(Notebook &notebook, RunId run)
    {
        expectRefused([&] { notebook.addReading(run, 2, u"A2"_s, 0.6, {}, analyst); });
        expectRefused([&] { notebook.correctReading(run, 1, u"A2"_s, 0.6, {}, analyst, u"why"_s); });
        expectRefused([&] { notebook.decide(run, DecisionKind::Accepted, reviewer, u"again"_s); });
        expectRefused([&] { notebook.decide(run, DecisionKind::Rejected, reviewer, u"again"_s); });
    }
};

TEST_F(DecisionsTest, AcceptedRunKeepsWhatWasReviewed)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(plainRun(), risingMethod(), analyst);
    notebook->decide(id, DecisionKind::Accepted, reviewer, u""_s);
    const StoredRun stored = notebook->load(id);
    ASSERT_THAT(stored.decisions, SizeIs(1));
    const Decision &decision = stored.decisions[0];
    EXPECT_EQ(stored.summary.state, RunState::Accepted);
    EXPECT_EQ(decision.kind, DecisionKind::Accepted);
    EXPECT_EQ(decision.person, reviewer);
    EXPECT_EQ(decision.at, m_now);
    EXPECT_EQ(decision.programVersion, u"9.8.7"_s);
    EXPECT_TRUE(decision.acceptable);
    const assay::Method method = risingMethod();
    EXPECT_EQ(decision.evaluation, exchange::writeEvaluation(evaluation::evaluate(method, plainRun())));
    EXPECT_EQ(decision.contentHash,
              QString::fromLatin1(QCryptographicHash::hash(exchange::writeRun(plainRun(), &method),
                                                           QCryptographicHash::Sha256)
                                      .toHex()));
}

TEST_F(DecisionsTest, AcceptedRunTakesNoChange)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(plainRun(), risingMethod(), analyst);
    notebook->decide(id, DecisionKind::Accepted, reviewer, {});
    expectLocked(*notebook, id);
    EXPECT_THAT(notebook->load(id).readings, SizeIs(6));
    EXPECT_EQ(stateOf(*notebook, id), RunState::Accepted);
}

TEST_F(DecisionsTest, RejectedRunTakesNoChange)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(plainRun(), risingMethod(), analyst);
    notebook->decide(id, DecisionKind::Rejected, reviewer, u"blank too high"_s);
    expectLocked(*notebook, id);
    EXPECT_EQ(stateOf(*notebook, id), RunState::Rejected);
}

TEST_F(DecisionsTest, ReopenedRunIsOnTheBenchAndItsDecisionStays)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(plainRun(), risingMethod(), analyst);
    expectRefused([&] { notebook->reopen(id, reviewer, u"not decided yet"_s); });
    notebook->decide(id, DecisionKind::Rejected, reviewer, u"blank too high"_s);
    expectRefused([&] { notebook->reopen(id, reviewer, u" "_s); });
    expectRefused([&] { notebook->reopen({77}, reviewer, u"no such run"_s); });
    notebook->reopen(id, reviewer, u"blank read again"_s);
    EXPECT_EQ(stateOf(*notebook, id), RunState::OnBench);
    EXPECT_EQ(notebook->runs().at(0).decidedBy, QString());
    expectRefused([&] { notebook->reopen(id, reviewer, u"twice"_s); });
    notebook->correctReading(id, 0, u"A2"_s, 0.111, u"0.111"_s, analyst, u"read again"_s);
    notebook->decide(id, DecisionKind::Accepted, reviewer, {});
    const StoredRun stored = notebook->load(id);
    EXPECT_EQ(stored.summary.state, RunState::Accepted);
    ASSERT_THAT(stored.decisions, SizeIs(2));
    EXPECT_EQ(stored.decisions[0].reason, u"blank too high"_s);
    ASSERT_THAT(stored.reopenings, SizeIs(1));
    EXPECT_EQ(stored.reopenings[0].decision, 0);
    EXPECT_EQ(stored.reopenings[0].person, reviewer);
    EXPECT_EQ(stored.reopenings[0].reason, u"blank read again"_s);
    EXPECT_NE(stored.decisions[0].contentHash, stored.decisions[1].contentHash);
}

TEST_F(DecisionsTest, RejectingNeedsAReason)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(plainRun(), risingMethod(), analyst);
    for (const QString &blank : {QString(), u"  "_s, u"\u200B"_s})
        expectRefused([&] { notebook->decide(id, DecisionKind::Rejected, reviewer, blank); });
    EXPECT_EQ(stateOf(*notebook, id), RunState::OnBench);
}

TEST_F(DecisionsTest, AcceptingWhatDidNotPassNeedsAReason)
{
    const auto notebook = create();
    run::Run poor = plainRun();
    poor.tubes[0] = blank(0.100, 0.180); // above the method's limit of 0.05
    const RunId id = notebook->addRun(poor, risingMethod(), analyst);
    expectRefused([&] { notebook->decide(id, DecisionKind::Accepted, reviewer, u" "_s); });
    EXPECT_THAT(notebook->load(id).decisions, IsEmpty());
    notebook->decide(id, DecisionKind::Accepted, reviewer, u"blank cuvette was scratched, seen by both"_s);
    const StoredRun stored = notebook->load(id);
    EXPECT_FALSE(stored.decisions.at(0).acceptable);
    EXPECT_EQ(stored.decisions.at(0).reason, u"blank cuvette was scratched, seen by both"_s);
    EXPECT_THAT(notebook->verify().findings, IsEmpty());
}

TEST_F(DecisionsTest, WhatIsAnsweredSampleBySampleNeedsNoReasonOfTheRun)
{
    const auto notebook = create();
    run::Run run = plainRun();
    run.samples = {liquid("S"), liquid("T")};
    run.tubes = {blank(0.100, 0.110), blank(0.101, 0.111), sampleTube("S", 0.120, 0.600), sampleTube("S", 0.121, 0.601),
                 sampleTube("T", 0.120, 0.300), sampleTube("T", 0.121, 0.700)}; // T's tubes lie too far apart
    const RunId id = notebook->addRun(run, risingMethod(), analyst);
    const auto decide = [&](std::vector<SampleDecision> samples) {
        notebook->decide(id, RunDecision{DecisionKind::Accepted, reviewer, {}, {}, std::move(samples)});
    };
    using Of = SampleDecisionKind;
    expectRefused([&] { decide({}); });
    expectRefused([&] { decide({{u"T"_s, Of::Accepted, {}, {}}}); });
    expectRefused([&] { decide({{u"S"_s, Of::Repeat, {}, {}}}); }); // T is left as it is
    expectRefused([&] { decide({{u"S"_s, Of::Repeat, {}, {}}, {u"T"_s, Of::Repeat, {}, {}}}); }); // nothing is left
    decide({{u"T"_s, Of::Repeat, {}, {}}});
    const Decision made = notebook->load(id).decisions.at(0);
    EXPECT_EQ(made.reason, u"What did not pass is decided sample by sample; everything else passed."_s);
    EXPECT_FALSE(made.acceptable) << "not everything passed, and that stays on record";
    EXPECT_THAT(notebook->verify().findings, IsEmpty());
}

TEST_F(DecisionsTest, UnreadRunCanOnlyBeAcceptedWithAReason)
{
    const auto notebook = create();
    const RunId id = notebook->addRun(unreadRun(), risingMethod(), analyst);
    expectRefused([&] { notebook->decide(id, DecisionKind::Accepted, reviewer, {}); });
    expectRefused([&] { notebook->decide({55}, DecisionKind::Accepted, reviewer, {}); });
    notebook->decide(id, DecisionKind::Rejected, reviewer, u"lamp failed"_s);
    EXPECT_EQ(stateOf(*notebook, id), RunState::Rejected);
}

TEST_F(DecisionsTest, NothingIsDecidedOnARunThatWasChangedFromOutside)
{
    RunId id;
    {
        const auto notebook = create();
        id = notebook->addRun(plainRun(), risingMethod(), analyst);
    }
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"UPDATE reading SET absorbance = 0.7 WHERE id = 4"_s); });
    }
    const auto notebook = reopen();
    const Failure failure = failureOf([&] { notebook->decide(id, DecisionKind::Accepted, reviewer, {}); });
    EXPECT_EQ(failure.kind(), Kind::Damaged);
    EXPECT_TRUE(failure.sentence().contains("reading 4"_L1)) << failure.what();
    expectOneSentence(failure);
    EXPECT_EQ(stateOf(*notebook, id), RunState::OnBench);
}

TEST_F(DecisionsTest, HistoryTellsWhoDidWhatInOrder)
{
    const auto notebook = create();
    fill(*notebook);
    const std::vector<AuditEntry> history = notebook->history({1});
    QStringList acts;
    for (const AuditEntry &entry : history)
        acts << entry.action + u" by "_s + entry.person;
    EXPECT_EQ(acts.join(u'\n'),
              u"runAdded by Ines Kaddour\nrunAccepted by Tomas Brandl\nrunReopened by Tomas Brandl\n"
              "readingCorrected by Ines Kaddour\nrunAccepted by Tomas Brandl"_s);
    EXPECT_EQ(history[0].account, u"ines"_s);
    EXPECT_EQ(history[0].host, u"bench-2"_s);
    EXPECT_EQ(history[0].programVersion, u"9.8.7"_s);
    EXPECT_LT(history[0].at, history[1].at);
    EXPECT_EQ(history[0].run, RunId{1});
}

} // namespace plateau::test
