// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;

/// What results are read against, while limits and settings change.
class BasisTest : public OpenNotebookTest
{
protected:
    void SetUp() override
    {
        OpenNotebookTest::SetUp();
        m_run = m_book->addRun(plainRun(), risingMethod(), person);
    }
    void saveLimit(double upper)
    {
        std::vector<evaluation::Specification> changed = limits();
        changed[0].upper = upper;
        m_book->saveSpecifications(changed, person, u"as agreed"_s);
    }
    void saveUnit(evaluation::ReportUnit unit)
    {
        planning::Laboratory laboratory = planning::usualLaboratory();
        laboratory.reportUnits = {{u"Perry, tank 4"_s, {}, unit}};
        m_book->saveLaboratory(laboratory, person);
    }
    void accept() { m_book->decide(m_run, DecisionKind::Accepted, u"Tomas Brandl"_s, {}); }
    void expectBasis(const DecisionBasis &basis, double upper, evaluation::ReportUnit unit, int version)
    {
        ASSERT_THAT(basis.specifications, SizeIs(1));
        EXPECT_EQ(basis.specifications[0].upper, upper);
        ASSERT_THAT(basis.laboratory.reportUnits, SizeIs(1));
        EXPECT_EQ(basis.laboratory.reportUnits[0].unit, unit);
        ASSERT_TRUE(basis.specificationsSaving);
        EXPECT_EQ(basis.specificationsSaving->version, version);
        EXPECT_EQ(basis.specificationsSaving->person, person);
    }
    /// In May one limit and unit, in June another; decided in both.
    void decideTwice()
    {
        saveLimit(4.5);
        saveUnit(evaluation::ReportUnit::GramPerLitre);
        accept();
        saveLimit(3);
        saveUnit(evaluation::ReportUnit::MilligramPerLitre);
        m_book->reopen(m_run, u"Tomas Brandl"_s, u"look again"_s);
        accept();
        saveLimit(2);
        saveUnit(evaluation::ReportUnit::MilligramPer100mL);
    }
    void expectBothRevisions()
    {
        expectBasis(m_book->decisionBasis(m_run, 1), 4.5, evaluation::ReportUnit::GramPerLitre, 1);
        expectBasis(m_book->decisionBasis(m_run, 2), 3, evaluation::ReportUnit::MilligramPerLitre, 2);
        expectBasis(m_book->decisionBasis(m_run), 3, evaluation::ReportUnit::MilligramPerLitre, 2);
    }

    RunId m_run;
};

TEST_F(BasisTest, WhereNobodySavedAnythingItIsTheUsual)
{
    accept();
    saveLimit(4.5);
    saveUnit(evaluation::ReportUnit::MilligramPerLitre);
    const DecisionBasis basis = m_book->decisionBasis(m_run);
    EXPECT_THAT(basis.specifications, IsEmpty());
    EXPECT_FALSE(basis.specificationsSaving);
    EXPECT_TRUE(basis.laboratory == planning::usualLaboratory());
}

TEST_F(BasisTest, ARunOnTheBenchIsReadAgainstWhatHoldsNow)
{
    saveLimit(4.5);
    saveUnit(evaluation::ReportUnit::GramPerLitre);
    expectBasis(m_book->decisionBasis(m_run), 4.5, evaluation::ReportUnit::GramPerLitre, 1);
    saveLimit(3);
    EXPECT_EQ(m_book->decisionBasis(m_run).specifications.at(0).upper, 3);
}

TEST_F(BasisTest, ADecidedRunAgainstWhatHeldWhenItWasDecided)
{
    decideTwice();
    expectBothRevisions();
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
    m_book->reopen(m_run, u"Tomas Brandl"_s, u"and again"_s);
    expectBasis(m_book->decisionBasis(m_run), 2, evaluation::ReportUnit::MilligramPer100mL, 3);
    expectRefused([&] { m_book->decisionBasis(m_run, 3); }, "has no revision 3"_L1);
    expectRefused([&] { m_book->decisionBasis(m_run, 0); }, "has no revision 0"_L1);
}

TEST_F(BasisTest, OfDecisionsFromBeforeItWasKeptTheAuditTrailTells)
{
    decideTwice();
    m_book.reset();
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"DELETE FROM decision_basis"_s); });
    }
    m_book = reopen(Access::ReadOnly);
    expectBothRevisions();
}

} // namespace plateau::test
