// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/checkedequipment.h"

#include "core/planning/uncertaintysources.h"
#include "tests/support/benches.h"
#include "tests/support/keyedchecks.h"
#include "tests/support/print.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace plateau::test {
namespace {

using namespace Qt::StringLiterals;
using namespace planning;
using equipment::Aspect;
using equipment::HeldItem;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::SizeIs;

const QDate dayOfChecks(2026, 3, 2);

Laboratory smallLaboratory()
{
    Laboratory laboratory;
    laboratory.glassware.pipettes = {{u"Piston pipette 20 to 200 µL"_s, 0.02, 0.2, 0.01, 1.5},
                                     {u"piston pipette 1 mL"_s, 0.1, 1, 0.1, 0.9},
                                     {u"bulb pipette 1 mL"_s, 1, 1, 0, 0.5}};
    laboratory.glassware.flasks = {{u"flask 50 mL"_s, 50, 0.07}};
    laboratory.photometer = Photometer{u"PH-1"_s, 0.002, 0.3, u"record 4"_s, QDate(2025, 9, 1)};
    return laboratory;
}

HeldItem held(equipment::Item item, std::vector<equipment::Check> checks)
{
    HeldItem held{1, item, {}};
    for (equipment::Check &check : checks)
        held.checks.push_back({qint64(held.checks.size()) + 7, std::move(check), item, u"I. K."_s, false});
    return held;
}

equipment::Check noiseCheck(const QDate &day)
{
    equipment::Check check = blankCheck(photometer(), Aspect::Noise, day);
    for (std::size_t i = 0; i < 10; ++i)
        check.rows[i][0] = 0.001 * double(i % 2);
    return check;
}

TEST(CheckedEquipment, APipetteTakesTheFigureOfItsValidCheckByItsName)
{
    const HeldItem pipette = held(pistonPipette(), {volumeCheck(pistonPipette(), 198.5, QDate(2026, 2, 1))});
    const Laboratory checked = withChecks(smallLaboratory(), {pipette}, dayOfChecks);
    const double found = *equipment::outcomeOf(pipette.item, pipette.checks[0].check)->figures.volume_percent;
    EXPECT_GT(found, 0.4);
    EXPECT_EQ(checked.glassware.pipettes[0].uncertainty_percent, found);
    EXPECT_EQ(checked.glassware.pipettes[0].source, u"check 7 of 2026-02-01"_s);
    EXPECT_EQ(checked.glassware.pipettes[1], smallLaboratory().glassware.pipettes[1]) << "the others stay";
}

TEST(CheckedEquipment, AFailedCheckLeavesWhatTheListSays)
{
    const HeldItem pipette = held(pistonPipette(), {volumeCheck(pistonPipette(), 190, QDate(2026, 2, 1))});
    EXPECT_EQ(withChecks(smallLaboratory(), {pipette}, dayOfChecks), smallLaboratory());
}

TEST(CheckedEquipment, TheNoiseOfThePhotometerReachesTheBudgetWithItsRecord)
{
    const Laboratory checked =
        withChecks(smallLaboratory(), {held(photometer(), {noiseCheck(QDate(2026, 2, 20))})}, dayOfChecks);
    const auto sources = uncertaintySources(risingMethod(), checked, plainRun());
    const double s = 0.001 * std::sqrt(0.25 * 10 / 9);
    EXPECT_NEAR(*sources[0].value, std::hypot(s, 0.001 / std::sqrt(12.0)), 1e-12);
    EXPECT_EQ(sources[0].owner, u"photometer PH-1"_s);
    EXPECT_EQ(sources[0].source, u"check 7 of 2026-02-20"_s);
    EXPECT_EQ(*sources[2].value, 0.3) << "the path keeps its own record";
    EXPECT_EQ(sources[2].source, u"record 4, 2025-09-01"_s);
}

TEST(CheckedEquipment, AbsorbanceScaleAndCuvettesMakeThePath)
{
    equipment::Check scale = blankCheck(photometer(), Aspect::Absorbance, QDate(2026, 2, 20));
    scale.conditions[u"weak_mg_per_L"_s] = 60;
    scale.rows[1][1] = 0.867 * 1.01;
    equipment::Item set;
    set.kind = equipment::Kind::Cuvettes;
    set.name = u"set 1"_s;
    set.every_days = {{Aspect::Match, 365}};
    equipment::Check match = blankCheck(set, Aspect::Match, QDate(2026, 2, 21));
    match.rows[0][0] = 0.031;
    match.rows[1][0] = 0.033;
    HeldItem cuvettes = held(set, {match});
    cuvettes.checks[0].id = 9;
    const Laboratory checked =
        withChecks(smallLaboratory(), {held(photometer(), {scale}), cuvettes}, dayOfChecks);
    EXPECT_NEAR(*checked.photometer->pathLength_percent, std::hypot(1.0, 0.1 / std::sqrt(3.0)), 1e-9);
    EXPECT_EQ(checked.photometer->pathSource,
              u"set 1, check 9 of 2026-02-21; absorbance scale by check 7 of 2026-02-20"_s);
    EXPECT_EQ(*checked.photometer->absorbance, 0.002);
}

TEST(CheckedEquipment, TheOnlyPhotometerServesALaboratoryThatNamesNone)
{
    Laboratory laboratory = smallLaboratory();
    laboratory.photometer.reset();
    const Laboratory checked =
        withChecks(laboratory, {held(photometer(), {noiseCheck(QDate(2026, 2, 20))})}, dayOfChecks);
    ASSERT_TRUE(checked.photometer);
    EXPECT_EQ(checked.photometer->name, u"PH-1"_s);
    EXPECT_FALSE(withChecks(laboratory, {}, dayOfChecks).photometer);
}

TEST(EquipmentDoubts, GlassOfTheRunThatFailedOrIsLateIsNamed)
{
    const HeldItem failed = held(pistonPipette(), {volumeCheck(pistonPipette(), 190, QDate(2026, 2, 1))});
    const auto doubts = equipmentDoubts(smallLaboratory(), {u"piston pipette 20 to 200 µL"_s}, false,
                                        {failed}, dayOfChecks, dayOfChecks);
    ASSERT_THAT(doubts, SizeIs(1));
    EXPECT_FALSE(doubts[0].late);
    EXPECT_EQ(doubts[0].sentence, u"Piston pipette 20 to 200 µL: failed on 2026-02-01: volume."_s);
    EXPECT_THAT(equipmentDoubts(smallLaboratory(), {u"bulb pipette 1 mL"_s}, false, {failed}, dayOfChecks,
                                dayOfChecks),
                IsEmpty())
        << "not used for it";
    const HeldItem late = held(pistonPipette(), {volumeCheck(pistonPipette(), 199.4, QDate(2025, 11, 1))});
    EXPECT_TRUE(
        equipmentDoubts(smallLaboratory(), {late.item.name}, false, {late}, dayOfChecks, dayOfChecks)[0]
            .late);
}

TEST(EquipmentDoubts, ACheckThatFailsAfterwardsThrowsDoubtOnTheRun)
{
    const HeldItem pipette = held(pistonPipette(), {volumeCheck(pistonPipette(), 199.4, QDate(2026, 2, 1)),
                                                    volumeCheck(pistonPipette(), 190, QDate(2026, 4, 1))});
    EXPECT_THAT(
        equipmentDoubts(smallLaboratory(), {pipette.item.name}, false, {pipette}, dayOfChecks, dayOfChecks),
        IsEmpty())
        << "not known yet";
    const auto doubts = equipmentDoubts(smallLaboratory(), {pipette.item.name}, false, {pipette}, dayOfChecks,
                                        QDate(2026, 4, 2));
    ASSERT_THAT(doubts, SizeIs(1));
    EXPECT_TRUE(doubts[0].sentence.contains(u"failed afterwards, on 2026-04-01"_s));
}

TEST(EquipmentDoubts, BalancesCountWhereSomethingIsWeighed)
{
    equipment::Item balance;
    balance.kind = equipment::Kind::Balance;
    balance.name = u"B-1"_s;
    balance.every_days = {{Aspect::Weighing, 30}};
    EXPECT_THAT(equipmentDoubts(smallLaboratory(), {}, false, {held(balance, {})}, dayOfChecks, dayOfChecks),
                IsEmpty());
    EXPECT_THAT(equipmentDoubts(smallLaboratory(), {}, true, {held(balance, {})}, dayOfChecks, dayOfChecks),
                SizeIs(1));
}

TEST(EquipmentDoubts, AnOldRackIsJudgedByWhatTheBookSaidOnItsDay)
{
    HeldItem meter = held(photometer(), {});
    const QDate before = dayOfChecks.addDays(-30);
    const auto doubtsOn = [&](const QDate &day) {
        return equipmentDoubts(smallLaboratory(), {}, false, {meter}, day, dayOfChecks);
    };
    meter.versions = {{dayOfChecks.addDays(-10), meter.item}};
    EXPECT_THAT(doubtsOn(before), IsEmpty()) << "nobody kept a book of it then";
    EXPECT_THAT(doubtsOn(dayOfChecks.addDays(-10)), Not(IsEmpty())) << "from the day it was entered on";
    equipment::Item without = meter.item;
    without.every_days.clear();
    meter.versions = {{dayOfChecks.addDays(-60), without}, {dayOfChecks.addDays(-10), meter.item}};
    EXPECT_THAT(doubtsOn(before), IsEmpty()) << "the laboratory asked for no check of it then";
    meter.versions = {{dayOfChecks.addDays(-60), meter.item}};
    ASSERT_THAT(doubtsOn(before), Not(IsEmpty()));
    EXPECT_TRUE(doubtsOn(before)[0].sentence.contains(u"never checked"_s));
}

TEST(EquipmentDoubts, ACheckOfThatDayThatWasKeyedSinceIsKnown)
{
    HeldItem pipette = held(pistonPipette(), {volumeCheck(pistonPipette(), 199.4, dayOfChecks.addDays(-40)),
                                              volumeCheck(pistonPipette(), 190, dayOfChecks.addDays(-2))});
    pipette.versions = {{dayOfChecks.addDays(-10), pipette.item}};
    const auto doubts = equipmentDoubts(smallLaboratory(), {pipette.item.name}, false, {pipette},
                                        dayOfChecks.addDays(-30), dayOfChecks);
    ASSERT_THAT(doubts, SizeIs(1));
    EXPECT_TRUE(doubts[0].sentence.contains(u"passed before this run, but failed afterwards"_s));
}

TEST(EquipmentDoubts, AFirstCheckThatFailsThrowsDoubtOnTheTimeBeforeTheBook)
{
    HeldItem pipette = held(pistonPipette(), {volumeCheck(pistonPipette(), 190, dayOfChecks.addDays(-2))});
    pipette.versions = {{dayOfChecks.addDays(-10), pipette.item}};
    const auto doubts = equipmentDoubts(smallLaboratory(), {pipette.item.name}, false, {pipette},
                                        dayOfChecks.addDays(-30), dayOfChecks);
    ASSERT_THAT(doubts, SizeIs(1));
    EXPECT_FALSE(doubts[0].late);
    EXPECT_EQ(doubts[0].sentence.section(u": "_s, 1),
              u"not in the book of equipment yet on that day; its next check, on 2026-02-28, failed: volume."_s);
}

} // namespace
} // namespace plateau::test
