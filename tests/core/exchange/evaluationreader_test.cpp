// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <gtest/gtest.h>

#include <cmath>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using evaluation::Evaluation;
using evaluation::Result;
using test::listed;
using test::names;

namespace {

Evaluation written()
{
    run::Run run = test::plainRun();
    run.uncertainty = test::uncertainties();
    return evaluation::evaluate(test::risingMethod(), run);
}

/// What is read of it.
Result bare(Result result)
{
    result.budget.clear();
    result.checks.clear();
    result.terms.clear();
    if (result.degreesOfFreedom && std::isinf(*result.degreesOfFreedom))
        result.degreesOfFreedom.reset();
    return result;
}

} // namespace

TEST(EvaluationReader, ResultsComeBackToTheBit)
{
    Evaluation evaluation = written();
    ASSERT_EQ(evaluation.results.size(), 1U);
    evaluation.results.push_back(evaluation.results[0]);
    Result &bound = evaluation.results[1];
    bound.value.reset();
    bound.expandedUncertainty.reset();
    bound.coverageFactor.reset();
    bound.degreesOfFreedom = INFINITY;
    bound.lessThan = 0.1;
    bound.greaterThan = 1.0 / 3;
    bound.verdict = evaluation::Verdict::Repeat;
    const auto read = readResults(writeEvaluation(evaluation));
    ASSERT_TRUE(read.value) << listed(read.problems);
    ASSERT_EQ(read.value->size(), 2U);
    EXPECT_EQ((*read.value)[0], bare(evaluation.results[0]));
    EXPECT_TRUE((*read.value)[0].expandedUncertainty);
    EXPECT_EQ((*read.value)[1], bare(bound));
}

TEST(EvaluationReader, WhatIsNotKnownIsPassedOver)
{
    QByteArray text = writeEvaluation(written());
    text.replace("\"verdict\"", "\"mood\": \"good\", \"verdict\"");
    text.replace("\"factors\"", "\"later\": [1], \"factors\"");
    const auto read = readResults(text);
    ASSERT_TRUE(read.value) << listed(read.problems);
    EXPECT_EQ((*read.value)[0], bare(written().results[0]));
}

TEST(EvaluationReader, WhatIsNoEvaluationIsSaid)
{
    const QByteArray good = writeEvaluation(written());
    const auto faultOf = [&](const char *before, const char *after) {
        QByteArray text = good;
        text.replace(before, after);
        EXPECT_NE(text, good);
        const auto read = readResults(text);
        EXPECT_FALSE(read.value);
        return read.problems;
    };
    EXPECT_TRUE(names(faultOf("\"results\"", "\"outcome\""), "/results", "is missing"));
    EXPECT_TRUE(names(faultOf("\"reportable\"", "\"fine\""), "/results/0/verdict", "\"fine\""));
    EXPECT_TRUE(names(faultOf("\"n\": 2", "\"n\": 1.5"), "/results/0/n", "whole number"));
    for (const char *text : {"", "[]", "{", "7"})
        EXPECT_FALSE(readResults(text).value) << text;
}

} // namespace plateau::exchange
