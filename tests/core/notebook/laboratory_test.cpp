// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using Kind = Failure::Kind;

class LaboratoryTest : public NotebookTest
{
protected:
    const QString person = u"Ines Kaddour"_s;
};

TEST_F(LaboratoryTest, SettingsAreTheUsualOnesUntilTheyAreSaved)
{
    const auto notebook = create();
    EXPECT_TRUE(notebook->laboratory() == planning::usualLaboratory());
}

TEST_F(LaboratoryTest, TheLastSavedCountsAndNoneIsLost)
{
    planning::Laboratory laboratory = planning::usualLaboratory();
    {
        const auto notebook = create();
        laboratory.name = u"Kaddour cidery"_s;
        laboratory.rackRows = 3;
        laboratory.handling.mix_s = 5.5;
        EXPECT_TRUE(notebook->saveLaboratory(laboratory, person));
        laboratory.overage_percent = 15;
        laboratory.glassware.pipettes.pop_back();
        EXPECT_TRUE(notebook->saveLaboratory(laboratory, person));
        const AuditHead before = notebook->auditHead();
        EXPECT_FALSE(notebook->saveLaboratory(laboratory, person));
        EXPECT_EQ(notebook->auditHead().hash, before.hash);
    }
    EXPECT_TRUE(reopen()->laboratory() == laboratory);
    EXPECT_THAT(reopen()->verify().findings, IsEmpty());
    EXPECT_EQ(RawFile(file()).value(u"SELECT count(*) FROM laboratory"_s).toInt(), 2);
}

TEST_F(LaboratoryTest, WhatCannotBeALaboratoryIsRefused)
{
    const auto notebook = create();
    planning::Laboratory laboratory = planning::usualLaboratory();
    laboratory.rackRows = 0;
    const Failure failure = failureOf([&] { notebook->saveLaboratory(laboratory, person); });
    EXPECT_EQ(failure.kind(), Kind::Refused);
    EXPECT_TRUE(failure.sentence().contains("/rack"_L1)) << failure.what();
    expectOneSentence(failure);
    EXPECT_TRUE(notebook->laboratory() == planning::usualLaboratory());
}

TEST_F(LaboratoryTest, DamagedSettingsAreSaidAndFound)
{
    create()->saveLaboratory(planning::usualLaboratory(), person);
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"UPDATE laboratory SET content = '{}'"_s); });
    }
    const auto notebook = reopen();
    EXPECT_EQ(failureOf([&] { notebook->laboratory(); }).kind(), Kind::Damaged);
    const std::vector<Finding> findings = notebook->verify().findings;
    ASSERT_FALSE(findings.empty());
    EXPECT_EQ(findings[0].place, u"laboratory 1"_s);
}

} // namespace plateau::test
