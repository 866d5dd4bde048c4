// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

#include <functional>

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

TEST_F(LaboratoryTest, LimitsAreKeptInVersionsWithAReason)
{
    {
        const auto notebook = create();
        EXPECT_THAT(notebook->specifications(), IsEmpty());
        EXPECT_FALSE(notebook->specificationsSaving());
        EXPECT_FALSE(notebook->saveSpecifications({}, person, u"none"_s)) << "there are none anyway";
        EXPECT_TRUE(notebook->saveSpecifications(limits(), person, u"agreed with the customer"_s));
        const AuditHead before = notebook->auditHead();
        EXPECT_FALSE(notebook->saveSpecifications(limits(), person, u"again"_s));
        EXPECT_EQ(notebook->auditHead().hash, before.hash);
        std::vector<evaluation::Specification> changed = limits();
        changed[0].upper = 4;
        EXPECT_TRUE(notebook->saveSpecifications(changed, u"Tomas Brandl"_s, u"tightened"_s));
    }
    auto notebook = reopen();
    ASSERT_EQ(notebook->specifications().size(), 1U);
    EXPECT_EQ(notebook->specifications()[0].upper, 4);
    EXPECT_EQ(notebook->specificationsSaving()->version, 2);
    EXPECT_EQ(notebook->specificationsSaving()->person, u"Tomas Brandl"_s);
    EXPECT_THAT(notebook->verify().findings, IsEmpty());
    notebook.reset();
    EXPECT_EQ(RawFile(file()).value(u"SELECT group_concat(reason, '; ') FROM specifications"_s).toString(),
              u"agreed with the customer; tightened"_s);
}

TEST_F(LaboratoryTest, LimitsThatAreNoneAreRefused)
{
    const auto notebook = create();
    std::vector<evaluation::Specification> limitless = limits();
    limitless[0].upper.reset();
    for (const auto &action : std::vector<std::function<void()>>{
             [&] { notebook->saveSpecifications(limitless, person, u"why"_s); },
             [&] { notebook->saveSpecifications(limits(), person, u" "_s); },
             [&] { notebook->saveSpecifications(limits(), u" "_s, u"why"_s); }}) {
        const Failure failure = failureOf(action);
        EXPECT_EQ(failure.kind(), Kind::Refused);
        expectOneSentence(failure);
    }
    EXPECT_THAT(notebook->specifications(), IsEmpty());
}

TEST_F(LaboratoryTest, DamagedLimitsAreSaidAndFound)
{
    create()->saveSpecifications(limits(), person, u"new"_s);
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"UPDATE specifications SET content = '{}'"_s); });
    }
    const auto notebook = reopen();
    EXPECT_EQ(failureOf([&] { notebook->specifications(); }).kind(), Kind::Damaged);
    EXPECT_EQ(notebook->verify().findings.at(0).place, u"specifications 1"_s);
}

} // namespace plateau::test
