// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/runrules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace plateau::quality {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

namespace {

std::vector<Violation> of(RunRule rule, const std::vector<double> &z)
{
    return violationsOf(z, {rule});
}

} // namespace

TEST(RunRules, OfTwoOfThreeNameThePointThatIsBeyondItself)
{
    // The third value is within: two of three are beyond, but it is not it that asks for a look.
    EXPECT_THAT(of(RunRule::TwoOfThreeBeyond2, {2.1, 2.2, 0.1}),
                ElementsAre(Violation{RunRule::TwoOfThreeBeyond2, 0, 1}));
    EXPECT_THAT(of(RunRule::TwoOfThreeBeyond2, {2.1, 0, 0, 2.1}), IsEmpty());
    EXPECT_THAT(of(RunRule::TwoOfThreeBeyond2, {-2.1, 0, -2.1}),
                ElementsAre(Violation{RunRule::TwoOfThreeBeyond2, 0, 2}));
}

TEST(RunRules, OfTheTwoLinesInARow)
{
    EXPECT_THAT(of(RunRule::OneBeyond2, {2, 2.01, -2.5}),
                ElementsAre(Violation{RunRule::OneBeyond2, 1, 1}, Violation{RunRule::OneBeyond2, 2, 2}));
    EXPECT_THAT(of(RunRule::TwoInARowBeyond2, {2.1, 0, 2.1}), IsEmpty());
    EXPECT_THAT(of(RunRule::TwoInARowBeyond2, {2.1, 2.1}),
                ElementsAre(Violation{RunRule::TwoInARowBeyond2, 0, 1}));
    EXPECT_THAT(of(RunRule::TwoInARowBeyond2, {2.1, -2.1}), IsEmpty());
    EXPECT_THAT(of(RunRule::OppositeBeyond2, {2.1, -2.1, 2}),
                ElementsAre(Violation{RunRule::OppositeBeyond2, 0, 1}));
    EXPECT_THAT(of(RunRule::FourInARowBeyond1, {1.1, 1.2, 1, 1.3, 1.1}), IsEmpty());
    EXPECT_THAT(of(RunRule::FourInARowBeyond1, {-1.1, -1.2, -1.1, -1.3}),
                ElementsAre(Violation{RunRule::FourInARowBeyond1, 0, 3}));
}

TEST(RunRules, OfSidesCountFromTheLengthOnThatTheyName)
{
    const std::vector<double> above(10, 0.5);
    EXPECT_EQ(of(RunRule::SevenOnOneSide, above).front().last, 6u);
    EXPECT_EQ(of(RunRule::EightOnOneSide, above).front().last, 7u);
    EXPECT_EQ(of(RunRule::NineOnOneSide, above).front().last, 8u);
    EXPECT_THAT(of(RunRule::TenOnOneSide, above), ElementsAre(Violation{RunRule::TenOnOneSide, 0, 9}));
    std::vector<double> broken = above;
    broken[4] = 0;
    EXPECT_THAT(of(RunRule::SevenOnOneSide, broken), IsEmpty());
}

TEST(RunRules, NameAPatternThatGoesOnAgain)
{
    EXPECT_THAT(of(RunRule::SixRisingOrFalling, {1, 2, 3, 4, 5, 6, 7}),
                ElementsAre(Violation{RunRule::SixRisingOrFalling, 0, 5},
                            Violation{RunRule::SixRisingOrFalling, 1, 6}));
}

TEST(RunRules, ThatAreOffSayNothing)
{
    EXPECT_THAT(violationsOf(std::vector<double>{9, -9, 9}, {}), IsEmpty());
    EXPECT_THAT(violationsOf({}, usualRunRules()), IsEmpty());
}

TEST(RunRules, TakeAnInfiniteDistanceForBeyond)
{
    const double far = std::numeric_limits<double>::infinity();
    EXPECT_THAT(of(RunRule::OneBeyond3, {0, -far}), ElementsAre(Violation{RunRule::OneBeyond3, 1, 1}));
}

TEST(RunRules, AreAllListedOnce)
{
    const auto rules = allRunRules();
    EXPECT_EQ(std::set<RunRule>(rules.begin(), rules.end()).size(), rules.size());
    EXPECT_EQ(rules.size(), 15u);
}

} // namespace plateau::quality
