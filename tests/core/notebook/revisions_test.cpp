// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/writers.h"
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class RevisionsTest : public OpenNotebookTest
{
protected:
    void SetUp() override
    {
        OpenNotebookTest::SetUp();
        m_run = m_book->addRun(twoSampleRun(), risingMethod(), person);
    }
    static double reading(const StoredRun &stored, size_t tube)
    {
        return std::get<double>(stored.run.tubes[tube].readings.at(u"A2"_s));
    }

    RunId m_run;
    const QString reviewer = u"Tomas Brandl"_s;
};

TEST_F(RevisionsTest, EachDecisionAfterAReopeningIsTheNext)
{
    EXPECT_EQ(m_book->load(m_run).summary.revision, 1);
    m_book->decide(m_run, DecisionKind::Accepted, reviewer, {});
    EXPECT_EQ(m_book->load(m_run).summary.revision, 1);
    m_book->reopen(m_run, reviewer, u"tube 2 misread"_s);
    EXPECT_EQ(m_book->load(m_run).summary.revision, 2) << "the one that is being made";
    m_book->decide(m_run, DecisionKind::Accepted, reviewer, {});
    EXPECT_EQ(m_book->load(m_run).summary.revision, 2);
    EXPECT_EQ(m_book->runs().at(0).revision, 2);
}

TEST_F(RevisionsTest, AnEarlierOneIsReadAsItWas)
{
    m_book->decide(m_run, {DecisionKind::Accepted,
                           reviewer,
                           {},
                           {},
                           {{u"T"_s, SampleDecisionKind::Rejected, u"mixed up"_s, {}}}});
    const evaluation::Evaluation then = evaluationOf(m_book->load(m_run));
    m_book->reopen(m_run, reviewer, u"tube 2 misread"_s);
    m_book->correctReading(m_run, 1, u"A2"_s, 0.640, u"0.640"_s, person, u"misread"_s);
    m_book->pipetting().markSpoilt(m_run, 4, person, u"scratched"_s);
    m_book->decide(m_run, DecisionKind::Rejected, reviewer, u"the lamp"_s);
    m_book->reopen(m_run, reviewer, u"the lamp was good"_s);

    const StoredRun first = m_book->loadRevision(m_run, 1);
    EXPECT_EQ(first.summary.revision, 1);
    EXPECT_EQ(first.summary.state, RunState::Accepted);
    EXPECT_EQ(first.summary.decidedBy, reviewer);
    EXPECT_TRUE(first.summary.acceptable);
    EXPECT_EQ(first.summary.samplesRejected, 1);
    EXPECT_EQ(first.summary.readingsTaken, 10);
    EXPECT_EQ(first.summary.readingsPlanned, 10);
    EXPECT_EQ(reading(first, 1), 0.630);
    EXPECT_EQ(first.run.tubes[4].spoilt, QString());
    EXPECT_THAT(first.readings, SizeIs(10));
    EXPECT_THAT(first.marks, IsEmpty());
    EXPECT_THAT(first.decisions, SizeIs(1));
    EXPECT_THAT(first.reopenings, IsEmpty());
    EXPECT_EQ(evaluationOf(first), then);
    EXPECT_EQ(exchange::writeEvaluation(evaluationOf(first)), first.decisions[0].evaluation);

    const StoredRun second = m_book->loadRevision(m_run, 2);
    EXPECT_EQ(second.summary.state, RunState::Rejected);
    EXPECT_EQ(second.summary.samplesRejected, 0);
    EXPECT_EQ(second.summary.readingsPlanned, 8);
    EXPECT_EQ(reading(second, 1), 0.640);
    EXPECT_EQ(second.run.tubes[4].spoilt, u"scratched"_s);
    EXPECT_THAT(second.readings, SizeIs(11));
    EXPECT_THAT(second.decisions, SizeIs(2));
    EXPECT_THAT(second.reopenings, SizeIs(1));
    EXPECT_EQ(exchange::writeEvaluation(evaluationOf(second)), second.decisions[1].evaluation);

    EXPECT_EQ(m_book->load(m_run).summary.revision, 3);
    EXPECT_EQ(m_book->load(m_run).summary.state, RunState::OnBench);
    EXPECT_EQ(m_book->verify().decisionsChecked, 2);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(RevisionsTest, OneThatWasNeverDecidedIsRefused)
{
    expectRefused([&] { m_book->loadRevision(m_run, 1); }, "no revision 1"_L1);
    m_book->decide(m_run, DecisionKind::Accepted, reviewer, {});
    EXPECT_EQ(m_book->loadRevision(m_run, 1).summary.revision, 1);
    for (const int none : {-1, 0, 2})
        expectRefused([&] { m_book->loadRevision(m_run, none); }, "no revision"_L1);
    expectRefused([&] { m_book->loadRevision({99}, 1); }, "no run 99"_L1);
}

TEST_F(RevisionsTest, VerifyingFindsWhatWasChangedInAnEarlierOne)
{
    m_book->decide(m_run, DecisionKind::Accepted, reviewer, {});
    m_book->reopen(m_run, reviewer, u"tube 2 misread"_s);
    m_book->correctReading(m_run, 1, u"A2"_s, 0.640, u"0.640"_s, person, u"misread"_s);
    m_book->decide(m_run, DecisionKind::Accepted, reviewer, {});
    m_book.reset();
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"UPDATE reading SET absorbance = 0.62 WHERE id = 4"_s); });
    }
    QStringList places; // of the reading that only the first decision rests on
    for (const Finding &finding : reopen(Access::ReadOnly)->verify().findings)
        places << finding.place;
    EXPECT_TRUE(places.contains(u"reading 4"_s));
    EXPECT_TRUE(places.contains(u"decision 1 on run 1"_s));
    EXPECT_FALSE(places.contains(u"decision 2 on run 1"_s));
}

} // namespace plateau::test
