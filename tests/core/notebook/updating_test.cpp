// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/updating.h"

#include "tests/core/notebook/fixture.h"

#include <set>
#include <thread>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::IsSupersetOf;
using ::testing::SizeIs;

class Updating : public NotebookTest
{
protected:
    void SetUp() override
    {
        write(file(), qUncompress(bytesOf(QStringLiteral(PLATEAU_NOTEBOOK_DATA "/schema1.plateau.z"))));
    }
    int schema() const { return RawFile(file()).value(u"PRAGMA user_version"_s).toInt(); }
};

TEST_F(Updating, IsNeededByAnOlderNotebookOnly)
{
    EXPECT_TRUE(needsUpdate(file()));
    EXPECT_EQ(schema(), 1);
    updateNotebook(file(), {}, surroundings());
    EXPECT_EQ(schema(), schemaSteps().back().number);
    EXPECT_FALSE(needsUpdate(file()));
    RawFile(file()).execute(u"DELETE FROM search_run WHERE run = (SELECT max(run) FROM search_run)"_s);
    EXPECT_TRUE(needsUpdate(file())) << "an index that was cut short";
    EXPECT_EQ(failureOf([&] { needsUpdate(file(u"none.plateau"_s)); }).kind(), Failure::Kind::NotFound);
    write(file(u"text.plateau"_s), "no notebook");
    EXPECT_EQ(failureOf([&] { needsUpdate(file(u"text.plateau"_s)); }).kind(), Failure::Kind::NotANotebook);
}

TEST_F(Updating, GoesThroughItsStagesInAnyThread)
{
    std::vector<UpdateStage> stages;
    std::vector<qint64> steps;
    std::thread thread([&] {
        updateNotebook(
            file(),
            [&](UpdateStage stage, qint64 done, qint64 of) {
                if (stages.empty() || stages.back() != stage)
                    stages.push_back(stage);
                if (stage == UpdateStage::Changing && (steps.empty() || steps.back() != done))
                    steps.push_back(done);
                EXPECT_LE(done, of);
                return true;
            },
            surroundings());
    });
    thread.join();
    EXPECT_THAT(stages, ElementsAre(UpdateStage::Checking, UpdateStage::Copying, UpdateStage::Changing,
                                    UpdateStage::Indexing));
    EXPECT_THAT(steps, SizeIs(schemaSteps().back().number - 1));
    EXPECT_THAT(reopen()->runs(), SizeIs(3));
}

TEST_F(Updating, ThatIsStoppedAnywhereGoesOnAtTheNextOpening)
{
    const auto readings = RawFile(file()).rows(u"SELECT * FROM reading"_s);
    std::set<UpdateStage> stoppedIn;
    std::set<int> stoppedAt;
    for (int looks = 0;; ++looks) {
        SCOPED_TRACE(looks);
        int left = looks;
        try {
            updateNotebook(
                file(),
                [&](UpdateStage stage, qint64, qint64) {
                    if (left == 0)
                        stoppedIn.insert(stage);
                    return left-- > 0;
                },
                surroundings());
            break;
        } catch (const Stopped &) {
            stoppedAt.insert(schema());
            EXPECT_EQ(RawFile(file()).value(u"PRAGMA integrity_check"_s).toString(), u"ok"_s);
            EXPECT_EQ(RawFile(file()).rows(u"SELECT * FROM reading"_s), readings);
            EXPECT_THAT(filesInFolder().filter(u".part"_s), IsEmpty());
        }
    }
    EXPECT_THAT(stoppedIn, IsSupersetOf({UpdateStage::Checking, UpdateStage::Copying, UpdateStage::Changing}));
    // Each time it goes on from where it was left, a step further than the time before.
    EXPECT_GE(stoppedAt.size(), 4U);
    EXPECT_EQ(schema(), schemaSteps().back().number);
    EXPECT_FALSE(needsUpdate(file()));
    EXPECT_THAT(reopen()->runs(), SizeIs(3));
}

TEST_F(Updating, ThatIsStoppedAtItsIndexHasItsSchemaAndMakesTheIndexNextTime)
{
    const auto beforeIndex = [](UpdateStage stage, qint64, qint64) { return stage != UpdateStage::Indexing; };
    EXPECT_THROW(updateNotebook(file(), beforeIndex, surroundings()), Stopped);
    EXPECT_EQ(schema(), schemaSteps().back().number);
    EXPECT_TRUE(needsUpdate(file()));
    updateNotebook(file(), {}, surroundings());
    EXPECT_FALSE(needsUpdate(file()));
}

} // namespace plateau::test
