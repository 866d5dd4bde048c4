// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class ShelfTest : public OpenNotebookTest
{
protected:
    Shelf &shelf() { return m_book->shelf(); }

    static planning::ShelfSample sample(const QString &id, const QString &product = u"perry"_s)
    {
        planning::ShelfSample told;
        told.id = id;
        told.product = product;
        return told;
    }
    /// plainRun of that sample, whose signals are made larger by more.
    RunId add(const QString &id, double more = 0, assay::Method method = risingMethod())
    {
        run::Run run = plainRun();
        run.method = method.id;
        run.samples[0].id = id;
        for (run::Tube &tube : run.tubes) {
            if (tube.role != run::Role::Sample)
                continue;
            tube.sample = id;
            tube.readings[u"A2"_s] = std::get<double>(tube.readings[u"A2"_s]) + more;
        }
        return m_book->addRun(run, method, person);
    }
    void decide(RunId run, DecisionKind kind = DecisionKind::Accepted)
    {
        m_book->decide(run, kind, person, u"seen by both"_s);
    }
    /// "S, S2 of run 3": ids, and the runs that ask for a repeat.
    QString waiting() const
    {
        QStringList lines;
        for (const WaitingSample &waits : m_book->shelf().waiting())
            lines << waits.sample.id +
                         (waits.repeat ? u" of run %1"_s.arg(waits.repeat->run.value) : QString());
        return lines.join(u", "_s);
    }

    /// A signal above the window, within what the photometer shows.
    static constexpr double tooStrong = 0.7;
};

TEST_F(ShelfTest, ASampleComesBackAsItWasTold)
{
    planning::ShelfSample told = sample(u"F-22"_s, u"dried apple rings"_s);
    told.matrix = assay::Matrix::Solid;
    told.form = run::Form::Solid;
    told.receivedAt = QDateTime(QDate(2026, 2, 27), QTime(16, 5), Qt::OffsetFromUTC, 3600);
    told.receivedFrom = u"Brandl orchards"_s;
    told.expected = {{u"analyte"_s, 1.2}, {u"other"_s, 0}};
    const ShelfId id = shelf().registerSample(told, person);
    m_book.reset();
    m_book = reopen();
    EXPECT_EQ(shelf().sample(id), told);
    const std::vector<WaitingSample> waits = shelf().waiting();
    ASSERT_THAT(waits, SizeIs(1));
    EXPECT_EQ(waits[0].sample, told);
    EXPECT_EQ(waits[0].shelf, id);
    EXPECT_FALSE(waits[0].repeat);
}

TEST_F(ShelfTest, AColumnOfSamplesIsRegisteredInOneAct)
{
    const int before = m_book->auditHead().entries;
    EXPECT_THAT(shelf().registerSamples({sample(u"P-1"_s), sample(u"P-2"_s), sample(u"P-3"_s)}, person),
                SizeIs(3));
    EXPECT_EQ(m_book->auditHead().entries, before + 1);
    EXPECT_EQ(waiting(), u"P-1, P-2, P-3"_s);
    expectRefused(
        [&] {
            shelf().registerSamples({sample(u"P-4"_s), sample(u"p-2 "_s)}, person);
        },
        "is among the samples that wait already"_L1);
    expectRefused(
        [&] {
            shelf().registerSamples({sample(u"P-5"_s), sample(u"P-5"_s)}, person);
        },
        "is among the samples that wait already"_L1);
    expectRefused([&] { shelf().registerSamples({}, person); }, "no sample is named"_L1);
    EXPECT_EQ(waiting(), u"P-1, P-2, P-3"_s);
}

TEST_F(ShelfTest, WhatWasReceivedFirstStandsFirst)
{
    const auto received = [&](const QString &id, int hour, int minute) {
        planning::ShelfSample told = sample(id);
        told.receivedAt = QDateTime(QDate(2026, 6, 8), QTime(hour, minute), Qt::OffsetFromUTC, 7200);
        return told;
    };
    shelf().registerSamples({sample(u"untold"_s), received(u"P-1"_s, 14, 46), received(u"P-2"_s, 15, 9)}, person);
    shelf().registerSamples({received(u"P-3"_s, 14, 54), received(u"P-4"_s, 14, 46), sample(u"untold too"_s)}, person);
    EXPECT_EQ(waiting(), u"P-1, P-4, P-3, P-2, untold, untold too"_s);
}

TEST_F(ShelfTest, WhatIsToldInsteadIsARowMore)
{
    const ShelfId id = shelf().registerSample(sample(u"P-1"_s), person);
    shelf().registerSample(sample(u"P-2"_s), person);
    shelf().change(id, sample(u"P-11"_s, u"cider"_s), person);
    EXPECT_EQ(shelf().sample(id), sample(u"P-11"_s, u"cider"_s));
    expectRefused([&] { shelf().change(id, sample(u"P-11"_s, u"cider"_s), person); }, "already"_L1);
    expectRefused([&] { shelf().change(id, sample(u"P-2"_s), person); }, "is among the samples that wait already"_L1);
    add(u"P-11"_s);
    expectRefused([&] { shelf().change(id, sample(u"P-12"_s), person); }, "keeps its id"_L1);
    shelf().change(id, sample(u"P-11"_s, u"perry"_s), person);
    m_book.reset();
    EXPECT_EQ(RawFile(file()).value(u"SELECT group_concat(product) FROM sample_detail"_s).toString(),
              u"perry,perry,cider,perry"_s);
}

TEST_F(ShelfTest, ARunTakesASampleFromTheShelfUnlessItIsRejected)
{
    shelf().registerSamples({sample(u"P-1"_s), sample(u"P-2"_s)}, person);
    const RunId run = add(u"P-1"_s);
    EXPECT_EQ(waiting(), u"P-2"_s) << "on the bench";
    decide(run, DecisionKind::Rejected);
    EXPECT_EQ(waiting(), u"P-1, P-2"_s);
    m_book->reopen(run, person, u"it was fine"_s);
    decide(run);
    EXPECT_EQ(waiting(), u"P-2"_s);
}

TEST_F(ShelfTest, AnIdMayComeAgainAfterItsRun)
{
    const ShelfId first = shelf().registerSample(sample(u"Tank 4"_s), person);
    decide(add(u"Tank 4"_s));
    EXPECT_EQ(waiting(), QString());
    const ShelfId second = shelf().registerSample(sample(u"Tank 4"_s), person);
    EXPECT_NE(first, second);
    EXPECT_EQ(waiting(), u"Tank 4"_s) << "the run before was of last month's";
}

TEST_F(ShelfTest, AWithdrawnSampleWaitsNoMore)
{
    const ShelfId id = shelf().registerSample(sample(u"P-1"_s), person);
    expectRefused([&] { shelf().withdraw(id, person, u" "_s); }, "needs a reason"_L1);
    expectRefused([&] { shelf().withdraw({9}, person, u"lost"_s); }, "No sample number 9"_L1);
    shelf().withdraw(id, person, u"bottle broke"_s);
    EXPECT_EQ(waiting(), QString());
    expectRefused([&] { shelf().withdraw(id, person, u"again"_s); }, "was withdrawn"_L1);
    expectRefused([&] { shelf().change(id, sample(u"P-2"_s), person); }, "was withdrawn"_L1);
    EXPECT_EQ(shelf().sample(id).id, u"P-1"_s);
    shelf().registerSample(sample(u"P-1"_s), person);
    EXPECT_EQ(waiting(), u"P-1"_s);
}

TEST_F(ShelfTest, ARepeatWaitsWithItsAdviceUntilALaterRunHoldsTheSample)
{
    const RunId strong = add(u"P-1"_s, tooStrong);
    EXPECT_EQ(waiting(), QString()) << "nobody decided yet";
    decide(strong);
    const std::vector<WaitingSample> waits = shelf().waiting();
    ASSERT_THAT(waits, SizeIs(1));
    EXPECT_EQ(waits[0].sample.id, u"P-1"_s);
    EXPECT_FALSE(waits[0].shelf);
    ASSERT_TRUE(waits[0].repeat);
    EXPECT_EQ(waits[0].repeat->run, strong);
    EXPECT_EQ(waits[0].repeat->method, u"rising"_s);
    ASSERT_THAT(waits[0].repeat->advice, SizeIs(1));
    EXPECT_EQ(waits[0].repeat->advice[0].measurand, u"analyte"_s);
    // Net signal 1.2; half of it is within 0.8.
    EXPECT_EQ(waits[0].repeat->advice[0].advice.kind, evaluation::Advice::Kind::Dilute);
    EXPECT_EQ(waits[0].repeat->advice[0].advice.factor, 2);
    EXPECT_THAT(waits[0].repeat->advice[0].advice.steps, SizeIs(1));
    EXPECT_NEAR(waits[0].repeat->found.at(u"analyte"_s), 1.2 * risingFactor_g_per_L, 1e-9);

    assay::Method other = risingMethod();
    other.id = u"other"_s;
    add(u"P-1"_s, 0, other);
    EXPECT_EQ(waiting(), u"P-1 of run 1"_s) << "that was for something else";
    const RunId repeat = add(u"P-1"_s);
    EXPECT_EQ(waiting(), QString());
    decide(repeat, DecisionKind::Rejected);
    EXPECT_EQ(waiting(), u"P-1 of run 1"_s) << "rejected, it settles nothing";
    decide(add(u"P-1"_s));
    EXPECT_EQ(waiting(), QString());
}

TEST_F(ShelfTest, TheNewestAdviceCounts)
{
    decide(add(u"P-1"_s, tooStrong));
    decide(add(u"P-1"_s, tooStrong), DecisionKind::Rejected);
    EXPECT_EQ(waiting(), u"P-1 of run 2"_s);
    m_book->reopen({2}, person, u"look again"_s);
    EXPECT_EQ(waiting(), QString()) << "on the bench it holds the sample";
}

TEST_F(ShelfTest, ARegisteredSampleOfARejectedRunWaitsOnceWithTheAdvice)
{
    const ShelfId id = shelf().registerSample(sample(u"P-1"_s, u"cider"_s), person);
    shelf().registerSample(sample(u"P-0"_s), person);
    decide(add(u"P-1"_s, tooStrong), DecisionKind::Rejected);
    EXPECT_EQ(waiting(), u"P-1 of run 1, P-0"_s);
    EXPECT_EQ(shelf().waiting()[0].shelf, id);
    EXPECT_EQ(shelf().waiting()[0].sample.product, u"cider"_s);
}

TEST_F(ShelfTest, ARepeatKnowsWhatWasToldOfTheSample)
{
    shelf().registerSample(sample(u"P-1"_s, u"cider"_s), person);
    decide(add(u"P-1"_s, tooStrong));
    EXPECT_EQ(waiting(), u"P-1 of run 1"_s);
    EXPECT_EQ(shelf().waiting()[0].sample.product, u"cider"_s);
    EXPECT_FALSE(shelf().waiting()[0].shelf) << "an accepted run held it";
}

TEST_F(ShelfTest, ARunTakesTheLatestRegistrationThatNoEarlierRunTook)
{
    const auto registered = [&](int day) {
        planning::ShelfSample told = sample(u"P-1"_s, u"cider"_s);
        told.receivedAt = QDateTime(QDate(2026, 3, day), QTime(8, 0), Qt::OffsetFromUTC, 3600);
        shelf().registerSample(told, person);
    };
    const auto dayOf = [&](RunId run) {
        const auto taken = shelf().takenBy(run, u"P-1"_s);
        return taken && taken->receivedAt ? taken->receivedAt->date().day() : 0;
    };
    const RunId unregistered = add(u"P-1"_s);
    EXPECT_EQ(dayOf(unregistered), 0);
    registered(2);
    const RunId first = add(u"P-1"_s);
    EXPECT_EQ(dayOf(first), 2);
    EXPECT_EQ(dayOf(unregistered), 0) << "it came after that run";
    decide(first);
    const RunId byHand = add(u"P-1"_s);
    EXPECT_EQ(dayOf(byHand), 0) << "another sample of the name had that one";
    registered(5);
    const RunId second = add(u"P-1"_s);
    EXPECT_EQ(dayOf(second), 5);
    EXPECT_EQ(dayOf(first), 2);
    decide(second, DecisionKind::Rejected);
    EXPECT_EQ(dayOf(add(u"P-1"_s)), 5) << "a rejected run took nothing";
    EXPECT_FALSE(shelf().takenBy(first, u"P-2"_s));
}

TEST_F(ShelfTest, ARepeatHasNoDayOfAnotherSampleOfItsName)
{
    decide(add(u"P-1"_s, tooStrong));
    planning::ShelfSample told = sample(u"P-1"_s, u"cider"_s);
    told.receivedAt = QDateTime(QDate(2026, 3, 2), QTime(8, 0), Qt::OffsetFromUTC, 3600);
    told.receivedFrom = u"tank hall"_s;
    shelf().withdraw(shelf().registerSample(told, person), person, u"poured away"_s);
    ASSERT_EQ(waiting(), u"P-1 of run 1"_s);
    EXPECT_EQ(shelf().waiting()[0].sample.product, u"cider"_s);
    EXPECT_FALSE(shelf().waiting()[0].sample.receivedAt);
    EXPECT_TRUE(shelf().waiting()[0].sample.receivedFrom.isEmpty());
}

TEST_F(ShelfTest, ARepeatCanBeDoneWithout)
{
    decide(add(u"P-1"_s, tooStrong));
    expectRefused([&] { shelf().waiveRepeat({1}, u"P-1"_s, person, {}); }, "needs a reason"_L1);
    expectRefused([&] { shelf().waiveRepeat({1}, u"P-2"_s, person, u"poured away"_s); }, "has no repeat"_L1);
    expectRefused([&] { shelf().waiveRepeat({7}, u"P-1"_s, person, u"poured away"_s); }, "no run 7"_L1);
    shelf().waiveRepeat({1}, u"P-1"_s, person, u"poured away"_s);
    EXPECT_EQ(waiting(), QString());
    expectRefused([&] { shelf().waiveRepeat({1}, u"P-1"_s, person, u"again"_s); }, "has no repeat"_L1);
    EXPECT_EQ(m_book->history({1}).back().action, u"repeatWaived"_s);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

TEST_F(ShelfTest, LastResultsAreThoseOfAcceptedRunsOfTheProduct)
{
    shelf().registerSamples({sample(u"P-1"_s), sample(u"P-2"_s, u"Perry "_s), sample(u"C-1"_s, u"cider"_s)},
                            person);
    for (const QString &id : {u"P-1"_s, u"P-2"_s, u"C-1"_s})
        decide(add(id, id == u"P-2"_s ? -0.1 : 0.0));
    shelf().registerSamples({sample(u"P-3"_s), sample(u"P-4"_s)}, person);
    decide(add(u"P-3"_s), DecisionKind::Rejected);
    decide(add(u"P-4"_s, tooStrong));
    add(u"P-1"_s);
    const std::vector<PastResult> results = shelf().lastResults(u"PERRY"_s, u"analyte"_s);
    ASSERT_THAT(results, SizeIs(2)) << "neither rejected, nor to be repeated, nor undecided, nor cider";
    EXPECT_EQ(results[0].run, RunId{2});
    EXPECT_EQ(results[0].result.sample, u"P-2"_s);
    // V M / (e d v): 2.12 x 100 / (6300 x 0.1) = 0.33651 g/L for one of net signal, here 0.4 and 0.5.
    EXPECT_NEAR(results[0].result.value.value(), 0.4 * 2.12 * 100 / 630, 1e-9);
    EXPECT_NEAR(results[1].result.value.value(), 0.5 * 2.12 * 100 / 630, 1e-9);
    EXPECT_EQ(results[1].decidedAt, m_book->load({1}).decisions.back().at);
    EXPECT_THAT(shelf().lastResults(u"perry"_s, u"analyte"_s, 1), SizeIs(1));
    EXPECT_THAT(shelf().lastResults(u"perry"_s, u"other"_s), IsEmpty());
    EXPECT_THAT(shelf().lastResults({}, u"analyte"_s), IsEmpty());
}

TEST_F(ShelfTest, WhatCannotBeASampleIsRefused)
{
    expectRefused([&] { shelf().registerSample(sample(u" "_s), person); }, "/id"_L1);
    expectRefused([&] { shelf().registerSample(sample(u"P-1"_s, u"a\nb"_s), person); }, "/product"_L1);
    planning::ShelfSample told = sample(u"P-1"_s);
    told.expected = {{u"analyte"_s, qQNaN()}};
    expectRefused([&] { shelf().registerSample(told, person); }, "/expected/analyte"_L1);
    told.expected.clear();
    told.receivedAt = QDateTime();
    expectRefused([&] { shelf().registerSample(told, person); }, "/receivedAt"_L1);
    expectRefused([&] { shelf().sample({3}); }, "No sample number 3"_L1);
}

} // namespace plateau::test
