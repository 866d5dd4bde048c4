// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/standardmaking.h"

#include "core/planning/standardrecipe.h"

#include <cmath>

namespace plateau::sampledata {

using namespace Qt::StringLiterals;

namespace {

constexpr double weighing_u_mg = 0.08;
constexpr double flask_u_percent = 0.05;
constexpr int minutesToMake = 12;
constexpr double hour_ms = 3'600'000;

} // namespace

double FlaskOfStandard::trueStrengthAt_g_per_L(const QDateTime &when) const
{
    const double made = planning::standardOf(held).concentration_g_per_L;
    return made * std::pow(1 - trueLossPerHour, double(held.preparation.madeAt.msecsTo(when)) / hour_ms);
}

StandardMaking::Held &StandardMaking::substanceOf(const StandardRecipe &recipe, const QDateTime &now,
                                                  const QString &person)
{
    const auto found = m_held.find(recipe.substance);
    if (found != m_held.end() && *found->second.described.expires > now.date())
        return found->second;
    const bool renewed = found != m_held.end();
    planning::Substance substance;
    substance.name = recipe.substance;
    substance.supplier = recipe.supplier;
    substance.lot = u"%1%2"_s.arg(recipe.shortName.front()).arg(m_chance.whole(1000, 9999));
    substance.certificate = u"CA-%1"_s.arg(m_chance.whole(10000, 99999));
    substance.purity = recipe.purity;
    substance.purityHalfWidth = recipe.purityHalfWidth;
    substance.molarMass_g_per_mol = recipe.substanceMolarMass_g_per_mol;
    substance.expires = now.date().addYears(2);
    Held &held = m_held[recipe.substance];
    held.described = substance;
    if (renewed)
        m_notebook.standards().changeSubstance(held.substance, substance, person,
                                               u"the next container, with its own certificate"_s);
    else
        held.substance = m_notebook.standards().addSubstance(substance, person);
    return held;
}

void StandardMaking::make(Held &held, const StandardRecipe &recipe, const assay::Measurand &measurand,
                          QDateTime &now, const QString &person)
{
    planning::Preparation preparation;
    preparation.name = u"%1 %2"_s.arg(recipe.shortName, now.date().toString(Qt::ISODate));
    preparation.measurand = measurand.id;
    preparation.analyteMolarMass_g_per_mol = measurand.molarMass_g_per_mol;
    preparation.analytePerMolecule = recipe.analytePerMolecule;
    preparation.flask_mL = recipe.flask_mL;
    preparation.flask = u"flask %1 mL"_s.arg(recipe.flask_mL);
    preparation.flask_u_mL = recipe.flask_mL * flask_u_percent / 100;
    preparation.mass_u_mg = weighing_u_mg;
    preparation.masses_mg = {1};
    const double wanted_mg =
        planning::massToWeigh_mg(recipe.wanted_g_per_L, planning::weighingOf(held.described, preparation));
    preparation.masses_mg = {std::round(wanted_mg * m_chance.part(0.97, 1.03) * 10) / 10};
    preparation.lossPerHour = recipe.lossPerHour;
    preparation.madeAt = now;
    if (recipe.keeps_days > 0)
        preparation.useBy = now.addDays(recipe.keeps_days);
    now = now.addSecs(60 * minutesToMake);
    FlaskOfStandard flask;
    flask.held.of = held.described;
    flask.held.preparation = preparation;
    flask.held.id = m_notebook.standards().prepare(held.substance, preparation, person).value;
    flask.trueLossPerHour = recipe.trueLossPerHour;
    held.flask = flask;
}

const FlaskOfStandard &StandardMaking::take(const StandardRecipe &recipe, const assay::Measurand &measurand,
                                            QDateTime &now, const QString &person)
{
    Held &held = substanceOf(recipe, now, person);
    const auto isAlive = [&](const FlaskOfStandard &flask) {
        const planning::Preparation &preparation = flask.held.preparation;
        return recipe.keeps_days > 0 ? now.addSecs(6 * 3600) < *preparation.useBy
                                     : preparation.madeAt.date() == now.date();
    };
    if (!held.flask || !isAlive(*held.flask)) {
        if (held.flask)
            m_notebook.standards().discard({held.flask->held.id}, person,
                                           recipe.keeps_days > 0 ? u"past its days"_s : u"of another day"_s);
        make(held, recipe, measurand, now, person);
    }
    return *held.flask;
}

} // namespace plateau::sampledata
