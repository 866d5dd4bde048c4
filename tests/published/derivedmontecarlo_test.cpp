// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The budget of derived quantities (JCGM 100) against the propagation of distributions (JCGM 101), written
// out by hand: what one run shares is drawn once for all of its results, what two runs share once for both.
// Numbers constructed.

#include "tests/published/drawnruns.h"

#include <gtest/gtest.h>

namespace plateau::published {

using namespace Qt::StringLiterals;
using evaluation::Companion;
using run::Role;

namespace {

/// Two signals that share the reading between them.
struct Pair {
    double first = 0;
    double second = 0;
};
Pair changes(Inputs &in, double a1, double a2, double a3)
{
    const double read1 = drawnAbsorbance(in, a1);
    const double read2 = drawnAbsorbance(in, a2);
    const double read3 = drawnAbsorbance(in, a3);
    return {read2 - read1, read3 - read2};
}

run::Run stating(run::Run run)
{
    run.uncertainty = statedInputs;
    return run;
}

/// "first" from A1 to A2, "second" from A2 to A3, and first x one + second x other.
evaluation::Result ofOneRun(double one, double other)
{
    auto method = cascadeOf(drawnScheme, 0.02, 100, at340);
    method.derived = {{u"joint"_s, u"Joint"_s, {{{}, u"first"_s, one}, {{}, u"second"_s, other}}}};
    const auto run =
        stating(runOf(liquidSample({{5, 50}}), {withThird(tubeOf(Role::Blank, 0.100, 0.112), 0.121),
                                                withThird(tubeOf(Role::Blank, 0.101, 0.111), 0.122),
                                                withThird(sampleTube(0.121, 0.601), 0.914),
                                                withThird(sampleTube(0.119, 0.600), 0.913)}));
    return evaluation::evaluate(method, run).results.at(2);
}

HandCalculation byHand(double one, double other)
{
    return [one, other](Inputs &in) {
        const Pair blank1 = changes(in, 0.100, 0.112, 0.121);
        const Pair blank2 = changes(in, 0.101, 0.111, 0.122);
        const Pair tube1 = changes(in, 0.121, 0.601, 0.914);
        const Pair tube2 = changes(in, 0.119, 0.600, 0.913);
        const double first = (tube1.first + tube2.first - blank1.first - blank2.first) / 2 * 2.12;
        const double second = (tube1.second + tube2.second - blank1.second - blank2.second) / 2 * 2.14;
        const double shared = in.factor(statedInputs.totalVolume_percent) * 100 /
                              (6300 * in.factor(statedInputs.absorptivity_percent) *
                               in.factor(statedInputs.pathLength_percent) * 0.1 *
                               in.factor(statedInputs.sampleVolume_percent)) *
                              10 * in.factor(statedInputs.dilution_percent);
        return (one * first + other * second) * shared;
    };
}

/// One run of one measurand, its absorptivity drawn outside.
double concentration_g_per_L(Inputs &in, double absorptivity, double blank1, double blank2, double a1,
                             double a2)
{
    const double blank = drawnAbsorbance(in, blank2) - drawnAbsorbance(in, blank1);
    const double signal = drawnAbsorbance(in, a2) - drawnAbsorbance(in, a1);
    return (signal - blank) * 2.12 * in.factor(statedInputs.totalVolume_percent) * 180.16 /
           (6300 * absorptivity * in.factor(statedInputs.pathLength_percent) * 0.1 *
            in.factor(statedInputs.sampleVolume_percent));
}

double dilutedBy(Inputs &in, double factor)
{
    return factor * in.factor(statedInputs.dilution_percent);
}

constexpr double ratio = 342.30 / 180.16;

/// Calibrated by the run's own standard: of a solution that holds both measurands, or of one for each.
evaluation::Result byStandard(double one, double other, bool oneSolution)
{
    auto method = cascadeOf(drawnScheme, 0.02, 100, at340);
    method.derived = {{u"joint"_s, u"Joint"_s, {{{}, u"first"_s, one}, {{}, u"second"_s, other}}}};
    auto run = stating(runOf(liquidSample({{5, 50}}), {withThird(tubeOf(Role::Blank, 0.100, 0.112), 0.121),
                                                       withThird(sampleTube(0.121, 0.401), 0.714)}));
    run.calibration = run::Calibration::Standard;
    const auto add = [&](const QString &id, const QString &measurand, double percent) {
        run.standards.push_back({id, 0.2, measurand, {}, {}, 0, percent});
        run::Tube tube = withThird(tubeOf(Role::Standard, 0.110, 0.712), 1.314);
        tube.standard = id;
        run.tubes.push_back(tube);
    };
    add(u"STD"_s, oneSolution ? QString() : u"first"_s, 1.2);
    if (!oneSolution)
        add(u"STD 2"_s, u"second"_s, 1.4);
    return evaluation::evaluate(method, run).results.at(2);
}

HandCalculation byStandardByHand(double one, double other, bool oneSolution)
{
    return [=](Inputs &in) {
        const Pair blank = changes(in, 0.100, 0.112, 0.121);
        const Pair tube = changes(in, 0.121, 0.401, 0.714);
        const Pair first = changes(in, 0.110, 0.712, 1.314);
        const Pair second = oneSolution ? first : changes(in, 0.110, 0.712, 1.314);
        const double firstOff = in.factor(1.2);
        const double secondOff = oneSolution ? firstOff : in.factor(1.4);
        return (one * (tube.first - blank.first) / (first.first - blank.first) * firstOff +
                other * (tube.second - blank.second) / (second.second - blank.second) * secondOff) *
               0.2 * 10 * in.factor(statedInputs.dilution_percent);
    };
}

} // namespace

TEST(MonteCarlo, MeasurandsOfOneStandardAreOffTogether)
{
    expectSameUncertainty(byStandard(1, 1, true), byStandardByHand(1, 1, true));
    expectSameUncertainty(byStandard(2, -1, true), byStandardByHand(2, -1, true));
}

TEST(MonteCarlo, MeasurandsOfTwoStandardsAreOffEachByItself)
{
    expectSameUncertainty(byStandard(1, 1, false), byStandardByHand(1, 1, false));
    expectSameUncertainty(byStandard(2, -1, false), byStandardByHand(2, -1, false));
}

TEST(MonteCarlo, SumOfTwoMeasurandsThatShareAReading)
{
    expectSameUncertainty(ofOneRun(1, 1), byHand(1, 1));
}

TEST(MonteCarlo, DifferenceOfTwoMeasurandsThatShareAReading)
{
    expectSameUncertainty(ofOneRun(1, -1), byHand(1, -1));
}

TEST(MonteCarlo, WeightedSumOfTwoMeasurandsThatShareAReading)
{
    expectSameUncertainty(ofOneRun(0.5, 1.9), byHand(0.5, 1.9));
}

TEST(MonteCarlo, DifferenceOfTwoRunsThatShareTheAbsorptivity)
{
    const auto other = methodOf(drawnScheme, 180.16, at340);
    auto method = other;
    method.id = u"after-inversion"_s;
    method.derived = {
        {u"sucrose"_s, u"Sucrose"_s, {{{}, u"analyte"_s, ratio}, {other.id, u"analyte"_s, -ratio}}}};
    const auto inverted = stating(runOf(liquidSample({{5, 50}, {10, 50}}),
                                        {tubeOf(Role::Blank, 0.101, 0.113), sampleTube(0.130, 0.642)}));
    const auto free = stating(
        runOf(liquidSample({{5, 100}}), {tubeOf(Role::Blank, 0.100, 0.110), sampleTube(0.120, 0.530)}));
    const std::vector<Companion> companions{{other, free}};
    const auto result = evaluation::evaluate(method, inverted, {}, companions).results.at(1);
    expectSameUncertainty(result, [](Inputs &in) {
        const double absorptivity = in.factor(statedInputs.absorptivity_percent);
        const double after = concentration_g_per_L(in, absorptivity, 0.101, 0.113, 0.130, 0.642) *
                             dilutedBy(in, 10) * dilutedBy(in, 5);
        const double before =
            concentration_g_per_L(in, absorptivity, 0.100, 0.110, 0.120, 0.530) * dilutedBy(in, 20);
        return (after - before) * ratio;
    });
}

TEST(MonteCarlo, DifferenceOfTwoRunsAtDifferentWavelengths)
{
    const Absorptivities both{{334, 6180}, {340, 6300}};
    const auto other = methodOf(drawnScheme, 180.16, both);
    auto method = other;
    method.id = u"after-inversion"_s;
    method.derived = {
        {u"sucrose"_s, u"Sucrose"_s, {{{}, u"analyte"_s, ratio}, {other.id, u"analyte"_s, -ratio}}}};
    auto inverted =
        stating(runOf(liquidSample(), {tubeOf(Role::Blank, 0.101, 0.113), sampleTube(0.130, 0.642)}));
    inverted.wavelength_nm = 340;
    auto free = stating(runOf(liquidSample(), {tubeOf(Role::Blank, 0.100, 0.110), sampleTube(0.120, 0.230)}));
    free.wavelength_nm = 334;
    const std::vector<Companion> companions{{other, free}};
    const auto result = evaluation::evaluate(method, inverted, {}, companions).results.at(1);
    expectSameUncertainty(result, [](Inputs &in) {
        const double at340nm = in.factor(statedInputs.absorptivity_percent);
        const double at334nm = in.factor(statedInputs.absorptivity_percent) * 6180 / 6300;
        return (concentration_g_per_L(in, at340nm, 0.101, 0.113, 0.130, 0.642) -
                concentration_g_per_L(in, at334nm, 0.100, 0.110, 0.120, 0.230)) *
               ratio;
    });
}

} // namespace plateau::published
