// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// What holds for every sound method, tried on many that chance has made. A failure names its seed.

#include "core/assay/soundness.h"
#include "core/evaluation/evaluation.h"
#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "core/run/volumes.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"
#include "tests/support/soundmethods.h"

#include <gtest/gtest.h>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using assay::Method;
using test::forSeeds;
using test::listed;
using test::Random;
using test::soundMethod;

namespace {

constexpr unsigned cases = 300;
constexpr double rounding = 1e-12;

std::vector<double> factors(const Method &method)
{
    std::vector<double> values;
    for (const evaluation::Factor &factor : evaluation::evaluate(method, {}).factors)
        values.push_back(factor.factor_g_per_L);
    return values;
}

/// Every factor of the changed method is so many times that of the method.
void expectFactors(const Method &method, const Method &changed, double times)
{
    ASSERT_FALSE(assay::hasErrors(assay::problemsOf(changed))) << listed(assay::problemsOf(changed));
    const std::vector<double> before = factors(method);
    const std::vector<double> after = factors(changed);
    ASSERT_EQ(before.size(), method.measurands.size());
    ASSERT_EQ(after.size(), before.size());
    for (std::size_t i = 0; i < before.size(); ++i) {
        ASSERT_GT(before[i], 0);
        EXPECT_NEAR(after[i] / (before[i] * times), 1, rounding) << "measurand " << i;
    }
}

void scaleVolumes(Method &method, double times)
{
    for (assay::Component &component : method.components) {
        component.volume_mL *= times;
        if (component.range_mL)
            component.range_mL =
                assay::Interval{component.range_mL->lower * times, component.range_mL->upper * times};
    }
}

std::map<QString, run::Reading> randomReadings(Random &random, const Method &method)
{
    std::map<QString, run::Reading> readings;
    double absorbance = random.between(0.1, 0.3);
    for (const QString &reading : assay::readingsInOrder(method)) {
        readings[reading] = absorbance;
        absorbance += random.between(0.05, 0.4);
    }
    return readings;
}

run::Run randomRun(Random &random, const Method &method)
{
    run::Run run;
    run.method = method.id;
    run::Sample sample;
    sample.id = u"S"_s;
    run.samples = {sample};
    run::Tube blank;
    blank.role = run::Role::Blank;
    blank.readings = randomReadings(random, method);
    run::Tube tube;
    tube.sample = sample.id;
    tube.readings = randomReadings(random, method);
    run.tubes = {blank, tube};
    return run;
}

std::vector<std::optional<double>> values(const Method &method, const run::Run &run)
{
    std::vector<std::optional<double>> all;
    for (const evaluation::TubeValue &value : evaluation::evaluate(method, run).tubes)
        all.push_back(value.concentration_g_per_L);
    return all;
}

void expectSameValues(const std::vector<std::optional<double>> &a,
                      const std::vector<std::optional<double>> &b, double times = 1)
{
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        ASSERT_EQ(a[i].has_value(), b[i].has_value());
        if (a[i]) {
            EXPECT_NEAR(*b[i], *a[i] * times, 1e-9 * std::abs(*a[i] * times)) << i;
        }
    }
}

} // namespace

TEST(MethodProperties, TheGeneratorMakesSoundMethodsOfManyKinds)
{
    int derived = 0;
    int coupled = 0;
    int withoutStandard = 0;
    forSeeds(cases, [&](Random &random) {
        const Method method = soundMethod(random);
        EXPECT_FALSE(assay::hasErrors(assay::problemsOf(method))) << listed(assay::problemsOf(method));
        derived += method.derived.empty() ? 0 : 1;
        withoutStandard += method.standard ? 0 : 1;
        for (const assay::Measurand &measurand : method.measurands)
            coupled += std::holds_alternative<assay::CoupledIndicatorSignal>(measurand.signal) ? 1 : 0;
    });
    EXPECT_GT(derived, 50);
    EXPECT_GT(coupled, 20);
    EXPECT_GT(withoutStandard, 50);
}

TEST(MethodProperties, ReadingAWrittenMethodGivesTheSameMethod)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        const QByteArray text = writeMethod(method);
        const auto read = readMethod(text);
        ASSERT_TRUE(read.value) << listed(read.problems) << text.toStdString();
        EXPECT_EQ(*read.value, method) << text.toStdString();
        EXPECT_EQ(writeMethod(*read.value), text);
    });
}

TEST(MethodProperties, TheReaderFindsNoMoreAndNoLessThanTheRulesOfSoundness)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        EXPECT_EQ(readMethod(writeMethod(method)).problems, assay::problemsOf(method));
    });
}

// Bytes changed, taken away or doubled by a bad disk or a slip in an editor.
TEST(MethodProperties, ADamagedFileIsRefusedWithAReasonOrReadAsASoundMethod)
{
    int refused = 0;
    forSeeds(cases, [&](Random &random) {
        const QByteArray whole = writeMethod(soundMethod(random));
        for (int i = 0; i < 10; ++i) {
            QByteArray text = whole;
            const int at = random.whole(0, static_cast<int>(text.size()) - 1);
            const int kind = random.whole(0, 3);
            if (kind == 0)
                text[at] = static_cast<char>(random.whole(0, 255));
            else if (kind == 1)
                text.remove(at, random.whole(1, 40));
            else if (kind == 2)
                text.insert(at, text.mid(at, random.whole(1, 40)));
            else
                text.truncate(at);
            const auto read = readMethod(text);
            ASSERT_EQ(read.value.has_value(), !assay::hasErrors(read.problems)) << text.toStdString();
            if (read.value) {
                EXPECT_FALSE(assay::hasErrors(assay::problemsOf(*read.value))) << text.toStdString();
            } else {
                ++refused;
            }
        }
    });
    EXPECT_GT(refused, 1500);
}

TEST(MethodProperties, ScalingAllVolumesLeavesTheFactors)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        Method changed = method;
        scaleVolumes(changed, random.magnitude(0.2, 5));
        expectFactors(method, changed, 1);
    });
}

TEST(MethodProperties, PathLengthAndAbsorptivityTrade)
{
    forSeeds(cases, [](Random &random) {
        Method method = soundMethod(random);
        method.pathLength_mm = random.magnitude(1, 100);
        for (auto &[wavelength_nm, absorptivity] : method.absorptivity_L_per_mol_cm)
            absorptivity = random.magnitude(1000, 1e5);
        const double times = random.magnitude(0.1, 10);
        Method changed = method;
        changed.pathLength_mm *= times;
        for (auto &[wavelength_nm, absorptivity] : changed.absorptivity_L_per_mol_cm)
            absorptivity /= times;
        expectFactors(method, changed, 1);
    });
}

TEST(MethodProperties, PathLengthCountsInCentimetresWhereverItIsGiven)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        Method changed = method;
        changed.pathLength_mm = 10;
        expectFactors(method, changed, method.pathLength_mm / 10);
        run::Run run;
        run.method = method.id;
        run.pathLength_mm = 10;
        const auto inRun = evaluation::evaluate(method, run).factors;
        ASSERT_EQ(inRun.size(), method.measurands.size());
        for (std::size_t i = 0; i < inRun.size(); ++i)
            EXPECT_NEAR(inRun[i].factor_g_per_L / factors(changed)[i], 1, rounding);
    });
}

TEST(MethodProperties, FactorsGoWithMolarMassAndAgainstChromophores)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        Method heavier = method;
        const double times = random.magnitude(0.5, 2);
        Method twice = method;
        for (assay::Measurand &measurand : heavier.measurands)
            measurand.molarMass_g_per_mol *= times;
        for (assay::Measurand &measurand : twice.measurands)
            measurand.chromophorePerMolecule /= 2;
        expectFactors(method, heavier, times);
        expectFactors(method, twice, 2);
    });
}

TEST(MethodProperties, FactorsAreThoseOfTheFormula)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        const double e = method.absorptivity_L_per_mol_cm.at(method.wavelength_nm);
        const double v_mL = assay::findComponent(method, method.sample)->volume_mL;
        const std::vector<double> found = factors(method);
        for (std::size_t i = 0; i < found.size(); ++i) {
            const assay::Measurand &measurand = method.measurands[i];
            double V_mL = 0; // what the steps have added by then
            for (const assay::Step &step : method.steps) {
                const auto *read = std::get_if<assay::ReadStep>(&step);
                if (read && read->reading == assay::laterReading(measurand.signal))
                    break;
                if (const auto *add = std::get_if<assay::AddStep>(&step))
                    V_mL += assay::findComponent(method, add->component)->volume_mL;
            }
            EXPECT_NEAR(found[i] * e * (method.pathLength_mm / 10) * v_mL * measurand.chromophorePerMolecule /
                            (V_mL * measurand.molarMass_g_per_mol),
                        1, rounding);
        }
    });
}

TEST(MethodProperties, TheOrderOfTheComponentsInTheFileDoesNotMatter)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        Method changed = method;
        random.shuffle(changed.components);
        expectFactors(method, changed, 1);
        const run::Run run = randomRun(random, method);
        EXPECT_EQ(values(method, run), values(changed, run));
    });
}

TEST(MethodProperties, AnOffsetOfAllReadingsOfATubeLeavesItsValues)
{
    forSeeds(cases, [](Random &random) {
        Method method = soundMethod(random);
        method.volumeCorrection = assay::VolumeCorrection::None;
        const run::Run run = randomRun(random, method);
        run::Run changed = run;
        for (run::Tube &tube : changed.tubes) {
            const double colour = random.between(-0.05, 0.5);
            for (auto &[name, reading] : tube.readings)
                reading = std::get<double>(reading) + colour;
        }
        expectSameValues(values(method, run), values(method, changed));
    });
}

TEST(MethodProperties, ScalingAllVolumesLeavesTheResults)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        Method changed = method;
        scaleVolumes(changed, random.magnitude(0.2, 5));
        const run::Run run = randomRun(random, method);
        expectSameValues(values(method, run), values(changed, run));
    });
}

TEST(MethodProperties, ADilutionMultipliesTheResults)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        const run::Run run = randomRun(random, method);
        run::Run changed = run;
        const double first = random.magnitude(1, 100);
        const double second = random.magnitude(1, 100);
        changed.samples[0].dilution = {{1, first}, {2.5, 2.5 * second}};
        expectSameValues(values(method, run), values(method, changed), first * second);
    });
}

TEST(MethodProperties, WhatWasPipettedAsPlannedChangesNothing)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        const run::Run run = randomRun(random, method);
        run::Run changed = run;
        for (run::Tube &tube : changed.tubes) {
            for (const run::Addition &addition : run::plannedAdditions(method, tube))
                tube.pipetted_mL[addition.component] = addition.volume_mL;
        }
        EXPECT_EQ(evaluation::evaluate(method, run), evaluation::evaluate(method, changed));
    });
}

// Every volume times as large, noted as pipetted in one tube: its concentration is another by nothing.
TEST(MethodProperties, ATubeOfAnotherSizeGivesTheSameConcentration)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        const run::Run run = randomRun(random, method);
        run::Run changed = run;
        const double times = random.magnitude(0.2, 5);
        for (const run::Addition &addition : run::plannedAdditions(method, run.tubes[1]))
            changed.tubes[1].pipetted_mL[addition.component] = times * addition.volume_mL;
        expectSameValues(values(method, run), values(method, changed));
    });
}

TEST(MethodProperties, ASpoiltTubeIsAsGoodAsNone)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        run::Run run = randomRun(random, method);
        run.tubes.push_back(run.tubes[static_cast<std::size_t>(random.whole(0, 1))]);
        run.tubes.back().readings = randomReadings(random, method);
        run::Run without = run;
        without.tubes.pop_back();
        run.tubes.back().spoilt = u"knocked over"_s;
        auto found = values(method, run);
        ASSERT_EQ(found.size(), 3 * method.measurands.size());
        for (std::size_t i = 2 * method.measurands.size(); i < found.size(); ++i)
            EXPECT_FALSE(found[i]);
        found.resize(2 * method.measurands.size());
        EXPECT_EQ(found, values(method, without));
        EXPECT_EQ(evaluation::evaluate(method, run).blanks, evaluation::evaluate(method, without).blanks);
    });
}

// Whatever stands in for the sample, the diluent makes up for it, as long as there is enough of it.
TEST(MethodProperties, ATubesVolumeStaysTheSameWithinTheSamplesRange)
{
    forSeeds(cases, [](Random &random) {
        const Method method = soundMethod(random);
        const auto *sample = assay::findComponent(method, method.sample);
        if (!sample->range_mL)
            return;
        for (const QString &reading : assay::readingsInOrder(method)) {
            run::Tube tube;
            const double usual_mL = run::volumeAt_mL(method, tube, reading);
            tube.sampleVolume_mL = random.between(sample->range_mL->lower, sample->range_mL->upper);
            EXPECT_NEAR(run::volumeAt_mL(method, tube, reading), usual_mL, 1e-9);
            tube.role = run::Role::Blank;
            EXPECT_NEAR(run::volumeAt_mL(method, tube, reading), usual_mL, 1e-9);
        }
    });
}

} // namespace plateau::exchange
