// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/laboratory.h"

#include <gtest/gtest.h>

namespace plateau::planning {
namespace {

TEST(Laboratory, UsualOneHasARackOfTwentyFour)
{
    const Laboratory laboratory = usualLaboratory();
    EXPECT_EQ(laboratory.rackRows * laboratory.rackColumns, 24);
}

} // namespace
} // namespace plateau::planning
