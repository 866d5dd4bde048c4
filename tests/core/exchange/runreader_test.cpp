// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/readers.h"

#include "tests/core/exchange/documents.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <gtest/gtest.h>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using assay::Problem;
using test::bytes;
using test::changed;
using test::listed;
using test::methodDocument;
using test::names;
using test::runDocument;

namespace {

Read<RunDocument> read(const nlohmann::ordered_json &document)
{
    return readRun(bytes(document), test::installed);
}

void expectRows(const std::vector<test::ChangedDocument> &rows)
{
    for (const test::ChangedDocument &row : rows) {
        const char *value = row.change.value ? row.change.value : "taken away";
        const auto result = read(changed(runDocument(), row.change));
        if (*row.fragment) {
            EXPECT_FALSE(result.value) << row.change.pointer << " " << value;
            EXPECT_EQ(result.problems.size(), 1U)
                << row.change.pointer << " " << value << ": " << listed(result.problems);
            EXPECT_TRUE(names(result.problems, row.pointer, row.fragment)) << listed(result.problems);
        } else {
            EXPECT_TRUE(result.value && result.problems.empty())
                << row.change.pointer << " " << value << ": " << listed(result.problems);
        }
    }
}

} // namespace

TEST(RunReader, EveryFieldArrives)
{
    const auto result = read(runDocument());
    ASSERT_TRUE(result.value) << listed(result.problems);
    const run::Run &run = result.value->run;
    EXPECT_FALSE(result.value->methodEmbedded);
    EXPECT_EQ(result.value->method.id, u"example-acid"_s);
    EXPECT_EQ(run.title, u"Perry tanks, morning"_s);
    EXPECT_EQ(run.method, u"example-acid"_s);
    EXPECT_EQ(run.wavelength_nm, 340);
    EXPECT_EQ(run.pathLength_mm, 10.0);
    EXPECT_EQ(run.calibration, run::Calibration::Absorptivity);
    EXPECT_EQ(run.startedAt->offsetFromUtc(), 3600);
    EXPECT_EQ(run.uncertainty, (run::UncertaintyInputs{0.002, 0.5, 0.2, 0.5, 0.8, 0.4, 0.2}));
    ASSERT_EQ(run.standards.size(), 1U);
    EXPECT_EQ(run.standards[0].lossPerHour, 0.02);
    EXPECT_EQ(run.standards[0].uncertainty_percent, 0.75);
    EXPECT_EQ(run.standards[0].measurand, u"example-acid"_s);
    EXPECT_EQ(run.standards[0].preparedAt->secsTo(*run.standards[0].usedAt), 5400);
    ASSERT_EQ(run.samples.size(), 2U);
    EXPECT_EQ(run.samples[0].dilution, std::vector<run::DilutionStep>({{5, 50, 0.15}}));
    EXPECT_EQ(run.samples[1].form, run::Form::Solid);
    EXPECT_EQ(run.samples[1].mass_g, 5.012);
    ASSERT_EQ(run.tubes.size(), 8U);
    EXPECT_EQ(run.tubes[3].sampleVolume_mL, 0.2);
    EXPECT_EQ(run.tubes[3].readings.size(), 1U);
    EXPECT_EQ(run.tubes[3].pipetted_mL, (std::map<QString, double>{{u"buffer"_s, 1.1}, {u"sample"_s, 0.21}}));
    EXPECT_EQ(run.tubes[2].addedAt_min,
              (std::map<QString, double>{{u"sample"_s, 1.25}, {u"starter"_s, 6.5}}));
    EXPECT_EQ(run.tubes[2].readAt_min, (std::map<QString, double>{{u"A1"_s, 5.5}, {u"A2"_s, 22.0}}));
    EXPECT_TRUE(run.tubes[3].addedAt_min.empty() && run.tubes[3].readAt_min.empty());
    EXPECT_EQ(run.tubes[4].spoilt, u"knocked over"_s);
    EXPECT_EQ(run.tubes[5].spike, (run::Spike{u"STD"_s, 0.1}));
    EXPECT_EQ(run.tubes[7].readings.at(u"A2"_s), run::Reading(run::ReadingSeries{{15, 0.512}, {20, 0.514}}));
    ASSERT_EQ(run.lots.size(), 2U);
    EXPECT_EQ(run.lots[0].expires, QDate(2027, 1, 31));
    EXPECT_FALSE(run.lots[1].expires);
}

TEST(RunReader, FieldsThatMayBeLeftOutAndThoseThatMayNot)
{
    expectRows({
        {{"/title", nullptr}, "", ""},
        {{"/wavelength_nm", nullptr}, "", ""},
        {{"/pathLength_mm", nullptr}, "", ""},
        {{"/calibration", nullptr}, "", ""},
        {{"/startedAt", nullptr}, "", ""},
        {{"/uncertainty", nullptr}, "", ""},
        {{"/uncertainty/extract_percent", nullptr}, "", ""},
        {{"/lots", nullptr}, "", ""},
        {{"/lots/0/expires", nullptr}, "", ""},
        {{"/standards/0/measurand", nullptr}, "", ""},
        {{"/standards/0/lossPerHour", nullptr}, "", ""},
        {{"/standards/0/uncertainty_percent", nullptr}, "", ""},
        {{"/standards/0/usedAt", nullptr}, "", ""},
        {{"/samples/0/form", nullptr}, "", ""},
        {{"/samples/0/dilution", nullptr}, "", ""},
        {{"/samples/0/dilution/0/uncertainty_percent", nullptr}, "", ""},
        {{"/tubes/3/pipetted_mL", nullptr}, "", ""},
        {{"/tubes/4/spoilt", nullptr}, "", ""},
        {{"/tubes/4/readings", nullptr}, "", ""},
        {{"/tubes/2/addedAt_min", nullptr}, "", ""},
        {{"/tubes/2/readAt_min", nullptr}, "", ""},
        {{"/tubes/2/readAt_min/A1", nullptr}, "", ""},
        {{"/format", nullptr}, "/format", "is missing"},
        {{"/method", nullptr}, "/method", "is missing"},
        {{"/samples", nullptr}, "/samples", "is missing"},
        {{"/tubes", nullptr}, "/tubes", "is missing"},
        {{"/standards/0/concentration_g_per_L", nullptr}, "/standards/0/concentration_g_per_L", "is missing"},
        {{"/standards/0/preparedAt", nullptr}, "/standards/0/preparedAt", "is missing"},
        {{"/samples/1/mass_g", nullptr}, "/samples/1/mass_g", "is missing"},
        {{"/samples/0/dilution/0/take_mL", nullptr}, "/samples/0/dilution/0/take_mL", "is missing"},
        {{"/tubes/0/role", nullptr}, "/tubes/0/role", "is missing"},
        {{"/tubes/2/sample", nullptr}, "/tubes/2/sample", "is missing"},
        {{"/tubes/5/spike", nullptr}, "/tubes/5/spike", "is missing"},
        {{"/tubes/5/spike/volume_mL", nullptr}, "/tubes/5/spike/volume_mL", "is missing"},
        {{"/tubes/7/readings/A2/0/at_min", nullptr}, "/tubes/7/readings/A2/0/at_min", "is missing"},
        {{"/lots/0/lot", nullptr}, "/lots/0/lot", "is missing"},
    });
}

TEST(RunReader, OneFaultGivesOneProblem)
{
    expectRows({
        {{"/format", R"("plateau-method/1")"}, "/format", "expected the format \"plateau-run/1\""},
        {{"/method", R"("unknown")"}, "/method", "no method \"unknown\" is installed"},
        {{"/method", "7"}, "/method", "expected the id of an installed method or a whole method"},
        {{"/operator", R"("me")"}, "/operator", "\"operator\" is not known here"},
        {{"/wavelength", "340"}, "/wavelength", "did you mean \"wavelength_nm\"?"},
        {{"/wavelength_nm", "405"},
         "/wavelength_nm",
         "no absorptivity for 405 nm; it has one for 334, 340, 365 nm"},
        {{"/wavelength_nm", "340.5"}, "/wavelength_nm", "whole number"},
        {{"/wavelength_nm", "365"}, "", ""},
        {{"/pathLength_mm", "-10"}, "/pathLength_mm", "not -10"},
        {{"/calibration", R"("curve")"},
         "/calibration",
         R"(expected one of "absorptivity", "standard", "line")"},
        {{"/calibration", R"("standard")"}, "", ""},
        {{"/calibration", R"("line")"}, "/calibration", "three different standard amounts"},
        {{"/startedAt", R"("2026-03-02T09:10:00")"}, "/startedAt", "a time with its offset"},
        {{"/startedAt", R"("2026-03-02T09:10:00Z")"}, "", ""},
        {{"/startedAt", R"("2 March")"}, "/startedAt", "a time with its offset"},
        {{"/uncertainty/absorbance", "-0.1"}, "/uncertainty/absorbance", "not -0.1"},
        {{"/uncertainty/pipette_percent", "1"}, "/uncertainty/pipette_percent", "not known here"},
        {{"/standards/0/preparedAt", R"("2026-03-02T10:10:00+01:00")"},
         "/standards/0/usedAt",
         "before preparedAt"},
        {{"/standards/0/preparedAt", R"("2026-03-02T10:10:00+02:00")"}, "", ""},
        {{"/standards/0/preparedAt", R"("2026-03-02")"}, "/standards/0/preparedAt", "a time with its offset"},
        {{"/standards/0/lossPerHour", "2"}, "/standards/0/lossPerHour", "below 1"},
        {{"/standards/0/uncertainty_percent", "101"}, "/standards/0/uncertainty_percent", "not 101"},
        {{"/standards/0/uncertainty_percent", R"("1 %")"}, "/standards/0/uncertainty_percent", "found text"},
        {{"/standards/0/concentration_g_per_L", "-0.2"}, "/standards/0/concentration_g_per_L", "not -0.2"},
        {{"/standards/0/measurand", R"("malt")"}, "/standards/0/measurand", "no measurand \"malt\""},
        {{"/samples/0/form", R"("gas")"}, "/samples/0/form", R"(expected one of "liquid", "solid")"},
        {{"/samples/1/form", R"("gas")"}, "/samples/1/form", "found \"gas\""},
        {{"/samples/0/mass_g", "5"}, "/samples/0/mass_g", "a liquid has no mass_g"},
        {{"/samples/0/dilution", R"("1:10")"}, "/samples/0/dilution", "expected a list"},
        {{"/samples/0/dilution/0/take_mL", "60"}, "/samples/0/dilution/0/take_mL", "cannot be made up"},
        {{"/samples/0/dilution/0/makeUpto_mL", "50"},
         "/samples/0/dilution/0/makeUpto_mL",
         "did you mean \"makeUpTo_mL\"?"},
        {{"/tubes", "[]"}, "/tubes", "at least one tube"},
        {{"/tubes/0/role", R"("Blank")"}, "/tubes/0/role", "expected one of \"blank\", \"sampleBlank\""},
        {{"/tubes/2/role", R"("probe")"}, "/tubes/2/role", "found \"probe\""},
        {{"/tubes/2/sample", R"("P-105")"}, "/tubes/2/sample", "no sample \"P-105\""},
        {{"/tubes/2/sample", R"("")"}, "/tubes/2/sample", "is blank"},
        {{"/tubes/0/sample", R"("")"}, "/tubes/0/sample", "is blank"},
        {{"/tubes/0/sample", R"("P-104")"}, "/tubes/0/sample", "does not go with the role \"blank\""},
        {{"/tubes/1/standard", R"("X")"}, "/tubes/1/standard", "no standard \"X\""},
        {{"/tubes/6/sample", R"("P-104")"}, "/tubes/6/standard", "exactly one of them"},
        {{"/tubes/2/spike", R"({"standard": "STD", "volume_mL": 0.1})"}, "/tubes/2/spike", "does not go"},
        {{"/tubes/5/spike/standard", R"("X")"}, "/tubes/5/spike/standard", "no standard \"X\""},
        {{"/tubes/3/sampleVolume_mL", "0"}, "/tubes/3/sampleVolume_mL", "not 0"},
        {{"/samples/0/dilution/0/uncertainty_percent", "0"}, "", ""},
        {{"/samples/0/dilution/0/uncertainty_percent", "-0.1"},
         "/samples/0/dilution/0/uncertainty_percent",
         "between 0 and 100 %, not -0.1"},
        {{"/samples/0/dilution/0/uncertainty_percent", "101"},
         "/samples/0/dilution/0/uncertainty_percent",
         "not 101"},
        {{"/tubes/3/pipetted_mL", "{}"}, "/tubes/3/pipetted_mL", "leave it out"},
        {{"/tubes/3/pipetted_mL", "[1.1]"}, "/tubes/3/pipetted_mL", R"(as {"nadh": 0.1})"},
        {{"/tubes/3/pipetted_mL/buffer", R"("1.1")"}, "/tubes/3/pipetted_mL/buffer", "found text"},
        {{"/tubes/3/pipetted_mL/buffer", "0"}, "", ""},
        {{"/tubes/3/pipetted_mL/buffer", "-0.1"}, "/tubes/3/pipetted_mL/buffer", "not -0.1"},
        {{"/tubes/3/pipetted_mL/salt", "0.1"}, "/tubes/3/pipetted_mL/salt", "no component \"salt\""},
        {{"/tubes/2/addedAt_min", "{}"}, "/tubes/2/addedAt_min", R"(as {"starter": 12.5}; leave it out)"},
        {{"/tubes/2/addedAt_min", "12.5"}, "/tubes/2/addedAt_min", "an object of minutes by component"},
        {{"/tubes/2/readAt_min", "{}"}, "/tubes/2/readAt_min", R"(as {"A1": 5}; leave it out)"},
        {{"/tubes/2/readAt_min/A1", R"("5")"}, "/tubes/2/readAt_min/A1", "found text"},
        {{"/tubes/2/addedAt_min/starter", "-1"}, "/tubes/2/addedAt_min/starter", "between 0 and 100000 min"},
        {{"/tubes/2/readAt_min/A2", "100001"}, "/tubes/2/readAt_min/A2", "not 100001"},
        {{"/tubes/2/addedAt_min/salt", "1"}, "/tubes/2/addedAt_min/salt", "no component \"salt\""},
        {{"/tubes/2/readAt_min/A9", "50"}, "/tubes/2/readAt_min/A9", "no reading \"A9\""},
        {{"/tubes/4/spoilt", R"(" ")"}, "/tubes/4/spoilt", "say what spoilt the tube"},
        {{"/tubes/4/spoilt", "true"}, "/tubes/4/spoilt", "expected text"},
        {{"/tubes/4/spoilt", R"("a\nb")"}, "/tubes/4/spoilt", "the reason cannot be used"},
        {{"/tubes/0/readings", "[0.1, 0.2]"}, "/tubes/0/readings", "an object of readings"},
        {{"/tubes/0/readings/A1", "null"}, "/tubes/0/readings/A1", "leave out a reading"},
        {{"/tubes/0/readings/A1", R"("0.1")"}, "/tubes/0/readings/A1", "found text"},
        {{"/tubes/0/readings/A1", "[]"}, "/tubes/0/readings/A1", "at least one reading"},
        {{"/tubes/0/readings/A1", "[0.1]"}, "/tubes/0/readings/A1/0", "expected an object, found a number"},
        {{"/tubes/0/readings/A9", "0.1"}, "/tubes/0/readings/A9", "takes no reading \"A9\""},
        {{"/tubes/0/readings/A1", "101"}, "/tubes/0/readings/A1", "between -100 and 100"},
        {{"/tubes/7/readings/A2/1/at_min", "15"}, "/tubes/7/readings/A2/1/at_min", "not later"},
        {{"/lots/0/component", R"("salt")"}, "/lots/0/component", "no component \"salt\""},
        {{"/lots/0/expires", R"("01/2027")"}, "/lots/0/expires", "expected a date"},
    });
}

TEST(RunReader, WhatIsNoRunFileOfOursIsSaidFirstAndAlone)
{
    for (const char *foreign : {R"({"name": "tablet", "version": "1.0", "private": true, "tubes": 3, "scripts": {}})", "{}"}) {
        const auto result = readRun(foreign, test::installed);
        EXPECT_FALSE(result.value);
        ASSERT_EQ(result.problems.size(), 1U) << listed(result.problems);
        EXPECT_TRUE(names(result.problems, "/format",
                          "this is no run file of Plateau, which names the format \"plateau-run/1\" here"))
            << listed(result.problems);
    }
    const auto numbered = readRun(R"({"format": 2, "name": "tablet", "pages": []})", test::installed);
    ASSERT_EQ(numbered.problems.size(), 1U) << listed(numbered.problems);
    EXPECT_TRUE(names(numbered.problems, "/format", "expected the format \"plateau-run/1\", found a number"))
        << listed(numbered.problems);
}

TEST(RunReader, AWholeMethodMayStandInTheRun)
{
    auto document = runDocument();
    document["method"] = methodDocument();
    document["method"]["id"] = "ours";
    const auto result = read(document);
    ASSERT_TRUE(result.value) << listed(result.problems);
    EXPECT_TRUE(result.value->methodEmbedded);
    EXPECT_EQ(result.value->method.id, u"ours"_s);
    EXPECT_EQ(result.value->run.method, u"ours"_s);
}

TEST(RunReader, ABrokenMethodInTheRunIsNamedThereAndTheRunIsJudgedAsFarAsItGoes)
{
    auto document = runDocument();
    document["method"] = methodDocument();
    document["method"]["window"]["minSignal"] = 5;
    document["method"]["components"][0]["volume_mL"] = "1";
    document["tubes"][2]["sample"] = "Q";
    document["tubes"][2]["readings"]["A9"] = 0.1; // no talk of readings while the method is broken
    const auto result = read(document);
    EXPECT_FALSE(result.value);
    EXPECT_EQ(result.problems.size(), 3U) << listed(result.problems);
    EXPECT_TRUE(names(result.problems, "/method/window/minSignal", "smaller than"));
    EXPECT_TRUE(names(result.problems, "/method/components/0/volume_mL", "expected a number"));
    EXPECT_TRUE(names(result.problems, "/tubes/2/sample", "no sample \"Q\""));
}

TEST(RunReader, AnUnknownMethodDoesNotHideTheRunsOwnFaults)
{
    auto document = runDocument();
    document["method"] = "unknown";
    document["samples"][1].erase("mass_g");
    document["tubes"][1]["standard"] = "X";
    const auto result = read(document);
    EXPECT_EQ(result.problems.size(), 3U) << listed(result.problems);
    EXPECT_TRUE(names(result.problems, "/method", "is installed"));
    EXPECT_TRUE(names(result.problems, "/samples/1/mass_g", "is missing"));
    EXPECT_TRUE(names(result.problems, "/tubes/1/standard", "no standard"));
}

TEST(RunReader, AllFaultsAreListedAtOnceWithoutNonsenseThatFollowsFromThem)
{
    auto document = runDocument();
    document["samples"][0]["id"] = 104;              // no talk of tubes that hold it
    document["standards"][0]["preparedAt"] = "8:10"; // no talk of usedAt
    document["tubes"][5]["role"] = "spike";          // no talk of its sample and spike
    document["tubes"][1]["readings"]["A1"] = "0,110";
    document["tubes"][7]["sampleVolume_mL"] = -0.1;
    document["samples"][1]["extract_mL"] = 0;
    document["calibration"] = "line"; // no talk of too few standards: tube 5 may be one
    const auto result = read(document);
    EXPECT_FALSE(result.value);
    EXPECT_EQ(result.problems.size(), 6U) << listed(result.problems);
    EXPECT_TRUE(names(result.problems, "/samples/0/id", "expected text"));
    EXPECT_TRUE(names(result.problems, "/standards/0/preparedAt", "a time with its offset"));
    EXPECT_TRUE(names(result.problems, "/tubes/5/role", "found \"spike\""));
    EXPECT_TRUE(names(result.problems, "/tubes/1/readings/A1", "found text"));
    EXPECT_TRUE(names(result.problems, "/tubes/7/sampleVolume_mL", "not -0.1"));
    EXPECT_TRUE(names(result.problems, "/samples/1/extract_mL", "greater than 0"));
}

TEST(RunReader, TwoSamplesOfOneIdAreRefused)
{
    auto document = runDocument();
    document["samples"].push_back({{"id", "P-104"}});
    EXPECT_TRUE(names(read(document).problems, "/samples/2/id", "taken by an earlier sample"));
}

TEST(RunReader, ASampleWithoutATubeComesAsAWarningBesideTheRun)
{
    auto document = runDocument();
    document["samples"].push_back({{"id", "idle"}});
    const auto result = read(document);
    EXPECT_TRUE(result.value);
    ASSERT_EQ(result.problems.size(), 1U);
    EXPECT_TRUE(names(result.problems, "/samples/2", "no tube holds", Problem::Severity::Warning));
}

TEST(RunReader, ATimeBeforeWhatComesAheadOfItComesAsAWarningBesideTheRun)
{
    auto document = runDocument();
    document["tubes"][2]["readAt_min"]["A2"] = 6.25;
    const auto result = read(document);
    ASSERT_TRUE(result.value) << listed(result.problems);
    EXPECT_EQ(result.value->run.tubes[2].readAt_min.at(u"A2"_s), 6.25);
    ASSERT_EQ(result.problems.size(), 1U);
    EXPECT_TRUE(names(result.problems, "/tubes/2/readAt_min/A2", "6.25 min lies before \"starter\"",
                      Problem::Severity::Warning))
        << listed(result.problems);
}

TEST(RunReader, NinetySixTubesFitAndNoMore)
{
    auto document = runDocument();
    while (document["tubes"].size() < 96)
        document["tubes"].push_back({{"role", "blank"}});
    EXPECT_TRUE(read(document).value);
    document["tubes"].push_back({{"role", "blank"}});
    EXPECT_TRUE(names(read(document).problems, "/tubes", "at most 96 tubes, not 97"));
}

TEST(RunReader, WithoutInstalledMethodsOnlyWholeOnesAreRead)
{
    EXPECT_TRUE(names(readRun(bytes(runDocument()), {}).problems, "/method", "is installed"));
}

} // namespace plateau::exchange
