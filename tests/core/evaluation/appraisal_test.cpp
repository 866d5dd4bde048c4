// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/appraisal.h"

#include "core/evaluation/evaluation.h"
#include "tests/support/benches.h"

#include <gtest/gtest.h>

using namespace plateau;
using namespace Qt::StringLiterals;

namespace {

const evaluation::VolumeRange &rangesAt(const evaluation::Appraisal &appraisal, double volume_mL)
{
    const auto found =
        std::ranges::find(appraisal.volumes, volume_mL, &evaluation::VolumeRange::sampleVolume_mL);
    if (found == appraisal.volumes.end())
        throw std::out_of_range("no such volume");
    return *found;
}

std::vector<double> volumesOf(const evaluation::Appraisal &appraisal)
{
    std::vector<double> volumes_mL;
    for (const evaluation::VolumeRange &row : appraisal.volumes)
        volumes_mL.push_back(row.sampleVolume_mL);
    return volumes_mL;
}

} // namespace

TEST(Appraisal, FactorForEveryTabulatedWavelength)
{
    const auto appraisal = evaluation::appraise(test::risingMethod());
    ASSERT_EQ(appraisal.factors.size(), 3U);
    EXPECT_EQ(appraisal.factors[0].wavelength_nm, 334);
    EXPECT_NEAR(*appraisal.factors[0].factors_g_per_L[0], 2.12 * 100 / (6180 * 0.1), 1e-15);
    EXPECT_NEAR(*appraisal.factors[1].factors_g_per_L[0], test::risingFactor_g_per_L, 1e-15);
    EXPECT_NEAR(*appraisal.factors[2].factors_g_per_L[0], 2.12 * 100 / (3400 * 0.1), 1e-15);
}

TEST(Appraisal, FactorTakesTheVolumeAtTheMeasurandsOwnLaterReading)
{
    const auto appraisal = evaluation::appraise(test::sequentialMethod());
    ASSERT_EQ(appraisal.factors[1].factors_g_per_L.size(), 2U);
    EXPECT_NEAR(*appraisal.factors[1].factors_g_per_L[0], 2.12 * 100 / (6300 * 0.1), 1e-15);
    EXPECT_NEAR(*appraisal.factors[1].factors_g_per_L[1], 2.14 * 100 / (6300 * 0.1), 1e-15);
}

TEST(Appraisal, TheCoenzymesOwnWavelengthNeedsNoTable)
{
    assay::Method method = test::risingMethod();
    method.absorptivity_L_per_mol_cm.clear();
    const auto appraisal = evaluation::appraise(method);
    ASSERT_EQ(appraisal.factors.size(), 1U);
    EXPECT_EQ(appraisal.factors[0].wavelength_nm, 340);
    EXPECT_NEAR(*appraisal.factors[0].factors_g_per_L[0], test::risingFactor_g_per_L, 1e-15);
}

TEST(Appraisal, VolumesAreTheEndsTheUsualOneAndSomeBetween)
{
    assay::Method method = test::risingMethod();
    EXPECT_EQ(volumesOf(evaluation::appraise(method)), (std::vector{0.05, 0.1, 0.2, 0.5}));
    method.components[2].volume_mL = 0.3;
    method.components[2].range_mL = assay::Interval{0.04, 1.2};
    EXPECT_EQ(volumesOf(evaluation::appraise(method)),
              (std::vector{0.04, 0.05, 0.1, 0.2, 0.3, 0.5, 1.0, 1.2}));
    method.components[2].range_mL.reset();
    EXPECT_EQ(volumesOf(evaluation::appraise(method)), (std::vector{0.3}));
}

TEST(Appraisal, RangeIsTheWindowInTheUndilutedSample)
{
    const auto appraisal = evaluation::appraise(test::risingMethod()); // window 0.1 to 1.0
    EXPECT_NEAR(rangesAt(appraisal, 0.1).ranges[0]->lower_g_per_L, 0.1 * test::risingFactor_g_per_L, 1e-15);
    EXPECT_NEAR(rangesAt(appraisal, 0.1).ranges[0]->upper_g_per_L, test::risingFactor_g_per_L, 1e-15);
    // Made up by diluent, five times the sample is a fifth of the factor.
    EXPECT_NEAR(rangesAt(appraisal, 0.5).ranges[0]->upper_g_per_L, test::risingFactor_g_per_L / 5, 1e-15);
    EXPECT_TRUE(rangesAt(appraisal, 0.5).madeUp);
    EXPECT_NEAR(rangesAt(appraisal, 0.5).tubeVolume_mL, 2.12, 1e-15);
}

TEST(Appraisal, BeyondTheDiluentTheTubesOwnVolumeCounts)
{
    assay::Method method = test::risingMethod();
    method.components[2].range_mL = assay::Interval{0.05, 2};
    const auto appraisal = evaluation::appraise(method);
    EXPECT_TRUE(rangesAt(appraisal, 1.0).madeUp);
    // 1.0 buffer, no water left, 2.0 sample, 0.02 starter
    EXPECT_FALSE(rangesAt(appraisal, 2.0).madeUp);
    EXPECT_NEAR(rangesAt(appraisal, 2.0).tubeVolume_mL, 3.02, 1e-15);
    EXPECT_NEAR(rangesAt(appraisal, 2.0).ranges[0]->upper_g_per_L, 3.02 * 100 / (6300 * 2.0), 1e-15);
}

TEST(Appraisal, SaysOfEveryVolumeWhatTheEvaluationFinds)
{
    assay::Method method = test::sequentialMethod();
    method.components[2].range_mL = assay::Interval{0.05, 2};
    const auto appraisal = evaluation::appraise(method);
    for (const evaluation::VolumeRange &row : appraisal.volumes) {
        run::Run run = test::plainRun();
        run.method = method.id;
        for (run::Tube &tube : run.tubes) {
            tube.readings[u"A3"_s] =
                std::get<double>(tube.readings[u"A2"_s]) + (tube.role == run::Role::Blank ? 0.01 : 0.51);
            if (tube.role == run::Role::Sample)
                tube.sampleVolume_mL = row.sampleVolume_mL;
        }
        const auto found = evaluation::evaluate(method, run); // net signals 0.500, the middle of the range
        for (std::size_t i = 0; i < 2; ++i) {
            const double halfWay_g_per_L = row.ranges[i]->upper_g_per_L / 2;
            EXPECT_NEAR(*found.results[i].value / halfWay_g_per_L, 1, 1e-12)
                << row.sampleVolume_mL << " mL, measurand " << i;
        }
    }
}

TEST(Appraisal, FactorsAreThoseOfTheEvaluation)
{
    const auto appraisal = evaluation::appraise(test::sequentialMethod());
    const auto found = evaluation::evaluate(test::sequentialMethod(), test::plainRun());
    for (std::size_t i = 0; i < 2; ++i)
        EXPECT_NEAR(*appraisal.factors[1].factors_g_per_L[i], found.factors[i].factor_g_per_L, 1e-15);
}

TEST(Appraisal, LimitsAtTheLargestVolumeByTheWindow)
{
    const auto appraisal = evaluation::appraise(test::risingMethod());
    EXPECT_TRUE(appraisal.quantificationByWindow);
    EXPECT_EQ(appraisal.quantificationSignal, 0.1);
    EXPECT_NEAR(appraisal.limits[0]->detection_g_per_L, 0.005 * test::risingFactor_g_per_L / 5, 1e-15);
    EXPECT_NEAR(appraisal.limits[0]->quantification_g_per_L, 0.1 * test::risingFactor_g_per_L / 5, 1e-15);
    EXPECT_TRUE(appraisal.remarks.empty());
}

TEST(Appraisal, WithoutASmallestSignalTheDifferenceDecides)
{
    assay::Method method = test::risingMethod();
    method.window.minSignal = 0;
    evaluation::AppraisalInputs inputs;
    inputs.smallestAbsorbance = 0.0033;
    const auto appraisal = evaluation::appraise(method, inputs);
    EXPECT_FALSE(appraisal.quantificationByWindow);
    EXPECT_NEAR(appraisal.quantificationSignal, 0.010, 1e-15);
    EXPECT_NEAR(appraisal.limits[0]->quantification_g_per_L, 0.010 * test::risingFactor_g_per_L / 5, 1e-15);
    EXPECT_NEAR(appraisal.limits[0]->detection_g_per_L, 0.0033 * test::risingFactor_g_per_L / 5, 1e-15);
}

TEST(Appraisal, AWindowBelowWhatCanBeToldApartIsRemarked)
{
    assay::Method method = test::risingMethod();
    method.window.minSignal = 0.004;
    const auto appraisal = evaluation::appraise(method);
    ASSERT_EQ(appraisal.remarks.size(), 1U);
    EXPECT_EQ(appraisal.remarks[0].pointer, u"/window/minSignal"_s);
    EXPECT_EQ(appraisal.remarks[0].severity, assay::Problem::Severity::Warning);
}

TEST(Appraisal, VolumeGrowsStepByStep)
{
    const std::vector<double> volumes_mL = evaluation::appraise(test::risingMethod()).volumeAfterStep_mL;
    const std::vector expected{1.0, 2.0, 2.1, 2.1, 2.1, 2.1, 2.12, 2.12, 2.12, 2.12};
    ASSERT_EQ(volumes_mL.size(), expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i)
        EXPECT_NEAR(volumes_mL[i], expected[i], 1e-15) << "after step " << i;
}

TEST(Appraisal, ABottleServesWholeTubes)
{
    evaluation::AppraisalInputs inputs;
    inputs.bottle_mL = {{u"buffer"_s, 30}, {u"starter"_s, 1.1}};
    const auto needs = evaluation::appraise(test::risingMethod(), inputs).needs;
    ASSERT_EQ(needs.size(), 3U); // the sample comes in no bottle
    EXPECT_EQ(needs[0].tubes, 30);
    EXPECT_EQ(needs[1].component, u"water"_s);
    EXPECT_FALSE(needs[1].tubes);
    EXPECT_EQ(needs[2].perTube_mL, 0.02);
    EXPECT_EQ(needs[2].tubes, 55);
}

TEST(Appraisal, AnUnfinishedMethodGivesWhatItSays)
{
    assay::Method method = test::risingMethod();
    method.measurands[0].molarMass_g_per_mol = 0;
    auto appraisal = evaluation::appraise(method);
    EXPECT_FALSE(appraisal.factors[0].factors_g_per_L[0]);
    EXPECT_FALSE(appraisal.volumes[0].ranges[0]);
    EXPECT_FALSE(appraisal.limits[0]);
    EXPECT_EQ(appraisal.needs.size(), 3U);

    appraisal = evaluation::appraise(assay::Method{});
    EXPECT_TRUE(appraisal.factors.empty());
    EXPECT_TRUE(appraisal.volumes.empty());
    EXPECT_TRUE(appraisal.limits.empty());
}
