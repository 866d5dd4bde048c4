// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"
#include "tests/support/keyedchecks.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class EquipmentBookTest : public OpenNotebookTest
{
protected:
    EquipmentBook &equipment() { return m_book->equipment(); }
    const QDate day{2026, 3, 1};
};

TEST_F(EquipmentBookTest, AnItemComesBackAsItWasAdded)
{
    const ItemId id = equipment().add(photometer(), person);
    equipment::Item piston = pistonPipette();
    piston.number = u"inv. 4711"_s;
    const ItemId second = equipment().add(piston, person);
    const auto all = equipment().all();
    ASSERT_THAT(all, SizeIs(2));
    EXPECT_EQ(all[0].id, id.value);
    EXPECT_EQ(all[0].item, photometer());
    EXPECT_EQ(all[1].id, second.value);
    EXPECT_EQ(all[1].item, piston);
}

TEST_F(EquipmentBookTest, ACheckComesBackToTheLastBitWithItsGaps)
{
    const ItemId id = equipment().add(pistonPipette(), person);
    equipment::Check check = volumeCheck(pistonPipette(), 199.4, day);
    check.note = u"new seal"_s;
    check.source = u"balance B-1"_s;
    const CheckId stored = equipment().addCheck(id, check, person);
    m_book.reset(); // it has the file for itself
    m_book = reopen();
    const auto all = equipment().all();
    ASSERT_THAT(all[0].checks, SizeIs(1));
    EXPECT_EQ(all[0].checks[0].id, stored.value);
    EXPECT_EQ(all[0].checks[0].check, check);
    EXPECT_EQ(all[0].checks[0].of, pistonPipette());
    EXPECT_EQ(all[0].checks[0].person, person);
    EXPECT_FALSE(all[0].checks[0].withdrawn);
    m_book.reset();
    RawFile raw(file());
    EXPECT_EQ(raw.value(u"SELECT passed FROM equipment_check"_s).toInt(), 1);
    EXPECT_EQ(raw.value(u"SELECT count(*) FROM equipment_value"_s).toInt(), 40)
        << "ten masses and the thirty volumes that are set";
}

TEST_F(EquipmentBookTest, OutcomesAreWorkedOutAgainByVerification)
{
    const ItemId id = equipment().add(pistonPipette(), person);
    const CheckId good = equipment().addCheck(id, volumeCheck(pistonPipette(), 199.4, day), person);
    const CheckId bad = equipment().addCheck(id, volumeCheck(pistonPipette(), 190, day), person);
    const CheckId withdrawn = equipment().addCheck(id, volumeCheck(pistonPipette(), 199.2, day), person);
    equipment().withdrawCheck(withdrawn, person, u"another pipette"_s);
    EXPECT_EQ(m_book->verify().equipmentChecked, 3);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
    m_book.reset();
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"UPDATE equipment_check SET passed = 1 - passed"_s); });
    }
    m_version = u"9.8.8"_s;
    std::vector<notebook::Finding> outcomes;
    for (const notebook::Finding &finding : reopen(Access::ReadOnly)->verify().findings) {
        if (finding.place.startsWith(u"check "_s))
            outcomes.push_back(finding);
    }
    ASSERT_THAT(outcomes, SizeIs(3)) << "what was taken back has an outcome as well";
    const auto placeOf = [](CheckId check) { return u"check %1 of 2026-03-01 of "_s.arg(check.value); };
    EXPECT_TRUE(outcomes[0].place.startsWith(placeOf(good))) << outcomes[0].place.toStdString();
    EXPECT_TRUE(outcomes[0].message.startsWith(u"it is stored as failed"_s));
    EXPECT_TRUE(outcomes[0].message.endsWith(u"(stored with version 9.8.7, verified with 9.8.8)"_s))
        << outcomes[0].message.toStdString();
    EXPECT_TRUE(outcomes[1].place.startsWith(placeOf(bad)));
    EXPECT_TRUE(outcomes[1].message.startsWith(u"it is stored as passed"_s));
    EXPECT_TRUE(outcomes[1].message.contains(u"µL"_s)) << "the figure that fails it";
    EXPECT_TRUE(outcomes[2].place.startsWith(placeOf(withdrawn)));
}

TEST_F(EquipmentBookTest, AChangedWeighingIsNamedWithTheOutcomeItGives)
{
    const ItemId id = equipment().add(pistonPipette(), person);
    equipment().addCheck(id, volumeCheck(pistonPipette(), 199.4, day), person);
    m_book.reset();
    {
        RawFile raw(file());
        raw.behindTheTriggers(
            [&] { raw.execute(u"UPDATE equipment_value SET value = value * 0.9 WHERE column_place = 1"_s); });
    }
    std::vector<notebook::Finding> outcomes;
    for (const notebook::Finding &finding : reopen(Access::ReadOnly)->verify().findings) {
        if (finding.place.startsWith(u"check "_s))
            outcomes.push_back(finding);
    }
    ASSERT_THAT(outcomes, SizeIs(1));
    EXPECT_TRUE(outcomes[0].message.startsWith(u"it is stored as passed"_s));
    EXPECT_FALSE(outcomes[0].message.contains(u"version"_s)) << "the same one";
}

TEST_F(EquipmentBookTest, AFailedCheckIsStoredAsFailed)
{
    const ItemId id = equipment().add(pistonPipette(), person);
    equipment().addCheck(id, volumeCheck(pistonPipette(), 190, day), person);
    m_book.reset();
    EXPECT_EQ(RawFile(file()).value(u"SELECT passed FROM equipment_check"_s).toInt(), 0);
}

TEST_F(EquipmentBookTest, ACheckKeepsTheDescriptionOfItsTime)
{
    const ItemId id = equipment().add(pistonPipette(), person);
    equipment().addCheck(id, volumeCheck(pistonPipette(), 199.4, day), person);
    equipment::Item narrow = pistonPipette();
    narrow.smallest_mL = 0.05;
    equipment().change(id, narrow, person, u"not used below"_s);
    const auto all = equipment().all();
    ASSERT_THAT(all, SizeIs(1));
    EXPECT_EQ(all[0].item, narrow);
    EXPECT_EQ(all[0].checks[0].of, pistonPipette());
}

TEST_F(EquipmentBookTest, ACheckIsTakenBackOnce)
{
    const ItemId id = equipment().add(pistonPipette(), person);
    const CheckId check = equipment().addCheck(id, volumeCheck(pistonPipette(), 190, day), person);
    expectRefused([&] { equipment().withdrawCheck(check, person, u" "_s); }, "say why"_L1);
    equipment().withdrawCheck(check, person, u"wrong pipette"_s);
    EXPECT_TRUE(equipment().all()[0].checks[0].withdrawn);
    expectRefused([&] { equipment().withdrawCheck(check, person, u"again"_s); }, "already"_L1);
    expectRefused([&] { equipment().withdrawCheck({99}, person, u"none"_s); }, "no check number 99"_L1);
}

TEST_F(EquipmentBookTest, WhatCannotBeIsRefused)
{
    const ItemId id = equipment().add(pistonPipette(), person);
    expectRefused([&] { equipment().add(pistonPipette(), person); }, "already; give this one another"_L1);
    expectRefused([&] { equipment().add(equipment::Item{}, person); }, "/name"_L1);
    expectRefused([&] { equipment().change(id, pistonPipette(), person, u"why"_s); }, "reads like this already"_L1);
    expectRefused([&] { equipment().change(id, photometer(), person, u"why"_s); },
                  "stays a piston pipette"_L1);
    expectRefused([&] { equipment().change({99}, photometer(), person, u"why"_s); }, "no item number 99"_L1);
    expectRefused(
        [&] { equipment().addCheck(id, volumeCheck(pistonPipette(), 199.4, QDate(2027, 1, 1)), person); },
        "not in the future"_L1);
    expectRefused(
        [&] {
            equipment().addCheck(id, blankCheck(pistonPipette(), equipment::Aspect::Volume, day), person);
        },
        "ten are needed"_L1);
    equipment::Item gone = pistonPipette();
    gone.inUse = false;
    equipment().change(id, gone, person, u"broken"_s);
    expectRefused([&] { equipment().addCheck(id, volumeCheck(pistonPipette(), 199.4, day), person); },
                  "out of use"_L1);
    EXPECT_THAT(equipment().all()[0].checks, IsEmpty());
}

} // namespace plateau::test
