// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/laboratory.h"

#include "core/planning/glassfor.h"
#include "core/planning/glassware.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <limits>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using test::listed;
using test::names;

namespace {

struct Row {
    const char *what;
    std::function<void(Laboratory &)> change;
    /// Empty: the changed laboratory is still sound.
    const char *pointer;
    const char *fragment;
};

/// Of the usual laboratory, whose pipettes 0 to 2 can be set and 3 to 9 are bulbs.
void expectRows(const std::vector<Row> &rows)
{
    for (const Row &row : rows) {
        Laboratory laboratory = usualLaboratory();
        row.change(laboratory);
        const assay::Problems problems = problemsOf(laboratory);
        if (*row.pointer) {
            EXPECT_EQ(problems.size(), 1U) << row.what << listed(problems);
            EXPECT_TRUE(names(problems, row.pointer, row.fragment)) << row.what << listed(problems);
        } else {
            EXPECT_TRUE(problems.empty()) << row.what << listed(problems);
        }
    }
}

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

} // namespace

TEST(Laboratory, UsualOneHasARackOfTwentyFour)
{
    const Laboratory laboratory = usualLaboratory();
    EXPECT_EQ(laboratory.rackRows * laboratory.rackColumns, 24);
    EXPECT_TRUE(problemsOf(laboratory).empty()) << listed(problemsOf(laboratory));
}

TEST(Laboratory, ARackHasOneToNinetySixPlaces)
{
    const auto rack = [](int rows, int columns) {
        return [=](Laboratory &l) {
            l.rackRows = rows;
            l.rackColumns = columns;
        };
    };
    expectRows({
        {"one place", rack(1, 1), "", ""},
        {"96 places", rack(8, 12), "", ""},
        {"96 places in one row", rack(1, 96), "", ""},
        {"98 places", rack(7, 14), "/rackColumns", "98 places with 7 rows; at most 96"},
        {"no row", rack(0, 6), "/rackRows", "between 1 and 96, not 0"},
        {"no column", rack(4, 0), "/rackColumns", "between 1 and 96, not 0"},
        {"97 rows", rack(97, 1), "/rackRows", "not 97"},
        {"so many that they cannot be multiplied", rack(4, std::numeric_limits<int>::max()), "/rackColumns",
         "not 2"},
    });
}

TEST(Laboratory, HandsNeedTimeButNotForever)
{
    expectRows({
        {"quick",
         [](Laboratory &l) {
             l.handling = {0.5, 0, 0.5};
         },
         "", ""},
        {"slow",
         [](Laboratory &l) {
             l.handling = {600, 600, 600};
         },
         "", ""},
        {"no time to add", [](Laboratory &l) { l.handling.addition_s = 0; }, "/handling/addition_s",
         "greater than 0"},
        {"too long", [](Laboratory &l) { l.handling.addition_s = 601; }, "/handling/addition_s", "not 601"},
        {"mixed before", [](Laboratory &l) { l.handling.mix_s = -1; }, "/handling/mix_s", "not -1"},
        {"mixed too long", [](Laboratory &l) { l.handling.mix_s = 601; }, "/handling/mix_s", "not 601"},
        {"no time to read", [](Laboratory &l) { l.handling.reading_s = 0; }, "/handling/reading_s",
         "greater than 0"},
        {"no number", [](Laboratory &l) { l.handling.reading_s = notANumber; }, "/handling/reading_s",
         "greater than 0"},
    });
}

TEST(Laboratory, OverageIsNeitherNegativeNorAbsurd)
{
    expectRows({
        {"none", [](Laboratory &l) { l.overage_percent = 0; }, "", ""},
        {"much", [](Laboratory &l) { l.overage_percent = 1000; }, "", ""},
        {"negative", [](Laboratory &l) { l.overage_percent = -0.1; }, "/overage_percent", "not -0.1"},
        {"absurd", [](Laboratory &l) { l.overage_percent = 1001; }, "/overage_percent", "not 1001"},
    });
}

TEST(Laboratory, StepsLeadFromTheSmallestVolumeToTheLargest)
{
    const auto pipette = [](double smallest_mL, double largest_mL, double step_mL) {
        return [=](Laboratory &l) {
            l.glassware.pipettes[1] = {u"piston"_s, smallest_mL, largest_mL, step_mL, 0.6};
        };
    };
    expectRows({
        {"bulb", pipette(0.2, 0.2, 0), "", ""},
        {"one step", pipette(0.1, 0.2, 0.1), "", ""},
        {"10 000 settings", pipette(1, 10.999, 0.001), "", ""},
        {"10 001 settings", pipette(1, 11, 0.001), "/glassware/pipettes/1/step_mL", "coarser step"},
        {"bulb with steps", pipette(0.2, 0.2, 0.1), "/glassware/pipettes/1/step_mL", "must be 0"},
        {"step not known", pipette(0.1, 1, 0), "", ""},
        {"step back", pipette(0.1, 1, -0.1), "/glassware/pipettes/1/step_mL", "not -0.1"},
        {"step too wide", pipette(0.1, 1, 1), "/glassware/pipettes/1/step_mL", "not 1"},
        {"step no number", pipette(0.1, 1, notANumber), "/glassware/pipettes/1/step_mL",
         "greater than 0 and at most 0.9 mL"},
        {"uneven", pipette(0.1, 1, 0.4), "/glassware/pipettes/1/step_mL", "a whole number of times"},
        {"upside down", pipette(1, 0.1, 0.1), "/glassware/pipettes/1/largest_mL", "0.1 is less than 1"},
        {"nothing", pipette(0, 1, 0.1), "/glassware/pipettes/1/smallest_mL", "not 0"},
        {"a bucket", pipette(1, 1001, 1), "/glassware/pipettes/1/largest_mL", "not 1001"},
    });
}

TEST(Laboratory, GlasswareHasNamesAndUncertainties)
{
    expectRows({
        {"none at all", [](Laboratory &l) { l.glassware = {}; }, "", ""},
        {"a flask named as a pipette",
         [](Laboratory &l) { l.glassware.flasks[0].name = l.glassware.pipettes[0].name; }, "", ""},
        {"pipette without a name", [](Laboratory &l) { l.glassware.pipettes[2].name = u" "_s; },
         "/glassware/pipettes/2/name", "the name cannot be used"},
        {"flask without a name", [](Laboratory &l) { l.glassware.flasks[2].name.clear(); },
         "/glassware/flasks/2/name", "the name cannot be used"},
        {"two pipettes of one name",
         [](Laboratory &l) {
             l.glassware.pipettes[0].name = u"\u00e9"_s;
             l.glassware.pipettes[1].name = u"e\u0301"_s;
         },
         "/glassware/pipettes/1/name", "is taken by an earlier one"},
        {"two flasks of one name",
         [](Laboratory &l) { l.glassware.flasks[3].name = l.glassware.flasks[0].name; },
         "/glassware/flasks/3/name", "is taken by an earlier one"},
        {"perfect", [](Laboratory &l) { l.glassware.flasks[0].uncertainty_percent = 0; }, "", ""},
        {"hopeless", [](Laboratory &l) { l.glassware.flasks[0].uncertainty_percent = 100; }, "", ""},
        {"better than perfect", [](Laboratory &l) { l.glassware.flasks[0].uncertainty_percent = -1; },
         "/glassware/flasks/0/uncertainty_percent", "not -1"},
        {"worse than hopeless", [](Laboratory &l) { l.glassware.pipettes[0].uncertainty_percent = 101; },
         "/glassware/pipettes/0/uncertainty_percent", "not 101"},
        {"flask of nothing", [](Laboratory &l) { l.glassware.flasks[0].volume_mL = 0; },
         "/glassware/flasks/0/volume_mL", "greater than 0"},
        {"vat", [](Laboratory &l) { l.glassware.flasks[0].volume_mL = 100001; },
         "/glassware/flasks/0/volume_mL", "not 100001"},
        {"name of the laboratory", [](Laboratory &l) { l.name = u"Cellar"_s; }, "", ""},
        {"name on two lines", [](Laboratory &l) { l.name = u"Cellar\nand press"_s; }, "/name",
         "the name cannot be used"},
    });
}

TEST(Laboratory, AHundredPiecesOfAKindAreEnough)
{
    Laboratory laboratory;
    for (int i = 0; i < 100; ++i)
        laboratory.glassware.flasks.push_back({QString::number(i), 50, 0.1});
    EXPECT_TRUE(problemsOf(laboratory).empty());
    laboratory.glassware.flasks.push_back({u"one more"_s, 50, 0.1});
    EXPECT_TRUE(names(problemsOf(laboratory), "/glassware/flasks", "lists 101 pieces; at most 100"));
}

TEST(Glassware, APipetteIsSetAsItsScaleSays)
{
    const std::vector<double> volumes = settableVolumes_mL({u"piston"_s, 0.01, 0.1, 0.001, 0.8});
    ASSERT_EQ(volumes.size(), 91U);
    EXPECT_EQ(volumes.front(), 0.01);
    EXPECT_EQ(volumes[27], 0.037); // to the bit, not 0.037000000000000005
    EXPECT_EQ(volumes.back(), 0.1);
    EXPECT_EQ(settableVolumes_mL({u"bulb"_s, 5, 5, 0, 0.2}), std::vector<double>{5});
}

TEST(Glassware, WhereNoStepIsKnownTheUsualOneCounts)
{
    const Pipette small{u"small"_s, 0.02, 0.2, 0, 0.8};
    const Pipette middle{u"middle"_s, 0.1, 1, 0, 0.6};
    const Pipette large{u"large"_s, 0.5, 5, 0, 0.6};
    EXPECT_EQ(settableVolumes_mL(small).size(), 181U); // 20 to 200 µL by 1 µL
    EXPECT_EQ(settableVolumes_mL(middle).size(), 181U); // 100 to 1000 µL by 5 µL
    EXPECT_EQ(settableVolumes_mL(large).size(), 451U); // 0.5 to 5 mL by 10 µL
    EXPECT_TRUE(makes(middle, 0.425));
    EXPECT_FALSE(makes(middle, 0.422));
    EXPECT_TRUE(makes(large, 2.18));
    EXPECT_FALSE(makes(large, 2.185));
    EXPECT_FALSE(isDelivered(0.42, {{{u"fixed"_s, 1, 1, 0, 0.5}}, {}}));
    EXPECT_TRUE(isDelivered(1, {{{u"fixed"_s, 1, 1, 0, 0.5}}, {}}));
}

TEST(Glassware, TheNearestVolumeIsOneThatAPipetteIsSetTo)
{
    const Glassware glass = usualLaboratory().glassware;
    EXPECT_EQ(*nearestSettable_mL(0.1134, glass), 0.11);
    EXPECT_EQ(*nearestSettable_mL(0.0634, glass), 0.063);
    EXPECT_EQ(*nearestSettable_mL(2.18, glass), 2.2);
    EXPECT_FALSE(nearestSettable_mL(15, glass));
}

TEST(Glassware, SimpleStepsHaveEasyFactors)
{
    Glassware glass;
    glass.pipettes = {{u"piston"_s, 0.88, 1, 0.01, 0.6}};
    glass.flasks = {{u"10"_s, 10, 0.1}};
    const std::vector<PossibleStep> simple = simpleOnes(possibleSteps(glass));
    ASSERT_EQ(simple.size(), 1U);
    EXPECT_EQ(simple[0].step.take_mL, 1);
    EXPECT_EQ(possibleSteps(glass).size(), 13U);
    EXPECT_EQ(possibleSteps(glass, 0.95).size(), 6U);
}

TEST(Glassware, WhatIsNotListedIsTheUsualGlass)
{
    const Glassware usual = withUsualGlass({});
    std::vector<double> pipettes_mL;
    for (const Pipette &pipette : usual.pipettes)
        pipettes_mL.push_back(pipette.smallest_mL);
    std::vector<double> flasks_mL;
    for (const Flask &flask : usual.flasks)
        flasks_mL.push_back(flask.volume_mL);
    EXPECT_EQ(pipettes_mL, (std::vector<double>{1, 2, 5, 10}));
    EXPECT_EQ(flasks_mL, (std::vector<double>{5, 10, 20, 25, 50, 100}));
    const Glassware own{{{u"fixed"_s, 1, 1, 0, 0.5}}, {{u"50"_s, 50, 0.1}}};
    EXPECT_EQ(withUsualGlass(own), own);
}

TEST(Glassware, OfStepsOfOneFactorTheMostCertainIsKept)
{
    Glassware glass;
    glass.pipettes = {{u"poor 5"_s, 5, 5, 0, 1}, {u"good 5"_s, 5, 5, 0, 0.2}, {u"10"_s, 10, 10, 0, 0.2}};
    glass.flasks = {{u"10"_s, 10, 0.1}, {u"20"_s, 20, 0.1}, {u"100"_s, 100, 0.05}};
    const std::vector<PossibleStep> steps = possibleSteps(glass);
    // 5 in 10 and 10 in 20 are alike: the smaller flask. Then 5 in 20, 10 in 100, 5 in 100.
    ASSERT_EQ(steps.size(), 4U);
    EXPECT_EQ(steps[0].step.take_mL, 5);
    EXPECT_EQ(steps[0].pipette, 1);
    EXPECT_EQ(steps[0].flask, 0);
    EXPECT_NEAR(*steps[0].step.uncertainty_percent, std::hypot(0.2, 0.1), 1e-12);
    EXPECT_EQ(steps[1].step.makeUpTo_mL, 20);
    EXPECT_EQ(steps[2].step.take_mL, 10);
    EXPECT_EQ(steps[3].step.take_mL, 5);
}

} // namespace plateau::planning
