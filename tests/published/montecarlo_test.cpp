// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The first-order budget of the evaluation (JCGM 100) against the propagation of distributions (JCGM 101)
// through the formulas of the method, written out here once more by hand. Numbers constructed. The terms are
// of like size, so that one left out or counted twice shows in the sum.

#include "tests/published/drawnruns.h"

#include <gtest/gtest.h>

#include <array>

namespace plateau::published {

using namespace Qt::StringLiterals;
using run::Role;

namespace {

double change(Inputs &in, double first, double second)
{
    return drawnAbsorbance(in, second) - drawnAbsorbance(in, first);
}

/// V M / (e d v): one draw of all that the tubes of a run share.
double factor_g_per_L(Inputs &in, double volume_mL, double sample_mL)
{
    return volume_mL * in.factor(statedInputs.totalVolume_percent) * 100 /
           (6300 * in.factor(statedInputs.absorptivity_percent) * 1 *
            in.factor(statedInputs.pathLength_percent) * sample_mL *
            in.factor(statedInputs.sampleVolume_percent));
}

double diluted(Inputs &in, double take_mL, double makeUpTo_mL)
{
    return makeUpTo_mL / take_mL * in.factor(statedInputs.dilution_percent);
}

run::Tube standardTube(const QString &standard, double a1, double a2)
{
    run::Tube tube = tubeOf(Role::Standard, a1, a2);
    tube.standard = standard;
    return tube;
}

run::Standard standardOf(const QString &id, double concentration_g_per_L)
{
    run::Standard standard;
    standard.id = id;
    standard.concentration_g_per_L = concentration_g_per_L;
    return standard;
}

evaluation::Result resultOf(const assay::Method &method, run::Run run,
                            const run::UncertaintyInputs &inputs = statedInputs)
{
    run.uncertainty = inputs;
    return evaluation::evaluate(method, run).results.at(0);
}

} // namespace

TEST(MonteCarlo, RisingDuplicatesWithTwoBlanksAndADilutionChain)
{
    const auto run = runOf(liquidSample({{5, 50}, {10, 25}}),
                           {tubeOf(Role::Blank, 0.100, 0.112), tubeOf(Role::Blank, 0.101, 0.111),
                            sampleTube(0.121, 0.601), sampleTube(0.119, 0.600)});
    expectSameUncertainty(resultOf(methodOf(drawnScheme, 100, at340), run), [](Inputs &in) {
        const double blank = (change(in, 0.100, 0.112) + change(in, 0.101, 0.111)) / 2;
        const double signal = (change(in, 0.121, 0.601) + change(in, 0.119, 0.600)) / 2;
        return (signal - blank) * factor_g_per_L(in, 2.12, 0.1) * diluted(in, 5, 50) * diluted(in, 10, 25);
    });
}

TEST(MonteCarlo, Falling)
{
    auto method = methodOf(drawnScheme, 100, at340);
    method.direction = assay::Direction::Falling;
    const auto run = runOf(liquidSample({{1, 10}}), {tubeOf(Role::Blank, 1.400, 1.385),
                                                     sampleTube(1.390, 0.910), sampleTube(1.391, 0.912)});
    expectSameUncertainty(resultOf(method, run), [](Inputs &in) {
        const double blank = -change(in, 1.400, 1.385);
        const double signal = -(change(in, 1.390, 0.910) + change(in, 1.391, 0.912)) / 2;
        return (signal - blank) * factor_g_per_L(in, 2.12, 0.1) * diluted(in, 1, 10);
    });
}

TEST(MonteCarlo, CoupledIndicator)
{
    auto method = cascadeOf(drawnScheme, 0.02, 100, at340);
    method.measurands = {
        {u"analyte"_s, u"Analyte"_s, 100, 1, assay::CoupledIndicatorSignal{u"A1"_s, u"A2"_s, u"A3"_s}}};
    const auto run = runOf(liquidSample(), {withThird(tubeOf(Role::Blank, 0.100, 0.130), 0.180),
                                            withThird(sampleTube(0.300, 0.450), 0.800)});
    const auto signal = [](Inputs &in, double base, double middle, double last) {
        const double a0 = drawnAbsorbance(in, base);
        const double before = drawnAbsorbance(in, middle) - a0;
        const double whole = drawnAbsorbance(in, last) - a0;
        return whole - before * before / whole;
    };
    expectSameUncertainty(resultOf(method, run), [&](Inputs &in) {
        const double blank = signal(in, 0.100, 0.130, 0.180);
        return (signal(in, 0.300, 0.450, 0.800) - blank) * factor_g_per_L(in, 2.14, 0.1);
    });
}

TEST(MonteCarlo, ReadingsBroughtToTheFinalVolume)
{
    auto method = methodOf({{1.0}, 0.5, 0.1, 0.2}, 100, at340);
    method.volumeCorrection = assay::VolumeCorrection::ToFinalVolume;
    const auto run = runOf(liquidSample(), {tubeOf(Role::Blank, 0.400, 0.360), sampleTube(0.900, 0.950)});
    expectSameUncertainty(resultOf(method, run), [](Inputs &in) {
        const double blank = drawnAbsorbance(in, 0.360) - drawnAbsorbance(in, 0.400) * 1.6 / 1.8;
        const double signal = drawnAbsorbance(in, 0.950) - drawnAbsorbance(in, 0.900) * 1.6 / 1.8;
        return (signal - blank) * factor_g_per_L(in, 1.8, 0.1);
    });
}

TEST(MonteCarlo, SeriesExtrapolatedToTheStart)
{
    auto method = methodOf(drawnScheme, 100, at340);
    method.extrapolate = assay::Extrapolation{u"A2"_s, 4};
    const std::array times{15.0, 20.0, 25.0, 30.0};
    const std::array read{0.531, 0.540, 0.551, 0.560};
    auto sample = sampleTube(0.120, 0);
    run::ReadingSeries series{{5, 0.300}, {10, 0.480}};
    for (std::size_t i = 0; i < 4; ++i)
        series.push_back({times[i], read[i]});
    sample.readings[u"A2"_s] = series;
    const auto run = runOf(liquidSample(), {tubeOf(Role::Blank, 0.100, 0.110), sample});
    expectSameUncertainty(resultOf(method, run), [&](Inputs &in) {
        const double blank = change(in, 0.100, 0.110);
        double mean = 0;
        double product = 0;
        double square = 0;
        for (std::size_t i = 0; i < 4; ++i) {
            const double a = drawnAbsorbance(in, read[i]);
            mean += a / 4;
            product += (times[i] - 22.5) * a;
            square += (times[i] - 22.5) * (times[i] - 22.5);
        }
        const double atStart = mean - product / square * 22.5;
        return (atStart - drawnAbsorbance(in, 0.120) - blank) * factor_g_per_L(in, 2.12, 0.1);
    });
}

TEST(MonteCarlo, SolidFromItsExtract)
{
    auto sample = solidSample(5.012, 100);
    sample.dilution = {{10, 100}};
    const auto run = runOf(sample, {tubeOf(Role::Blank, 0.100, 0.110), sampleTube(0.120, 0.520)});
    expectSameUncertainty(resultOf(methodOf(drawnScheme, 100, at340), run), [](Inputs &in) {
        const double blank = change(in, 0.100, 0.110);
        const double extract_g_per_L =
            (change(in, 0.120, 0.520) - blank) * factor_g_per_L(in, 2.12, 0.1) * diluted(in, 10, 100);
        return extract_g_per_L * 0.100 * in.factor(statedInputs.extract_percent) / 5.012 * 100;
    });
}

TEST(MonteCarlo, SampleBlankIsSharedByTheTubesOfItsSample)
{
    auto sampleBlank = tubeOf(Role::SampleBlank, 0.350, 0.365);
    sampleBlank.sample = u"S"_s;
    const auto run = runOf(liquidSample(), {tubeOf(Role::Blank, 0.100, 0.110), sampleBlank,
                                            sampleTube(0.352, 0.700), sampleTube(0.353, 0.702)});
    expectSameUncertainty(resultOf(methodOf(drawnScheme, 100, at340), run), [](Inputs &in) {
        const double blank = change(in, 0.100, 0.110);
        const double colour = change(in, 0.350, 0.365);
        const double signal = (change(in, 0.352, 0.700) + change(in, 0.353, 0.702)) / 2;
        return (signal - blank - colour) * factor_g_per_L(in, 2.12, 0.1);
    });
}

TEST(MonteCarlo, TubesOfDifferentVolumes)
{
    // The water can give up 0.2 mL; a sample of 0.4 mL makes the tube 0.1 mL larger.
    auto method = methodOf({{1.0}, 0.2, 0.1, 0.02}, 100, at340);
    method.components[2].range_mL = assay::Interval{0.05, 0.5};
    auto large = sampleTube(0.140, 1.377);
    large.sampleVolume_mL = 0.4;
    const auto run =
        runOf(liquidSample(), {tubeOf(Role::Blank, 0.100, 0.110), sampleTube(0.120, 0.460), large});
    expectSameUncertainty(resultOf(method, run), [](Inputs &in) {
        const double blank = change(in, 0.100, 0.110);
        const double usual = (change(in, 0.120, 0.460) - blank) * 1.32 / 0.1;
        const double larger = (change(in, 0.140, 1.377) - blank) * 1.42 / 0.4;
        return (usual + larger) / 2 * factor_g_per_L(in, 1, 1);
    });
}

TEST(MonteCarlo, CalibratedByTheRunsOwnStandard)
{
    // Far apart, so that the blank they share does not cancel in their quotient.
    auto run =
        runOf(liquidSample({{5, 50}}),
              {tubeOf(Role::Blank, 0.100, 0.110), standardTube(u"STD"_s, 0.110, 0.912),
               standardTube(u"STD"_s, 0.111, 0.914), sampleTube(0.121, 0.281), sampleTube(0.120, 0.282)});
    run.standards = {standardOf(u"STD"_s, 0.2)};
    run.standards[0].uncertainty_percent = 0.7;
    run.calibration = run::Calibration::Standard;
    expectSameUncertainty(resultOf(methodOf(drawnScheme, 100, at340), run), [](Inputs &in) {
        const double blank = change(in, 0.100, 0.110);
        const double standard = (change(in, 0.110, 0.912) + change(in, 0.111, 0.914)) / 2 - blank;
        const double sample = (change(in, 0.121, 0.281) + change(in, 0.120, 0.282)) / 2 - blank;
        return sample / standard * 0.2 * in.factor(0.7) * diluted(in, 5, 50);
    });
}

TEST(MonteCarlo, CoupledIndicatorCalibratedByAStandard)
{
    auto method = cascadeOf(drawnScheme, 0.02, 100, at340);
    method.measurands = {
        {u"analyte"_s, u"Analyte"_s, 100, 1, assay::CoupledIndicatorSignal{u"A1"_s, u"A2"_s, u"A3"_s}}};
    auto run = runOf(liquidSample(), {withThird(tubeOf(Role::Blank, 0.100, 0.130), 0.180),
                                      withThird(standardTube(u"STD"_s, 0.300, 0.500), 1.000),
                                      withThird(sampleTube(0.300, 0.400), 0.600)});
    run.standards = {standardOf(u"STD"_s, 0.2)};
    run.standards[0].uncertainty_percent = 0.9;
    run.calibration = run::Calibration::Standard;
    const auto signal = [](Inputs &in, double base, double middle, double last) {
        const double a0 = drawnAbsorbance(in, base);
        const double before = drawnAbsorbance(in, middle) - a0;
        const double whole = drawnAbsorbance(in, last) - a0;
        return whole - before * before / whole;
    };
    expectSameUncertainty(resultOf(method, run), [&](Inputs &in) {
        const double blank = signal(in, 0.100, 0.130, 0.180);
        const double standard = signal(in, 0.300, 0.500, 1.000) - blank;
        return (signal(in, 0.300, 0.400, 0.600) - blank) / standard * 0.2 * in.factor(0.9);
    });
}

TEST(MonteCarlo, FallingCorrectedForVolumeAndCalibratedByAStandard)
{
    auto method = methodOf({{1.0}, 0.5, 0.1, 0.2}, 100, at340);
    method.direction = assay::Direction::Falling;
    method.volumeCorrection = assay::VolumeCorrection::ToFinalVolume;
    auto run = runOf(liquidSample(), {tubeOf(Role::Blank, 1.600, 1.390), standardTube(u"STD"_s, 1.610, 0.700),
                                      sampleTube(1.605, 1.100)});
    run.standards = {standardOf(u"STD"_s, 0.2)};
    run.standards[0].uncertainty_percent = 0.8;
    run.calibration = run::Calibration::Standard;
    const auto signal = [](Inputs &in, double first, double second) {
        return drawnAbsorbance(in, first) * 1.6 / 1.8 - drawnAbsorbance(in, second);
    };
    expectSameUncertainty(resultOf(method, run), [&](Inputs &in) {
        const double blank = signal(in, 1.600, 1.390);
        const double standard = signal(in, 1.610, 0.700) - blank;
        return (signal(in, 1.605, 1.100) - blank) / standard * 0.2 * in.factor(0.8);
    });
}

TEST(MonteCarlo, CalibratedByALine)
{
    const std::array levels_g_per_L{0.05, 0.10, 0.20, 0.30};
    const std::array read{0.200, 0.301, 0.500, 0.701};
    auto run = runOf(liquidSample({{5, 50}}),
                     {tubeOf(Role::Blank, 0.100, 0.110), sampleTube(0.121, 0.481), sampleTube(0.120, 0.482)});
    for (std::size_t i = 0; i < 4; ++i) {
        const QString id = u"L%1"_s.arg(i);
        run.standards.push_back(standardOf(id, levels_g_per_L[i]));
        run.standards.back().uncertainty_percent = 0.5; // all from one stock
        run.tubes.push_back(standardTube(id, 0.100, read[i]));
    }
    run.calibration = run::Calibration::Line;
    expectSameUncertainty(resultOf(methodOf(drawnScheme, 100, at340), run), [&](Inputs &in) {
        const double blank = change(in, 0.100, 0.110);
        double mean = 0;
        double product = 0;
        double square = 0;
        for (std::size_t i = 0; i < 4; ++i) {
            const double signal = change(in, 0.100, read[i]) - blank;
            const double x = levels_g_per_L[i] - 0.1625;
            mean += signal / 4;
            product += x * signal;
            square += x * x;
        }
        const double sample = (change(in, 0.121, 0.481) + change(in, 0.120, 0.482)) / 2 - blank;
        return (0.1625 + (sample - mean) / (product / square)) * in.factor(0.5) * diluted(in, 5, 50);
    });
}

TEST(MonteCarlo, ALineThroughLevelsThatAreOffByDifferentParts)
{
    // One stock, but the smaller levels are less well known: they are off together, each by its own part.
    const std::array levels_g_per_L{0.05, 0.10, 0.20, 0.30};
    const std::array percents{2.0, 1.5, 1.0, 0.5};
    const std::array read{0.200, 0.301, 0.500, 0.701};
    auto run = runOf(liquidSample(), {tubeOf(Role::Blank, 0.100, 0.110), sampleTube(0.121, 0.481)});
    for (std::size_t i = 0; i < 4; ++i) {
        const QString id = u"L%1"_s.arg(i);
        run.standards.push_back(standardOf(id, levels_g_per_L[i]));
        run.standards.back().uncertainty_percent = percents[i];
        run.tubes.push_back(standardTube(id, 0.100, read[i]));
    }
    run.calibration = run::Calibration::Line;
    expectSameUncertainty(resultOf(methodOf(drawnScheme, 100, at340), run), [&](Inputs &in) {
        const double blank = change(in, 0.100, 0.110);
        const double off = in.drawn(0, 0.01);
        std::array<double, 4> x{};
        std::array<double, 4> y{};
        double xMean = 0;
        double yMean = 0;
        for (std::size_t i = 0; i < 4; ++i) {
            x[i] = levels_g_per_L[i] * (1 + percents[i] * off);
            y[i] = change(in, 0.100, read[i]) - blank;
            xMean += x[i] / 4;
            yMean += y[i] / 4;
        }
        double product = 0;
        double square = 0;
        for (std::size_t i = 0; i < 4; ++i) {
            product += (x[i] - xMean) * (y[i] - yMean);
            square += (x[i] - xMean) * (x[i] - xMean);
        }
        return xMean + (change(in, 0.121, 0.481) - blank - yMean) / (product / square);
    });
}

} // namespace plateau::published
