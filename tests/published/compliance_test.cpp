// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Decisions against limits. The rules and their names: Eurachem/CITAC Guide, Use of uncertainty information
// in compliance assessment, 2nd ed. 2021 (ISBN 978-0-948926-38-9), section 4.2 (simple acceptance), 4.3
// (guard band), 4.4 (inconclusive results), Annex A (size of the guard band): its list of contents was read,
// its formulas through pihin.eu/compliance, which quotes the 1st ed. 2007. Its Annex B was not at hand.

#include "core/evaluation/compliance.h"
#include "core/quality/distributions.h"
#include "tests/published/printed.h"

#include <gtest/gtest.h>

#include <limits>

namespace plateau::published {

using namespace Qt::StringLiterals;
using namespace plateau::evaluation;

namespace {

constexpr double degreesOfNormal = std::numeric_limits<double>::infinity();

Reported measured(double value, double u, double degreesOfFreedom = degreesOfNormal)
{
    Reported reported{value};
    reported.expandedUncertainty = 2 * u;
    reported.coverageFactor = 2;
    reported.degreesOfFreedom = degreesOfFreedom;
    reported.unit = ReportUnit::MilligramPerKilogram;
    return reported;
}

Specification limits(std::optional<double> lower, std::optional<double> upper, DecisionRule rule,
                     std::optional<GuardBand> guard = std::nullopt)
{
    Specification specification;
    specification.kind = !lower ? LimitKind::Maximum : upper ? LimitKind::Range : LimitKind::Minimum;
    specification.lower = lower;
    specification.upper = upper;
    specification.unit = ReportUnit::MilligramPerKilogram;
    specification.rule = rule;
    specification.guard = guard;
    return specification;
}

} // namespace

// pihin.eu/compliance prints 1.64 for 5 % and 2.33 for 1 %, one-sided; a t table 3.75 at 4 degrees of freedom
// and 1 % (so does the same page), and a risk of 0.0054 at 4.5 u and 4 degrees of freedom.
TEST(PublishedCompliance, OneSidedFactorsAndRisks)
{
    EXPECT_THAT(quality::studentTwoSided(0.98, degreesOfNormal), Published("2.33"));
    EXPECT_THAT(quality::studentTwoSided(0.98, 4), Published("3.75"));
    EXPECT_THAT(quality::studentAbove(4.5, 4), Published("0.0054"));
    // 1.6449, of which the guides print 1.64.
    const auto judgement = judge(measured(9, 0.5), limits({}, 10, DecisionRule::GuardedBoth, GuardBand{}));
    EXPECT_THAT(*judgement.guardBand / 0.5, Published("1.64"));
    EXPECT_TRUE(judgement.sentence.contains(u"1.64 u"_s)) << judgement.sentence.toStdString();
}

// The formulas quoted there: accept up to limit - k u, reject from more than limit + k u. Limit 10.0, u = 0.5
// were chosen here and recomputed: 9.18 and 10.82 (5 %), 9 with U.
TEST(PublishedCompliance, GuardBandMovesTheLimit)
{
    const auto standing = [](double value, GuardBand::Kind kind) {
        return judge(measured(value, 0.5), limits({}, 10, DecisionRule::GuardedBoth, GuardBand{kind}))
            .standing;
    };
    using enum GuardBand::Kind;
    EXPECT_EQ(standing(9.17, OneSided95), Standing::Inside);
    EXPECT_EQ(standing(9.18, OneSided95), Standing::Undecided); // 9.1776
    EXPECT_EQ(standing(10.82, OneSided95), Standing::Undecided);
    EXPECT_EQ(standing(10.83, OneSided95), Standing::Outside);
    EXPECT_EQ(standing(9.00, ExpandedUncertainty), Standing::Inside);
    EXPECT_EQ(standing(9.01, ExpandedUncertainty), Standing::Undecided);
}

// Course scripts on food-analysis statistics (github.com/Tai-ShengYeh/food-analysis-statistics,
// R/ch08_combine_report.R): four results with U = 1 against an upper limit of 10, by the rule: outside if
// result - U > limit, inside if result + U <= limit, else inconclusive. The inputs were read, the verdicts
// follow the rule.
TEST(PublishedCompliance, FourResultsAgainstAnUpperLimit)
{
    struct Row {
        double value;
        Standing guarded;
        Standing simple;
    };
    for (const Row &row :
         {Row{11.5, Standing::Outside, Standing::Outside}, Row{10.6, Standing::Undecided, Standing::Outside},
          Row{9.6, Standing::Undecided, Standing::Inside}, Row{8.8, Standing::Inside, Standing::Inside}}) {
        const Reported reported = measured(row.value, 0.5);
        EXPECT_EQ(judge(reported, limits({}, 10, DecisionRule::GuardedBoth,
                                         GuardBand{GuardBand::Kind::ExpandedUncertainty}))
                      .standing,
                  row.guarded)
            << row.value;
        EXPECT_EQ(judge(reported, limits({}, 10, DecisionRule::SimpleAcceptance)).standing, row.simple)
            << row.value;
    }
}

// Specific risk of a limit on both sides, 9 to 11: 0.01242 of N(10, 0.4), 0.10574 of N(10.5, 0.4)
// (github.com/sandialabs/suncal, tests of its risk module).
TEST(PublishedCompliance, RiskOfALimitOnBothSides)
{
    const Specification range = limits(9, 11, DecisionRule::SimpleAcceptance);
    EXPECT_THAT(judge(measured(10, 0.4), range).beyond->probability, Published("0.01242"));
    EXPECT_THAT(judge(measured(10.5, 0.4), range).beyond->probability, Published("0.10574"));
}

// JCGM 106:2012, section 7, conformance probabilities. Inputs and figures from memory: a breakdown voltage of
// -5.47 V (u = 0.05 V) against at most -5.40 V gives 0.92, 13.6 (u = 1.8) within 12.5 to 16.3 gives 0.66.
TEST(PublishedCompliance, ConformanceProbability)
{
    EXPECT_THAT(1 - judge(measured(-5.47, 0.05), limits({}, -5.40, DecisionRule::SimpleAcceptance))
                        .beyond->probability,
                FromMemory("0.92"));
    EXPECT_THAT(1 - judge(measured(13.6, 1.8), limits(12.5, 16.3, DecisionRule::SimpleAcceptance))
                        .beyond->probability,
                FromMemory("0.66"));
}

} // namespace plateau::published
