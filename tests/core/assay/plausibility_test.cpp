// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/soundness.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <gtest/gtest.h>

namespace plateau::assay {

using namespace Qt::StringLiterals;
using test::errorsIn;
using test::listed;
using test::names;

namespace {

constexpr auto remark = Problem::Severity::Warning;

/// 0 buffer, 1 water, 2 sample, 3 mix, 4 wait, 5 A1, 6 starter, 7 mix, 8 wait, 9 A2
Method plain()
{
    return test::risingMethod();
}

/// The only thing said of the method.
void expectRemark(const Method &method, const char *pointer, const char *fragment)
{
    const Problems problems = problemsOf(method);
    EXPECT_TRUE(names(problems, pointer, fragment, remark)) << listed(problems);
    EXPECT_EQ(problems.size(), 1U) << listed(problems);
}

TEST(Plausibility, NothingIsSaidOfAPlainMethod)
{
    EXPECT_TRUE(problemsOf(plain()).empty()) << listed(problemsOf(plain()));
    EXPECT_TRUE(problemsOf(test::coupledMethod()).empty());
}

TEST(Plausibility, ReadingBeforeAnyWaitIsRemarkedWhereItIsTaken)
{
    Method method = plain();
    method.steps.erase(method.steps.begin() + 8);
    expectRemark(method, "/steps/8/read", "no wait since the last addition");
}

TEST(Plausibility, OneWaitServesTwoReadings)
{
    Method method = plain();
    method.steps.insert(method.steps.begin() + 6, ReadStep{u"A1b"_s});
    EXPECT_TRUE(problemsOf(method).empty()) << listed(problemsOf(method));
}

TEST(Plausibility, StarterBeforeTheFirstReadingIsRemarked)
{
    Method method = plain();
    method.steps = {AddStep{u"buffer"_s}, AddStep{u"water"_s}, AddStep{u"sample"_s},   AddStep{u"starter"_s},
                    WaitStep{{1, 2}, {}}, ReadStep{u"A1"_s},   WaitStep{{15, 40}, {}}, ReadStep{u"A2"_s}};
    const Problems problems = problemsOf(method);
    EXPECT_TRUE(names(problems, "/steps/3/add", "before anything is read", remark)) << listed(problems);
    EXPECT_TRUE(names(problems, "/measurands/0/signal", "nothing is added between", remark))
        << listed(problems);
    EXPECT_EQ(errorsIn(problems), 0);
}

TEST(Plausibility, StarterAfterTheLastReadingIsRemarkedOnce)
{
    Method method = plain();
    method.steps = {AddStep{u"buffer"_s}, AddStep{u"water"_s},  WaitStep{{1, 2}, {}},
                    ReadStep{u"A1"_s},    AddStep{u"sample"_s}, WaitStep{{15, 40}, {}},
                    ReadStep{u"A2"_s},    AddStep{u"starter"_s}};
    expectRemark(method, "/steps/7/add", "after the last reading");
}

TEST(Plausibility, AStepAfterTheLastReadingServesNothing)
{
    Method method = plain();
    method.steps.push_back(MixStep{});
    expectRemark(method, "/steps/10", "nothing is read after");
}

TEST(Plausibility, ASampleThatComesAfterTheLaterReadingIsAnError)
{
    Method method = plain();
    method.steps = {AddStep{u"buffer"_s},  AddStep{u"water"_s},  WaitStep{{1, 2}, {}}, ReadStep{u"A1"_s},
                    AddStep{u"starter"_s}, WaitStep{{1, 2}, {}}, ReadStep{u"A2"_s},    AddStep{u"sample"_s},
                    WaitStep{{1, 2}, {}},  ReadStep{u"A3"_s}};
    const Problems problems = problemsOf(method);
    EXPECT_TRUE(names(problems, "/measurands/0/signal/to", "before the sample is in the tube"))
        << listed(problems);
    EXPECT_EQ(errorsIn(problems), 1) << listed(problems);
}

TEST(Plausibility, ASampleRangeBeyondTheDiluentChangesTheVolume)
{
    Method method = plain();
    method.components[2].range_mL = Interval{0.05, 1.1};
    EXPECT_TRUE(problemsOf(method).empty()) << "1.1 - 0.1 is just what 1 mL makes up for";
    method.components[2].range_mL = Interval{0.05, 1.5};
    expectRemark(method, "/components/2/range_mL/1", "changes above 1.1 mL");
}

TEST(Plausibility, NoDiluentInTheTubeMakesUpForNothing)
{
    Method method = plain();
    method.steps.erase(method.steps.begin() + 1);
    expectRemark(method, "/diluent", "nothing makes up");
    method.components[2].range_mL.reset();
    EXPECT_TRUE(problemsOf(method).empty()) << "a sample without a range needs nothing made up";
}

TEST(Plausibility, AWindowBeyondThePhotometerIsRemarked)
{
    Method method = plain();
    method.window.maxSignal = 2.5;
    expectRemark(method, "/window/maxSignal", "more than the photometer may show");
}

TEST(Plausibility, APartThatNobodyPlaysIsSaidOnce)
{
    Method method = plain();
    method.diluent.clear();
    method.sample.clear();
    const Problems problems = problemsOf(method);
    EXPECT_TRUE(names(problems, "/diluent", "no component plays this part")) << listed(problems);
    EXPECT_TRUE(names(problems, "/sample", "no component plays this part")) << listed(problems);
    EXPECT_EQ(errorsIn(problems), 2) << listed(problems);
}

} // namespace
} // namespace plateau::assay
