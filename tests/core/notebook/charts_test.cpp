// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

namespace plateau::test {

using namespace notebook;
using namespace Qt::StringLiterals;
using charts::Kind;
using charts::Quantity;
using charts::Subject;
using quality::RunRule;
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

const Subject recovery{Quantity::StandardRecovery, u"malate"_s, u"malate"_s, u"STD"_s};
const ChartValue value{Quantity::StandardRecovery, {1}, u"malate"_s, u"STD"_s};

class ChartsTest : public NotebookTest
{
protected:
    void SetUp() override { makeFilledFile(); }
};

} // namespace

TEST_F(ChartsTest, SettingsComeBackAsTheyWereSaved)
{
    charts::Settings settings;
    settings.kind = Kind::WeightedAverage;
    settings.limits = charts::EarlierRuns{1, 30, quality::SpreadFrom::StandardDeviation};
    settings.constants = charts::ConstantsFrom::PrintedTable;
    settings.rules = {RunRule::OneBeyond2, RunRule::FourInARowBeyond1};
    settings.subgroup = 3;
    settings.lambda = 0.3;
    settings.width = 2.7;
    settings.k = 0.25;
    settings.h = 4;
    {
        const auto notebook = reopen();
        EXPECT_FALSE(notebook->charts().settings(recovery));
        EXPECT_TRUE(notebook->charts().saveSettings(recovery, settings, u"Ines Kaddour"_s));
        EXPECT_FALSE(notebook->charts().saveSettings(recovery, settings, u"Ines Kaddour"_s));
    }
    const auto notebook = reopen();
    const auto stored = notebook->charts().settings(recovery);
    ASSERT_TRUE(stored);
    EXPECT_EQ(stored->settings, settings);
    EXPECT_EQ(stored->person, u"Ines Kaddour"_s);
    EXPECT_EQ(stored->version, 1);
    Subject all = recovery;
    all.name.clear();
    EXPECT_FALSE(notebook->charts().settings(all));
    EXPECT_TRUE(notebook->verify().sound());
}

TEST_F(ChartsTest, FixedLimitsReplaceThoseBeforeAndKeepTheirSource)
{
    const auto notebook = reopen();
    notebook->charts().saveSettings(recovery, {}, u"Ines Kaddour"_s);
    charts::Settings fixed;
    fixed.limits = charts::FixedLimits{99.5, 1.25, u"validation of 2025"_s, QDate(2025, 11, 3)};
    fixed.rules.clear();
    EXPECT_TRUE(notebook->charts().saveSettings(recovery, fixed, u"Tomas Brandl"_s));
    const auto stored = notebook->charts().settings(recovery);
    EXPECT_EQ(stored->settings, fixed);
    EXPECT_EQ(stored->version, 2);
    EXPECT_TRUE(notebook->verify().sound());
}

TEST_F(ChartsTest, SettingsThatCannotBeAreRefused)
{
    const auto notebook = reopen();
    charts::Settings settings;
    settings.limits = charts::FixedLimits{100, 1, {}, QDate(2025, 11, 3)};
    EXPECT_EQ(failureOf([&] { notebook->charts().saveSettings(recovery, settings, u"I"_s); }).kind(),
              Failure::Kind::Refused);
    settings.limits = charts::EarlierRuns{999, 20, {}};
    EXPECT_EQ(failureOf([&] { notebook->charts().saveSettings(recovery, settings, u"I"_s); }).sentence(),
              u"The settings of the chart were not stored: there is no run 999."_s);
    EXPECT_FALSE(notebook->charts().settings(recovery));
}

TEST_F(ChartsTest, AValueIsLeftOutAndTakenBackOnlyWithAReason)
{
    auto notebook = reopen();
    const auto refusal = [&](const auto &act) { return failureOf(act).kind(); };
    EXPECT_EQ(refusal([&] { notebook->charts().leaveOut(value, u"I"_s, u" "_s); }), Failure::Kind::Refused);
    EXPECT_EQ(refusal([&] { notebook->charts().takeBack(value, u"I"_s, u"not it"_s); }),
              Failure::Kind::Refused);
    notebook->charts().leaveOut(value, u"Ines Kaddour"_s, u"wrong flask"_s);
    EXPECT_EQ(refusal([&] { notebook->charts().leaveOut(value, u"I"_s, u"again"_s); }),
              Failure::Kind::Refused);
    notebook->charts().takeBack(value, u"Tomas Brandl"_s, u"the flask was right"_s);
    notebook->charts().leaveOut(value, u"Ines Kaddour"_s, u"wrong flask after all"_s);
    EXPECT_EQ(notebook->history({1}).back().action, u"chartValueLeftOut"_s);
    EXPECT_TRUE(notebook->verify().sound());
    notebook.reset(); // it keeps every other reader out
    EXPECT_EQ(RawFile(file()).value(u"SELECT count(*) FROM chart_omission WHERE run = 1"_s).toInt(), 3);
}

TEST_F(ChartsTest, ARunThatIsNoneIsRefused)
{
    const auto notebook = reopen();
    ChartValue other = value;
    other.run = {999};
    EXPECT_EQ(failureOf([&] { notebook->charts().leaveOut(other, u"I"_s, u"why"_s); }).sentence(),
              u"Nothing was stored: there is no run 999."_s);
}

TEST_F(ChartsTest, AChangedSettingIsFoundByVerification)
{
    {
        const auto notebook = reopen();
        notebook->charts().saveSettings(recovery, {}, u"Ines Kaddour"_s);
    }
    {
        RawFile raw(file());
        raw.behindTheTriggers([&] { raw.execute(u"UPDATE chart_setting SET rules = 'none'"_s); });
    }
    const auto notebook = Notebook::open(file(), Access::ReadOnly);
    EXPECT_EQ(failureOf([&] { notebook->charts().settings(recovery); }).kind(), Failure::Kind::Damaged);
    EXPECT_EQ(notebook->verify().findings.at(0).place, u"chart_setting 1"_s);
}

} // namespace plateau::test
