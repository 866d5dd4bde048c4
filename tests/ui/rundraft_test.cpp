// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/bench/placewords.h"
#include "ui/bench/rundraft.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

class Draft : public Bench
{
protected:
    Draft()
    {
        draft.title = u"Perry tanks"_s;
        draft.samples = {{u"P-104"_s, {}, {}, {}, false, {{u"5"_s, u"50"_s}}},
                         {u"P-105"_s, {}, {}, {}, false, {}}};
        draft.pathLength_mm = u"10"_s;
        draft.uncertainty.texts = {u"0.002"_s, u"0,5"_s, u"0.2"_s, u"0.5"_s, u"0.8"_s, u"0.4"_s, u"0.2"_s};
        draft.startedAt = StoppedClock().now();
    }
    /// A time so many seconds after the start, as it is keyed.
    QString keyed(int seconds) const
    {
        return draft.startedAt.addSecs(seconds).toLocalTime().toString(u"yyyy-MM-dd HH:mm"_s);
    }
    /// But for the one that says that there is no standard.
    QStringList places() const
    {
        QStringList all;
        for (const assay::Problem &problem : ui::runOf(draft, method()).problems) {
            if (problem.pointer != "/standards"_L1)
                all << problem.pointer;
        }
        return all;
    }
    ui::RunDraft draft;
};

TEST_F(Draft, LaysBlanksFirstThenStandardThenSamplesWithTheirOwnBlanks)
{
    draft.standard = ui::StandardDraft{u"STD"_s, u"0,2"_s, u"2"_s, keyed(-3600), false, keyed(0), 1};
    draft.samples[1].ownBlank = true;
    const auto [run, plan, uncertainty, problems] = ui::runOf(draft, method());
    EXPECT_TRUE(problems.empty());
    std::vector<run::Role> roles;
    for (const run::Tube &tube : run.tubes)
        roles.push_back(tube.role);
    using enum run::Role;
    EXPECT_EQ(roles, (std::vector{Blank, Blank, Standard, Sample, Sample, Sample, Sample, SampleBlank}));
    EXPECT_EQ(run.tubes[2].standard, u"STD"_s);
    EXPECT_EQ(run.tubes[7].sample, u"P-105"_s);
    EXPECT_EQ(run.samples[0].dilution, (std::vector<run::DilutionStep>{{5, 50}}));
    EXPECT_DOUBLE_EQ(run.standards[0].lossPerHour, 0.02);
    EXPECT_DOUBLE_EQ(run::concentrationAtUse_g_per_L(run.standards[0]), 0.2 * 0.98);
    EXPECT_EQ(run.uncertainty->absorptivity_percent, 0.5);
    EXPECT_EQ(run.startedAt, draft.startedAt);
}

TEST_F(Draft, AStandardThatIsTooOldAlreadyIsSaidBeforeAnythingIsPipetted)
{
    draft.standard = ui::StandardDraft{u"STD"_s, u"0,2"_s, u"2"_s, keyed(-14 * 3600), true, {}, 1};
    const assay::Problems problems = ui::runOf(draft, method()).problems;
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_FALSE(assay::hasErrors(problems)) << "it is a warning";
    EXPECT_EQ(problems[0].pointer, u"/standards/0/preparedAt"_s);
    EXPECT_EQ(problems[0].message,
              u"The standard STD is too old: 14.0\u00a0h old, 75.4\u00a0% of its strength "
              "left. Make a fresh one."_s);
    draft.standard->preparedAt = keyed(-7 * 3600);
    EXPECT_TRUE(ui::runOf(draft, method()).problems.empty());
    draft.standard->lossPerHour_percent = u"0.0"_s;
    draft.standard->preparedAt = keyed(-14 * 3600);
    EXPECT_FALSE(places().contains(u"/standards/0/preparedAt"_s)) << "it keeps its strength";
}

TEST_F(Draft, NamesThePlaceOfATextThatIsNoNumberOnce)
{
    draft.samples[0].dilution = {{u"5x"_s, u"50"_s}};
    draft.uncertainty.texts[0] = u"0.002x"_s;
    EXPECT_THAT(places(), ::testing::UnorderedElementsAre(u"/samples/0/dilution/0/take_mL"_s,
                                                          u"/uncertainty/absorbance"_s));
}

TEST_F(Draft, ProblemsAreToldInTheWordsOfTheForm)
{
    draft.samples[0].dilution = {{u"5x"_s, u"50"_s}};
    draft.pathLength_mm.clear();
    draft.standard = ui::StandardDraft{u"STD"_s, {}, u"2"_s, keyed(-3600), true, {}, 1};
    const auto [run, plan, uncertainty, problems] = ui::runOf(draft, method());
    QStringList told;
    for (const assay::Problem &problem : ui::inWordsOfTheForm(problems, run))
        told << problem.pointer;
    EXPECT_THAT(told, ::testing::UnorderedElementsAre(u"Path length"_s, u"Standard STD, concentration"_s,
                                                      u"Sample P-104, dilution step 1, take"_s));
}

TEST_F(Draft, AStandardCountsForNothingThatNobodySaid)
{
    draft.standard = ui::StandardDraft{u"STD"_s, u"0,2"_s, {}, {}, true, {}, 2};
    EXPECT_THAT(places(), ::testing::ElementsAre(u"/standards/0/lossPerHour"_s));
    draft.standard->lossPerHour_percent = u"2"_s;
    EXPECT_THAT(places(), ::testing::ElementsAre(u"/standards/0/preparedAt"_s));
    draft.standard->preparedAt = u"soon"_s;
    EXPECT_THAT(places(), ::testing::ElementsAre(u"/standards/0/preparedAt"_s));
    draft.standard->preparedAt = keyed(-3600);
    EXPECT_THAT(places(), ::testing::IsEmpty());
    draft.standard->usedWhenRead = false;
    EXPECT_THAT(places(), ::testing::ElementsAre(u"/standards/0/usedAt"_s));
    draft.standard->usedAt = keyed(-7200); // before it was made
    EXPECT_THAT(places(), ::testing::ElementsAre(u"/standards/0/usedAt"_s));
    draft.standard->usedAt = keyed(0);
    EXPECT_THAT(places(), ::testing::IsEmpty());
    EXPECT_DOUBLE_EQ(run::concentrationAtUse_g_per_L(ui::runOf(draft, method()).run.standards[0]),
                     0.2 * 0.98);
}

TEST_F(Draft, AStandardThatKeepsNeedsNoTimeButTheMethodMayKnowBetter)
{
    draft.standard = ui::StandardDraft{u"STD"_s, u"0,2"_s, u"0"_s, {}, true, {}, 2};
    const assay::Problems problems = ui::runOf(draft, method()).problems;
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].pointer, u"/standards/0/lossPerHour"_s);
    EXPECT_FALSE(assay::hasErrors(problems));
    assay::Method keeping = method();
    keeping.standard.reset();
    EXPECT_TRUE(ui::runOf(draft, keeping).problems.empty());
}

TEST_F(Draft, RefusesTakeLargerThanMakeUpTo)
{
    draft.samples[0].dilution = {{u"50"_s, u"5"_s}};
    EXPECT_THAT(places(), ::testing::Contains(u"/samples/0/dilution/0/take_mL"_s));
}

TEST_F(Draft, RefusesTwoSamplesOfOneName)
{
    draft.samples[1].id = u"P-104"_s;
    EXPECT_THAT(places(), ::testing::Contains(u"/samples/1/id"_s));
}

TEST_F(Draft, AsksForATitleAndASample)
{
    draft.title = u"  "_s;
    draft.samples.clear();
    EXPECT_THAT(places(), ::testing::IsSupersetOf({u"/title"_s, u"/samples"_s}));
}

TEST_F(Draft, ASolidNeedsMassAndExtract)
{
    draft.form = run::Form::Solid;
    draft.samples = {{u"F-22"_s, u"5,012"_s, {}, {}, false, {}}};
    EXPECT_THAT(places(), ::testing::ElementsAre(u"/samples/0/extract_mL"_s));
    draft.samples[0].extract_mL = u"100"_s;
    const auto [run, plan, uncertainty, problems] = ui::runOf(draft, method());
    EXPECT_FALSE(assay::hasErrors(problems));
    EXPECT_EQ(run.samples[0].mass_g, 5.012);
    EXPECT_EQ(run.samples[0].extract_mL, 100.0);
}

TEST_F(Draft, PutsTheSampleVolumeOnEveryTubeOfTheSample)
{
    draft.samples[0].sampleVolume_mL = u"0,2"_s;
    const auto [run, plan, uncertainty, problems] = ui::runOf(draft, method());
    EXPECT_FALSE(assay::hasErrors(problems));
    EXPECT_EQ(run.tubes[2].sampleVolume_mL, 0.2);
    EXPECT_EQ(run.tubes[3].sampleVolume_mL, 0.2);
    EXPECT_FALSE(run.tubes[4].sampleVolume_mL);
}

TEST_F(Draft, CalibratingByAStandardNeedsOne)
{
    draft.calibration = run::Calibration::Standard;
    EXPECT_FALSE(ui::runOf(draft, method()).problems.empty());
}

} // namespace
} // namespace plateau::test
