// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/specification.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <gtest/gtest.h>

#include <functional>
#include <limits>

using namespace plateau;
using namespace plateau::evaluation;
using namespace Qt::StringLiterals;

namespace {

Specification maximum()
{
    Specification specification;
    specification.product = u"Perry"_s;
    specification.measurand = u"sulphite"_s;
    specification.upper = 200;
    specification.unit = ReportUnit::MilligramPerLitre;
    specification.source = u"Customer's specification 12, page 2"_s;
    specification.date = QDate(2026, 1, 15);
    return specification;
}

struct Row {
    const char *what;
    std::function<void(Specification &)> change;
    /// Empty: nothing is wrong.
    const char *pointer;
    const char *fragment;
};

} // namespace

TEST(Specification, WordsReadBack)
{
    for (const LimitKind kind :
         {LimitKind::Maximum, LimitKind::Minimum, LimitKind::Range, LimitKind::LabelThreshold})
        EXPECT_EQ(limitKindFromWord(limitKindWord(kind)), kind);
    for (const DecisionRule rule : {DecisionRule::SimpleAcceptance, DecisionRule::GuardedAcceptance,
                                    DecisionRule::GuardedRejection, DecisionRule::GuardedBoth})
        EXPECT_EQ(decisionRuleFromWord(decisionRuleWord(rule)), rule);
    EXPECT_EQ(limitKindFromWord(u"Maximum"_s), std::nullopt);
    EXPECT_EQ(decisionRuleFromWord({}), std::nullopt);
}

TEST(Specification, LimitsAreSaidInWords)
{
    Specification specification = maximum();
    EXPECT_EQ(limitText(specification), u"at most 200\u00a0mg/L"_s);
    specification.kind = LimitKind::LabelThreshold;
    specification.upper = 10;
    EXPECT_EQ(limitText(specification), u"a label threshold of 10\u00a0mg/L"_s);
    specification.kind = LimitKind::Range;
    specification.lower = 2.5;
    EXPECT_EQ(limitText(specification), u"2.5 to 10\u00a0mg/L"_s);
    specification.kind = LimitKind::Minimum;
    specification.upper.reset();
    EXPECT_EQ(limitText(specification), u"at least 2.5\u00a0mg/L"_s);
}

TEST(Specification, OneFaultGivesOneProblem)
{
    using Kind = GuardBand::Kind;
    const auto guard = [](DecisionRule rule, Kind kind, double size = 1) {
        return [=](Specification &s) {
            s.rule = rule;
            s.guard = GuardBand{kind, size};
        };
    };
    const Row rows[] = {
        {"as it stands", [](Specification &) {}, "", ""},
        {"no product", [](Specification &s) { s.product.clear(); }, "/product", "the product"},
        {"no measurand", [](Specification &s) { s.measurand = u" "_s; }, "/measurand", "the measurand"},
        {"no upper limit", [](Specification &s) { s.upper.reset(); }, "/upper", "is missing"},
        {"zero", [](Specification &s) { s.upper = 0; }, "/upper", "greater than 0"},
        {"too large", [](Specification &s) { s.upper = 1.1e7; }, "/upper", "at most"},
        {"no number", [](Specification &s) { s.upper = std::numeric_limits<double>::quiet_NaN(); }, "/upper",
         "greater than 0"},
        {"a lower limit too", [](Specification &s) { s.lower = 5; }, "/lower", "no meaning"},
        {"minimum without its limit",
         [](Specification &s) {
             s.kind = LimitKind::Minimum;
             s.upper.reset();
         },
         "/lower", "is missing"},
        {"minimum",
         [](Specification &s) {
             s.kind = LimitKind::Minimum;
             s.upper.reset();
             s.lower = 5;
         },
         "", ""},
        {"range from zero",
         [](Specification &s) {
             s.kind = LimitKind::Range;
             s.lower = 0;
         },
         "", ""},
        {"range of nothing",
         [](Specification &s) {
             s.kind = LimitKind::Range;
             s.lower = 200;
         },
         "/upper", "greater than lower"},
        {"no source", [](Specification &s) { s.source = u"\n"_s; }, "/source", "is blank"},
        {"no date", [](Specification &s) { s.date = {}; }, "/date", "is not a date"},
        {"guard band without a rule for it", [](Specification &s) { s.guard = GuardBand{}; }, "/guard",
         "simple acceptance"},
        {"rule without its guard band", [](Specification &s) { s.rule = DecisionRule::GuardedAcceptance; },
         "/guard", "is missing"},
        {"95 %", guard(DecisionRule::GuardedBoth, Kind::OneSided95), "", ""},
        {"95 % with a size", guard(DecisionRule::GuardedBoth, Kind::OneSided95, 2), "/guard/size",
         "no meaning"},
        {"U", guard(DecisionRule::GuardedRejection, Kind::ExpandedUncertainty, 1), "", ""},
        {"no U", guard(DecisionRule::GuardedRejection, Kind::ExpandedUncertainty, 0), "/guard/size",
         "greater than 0"},
        {"11 U", guard(DecisionRule::GuardedRejection, Kind::ExpandedUncertainty, 11), "/guard/size",
         "at most 10"},
        {"absolute", guard(DecisionRule::GuardedAcceptance, Kind::Absolute, 199), "", ""},
        {"absolute and all of it", guard(DecisionRule::GuardedAcceptance, Kind::Absolute, 200), "/guard/size",
         "leaves nothing"},
        {"absolute beyond the limit", guard(DecisionRule::GuardedRejection, Kind::Absolute, 200), "", ""},
        {"absolute below zero", guard(DecisionRule::GuardedRejection, Kind::Absolute, -1), "/guard/size",
         "greater than 0"},
    };
    for (const Row &row : rows) {
        Specification specification = maximum();
        row.change(specification);
        const assay::Problems problems = problemsOf(specification);
        EXPECT_EQ(problems.size(), *row.pointer ? 1U : 0U) << row.what << ": " << test::listed(problems);
        if (*row.pointer) {
            EXPECT_TRUE(test::names(problems, row.pointer, row.fragment))
                << row.what << ": " << test::listed(problems);
        }
    }
}

TEST(Specification, TheSameLimitStandsOnceInAList)
{
    Specification second = maximum();
    second.product = u" perry"_s;
    second.upper = 150;
    const assay::Problems twice = problemsOf(std::vector{maximum(), second});
    ASSERT_EQ(twice.size(), 1U) << test::listed(twice);
    EXPECT_TRUE(test::names(twice, "/specifications/1", "entry 1")) << test::listed(twice);
    second.source = u"Another customer"_s;
    EXPECT_TRUE(problemsOf(std::vector{maximum(), second}).empty());
    second.source = maximum().source;
    second.kind = LimitKind::LabelThreshold;
    EXPECT_TRUE(problemsOf(std::vector{maximum(), second}).empty());

    second.date = {};
    EXPECT_TRUE(
        test::names(problemsOf(std::vector{maximum(), second}), "/specifications/1/date", "is not a date"));
    Specification one = maximum();
    std::vector<Specification> many;
    for (std::size_t i = 0; i <= mostSpecifications; ++i) {
        one.product = QString::number(i);
        many.push_back(one);
    }
    EXPECT_TRUE(test::names(problemsOf(many), "/specifications", "1001 limits"));
    many.pop_back();
    EXPECT_TRUE(problemsOf(many).empty());
}

TEST(Specification, IsFoundByProductAndByIdOrNameOfTheMeasurand)
{
    assay::Method method = test::risingMethod();
    method.measurands[0].id = u"sulphite"_s;
    method.measurands[0].name = u"Sulphite as SO2"_s;
    method.derived = {{u"bound"_s, u"Bound sulphite"_s, {{{}, u"sulphite"_s, 1}}}};
    Specification byName = maximum();
    byName.measurand = u"Sulphite  as SO2"_s;
    byName.product = u"PERRY "_s;
    Specification bound = maximum();
    bound.measurand = u"bound sulphite"_s;
    Specification cider = maximum();
    cider.product = u"Cider"_s;
    const std::vector all{maximum(), bound, byName, cider};
    EXPECT_EQ(specificationsFor(all, u"perry"_s, u"sulphite"_s, method), (std::vector{maximum(), byName}));
    EXPECT_EQ(specificationsFor(all, u"Perry"_s, u"bound"_s, method), (std::vector{bound}));
    EXPECT_TRUE(specificationsFor(all, {}, u"sulphite"_s, method).empty());
    EXPECT_TRUE(specificationsFor(all, u"Perry"_s, u"other"_s, method).empty());
}
