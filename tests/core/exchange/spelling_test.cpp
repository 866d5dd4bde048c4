// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/spelling.h"

#include "tests/support/print.h"

#include <gtest/gtest.h>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

TEST(Spelling, SlipsFindTheirWord)
{
    const QStringList known{u"volume_mL"_s, u"name"_s, u"range_mL"_s, u"concentration_g_per_L"_s};
    EXPECT_EQ(nearest(u"volume_ml"_s, known), u"volume_mL"_s);
    EXPECT_EQ(nearest(u"volumeML"_s, known), u"volume_mL"_s);
    EXPECT_EQ(nearest(u"volme_mL"_s, known), u"volume_mL"_s);
    EXPECT_EQ(nearest(u"concentration_g_L"_s, known), u"concentration_g_per_L"_s);
    EXPECT_EQ(nearest(u"nam"_s, known), u"name"_s);
}

TEST(Spelling, OtherWordsFindNone)
{
    const QStringList known{u"volume_mL"_s, u"name"_s, u"id"_s};
    EXPECT_EQ(nearest(u"operator"_s, known), QString());
    EXPECT_EQ(nearest(u"x"_s, known), QString());
    EXPECT_EQ(nearest(u""_s, known), QString());
    EXPECT_EQ(nearest(QString(100'000, u'v'), known), QString());
}

} // namespace plateau::exchange
