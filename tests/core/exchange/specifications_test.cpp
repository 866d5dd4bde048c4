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

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using namespace plateau::evaluation;
using nlohmann::ordered_json;
using test::bytes;
using test::changed;
using test::listed;
using test::names;
using test::Random;

namespace {

ordered_json specificationsDocument()
{
    return ordered_json::parse(R"({
 "format": "plateau-specifications/1", "specifications": [
  {"product": "perry", "measurand": "sulphite", "kind": "labelThreshold", "upper": 10, "unit": "mg/L",
   "source": "Customer, page 2", "date": "2026-01-15", "rule": "simpleAcceptance"},
  {"product": "apple rings", "measurand": "Sucrose", "kind": "range", "lower": 1.5, "upper": 5, "unit": "g/100 g",
   "source": "House rule", "date": "2025-12-31", "rule": "guardedBoth", "guard": {"kind": "absolute", "size": 0.25}}]})");
}

Specification soundSpecification(Random &random, int number)
{
    Specification specification;
    specification.product = u"product "_s + QString::number(number);
    specification.measurand = random.chance() ? u"sulphite"_s : u"Sulphite as SO\u2082"_s;
    specification.kind = static_cast<LimitKind>(random.whole(0, 3));
    if (specification.kind == LimitKind::Minimum || specification.kind == LimitKind::Range)
        specification.lower = random.magnitude(0.001, 1000);
    if (specification.kind != LimitKind::Minimum)
        specification.upper = specification.lower.value_or(0) + random.magnitude(0.001, 1000);
    specification.unit = reportUnits()[static_cast<std::size_t>(random.whole(0, 6))];
    specification.source = u"line\nand \"line\""_s;
    specification.date = QDate(2026, 1, 1).addDays(random.whole(-10000, 10000));
    specification.rule = static_cast<DecisionRule>(random.whole(0, 3));
    if (specification.rule == DecisionRule::SimpleAcceptance)
        return specification;
    switch (random.whole(0, 2)) {
    case 0:
        specification.guard = GuardBand{};
        break;
    case 1:
        specification.guard = GuardBand{GuardBand::Kind::ExpandedUncertainty, random.magnitude(0.01, 10)};
        break;
    default:
        specification.guard = GuardBand{GuardBand::Kind::Absolute, random.magnitude(0.00001, 0.0001)};
        break;
    }
    return specification;
}

} // namespace

TEST(SpecificationsReader, EveryFieldArrives)
{
    const auto read = readSpecifications(bytes(specificationsDocument()));
    ASSERT_TRUE(read.value) << listed(read.problems);
    ASSERT_EQ(read.value->size(), 2U);
    Specification label;
    label.product = u"perry"_s;
    label.measurand = u"sulphite"_s;
    label.kind = LimitKind::LabelThreshold;
    label.upper = 10;
    label.unit = ReportUnit::MilligramPerLitre;
    label.source = u"Customer, page 2"_s;
    label.date = QDate(2026, 1, 15);
    EXPECT_EQ(read.value->front(), label);
    Specification range;
    range.product = u"apple rings"_s;
    range.measurand = u"Sucrose"_s;
    range.kind = LimitKind::Range;
    range.lower = 1.5;
    range.upper = 5;
    range.unit = ReportUnit::GramPer100g;
    range.source = u"House rule"_s;
    range.date = QDate(2025, 12, 31);
    range.rule = DecisionRule::GuardedBoth;
    range.guard = GuardBand{GuardBand::Kind::Absolute, 0.25};
    EXPECT_EQ(read.value->back(), range);
    EXPECT_EQ(formatOf(bytes(specificationsDocument())), QString::fromUtf16(specificationsFormat));
}

TEST(SpecificationsReader, OneFaultGivesOneProblem)
{
    const test::ChangedDocument rows[] = {
        {{"/specifications", "[]"}, "", ""},
        {{"/format", nullptr}, "/format", "is missing"},
        {{"/format", R"("plateau-run/1")"}, "/format", "expected the format \"plateau-specifications/1\""},
        {{"/specifications", nullptr}, "/specifications", "is missing"},
        {{"/specifications/0", "7"}, "/specifications/0", "expected an object"},
        {{"/specifications/0/product", nullptr}, "/specifications/0/product", "is missing"},
        {{"/specifications/0/Product", "1"}, "/specifications/0/Product", "did you mean \"product\"?"},
        {{"/specifications/0/kind", R"("max")"}, "/specifications/0/kind", "maximum"},
        {{"/specifications/0/kind", R"("minimum")"}, "/specifications/0/upper", "no meaning"},
        {{"/specifications/0/upper", nullptr}, "/specifications/0/upper", "is missing"},
        {{"/specifications/0/upper", R"("10")"}, "/specifications/0/upper", "found text"},
        {{"/specifications/1/lower", "5"}, "/specifications/1/upper", "greater than lower"},
        {{"/specifications/0/unit", R"("ppm")"}, "/specifications/0/unit", "mg/L"},
        {{"/specifications/0/source", R"("")"}, "/specifications/0/source", "say where"},
        {{"/specifications/0/date", R"("2026-02-30")"}, "/specifications/0/date", "date"},
        {{"/specifications/0/rule", R"("fair")"}, "/specifications/0/rule", "simpleAcceptance"},
        {{"/specifications/0/guard", R"({"kind": "oneSided95"})"}, "/specifications/0/guard", "no meaning"},
        {{"/specifications/1/guard", nullptr}, "/specifications/1/guard", "is missing"},
        {{"/specifications/1/guard/size", nullptr}, "/specifications/1/guard/size", "is missing"},
        {{"/specifications/1/guard/size", "1.75"}, "/specifications/1/guard/size", "leaves nothing"},
        {{"/specifications/1/guard", R"({"kind": "oneSided95", "size": 1})"},
         "/specifications/1/guard/size",
         "not known here"},
        {{"/specifications/1/guard/kind", R"("U")"}, "/specifications/1/guard/kind", "oneSided95"},
    };
    for (const test::ChangedDocument &row : rows) {
        ordered_json document = changed(specificationsDocument(), row.change);
        if (QByteArray(row.fragment) == "no meaning" && QByteArray(row.change.value) == R"("minimum")")
            document["specifications"][0]["lower"] = 1;
        const auto read = readSpecifications(bytes(document));
        const char *value = row.change.value ? row.change.value : "taken away";
        EXPECT_EQ(read.value.has_value(), !*row.fragment) << row.change.pointer << " " << value;
        EXPECT_EQ(read.problems.size(), *row.fragment ? 1U : 0U)
            << row.change.pointer << " " << value << ": " << listed(read.problems);
        if (*row.fragment) {
            EXPECT_TRUE(names(read.problems, row.pointer, row.fragment)) << listed(read.problems);
        }
    }
}

TEST(SpecificationsReader, TheSameLimitTwiceIsNamed)
{
    ordered_json document = specificationsDocument();
    document["specifications"].push_back(document["specifications"][0]);
    const auto read = readSpecifications(bytes(document));
    EXPECT_FALSE(read.value);
    EXPECT_TRUE(names(read.problems, "/specifications/2", "entry 1")) << listed(read.problems);
}

TEST(SpecificationsReader, WhatIsNoDocumentIsRefused)
{
    for (const char *text :
         {"", "[]", "{", R"({"format": "plateau-specifications/1", "format": "x"})", "7"}) {
        const auto read = readSpecifications(text);
        EXPECT_FALSE(read.value) << text;
        EXPECT_FALSE(read.problems.empty()) << text;
    }
}

TEST(SpecificationsWriter, SoundListsComeBackAsTheyWere)
{
    EXPECT_EQ(readSpecifications(writeSpecifications({})).value, std::vector<Specification>());
    test::forSeeds(200, [](Random &random) {
        std::vector<Specification> specifications;
        for (int i = random.whole(0, 6); i > 0; --i)
            specifications.push_back(soundSpecification(random, i));
        const auto read = readSpecifications(writeSpecifications(specifications));
        ASSERT_TRUE(read.value) << listed(read.problems);
        EXPECT_EQ(*read.value, specifications);
    });
}

TEST(SpecificationsWriter, FieldsStandInTheOrderOfTheContract)
{
    const auto read = readSpecifications(bytes(specificationsDocument()));
    const QByteArray text = writeSpecifications(*read.value);
    EXPECT_EQ(ordered_json::parse(text.begin(), text.end()).dump(), specificationsDocument().dump());
}

} // namespace plateau::exchange
