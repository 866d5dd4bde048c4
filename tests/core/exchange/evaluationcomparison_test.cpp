// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/evaluationcomparison.h"

#include "core/exchange/writers.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace plateau;
using namespace Qt::StringLiterals;
using exchange::differenceOf;

namespace {

/// With a dilution to advise, uncertainties and a budget.
evaluation::Evaluation strongRun()
{
    run::Run run = test::plainRun();
    run.tubes[1].readings[u"A2"_s] = 1.630;
    run.tubes[2].readings[u"A2"_s] = 1.640;
    run.uncertainty = test::uncertainties();
    return evaluation::evaluate(test::risingMethod(), run);
}

QString placeOfDifference(const evaluation::Evaluation &before, const evaluation::Evaluation &after)
{
    const auto difference = differenceOf(exchange::writeEvaluation(before), exchange::writeEvaluation(after));
    return difference ? difference->place : u"none"_s;
}

} // namespace

TEST(EvaluationComparison, OtherWordsAreNoDifference)
{
    evaluation::Evaluation reworded = strongRun();
    for (evaluation::Check &check : reworded.checks)
        check.whatToDo += u" Said otherwise."_s;
    for (evaluation::Result &result : reworded.results) {
        for (evaluation::Check &check : result.checks)
            check.finding.clear();
        for (evaluation::BudgetTerm &term : result.budget)
            term.term = u"renamed"_s;
    }
    EXPECT_EQ(placeOfDifference(strongRun(), reworded), u"none"_s);
}

TEST(EvaluationComparison, ChangedValueVerdictFlagAndAdviceAreDifferences)
{
    const evaluation::Evaluation before = strongRun();
    evaluation::Evaluation after = before;
    after.results[0].value = std::nextafter(*after.results[0].value, 10.0);
    EXPECT_EQ(placeOfDifference(before, after), u"/results/0/value"_s);
    after = before;
    after.results[0].verdict = evaluation::Verdict::Reportable;
    EXPECT_EQ(placeOfDifference(before, after), u"/results/0/verdict"_s);
    after = before;
    after.results[0].budget[1].standardUncertainty *= 2;
    EXPECT_EQ(placeOfDifference(before, after), u"/results/0/budget/1/standardUncertainty"_s);
    after = before;
    const auto advised = std::ranges::find_if(
        after.checks, [](const evaluation::Check &check) { return check.advice.has_value(); });
    ASSERT_NE(advised, after.checks.end());
    advised->advice->steps.front().take_mL += 1;
    EXPECT_TRUE(placeOfDifference(before, after).endsWith(u"/advice/steps/0/take_mL"_s));
    after = before;
    after.checks.front().passed = !after.checks.front().passed;
    EXPECT_EQ(placeOfDifference(before, after), u"/checks/0/passed"_s);
    after = before;
    after.checks.front().id = evaluation::CheckId::LotExpired;
    EXPECT_EQ(placeOfDifference(before, after), u"/checks/0/id"_s);
    after = before;
    after.checks.pop_back();
    EXPECT_EQ(placeOfDifference(before, after), u"/checks"_s);
}

TEST(EvaluationComparison, FieldThatIsNullIsOneThatIsNotThere)
{
    EXPECT_FALSE(differenceOf(R"({"a": 1, "b": null})", R"({"a": 1})"));
    EXPECT_FALSE(differenceOf(R"({"a": 1, "b": 2})", R"({"b": 2.0, "a": 1})"));
    const auto added = differenceOf(R"({"a": 1})", R"({"a": 1, "greaterThan": 0.5})");
    ASSERT_TRUE(added);
    EXPECT_EQ(added->place, u"/greaterThan"_s);
    EXPECT_EQ(added->before, u"nothing"_s);
    EXPECT_EQ(added->after, u"0.5"_s);
}

TEST(EvaluationComparison, TextThatIsNoDocumentDiffers)
{
    EXPECT_FALSE(differenceOf("{", "{"));
    const auto difference = differenceOf("{", "{}");
    ASSERT_TRUE(difference);
    EXPECT_EQ(difference->place, QString());
    EXPECT_EQ(difference->before, u"no evaluation that can be read"_s);
}
