// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/evaluation.h"

#include "core/evaluation/checks.h"
#include "core/evaluation/contribution.h"
#include "core/evaluation/derived.h"
#include "core/evaluation/model.h"
#include "core/evaluation/recoveries.h"
#include "core/evaluation/sampleview.h"
#include "core/evaluation/series.h"
#include "core/evaluation/uncertainty.h"
#include "core/quality/line.h"
#include "core/quality/statistics.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <deque>

namespace plateau::evaluation {

namespace {

/// A quotient by a standard that did not react, or by a level line, is no value.
std::optional<double> finite(double value)
{
    return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

/// Values of one measurand, computed with plain numbers.
class Computation
{
public:
    Computation(const Layout &layout, const MeasurandTerms &terms)
        : m_layout(layout)
        , m_terms(terms)
        , m_index(layout, longestDilution(layout.run()), terms.calibration.size())
        , m_input(inputValues<double>(layout, m_index))
        , m_model(layout, terms, m_index, m_input)
    {
    }

    // The model refers to the members beside it.
    Computation(const Computation &) = delete;
    Computation &operator=(const Computation &) = delete;

    const Model<double> &model() const { return m_model; }

    std::optional<double> pipetted_g_per_L(int tube) const
    {
        const TubeTerm &term = m_terms.tubes[static_cast<size_t>(tube)];
        if (!m_terms.calibrated || !term.hasNetSignal() || !term.trusted())
            return std::nullopt;
        return finite(m_model.pipetted_g_per_L(std::array{tube}).front());
    }

    std::optional<double> smallest_g_per_L(int tube) const
    {
        return m_terms.calibrated ? finite(m_model.smallest_g_per_L(tube)) : std::nullopt;
    }

private:
    static size_t longestDilution(const run::Run &run)
    {
        size_t longest = 0;
        for (const run::Sample &sample : run.samples)
            longest = std::max(longest, sample.dilution.size());
        return longest;
    }

    const Layout &m_layout;
    const MeasurandTerms &m_terms;
    InputIndex m_index;
    std::vector<double> m_input;
    Model<double> m_model;
};

TubeValue tubeValue(const Layout &layout, const MeasurandTerms &terms, const Computation &computation,
                    int tube)
{
    const TubeTerm &term = terms.tubes[static_cast<size_t>(tube)];
    TubeValue value;
    value.index = tube;
    value.role = term.role;
    value.measurand = terms.measurand->id;
    value.totalVolume_mL = term.totalVolume_mL;
    value.sampleVolume_mL = term.sampleVolume_mL;
    if (!term.computable())
        return value;
    value.signal = finite(computation.model().signal(tube));
    if (!value.signal || term.role == run::Role::Blank || term.role == run::Role::SampleBlank)
        return value;
    if (!term.hasNetSignal())
        return value;
    value.netSignal = computation.model().netSignal(tube);
    if (!term.trusted())
        return value;
    value.pipetted_g_per_L = computation.pipetted_g_per_L(tube);
    const run::Sample *sample =
        run::findSample(layout.run(), layout.run().tubes[static_cast<size_t>(tube)].sample);
    const double dilution = sample ? run::dilutionFactor(sample->dilution) : 1;
    if (value.pipetted_g_per_L)
        value.concentration_g_per_L = *value.pipetted_g_per_L * dilution;
    if (const auto smallest = computation.smallest_g_per_L(tube))
        value.quantificationLimit_g_per_L = *smallest * dilution;
    return value;
}

Result resultOf(const Layout &layout, const Evaluation &evaluation, size_t measurand,
                const run::Sample &sample)
{
    Result result;
    result.sample = sample.id;
    result.measurand = layout.measurands()[measurand].measurand->id;
    result.unit = unitOf(sample);
    result.spread = 0;
    Contribution whole = contributionOf(layout, evaluation, measurand, sample);
    if (whole.values.empty())
        return result;
    result.value = quality::mean(whole.values);
    result.n = static_cast<int>(whole.values.size());
    result.spread = quality::range(whole.values);
    if (layout.run().uncertainty) {
        const RunShare share{&layout, &sample, {std::move(whole)}};
        applyUncertainty(result, uncertaintyTerms({&share, 1}));
    }
    return result;
}

std::optional<CalibrationLine> calibrationLine(const MeasurandTerms &terms, const Computation &computation)
{
    std::vector<double> amounts;
    std::vector<double> signals;
    for (size_t i = 0; i < terms.calibration.size(); ++i) {
        amounts.push_back(terms.calibration[i].amount_mg);
        signals.push_back(computation.model().calibrationSignal(i));
    }
    const std::optional<quality::Line> fitted = quality::fitLine(amounts, signals);
    if (!fitted)
        return std::nullopt;
    return CalibrationLine{terms.measurand->id, fitted->intercept, fitted->slope,
                           fitted->residualStandardDeviation, fitted->n};
}

double defaultFactor_g_per_L(const Layout &layout, const MeasurandTerms &terms)
{
    const assay::Component &sample = *assay::findComponent(layout.method(), layout.method().sample);
    return terms.cuvette_g_per_L * terms.defaultVolume_mL / sample.volume_mL;
}

bool isInATube(const run::Run &run, const run::Sample &sample)
{
    return std::ranges::find(run.tubes, sample.id, &run::Tube::sample) != run.tubes.end();
}

void compute(const Layout &layout, Evaluation &evaluation)
{
    std::deque<Computation> computations;
    for (const MeasurandTerms &terms : layout.measurands()) {
        computations.emplace_back(layout, terms);
        const QString &id = terms.measurand->id;
        evaluation.factors.push_back({id, defaultFactor_g_per_L(layout, terms)});
        BlankMean blank{id, std::nullopt, static_cast<int>(terms.blanks.size())};
        if (!terms.blanks.empty())
            blank.mean = finite(computations.back().model().meanSignal(terms.blanks));
        evaluation.blanks.push_back(std::move(blank));
    }
    for (int tube = 0; tube < static_cast<int>(layout.run().tubes.size()); ++tube) {
        for (size_t m = 0; m < computations.size(); ++m)
            evaluation.tubes.push_back(tubeValue(layout, layout.measurands()[m], computations[m], tube));
    }
    for (const run::Sample &sample : layout.run().samples) {
        if (!isInATube(layout.run(), sample))
            continue;
        for (size_t m = 0; m < computations.size(); ++m)
            evaluation.results.push_back(resultOf(layout, evaluation, m, sample));
    }
    for (size_t m = 0; m < computations.size(); ++m) {
        addStandards(layout, m, evaluation);
        addSpikes(layout, m, evaluation);
        if (layout.run().calibration == run::Calibration::Line) {
            if (const auto line = calibrationLine(layout.measurands()[m], computations[m]))
                evaluation.lines.push_back(*line);
        }
    }
}

bool failed(const std::vector<Check> &checks, std::initializer_list<CheckId> ids)
{
    return std::ranges::any_of(checks, [&](const Check &check) {
        return !check.passed && std::ranges::find(ids, check.id) != ids.end();
    });
}

/// What spoils the readings themselves comes first; then what a repeat would mend; then everything else that
/// failed with the sample or the run. A signal too low for the assay at its most sensitive is a final result.
Verdict verdictOf(const Result &result, bool runFailed)
{
    using enum CheckId;
    if (!result.value || failed(result.checks, {ReadingMissing, ReadingImplausible, WrongDirection}))
        return Verdict::Investigate;
    if (failed(result.checks, {SignalHigh, AbsorbanceHigh, ReserveLow}))
        return Verdict::Repeat;
    const bool lowWithAdvice = std::ranges::any_of(
        result.checks, [](const Check &c) { return c.id == SignalLow && !c.passed && c.advice; });
    if (lowWithAdvice)
        return Verdict::Repeat;
    const bool otherFailed =
        std::ranges::any_of(result.checks, [](const Check &c) { return !c.passed && c.id != SignalLow; });
    return runFailed || otherFailed ? Verdict::Investigate : Verdict::Reportable;
}

void judge(const Layout &layout, const Rules &rules, Evaluation &evaluation)
{
    const CheckContext context{layout, evaluation, rules, layout.absorbanceUncertainty()};
    evaluation.series = seriesFits(layout.method(), layout.run(), context.absorbanceUncertainty);
    evaluation.checks = runChecks(context);
    const bool runFailed = std::ranges::any_of(evaluation.checks, [](const Check &c) { return !c.passed; });
    evaluation.acceptable = !runFailed && !evaluation.results.empty();
    for (Result &result : evaluation.results) {
        result.checks = sampleChecks(context, result);
        result.verdict = verdictOf(result, runFailed);
        if (result.verdict == Verdict::Reportable)
            result.lessThan = lessThan(viewOf(context, result), result);
        result.greaterThan = greaterThan(result);
        evaluation.acceptable = evaluation.acceptable && result.verdict == Verdict::Reportable;
        evaluation.checks.insert(evaluation.checks.end(), result.checks.begin(), result.checks.end());
    }
}

} // namespace

Evaluation evaluate(const assay::Method &method, const run::Run &run, const Rules &rules,
                    std::span<const Companion> companions)
{
    const Layout layout(method, run, rules);
    Evaluation evaluation;
    evaluation.methodId = method.id;
    evaluation.methodVersion = method.version;
    compute(layout, evaluation);
    judge(layout, rules, evaluation);
    if (!method.derived.empty())
        addDerived(layout, companions, rules, evaluation);
    return evaluation;
}

} // namespace plateau::evaluation
