// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Control charts against worked examples in print. Status of every value: beside it.

#include "core/quality/accumulatedcharts.h"
#include "core/quality/controlbaseline.h"
#include "core/quality/runrules.h"
#include "core/quality/statistics.h"
#include "tests/published/columns.h"
#include "tests/published/printed.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

namespace plateau::published {

using quality::ControlBaseline;
using quality::RunRule;
using ::testing::Each;
using ::testing::ElementsAre;

namespace {

std::vector<double> inRows(const std::map<std::string, std::vector<double>> &data,
                           const std::vector<std::string> &columns)
{
    std::vector<double> values;
    for (std::size_t row = 0; row < data.at(columns.front()).size(); ++row) {
        for (const std::string &column : columns)
            values.push_back(data.at(column)[row]);
    }
    return values;
}

} // namespace

// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, individuals control charts, flowrate of ten
// batches, www.itl.nist.gov/div898/handbook/pmc/section3/pmc322.htm. The page works with d2 = 1.128.
TEST(IndividualsChart, OfTenFlowratesAgreesWithTheHandbook)
{
    const auto flowrate = readColumns("nist_6322_flowrate.csv").at("flowrate");
    const auto ranges = quality::movingRanges(flowrate);
    const std::vector<double> printed{2.0, 2.3, 1.4, 3.5, 3.4, 1.4, 0.2, 1.2, 1.5};
    ASSERT_EQ(ranges.size(), printed.size());
    for (std::size_t i = 0; i < printed.size(); ++i)
        EXPECT_NEAR(ranges[i], printed[i], 1e-9) << i;
    EXPECT_THAT(*quality::mean(ranges), Published("1.8778"));

    const auto byTable = quality::baselineOfValues(flowrate, quality::SpreadFrom::MovingRange,
                                                   quality::printedChartConstants(2).value());
    EXPECT_THAT(byTable->centre, Published("50.81"));
    EXPECT_THAT(byTable->line(3), Published("55.80408983451537"));
    EXPECT_THAT(byTable->line(-3), Published("45.8159"));
    const auto computed = quality::baselineOfValues(flowrate, quality::SpreadFrom::MovingRange,
                                                    quality::chartConstants(2).value());
    EXPECT_THAT(computed->line(3), Recomputed(55.8024116768));
    EXPECT_NEAR(quality::baselineOfRanges(ranges, quality::printedChartConstants(2).value())->line(3), 6.1347,
                5e-5); // recomputed: 3.267 mean moving ranges
    for (const double value : flowrate)
        EXPECT_LT(std::abs(byTable->deviationsOf(value)), 3);
}

// NIST/SEMATECH e-Handbook, 6.3.2.3, CUSUM control charts, twenty group means, pmc323.htm: target 325, k =
// 0.3175, h = 4.1959. The page rounds ties in both directions.
TEST(CumulativeSums, OfTwentyGroupMeansAgreeWithTheHandbook)
{
    const auto data = readColumns("nist_6323_cusum.csv");
    const auto sums = quality::cumulativeSums(data.at("mean_of_4"), 325, 0.3175);
    std::vector<double> signals;
    for (std::size_t i = 0; i < sums.size(); ++i) {
        EXPECT_NEAR(sums[i].above, data.at("printed_Shi")[i], 0.0051) << i;
        EXPECT_NEAR(sums[i].below, data.at("printed_Slo")[i], 0.0051) << i;
        EXPECT_NEAR(sums[i].plain, data.at("printed_cusum")[i], 0.0051) << i;
        if (sums[i].above > 4.1959 || sums[i].below > 4.1959)
            signals.push_back(data.at("group")[i]);
    }
    EXPECT_THAT(signals, ElementsAre(14, 15, 16, 17, 18, 19, 20)); // published
    EXPECT_THAT(sums[13].above, Published("4.94"));
}

// Berthouex and Brown, Statistics for Environmental Engineers, 2nd ed. 2002, table 12.1, page 110: cusum and
// EWMA (lambda 0.5, target 12). The book carries more digits of y than it prints (cusum 0.01 apart), and
// sets its first EWMA to the target without using y1, which is forgotten from row 6 on to 0.005.
TEST(AccumulatedCharts, OfFourteenValuesAgreeWithTheBook)
{
    const auto data = readColumns("be_cusum_t12_1.csv");
    const auto &y = data.at("y");
    const auto sums = quality::cumulativeSums(y, 12, 0);
    for (std::size_t i = 0; i < y.size(); ++i)
        EXPECT_NEAR(sums[i].plain, data.at("cusum_printed")[i], 0.0151) << i;

    const auto averages = quality::weightedAverages(y, ControlBaseline{12, 0.5}, 0.5, 3);
    EXPECT_THAT(averages.front().value, Recomputed(11.945));
    for (std::size_t i = 5; i < y.size(); ++i)
        EXPECT_NEAR(averages[i].value, data.at("ewma_printed")[i], 0.0071) << i;
    EXPECT_THAT(averages.back().value, Published("11.52"));
    // As the book begins it.
    const std::vector<double> withoutFirst(y.begin() + 1, y.end());
    const auto asPrinted = quality::weightedAverages(withoutFirst, ControlBaseline{12, 0.5}, 0.5, 3);
    for (std::size_t i = 0; i < withoutFirst.size(); ++i)
        EXPECT_NEAR(asPrinted[i].value, data.at("ewma_printed")[i + 1], 0.0051) << i;
}

// Limits by their formula, with numbers worked out by hand: lambda 0.2, width 3, s 1.
TEST(WeightedAverages, HaveLimitsThatWidenToTheirEnd)
{
    const auto averages =
        quality::weightedAverages(std::vector<double>(60, 10.0), ControlBaseline{10, 1}, 0.2, 3);
    EXPECT_NEAR(averages[0].upper, 10.6, 1e-12);                       // 3 * 0.2
    EXPECT_NEAR(averages[1].upper, 10 + 3 * std::sqrt(0.0656), 1e-12); // 0.2^2 (1 + 0.8^2)
    EXPECT_NEAR(averages[59].upper, 11, 1e-6);                         // 3 sqrt(0.2 / 1.8)
    EXPECT_NEAR(averages[59].lower, 9, 1e-6);
    EXPECT_FALSE(averages[59].isOutside());
}

// Piston rings, Montgomery, Introduction to Statistical Quality Control, as data set of the R package qcc
// (github.com/cran/qcc): 25 groups of five for the limits, 15 more. Limits from memory of the package's
// documentation.
TEST(MeanAndRangeChart, OfPistonRingsAgreesWithTheDocumentation)
{
    const auto values = inRows(readColumns("montgomery_pistonrings.csv"), {"x1", "x2", "x3", "x4", "x5"});
    const auto means = quality::subgroupMeans(values, 5);
    const auto ranges = quality::subgroupRanges(values, 5);
    ASSERT_EQ(means.size(), 40u);
    const std::span<const double> trial(means.data(), 25);
    const std::span<const double> trialRanges(ranges.data(), 25);
    const quality::ChartConstants five = quality::chartConstants(5).value();
    const auto ofMeans = quality::baselineOfMeans(trial, trialRanges, five);
    const auto ofRanges = quality::baselineOfRanges(trialRanges, five);
    EXPECT_THAT(ofMeans->centre, FromMemory("74.00118"));
    // The documentation's factor has three decimals.
    EXPECT_THAT(ofMeans->deviation * std::sqrt(5.0) * five.d2 / 2.326, FromMemory("0.009785039"));
    EXPECT_THAT(ofMeans->line(3), FromMemory("74.0143"));
    EXPECT_THAT(ofMeans->line(-3), FromMemory("73.98805"));
    EXPECT_THAT(ofRanges->line(3), FromMemory("0.0481"));
    EXPECT_EQ(ofRanges->line(-3), 0);
    std::vector<std::size_t> outside;
    for (std::size_t group = 0; group < means.size(); ++group) {
        if (std::abs(ofMeans->deviationsOf(means[group])) > 3)
            outside.push_back(group + 1);
    }
    EXPECT_THAT(outside, ElementsAre(37, 38, 39)); // from memory
}

// Berthouex and Brown, table 11.1, page 98: fifteen pairs of duplicates. Means and ranges published; the
// limits, with the factors 1.880 and 3.267, recomputed.
TEST(DuplicatesChart, OfFifteenPairsAgreesWithTheBook)
{
    const auto data = readColumns("be_duplicates_t11_1.csv");
    const auto values = inRows(data, {"x1", "x2"});
    const auto means = quality::subgroupMeans(values, 2);
    const auto ranges = quality::subgroupRanges(values, 2);
    for (std::size_t pair = 0; pair < means.size(); ++pair) {
        EXPECT_NEAR(means[pair], data.at("mean_printed")[pair], 0.0501) << pair; // some ties rounded down
        EXPECT_NEAR(ranges[pair], data.at("range_printed")[pair], 1e-9) << pair;
    }
    const quality::ChartConstants two = quality::printedChartConstants(2).value();
    const auto ofMeans = quality::baselineOfMeans(means, ranges, two);
    const auto ofRanges = quality::baselineOfRanges(ranges, two);
    EXPECT_THAT(ofMeans->centre, Published("4.08"));
    EXPECT_THAT(ofRanges->centre, Published("0.86"));
    EXPECT_THAT(ofMeans->line(3), Recomputed(5.693466666666667));
    EXPECT_THAT(ofMeans->line(-3), Recomputed(2.459866666666667));
    EXPECT_THAT(ofRanges->line(3), Recomputed(2.80962));
    // The third pair's range, 2.8, lies inside by 0.01: decided on numbers that are not rounded.
    EXPECT_THAT(ranges, Each(::testing::Lt(ofRanges->line(3))));
    EXPECT_THAT(ranges, Each(::testing::Lt(
                            quality::baselineOfRanges(ranges, quality::chartConstants(2).value())->line(3))));
}

// Factors for control charts, table A.22 of a statistics text, scribd.com/document/575462347: 81 entries, n =
// 2 to 10, published; and the same to six decimals up to n = 15, recomputed by numerical integration.
TEST(ChartConstants, AgreeWithTheTable)
{
    for (int n = 2; n <= 10; ++n) {
        const auto computed = quality::chartConstants(n).value();
        const auto printed = quality::printedChartConstants(n).value();
        for (const auto member :
             {&quality::ChartConstants::d2, &quality::ChartConstants::d3, &quality::ChartConstants::a2,
              &quality::ChartConstants::a3, &quality::ChartConstants::b3, &quality::ChartConstants::b4,
              &quality::ChartConstants::lowerD3, &quality::ChartConstants::upperD4}) {
            // D4 of three is 2.57459, printed 2.574; other tables print 2.575.
            const bool isMisprint = n == 3 && member == &quality::ChartConstants::upperD4;
            EXPECT_NEAR(computed.*member, printed.*member, isMisprint ? 0.0006 : 0.000501) << n;
        }
        EXPECT_NEAR(computed.c4, printed.c4, 0.0000501) << n;
    }
    const auto table = readColumns("chart_constants.csv");
    for (std::size_t row = 0; row < table.at("n").size(); ++row) {
        const auto computed = quality::chartConstants(static_cast<int>(table.at("n")[row])).value();
        const std::vector<std::pair<const char *, double>> columns{
            {"A2", computed.a2}, {"A3", computed.a3},      {"c4", computed.c4},
            {"B3", computed.b3}, {"B4", computed.b4},      {"d2", computed.d2},
            {"d3", computed.d3}, {"D3", computed.lowerD3}, {"D4", computed.upperD4}};
        for (const auto &[name, value] : columns)
            EXPECT_NEAR(value, table.at(name)[row], 5.1e-7) << name << " of " << table.at("n")[row];
    }
}

// A range chart of duplicates in standard deviations of a single result: centre 1.128, warning 2.83, action
// 3.69 (Nordtest TR 569, from memory).
TEST(DuplicatesChart, OfAFixedDeviationHasTheLinesOfThePrint)
{
    const auto ranges = quality::fixedBaselineOfRanges(1, quality::chartConstants(2).value());
    EXPECT_THAT(ranges.centre, FromMemory("1.128"));
    EXPECT_THAT(ranges.line(2), FromMemory("2.83"));
    EXPECT_THAT(ranges.line(3), FromMemory("3.69"));
}

namespace {

struct RuleCase {
    const char *name;
    const char *z;
    /// The rule that is hit, and at which value, from 1; none for a near miss.
    std::optional<RunRule> rule;
    std::size_t at = 0;
};

} // namespace

// Constructed, one hit and one near miss for each rule of the page "Nelson rules",
// w.owiki.org/wiki/Nelson_rules (its definitions published), and run through an independent rule engine.
TEST(RunRules, HitAndMissAsAnIndependentEngineDoes)
{
    const std::vector<RuleCase> cases{
        {"one beyond 3", "0.2 -0.3 3.01", RunRule::OneBeyond3, 3},
        {"exactly 3", "0.2 -0.3 3", {}},
        {"nine", "0.5 0.2 0.9 0.4 0.3 0.8 0.1 0.6 0.7", RunRule::NineOnOneSide, 9},
        {"eight, then the centre", "0.5 0.2 0.9 0.4 0.3 0.8 0.1 0.6 0 0.7", {}},
        {"six rising", "-0.9 -0.5 -0.1 0.3 0.7 1.1", RunRule::SixRisingOrFalling, 6},
        {"a tie", "-0.9 -0.5 -0.1 -0.1 0.7 1.1", {}},
        {"fourteen", "0.5 -0.4 0.5 -0.4 0.5 -0.4 0.5 -0.4 0.5 -0.4 0.5 -0.4 0.5 -0.4",
         RunRule::FourteenAlternating, 14},
        {"thirteen", "0.5 -0.4 0.5 -0.4 0.5 -0.4 0.5 -0.4 0.5 -0.4 0.5 -0.4 0.5 0.6", {}},
        {"two of three", "0 2.1 0.1 2.2", RunRule::TwoOfThreeBeyond2, 4},
        {"opposite sides", "0 2.1 0.1 -2.2", {}},
        {"four of five", "1.2 0.3 1.3 1.1 1.4", RunRule::FourOfFiveBeyond1, 5},
        {"three of five", "1.2 0.3 1.3 0.9 1.4", {}},
        {"fifteen", "0.3 0.5 -0.2 -0.6 0.1 0.4 0.7 -0.3 -0.1 0.2 0.6 -0.5 0.4 0.3 -0.2",
         RunRule::FifteenWithin1, 15},
        {"fourteen within", "0.3 0.5 -0.2 -0.6 0.1 0.4 0.7 -0.3 -0.1 0.2 0.6 -0.5 0.4 0.3 1.1", {}},
        {"eight on both sides", "1.5 -1.4 1.3 1.2 -1.6 1.7 -1.2 1.4", RunRule::EightBeyond1OnBothSides, 8},
        {"one inside", "1.5 -1.4 1.3 1.2 -1.6 0.9 -1.2 1.4", {}},
    };
    const std::set<RunRule> eight{RunRule::OneBeyond3,         RunRule::TwoOfThreeBeyond2,
                                  RunRule::FourOfFiveBeyond1,  RunRule::NineOnOneSide,
                                  RunRule::SixRisingOrFalling, RunRule::FourteenAlternating,
                                  RunRule::FifteenWithin1,     RunRule::EightBeyond1OnBothSides};
    for (const RuleCase &one : cases) {
        std::istringstream stream(one.z);
        const std::vector<double> z{std::istream_iterator<double>(stream), {}};
        const auto found = quality::violationsOf(z, eight);
        ASSERT_EQ(found.size(), one.rule ? 1u : 0u) << one.name;
        if (one.rule) {
            EXPECT_EQ(found.front().rule, *one.rule) << one.name;
            EXPECT_EQ(found.front().last + 1, one.at) << one.name;
        }
    }
}

} // namespace plateau::published
