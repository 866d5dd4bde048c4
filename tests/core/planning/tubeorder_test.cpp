// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/tubeorder.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace plateau::planning {
namespace {

run::Tube blank()
{
    run::Tube tube;
    tube.role = run::Role::Blank;
    return tube;
}

run::Tube sample(const QString &id)
{
    run::Tube tube;
    tube.sample = id;
    return tube;
}

std::string letters(const std::vector<run::Tube> &tubes)
{
    std::string text;
    for (const run::Tube &tube : tubes)
        text += tube.role == run::Role::Blank ? "-" : tube.sample.toStdString();
    return text;
}

const std::vector<run::Tube> fiveTubes{blank(), blank(), sample(u"a"_s), sample(u"a"_s), sample(u"b"_s)};

TEST(TubeOrder, CountsTubesOfOneKind)
{
    const std::vector<TubeKey> keys = keysOf(fiveTubes);
    ASSERT_EQ(keys.size(), 5U);
    EXPECT_EQ(keys[1], (TubeKey{run::Role::Blank, {}, {}, 2}));
    EXPECT_EQ(keys[3], (TubeKey{run::Role::Sample, u"a"_s, {}, 2}));
    EXPECT_EQ(keys[4], (TubeKey{run::Role::Sample, u"b"_s, {}, 1}));
}

TEST(TubeOrder, TellsApartTubesOfOneSampleByTheirVolume)
{
    std::vector<run::Tube> tubes{sample(u"a"_s), sample(u"a"_s)};
    tubes[1].sampleVolume_mL = 0.2;
    EXPECT_EQ(keysOf(tubes)[1].number, 1);
}

TEST(TubeOrder, WithNoWishNothingMoves)
{
    EXPECT_EQ(letters(arranged(fiveTubes, {})), "--aab");
}

TEST(TubeOrder, MovesOneTubeAndLeavesTheRestInOrder)
{
    const std::vector<TubeKey> keys = keysOf(fiveTubes);
    EXPECT_EQ(letters(arranged(fiveTubes, moved(keys, 1, 4))), "-aab-");
    EXPECT_EQ(letters(arranged(fiveTubes, moved(keys, 4, 0))), "b--aa");
    EXPECT_EQ(letters(arranged(fiveTubes, moved(keys, 2, 2))), "--aab");
}

TEST(TubeOrder, ATubeThatComesNewStandsBehindItsOwnKind)
{
    const std::vector<TubeKey> wanted = moved(keysOf(fiveTubes), 4, 0);
    std::vector<run::Tube> more = fiveTubes;
    more.push_back(sample(u"b"_s));
    EXPECT_EQ(letters(arranged(more, wanted)), "bb--aa");
}

TEST(TubeOrder, ATubeThatWentIsForgotten)
{
    const std::vector<TubeKey> wanted = moved(keysOf(fiveTubes), 4, 0);
    EXPECT_EQ(letters(arranged({blank(), sample(u"a"_s)}, wanted)), "-a");
}

TEST(TubeOrder, EveryTubeComesOnceWhateverIsWanted)
{
    std::vector<TubeKey> wanted = keysOf(fiveTubes);
    wanted.insert(wanted.begin(), wanted.back());
    wanted.push_back({run::Role::Sample, u"gone"_s, {}, 1});
    EXPECT_EQ(letters(arranged(fiveTubes, wanted)), "b--aa");
}

} // namespace
} // namespace plateau::planning
