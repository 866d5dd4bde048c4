// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/standardrecipe.h"

#include <boost/math/differentiation/autodiff.hpp>

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <tuple>

namespace plateau::planning {

namespace {

struct Term {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::StandardRecipe)
};

enum Input : std::size_t { Mass, Purity, FlaskVolume, Filling, Temperature, Inputs };
template <class T> using InputValues = std::array<T, Inputs>;

/// Filling and temperature change the volume; taken at 0 where nothing is off.
template <class T> T strength_g_per_L(const run::Weighing &weighing, const InputValues<T> &input)
{
    const T volume_mL = input[FlaskVolume] + input[Filling] + input[Temperature];
    return run::preparedConcentration_g_per_L(weighing, input[Mass], input[Purity], volume_mL);
}

template <class T> InputValues<T> valuesOf(const run::Weighing &weighing)
{
    return {T(weighing.mass_mg), T(weighing.purity), T(weighing.flask_mL), T(0.0), T(0.0)};
}

double sensitivity(const run::Weighing &weighing, Input variable)
{
    using Differential = boost::math::differentiation::autodiff_fvar<double, 1>;
    InputValues<Differential> input = valuesOf<Differential>(weighing);
    input[variable] =
        boost::math::differentiation::make_fvar<double, 1>(static_cast<double>(input[variable]));
    return strength_g_per_L(weighing, input).derivative(1);
}

} // namespace

double rectangular(double halfWidth)
{
    return halfWidth / std::sqrt(3.0);
}

double triangular(double halfWidth)
{
    return halfWidth / std::sqrt(6.0);
}

double temperatureEffect_mL(double flask_mL, double halfWidth_C)
{
    constexpr double expansionOfWater_per_C = 2.1e-4;
    return rectangular(flask_mL * expansionOfWater_per_C * halfWidth_C);
}

double massToWeigh_mg(double wanted_g_per_L, const run::Weighing &weighing)
{
    run::Weighing ofOneMilligram = weighing;
    ofOneMilligram.mass_mg = 1;
    return wanted_g_per_L / run::preparedConcentration_g_per_L(ofOneMilligram);
}

StrengthMade strengthMade(const run::Weighing &weighing, const WeighingUncertainty &uncertainty)
{
    const std::array terms{std::tuple(Mass, Term::tr("mass"), uncertainty.mass_mg),
                           std::tuple(Purity, Term::tr("purity"), uncertainty.purity),
                           std::tuple(FlaskVolume, Term::tr("flask"), uncertainty.flask_mL),
                           std::tuple(Filling, Term::tr("filling to the mark"), uncertainty.filling_mL),
                           std::tuple(Temperature, Term::tr("temperature"), uncertainty.temperature_mL)};
    StrengthMade made;
    made.concentration_g_per_L = strength_g_per_L(weighing, valuesOf<double>(weighing));
    double variance = 0;
    for (const auto &[input, name, standardUncertainty] : terms) {
        const double part_g_per_L = std::abs(sensitivity(weighing, input)) * standardUncertainty;
        variance += part_g_per_L * part_g_per_L;
        if (part_g_per_L > 0)
            made.budget.push_back({name, part_g_per_L, 0});
    }
    made.standardUncertainty_g_per_L = std::sqrt(variance);
    for (StrengthTerm &term : made.budget)
        term.share = term.standardUncertainty_g_per_L * term.standardUncertainty_g_per_L / variance;
    std::ranges::stable_sort(made.budget, std::greater(), &StrengthTerm::standardUncertainty_g_per_L);
    return made;
}

} // namespace plateau::planning
