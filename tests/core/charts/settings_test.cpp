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
    EXPECT_THAT(placesOf(settings), IsEmpty());
    settings.constants = ConstantsFrom::PrintedTable;
    EXPECT_THAT(placesOf(settings), ElementsAre(u"subgroup"_s));
    settings.constants = ConstantsFrom::Computed;
    settings.limits = EarlierRuns{0, 5, {}};
    EXPECT_THAT(placesOf(settings), ElementsAre(u"values"_s));
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
