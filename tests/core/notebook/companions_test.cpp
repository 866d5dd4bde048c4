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

class CompanionsTest : public NotebookTest
{
protected:
    static RunId add(Notebook &book, const run::Run &run, const assay::Method &method)
    {
        return book.addRun(run, method, u"Ines Kaddour"_s);
    }
    static void accept(Notebook &book, RunId run)
    {
        book.decide(run, DecisionKind::Accepted, u"Tomas Brandl"_s, u""_s);
    }
    static std::optional<double> valueOf(const evaluation::Evaluation &evaluation, const QString &measurand)
    {
        const auto found = std::ranges::find(evaluation.results, measurand, &evaluation::Result::measurand);
        return found == evaluation.results.end() ? std::nullopt : found->value;
    }
    static std::optional<double> bound(const Notebook &book, RunId run)
    {
        return valueOf(evaluationOf(book.load(run)), u"bound"_s);
    }
};

TEST_F(CompanionsTest, ADerivedResultTakesFromTheAcceptedRunOfTheSameSample)
{
    const auto book = create();
    const RunId total = add(*book, totalRun(), totalMethod());
    const RunId free = add(*book, freeRun(), freeMethod());
    EXPECT_FALSE(bound(*book, total)) << "nobody accepted the other run yet";
    accept(*book, free);
    const double totalValue = valueOf(evaluationOf(book->load(total)), u"analyte"_s).value();
    const double freeValue = valueOf(evaluationOf(book->load(free)), u"analyte"_s).value();
    EXPECT_NEAR(bound(*book, total).value(), totalValue - freeValue, 1e-12);

    book->reopen(free, u"Tomas Brandl"_s, u"look again"_s);
    EXPECT_FALSE(bound(*book, total)) << "open again, it says nothing";
    book->decide(free, DecisionKind::Rejected, u"Tomas Brandl"_s, u"spoilt"_s);
    EXPECT_FALSE(bound(*book, total));
}

TEST_F(CompanionsTest, OnlyARunOfTheSameSampleAndTheSameWeekCounts)
{
    const auto book = create();
    run::Run other = freeRun();
    for (run::Sample &sample : other.samples)
        sample.id += u" of last year"_s;
    for (run::Tube &tube : other.tubes) {
        if (!tube.sample.isEmpty())
            tube.sample += u" of last year"_s;
    }
    accept(*book, add(*book, other, freeMethod()));
    const RunId total = add(*book, totalRun(), totalMethod());
    EXPECT_FALSE(bound(*book, total));
    accept(*book, add(*book, freeRun(), freeMethod()));
    EXPECT_TRUE(bound(*book, total));
    m_now = m_now.addDays(8);
    EXPECT_FALSE(bound(*book, add(*book, totalRun(), totalMethod()))) << "a week later it is another sample";
}

TEST_F(CompanionsTest, ADecisionKeepsWhatItRestedOn)
{
    const auto book = create();
    const RunId free = add(*book, freeRun(), freeMethod());
    accept(*book, free);
    const RunId total = add(*book, totalRun(), totalMethod());
    accept(*book, total);
    const double before = bound(*book, total).value();

    // The other run is corrected afterwards: this decision stands on what it was.
    book->reopen(free, u"Tomas Brandl"_s, u"misread"_s);
    book->correctReading(free, 1, u"A2"_s, 0.5, u"0.5"_s, u"Ines Kaddour"_s, u"misread"_s);
    EXPECT_EQ(bound(*book, total), before);
    const StoredRun stored = book->load(total);
    EXPECT_EQ(exchange::writeEvaluation(evaluationOf(stored)), stored.decisions.back().evaluation);
    const Verification verification = book->verify();
    EXPECT_THAT(verification.findings, IsEmpty());

    // Put back, it takes what holds now.
    book->reopen(total, u"Tomas Brandl"_s, u"the free run changed"_s);
    EXPECT_FALSE(bound(*book, total));
}

TEST_F(CompanionsTest, ADecisionKeepsTheMarksOfTheOtherRunToo)
{
    const auto book = create();
    const RunId free = add(*book, freeRun(), freeMethod());
    book->pipetting().markDone(free, {{{1, u"sample"_s, false}, 0.101}}, u"Ines Kaddour"_s);
    accept(*book, free);
    const RunId total = add(*book, totalRun(), totalMethod());
    accept(*book, total);
    const double before = bound(*book, total).value();
    book->reopen(free, u"Tomas Brandl"_s, u"another volume"_s);
    book->pipetting().markDone(free, {{{1, u"sample"_s, false}, 0.102}}, u"Ines Kaddour"_s);
    accept(*book, free);
    EXPECT_EQ(bound(*book, total), before);
    EXPECT_THAT(book->verify().findings, IsEmpty());
    book->reopen(total, u"Tomas Brandl"_s, u"the free run changed"_s);
    EXPECT_NE(bound(*book, total), before);
}

TEST_F(CompanionsTest, NothingIsDecidedOnARunThatWasChangedFromOutside)
{
    RunId total;
    {
        const auto book = create();
        accept(*book, add(*book, freeRun(), freeMethod()));
        total = add(*book, totalRun(), totalMethod());
    }
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"UPDATE reading SET absorbance = 0.3 WHERE id = 4"_s); });
    }
    const auto book = reopen();
    const Failure failure = failureOf([&] { accept(*book, total); });
    EXPECT_EQ(failure.kind(), Failure::Kind::Damaged);
    EXPECT_EQ(book->load(total).summary.state, RunState::OnBench);
}

} // namespace plateau::test
