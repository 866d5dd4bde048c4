// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Volumes that were pipetted otherwise than planned: what they make of the calculation, and how it is written
// out.

#include "core/evaluation/working.h"

#include "tests/core/evaluation/found.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

using namespace plateau;
using namespace Qt::StringLiterals;
using evaluation::CheckId;

namespace {

run::Run runPipetted(std::map<QString, double> pipetted_mL)
{
    run::Run run = test::plainRun();
    run.tubes[2].pipetted_mL = std::move(pipetted_mL);
    return run;
}

/// A standard of 0.2 g/L at 0.1 mL that shows 0.5, so that one mg gives 25.
run::Run byStandard(std::map<QString, double> pipetted_mL)
{
    run::Run run = runPipetted(std::move(pipetted_mL));
    run.calibration = run::Calibration::Standard;
    run.standards = {{u"STD"_s, 0.2, {}, {}, {}, 0}};
    run.tubes.push_back(test::standardTube("STD", 0.100, 0.610));
    return run;
}

QString written(const run::Run &run)
{
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    QStringList all;
    for (const auto &section :
         evaluation::working(test::risingMethod(), run, evaluation, u"S"_s, u"analyte"_s)) {
        for (const auto &line : section.lines)
            all.append(u"%1: %2: %3: %4 = %5"_s.arg(section.title, line.what, line.formula, line.numbers,
                                                    line.value));
    }
    return all.join(u'\n');
}

} // namespace

TEST(PipettedOtherwise, MoreSampleCountsWithItsVolumeAndTheTubesVolume)
{
    const auto evaluation = evaluation::evaluate(test::risingMethod(), runPipetted({{u"sample"_s, 0.2}}));
    EXPECT_NEAR(evaluation.tubes[2].totalVolume_mL, 2.22, 1e-12);
    EXPECT_EQ(evaluation.tubes[2].sampleVolume_mL, 0.2);
    EXPECT_NEAR(*evaluation.tubes[2].concentration_g_per_L, 0.5 * 2.22 * 100 / (6300 * 0.2), 1e-14);
    EXPECT_NEAR(*evaluation.tubes[1].concentration_g_per_L, 0.5 * 2.12 * 100 / (6300 * 0.1), 1e-14);
}

TEST(PipettedOtherwise, LessReagentMakesASmallerTube)
{
    const auto evaluation = evaluation::evaluate(test::risingMethod(), runPipetted({{u"buffer"_s, 0.8}}));
    EXPECT_NEAR(evaluation.tubes[2].totalVolume_mL, 1.92, 1e-12);
    EXPECT_NEAR(*evaluation.tubes[2].concentration_g_per_L, 0.5 * 1.92 * 100 / (6300 * 0.1), 1e-14);
}

TEST(PipettedOtherwise, VolumeCorrectionFollowsWhatWentIn)
{
    assay::Method method = test::risingMethod();
    method.volumeCorrection = assay::VolumeCorrection::ToFinalVolume;
    const auto evaluation = evaluation::evaluate(method, runPipetted({{u"starter"_s, 0.5}}));
    // V is 2.10 before the starter and 2.60 after it; the blank's 2.10 and 2.12.
    const double signal = 0.631 - 0.121 * 2.10 / 2.60;
    const double blank = 0.110 - 0.100 * 2.10 / 2.12;
    EXPECT_NEAR(*evaluation.tubes[2].netSignal, signal - blank, 1e-14);
}

TEST(PipettedOtherwise, StandardInTheSamplesPlaceIsWorthWhatWasPipetted)
{
    run::Run run = byStandard({});
    run.tubes[3].pipetted_mL = {{u"sample"_s, 0.2}};
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    // 0.5 x 2.22 / 2.12 for 0.04 mg in the tube
    const double perMg = 0.5 * 2.22 / 2.12 / (0.2 * 0.2);
    EXPECT_NEAR(*evaluation.tubes[1].concentration_g_per_L, 0.5 / perMg / 0.1, 1e-13);
}

TEST(PipettedOtherwise, NoSampleAtAllGivesNoValueAndIsOutsideTheRange)
{
    run::Run run = runPipetted({{u"sample"_s, 0}});
    run.tubes[2].readings[u"A2"_s] = 0.131;
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    EXPECT_FALSE(evaluation.tubes[2].concentration_g_per_L);
    EXPECT_EQ(evaluation.results[0].n, 1);
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::SampleVolumeOutsideRange, u"sample S"_s)->passed);
}

TEST(PipettedOtherwise, AnotherSampleVolumeIsAnotherLevelNotAReplicate)
{
    const auto evaluation = evaluation::evaluate(test::risingMethod(), runPipetted({{u"sample"_s, 0.2}}));
    EXPECT_FALSE(test::find(evaluation.checks, CheckId::DuplicateSpread, u"sample S"_s));
    EXPECT_TRUE(test::find(evaluation.checks, CheckId::VolumeProportionality, u"sample S"_s));
}

TEST(PipettedOtherwise, IsWrittenOutByAbsorptivity)
{
    const QString text = written(runPipetted({{u"sample"_s, 0.2}, {u"buffer"_s, 0.8125}}));
    EXPECT_TRUE(
        text.contains(u"Sample S, tube 3: volume of Sample in tube 3: as pipetted, planned 0.1\u00a0mL:  = "
                      "0.2\u00a0mL"_s))
        << text.toStdString();
    EXPECT_TRUE(
        text.contains(u"Sample S, tube 3: volume of Buffer in tube 3: as pipetted, planned 1\u00a0mL:  = "
                      "0.8125\u00a0mL"_s));
    // 0.5 x 2.0325 x 100 / (6300 x 0.2) = 0.080655
    EXPECT_TRUE(text.contains(u"0.5000 x 2.0325 x 100 / (6300 x 1 x 0.2 x 1) = 0.080655\u00a0g/L"_s));
    EXPECT_FALSE(text.contains(u"Sample S, tube 2: volume of"_s));
    EXPECT_FALSE(text.contains(u"at the usual volume"_s));
}

TEST(PipettedOtherwise, AStandardPipettedOtherwiseIsWrittenOutToo)
{
    run::Run run = byStandard({});
    run.tubes[3].pipetted_mL = {{u"sample"_s, 0.2}};
    const QString text = written(run);
    // V 2.22: 0.5 x 2.22 / 2.12 = 0.5236 for 0.04 mg
    EXPECT_TRUE(
        text.contains(u"Calibration: volume of Sample in tube 4: as pipetted, planned 0.1\u00a0mL:  = "
                      "0.2\u00a0mL"_s))
        << text.toStdString();
    EXPECT_TRUE(text.contains(u"Calibration: standard in tube 4: strength at use x volume; net signal at the "
                              "usual volume: 0.040000\u00a0mg = 0.5236"_s));
    EXPECT_TRUE(text.contains(u"= 13.090 per mg"_s));
}

TEST(PipettedOtherwise, IsWrittenOutByAStandardAtTheUsualVolume)
{
    const QString text = written(byStandard({{u"buffer"_s, 1.5}}));
    // V 2.62: 0.5 x 2.62 / 2.12 = 0.6179; one mg gives 25: 0.6179 / 25 / 0.1 = 0.24717
    EXPECT_TRUE(text.contains(u"Sample S, tube 3: net signal dA at the usual volume: net signal x volume of "
                              "the tube / usual volume: 0.5000 x 2.6200 / 2.1200 = 0.6179"_s))
        << text.toStdString();
    EXPECT_TRUE(text.contains(u"dA / response / v: 0.6179 / 25.000 / 0.1 = 0.24717\u00a0g/L"_s));
    EXPECT_TRUE(text.contains(u"dA / response / v: 0.5000 / 25.000 / 0.1 = 0.20000\u00a0g/L"_s));
}
