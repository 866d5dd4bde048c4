// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/controlchart.h"

#include "core/charts/chartwords.h"
#include "tests/support/print.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace plateau::charts {

using namespace Qt::StringLiterals;
using quality::RunRule;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

const Subject recovery{Quantity::StandardRecovery, u"malate"_s, u"malate"_s};

/// One run a day from 2026-01-01, numbered from 1.
Series seriesOf(const std::vector<double> &values)
{
    Series series;
    for (const double value : values) {
        auto run = std::make_shared<RunFacts>();
        run->run = static_cast<qint64>(series.size()) + 1;
        run->titleUtf8 = "Tanks";
        run->at =
            QDateTime(QDate(2026, 1, 1), QTime(9, 0), Qt::UTC).addDays(static_cast<qint64>(series.size()));
        Point point;
        point.run = run;
        point.name = u"STD"_s;
        point.value = value;
        point.unit = u"%"_s;
        series.push_back(point);
    }
    return series;
}

RunFacts &factsOf(Point &point)
{
    auto own = std::make_shared<RunFacts>(*point.run);
    RunFacts &facts = *own;
    point.run = own;
    return facts;
}

Settings fixed(double centre, double deviation, Kind kind = Kind::Individuals)
{
    Settings settings;
    settings.kind = kind;
    settings.limits = FixedLimits{centre, deviation, u"validation"_s, QDate(2026, 1, 1)};
    return settings;
}

} // namespace

TEST(ControlChart, OfSingleValuesHasTheirMovingRangesBelow)
{
    const ControlChart chart = controlChart(recovery, seriesOf({100, 102, 99}), {}, fixed(100, 2));
    ASSERT_THAT(chart.panels, SizeIs(2));
    EXPECT_EQ(chart.panels[0].plotted, Plotted::Values);
    EXPECT_EQ(chart.panels[0].baseline->line(3), 106);
    ASSERT_THAT(chart.panels[1].marks, SizeIs(2));
    EXPECT_EQ(chart.panels[1].marks[1].value, 3);
    EXPECT_EQ(chart.panels[1].marks[1].first, 1u);
    EXPECT_EQ(chart.panels[1].marks[1].last, 2u);
    EXPECT_NEAR(chart.panels[1].baseline->centre, 2.256758334, 1e-9);
}

TEST(ControlChart, TakesItsLimitsFromTheRunsNamedWhateverIsShown)
{
    Series series = seriesOf({90, 100, 102, 100, 102, 100, 102, 100, 102, 100, 102, 130, 140});
    factsOf(series[12]).persons = {u"Ada"_s};
    Settings settings;
    settings.limits = EarlierRuns{2, 10, quality::SpreadFrom::StandardDeviation};
    Filter filter;
    filter.person = u"Ada"_s;
    const ControlChart chart = controlChart(recovery, series, filter, settings);
    EXPECT_THAT(chart.series, SizeIs(1));
    ASSERT_TRUE(chart.basis);
    EXPECT_EQ(chart.basis->firstRun, 2);
    EXPECT_EQ(chart.basis->lastRun, 11);
    EXPECT_EQ(chart.basis->values, 10);
    EXPECT_FALSE(chart.basis->isIncomplete);
    EXPECT_DOUBLE_EQ(chart.basis->centre, 101);
    EXPECT_DOUBLE_EQ(chart.basis->deviation, std::sqrt(10.0 / 9));
    EXPECT_EQ(basisSentence(chart),
              u"Limits from 10 values, run 2 to run 11: centre 101.0\u00a0%, standard deviation of a single "
              u"value 1.1\u00a0%. They are provisional: whether nothing is out of control is said from 20 "
              u"values on. "
              u"Under Limits and rules, raise the number of values to 20."_s);
}

TEST(ControlChart, BeginsWithTheNextRunWhereTheFirstOfTheLimitsIsNotInIt)
{
    Series series = seriesOf({150, 100, 102, 100, 102, 100, 102, 100, 102, 100, 102, 100});
    series.erase(series.begin() + 1); // run 2
    Settings settings;
    settings.limits = EarlierRuns{2, 10, {}};
    const ControlChart chart = controlChart(recovery, series, {}, settings);
    ASSERT_TRUE(chart.basis);
    EXPECT_EQ(chart.basis->firstRun, 3);
    EXPECT_DOUBLE_EQ(chart.basis->centre, 101);
}

TEST(ControlChart, LeavesOutOnlyWhatWasLeftOutWithAReason)
{
    Series series = seriesOf({100, 102, 150, 100, 102, 100, 102, 100, 102, 100, 102});
    series[2].omission = std::make_shared<Omission>(Omission{u"wrong flask"_s, u"Ada"_s, {}});
    Settings settings;
    settings.limits = EarlierRuns{0, 10, {}};
    const ControlChart chart = controlChart(recovery, series, {}, settings);
    EXPECT_THAT(chart.series, SizeIs(11));
    EXPECT_THAT(chart.panels[0].marks, SizeIs(10));
    EXPECT_EQ(chart.panels[1].marks[1].value, 2); // the neighbours of what was left out
    EXPECT_DOUBLE_EQ(chart.basis->centre, 101);
    EXPECT_THAT(chart.panels[0].findings, IsEmpty());
    EXPECT_EQ(pointSentence(chart, 2),
              u"3 of 11; run 3 (Tanks, 2026-01-03); STD; 150.0\u00a0%; left out by Ada: wrong "
              u"flask."_s);
}

TEST(ControlChart, OfRejectedRunsShowsThemOnRequestAndMakesNoLimitsOfThem)
{
    Series series = seriesOf({100, 150, 102, 100, 102, 100, 102, 100, 102, 100, 102});
    series[1].isAccepted = false;
    Settings settings;
    settings.limits = EarlierRuns{0, 10, {}};
    EXPECT_THAT(controlChart(recovery, series, {}, settings).series, SizeIs(10));
    Filter filter;
    filter.withRejected = true;
    const ControlChart chart = controlChart(recovery, series, filter, settings);
    EXPECT_THAT(chart.series, SizeIs(11));
    EXPECT_DOUBLE_EQ(chart.basis->centre, 101);
}

TEST(ControlChart, WithTooFewValuesSaysSo)
{
    // The eighth would lie beyond 3 s of the others.
    const ControlChart chart =
        controlChart(recovery, seriesOf({100, 100.1, 99.9, 100, 100.1, 99.9, 100, 110, 100}), {}, Settings{});
    EXPECT_FALSE(chart.basis);
    EXPECT_FALSE(chart.panels[0].baseline);
    EXPECT_THAT(chart.panels[0].findings, IsEmpty());
    EXPECT_FALSE(hasVerdict(chart));
    EXPECT_EQ(basisSentence(chart),
              u"There are too few values for limits so far. Accept more runs, or enter limits "
              "that the laboratory has fixed. Limits need 10 values."_s);
    EXPECT_FALSE(controlChart(recovery, {}, {}, Settings{}).basis);
}

TEST(ControlChart, HasNoVerdictWhileItsLimitsAreProvisional)
{
    std::vector<double> values;
    for (int i = 0; i < 20; ++i)
        values.push_back(i % 2 == 0 ? 100 : 102);
    const auto chartOf = [&](std::size_t count) {
        return controlChart(recovery, seriesOf({values.begin(), values.begin() + std::ptrdiff_t(count)}), {},
                            Settings{});
    };
    EXPECT_FALSE(chartOf(9).basis);
    const ControlChart provisional = chartOf(10);
    ASSERT_TRUE(provisional.basis);
    EXPECT_TRUE(provisional.basis->isProvisional);
    EXPECT_TRUE(provisional.panels[0].baseline) << "drawn, and held against";
    EXPECT_FALSE(hasVerdict(provisional));
    EXPECT_TRUE(
        basisSentence(provisional)
            .endsWith(
                u"They are provisional: whether nothing is out of control is said from 20 values on."_s));
    EXPECT_TRUE(chartOf(19).basis->isProvisional);
    EXPECT_FALSE(chartOf(20).basis->isProvisional);
    EXPECT_TRUE(hasVerdict(chartOf(20)));
    EXPECT_FALSE(basisSentence(chartOf(20)).contains(u"provisional"_s));
}

TEST(ControlChart, OfMeansCountsSubgroupsForItsVerdict)
{
    Settings settings;
    settings.kind = Kind::MeanAndRange;
    settings.limits = EarlierRuns{0, 40, {}};
    const auto chartOf = [&](std::size_t count) {
        return controlChart(recovery, seriesOf(std::vector<double>(count, 100.0)), {}, settings);
    };
    EXPECT_FALSE(chartOf(19).basis);
    EXPECT_TRUE(chartOf(20).basis->isProvisional);
    EXPECT_TRUE(chartOf(39).basis->isProvisional);
    EXPECT_TRUE(hasVerdict(chartOf(40)));
}

TEST(ControlChart, WithFixedLimitsHasItsVerdictAtOnce)
{
    const ControlChart chart = controlChart(recovery, seriesOf({100, 101}), {}, fixed(100, 2));
    EXPECT_TRUE(hasVerdict(chart));
    EXPECT_TRUE(basisSentence(chart).startsWith(u"Limits fixed by the laboratory: "_s));
}

TEST(ControlChart, OfTwoMaterialsHasNoLimitsNotEvenFixedOnes)
{
    Series series = seriesOf(std::vector<double>(30, 100.0));
    for (std::size_t i = 1; i < series.size(); i += 2) {
        series[i].name = u"CONTROL"_s;
        series[i].value = 90;
    }
    for (const Settings &settings : {Settings{}, fixed(100, 2)}) {
        const ControlChart chart = controlChart(recovery, series, {}, settings);
        EXPECT_TRUE(chart.isMixed);
        EXPECT_FALSE(chart.basis);
        EXPECT_FALSE(hasVerdict(chart));
        EXPECT_THAT(chart.panels[0].marks, SizeIs(30));
        EXPECT_THAT(chart.panels[0].findings, IsEmpty());
        EXPECT_TRUE(basisSentence(chart).startsWith(u"Values of several materials stand in this chart"_s));
    }
    // Standards of one substance are one material, whatever stands on their flasks.
    Subject substance = recovery;
    substance.name = u"L-malic acid"_s;
    EXPECT_TRUE(hasVerdict(controlChart(substance, series, {}, Settings{})));
}

TEST(ControlChart, OfRangesJoinsSamplesAndSaysSo)
{
    Series series = seriesOf(std::vector<double>(20, 0.1));
    series[3].name = u"P-104"_s;
    const ControlChart chart = controlChart({Quantity::DuplicateRange, u"m"_s, u"m"_s}, series, {},
                                            usualSettings(Quantity::DuplicateRange));
    EXPECT_FALSE(chart.isMixed);
    EXPECT_TRUE(hasVerdict(chart));
    EXPECT_TRUE(basisSentence(chart).endsWith(
        u"The ranges are of many samples: the limits hold where these have similar amounts."_s));
}

TEST(ControlChart, JoinsAPatternThatGoesOnIntoOneFinding)
{
    std::vector<double> values(12, 101.0);
    values[11] = 99;
    const ControlChart chart = controlChart(recovery, seriesOf(values), {}, fixed(100, 2));
    ASSERT_THAT(chart.panels[0].findings, SizeIs(1));
    const Finding &finding = chart.panels[0].findings.front();
    EXPECT_EQ(finding.rule, RunRule::NineOnOneSide);
    EXPECT_EQ(finding.first, 0u);
    EXPECT_EQ(finding.completed, 8u);
    EXPECT_EQ(finding.last, 10u);
    EXPECT_EQ(
        findingSentence(chart, chart.panels[0], finding),
        u"Nine in a row on one side, above the centre: run 9 (Tanks, 2026-01-09) to run 11 (Tanks, "
        u"2026-01-11), begun with run 1. Something has shifted: compare lots, standard and photometer before "
        u"and after the first of them."_s);
}

TEST(ControlChart, TellsTwoSpellsOfOneRuleApart)
{
    const ControlChart chart = controlChart(recovery, seriesOf({107, 100, 93, 107}), {}, fixed(100, 2));
    ASSERT_THAT(chart.panels[0].findings, SizeIs(3));
    EXPECT_TRUE(chart.panels[0].findings[0].isAbove);
    EXPECT_FALSE(chart.panels[0].findings[1].isAbove);
    EXPECT_EQ(chart.panels[0].findings[2].completed, 3u);
}

TEST(ControlChart, OfMovingRangesHoldsOnlyTheActionLineAgainstThem)
{
    Settings settings = fixed(100, 1);
    settings.rules = {RunRule::OneBeyond3, RunRule::OneBeyond2, RunRule::SevenOnOneSide};
    const ControlChart chart = controlChart(recovery, seriesOf({98, 102, 97.9}), {}, settings);
    // 4 and 4.1 against 3.686; both lie beyond 2 s as well.
    ASSERT_THAT(chart.panels[1].findings, SizeIs(1));
    EXPECT_EQ(chart.panels[1].findings[0].rule, RunRule::OneBeyond3);
    EXPECT_EQ(chart.panels[1].findings[0].last, 1u);
}

TEST(ControlChart, OfMeansTakesSubgroupsInTheirOrder)
{
    Settings settings = fixed(100, 2, Kind::MeanAndRange);
    settings.subgroup = 4;
    const ControlChart chart =
        controlChart(recovery, seriesOf({100, 102, 98, 104, 104, 104, 104, 104, 1}), {}, settings);
    ASSERT_THAT(chart.panels[0].marks, SizeIs(2));
    EXPECT_EQ(chart.panels[0].marks[0].value, 101);
    EXPECT_EQ(chart.panels[0].baseline->deviation, 1);
    EXPECT_EQ(chart.panels[1].marks[0].value, 6);
    ASSERT_THAT(chart.panels[0].findings, SizeIs(1)); // 104 lies 4 s of a mean away
    EXPECT_EQ(chart.panels[0].marks[1].first, 4u);
    EXPECT_EQ(chart.panels[0].marks[1].last, 7u);
}

TEST(ControlChart, OfWeightedAveragesFindsASmallShift)
{
    const ControlChart chart = controlChart(recovery, seriesOf(std::vector<double>(20, 102.5)), {},
                                            fixed(100, 2, Kind::WeightedAverage));
    ASSERT_THAT(chart.panels, SizeIs(1));
    ASSERT_THAT(chart.panels[0].findings, SizeIs(1));
    EXPECT_EQ(chart.panels[0].findings[0].kind, Finding::Kind::AverageAbove);
    // By hand: 2.5 (1 - 0.8^i) passes 2 sqrt(1 - 0.64^i) with the seventh.
    EXPECT_EQ(chart.panels[0].findings[0].completed, 6u);
    EXPECT_EQ(chart.panels[0].findings[0].last, 19u);
}

TEST(ControlChart, OfSumsFindsItToo)
{
    Settings settings = fixed(100, 2, Kind::CumulativeSum);
    settings.h = 4;
    const ControlChart chart = controlChart(recovery, seriesOf(std::vector<double>(10, 97)), {}, settings);
    ASSERT_THAT(chart.panels[0].findings, SizeIs(1));
    EXPECT_EQ(chart.panels[0].findings[0].kind, Finding::Kind::SumBelow);
    EXPECT_EQ(chart.panels[0].decisionLimit, 8);
    EXPECT_EQ(chart.panels[0].findings[0].completed, 4u); // 2 a run: beyond 8 with the fifth
    EXPECT_EQ(chart.panels[0].marks[9].below, -20);
}

TEST(ControlChart, OfDuplicatesHasItsRanges)
{
    Settings settings = usualSettings(Quantity::DuplicateRange);
    settings.limits = EarlierRuns{0, 10, {}};
    settings.constants = ConstantsFrom::PrintedTable;
    const ControlChart chart = controlChart({Quantity::DuplicateRange, u"m"_s, u"m"_s},
                                            seriesOf({1, 2, 1, 2, 1, 2, 1, 2, 1, 2, 5}), {}, settings);
    ASSERT_THAT(chart.panels, SizeIs(1));
    EXPECT_EQ(chart.panels[0].baseline->centre, 1.5);
    EXPECT_NEAR(chart.panels[0].baseline->line(3), 1.5 * 3.267, 1e-12);
    EXPECT_EQ(chart.panels[0].baseline->line(-3), 0);
    EXPECT_THAT(chart.panels[0].findings, SizeIs(1));
}

TEST(ControlChart, OfATrendIsHeldAgainstTheLimitsOfTheProduct)
{
    const Subject product{Quantity::ProductResult, u"m"_s, u"m"_s, u"Perry"_s};
    ControlChart chart =
        controlChart(product, seriesOf({5, 7, 7.5, 2}), {}, usualSettings(Quantity::ProductResult));
    EXPECT_FALSE(chart.basis);
    EXPECT_EQ(basisSentence(chart), QString());
    holdAgainst(chart, 2.5, 6.0);
    ASSERT_THAT(chart.panels[0].findings, SizeIs(2));
    EXPECT_EQ(chart.panels[0].findings[0].completed, 1u);
    EXPECT_EQ(chart.panels[0].findings[0].last, 2u);
    EXPECT_EQ(findingSentence(chart, chart.panels[0], chart.panels[0].findings[1]),
              u"Below a limit of the product: run 4 (Tanks, 2026-01-04). The record of the run says what was "
              "decided at its uncertainty."_s);
}

TEST(Changes, OfLotsAreAgainstTheLastRunThatNamedOne)
{
    Series series = seriesOf({1, 2, 3, 4});
    factsOf(series[0]).lots = {{u"starter"_s, u"A"_s}, {u"buffer"_s, u"X"_s}};
    factsOf(series[2]).lots = {{u"starter"_s, u"B"_s}, {u"buffer"_s, u"X"_s}};
    factsOf(series[3]).lots = {{u"starter"_s, u"B"_s}};
    EXPECT_THAT(changesIn(series, false), ElementsAre(Change{2, u"starter: lot B after A"_s}));
}

TEST(Changes, OfTheStandardAreSeenRunByRun)
{
    Series series = seriesOf({1, 2, 3});
    series[2].name = u"STD-2"_s;
    EXPECT_THAT(changesIn(series, true), ElementsAre(Change{2, u"STD-2 after STD"_s}));
    EXPECT_THAT(changesIn(series, false), IsEmpty());
}

TEST(Filters, TakeDaysAndLots)
{
    Series series = seriesOf({1, 2, 3});
    factsOf(series[1]).lots = {{u"starter"_s, u"A"_s}};
    Filter lot;
    lot.lot = u"A"_s;
    EXPECT_THAT(filtered(series, lot), SizeIs(1));
    lot.component = u"buffer"_s;
    EXPECT_THAT(filtered(series, lot), IsEmpty());
    Filter days;
    days.from = QDate(2026, 1, 2);
    days.to = QDate(2026, 1, 2);
    EXPECT_EQ(filtered(series, days).front().value, 2);
}

} // namespace plateau::charts
