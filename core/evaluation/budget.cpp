// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/uncertainty.h"

#include "core/evaluation/format.h"
#include "core/evaluation/model.h"
#include "core/quality/statistics.h"

#include <QCoreApplication>

#include <boost/math/differentiation/autodiff.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace plateau::evaluation {

namespace {

using Differential = boost::math::differentiation::autodiff_fvar<double, 1>;

constexpr double infinite = std::numeric_limits<double>::infinity();

struct Term {
    Q_DECLARE_TR_FUNCTIONS(plateau::evaluation::Budget)
};

/// Takes one input after the other for the variable and lets the Model say how the result moves with it.
class Sensitivities
{
public:
    Sensitivities(const Layout &layout, const MeasurandTerms &terms, const run::Sample &sample,
                  std::span<const int> tubes)
        : m_index(layout, sample.dilution.size(), terms.calibration.size())
        , m_sample(sample)
        , m_tubes(tubes)
        , m_input(inputValues<Differential>(layout, m_index))
        , m_model(layout, terms, m_index, m_input)
    {
    }

    const InputIndex &index() const { return m_index; }

    double to(size_t input)
    {
        const Differential value = m_input[input];
        m_input[input] = boost::math::differentiation::make_fvar<double, 1>(static_cast<double>(value));
        const double sensitivity = m_model.result(m_tubes, m_sample).derivative(1);
        m_input[input] = value;
        return sensitivity;
    }

private:
    InputIndex m_index;
    const run::Sample &m_sample;
    std::span<const int> m_tubes;
    std::vector<Differential> m_input;
    Model<Differential> m_model;
};

/// Propagated uncertainty of all readings of these tubes, each reading independent of every other.
double propagatedReadings(Sensitivities &sensitivities, const MeasurandTerms &terms,
                          std::span<const int> tubes, double absorbanceUncertainty)
{
    double sumOfSquares = 0;
    for (const int tube : tubes) {
        for (const ReadingTerm &reading : terms.tubes[static_cast<size_t>(tube)].readings) {
            for (size_t i = 0; i < reading.weights.size(); ++i) {
                const double sensitivity = sensitivities.to(static_cast<size_t>(reading.first) + i);
                sumOfSquares += sensitivity * sensitivity;
            }
        }
    }
    return absorbanceUncertainty * std::sqrt(sumOfSquares);
}

/// Scatter of the calibration points about the line (n - 2 degrees of freedom), or of the standard's tubes
/// about their mean response (n - 1), as uncertainty of one point's signal; nothing with too few points.
std::optional<std::pair<double, double>> calibrationScatter(const Layout &layout, const MeasurandTerms &terms)
{
    const InputIndex index(layout, 0, terms.calibration.size());
    const std::vector<double> input = inputValues<double>(layout, index);
    const Model<double> model(layout, terms, index, input);
    const size_t n = terms.calibration.size();
    const size_t fitted = layout.run().calibration == run::Calibration::Line ? 2 : 1;
    if (n <= fitted)
        return std::nullopt;
    FittedLine<double> line{0, 0};
    if (fitted == 2)
        line = model.line();
    else
        line.slope = model.responsePerMg();
    double sumOfSquares = 0;
    for (size_t i = 0; i < n; ++i) {
        const double residual =
            model.calibrationSignal(i) - line.intercept - line.slope * terms.calibration[i].amount_mg;
        sumOfSquares += residual * residual;
    }
    const double degreesOfFreedom = static_cast<double>(n - fitted);
    return std::pair{std::sqrt(sumOfSquares / degreesOfFreedom), degreesOfFreedom};
}

UncertaintyTerm larger(const QString &name, double propagated, double observed, double degreesOfFreedom)
{
    return observed > propagated ? UncertaintyTerm{name, observed, degreesOfFreedom}
                                 : UncertaintyTerm{name, propagated, infinite};
}

UncertaintyTerm repeatability(Sensitivities &sensitivities, const MeasurandTerms &terms,
                              std::span<const int> tubes, std::span<const double> values,
                              double absorbanceUncertainty)
{
    const double propagated = propagatedReadings(sensitivities, terms, tubes, absorbanceUncertainty);
    const double n = static_cast<double>(values.size());
    const double observed = quality::standardDeviation(values).value_or(0) / std::sqrt(n);
    return larger(Term::tr("repeatability"), propagated, observed, n - 1);
}

UncertaintyTerm calibration(Sensitivities &sensitivities, const Layout &layout, const MeasurandTerms &terms,
                            double absorbanceUncertainty)
{
    std::vector<int> tubes;
    for (const CalibrationPoint &point : terms.calibration)
        tubes.push_back(point.tube);
    const double propagated = propagatedReadings(sensitivities, terms, tubes, absorbanceUncertainty);
    double observed = 0;
    double degreesOfFreedom = infinite;
    if (const auto scatter = calibrationScatter(layout, terms)) {
        double sumOfSquares = 0;
        for (size_t i = 0; i < terms.calibration.size(); ++i) {
            const double sensitivity = sensitivities.to(sensitivities.index().calibrationOffset + i);
            sumOfSquares += sensitivity * sensitivity;
        }
        observed = scatter->first * std::sqrt(sumOfSquares);
        degreesOfFreedom = scatter->second;
    }
    const QString name = layout.run().calibration == run::Calibration::Line ? Term::tr("calibration line")
                                                                            : Term::tr("standard");
    return larger(name, propagated, observed, degreesOfFreedom);
}

std::vector<int> sampleBlanksOf(const MeasurandTerms &terms, std::span<const int> tubes)
{
    std::vector<int> blanks;
    for (const int tube : tubes) {
        for (const int blank : terms.tubes[static_cast<size_t>(tube)].sampleBlanks) {
            if (std::ranges::find(blanks, blank) == blanks.end())
                blanks.push_back(blank);
        }
    }
    return blanks;
}

QString dilutionName(const run::DilutionStep &step, size_t number)
{
    return Term::tr("dilution step %1 (%2 mL to %3 mL)")
        .arg(number)
        .arg(plainText(step.take_mL), plainText(step.makeUpTo_mL));
}

} // namespace

std::vector<UncertaintyTerm> uncertaintyTerms(const Layout &layout, const MeasurandTerms &terms,
                                              const run::Sample &sample, std::span<const int> tubes,
                                              std::span<const double> values)
{
    const run::UncertaintyInputs &stated = *layout.run().uncertainty;
    Sensitivities sensitivities(layout, terms, sample, tubes);
    const InputIndex &index = sensitivities.index();

    std::vector<UncertaintyTerm> all;
    all.push_back(repeatability(sensitivities, terms, tubes, values, stated.absorbance));
    all.push_back({Term::tr("blank"),
                   propagatedReadings(sensitivities, terms, terms.blanks, stated.absorbance), infinite});
    all.push_back({Term::tr("sample blank"),
                   propagatedReadings(sensitivities, terms, sampleBlanksOf(terms, tubes), stated.absorbance),
                   infinite});
    if (layout.run().calibration != run::Calibration::Absorptivity)
        all.push_back(calibration(sensitivities, layout, terms, stated.absorbance));

    const auto addRelative = [&](const QString &name, size_t input, double percent) {
        all.push_back({name, std::abs(sensitivities.to(input)) * percent / 100, infinite});
    };
    addRelative(Term::tr("absorptivity"), index.absorptivity, stated.absorptivity_percent);
    addRelative(Term::tr("path length"), index.pathLength, stated.pathLength_percent);
    addRelative(Term::tr("total volume"), index.totalVolume, stated.totalVolume_percent);
    addRelative(Term::tr("sample volume"), index.sampleVolume, stated.sampleVolume_percent);
    for (size_t i = 0; i < sample.dilution.size(); ++i)
        addRelative(dilutionName(sample.dilution[i], i + 1), index.dilution + i, stated.dilution_percent);
    addRelative(Term::tr("extract"), index.extract, stated.extract_percent);

    // What cancels (the absorptivity under calibration by a standard) leaves rounding noise at most.
    const double negligible = 1e-12 * combinedStandardUncertainty(all);
    std::erase_if(all, [&](const UncertaintyTerm &term) { return term.standardUncertainty <= negligible; });
    return all;
}

} // namespace plateau::evaluation
