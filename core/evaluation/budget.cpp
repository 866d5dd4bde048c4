// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/uncertainty.h"

#include "core/evaluation/format.h"
#include "core/evaluation/model.h"
#include "core/evaluation/sensitivities.h"
#include "core/quality/statistics.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <utility>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

constexpr double infinitelyMany = std::numeric_limits<double>::infinity();

struct Term {
    Q_DECLARE_TR_FUNCTIONS(plateau::evaluation::Budget)
};

/// Propagated uncertainty of all readings that the parts take from these tubes, each reading independent of
/// every other. tubesOf: tubes of a part.
template <class TubesOf> double propagatedReadings(JointSensitivities &sensitivities, TubesOf tubesOf)
{
    const RunShare &share = sensitivities.share();
    std::vector<bool> taken(share.layout->absorbances().size());
    double sumOfSquares = 0;
    for (const Contribution &part : share.contributions) {
        for (const int tube : tubesOf(part)) {
            for (const ReadingTerm &reading : part.terms->tubes[static_cast<size_t>(tube)].readings) {
                for (size_t i = 0; i < reading.weights.size(); ++i) {
                    const size_t input = static_cast<size_t>(reading.first) + i;
                    if (taken[input])
                        continue;
                    taken[input] = true;
                    const double sensitivity = sensitivities.to(input);
                    sumOfSquares += sensitivity * sensitivity;
                }
            }
        }
    }
    return share.layout->run().uncertainty->absorbance * std::sqrt(sumOfSquares);
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
                                 : UncertaintyTerm{name, propagated, infinitelyMany};
}

/// What each tube alone would give: of the tubes that all parts rest on.
std::vector<double> valuesByTube(const RunShare &share)
{
    const Contribution &first = share.contributions.front();
    std::vector<double> values;
    for (const int tube : first.tubes) {
        double sum = 0;
        const bool inAll = std::ranges::all_of(share.contributions, [&](const Contribution &part) {
            const auto found = std::ranges::find(part.tubes, tube);
            if (found == part.tubes.end())
                return false;
            sum += part.factor * part.values[static_cast<size_t>(found - part.tubes.begin())];
            return true;
        });
        if (inAll)
            values.push_back(sum);
    }
    return values;
}

UncertaintyTerm repeatability(JointSensitivities &sensitivities)
{
    const double propagated =
        propagatedReadings(sensitivities, [](const Contribution &part) { return part.tubes; });
    const std::vector<double> values = valuesByTube(sensitivities.share());
    const double n = static_cast<double>(values.size());
    const double observed =
        values.empty() ? 0 : quality::standardDeviation(values).value_or(0) / std::sqrt(n);
    return larger(repeatabilityName(), propagated, observed, n - 1);
}

/// What the scatter of the calibration makes of the result, of each part that has enough points.
std::vector<UncertaintyTerm> scatters(JointSensitivities &sensitivities)
{
    const RunShare &share = sensitivities.share();
    std::vector<UncertaintyTerm> terms;
    for (size_t part = 0; part < share.contributions.size(); ++part) {
        const Contribution &contribution = share.contributions[part];
        const auto scatter = calibrationScatter(*share.layout, *contribution.terms);
        if (!scatter)
            continue;
        Sensitivities &own = sensitivities.part(part);
        double sumOfSquares = 0;
        for (size_t i = 0; i < contribution.terms->calibration.size(); ++i) {
            const double sensitivity = own.to(own.index().calibrationOffset + i);
            sumOfSquares += sensitivity * sensitivity;
        }
        terms.push_back(
            {{}, std::abs(contribution.factor) * scatter->first * std::sqrt(sumOfSquares), scatter->second});
    }
    return terms;
}

UncertaintyTerm calibration(JointSensitivities &sensitivities)
{
    const double propagated = propagatedReadings(sensitivities, [](const Contribution &part) {
        std::vector<int> tubes;
        for (const CalibrationPoint &point : part.terms->calibration)
            tubes.push_back(point.tube);
        return tubes;
    });
    UncertaintyTerm observed{{}, 0, infinitelyMany};
    const std::vector<UncertaintyTerm> parts = scatters(sensitivities);
    if (parts.size() == 1)
        observed = parts.front();
    else if (!parts.empty())
        observed = {{}, combinedStandardUncertainty(parts), effectiveDegreesOfFreedom(parts)};
    const bool line = sensitivities.share().layout->run().calibration == run::Calibration::Line;
    return larger(line ? Term::tr("calibration line") : Term::tr("standard"), propagated,
                  observed.standardUncertainty, observed.degreesOfFreedom);
}

std::vector<int> sampleBlanksOf(const Contribution &part)
{
    std::vector<int> blanks;
    for (const int tube : part.tubes) {
        for (const int blank : part.terms->tubes[static_cast<size_t>(tube)].sampleBlanks) {
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

/// What the concentrations of the standards are off by. Those that hold the same come from one stock: they
/// are off together, each by its own part.
std::vector<UncertaintyTerm> standardConcentrations(JointSensitivities &sensitivities)
{
    const std::vector<run::Standard> &standards = sensitivities.share().layout->run().standards;
    std::map<QString, double> byContent;
    for (size_t i = 0; i < standards.size(); ++i) {
        if (const double percent = standards[i].uncertainty_percent.value_or(0); percent > 0)
            byContent[standards[i].measurand] +=
                sensitivities.to(sensitivities.index().standard + i) * percent / 100;
    }
    std::vector<UncertaintyTerm> terms;
    for (const auto &[content, uncertainty] : byContent) {
        const QString name = content.isEmpty() || byContent.size() == 1
                                 ? Term::tr("concentration of the standard")
                                 : Term::tr("concentration of the standard (%1)").arg(content);
        terms.push_back({name, std::abs(uncertainty), infinitelyMany});
    }
    return terms;
}

/// A run's part of the budget. The absorptivity stands apart, with its sign: another run may share it.
struct ShareBudget {
    std::vector<UncertaintyTerm> before;
    double absorptivity = 0;
    std::vector<UncertaintyTerm> after;
};

ShareBudget budgetOf(const RunShare &share)
{
    const run::UncertaintyInputs &stated = *share.layout->run().uncertainty;
    JointSensitivities sensitivities(share);
    const InputIndex &index = sensitivities.index();
    const auto relative = [&](size_t input, double percent) {
        return sensitivities.to(input) * percent / 100;
    };

    ShareBudget budget;
    budget.before.push_back(repeatability(sensitivities));
    budget.before.push_back(
        {Term::tr("blank"),
         propagatedReadings(sensitivities, [](const Contribution &part) { return part.terms->blanks; }),
         infinitelyMany});
    budget.before.push_back(
        {Term::tr("sample blank"), propagatedReadings(sensitivities, sampleBlanksOf), infinitelyMany});
    if (share.layout->run().calibration != run::Calibration::Absorptivity) {
        budget.before.push_back(calibration(sensitivities));
        for (UncertaintyTerm &term : standardConcentrations(sensitivities))
            budget.before.push_back(std::move(term));
    }
    budget.absorptivity = relative(index.absorptivity, stated.absorptivity_percent);

    const auto addRelative = [&](const QString &name, size_t input, double percent) {
        budget.after.push_back({name, std::abs(relative(input, percent)), infinitelyMany});
    };
    addRelative(Term::tr("path length"), index.pathLength, stated.pathLength_percent);
    addRelative(Term::tr("total volume"), index.totalVolume, stated.totalVolume_percent);
    addRelative(Term::tr("sample volume"), index.sampleVolume, stated.sampleVolume_percent);
    const std::vector<run::DilutionStep> &steps = share.sample->dilution;
    for (size_t i = 0; i < steps.size(); ++i)
        addRelative(dilutionName(steps[i], i + 1), index.dilution + i,
                    steps[i].uncertainty_percent.value_or(stated.dilution_percent));
    addRelative(Term::tr("extract"), index.extract, stated.extract_percent);
    return budget;
}

/// The same constant of nature, taken from the same place.
bool shareAbsorptivity(const Layout &one, const Layout &other)
{
    const auto wavelength_nm = [](const Layout &layout) {
        return layout.run().wavelength_nm.value_or(layout.method().wavelength_nm);
    };
    return one.method().chromophore == other.method().chromophore &&
           wavelength_nm(one) == wavelength_nm(other) &&
           assay::absorptivity(one.method(), wavelength_nm(one)) ==
               assay::absorptivity(other.method(), wavelength_nm(other));
}

/// Adds up the signed absorptivity terms of runs that share it, at the place of the first of them.
void joinAbsorptivities(std::span<const RunShare> shares, std::vector<ShareBudget> &budgets)
{
    for (size_t i = 0; i < shares.size(); ++i) {
        for (size_t j = i + 1; j < shares.size(); ++j) {
            if (shareAbsorptivity(*shares[i].layout, *shares[j].layout))
                budgets[i].absorptivity += std::exchange(budgets[j].absorptivity, 0);
        }
    }
}

} // namespace

QString repeatabilityName()
{
    return Term::tr("repeatability");
}

std::vector<UncertaintyTerm> uncertaintyTerms(std::span<const RunShare> shares)
{
    std::vector<ShareBudget> budgets;
    for (const RunShare &share : shares)
        budgets.push_back(budgetOf(share));
    joinAbsorptivities(shares, budgets);
    const bool severalAbsorptivities =
        std::ranges::count_if(budgets, [](const ShareBudget &b) { return b.absorptivity != 0; }) > 1;

    std::vector<UncertaintyTerm> all;
    for (size_t i = 0; i < shares.size(); ++i) {
        const auto add = [&](const std::vector<UncertaintyTerm> &terms) {
            for (const UncertaintyTerm &term : terms) {
                all.push_back(term);
                if (shares.size() > 1)
                    all.back().term = u"%1: %2"_s.arg(shares[i].layout->method().id, term.term);
            }
        };
        add(budgets[i].before);
        const UncertaintyTerm absorptivity{Term::tr("absorptivity"), std::abs(budgets[i].absorptivity),
                                           infinitelyMany};
        if (severalAbsorptivities)
            add({absorptivity});
        else
            all.push_back(absorptivity);
        add(budgets[i].after);
    }

    // What cancels (the absorptivity under calibration by a standard) leaves rounding noise at most.
    const double negligible = 1e-12 * combinedStandardUncertainty(all);
    std::erase_if(all, [&](const UncertaintyTerm &term) { return term.standardUncertainty <= negligible; });
    return all;
}

} // namespace plateau::evaluation
