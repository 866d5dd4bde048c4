// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/archive.h"

#include "core/notebook/keeping.h"
#include "tests/core/notebook/fixture.h"

#include <QFile>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

namespace {

/// Two years, the second begun on the wall's clock while it was still the first in UTC.
class Archive : public OpenNotebookTest
{
protected:
    void SetUp() override
    {
        OpenNotebookTest::SetUp();
        fill(*m_book);
        fillBench(*m_book);
        m_lastOf2026 = m_book->auditHead();
        m_runsOf2026 = m_book->runs().size();
        m_now = QDateTime(QDate(2027, 1, 1), QTime(0, 10), Qt::OffsetFromUTC, 3600);
        const RunId run = m_book->addRun(plainRun(), risingMethod(), person);
        m_book->decide(run, DecisionKind::Accepted, u"Tomas Brandl"_s, {});
        fillReview(*m_book);
    }

    AuditHead m_lastOf2026;
    std::size_t m_runsOf2026 = 0;
    const QString m_target = file(QStringLiteral("cellar-2026.plateau"));
};

} // namespace

TEST_F(Archive, HoldsEverythingUpToTheEndOfItsYearAndVerifies)
{
    EXPECT_THAT(m_book->keeping().years(), ElementsAre(2026, 2027));
    const AuditHead head = m_book->keeping().archive(2026, m_target);
    EXPECT_EQ(head.hash, m_lastOf2026.hash);
    const auto archive = Notebook::open(m_target, Access::ReadOnly, surroundings());
    const Verification verification = archive->verify();
    EXPECT_THAT(verification.findings, IsEmpty());
    EXPECT_EQ(verification.auditHead, m_lastOf2026.hash);
    EXPECT_EQ(archive->runs().size(), m_runsOf2026);
    EXPECT_FALSE(archive->persons().areSetUp());
    EXPECT_TRUE(archive->specifications().empty());
}

TEST_F(Archive, IsOfferedOfEveryYearThatHasAnAct)
{
    for (const int year : {2029, 2030, 2033}) { // one act each, beside dozens of the first two
        m_now = QDateTime(QDate(year, 6, 1), QTime(9, 0), Qt::OffsetFromUTC, 3600);
        m_book->addRun(plainRun(), risingMethod(), person);
    }
    EXPECT_THAT(m_book->keeping().years(), ElementsAre(2026, 2027, 2029, 2030, 2033));
    m_book.reset();
    const auto fresh = Notebook::create(file(u"new.plateau"_s), surroundings());
    EXPECT_THAT(fresh->keeping().years(), ElementsAre(2033));
}

TEST_F(Archive, MayOnlyBeReadAndChangesNothingInTheNotebook)
{
    const AuditHead before = m_book->auditHead();
    m_book->keeping().archive(2026, m_target);
    EXPECT_EQ(m_book->auditHead().hash, before.hash);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
    EXPECT_EQ(QFile::permissions(m_target) & QFileDevice::WriteOwner, QFileDevice::Permissions());
}

TEST_F(Archive, OfTheLastYearIsTheNotebookAsItIs)
{
    EXPECT_EQ(m_book->keeping().archive(2027, m_target).hash, m_book->auditHead().hash);
    const auto archive = Notebook::open(m_target, Access::ReadOnly, surroundings());
    EXPECT_EQ(archive->runs().size(), m_book->runs().size());
    EXPECT_THAT(archive->verify().findings, IsEmpty());
}

TEST_F(Archive, OfAYearWithoutActsOrUnderATakenNameIsRefused)
{
    const Failure empty = failureOf([&] { m_book->keeping().archive(2019, m_target); });
    EXPECT_EQ(empty.kind(), Failure::Kind::Refused);
    expectOneSentence(empty);
    EXPECT_FALSE(QFile::exists(m_target));
    write(m_target, "something");
    const Failure taken = failureOf([&] { m_book->keeping().archive(2026, m_target); });
    EXPECT_EQ(taken.kind(), Failure::Kind::Refused);
    EXPECT_EQ(bytesOf(m_target), "something");
}

} // namespace plateau::test
