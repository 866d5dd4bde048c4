// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/compliance.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

using namespace plateau;
using namespace plateau::evaluation;
using namespace Qt::StringLiterals;
using enum plateau::evaluation::Standing;
using Guard = plateau::evaluation::GuardBand::Kind;

namespace plateau::evaluation {

void PrintTo(Standing standing, std::ostream *stream)
{
    *stream << standingWord(standing).toStdString();
}

} // namespace plateau::evaluation

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

Specification atMost(double upper, DecisionRule rule = DecisionRule::SimpleAcceptance,
                     std::optional<GuardBand> guard = std::nullopt)
{
    return {.product = u"Perry"_s,
            .measurand = u"sulphite"_s,
            .kind = LimitKind::Maximum,
            .upper = upper,
            .unit = ReportUnit::MilligramPerLitre,
            .source = u"Customer"_s,
            .date = QDate(2026, 1, 15),
            .rule = rule,
            .guard = guard};
}

Specification atLeast(double lower, DecisionRule rule = DecisionRule::SimpleAcceptance,
                      std::optional<GuardBand> guard = std::nullopt)
{
    Specification specification = atMost(lower, rule, guard);
    specification.kind = LimitKind::Minimum;
    specification.lower.swap(specification.upper);
    return specification;
}

Specification between(double lower, double upper, DecisionRule rule = DecisionRule::SimpleAcceptance,
                      std::optional<GuardBand> guard = std::nullopt)
{
    Specification specification = atMost(upper, rule, guard);
    specification.kind = LimitKind::Range;
    specification.lower = lower;
    return specification;
}

Specification labelFrom(double threshold, DecisionRule rule = DecisionRule::SimpleAcceptance,
                        std::optional<GuardBand> guard = std::nullopt)
{
    Specification specification = atMost(threshold, rule, guard);
    specification.kind = LimitKind::LabelThreshold;
    return specification;
}

/// U = 10 with k = 2, unless told otherwise.
Reported measured(double value, std::optional<double> expandedUncertainty = 10)
{
    Reported reported{value};
    reported.unit = ReportUnit::MilligramPerLitre;
    reported.expandedUncertainty = expandedUncertainty;
    if (expandedUncertainty) {
        reported.coverageFactor = 2;
        reported.degreesOfFreedom = infinite;
    }
    return reported;
}

Reported lessThan(double bound)
{
    Reported reported;
    reported.unit = ReportUnit::MilligramPerLitre;
    reported.lessThan = bound;
    return reported;
}

Reported greaterThan(double bound)
{
    Reported reported = measured(bound + 5);
    reported.greaterThan = bound;
    return reported;
}

Standing standing(const Reported &reported, const Specification &specification)
{
    return judge(reported, specification).standing;
}

} // namespace

TEST(Compliance, SimpleAcceptanceHoldsTheValueAgainstTheLimitItself)
{
    EXPECT_EQ(standing(measured(199.9), atMost(200)), Inside);
    EXPECT_EQ(standing(measured(200), atMost(200)), Inside);
    EXPECT_EQ(standing(measured(0.3 * 1000 * (1 + 1e-15)), atMost(300)), Inside) << "but for rounding, at it";
    EXPECT_EQ(standing(measured(200.1), atMost(200)), Outside);
    EXPECT_EQ(standing(measured(50), atLeast(50)), Inside);
    EXPECT_EQ(standing(measured(49.9), atLeast(50)), Outside);
    EXPECT_EQ(standing(measured(30), between(30, 50)), Inside);
    EXPECT_EQ(standing(measured(50), between(30, 50)), Inside);
    EXPECT_EQ(standing(measured(29.9), between(30, 50)), Outside);
    EXPECT_EQ(standing(measured(50.1), between(30, 50)), Outside);
}

TEST(Compliance, AThresholdBelongsToWhatHasToBeDeclared)
{
    EXPECT_EQ(standing(measured(9.9), labelFrom(10)), Inside);
    EXPECT_EQ(standing(measured(10), labelFrom(10)), Outside);
    EXPECT_EQ(standing(measured(10.1), labelFrom(10)), Outside);
    EXPECT_EQ(standing(lessThan(10), labelFrom(10)), Inside);
    EXPECT_EQ(standing(greaterThan(10), labelFrom(10)), Outside);
    const GuardBand two{Guard::Absolute, 2};
    EXPECT_EQ(standing(measured(7.9), labelFrom(10, DecisionRule::GuardedBoth, two)), Inside);
    EXPECT_EQ(standing(measured(8.1), labelFrom(10, DecisionRule::GuardedBoth, two)), Undecided);
    EXPECT_EQ(standing(measured(11.9), labelFrom(10, DecisionRule::GuardedBoth, two)), Undecided);
    EXPECT_EQ(standing(measured(12), labelFrom(10, DecisionRule::GuardedBoth, two)), Outside);
}

TEST(Compliance, GuardBandsLeaveWhatLiesInThemUndecided)
{
    struct Row {
        double value;
        Standing acceptance;
        Standing rejection;
        Standing both;
    };
    const GuardBand expanded{Guard::ExpandedUncertainty, 1};
    // The guard band is U = 10.
    for (const Row &row : {Row{189, Inside, Inside, Inside}, Row{190, Inside, Inside, Inside},
                           Row{191, Undecided, Inside, Undecided}, Row{200, Undecided, Inside, Undecided},
                           Row{201, Outside, Undecided, Undecided}, Row{210, Outside, Undecided, Undecided},
                           Row{211, Outside, Outside, Outside}}) {
        const Reported reported = measured(row.value);
        EXPECT_EQ(standing(reported, atMost(200, DecisionRule::GuardedAcceptance, expanded)), row.acceptance)
            << row.value;
        EXPECT_EQ(standing(reported, atMost(200, DecisionRule::GuardedRejection, expanded)), row.rejection)
            << row.value;
        EXPECT_EQ(standing(reported, atMost(200, DecisionRule::GuardedBoth, expanded)), row.both)
            << row.value;
        // A minimum is the same seen in a mirror.
        const Reported mirrored = measured(400 - row.value);
        EXPECT_EQ(standing(mirrored, atLeast(200, DecisionRule::GuardedAcceptance, expanded)), row.acceptance)
            << row.value;
        EXPECT_EQ(standing(mirrored, atLeast(200, DecisionRule::GuardedRejection, expanded)), row.rejection)
            << row.value;
        EXPECT_EQ(standing(mirrored, atLeast(200, DecisionRule::GuardedBoth, expanded)), row.both)
            << row.value;
    }
}

TEST(Compliance, ARangeIsGuardedAtBothEnds)
{
    const GuardBand expanded{Guard::ExpandedUncertainty, 0.5};
    const Specification range = between(100, 200, DecisionRule::GuardedBoth, expanded);
    EXPECT_EQ(standing(measured(94.9), range), Outside);
    EXPECT_EQ(standing(measured(95), range), Undecided);
    EXPECT_EQ(standing(measured(104.9), range), Undecided);
    EXPECT_EQ(standing(measured(105), range), Inside);
    EXPECT_EQ(standing(measured(195), range), Inside);
    EXPECT_EQ(standing(measured(195.1), range), Undecided);
    EXPECT_EQ(standing(measured(205.1), range), Outside);

    const Judgement narrow = judge(measured(100), between(98, 102, DecisionRule::GuardedBoth, expanded));
    EXPECT_EQ(narrow.standing, Undecided);
    EXPECT_TRUE(narrow.sentence.contains(u"leaves nothing between the limits"_s))
        << narrow.sentence.toStdString();
}

TEST(Compliance, TheGuardBandIsWideAsItsKindSays)
{
    const auto width = [](const Reported &reported, GuardBand guard) {
        return *judge(reported, atMost(200, DecisionRule::GuardedAcceptance, guard)).guardBand;
    };
    EXPECT_DOUBLE_EQ(width(measured(100), {Guard::Absolute, 3}), 3);
    EXPECT_DOUBLE_EQ(width(measured(100), {Guard::ExpandedUncertainty, 1.5}), 15);
    EXPECT_NEAR(width(measured(100), {Guard::OneSided95, 1}), 1.6449 * 5, 1e-3);
    Reported few = measured(100);
    few.degreesOfFreedom = 4; // t tables, one-sided 95 %: 2.132
    EXPECT_NEAR(width(few, {Guard::OneSided95, 1}), 2.132 * 5, 3e-3);
    EXPECT_FALSE(judge(measured(100), atMost(200)).guardBand);
}

TEST(Compliance, WithoutUncertaintyNoLaxerRuleStepsIn)
{
    const Reported bare = measured(150, std::nullopt);
    EXPECT_EQ(standing(bare, atMost(200)), Inside);
    EXPECT_TRUE(judge(bare, atMost(200)).sentence.contains(u"states no uncertainty"_s));
    const GuardBand oneSided;
    const Judgement guarded = judge(bare, atMost(200, DecisionRule::GuardedAcceptance, oneSided));
    EXPECT_EQ(guarded.standing, Undecided);
    EXPECT_EQ(guarded.sentence,
              u"cannot be decided, because the rule needs an uncertainty and the result states none: "
              u"150\u00a0mg/L against at most 200\u00a0mg/L (guard band for acceptance)"_s);
    EXPECT_FALSE(guarded.guardBand);
    // Beyond the limit the rule asks for no guard band, an absolute one needs no uncertainty.
    EXPECT_EQ(standing(measured(201, std::nullopt), atMost(200, DecisionRule::GuardedAcceptance, oneSided)),
              Outside);
    EXPECT_EQ(standing(bare, atMost(200, DecisionRule::GuardedRejection, oneSided)), Inside);
    EXPECT_EQ(standing(measured(300, std::nullopt), atMost(200, DecisionRule::GuardedRejection, oneSided)),
              Undecided);
    EXPECT_EQ(standing(bare, atMost(200, DecisionRule::GuardedBoth, GuardBand{Guard::Absolute, 50})), Inside);
    EXPECT_EQ(standing(bare, atMost(200, DecisionRule::GuardedBoth, GuardBand{Guard::Absolute, 51})),
              Undecided);
}

TEST(Compliance, BoundsAreDecidedWhereAllTheyLeaveOpenLiesOnOneSide)
{
    EXPECT_EQ(standing(lessThan(200), atMost(200)), Inside);
    EXPECT_EQ(standing(lessThan(201), atMost(200)), Undecided);
    EXPECT_EQ(standing(lessThan(50), atLeast(50)), Outside);
    EXPECT_EQ(standing(lessThan(51), atLeast(50)), Undecided);
    EXPECT_EQ(standing(lessThan(30), between(30, 50)), Outside);
    EXPECT_EQ(standing(lessThan(40), between(30, 50)), Undecided);
    EXPECT_EQ(standing(greaterThan(200), atMost(200)), Outside);
    EXPECT_EQ(standing(greaterThan(199), atMost(200)), Undecided);
    EXPECT_EQ(standing(greaterThan(50), atLeast(50)), Inside);
    EXPECT_EQ(standing(greaterThan(49), atLeast(50)), Undecided);
    Reported both = lessThan(50);
    both.greaterThan = 30;
    EXPECT_EQ(standing(both, between(30, 50)), Inside);
    EXPECT_EQ(standing(both, between(31, 50)), Undecided);

    const GuardBand twenty{Guard::Absolute, 20};
    EXPECT_EQ(standing(lessThan(180), atMost(200, DecisionRule::GuardedAcceptance, twenty)), Inside);
    EXPECT_EQ(standing(lessThan(181), atMost(200, DecisionRule::GuardedAcceptance, twenty)), Undecided);
    EXPECT_EQ(standing(greaterThan(220), atMost(200, DecisionRule::GuardedRejection, twenty)), Outside);
    EXPECT_EQ(standing(greaterThan(219), atMost(200, DecisionRule::GuardedRejection, twenty)), Undecided);
    // Where the reagent was used up the stated uncertainty says nothing.
    const GuardBand expanded{Guard::ExpandedUncertainty, 1};
    EXPECT_EQ(standing(greaterThan(300), atMost(200, DecisionRule::GuardedRejection, expanded)), Undecided);
    EXPECT_EQ(standing(greaterThan(300), atMost(200, DecisionRule::GuardedAcceptance, expanded)), Outside);
    EXPECT_TRUE(judge(greaterThan(199), atMost(200)).sentence.contains(u"only a bound is known"_s));
}

TEST(Compliance, SaysItInOneSentence)
{
    EXPECT_EQ(judge(measured(152.34, 9.06), atMost(200)).sentence,
              u"inside: 152.3 \u00b1 9.1\u00a0mg/L against at most 200\u00a0mg/L (simple acceptance)"_s);
    EXPECT_EQ(
        judge(measured(212, 9.06), atMost(200, DecisionRule::GuardedBoth, GuardBand{})).sentence,
        u"outside: 212.0 \u00b1 9.1\u00a0mg/L against at most 200\u00a0mg/L (guard band for acceptance and "
        u"rejection, 1.64 u = 7.5\u00a0mg/L)"_s);
    EXPECT_EQ(judge(measured(195, 10),
                    atMost(200, DecisionRule::GuardedAcceptance, GuardBand{Guard::ExpandedUncertainty, 1}))
                  .sentence,
              u"cannot be decided at this uncertainty: 195 \u00b1 10\u00a0mg/L against at most 200\u00a0mg/L "
              u"(guard "
              u"band for acceptance, U = 10\u00a0mg/L)"_s);
    EXPECT_EQ(
        judge(lessThan(6), labelFrom(10)).sentence,
        u"below the threshold: < 6.0\u00a0mg/L against a label threshold of 10\u00a0mg/L (simple acceptance)"_s);
    EXPECT_EQ(judge(measured(12, 1), labelFrom(10)).sentence,
              u"at or above the threshold: 12.0 \u00b1 1.0\u00a0mg/L against a label threshold of "
              u"10\u00a0mg/L (simple "
              u"acceptance)"_s);
    EXPECT_EQ(judge(measured(2.6, std::nullopt), between(2.5, 4)).sentence,
              u"inside: 2.60\u00a0mg/L against 2.5 to 4\u00a0mg/L (simple acceptance; the result states no "
              u"uncertainty)"_s);
}

TEST(Compliance, AValueBeyondTheLimitNeverLooksLikeIt)
{
    EXPECT_TRUE(judge(measured(200.04, 10), atMost(200)).sentence.contains(u"outside: 200.04 \u00b1 10.00\u00a0mg/L"_s))
        << judge(measured(200.04, 10), atMost(200)).sentence.toStdString();
    EXPECT_TRUE(judge(measured(200, 10), atMost(200)).sentence.contains(u"inside: 200 \u00b1 10"_s));
}

TEST(Compliance, StatesTheProbabilityBeyondWithItsAssumption)
{
    const auto beyond = judge(measured(195), atMost(200)).beyond; // one u below the limit
    ASSERT_TRUE(beyond);
    EXPECT_NEAR(beyond->probability, 0.158655, 1e-6);
    EXPECT_EQ(beyondLimitText(*beyond),
              u"probability 16\u00a0% that the true value lies beyond the limit, if it is "
              u"normally distributed about the result"_s);
    EXPECT_NEAR(judge(measured(205), atLeast(200)).beyond->probability, 0.158655, 1e-6);
    EXPECT_NEAR(judge(measured(200), atMost(200)).beyond->probability, 0.5, 1e-12);
    Reported few = measured(195);
    few.degreesOfFreedom = 1; // a quarter lies beyond one u of the Cauchy distribution
    const auto student = judge(few, atMost(200)).beyond;
    EXPECT_NEAR(student->probability, 0.25, 1e-12);
    EXPECT_TRUE(beyondLimitText(*student).contains(u"Student's t with 1.0 degrees of freedom"_s));
    EXPECT_TRUE(beyondLimitText({1e-5, infinite}).contains(u"less than 0.1"_s));
    EXPECT_TRUE(beyondLimitText({0.9999, infinite}).contains(u"more than 99.9"_s));
    EXPECT_FALSE(judge(measured(195, std::nullopt), atMost(200)).beyond);
    EXPECT_FALSE(judge(greaterThan(195), atMost(200)).beyond);
    EXPECT_FALSE(judge(lessThan(195), atMost(200)).beyond);
}

TEST(Compliance, AnUnitThatCannotBeHadIsSaidAndNotGuessed)
{
    Result result;
    result.measurand = u"analyte"_s;
    result.value = 0.1523;
    result.expandedUncertainty = 0.0091;
    result.coverageFactor = 2;
    result.unit = u"g/L"_s;
    const assay::Method method = test::risingMethod();
    const Judgement inMg = judge(result, method, atMost(200));
    EXPECT_EQ(inMg.standing, Inside);
    ASSERT_TRUE(inMg.reported);
    EXPECT_NEAR(*inMg.reported->value, 152.3, 1e-9);
    Specification perKilogram = atMost(200);
    perKilogram.unit = ReportUnit::MilligramPerKilogram;
    const Judgement refused = judge(result, method, perKilogram);
    EXPECT_EQ(refused.standing, Undecided);
    EXPECT_FALSE(refused.reported);
    EXPECT_TRUE(refused.sentence.contains(u"density"_s)) << refused.sentence.toStdString();
    EXPECT_EQ(judge(measured(100), perKilogram).standing, Undecided);
    EXPECT_EQ(judge(Reported{{}, {}, {}, {}, {}, {}, ReportUnit::MilligramPerLitre}, atMost(200)).standing,
              Undecided);
}

TEST(Compliance, NeverSpeaksOfLawOrSafety)
{
    for (const Specification &specification : {atMost(200), atLeast(50), between(30, 50), labelFrom(10),
                                               atMost(200, DecisionRule::GuardedBoth, GuardBand{})}) {
        for (const double value : {5.0, 40.0, 195.0, 300.0}) {
            const Judgement judgement = judge(measured(value), specification);
            for (const QString &word : {u"legal"_s, u"safe"_s, u"law"_s, u"complian"_s})
                EXPECT_FALSE(judgement.sentence.contains(word, Qt::CaseInsensitive));
        }
    }
}
