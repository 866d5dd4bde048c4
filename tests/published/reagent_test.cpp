// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
// Facts of the bench: common practice, no source.
#include "core/run/reagent.h"

#include <gtest/gtest.h>

using namespace plateau;

TEST(Reagent, ElevenMillilitresAtTwoTenthsServeFiftyFiveTubes)
{
    EXPECT_EQ(run::tubesServed(11, 0.2), 55);
    EXPECT_EQ(run::tubesServed(10.99, 0.2), 54);
}

TEST(Reagent, ExactMultiplesServeTheLastTube)
{
    EXPECT_EQ(run::tubesServed(0.3, 0.1), 3); // 0.3 / 0.1 is 2.9999999999999996 in binary
    EXPECT_EQ(run::tubesServed(2.1, 0.7), 3);
}

TEST(Reagent, NothingServesNothing)
{
    EXPECT_EQ(run::tubesServed(0, 0.2), 0);
    EXPECT_EQ(run::tubesServed(5, 0), 0);
    EXPECT_EQ(run::tubesServed(-1, 0.2), 0);
}
