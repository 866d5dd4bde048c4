// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/chartwords.h"
#include "core/charts/settings.h"

#include "tests/support/print.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace plateau::charts {

using namespace Qt::StringLiterals;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

namespace {

QStringList placesOf(const Settings &settings)
{
    QStringList places;
    for (const assay::Problem &problem : problemsOf(settings))
        places << problem.pointer;
    return places;
}

} // namespace

TEST(ChartSettings, ThatAreUsualAreSound)
{
    for (const Quantity quantity : allQuantities())
        EXPECT_THAT(problemsOf(usualSettings(quantity)), IsEmpty()) << quantityWord(quantity).toStdString();
}

TEST(ChartSettings, ThatAreFixedNeedSourceAndDate)
{
    Settings settings;
    settings.limits = FixedLimits{100, 0, u" "_s, {}};
    EXPECT_THAT(placesOf(settings), ElementsAre(u"deviation"_s, u"source"_s, u"date"_s));
    settings.limits = FixedLimits{100, 1.5, u"validation of 2025"_s, QDate(2025, 11, 3)};
    EXPECT_THAT(placesOf(settings), IsEmpty());
}

TEST(ChartSettings, KeepToTheTableWhereItsFactorsAreUsed)
{
    Settings settings;
    settings.kind = Kind::MeanAndRange;
    settings.subgroup = 12;
    settings.limits = EarlierRuns{0, 120, {}};
    EXPECT_THAT(placesOf(settings), IsEmpty());
    settings.constants = ConstantsFrom::PrintedTable;
    EXPECT_THAT(placesOf(settings), ElementsAre(u"subgroup"_s));
    settings.constants = ConstantsFrom::Computed;
    settings.limits = EarlierRuns{0, 119, {}};
    EXPECT_THAT(placesOf(settings), ElementsAre(u"values"_s));
}

TEST(ChartSettings, TakeTenValuesAtLeastOfMeansTenSubgroups)
{
    Settings settings;
    settings.limits = EarlierRuns{0, 9, {}};
    ASSERT_THAT(placesOf(settings), ElementsAre(u"values"_s));
    EXPECT_EQ(problemsOf(settings).front().message, u"Limits from earlier runs need 10 to 10000 values."_s);
    settings.limits = EarlierRuns{0, 10, {}};
    EXPECT_THAT(placesOf(settings), IsEmpty());
    EXPECT_EQ(valuesForVerdict(settings), 20);
    settings.kind = Kind::MeanAndRange;
    settings.subgroup = 3;
    EXPECT_EQ(valuesForLimits(settings), 30);
    EXPECT_EQ(valuesForVerdict(settings), 60);
    EXPECT_THAT(placesOf(settings), ElementsAre(u"values"_s));
}

TEST(ChartSettings, ThatWereKeptWithFewerValuesAreRaisedAndElseStay)
{
    Settings kept;
    kept.limits = EarlierRuns{17, 4, quality::SpreadFrom::StandardDeviation};
    const Settings raised = withEnoughValues(kept);
    EXPECT_EQ(std::get<EarlierRuns>(raised.limits),
              (EarlierRuns{17, 10, quality::SpreadFrom::StandardDeviation}));
    EXPECT_THAT(problemsOf(raised), IsEmpty());
    EXPECT_EQ(withEnoughValues(Settings{}), Settings{});
    kept.limits = FixedLimits{100, 1.5, u"validation"_s, QDate(2025, 11, 3)};
    EXPECT_EQ(withEnoughValues(kept), kept);
}

TEST(ChartSettings, OfAllMaterialsHoldForEachUnlessTheCentreIsAnotherForEach)
{
    Settings fixed;
    fixed.limits = FixedLimits{0.5, 0.01, u"validation"_s, QDate(2025, 11, 3)};
    EXPECT_TRUE(holdsForEach(Quantity::StandardRecovery, fixed));
    EXPECT_FALSE(holdsForEach(Quantity::ControlMaterial, fixed));
    EXPECT_TRUE(holdsForEach(Quantity::ControlMaterial, Settings{}));
}

TEST(ChartSettings, HaveBoundsForAveragesAndSums)
{
    Settings settings;
    settings.lambda = 0;
    settings.width = 11;
    settings.k = -0.1;
    settings.h = 0;
    EXPECT_THAT(placesOf(settings), ElementsAre(u"lambda"_s, u"width"_s, u"k"_s, u"h"_s));
}

TEST(ChartWords, ComeBackAsWhatTheyStandFor)
{
    std::set<QString> names;
    for (const Quantity quantity : allQuantities()) {
        EXPECT_EQ(quantityFromWord(quantityWord(quantity)), quantity);
        names.insert(quantityName(quantity));
        for (const Kind kind : kindsFor(quantity)) {
            EXPECT_EQ(kindFromWord(kindWord(kind)), kind);
            EXPECT_FALSE(kindName(kind).isEmpty());
        }
    }
    EXPECT_EQ(names.size(), allQuantities().size());
    names.clear();
    for (const quality::RunRule rule : quality::allRunRules()) {
        EXPECT_EQ(ruleFromWord(ruleWord(rule)), rule);
        names.insert(ruleName(rule));
    }
    EXPECT_EQ(names.size(), quality::allRunRules().size());
    EXPECT_FALSE(ruleFromWord(u"nothing"_s));
}

} // namespace plateau::charts
