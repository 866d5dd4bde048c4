// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/writers.h"

#include "core/exchange/jsontext.h"
#include "core/exchange/library.h"
#include "core/exchange/readers.h"
#include "tests/core/exchange/documents.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <gtest/gtest.h>

#include <limits>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using nlohmann::ordered_json;
using test::bytes;
using test::listed;

namespace {

std::vector<std::string> keys(const ordered_json &object)
{
    std::vector<std::string> names;
    for (const auto &[key, value] : object.items())
        names.push_back(key);
    return names;
}

ordered_json parsed(const QByteArray &text)
{
    return ordered_json::parse(text.begin(), text.end());
}

/// Offsets too: QDateTime compares moments only.
void expectSame(const std::optional<QDateTime> &a, const std::optional<QDateTime> &b)
{
    EXPECT_EQ(a, b);
    if (a && b) {
        EXPECT_EQ(a->offsetFromUtc(), b->offsetFromUtc());
    }
}

} // namespace

TEST(Writers, MethodsComeBackAsTheyWere)
{
    std::vector<assay::Method> methods = MethodLibrary::load(u":/methods"_s).methods();
    for (const assay::Method &method :
         {*readMethod(bytes(test::methodDocument())).value, test::risingMethod(), test::fallingMethod(),
          test::sequentialMethod(), test::coupledMethod()})
        methods.push_back(method);
    methods.back().volumeCorrection = assay::VolumeCorrection::ToFinalVolume;
    methods.back().measurands[0].molarMass_g_per_mol = 100.0 / 3;
    methods.back().standard = assay::UsualStandard{};
    methods.back().derived = {
        {u"half"_s, u"Half"_s, {{methods.back().id, methods.back().measurands[0].id, 0.5}}}};
    methods.back().cautions = {u"two\nlines, \"quoted\", \u00B5L, \U0001F347"_s};
    ASSERT_GT(methods.size(), 10U);
    for (const assay::Method &method : methods) {
        const auto read = readMethod(writeMethod(method));
        ASSERT_TRUE(read.value) << method.id.toStdString() << listed(read.problems);
        EXPECT_EQ(*read.value, method) << method.id.toStdString();
    }
}

TEST(Writers, RunsComeBackAsTheyWere)
{
    const auto document = readRun(bytes(test::runDocument()), test::installed);
    ASSERT_TRUE(document.value);
    run::Run run = document.value->run;
    run.tubes[0].readings[u"A1"_s] = 0.1 + 0.2;
    run.tubes[1].readings[u"A1"_s] = -1.0 / 3;
    for (const assay::Method *method :
         {static_cast<const assay::Method *>(nullptr), &document.value->method}) {
        const auto read = readRun(writeRun(run, method), test::installed);
        ASSERT_TRUE(read.value) << listed(read.problems);
        EXPECT_EQ(read.value->run, run);
        EXPECT_EQ(read.value->method, document.value->method);
        EXPECT_EQ(read.value->methodEmbedded, method != nullptr);
        expectSame(read.value->run.startedAt, run.startedAt);
        expectSame(read.value->run.standards[0].preparedAt, run.standards[0].preparedAt);
    }
}

TEST(Writers, TimesStandOnlyWhereTheyWereMarked)
{
    const auto read = readRun(bytes(test::runDocument()), test::installed);
    const ordered_json tubes = parsed(writeRun(read.value->run))["tubes"];
    EXPECT_EQ(tubes[2]["addedAt_min"], (ordered_json{{"sample", 1.25}, {"starter", 6.5}}));
    EXPECT_EQ(tubes[2]["readAt_min"], (ordered_json{{"A1", 5.5}, {"A2", 22.0}}));
    EXPECT_FALSE(tubes[3].contains("addedAt_min") || tubes[3].contains("readAt_min"));
}

TEST(Writers, ARepeatNamesTheSampleItRepeats)
{
    run::Run run = test::plainRun();
    run.samples.push_back(test::liquid("S/2", {{1, 4}}));
    run.samples[1].repeats = u"S"_s;
    run.tubes.push_back(test::sampleTube("S/2", 0.1, 0.3));
    const assay::Method method = test::risingMethod();
    const auto read = readRun(writeRun(run, &method), {});
    ASSERT_TRUE(read.value) << listed(read.problems);
    EXPECT_EQ(read.value->run, run);
    EXPECT_FALSE(parsed(writeRun(run))["samples"][0].contains("repeats"));
}

TEST(Writers, ABareRunComesBackAsItWas)
{
    const assay::Method method = test::risingMethod();
    const auto read = readRun(writeRun(test::plainRun(), &method), {});
    ASSERT_TRUE(read.value) << listed(read.problems);
    EXPECT_EQ(read.value->run, test::plainRun());
}

TEST(Writers, TimesKeepTheOffsetTheyWereMadeIn)
{
    auto document = test::runDocument();
    const auto read = readRun(bytes(document), test::installed);
    const ordered_json written = parsed(writeRun(read.value->run));
    EXPECT_EQ(written["startedAt"], document["startedAt"]);
    EXPECT_EQ(written["standards"], document["standards"]);
}

TEST(Writers, FieldsStandInTheOrderOfTheContract)
{
    const auto read = readRun(bytes(test::runDocument()), test::installed);
    EXPECT_EQ(keys(parsed(writeRun(read.value->run))), keys(test::runDocument()));
    EXPECT_EQ(keys(parsed(writeMethod(read.value->method))), keys(test::methodDocument()));
}

TEST(Writers, NumbersAreShortAndExact)
{
    const auto text = [](double value) { return jsonText(ordered_json(value)).trimmed(); };
    EXPECT_EQ(text(0.1), "0.1");
    EXPECT_EQ(text(1.0), "1");
    EXPECT_EQ(text(0.1 + 0.2), "0.30000000000000004");
    EXPECT_EQ(text(5e-324), "5e-324");
    EXPECT_EQ(text(std::numeric_limits<double>::max()), "1.7976931348623157e+308");
    EXPECT_EQ(text(std::numeric_limits<double>::infinity()), "null");
    EXPECT_EQ(text(std::numeric_limits<double>::quiet_NaN()), "null");
}

TEST(Writers, LayoutIsOneFieldALineAndSmallPartsOnOne)
{
    const ordered_json document{
        {"a", 1}, {"list", {{{"x", 1}, {"y", {1, 2}}}, {{"x", 2}}}}, {"empty", ordered_json::array()}};
    EXPECT_EQ(jsonText(document).toStdString(), "{\n"
                                                "  \"a\": 1,\n"
                                                "  \"list\": [\n"
                                                "    {\"x\": 1, \"y\": [1, 2]},\n"
                                                "    {\"x\": 2}\n"
                                                "  ],\n"
                                                "  \"empty\": []\n"
                                                "}\n");
}

TEST(Writers, AnEvaluationHasTheKeysOfTheContract)
{
    evaluation::Evaluation evaluation;
    evaluation.methodId = u"example-acid"_s;
    evaluation.methodVersion = 3;
    evaluation.factors = {{u"acid"_s, 0.5}};
    evaluation.blanks = {{u"acid"_s, std::nullopt, 0}};
    evaluation.tubes = {{0, run::Role::SampleBlank, u"acid"_s, 0.25, {}, {}, {}, 2.12, 0.1}};
    evaluation::Check failed;
    failed.id = evaluation::CheckId::SignalHigh;
    failed.scope = {evaluation::Scope::Kind::Sample, u"P-104"_s, u"acid"_s};
    failed.passed = false;
    failed.finding = u"too strong."_s;
    failed.whatToDo = u"Dilute."_s;
    failed.tubes = {2, 3};
    evaluation::Advice dilute;
    dilute.factor = 10;
    dilute.atLeast = true;
    dilute.steps = {{5, 50}};
    failed.advice = dilute;
    evaluation::Result result;
    result.sample = u"P-104"_s;
    result.measurand = u"acid"_s;
    result.unit = u"g/L"_s;
    result.verdict = evaluation::Verdict::Repeat;
    result.degreesOfFreedom = std::numeric_limits<double>::infinity();
    result.checks = {failed};
    evaluation::Result derived = result;
    derived.terms = {{u"free-acid"_s, 2, u"acid"_s, -1, 0.25}};
    result.spread = 0.125;
    evaluation.results = {result, derived};
    evaluation.checks = {failed};

    const ordered_json json = parsed(writeEvaluation(evaluation));
    EXPECT_EQ(json["format"], "plateau-evaluation/1");
    EXPECT_EQ(json["method"], (ordered_json{{"id", "example-acid"}, {"version", 3}}));
    EXPECT_EQ(json["factors"][0]["factor_g_per_L"], 0.5);
    EXPECT_TRUE(json["blanks"][0].at("mean").is_null());
    EXPECT_EQ(json["tubes"][0]["role"], "sampleBlank");
    EXPECT_EQ(json["tubes"][0]["signal"], 0.25);
    EXPECT_TRUE(json["tubes"][0].at("netSignal").is_null());
    EXPECT_TRUE(json["tubes"][0].at("concentration_g_per_L").is_null());
    for (const char *key : {"value", "expandedUncertainty", "coverageFactor", "degreesOfFreedom"})
        EXPECT_TRUE(json["results"][0].at(key).is_null()) << key;
    EXPECT_EQ(json["results"][0]["verdict"], "repeat");
    EXPECT_EQ(json["results"][0]["checks"], json["checks"]);
    EXPECT_EQ(json["results"][0]["spread"], 0.125);
    EXPECT_FALSE(json["results"][0].contains("terms"));
    EXPECT_FALSE(json["results"][1].contains("spread"));
    EXPECT_EQ(json["results"][1]["terms"][0]["version"], 2);
    const ordered_json &check = json["checks"][0];
    EXPECT_EQ(check["id"], "signal-high");
    EXPECT_EQ(check["scope"], "sample P-104, acid");
    EXPECT_EQ(
        check["advice"],
        ordered_json::parse(
            R"({"kind": "dilute", "factor": 10, "atLeast": true, "steps": [{"take_mL": 5, "makeUpTo_mL": 50}]})"));
    EXPECT_EQ(check["tubes"], ordered_json::parse("[2, 3]"));
    EXPECT_EQ(json["acceptable"], false);
}

TEST(Writers, AdviceForALargerVolumeNamesTheVolumeAlone)
{
    evaluation::Evaluation evaluation;
    evaluation::Check check;
    evaluation::Advice advice;
    advice.kind = evaluation::Advice::Kind::IncreaseVolume;
    advice.sampleVolume_mL = 0.5;
    check.advice = advice;
    evaluation.checks = {check, {}};
    const ordered_json json = parsed(writeEvaluation(evaluation));
    EXPECT_EQ(json["checks"][0]["advice"],
              ordered_json::parse(R"({"kind": "increaseVolume", "sampleVolume_mL": 0.5})"));
    EXPECT_TRUE(json["checks"][1].at("advice").is_null());
}

} // namespace plateau::exchange
