// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/samplesignals.h"

#include "core/evaluation/format.h"
#include "core/exchange/decimal.h"
#include "core/planning/expectation.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct SampleSignalsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::SampleSignals)
};

/// What is typed of the sample so far; nothing where a step is not typed to its end.
std::optional<run::Sample> sampleSoFar(const SampleDraft &draft, run::Form form)
{
    run::Sample sample;
    sample.id = draft.id;
    sample.form = form;
    sample.mass_g = numberIn(draft.mass_g);
    sample.extract_mL = numberIn(draft.extract_mL);
    for (const DilutionDraft &step : draft.dilution) {
        if (step.take_mL.trimmed().isEmpty() && step.makeUpTo_mL.trimmed().isEmpty())
            continue;
        const auto take = numberIn(step.take_mL);
        const auto makeUp = numberIn(step.makeUpTo_mL);
        if (!take || !makeUp || *take <= 0)
            return std::nullopt;
        sample.dilution.push_back({*take, *makeUp});
    }
    return sample;
}

planning::ShelfSample expectationsOf(const SampleDraft &draft, const assay::Method &method)
{
    planning::ShelfSample what;
    const std::size_t known = std::min(draft.expected.size(), method.measurands.size());
    for (std::size_t measurand = 0; measurand < known; ++measurand) {
        if (const auto value = numberIn(draft.expected[measurand]); value && *value > 0)
            what.expected[method.measurands[measurand].id] = *value;
    }
    return what;
}

QString keyedVolume(double volume_mL)
{
    return evaluation::plainText(volume_mL);
}

} // namespace

std::optional<double> numberIn(const QString &text)
{
    const auto parsed = exchange::parseDecimal(text);
    const double *value = std::get_if<double>(&parsed);
    return value ? std::optional(*value) : std::nullopt;
}

QString factorText(const SampleDraft &sample)
{
    const auto read = sampleSoFar(sample, run::Form::Liquid);
    return read ? evaluation::roundedText(run::dilutionFactor(read->dilution), 4) : u"–"_s;
}

SignalShown signalOf(const SampleDraft &sample, run::Form form, const assay::Method &method, int measurand,
                     int wavelength_nm, double pathLength_mm)
{
    const auto read = sampleSoFar(sample, form);
    const planning::ShelfSample what = expectationsOf(sample, method);
    const QString id = method.measurands[static_cast<std::size_t>(measurand)].id;
    if (!read || !what.expected.contains(id) || wavelength_nm <= 0 || pathLength_mm <= 0)
        return {};
    run::Run run;
    run.wavelength_nm = wavelength_nm;
    run.pathLength_mm = pathLength_mm;
    const auto signals_ =
        planning::expectedSignals(method, run, *read, what, numberIn(sample.sampleVolume_mL));
    const auto found = signals_.find(id);
    if (found == signals_.end())
        return {};
    const QString number = QString::number(found->second.signal, 'f', 3);
    switch (found->second.fit) {
    case planning::SignalFit::TooWeak:
        return {SampleSignalsWords::tr("%1 weak").arg(number), State::Attention};
    case planning::SignalFit::TooStrong:
        return {SampleSignalsWords::tr("%1 strong").arg(number), State::Attention};
    case planning::SignalFit::Fits:
        break;
    }
    return {number, State::Good};
}

std::optional<SampleDraft> withProposedDilution(const SampleDraft &sample, run::Form form,
                                                const assay::Method &method, int wavelength_nm,
                                                double pathLength_mm, const planning::Glassware &glassware,
                                                QString &why)
{
    why.clear();
    run::Sample undiluted;
    undiluted.form = form;
    undiluted.mass_g = numberIn(sample.mass_g);
    undiluted.extract_mL = numberIn(sample.extract_mL);
    const planning::ShelfSample what = expectationsOf(sample, method);
    if (what.expected.empty())
        return std::nullopt;
    const auto concentrations = planning::expectedConcentrations(what, undiluted);
    if (!concentrations) {
        why = SampleSignalsWords::tr("%1: enter its mass and extract first.").arg(sample.id);
        return std::nullopt;
    }
    planning::DilutionQuestion question;
    question.expected_g_per_L = *concentrations;
    question.wavelength_nm = wavelength_nm;
    question.pathLength_mm = pathLength_mm;
    const auto proposals = planning::proposeDilutions(method, question, glassware);
    if (proposals.empty()) {
        why = SampleSignalsWords::tr("%1: %2").arg(sample.id, planning::whyNone(method, question, glassware));
        return std::nullopt;
    }
    const planning::DilutionProposal &best = proposals.front();
    const assay::Component *component = assay::findComponent(method, method.sample);
    SampleDraft planned = sample;
    planned.dilution.clear();
    for (const planning::ChainStep &step : best.chain)
        planned.dilution.push_back({keyedVolume(step.step.take_mL), keyedVolume(step.step.makeUpTo_mL)});
    planned.sampleVolume_mL = component && best.sampleVolume_mL == component->volume_mL
                                  ? QString()
                                  : keyedVolume(best.sampleVolume_mL);
    return planned;
}

} // namespace plateau::ui
