// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/documentformat.h"
#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "tests/core/exchange/documents.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"
#include "tests/support/random.h"

#include <gtest/gtest.h>

#include <cmath>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using evaluation::ReportUnit;
using nlohmann::ordered_json;
using planning::Laboratory;
using test::bytes;
using test::changed;
using test::listed;
using test::names;
using test::Random;

namespace {

/// A PNG of one grey pixel.
constexpr auto onePixel =
    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==";

ordered_json laboratoryDocument()
{
    return ordered_json::parse(QString(R"({
 "format": "plateau-laboratory/1", "name": "Cellar", "rackRows": 3, "rackColumns": 8,
 "handling": {"addition_s": 7, "mix_s": 3.5, "reading_s": 12}, "overage_percent": 15,
 "glassware": {
  "pipettes": [{"name": "piston", "smallest_mL": 0.1, "largest_mL": 1, "step_mL": 0.01, "uncertainty_percent": 0.6},
               {"name": "bulb", "smallest_mL": 5, "largest_mL": 5, "step_mL": 0, "uncertainty_percent": 0.2}],
  "flasks": [{"name": "50 mL", "volume_mL": 50, "uncertainty_percent": 0.07}]},
 "review": {"reviewerDecides": true, "secondPersonReviews": false, "rejectionReasons": ["spilt", "mixed up"]},
 "reportHead": {"address": ["Lane 1", "Town"], "contact": "cellar@example.org", "logo": {"type": "png", "base64": "%PNG%"}},
 "reportUnits": [{"product": "cider", "unit": "mg/L"}, {"product": "cider", "measurand": "Ethanol", "unit": "mmol/L"}]})"_L1)
                                   .replace("%PNG%"_L1, QLatin1StringView(onePixel))
                                   .toStdString());
}

/// Without a tail of binary digits, as it is typed.
double typed(double value)
{
    return std::round(value * 1e4) / 1e4;
}

Laboratory soundLaboratory(Random &random)
{
    Laboratory laboratory;
    laboratory.name = random.chance() ? u"Cellar \"2\" \u00b5"_s : QString();
    laboratory.rackRows = random.whole(1, 8);
    laboratory.rackColumns = random.whole(1, 12);
    laboratory.handling = {random.between(0.001, 600), random.between(0, 600), random.between(0.001, 600)};
    laboratory.overage_percent = random.between(0, 1000);
    for (int i = random.whole(0, 5); i > 0; --i) {
        planning::Pipette pipette;
        pipette.name = u"pipette "_s + QString::number(i);
        pipette.smallest_mL = typed(random.magnitude(0.001, 100));
        pipette.step_mL = random.chance() ? 0 : typed(random.magnitude(0.001, 1));
        pipette.largest_mL = pipette.smallest_mL + random.whole(1, 500) * pipette.step_mL;
        pipette.uncertainty_percent = random.between(0, 100);
        laboratory.glassware.pipettes.push_back(pipette);
    }
    for (int i = random.whole(0, 5); i > 0; --i)
        laboratory.glassware.flasks.push_back(
            {u"flask "_s + QString::number(i), random.magnitude(0.01, 1e5), random.between(0, 100)});
    if (random.chance())
        laboratory.review = {random.chance(), random.chance(), {u"spilt"_s}};
    if (random.chance())
        laboratory.reportHead.address = {u"Lane 1"_s};
    if (random.chance())
        laboratory.reportHead.logo = {planning::LogoKind::Svg, "<svg/>"};
    for (int i = random.whole(0, 3); i > 0; --i)
        laboratory.reportUnits.push_back({u"product "_s + QString::number(i),
                                          random.chance() ? u"Ethanol"_s : QString(),
                                          evaluation::reportUnits()[size_t(random.whole(0, 6))]});
    return laboratory;
}

} // namespace

TEST(LaboratoryReader, EveryFieldArrives)
{
    const auto read = readLaboratory(bytes(laboratoryDocument()));
    ASSERT_TRUE(read.value) << listed(read.problems);
    EXPECT_TRUE(read.problems.empty());
    Laboratory expected;
    expected.name = u"Cellar"_s;
    expected.rackRows = 3;
    expected.rackColumns = 8;
    expected.handling = {7, 3.5, 12};
    expected.overage_percent = 15;
    expected.glassware.pipettes = {{u"piston"_s, 0.1, 1, 0.01, 0.6}, {u"bulb"_s, 5, 5, 0, 0.2}};
    expected.glassware.flasks = {{u"50 mL"_s, 50, 0.07}};
    expected.review = {true, false, {u"spilt"_s, u"mixed up"_s}};
    expected.reportHead = {{u"Lane 1"_s, u"Town"_s},
                           u"cellar@example.org"_s,
                           planning::Logo{planning::LogoKind::Png, QByteArray::fromBase64(onePixel)}};
    expected.reportUnits = {{u"cider"_s, {}, ReportUnit::MilligramPerLitre},
                            {u"cider"_s, u"Ethanol"_s, ReportUnit::MillimolPerLitre}};
    EXPECT_EQ(*read.value, expected);
    EXPECT_EQ(formatOf(bytes(laboratoryDocument())), QString::fromUtf16(laboratoryFormat));
}

TEST(LaboratoryReader, OneFaultGivesOneProblem)
{
    const test::ChangedDocument rows[] = {
        {{"/name", nullptr}, "", ""},
        {{"/glassware/pipettes", "[]"}, "", ""},
        {{"/glassware/flasks", "[]"}, "", ""},
        {{"/format", nullptr}, "/format", "is missing"},
        {{"/format", R"("plateau-run/1")"}, "/format", "expected the format \"plateau-laboratory/1\""},
        {{"/name", R"("")"}, "/name", "is blank"},
        {{"/name", R"(" ")"}, "/name", "the name cannot be used"},
        {{"/name", "7"}, "/name", "expected text"},
        {{"/rackRows", nullptr}, "/rackRows", "is missing"},
        {{"/rackRows", "2.5"}, "/rackRows", "whole number"},
        {{"/rackRows", R"("3")"}, "/rackRows", "found text"},
        {{"/rackRows", "13"}, "/rackColumns", "104 places"},
        {{"/rackrows", "3"}, "/rackrows", "did you mean \"rackRows\"?"},
        {{"/handling", nullptr}, "/handling", "is missing"},
        {{"/handling/mix_s", nullptr}, "/handling/mix_s", "is missing"},
        {{"/handling/mix_min", "1"}, "/handling/mix_min", "not known here"},
        {{"/handling/addition_s", "0"}, "/handling/addition_s", "greater than 0"},
        {{"/overage_percent", R"("10 %")"}, "/overage_percent", "found text"},
        {{"/overage_percent", "-1"}, "/overage_percent", "not -1"},
        {{"/glassware", "[]"}, "/glassware", "expected an object"},
        {{"/glassware/flasks", nullptr}, "/glassware/flasks", "is missing"},
        {{"/glassware/beakers", "[]"}, "/glassware/beakers", "not known here"},
        {{"/glassware/pipettes/0", "5"}, "/glassware/pipettes/0", "expected an object"},
        {{"/glassware/pipettes/0/name", nullptr}, "/glassware/pipettes/0/name", "is missing"},
        {{"/glassware/pipettes/0/smallest_mL", "0"}, "/glassware/pipettes/0/smallest_mL", "not 0"},
        {{"/glassware/pipettes/0/smallest_mL", R"("0.1")"},
         "/glassware/pipettes/0/smallest_mL",
         "found text"},
        {{"/glassware/pipettes/0/largest_mL", nullptr}, "/glassware/pipettes/0/largest_mL", "is missing"},
        {{"/glassware/pipettes/0/step_mL", nullptr}, "/glassware/pipettes/0/step_mL", "is missing"},
        {{"/glassware/pipettes/0/step_mL", "0.4"},
         "/glassware/pipettes/0/step_mL",
         "a whole number of times"},
        {{"/glassware/pipettes/1/name", R"("piston")"}, "/glassware/pipettes/1/name", "is taken"},
        {{"/glassware/flasks/0/volume_mL", "0"}, "/glassware/flasks/0/volume_mL", "greater than 0"},
        {{"/glassware/flasks/0/volume_mL", "null"}, "/glassware/flasks/0/volume_mL", "expected a number"},
        {{"/review", nullptr}, "", ""},
        {{"/reportHead", nullptr}, "", ""},
        {{"/reportHead/logo", nullptr}, "", ""},
        {{"/reportHead/contact", nullptr}, "", ""},
        {{"/reportUnits", nullptr}, "", ""},
        {{"/review/rejectionReasons", "[]"}, "", ""},
        {{"/review/reviewerDecides", nullptr}, "/review/reviewerDecides", "is missing"},
        {{"/review/secondPersonReviews", "1"}, "/review/secondPersonReviews", "expected true or false"},
        {{"/review/rejectionReasons/1", R"("Spilt ")"}, "/review/rejectionReasons/1", "in the list already"},
        {{"/review/rejectionReasons/0", "7"}, "/review/rejectionReasons/0", "expected text"},
        {{"/review/rejectionReasons/0", R"(" ")"}, "/review/rejectionReasons/0", "the reason cannot be used"},
        {{"/reportHead/address", nullptr}, "/reportHead/address", "is missing"},
        {{"/reportHead/address/0", R"("")"}, "/reportHead/address/0", "the line cannot be used"},
        {{"/reportHead/contact", R"("")"}, "/reportHead/contact", "is blank"},
        {{"/reportHead/logo/type", R"("gif")"}, "/reportHead/logo/type", "gif"},
        {{"/reportHead/logo/type", R"("svg")"}, "/reportHead/logo/base64", "it is not an SVG picture"},
        {{"/reportHead/logo/base64", R"("AAAA")"}, "/reportHead/logo/base64", "it is not a PNG picture"},
        {{"/reportHead/logo/base64", R"("AAA")"}, "/reportHead/logo/base64", "is not base64 text"},
        {{"/reportHead/logo/base64", R"("A*AA")"}, "/reportHead/logo/base64", "is not base64 text"},
        {{"/reportUnits/0/unit", R"("g/l")"}, "/reportUnits/0/unit", "g/l"},
        {{"/reportUnits/0/measurand", R"("Ethanol")"},
         "/reportUnits/1/product",
         "has a unit for this already"},
        {{"/reportUnits/0/measurand", R"("")"}, "/reportUnits/0/measurand", "is blank"},
        {{"/reportUnits/1/product", nullptr}, "", ""},
        {{"/reportUnits/0/product", nullptr}, "/reportUnits/0/product", "neither a product nor a measurand"},
        {{"/reportUnits/0/product", R"("")"}, "/reportUnits/0/product", "is blank"},
        {{"/glassware/flasks/0/uncertainty_percent", "101"},
         "/glassware/flasks/0/uncertainty_percent",
         "not 101"},
    };
    for (const test::ChangedDocument &row : rows) {
        const auto read = readLaboratory(bytes(changed(laboratoryDocument(), row.change)));
        const char *value = row.change.value ? row.change.value : "taken away";
        EXPECT_EQ(read.value.has_value(), !*row.fragment) << row.change.pointer << " " << value;
        if (*row.fragment) {
            EXPECT_EQ(read.problems.size(), 1U)
                << row.change.pointer << " " << value << ": " << listed(read.problems);
            EXPECT_TRUE(names(read.problems, row.pointer, row.fragment)) << listed(read.problems);
        } else {
            EXPECT_TRUE(read.problems.empty()) << listed(read.problems);
        }
    }
}

TEST(LaboratoryReader, WhatIsNoDocumentIsRefused)
{
    for (const char *text : {"", "[]", "{", R"({"format": "plateau-laboratory/1", "format": "x"})", "7"}) {
        const auto read = readLaboratory(text);
        EXPECT_FALSE(read.value) << text;
        EXPECT_FALSE(read.problems.empty()) << text;
    }
}

TEST(LaboratoryWriter, SoundLaboratoriesComeBackAsTheyWere)
{
    const Laboratory usual = planning::usualLaboratory();
    EXPECT_EQ(readLaboratory(writeLaboratory(usual)).value, usual);
    test::forSeeds(200, [](Random &random) {
        const Laboratory laboratory = soundLaboratory(random);
        const auto read = readLaboratory(writeLaboratory(laboratory));
        ASSERT_TRUE(read.value) << listed(read.problems);
        EXPECT_EQ(*read.value, laboratory);
    });
}

TEST(LaboratoryWriter, FieldsStandInTheOrderOfTheContract)
{
    const auto read = readLaboratory(bytes(laboratoryDocument()));
    const QByteArray text = writeLaboratory(*read.value);
    EXPECT_EQ(ordered_json::parse(text.begin(), text.end()).dump(), laboratoryDocument().dump());
}

} // namespace plateau::exchange
