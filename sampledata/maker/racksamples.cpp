// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/racksamples.h"

#include "sampledata/maker/readings.h"

#include <algorithm>
#include <cmath>

namespace plateau::sampledata {

using namespace Qt::StringLiterals;

namespace {

constexpr double extract_mL = 100;
constexpr int firstNumber = 41;
/// The signal that a dilution aims at, of the window's largest.
constexpr double aim = 0.6;

const std::vector<std::vector<run::DilutionStep>> &dilutionsOfTheHouse()
{
    static const std::vector<std::vector<run::DilutionStep>> chains{
        {},
        {{25, 50}},
        {{5, 25}},
        {{10, 100}},
        {{5, 100}},
        {{2, 50}},
        {{2, 100}},
        {{1, 100}},
        {{10, 100}, {5, 100}},
        {{10, 100}, {2, 100}},
        {{10, 100}, {1, 100}},
    };
    return chains;
}

double solutionOf(const run::Sample &sample, double received)
{
    if (sample.form == run::Form::Solid)
        received = received / 100 * *sample.mass_g / (*sample.extract_mL / 1000);
    return received / run::dilutionFactor(sample.dilution);
}

bool holdsAll(const ProductLine &line, const assay::Method &method)
{
    return std::ranges::all_of(method.measurands, [&](const assay::Measurand &measurand) {
        return line.content.contains(measurand.id);
    });
}

} // namespace

std::map<QString, double> MadeSample::pipetted_g_per_L() const
{
    std::map<QString, double> pipetted;
    for (const auto &[measurand, received] : content)
        pipetted[measurand] = solutionOf(sample, received);
    return pipetted;
}

std::vector<run::DilutionStep> dilutionFor(const assay::Method &method,
                                           const std::map<QString, double> &expected)
{
    const run::Tube plain;
    for (const auto &chain : dilutionsOfTheHouse()) {
        const bool fits = std::ranges::all_of(method.measurands, [&](const assay::Measurand &measurand) {
            const double pipetted = expected.at(measurand.id) / run::dilutionFactor(chain);
            return signalOf(method, measurand, pipetted, plain) <= aim * method.window.maxSignal;
        });
        if (fits)
            return chain;
    }
    return dilutionsOfTheHouse().back();
}

std::vector<planning::StepGlass> glassOf(const std::vector<run::DilutionStep> &steps)
{
    std::vector<planning::StepGlass> glass;
    for (const run::DilutionStep &step : steps)
        glass.push_back({u"bulb pipette %1 mL"_s.arg(step.take_mL), u"flask %1 mL"_s.arg(step.makeUpTo_mL)});
    return glass;
}

QString SampleSource::nameOf(const ProductLine &line, int &tank, Chance &chance)
{
    if (line.tanks > 0)
        tank = chance.whole(1, line.tanks);
    else
        tank = firstNumber + m_counted[line.sampleName]++;
    return line.sampleName.arg(tank);
}

MadeSample SampleSource::next(const assay::Method &method, const QStringList &taken, const QDateTime &now,
                              Chance &chance)
{
    MadeSample made;
    const ProductLine *line = nullptr;
    int number = 0;
    do {
        line = &chance.oneOf(productLines());
        if (holdsAll(*line, method))
            made.sample.id = nameOf(*line, number, chance);
    } while (!holdsAll(*line, method) || taken.contains(made.sample.id));
    made.sample.form = line->form;
    if (line->form == run::Form::Solid) {
        made.sample.mass_g = std::round(chance.part(4.8, 5.2) * 1000) / 1000;
        made.sample.extract_mL = extract_mL;
    }
    // A tank has its own mean; bottlings are more alike than tanks.
    Chance own(m_seed, 1000 + quint64(line - productLines().data()) * 10000 + quint64(number));
    std::map<QString, double> pipetted;
    for (const auto &[measurand, usual] : line->content) {
        const double typical = usual * own.part(0.82, 1.18);
        made.content[measurand] = typical * std::max(0.3, 1 + chance.scatter(0.08));
        if (chance.happens(0.03)) // a tank that surprises everybody
            made.content[measurand] *= chance.part(1.7, 2.6);
        pipetted[measurand] = solutionOf(made.sample, usual);
    }
    if (line->form == run::Form::Liquid)
        made.sample.dilution = dilutionFor(method, pipetted);
    made.planned.sample.id = made.sample.id;
    made.planned.sample.product = line->product;
    made.planned.sample.matrix = line->matrix;
    made.planned.sample.form = line->form;
    made.planned.sample.receivedFrom = line->from;
    made.planned.sample.receivedAt = now.addSecs(-60 * chance.whole(20, 100));
    for (const assay::Measurand &measurand : method.measurands)
        made.planned.sample.expected[measurand.id] = line->content.at(measurand.id);
    made.planned.glass = glassOf(made.sample.dilution);
    return made;
}

MadeSample SampleSource::repeatOf(const MadeSample &sample, const std::optional<evaluation::Advice> &advice,
                                  notebook::RunId run)
{
    MadeSample repeat = sample;
    if (advice && advice->kind == evaluation::Advice::Kind::Dilute && !advice->steps.empty())
        repeat.sample.dilution = advice->steps;
    else if (advice && advice->kind == evaluation::Advice::Kind::IncreaseVolume)
        repeat.volume_mL = advice->sampleVolume_mL;
    repeat.planned.glass = glassOf(repeat.sample.dilution);
    repeat.planned.repeats = run.value;
    ++repeat.repeated;
    return repeat;
}

} // namespace plateau::sampledata
