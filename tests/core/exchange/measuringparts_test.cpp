// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Photometer and uncertainties by method in a laboratory's document.
#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "tests/core/exchange/documents.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"
#include "tests/support/random.h"

#include <gtest/gtest.h>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using nlohmann::ordered_json;
using planning::Laboratory;
using planning::MethodUncertainty;
using planning::Photometer;
using test::bytes;
using test::changed;
using test::listed;
using test::names;
using test::Random;

namespace {

/// As notebooks hold it from before there was more.
ordered_json oldDocument()
{
    return ordered_json::parse(R"({
 "format": "plateau-laboratory/1", "rackRows": 3, "rackColumns": 8,
 "handling": {"addition_s": 7, "mix_s": 3.5, "reading_s": 12}, "overage_percent": 15,
 "glassware": {"pipettes": [], "flasks": []}})");
}

ordered_json document()
{
    ordered_json document = oldDocument();
    document["photometer"] =
        ordered_json::parse(R"({"name": "P1", "absorbance": 0.0012, "pathLength_percent": 0.1,
      "source": "Check record 7", "checkedOn": "2026-09-14"})");
    document["methodUncertainties"] = ordered_json::parse(R"([
      {"method": "ethanol", "source": "Validation", "absorbance": 0.001, "absorptivity_percent": 0.1,
       "pathLength_percent": 0.2, "totalVolume_percent": 0.3, "sampleVolume_percent": 0.4, "dilution_percent": 0.5,
       "extract_percent": 0.6},
      {"method": "glycerol", "source": "Validation", "dilution_percent": 0}])");
    return document;
}

std::optional<double> maybe(Random &random, double most)
{
    return random.chance() ? std::optional(random.between(0, most)) : std::nullopt;
}

} // namespace

TEST(MeasuringParts, EveryFieldArrives)
{
    const auto read = readLaboratory(bytes(document()));
    ASSERT_TRUE(read.value) << listed(read.problems);
    EXPECT_EQ(read.value->photometer,
              (Photometer{u"P1"_s, 0.0012, 0.1, u"Check record 7"_s, QDate(2026, 9, 14)}));
    EXPECT_EQ(
        read.value->methodUncertainties,
        (std::vector<MethodUncertainty>{{u"ethanol"_s, u"Validation"_s, 0.001, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6},
                                        {u"glycerol"_s, u"Validation"_s, {}, {}, {}, {}, {}, 0.0, {}}}));
}

TEST(MeasuringParts, OlderDocumentsReadAsBefore)
{
    const auto read = readLaboratory(bytes(oldDocument()));
    ASSERT_TRUE(read.value) << listed(read.problems);
    EXPECT_FALSE(read.value->photometer);
    EXPECT_TRUE(read.value->methodUncertainties.empty());
    const QByteArray text = writeLaboratory(*read.value);
    EXPECT_EQ(ordered_json::parse(text.begin(), text.end()).dump(), oldDocument().dump());
}

TEST(MeasuringParts, OneFaultGivesOneProblem)
{
    struct Row {
        test::Change change;
        const char *pointer;
        const char *fragment;
    };
    const Row rows[] = {
        {{"/photometer", "7"}, "/photometer", "expected an object"},
        {{"/photometer/name", nullptr}, "/photometer/name", "is missing"},
        {{"/photometer/absorbance", R"("0.001")"}, "/photometer/absorbance", "found text"},
        {{"/photometer/absorbance", "2"}, "/photometer/absorbance", "not 2"},
        {{"/photometer/source", nullptr}, "/photometer/source", "which record"},
        {{"/photometer/source", R"(" ")"}, "/photometer/source", "is blank"},
        {{"/photometer/checkedOn", R"("2026-13-01")"}, "/photometer/checkedOn", "date"},
        {{"/photometer/lamp", "1"}, "/photometer/lamp", "not known here"},
        {{"/methodUncertainties", "{}"}, "/methodUncertainties", "expected a list"},
        {{"/methodUncertainties/0/method", nullptr}, "/methodUncertainties/0/method", "is missing"},
        {{"/methodUncertainties/1/method", R"("ethanol")"},
         "/methodUncertainties/1/method",
         "has an entry already"},
        {{"/methodUncertainties/1/source", nullptr}, "/methodUncertainties/1/source", "is missing"},
        {{"/methodUncertainties/1/dilution_percent", nullptr}, "/methodUncertainties/1", "at least one"},
        {{"/methodUncertainties/1/dilution_percent", R"("1")"},
         "/methodUncertainties/1/dilution_percent",
         "found text"},
        {{"/methodUncertainties/0/extract_percent", "-1"},
         "/methodUncertainties/0/extract_percent",
         "not -1"},
    };
    for (const Row &row : rows) {
        const auto read = readLaboratory(bytes(changed(document(), row.change)));
        const char *value = row.change.value ? row.change.value : "taken away";
        EXPECT_FALSE(read.value) << row.change.pointer << " " << value;
        EXPECT_EQ(read.problems.size(), 1U)
            << row.change.pointer << " " << value << ": " << listed(read.problems);
        EXPECT_TRUE(names(read.problems, row.pointer, row.fragment)) << listed(read.problems);
    }
}

TEST(MeasuringParts, ComeBackAsTheyWereAndInTheOrderOfTheContract)
{
    const auto whole = readLaboratory(bytes(document()));
    const QByteArray text = writeLaboratory(*whole.value);
    EXPECT_EQ(ordered_json::parse(text.begin(), text.end()).dump(), document().dump());
    test::forSeeds(200, [](Random &random) {
        Laboratory laboratory = planning::usualLaboratory();
        if (random.chance())
            laboratory.photometer =
                Photometer{u"P 1"_s, maybe(random, 1), maybe(random, 100), u"Record \"7\""_s,
                           random.chance() ? std::optional(QDate(2026, 2, 28)) : std::nullopt};
        for (int i = random.whole(0, 3); i > 0; --i)
            laboratory.methodUncertainties.push_back(
                {QString::number(i), u"two\nlines"_s, random.between(0, 1), maybe(random, 100),
                 maybe(random, 100), maybe(random, 100), maybe(random, 100), maybe(random, 100),
                 maybe(random, 100)});
        const auto read = readLaboratory(writeLaboratory(laboratory));
        ASSERT_TRUE(read.value) << listed(read.problems);
        EXPECT_EQ(*read.value, laboratory);
    });
}

} // namespace plateau::exchange
