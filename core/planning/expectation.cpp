// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/expectation.h"

#include "core/evaluation/format.h"
#include "core/planning/dilutionplan.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace plateau::planning {

using namespace Qt::StringLiterals;

namespace {

struct ExpectationWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::Expectation)
};

QString sentence(const assay::Method &method, const assay::Measurand &measurand,
                 const ExpectedSignal &expected)
{
    const bool weak = expected.fit == SignalFit::TooWeak;
    const double limit = weak ? method.window.minSignal : method.window.maxSignal;
    const QStringList texts = evaluation::comparedTexts(expected.signal, {limit}, 3);
    const QString quantity =
        method.measurands.size() > 1 ? measurand.name : ExpectationWords::tr("its net signal");
    return weak ? ExpectationWords::tr("From what is expected of it, %1 would be about %2, below the "
                                       "window's %3: dilute it less, or take more of it.")
                      .arg(quantity, texts[0], texts[1])
                : ExpectationWords::tr("From what is expected of it, %1 would be about %2, above the "
                                       "window's %3: dilute it more, or take less of it.")
                      .arg(quantity, texts[0], texts[1]);
}

/// The volume of the first tube that holds the sample itself.
std::optional<double> volumeInRun(const run::Run &run, const QString &sample)
{
    const auto tube = std::find_if(run.tubes.begin(), run.tubes.end(), [&sample](const run::Tube &each) {
        return each.role == run::Role::Sample && each.sample == sample;
    });
    return tube == run.tubes.end() ? std::nullopt : tube->sampleVolume_mL;
}

} // namespace

std::optional<std::map<QString, double>> expectedConcentrations(const ShelfSample &what,
                                                                const run::Sample &sample)
{
    if (sample.form == run::Form::Solid &&
        (sample.mass_g.value_or(0) <= 0 || sample.extract_mL.value_or(0) <= 0))
        return std::nullopt;
    std::map<QString, double> concentrations;
    for (const auto &[measurand, value] : what.expected)
        concentrations[measurand] = value / run::reportedPer_g_per_L(sample);
    return concentrations;
}

std::map<QString, ExpectedSignal> expectedSignals(const assay::Method &method, const run::Run &run,
                                                  const run::Sample &sample, const ShelfSample &what,
                                                  const std::optional<double> &sampleVolume_mL)
{
    std::map<QString, ExpectedSignal> signals_;
    const auto concentrations = expectedConcentrations(what, sample);
    const assay::Component *component = assay::findComponent(method, method.sample);
    if (!concentrations || !component)
        return signals_;
    for (const auto &[measurand, concentration_g_per_L] : *concentrations) {
        if (!assay::findMeasurand(method, measurand))
            continue;
        ExpectedSignal expected;
        expected.signal = predictedSignal(
            method, measurand, concentration_g_per_L, sampleVolume_mL.value_or(component->volume_mL),
            run::dilutionFactor(sample.dilution), run.wavelength_nm.value_or(method.wavelength_nm),
            run.pathLength_mm.value_or(method.pathLength_mm));
        if (!std::isfinite(expected.signal))
            continue; // a dilution that is not typed to its end
        if (expected.signal < method.window.minSignal)
            expected.fit = SignalFit::TooWeak;
        else if (expected.signal > method.window.maxSignal)
            expected.fit = SignalFit::TooStrong;
        signals_[measurand] = expected;
    }
    return signals_;
}

assay::Problems unfitExpectations(const assay::Method &method, const run::Run &run, const PlanRecord &plan)
{
    assay::Problems problems;
    for (std::size_t index = 0; index < run.samples.size(); ++index) {
        const run::Sample &sample = run.samples[index];
        const auto planned =
            std::find_if(plan.samples.begin(), plan.samples.end(),
                         [&sample](const auto &each) { return each.sample.id == sample.id; });
        if (planned == plan.samples.end())
            continue;
        const QString place = assay::pointerTo(u"/samples"_s, static_cast<qsizetype>(index));
        for (const auto &[id, expected] :
             expectedSignals(method, run, sample, planned->sample, volumeInRun(run, sample.id))) {
            if (expected.fit != SignalFit::Fits)
                problems.push_back(
                    assay::warning(place, sentence(method, *assay::findMeasurand(method, id), expected)));
        }
    }
    return problems;
}

} // namespace plateau::planning
