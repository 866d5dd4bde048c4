// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
// What `plateau evaluate` says of every shipped sample, against the same figures worked out here from the
// readings by the plain formula c = dA V M / (e d v n), without any code of the program.
#include "tests/commands/program.h"

#include <QDir>
#include <QJsonArray>

#include <cmath>
#include <vector>

using namespace plateau::test;
using namespace Qt::StringLiterals;

namespace {

struct Expected {
    const char *file;
    const char *sample;
    const char *measurand;
    double value;
    const char *unit;
    const char *verdict;
};

// g/L for one unit of net signal: V M / (e d v n) with d = 1 cm.
constexpr double sulphite = 3.32 * 64.06 / (6300 * 0.1);
constexpr double malic = 2.22 * 134.09 / (6300 * 0.1);
constexpr double glycerol = 3.04 * 92.09 / (6300 * 0.1);
constexpr double glucose = 3.22 * 180.16 / (6300 * 0.1);
constexpr double fructose = 3.24 * 180.16 / (6300 * 0.1);
constexpr double acetic = 3.24 * 60.05 / (6300 * 0.1);
constexpr double freeSulphite = 3.35 * 64.06 / (6300 * 0.2);
constexpr double dMalic = 2.95 * 134.09 / (6300 * 0.1);

constexpr double mean(double a, double b)
{
    return (a + b) / 2;
}

constexpr double coupled(double a0, double a1, double a2)
{
    return (a2 - a0) - (a1 - a0) * (a1 - a0) / (a2 - a0);
}

/// Straight line through readings at 20, 25, 30 and 35 min, at 0 min: mean 27.5, sum of squares 125.
constexpr double atStart(double a20, double a25, double a30, double a35)
{
    const double slope = (-7.5 * a20 - 2.5 * a25 + 2.5 * a30 + 7.5 * a35) / 125;
    return (a20 + a25 + a30 + a35) / 4 - slope * 27.5;
}

/// Line of four levels: amounts 0.005, 0.010, 0.020, 0.025 mg (0.1 mL each) and their net signals; mean
/// 0.015, sum of squares 0.00025.
double fromLine(double net)
{
    const double blank = 0.011;
    const double y1 = 1.387 - 1.231 - blank;
    const double y2 = 1.384 - 1.084 - blank;
    const double y3 = 1.387 - 0.800 - blank;
    const double y4 = 1.385 - 0.654 - blank;
    const double slope = (-0.010 * y1 - 0.005 * y2 + 0.005 * y3 + 0.010 * y4) / 0.00025;
    const double intercept = (y1 + y2 + y3 + y4) / 4 - slope * 0.015;
    return (net - intercept) / slope / 0.1;
}

std::vector<Expected> expectedResults()
{
    const double coupledBlank = mean(coupled(0.203, 0.209, 0.216), coupled(0.203, 0.209, 0.217));
    const double creepBlank =
        mean(atStart(0.151, 0.152, 0.155, 0.156) - 0.135, atStart(0.152, 0.153, 0.156, 0.157) - 0.135);
    const double still = mean(coupled(0.203, 0.276, 0.778), coupled(0.203, 0.277, 0.780)) - coupledBlank;
    const double barrel = mean(coupled(0.201, 0.279, 1.037), coupled(0.204, 0.282, 1.040)) - coupledBlank;
    const double added =
        mean(atStart(0.504, 0.510, 0.515, 0.521) - 0.134, atStart(0.506, 0.510, 0.517, 0.521) - 0.134) -
        creepBlank;
    const double juice =
        mean(atStart(0.228, 0.233, 0.238, 0.243) - 0.134, atStart(0.229, 0.234, 0.239, 0.246) - 0.135) -
        creepBlank;
    return {
        {"clean-run.json", "Keeved cider, tank 4", "sulphite",
         (mean(1.390 - 0.941, 1.386 - 0.934) - 0.012) * sulphite, "g/L", "reportable"},
        {"clean-run.json", "Perry, tank 7", "sulphite",
         (mean(1.387 - 1.089, 1.386 - 1.089) - 0.012) * sulphite, "g/L", "reportable"},
        {"clean-run.json", "Still dry cider, bottling 61", "sulphite",
         (mean(1.386 - 1.014, 1.384 - 1.013) - 0.012) * sulphite, "g/L", "reportable"},
        {"clean-run.json", "Ice cider, cask 12", "sulphite",
         (mean(1.387 - 1.030, 1.385 - 1.028) - 0.012) * sulphite * 2, "g/L", "reportable"},
        {"coloured-sample.json", "Blackcurrant cider, tank 3", "l-malic-acid",
         (mean(0.950 - 0.555, 0.947 - 0.553) - 0.007 + 0.005) * malic * 10, "g/L", "reportable"},
        {"coloured-sample.json", "Cherry and apple wine, cask 5", "l-malic-acid",
         (mean(0.746 - 0.442, 0.744 - 0.441) - 0.007 + 0.005) * malic * 10, "g/L", "reportable"},
        {"coupled-indicator.json", "Still dry cider, bottling 61", "acetic-acid", still * acetic * 2.5, "g/L",
         "reportable"},
        {"coupled-indicator.json", "Barrel sample, cask 18", "acetic-acid", barrel * acetic * 2.5, "g/L",
         "reportable"},
        {"exhausted-reagent.json", "Perry base, sulphited after pressing", "sulphite",
         (mean(1.383 - 0.985, 1.384 - 0.985) - 0.012) * sulphite, "g/L", "reportable"},
        {"exhausted-reagent.json", "Apple concentrate, drum 3", "sulphite",
         (mean(1.382 - 0.034, 1.382 - 0.035) - 0.012) * sulphite * 5, "g/L", "repeat"},
        {"failed-standard.json", "Keeved cider, tank 4", "sulphite",
         (mean(1.385 - 0.926, 1.387 - 0.928) - 0.011) * sulphite, "g/L", "investigate"},
        {"failed-standard.json", "Rosé cider, tank 9", "sulphite",
         (mean(1.385 - 0.967, 1.385 - 0.965) - 0.011) * sulphite, "g/L", "investigate"},
        {"line-calibration.json", "Still dry cider, bottling 61", "sulphite",
         fromLine(mean(1.386 - 1.025, 1.385 - 1.023) - 0.011), "g/L", "reportable"},
        {"line-calibration.json", "Ginger cider, trial B", "sulphite",
         fromLine(mean(1.385 - 0.886, 1.386 - 0.886) - 0.011), "g/L", "reportable"},
        {"on-the-bench.json", "Keeved cider, tank 4", "sulphite",
         (mean(1.386 - 0.933, 1.385 - 0.933) - 0.012) * sulphite, "g/L", "reportable"},
        {"on-the-bench.json", "Perry, tank 7", "sulphite", std::nan(""), "g/L", "investigate"},
        {"poor-duplicates.json", "Ice cider, cask 12", "glycerol",
         (mean(1.412 - 0.842, 1.411 - 0.842) - 0.013) * glycerol * 25, "g/L", "reportable"},
        {"poor-duplicates.json", "Keeved cider, tank 4", "glycerol",
         (mean(1.411 - 1.011, 1.409 - 0.949) - 0.013) * glycerol * 25, "g/L", "investigate"},
        {"slow-reaction.json", "Perry, tank 7, trial with added acid", "d-malic-acid", added * dMalic * 2,
         "g/L", "reportable"},
        {"slow-reaction.json", "Apple juice, unsulphited", "d-malic-acid", juice * dMalic, "g/L",
         "reportable"},
        {"solid.json", "Dried apricots, lot 2231", "sulphite",
         (mean(1.386 - 1.090, 1.383 - 1.085) - 0.012) * sulphite * 0.1 / 5.012 * 100, "g/100 g",
         "reportable"},
        {"solid.json", "Sultanas, bleached, lot 88", "sulphite",
         (mean(1.386 - 1.162, 1.385 - 1.161) - 0.012) * sulphite * 0.1 / 5.124 * 100, "g/100 g",
         "reportable"},
        {"spiked-sample.json", "Perry, tank 7", "sulphite",
         ((1.386 - 1.194 - 0.011) + (1.386 - 1.192 - 0.011) + (1.383 - 1.009 - 0.011) / 2) / 3 * sulphite,
         "g/L", "reportable"},
        {"free-sulphite.json", "Dry perry, bottling 12", "free-sulphite",
         (mean(1.383 - 1.210, 1.382 - 1.208) - 0.009) * freeSulphite, "g/L", "reportable"},
        {"free-sulphite.json", "Orchard reserve, cask 2", "free-sulphite",
         (mean(1.380 - 1.130, 1.381 - 1.132) - 0.009) * freeSulphite, "g/L", "reportable"},
        {"bound-sulphite.json", "Dry perry, bottling 12", "sulphite",
         (mean(1.386 - 1.019, 1.385 - 1.019) - 0.012) * sulphite, "g/L", "reportable"},
        {"bound-sulphite.json", "Orchard reserve, cask 2", "sulphite",
         (mean(1.387 - 0.901, 1.385 - 0.900) - 0.012) * sulphite, "g/L", "reportable"},
        // by the run's own standard: 0.1 mL of 0.06 g/L in its tubes as in the samples'
        {"own-standard.json", "Cider without alcohol, bottling 8", "ethanol",
         mean(0.424 - 0.086 - 0.0165, 0.424 - 0.085 - 0.0165) / mean(0.551 - 0.0165, 0.549 - 0.0165) * 0.06 *
             100,
         "g/L", "reportable"},
        {"own-standard.json", "Apple juice, pressing 7", "ethanol",
         mean(0.415 - 0.087 - 0.0165, 0.413 - 0.086 - 0.0165) / mean(0.551 - 0.0165, 0.549 - 0.0165) * 0.06 *
             10,
         "g/L", "reportable"},
        {"stronger-dilution.json", "Dessert apple must, press 2", "l-malic-acid",
         (mean(0.726 - 0.192, 0.728 - 0.193) - 0.008) * malic * 20, "g/L", "reportable"},
        {"too-strong.json", "Dessert apple must, press 2", "l-malic-acid",
         (mean(1.250 - 0.191, 1.252 - 0.193) - 0.0075) * malic * 10, "g/L", "repeat"},
        {"too-strong.json", "Bittersweet must, press 1", "l-malic-acid",
         (mean(0.696 - 0.203, 0.696 - 0.201) - 0.0075) * malic * 10, "g/L", "reportable"},
        {"trace.json", "Apple juice, unsulphited", "sulphite",
         (mean(1.385 - 1.342, 1.386 - 1.341) - 0.0115) * sulphite / 5, "g/L", "reportable"},
        {"two-measurands.json", "Ice cider, cask 12", "glucose",
         (mean(0.531 - 0.124, 0.528 - 0.119) - 0.005) * glucose * 200, "g/L", "reportable"},
        {"two-measurands.json", "Ice cider, cask 12", "fructose",
         (mean(1.225 - 0.531, 1.223 - 0.528) - 0.003) * fructose * 200, "g/L", "reportable"},
        {"two-measurands.json", "Keeved cider, tank 4", "glucose",
         (mean(0.253 - 0.121, 0.254 - 0.122) - 0.005) * glucose * 20, "g/L", "reportable"},
        {"two-measurands.json", "Keeved cider, tank 4", "fructose",
         (mean(0.690 - 0.253, 0.692 - 0.254) - 0.003) * fructose * 20, "g/L", "reportable"},
    };
}

QString path(const char *file)
{
    return QStringLiteral(PLATEAU_SOURCE_DIR "/sampledata/") + QString::fromLatin1(file);
}

QJsonObject resultOf(const QJsonObject &evaluation, const QString &sample, const QString &measurand)
{
    const QJsonArray results = evaluation["results"_L1].toArray();
    for (const QJsonValue &result : results) {
        if (result["sample"_L1].toString() == sample && result["measurand"_L1].toString() == measurand)
            return result.toObject();
    }
    return {};
}

QJsonObject failedCheck(const QJsonObject &evaluation, const QString &id)
{
    const QJsonArray checks = evaluation["checks"_L1].toArray();
    for (const QJsonValue &check : checks) {
        if (check["id"_L1].toString() == id && !check["passed"_L1].toBool())
            return check.toObject();
    }
    return {};
}

QJsonObject evaluationOf(const char *file)
{
    return runProgram({u"evaluate"_s, path(file)}).json();
}

} // namespace

TEST(SampleData, EveryResultIsWhatTheReadingsGiveByHand)
{
    for (const Expected &expected : expectedResults()) {
        SCOPED_TRACE(std::string(expected.file) + ": " + expected.sample + ", " + expected.measurand);
        const QJsonObject result = resultOf(evaluationOf(expected.file), QString::fromUtf8(expected.sample),
                                            QString::fromUtf8(expected.measurand));
        ASSERT_FALSE(result.isEmpty());
        if (std::isnan(expected.value))
            EXPECT_TRUE(result["value"_L1].isNull());
        else
            EXPECT_NEAR(result["value"_L1].toDouble(), expected.value, 1e-9);
        EXPECT_EQ(result["unit"_L1].toString().toStdString(), expected.unit);
        EXPECT_EQ(result["verdict"_L1].toString().toStdString(), expected.verdict);
    }
}

TEST(SampleData, EveryFileIsCoveredAndItsStatusFits)
{
    const QStringList files =
        QDir(QStringLiteral(PLATEAU_SOURCE_DIR "/sampledata")).entryList({u"*.json"_s}, QDir::Files);
    EXPECT_GE(files.size(), 8);
    const std::vector<Expected> expected = expectedResults();
    for (const QString &file : files) {
        bool covered = false;
        bool reportable = true;
        for (const Expected &row : expected) {
            if (file != QLatin1StringView(row.file))
                continue;
            covered = true;
            reportable = reportable && QLatin1StringView(row.verdict) == "reportable"_L1;
        }
        EXPECT_TRUE(covered) << file.toStdString();
        EXPECT_EQ(runProgram({u"evaluate"_s, path(file.toUtf8().constData())}).status, reportable ? 0 : 1)
            << file.toStdString();
    }
}

TEST(SampleData, StandardIsWorthLessWhenItIsUsed)
{
    const QJsonObject standard = evaluationOf("clean-run.json")["standards"_L1].toArray().at(0).toObject();
    const double expected = 0.2 * std::pow(0.98, 1.5);
    const double found = (mean(1.387 - 0.810, 1.386 - 0.808) - 0.012) * sulphite;
    EXPECT_NEAR(standard["expected_g_per_L"_L1].toDouble(), expected, 1e-12);
    EXPECT_NEAR(standard["found_g_per_L"_L1].toDouble(), found, 1e-12);
    EXPECT_NEAR(standard["recovery_percent"_L1].toDouble(), found / expected * 100, 1e-9);
}

TEST(SampleData, ExhaustedReagentAsksForAtLeastATenfoldDilution)
{
    const QJsonObject evaluation = evaluationOf("exhausted-reagent.json");
    for (const QJsonValue &each : evaluation["results"_L1].toArray()) {
        const QJsonObject result = each.toObject();
        if (result["sample"_L1].toString() == "Apple concentrate, drum 3"_L1)
            EXPECT_EQ(result["greaterThan"_L1].toDouble(), result["value"_L1].toDouble());
        else
            EXPECT_TRUE(result["greaterThan"_L1].isNull());
    }
    const QJsonObject check = failedCheck(evaluation, u"reserve-low"_s);
    const QJsonObject advice = check["advice"_L1].toObject();
    EXPECT_EQ(advice["kind"_L1].toString(), u"dilute"_s);
    EXPECT_EQ(advice["factor"_L1].toDouble(), 10); // 5 already; 1.336 / 2 is within 0.8
    EXPECT_TRUE(advice["atLeast"_L1].toBool());
    EXPECT_EQ(advice["steps"_L1].toArray().at(0)["take_mL"_L1].toDouble(), 5);
    EXPECT_EQ(advice["steps"_L1].toArray().at(0)["makeUpTo_mL"_L1].toDouble(), 50);
}

TEST(SampleData, TooStrongASampleIsDilutedTwofoldMore)
{
    const QJsonObject advice =
        failedCheck(evaluationOf("too-strong.json"), u"signal-high"_s)["advice"_L1].toObject();
    EXPECT_EQ(advice["factor"_L1].toDouble(), 20); // 1.0515 / 2 = 0.526, at most 0.8 x 0.74
    EXPECT_FALSE(advice["atLeast"_L1].toBool());
}

TEST(SampleData, StaleStandardFailsByAgeAndRecovery)
{
    const QJsonObject evaluation = evaluationOf("failed-standard.json");
    EXPECT_FALSE(failedCheck(evaluation, u"standard-too-old"_s).isEmpty());
    EXPECT_FALSE(failedCheck(evaluation, u"standard-recovery"_s).isEmpty());
    const double expected = 0.2 * std::pow(0.98, 25);
    const double found = (mean(1.385 - 1.067, 1.385 - 1.066) - 0.011) * sulphite;
    EXPECT_NEAR(evaluation["standards"_L1].toArray().at(0)["recovery_percent"_L1].toDouble(),
                found / expected * 100, 1e-9);
}

TEST(SampleData, PoorDuplicatesAreNamed)
{
    const QJsonObject check = failedCheck(evaluationOf("poor-duplicates.json"), u"duplicate-spread"_s);
    EXPECT_EQ(check["scope"_L1].toString(), u"sample Keeved cider, tank 4"_s);
}

TEST(SampleData, SpikeIsRecoveredFromAmounts)
{
    const double strength = 0.2 * 0.98; // an hour old
    const double unspiked =
        ((1.386 - 1.194 - 0.011) + (1.386 - 1.192 - 0.011) + (1.383 - 1.009 - 0.011) / 2) / 3 * sulphite;
    const double tube = (1.385 - 0.631 - 0.011) * sulphite;
    const double expected = (tube - unspiked) * 0.1 / (strength * 0.1) * 100;
    const QJsonObject spike = evaluationOf("spiked-sample.json")["spikes"_L1].toArray().at(0).toObject();
    EXPECT_NEAR(spike["recovery_percent"_L1].toDouble(), expected, 1e-9);
}

TEST(SampleData, TraceIsReportedAsBelowTheLimitOfQuantification)
{
    const QJsonObject check = failedCheck(evaluationOf("trace.json"), u"signal-low"_s);
    EXPECT_TRUE(check["advice"_L1].isNull());
    // 0.1 x 3.32 x 64.06 / (6300 x 0.5) = 0.00675 g/L
    EXPECT_TRUE(
        check["message"_L1].toString().contains(u"below the limit of quantification, 0.0068\u00a0g/L"_s))
        << check["message"_L1].toString().toStdString();
}

TEST(SampleData, BudgetOfTheSimplestResultByHand)
{
    const QJsonObject result = resultOf(evaluationOf("clean-run.json"), u"Perry, tank 7"_s, u"sulphite"_s);
    const double value = result["value"_L1].toDouble();
    // two tubes of two readings; the blank of two tubes of two readings
    const double readings = 0.002 * std::sqrt(2.0) / std::sqrt(2.0) * sulphite;
    const double variance = 2 * readings * readings +
                            value * value * (0.005 * 0.005 + 0.002 * 0.002 + 0.005 * 0.005 + 0.008 * 0.008);
    EXPECT_EQ(result["coverageFactor"_L1].toDouble(), 2);
    EXPECT_NEAR(result["expandedUncertainty"_L1].toDouble(), 2 * std::sqrt(variance), 1e-9);
}
