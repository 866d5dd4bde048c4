// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/layout.h"

#include "core/evaluation/model.h"
#include "core/run/volumes.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

namespace plateau::evaluation {

namespace {

qsizetype absorbanceCount(const run::Reading &reading)
{
    const auto *series = std::get_if<run::ReadingSeries>(&reading);
    return series ? static_cast<qsizetype>(series->size()) : 1;
}

/// A standard with a time of preparation but none of use was used when the run started.
run::Standard asUsed(const run::Standard &standard, const run::Run &run)
{
    run::Standard used = standard;
    if (!used.usedAt)
        used.usedAt = run.startedAt;
    return used;
}

double molarToMassFactor(const assay::Method &method, const run::Run &run, const assay::Measurand &measurand)
{
    const int wavelength_nm = run.wavelength_nm.value_or(method.wavelength_nm);
    const double path_cm = run.pathLength_mm.value_or(method.pathLength_mm) / 10;
    const double absorptivity = assay::absorptivity(method, wavelength_nm).value_or(0);
    return measurand.molarMass_g_per_mol / (absorptivity * path_cm * measurand.chromophorePerMolecule);
}

/// Tells blanks that are lost from those that are only still to be read.
class BlankCount
{
public:
    void add(const TubeTerm &blank)
    {
        ++m_all;
        m_spoilt += blank.spoilt ? 1 : 0;
        m_implausible += blank.implausible ? 1 : 0;
        m_computable += blank.computable() ? 1 : 0;
    }
    bool lost() const { return m_computable == 0 && (m_implausible > 0 || (m_all > 0 && m_spoilt == m_all)); }

private:
    int m_all = 0;
    int m_spoilt = 0;
    int m_implausible = 0;
    int m_computable = 0;
};

} // namespace

std::vector<double> extrapolationWeights(std::span<const double> times)
{
    const double n = static_cast<double>(times.size());
    const double mean = std::accumulate(times.begin(), times.end(), 0.0) / n;
    double sumOfSquares = 0;
    for (const double time : times)
        sumOfSquares += (time - mean) * (time - mean);
    std::vector<double> weights;
    weights.reserve(times.size());
    for (const double time : times)
        weights.push_back(1 / n - mean * (time - mean) / sumOfSquares);
    return weights;
}

Layout::Layout(const assay::Method &method, const run::Run &run, const Rules &rules)
    : m_method(method)
    , m_run(run)
    , m_rules(rules)
{
    for (const run::Tube &tube : run.tubes) {
        m_firstOfTube.push_back(static_cast<int>(m_absorbances.size()));
        for (const auto &[name, reading] : tube.readings) {
            if (const auto *series = std::get_if<run::ReadingSeries>(&reading)) {
                for (const run::TimedAbsorbance &point : *series)
                    m_absorbances.push_back(point.absorbance);
            } else {
                m_absorbances.push_back(std::get<double>(reading));
            }
        }
    }
    m_measurands.reserve(method.measurands.size());
    for (const assay::Measurand &measurand : method.measurands)
        m_measurands.push_back(termsOf(measurand));
}

MeasurandTerms Layout::termsOf(const assay::Measurand &measurand) const
{
    MeasurandTerms terms;
    terms.measurand = &measurand;
    BlankCount blanks;
    for (int tube = 0; tube < static_cast<int>(m_run.tubes.size()); ++tube) {
        terms.tubes.push_back(termOf(measurand, tube));
        const TubeTerm &term = terms.tubes.back();
        if (term.role != run::Role::Blank)
            continue;
        blanks.add(term);
        if (term.computable())
            terms.blanks.push_back(tube);
    }
    terms.blanksLost = blanks.lost();
    terms.defaultVolume_mL = run::volumeAt_mL(m_method, run::Tube{}, assay::laterReading(measurand.signal));
    terms.cuvette_g_per_L = molarToMassFactor(m_method, m_run, measurand);
    findSampleBlanks(terms);
    findWrongDirections(terms);
    findCalibration(terms);
    return terms;
}

TubeTerm Layout::termOf(const assay::Measurand &measurand, int tube) const
{
    const run::Tube &content = m_run.tubes[static_cast<size_t>(tube)];
    TubeTerm term;
    term.tube = tube;
    term.role = content.role;
    term.totalVolume_mL = run::volumeAt_mL(m_method, content, assay::laterReading(measurand.signal));
    term.sampleVolume_mL = run::sampleVolume_mL(m_method, content);
    term.spoilt = !content.spoilt.isEmpty();
    if (term.spoilt)
        return term;
    bool complete = true;
    for (const QString &name : assay::readingsOf(measurand.signal)) {
        std::optional<ReadingTerm> reading = readingTerm(tube, name);
        if (!reading) {
            complete = false;
            continue;
        }
        term.implausible = term.implausible || !isPlausible(*reading);
        if (m_method.volumeCorrection == assay::VolumeCorrection::ToFinalVolume)
            reading->volumeRatio = run::volumeAt_mL(m_method, content, name) / term.totalVolume_mL;
        term.readings.push_back(*std::move(reading));
    }
    if (!complete || term.implausible)
        term.readings.clear();
    return term;
}

std::optional<ReadingTerm> Layout::readingTerm(int tube, const QString &reading) const
{
    const auto &readings = m_run.tubes[static_cast<size_t>(tube)].readings;
    const auto found = readings.find(reading);
    if (found == readings.end())
        return std::nullopt;
    ReadingTerm term;
    term.first = m_firstOfTube[static_cast<size_t>(tube)];
    for (auto earlier = readings.begin(); earlier != found; ++earlier)
        term.first += static_cast<int>(absorbanceCount(earlier->second));
    const auto *series = std::get_if<run::ReadingSeries>(&found->second);
    if (!series) {
        term.weights = {1.0};
        return term;
    }
    const bool extrapolated = m_method.extrapolate && m_method.extrapolate->reading == reading;
    const size_t wanted = extrapolated ? static_cast<size_t>(m_method.extrapolate->lastReadings) : 1;
    const size_t used = std::min(wanted, series->size());
    term.first += static_cast<int>(series->size() - used);
    if (used < 2) {
        term.weights = {1.0};
        return term;
    }
    std::vector<double> times;
    for (size_t i = series->size() - used; i < series->size(); ++i)
        times.push_back((*series)[i].at_min);
    term.weights = extrapolationWeights(times);
    return term;
}

bool Layout::isPlausible(const ReadingTerm &reading) const
{
    const auto first = m_absorbances.begin() + reading.first;
    return std::all_of(first, first + static_cast<std::ptrdiff_t>(reading.weights.size()), [&](double read) {
        return read >= m_rules.plausibleAbsorbance.lower && read <= m_rules.plausibleAbsorbance.upper;
    });
}

double Layout::absorbanceUncertainty() const
{
    const auto &stated = m_run.uncertainty;
    return stated && stated->absorbance > 0 ? stated->absorbance : m_rules.assumedAbsorbanceUncertainty;
}

void Layout::findWrongDirections(MeasurandTerms &terms) const
{
    // Below a hundredth the photometer and the added volume move a reading as well.
    const double tolerance = std::max(0.010, 3 * std::sqrt(2.0) * absorbanceUncertainty());
    const InputIndex index(*this, 0, 0);
    const std::vector<double> input = inputValues<double>(*this, index);
    const Model<double> model(*this, terms, index, input);
    for (TubeTerm &term : terms.tubes) {
        const bool blank = term.role == run::Role::Blank || term.role == run::Role::SampleBlank;
        if (blank || !term.computable() || model.signal(term.tube) > -tolerance)
            continue;
        term.wrongDirection = term.blankLost || model.netSignal(term.tube) <= -tolerance;
    }
}

void Layout::findCalibration(MeasurandTerms &terms) const
{
    if (m_run.calibration == run::Calibration::Absorptivity) {
        terms.calibrated = true;
        return;
    }
    const bool single = m_run.calibration == run::Calibration::Standard;
    for (size_t i = 0; i < m_run.standards.size(); ++i) {
        const run::Standard &standard = m_run.standards[i];
        if (!holds(standard, *terms.measurand))
            continue;
        bool measured = false;
        for (const TubeTerm &term : terms.tubes) {
            if (term.role != run::Role::Standard ||
                m_run.tubes[static_cast<size_t>(term.tube)].standard != standard.id)
                continue;
            measured = true;
            if (term.hasNetSignal() && term.trusted())
                terms.calibration.push_back(
                    {term.tube, strength_g_per_L(standard) * term.sampleVolume_mL, i});
        }
        if (single && measured)
            break; // the first standard of the run calibrates, the others are checked against it
    }
    std::set<double> levels;
    for (const CalibrationPoint &point : terms.calibration)
        levels.insert(point.amount_mg);
    terms.calibrated = single ? !terms.calibration.empty() : levels.size() >= 3;
}

std::vector<int> Layout::resultTubes(const QString &sample) const
{
    std::vector<int> tubes = tubesWith(run::Role::Sample, sample);
    const std::vector<int> controls = tubesWith(run::Role::Control, sample);
    tubes.insert(tubes.end(), controls.begin(), controls.end());
    std::ranges::sort(tubes);
    return tubes;
}

std::vector<int> Layout::tubesWith(run::Role role, const QString &sample) const
{
    std::vector<int> tubes;
    for (int i = 0; i < static_cast<int>(m_run.tubes.size()); ++i) {
        const run::Tube &tube = m_run.tubes[static_cast<size_t>(i)];
        if (tube.role == role && tube.sample == sample)
            tubes.push_back(i);
    }
    return tubes;
}

void Layout::findSampleBlanks(MeasurandTerms &terms) const
{
    for (TubeTerm &term : terms.tubes) {
        const run::Tube &content = m_run.tubes[static_cast<size_t>(term.tube)];
        term.blankLost = terms.blanksLost;
        if (content.sample.isEmpty() || content.role == run::Role::SampleBlank)
            continue;
        std::vector<int> all;
        BlankCount blanks;
        for (const int blank : tubesWith(run::Role::SampleBlank, content.sample)) {
            const TubeTerm &blankTerm = terms.tubes[static_cast<size_t>(blank)];
            blanks.add(blankTerm);
            if (!blankTerm.computable())
                continue;
            all.push_back(blank);
            if (blankTerm.sampleVolume_mL == term.sampleVolume_mL)
                term.sampleBlanks.push_back(blank);
        }
        term.blankLost = term.blankLost || blanks.lost();
        if (term.sampleBlanks.empty())
            term.sampleBlanks = std::move(all);
    }
}

double Layout::strength_g_per_L(const run::Standard &standard) const
{
    return run::concentrationAtUse_g_per_L(asUsed(standard, m_run));
}

bool Layout::holds(const run::Standard &standard, const assay::Measurand &measurand)
{
    return standard.measurand.isEmpty() || standard.measurand == measurand.id;
}

} // namespace plateau::evaluation
