// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/layout.h"

#include <span>
#include <utility>

namespace plateau::evaluation {

/// Where each input of the calculation stands in the vector the Model reads: first every absorbance, then the
/// relative factors (1 when nothing is off) that are common to the run, one factor for the concentration of
/// each standard, one for each dilution step, and one additive offset (0) for each calibration point.
struct InputIndex {
    explicit InputIndex(const Layout &layout, size_t dilutionSteps, size_t calibrationPoints)
        : absorptivity(layout.absorbances().size())
        , pathLength(absorptivity + 1)
        , totalVolume(absorptivity + 2)
        , sampleVolume(absorptivity + 3)
        , extract(absorptivity + 4)
        , standard(absorptivity + 5)
        , dilution(standard + layout.run().standards.size())
        , calibrationOffset(dilution + dilutionSteps)
        , size(calibrationOffset + calibrationPoints)
    {
    }
    size_t absorptivity;
    size_t pathLength;
    size_t totalVolume;
    size_t sampleVolume;
    size_t extract;
    size_t standard;
    size_t dilution;
    size_t calibrationOffset;
    size_t size;
};

/// Net signal = intercept + slope x amount.
template <class T> struct FittedLine {
    T intercept;
    T slope;
};

/// The formulas of the method, each written once. T is double for values, or a number that carries its
/// derivative for sensitivities. Everything asked of it must be computable (Layout says what is).
template <class T> class Model
{
public:
    Model(const Layout &layout, const MeasurandTerms &terms, const InputIndex &index,
          std::span<const T> input)
        : m_layout(layout)
        , m_terms(terms)
        , m_index(index)
        , m_input(input)
    {
    }

    T reading(const ReadingTerm &term) const
    {
        T sum(0.0);
        for (size_t i = 0; i < term.weights.size(); ++i)
            sum += m_input[static_cast<size_t>(term.first) + i] * term.weights[i];
        return sum * term.volumeRatio;
    }

    /// later - earlier where the chromophore is made, earlier - later where it is used up.
    T change(const T &earlier, const T &later) const
    {
        return m_layout.method().direction == assay::Direction::Rising ? T(later - earlier)
                                                                       : T(earlier - later);
    }

    T signal(int tube) const
    {
        const std::vector<ReadingTerm> &readings = term(tube).readings;
        const T first = reading(readings.front());
        if (std::holds_alternative<assay::DifferenceSignal>(m_terms.measurand->signal))
            return change(first, reading(readings.back()));
        const T before = change(first, reading(readings[1]));
        const T whole = change(first, reading(readings[2]));
        // Nothing happened at all: the quotient's limit is zero, its value undefined.
        if (whole == T(0.0))
            return whole;
        return whole - before * before / whole;
    }

    T meanSignal(std::span<const int> tubes) const
    {
        T sum(0.0);
        for (const int tube : tubes)
            sum += signal(tube);
        return tubes.empty() ? sum : T(sum / static_cast<double>(tubes.size()));
    }

    T netSignal(int tube) const
    {
        return signal(tube) - meanSignal(m_terms.blanks) - meanSignal(term(tube).sampleBlanks);
    }

    /// Net signal brought to the default tube volume: the same but where the diluent could not make up.
    T comparableSignal(int tube) const { return netSignal(tube) * volumeRatio(tube); }

    /// Net signal of one mg of analyte in the tube: mean over the tubes of the run's own standard.
    T responsePerMg() const
    {
        T sum(0.0);
        for (size_t i = 0; i < m_terms.calibration.size(); ++i)
            sum += calibrationSignal(i) / calibrationAmount_mg(i);
        return sum / static_cast<double>(m_terms.calibration.size());
    }

    /// Least squares of net signal against amount, centred formulas.
    FittedLine<T> line() const
    {
        const double n = static_cast<double>(m_terms.calibration.size());
        T xMean(0.0);
        T yMean(0.0);
        for (size_t i = 0; i < m_terms.calibration.size(); ++i) {
            xMean += calibrationAmount_mg(i) / n;
            yMean += calibrationSignal(i) / n;
        }
        T sxx(0.0);
        T sxy(0.0);
        for (size_t i = 0; i < m_terms.calibration.size(); ++i) {
            const T dx = calibrationAmount_mg(i) - xMean;
            sxx += dx * dx;
            sxy += dx * (calibrationSignal(i) - yMean);
        }
        const T slope = sxy / sxx;
        return {yMean - slope * xMean, slope};
    }

    /// The line that turns a comparable signal into mg of analyte in the tube, whatever the calibration: by
    /// absorptivity and by one standard it goes through the origin.
    FittedLine<T> scale() const
    {
        switch (m_layout.run().calibration) {
        case run::Calibration::Absorptivity:
            return {T(0.0), signalPerMg()};
        case run::Calibration::Standard:
            return {T(0.0), responsePerMg()};
        case run::Calibration::Line:
            break;
        }
        return line();
    }

    /// Concentration (g/L) in the sample as pipetted that a comparable signal of this tube stands for.
    T concentration_g_per_L(const T &comparable, const FittedLine<T> &scale, int tube) const
    {
        return (comparable - scale.intercept) / scale.slope / pipettedVolume_mL(tube);
    }

    /// Concentrations (g/L) in the sample as pipetted, of every tube asked for.
    std::vector<T> pipetted_g_per_L(std::span<const int> tubes) const
    {
        const FittedLine<T> used = scale();
        std::vector<T> values;
        values.reserve(tubes.size());
        for (const int tube : tubes)
            values.push_back(concentration_g_per_L(comparableSignal(tube), used, tube));
        return values;
    }

    /// The same for the smallest net signal that may be reported: what can be measured in this tube at all.
    T smallest_g_per_L(int tube) const
    {
        const T smallest(m_layout.method().window.minSignal * volumeRatio(tube));
        return concentration_g_per_L(smallest, scale(), tube);
    }

    /// Product of the dilution steps.
    T dilutionFactor(const run::Sample &sample) const
    {
        T factor(1.0);
        for (size_t i = 0; i < sample.dilution.size(); ++i)
            factor *=
                (sample.dilution[i].makeUpTo_mL / sample.dilution[i].take_mL) * m_input[m_index.dilution + i];
        return factor;
    }

    /// g/100 g of a solid from g/L of its undiluted extract: concentration x extract (L) / mass x 100.
    T content(const T &extract_g_per_L, const run::Sample &sample) const
    {
        return extract_g_per_L * m_input[m_index.extract] * run::reportedPer_g_per_L(sample);
    }

    /// The reported value: mean over the tubes, in the sample as received.
    T result(std::span<const int> tubes, const run::Sample &sample) const
    {
        T sum(0.0);
        for (const T &value : pipetted_g_per_L(tubes))
            sum += value;
        const T received = sum / static_cast<double>(tubes.size()) * dilutionFactor(sample);
        return sample.form == run::Form::Solid ? content(received, sample) : received;
    }

    T calibrationSignal(size_t point) const
    {
        return comparableSignal(m_terms.calibration[point].tube) + m_input[m_index.calibrationOffset + point];
    }

private:
    const TubeTerm &term(int tube) const { return m_terms.tubes[static_cast<size_t>(tube)]; }

    T pipettedVolume_mL(int tube) const { return m_input[m_index.sampleVolume] * term(tube).sampleVolume_mL; }

    T calibrationAmount_mg(size_t point) const
    {
        const CalibrationPoint &known = m_terms.calibration[point];
        return m_input[m_index.sampleVolume] * m_input[m_index.standard + known.standard] * known.amount_mg;
    }

    /// Tube volume against that at the default sample volume: 1 but where the diluent could not make up.
    double volumeRatio(int tube) const { return term(tube).totalVolume_mL / m_terms.defaultVolume_mL; }

    /// e x d x n / (M x V): with it (dA - 0) / slope / v is dA x V x M / (e x d x v x n).
    T signalPerMg() const
    {
        return m_input[m_index.absorptivity] * m_input[m_index.pathLength] / m_input[m_index.totalVolume] /
               (m_terms.cuvette_g_per_L * m_terms.defaultVolume_mL);
    }

    const Layout &m_layout;
    const MeasurandTerms &m_terms;
    const InputIndex &m_index;
    std::span<const T> m_input;
};

/// The inputs at their values: absorbances as read, factors 1, offsets 0.
template <class T> std::vector<T> inputValues(const Layout &layout, const InputIndex &index)
{
    std::vector<T> input;
    input.reserve(index.size);
    for (const double absorbance : layout.absorbances())
        input.emplace_back(absorbance);
    while (input.size() < index.calibrationOffset)
        input.emplace_back(1.0);
    while (input.size() < index.size)
        input.emplace_back(0.0);
    return input;
}

} // namespace plateau::evaluation
