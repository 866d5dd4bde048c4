// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/readers.h"

#include "tests/core/exchange/documents.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <gtest/gtest.h>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using test::bytes;
using test::changed;
using test::listed;
using test::methodDocument;
using test::names;

TEST(MethodReader, EveryFieldArrives)
{
    const auto read = readMethod(bytes(methodDocument()));
    ASSERT_TRUE(read.value) << listed(read.problems);
    EXPECT_TRUE(read.problems.empty());
    const assay::Method &method = *read.value;
    EXPECT_EQ(method.id, u"example-acid"_s);
    EXPECT_EQ(method.version, 1);
    EXPECT_EQ(method.principle, u"One NADH for each."_s);
    EXPECT_EQ(method.absorptivity_L_per_mol_cm,
              (std::map<int, double>{{334, 6180}, {340, 6300}, {365, 3400}}));
    EXPECT_EQ(method.direction, assay::Direction::Rising);
    ASSERT_EQ(method.components.size(), 4U);
    EXPECT_EQ(method.components[2].range_mL, (assay::Interval{0.05, 0.5}));
    EXPECT_TRUE(method.components[3].suspension);
    ASSERT_EQ(method.steps.size(), 10U);
    EXPECT_EQ(method.steps[4], assay::Step(assay::WaitStep{{3, 10}, assay::Interval{20, 25}}));
    EXPECT_EQ(method.steps[8], assay::Step(assay::WaitStep{{15, 40}, std::nullopt}));
    EXPECT_EQ(method.measurands.at(0).signal, assay::Signal(assay::DifferenceSignal{u"A1"_s, u"A2"_s}));
    EXPECT_EQ(method.window, (assay::Window{0.1, 1.0, 2.0, 0.1}));
    EXPECT_EQ(method.acceptance.repeatability, (assay::Repeatability{0.03, 0.03}));
    EXPECT_EQ(method.acceptance.spikeRecovery_percent, (assay::Interval{90, 110}));
    EXPECT_EQ(method.extrapolate, (assay::Extrapolation{u"A2"_s, 4}));
    EXPECT_EQ(method.cautions, std::vector<QString>{u"Local rules come first."_s});
}

TEST(MethodReader, WhatStandsBesideTheRecipeArrives)
{
    const auto read = readMethod(bytes(methodDocument()));
    ASSERT_TRUE(read.value) << listed(read.problems);
    const assay::Method &method = *read.value;
    EXPECT_EQ(method.measurands.at(0).typicalRange_g_per_L, (assay::Interval{0.5, 12}));
    ASSERT_EQ(method.derived.size(), 1U);
    EXPECT_EQ(method.derived[0].id, u"bound-acid"_s);
    EXPECT_EQ(method.derived[0].name, u"Bound acid"_s);
    ASSERT_EQ(method.derived[0].terms.size(), 2U);
    EXPECT_EQ(method.derived[0].terms[0], (assay::DerivedTerm{{}, u"example-acid"_s, 1.5}));
    EXPECT_EQ(method.derived[0].terms[1], (assay::DerivedTerm{u"free-acid"_s, u"acid"_s, -1}));
    EXPECT_EQ(method.standard, (assay::UsualStandard{0.2, 0.02}));
    EXPECT_EQ(method.tubes, (assay::UsualTubes{1, 2, 3}));
    EXPECT_EQ(method.reactions, std::vector<QString>{u"Acid + NAD -> base + NADH: one NADH for each."_s});
    EXPECT_EQ(method.interferences, (std::vector<QString>{u"Other acids."_s, u"Tannins."_s}));
    ASSERT_EQ(method.samplePreparation.size(), 2U);
    EXPECT_EQ(method.samplePreparation[0],
              (assay::Preparation{assay::Matrix::Clear, u"Pipette as it is."_s}));
    EXPECT_EQ(method.samplePreparation[1], (assay::Preparation{assay::Matrix::ProteinRich, u"Clarify."_s}));
}

TEST(MethodReader, EveryMatrixHasItsWord)
{
    using assay::Matrix;
    const std::pair<const char *, Matrix> words[] = {
        {R"("clear")", Matrix::Clear},   {R"("coloured")", Matrix::Coloured},
        {R"("turbid")", Matrix::Turbid}, {R"("carbonated")", Matrix::Carbonated},
        {R"("fatty")", Matrix::Fatty},   {R"("proteinRich")", Matrix::ProteinRich},
        {R"("solid")", Matrix::Solid},
    };
    for (const auto &[word, matrix] : words) {
        auto document = changed(methodDocument(), {"/samplePreparation/1", nullptr});
        const auto read = readMethod(bytes(changed(document, {"/samplePreparation/0/matrix", word})));
        ASSERT_TRUE(read.value) << word << listed(read.problems);
        EXPECT_EQ(read.value->samplePreparation.at(0).matrix, matrix) << word;
    }
}

TEST(MethodReader, FieldsThatMayBeLeftOutAndThoseThatMayNot)
{
    const test::ChangedDocument rows[] = {
        {{"/principle", nullptr}, "", ""},
        {{"/cautions", nullptr}, "", ""},
        {{"/volumeCorrection", nullptr}, "", ""},
        {{"/extrapolate", nullptr}, "", ""},
        {{"/measurands/0/typicalRange_g_per_L", nullptr}, "", ""},
        {{"/derived", nullptr}, "", ""},
        {{"/derived/0/terms/0/method", R"("example-acid")"}, "", ""},
        {{"/standard", nullptr}, "", ""},
        {{"/standard/concentration_g_per_L", nullptr}, "", ""},
        {{"/standard/lossPerHour", nullptr}, "", ""},
        {{"/tubes", nullptr}, "", ""},
        {{"/tubes", R"({"blanks": 0, "replicates": 1, "standards": 0})"}, "", ""},
        {{"/tubes", R"({"blanks": 96, "replicates": 20, "standards": 96})"}, "", ""},
        {{"/tubes/blanks", nullptr}, "/tubes/blanks", "is missing"},
        {{"/tubes/blanks", "-1"}, "/tubes/blanks", "between 0 and 96, not -1"},
        {{"/tubes/blanks", "97"}, "/tubes/blanks", "between 0 and 96, not 97"},
        {{"/tubes/replicates", "0"}, "/tubes/replicates", "between 1 and 20, not 0"},
        {{"/tubes/replicates", "21"}, "/tubes/replicates", "between 1 and 20, not 21"},
        {{"/tubes/standards", "97"}, "/tubes/standards", "between 0 and 96, not 97"},
        {{"/tubes/standards", "1.5"}, "/tubes/standards", "whole number"},
        {{"/tubes/spikes", "1"}, "/tubes/spikes", "not known here"},
        {{"/reactions", nullptr}, "", ""},
        {{"/interferences", nullptr}, "", ""},
        {{"/samplePreparation", nullptr}, "", ""},
        {{"/absorptivity_L_per_mol_cm", nullptr}, "", ""},
        {{"/window/maxAbsorbance", nullptr}, "", ""},
        {{"/window/reserveAbsorbance", nullptr}, "", ""},
        {{"/acceptance/maxBlankSignal", nullptr}, "", ""},
        {{"/acceptance/standardRecovery_percent", nullptr}, "", ""},
        {{"/acceptance/spikeRecovery_percent", nullptr}, "", ""},
        {{"/acceptance/repeatability", nullptr}, "", ""},
        {{"/acceptance", "{}"}, "", ""},
        {{"/components/2/range_mL", nullptr}, "", ""},
        {{"/components/3/suspension", nullptr}, "", ""},
        {{"/steps/4/temperature_C", nullptr}, "", ""},
        {{"/format", nullptr}, "/format", "is missing"},
        {{"/id", nullptr}, "/id", "is missing"},
        {{"/version", nullptr}, "/version", "is missing"},
        {{"/name", nullptr}, "/name", "is missing"},
        {{"/source", nullptr}, "/source", "is missing"},
        {{"/chromophore", nullptr}, "/chromophore", "is missing"},
        {{"/wavelength_nm", nullptr}, "/wavelength_nm", "is missing"},
        {{"/pathLength_mm", nullptr}, "/pathLength_mm", "is missing"},
        {{"/direction", nullptr}, "/direction", "is missing"},
        {{"/components", nullptr}, "/components", "is missing"},
        {{"/components/0/volume_mL", nullptr}, "/components/0/volume_mL", "is missing"},
        {{"/sample", nullptr}, "/sample", "is missing"},
        {{"/diluent", nullptr}, "/diluent", "is missing"},
        {{"/starter", nullptr}, "/starter", "is missing"},
        {{"/steps", nullptr}, "/steps", "is missing"},
        {{"/measurands", nullptr}, "/measurands", "is missing"},
        {{"/measurands/0/signal", nullptr}, "/measurands/0/signal", "is missing"},
        {{"/measurands/0/signal/kind", nullptr}, "/measurands/0/signal/kind", "is missing"},
        {{"/measurands/0/signal/to", nullptr}, "/measurands/0/signal/to", "is missing"},
        {{"/window", nullptr}, "/window", "is missing"},
        {{"/window/minSignal", nullptr}, "/window/minSignal", "is missing"},
        {{"/acceptance", nullptr}, "/acceptance", "is missing"},
        {{"/acceptance/repeatability/constant_g_per_L", nullptr},
         "/acceptance/repeatability/constant_g_per_L",
         "is missing"},
        {{"/extrapolate/lastReadings", nullptr}, "/extrapolate/lastReadings", "is missing"},
        {{"/derived/0/id", nullptr}, "/derived/0/id", "is missing"},
        {{"/derived/0/name", nullptr}, "/derived/0/name", "is missing"},
        {{"/derived/0/terms", nullptr}, "/derived/0/terms", "is missing"},
        {{"/derived/0/terms/0/measurand", nullptr}, "/derived/0/terms/0/measurand", "is missing"},
        {{"/derived/0/terms/0/factor", nullptr}, "/derived/0/terms/0/factor", "is missing"},
        {{"/samplePreparation/0/matrix", nullptr}, "/samplePreparation/0/matrix", "is missing"},
        {{"/samplePreparation/0/text", nullptr}, "/samplePreparation/0/text", "is missing"},
    };
    for (const test::ChangedDocument &row : rows) {
        const auto read = readMethod(bytes(changed(methodDocument(), row.change)));
        if (*row.fragment) {
            EXPECT_FALSE(read.value) << row.change.pointer;
            EXPECT_EQ(read.problems.size(), 1U) << row.change.pointer << ": " << listed(read.problems);
            EXPECT_TRUE(names(read.problems, row.pointer, row.fragment)) << listed(read.problems);
        } else {
            EXPECT_TRUE(read.value) << row.change.pointer << ": " << listed(read.problems);
        }
    }
}

TEST(MethodReader, OneFaultGivesOneProblem)
{
    const test::ChangedDocument rows[] = {
        {{"/format", R"("plateau-run/1")"}, "/format", "expected the format \"plateau-method/1\""},
        {{"/format", R"("plateau-method/2")"}, "/format", "found \"plateau-method/2\""},
        {{"/operator", "1"}, "/operator", "\"operator\" is not known here; leave it out"},
        {{"/pathLength", "10"}, "/pathLength", "did you mean \"pathLength_mm\"?"},
        {{"/id", "7"}, "/id", "expected text, found a number"},
        {{"/version", "1.5"}, "/version", "expected a whole number, found 1.5"},
        {{"/version", R"("1")"}, "/version", "expected a number, found text"},
        {{"/version", "1e300"}, "/version", "expected a whole number"},
        {{"/version", "2.0"}, "", ""},
        {{"/version", "0"}, "/version", "count from 1"},
        {{"/wavelength_nm", "340.5"}, "/wavelength_nm", "expected a whole number"},
        {{"/wavelength_nm", "405"}, "/wavelength_nm", "no absorptivity for 405 nm"},
        {{"/pathLength_mm", "null"}, "/pathLength_mm", "expected a number, found null"},
        {{"/direction", R"("up")"}, "/direction", R"(expected one of "rising", "falling", found "up")"},
        {{"/volumeCorrection", R"("toFinalVolume")"}, "", ""},
        {{"/volumeCorrection", R"("yes")"}, "/volumeCorrection", "expected one of \"none\""},
        {{"/absorptivity_L_per_mol_cm", "6300"},
         "/absorptivity_L_per_mol_cm",
         "expected an object of wavelengths"},
        {{"/absorptivity_L_per_mol_cm/0405", "1"}, "/absorptivity_L_per_mol_cm/0405", "whole nm"},
        {{"/absorptivity_L_per_mol_cm/blue", "1"}, "/absorptivity_L_per_mol_cm/blue", "whole nm"},
        {{"/absorptivity_L_per_mol_cm/340", R"("6300")"},
         "/absorptivity_L_per_mol_cm/340",
         "expected a number"},
        {{"/absorptivity_L_per_mol_cm/340", "-6300"}, "/absorptivity_L_per_mol_cm/340", "greater than 0"},
        {{"/components", "{}"}, "/components", "expected a list, found an object"},
        {{"/components/1", R"("water")"}, "/components/1", "expected an object, found text"},
        {{"/components/0/volume_mL", R"("1.0")"}, "/components/0/volume_mL", "expected a number, found text"},
        {{"/components/0/volume_mL", "-1"}, "/components/0/volume_mL", "not -1"},
        {{"/components/0/colour", R"("red")"}, "/components/0/colour", "not known here"},
        {{"/components/2/range_mL", "[0.05]"}, "/components/2/range_mL", "two numbers"},
        {{"/components/2/range_mL", R"([0.05, "0.5"])"}, "/components/2/range_mL", "two numbers"},
        {{"/components/3/suspension", "1"}, "/components/3/suspension", "expected true or false"},
        {{"/components/3/suspension", "false"}, "", ""},
        {{"/steps/3", R"({"mix": false})"}, "/steps/3/mix", "must be true"},
        {{"/steps/3", R"({"mix": "yes"})"}, "/steps/3/mix", "expected true or false"},
        {{"/steps/3", "{}"}, "/steps/3", "exactly one of"},
        {{"/steps/3", R"({"mix": true, "read": "A0"})"}, "/steps/3", "exactly one of"},
        {{"/steps/3", R"({"stir": true})"}, "/steps/3/stir", "not known here"},
        {{"/steps/0", R"({"ad": "buffer"})"}, "/steps/0/ad", "did you mean \"add\"?"},
        {{"/steps/3", R"({"mix": true, "temperature_C": [20, 25]})"},
         "/steps/3/temperature_C",
         "\"wait_min\" only"},
        {{"/steps/4", R"({"wait_min": 3})"}, "/steps/4/wait_min", "two numbers"},
        {{"/steps/5", R"({"read": 1})"}, "/steps/5/read", "expected text"},
        {{"/steps/0", R"({"add": "salt"})"}, "/steps/0/add", "none of the components"},
        {{"/measurands/0/signal", R"({"kind": "ratio", "from": "A1"})"},
         "/measurands/0/signal/kind",
         R"(expected one of "difference", "coupledIndicator")"},
        {{"/measurands/0/signal", R"({"kind": "difference", "from": "A1", "to": "A2", "base": "A0"})"},
         "/measurands/0/signal/base",
         "not known here"},
        {{"/measurands/0/signal/to", R"("A3")"}, "/measurands/0/signal/to", "never taken"},
        {{"/measurands/0/molarMass_g_per_mol", "[]"}, "/measurands/0/molarMass_g_per_mol", "found a list"},
        {{"/window", "[0.1, 1]"}, "/window", "expected an object, found a list"},
        {{"/window/maxSignal", R"("1")"}, "/window/maxSignal", "expected a number"},
        {{"/window/maxSignal", "0.05"}, "/window/minSignal", "smaller than maxSignal"},
        {{"/acceptance/maxBlankSignal", "true"}, "/acceptance/maxBlankSignal", "found true or false"},
        {{"/acceptance/standardRecovery_percent", "[105, 95]"},
         "/acceptance/standardRecovery_percent",
         "smaller number comes first"},
        {{"/acceptance/recovery", "[95, 105]"}, "/acceptance/recovery", "not known here"},
        {{"/extrapolate/lastReadings", "2.5"}, "/extrapolate/lastReadings", "whole number"},
        {{"/extrapolate/lastReadings", "1"}, "/extrapolate/lastReadings", "at least 2"},
        {{"/cautions", R"("care")"}, "/cautions", "expected a list"},
        {{"/cautions/0", "1"}, "/cautions/0", "expected text"},
        {{"/source", R"(" ")"}, "/source", "says nothing"},
        {{"/measurands/0/typicalRange_g_per_L", "[0, 0]"}, "", ""},
        {{"/measurands/0/typicalRange_g_per_L", "[12, 0.5]"},
         "/measurands/0/typicalRange_g_per_L",
         "smaller number comes first"},
        {{"/measurands/0/typicalRange_g_per_L", "[-1, 12]"},
         "/measurands/0/typicalRange_g_per_L/0",
         "not -1"},
        {{"/measurands/0/typicalRange_g_per_L", "12"}, "/measurands/0/typicalRange_g_per_L", "two numbers"},
        {{"/measurands/0/id", "7"}, "/measurands/0/id", "expected text"},
        {{"/derived", "{}"}, "/derived", "expected a list"},
        {{"/derived", "[]"}, "", ""},
        {{"/derived/0", "1"}, "/derived/0", "expected an object"},
        {{"/derived/0/id", R"("example-acid")"}, "/derived/0/id", "taken by a measurand"},
        {{"/derived/0/unit", R"("g/L")"}, "/derived/0/unit", "not known here"},
        {{"/derived/0/terms", "[]"}, "/derived/0/terms", "at least one term"},
        {{"/derived/0/terms/0", R"("example-acid")"}, "/derived/0/terms/0", "expected an object"},
        {{"/derived/0/terms/0/method", R"("")"},
         "/derived/0/terms/0/method",
         "leave it out to mean this one"},
        {{"/derived/0/terms/0/method", "1"}, "/derived/0/terms/0/method", "expected text"},
        {{"/derived/0/terms/0/measurand", R"("acid")"}, "/derived/0/terms/0/measurand", "\"acid\" is none"},
        {{"/derived/0/terms/0/factor", "0"}, "/derived/0/terms/0/factor", "other than 0"},
        {{"/derived/0/terms/0/factor", R"("1")"}, "/derived/0/terms/0/factor", "expected a number"},
        {{"/standard", "0.2"}, "/standard", "expected an object"},
        {{"/standard", "{}"}, "", ""},
        {{"/standard/concentration_g_per_L", "0"}, "/standard/concentration_g_per_L", "greater than 0"},
        {{"/standard/lossPerHour", "0"}, "", ""},
        {{"/standard/lossPerHour", "1"}, "/standard/lossPerHour", "from 0 to below 1"},
        {{"/standard/lossPerHour", "-0.1"}, "/standard/lossPerHour", "from 0 to below 1"},
        {{"/standard/loss", "0.02"}, "/standard/loss", "not known here"},
        {{"/reactions", R"("acid")"}, "/reactions", "expected a list"},
        {{"/reactions/0", R"(" ")"}, "/reactions/0", "blank"},
        {{"/interferences/1", "2"}, "/interferences/1", "expected text"},
        {{"/interferences/1", R"("")"}, "/interferences/1", "blank"},
        {{"/samplePreparation/0/matrix", R"("muddy")"},
         "/samplePreparation/0/matrix",
         R"(expected one of "clear", "coloured", "turbid", "carbonated", "fatty", "proteinRich", "solid")"},
        {{"/samplePreparation/1/matrix", R"("muddy")"}, "/samplePreparation/1/matrix", "found \"muddy\""},
        {{"/samplePreparation/1/matrix", R"("clear")"}, "/samplePreparation/1/matrix", "preparation already"},
        {{"/samplePreparation/1/text", R"("\n")"}, "/samplePreparation/1/text", "blank"},
    };
    for (const test::ChangedDocument &row : rows) {
        const auto read = readMethod(bytes(changed(methodDocument(), row.change)));
        if (*row.fragment) {
            EXPECT_FALSE(read.value) << row.change.pointer << " " << row.change.value;
            EXPECT_EQ(test::errorsIn(read.problems), 1)
                << row.change.pointer << " " << row.change.value << ": " << listed(read.problems);
            EXPECT_TRUE(names(read.problems, row.pointer, row.fragment)) << listed(read.problems);
        } else {
            EXPECT_TRUE(read.value) << row.change.pointer << " " << row.change.value << ": "
                                    << listed(read.problems);
        }
    }
}

TEST(MethodReader, AllFaultsAreListedAtOnceWithoutNonsenseThatFollowsFromThem)
{
    auto document = methodDocument();
    document["components"][0]["volume_ml"] = document["components"][0]["volume_mL"];
    document["components"][0].erase("volume_mL");
    document["components"][1]["id"] = 5; // water: no talk of steps that add it, or of the diluent
    document["direction"] = "down";
    document["measurands"][0]["molarMass_g_per_mol"] = -1; // sound in shape, wrong in meaning
    document["window"]["minSignal"] = 2;
    document["colour"] = "blue";
    const auto read = readMethod(bytes(document));
    EXPECT_FALSE(read.value);
    EXPECT_EQ(read.problems.size(), 6U) << listed(read.problems);
    EXPECT_TRUE(names(read.problems, "/components/0/volume_ml", "did you mean \"volume_mL\"?"));
    EXPECT_TRUE(names(read.problems, "/components/1/id", "expected text"));
    EXPECT_TRUE(names(read.problems, "/direction", "found \"down\""));
    EXPECT_TRUE(names(read.problems, "/measurands/0/molarMass_g_per_mol", "greater than 0"));
    EXPECT_TRUE(names(read.problems, "/window/minSignal", "smaller than maxSignal"));
    EXPECT_TRUE(names(read.problems, "/colour", "not known here"));
}

TEST(MethodReader, NoTableIsOnlyFineForTheCoenzymesAt340)
{
    auto document = methodDocument();
    document.erase("absorptivity_L_per_mol_cm");
    EXPECT_TRUE(readMethod(bytes(document)).value);
    document["chromophore"] = "NADPH";
    EXPECT_TRUE(readMethod(bytes(document)).value);
    document["wavelength_nm"] = 365;
    EXPECT_TRUE(names(readMethod(bytes(document)).problems, "/wavelength_nm", "no absorptivity for 365 nm"));
    document["wavelength_nm"] = 340;
    document["chromophore"] = "formazan";
    EXPECT_TRUE(
        names(readMethod(bytes(document)).problems, "/wavelength_nm", "only NADH and NADPH at 340 nm"));
}

TEST(MethodReader, WhatIsNoObjectIsRefused)
{
    for (const char *json : {"[]", "1", "\"plateau-method/1\"", "null", "true"})
        EXPECT_TRUE(names(readMethod(json).problems, "", "expected an object")) << json;
}

TEST(MethodReader, WhatIsNoMethodFileOfOursIsSaidFirstAndAlone)
{
    const auto read = readMethod(R"({"title": "tablet", "steps": 3})");
    EXPECT_FALSE(read.value);
    ASSERT_EQ(read.problems.size(), 1U) << listed(read.problems);
    EXPECT_TRUE(names(read.problems, "/format",
                      "this is no method file of Plateau, which names the format \"plateau-method/1\" here"))
        << listed(read.problems);
}

TEST(MethodReader, AKeyGivenTwiceIsRefused)
{
    QByteArray json = bytes(methodDocument());
    json.replace("\"version\":1,", "\"version\":1,\"version\":2,");
    const auto read = readMethod(json);
    EXPECT_FALSE(read.value);
    EXPECT_EQ(read.problems.size(), 1U) << listed(read.problems);
    EXPECT_TRUE(names(read.problems, "/version", "\"version\" stands here twice"));
}

TEST(MethodReader, AFileFullOfFaultsStopsListingSomewhere)
{
    auto document = methodDocument();
    for (int i = 0; i < 2000; ++i)
        document["x" + std::to_string(i)] = 1;
    const auto read = readMethod(bytes(document));
    EXPECT_FALSE(read.value);
    EXPECT_EQ(read.problems.size(), 501U);
    EXPECT_TRUE(read.problems.back().message.contains(u"more wrong than the 500"_s));
}

} // namespace plateau::exchange
