// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/standardstock.h"

#include "core/assay/limits.h"
#include "core/planning/standardlife.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using assay::error;

namespace {

struct StandardStockWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::StandardStock)
};

constexpr std::size_t mostPortions = 20;
constexpr double roomWidth_C = 4;

void checkOptionalLabel(assay::Problems &problems, const QString &pointer, const QString &text,
                        const QString &what)
{
    if (!text.isEmpty())
        assay::checkLabel(problems, pointer, text, what);
}

void checkTimes(const Preparation &preparation, const QDateTime &now, assay::Problems &problems)
{
    if (!preparation.madeAt.isValid())
        problems.push_back(
            error(u"/madeAt"_s, StandardStockWording::tr("is not a time; say when it was made")));
    else if (preparation.madeAt > now)
        problems.push_back(
            error(u"/madeAt"_s, StandardStockWording::tr("is in the future; it must be in the past")));
    if (preparation.useBy && preparation.madeAt.isValid() && *preparation.useBy <= preparation.madeAt)
        problems.push_back(error(
            u"/useBy"_s,
            StandardStockWording::tr("is not after the time it was made; leave it out, or correct it")));
}

/// With what its life is reckoned from.
run::Standard losing(const Preparation &preparation)
{
    run::Standard standard;
    standard.preparedAt = preparation.madeAt;
    standard.lossPerHour = preparation.lossPerHour;
    return standard;
}

} // namespace

assay::Problems problemsOf(const Substance &substance)
{
    assay::Problems problems;
    assay::checkLabel(problems, u"/name"_s, substance.name, StandardStockWording::tr("the name"));
    checkOptionalLabel(problems, u"/supplier"_s, substance.supplier,
                       StandardStockWording::tr("the supplier"));
    checkOptionalLabel(problems, u"/lot"_s, substance.lot, StandardStockWording::tr("the lot"));
    checkOptionalLabel(problems, u"/certificate"_s, substance.certificate,
                       StandardStockWording::tr("the certificate"));
    assay::checkAbove(problems, u"/purity"_s, substance.purity, 0, 1, {});
    assay::checkWithin(problems, u"/purityHalfWidth"_s, substance.purityHalfWidth, 0, 1, {});
    assay::checkWithin(problems, u"/water"_s, substance.water, 0, 0.99, {});
    assay::checkWithin(problems, u"/waterHalfWidth"_s, substance.waterHalfWidth, 0, 1, {});
    assay::checkAbove(problems, u"/molarMass_g_per_mol"_s, substance.molarMass_g_per_mol, 0,
                      assay::limit::molarMass_g_per_mol, u"g/mol"_s);
    if (substance.density_g_per_mL)
        assay::checkAbove(problems, u"/density_g_per_mL"_s, *substance.density_g_per_mL, 0, 25, u"g/mL"_s);
    if (substance.expires && !substance.expires->isValid())
        problems.push_back(error(u"/expires"_s, StandardStockWording::tr("is not a real date")));
    return problems;
}

assay::Problems problemsOf(const Preparation &preparation, const QDateTime &now)
{
    assay::Problems problems;
    assay::checkLabel(problems, u"/name"_s, preparation.name, StandardStockWording::tr("the name"));
    assay::checkAbove(problems, u"/analyteMolarMass_g_per_mol"_s, preparation.analyteMolarMass_g_per_mol, 0,
                      assay::limit::molarMass_g_per_mol, u"g/mol"_s);
    assay::checkAbove(problems, u"/analytePerMolecule"_s, preparation.analytePerMolecule, 0, 100, {});
    if (preparation.masses_mg.empty() || preparation.masses_mg.size() > mostPortions)
        problems.push_back(
            error(u"/masses_mg"_s, StandardStockWording::tr("must be 1 to %1 masses").arg(mostPortions)));
    for (const double mass_mg : preparation.masses_mg)
        assay::checkAbove(problems, u"/masses_mg"_s, mass_mg, 0, 1000 * assay::limit::mass_g, u"mg"_s);
    assay::checkWithin(problems, u"/mass_u_mg"_s, preparation.mass_u_mg, 0, 10000, u"mg"_s);
    assay::checkAbove(problems, u"/flask_mL"_s, preparation.flask_mL, 0, assay::limit::flaskVolume_mL,
                      u"mL"_s);
    checkOptionalLabel(problems, u"/flask"_s, preparation.flask, StandardStockWording::tr("the flask"));
    assay::checkWithin(problems, u"/flask_u_mL"_s, preparation.flask_u_mL, 0, preparation.flask_mL, u"mL"_s);
    if (!(preparation.lossPerHour >= 0 && preparation.lossPerHour < 1))
        problems.push_back(
            error(u"/lossPerHour"_s, StandardStockWording::tr("must be 0 % or more and less than 100 %")));
    checkTimes(preparation, now, problems);
    assay::checkProse(problems, u"/note"_s, preparation.note, StandardStockWording::tr("the note"));
    return problems;
}

run::Weighing weighingOf(const Substance &substance, const Preparation &preparation)
{
    run::Weighing weighing;
    weighing.mass_mg = std::accumulate(preparation.masses_mg.begin(), preparation.masses_mg.end(), 0.0);
    weighing.purity = substance.purity * (1 - substance.water);
    weighing.substanceMolarMass_g_per_mol = substance.molarMass_g_per_mol;
    weighing.analyteMolarMass_g_per_mol = preparation.analyteMolarMass_g_per_mol;
    weighing.analytePerMolecule = preparation.analytePerMolecule;
    weighing.flask_mL = preparation.flask_mL;
    return weighing;
}

StrengthMade strengthOf(const Substance &substance, const Preparation &preparation)
{
    WeighingUncertainty uncertainty;
    uncertainty.mass_mg =
        preparation.mass_u_mg * std::sqrt(static_cast<double>(preparation.masses_mg.size()));
    uncertainty.purity = std::hypot((1 - substance.water) * rectangular(substance.purityHalfWidth),
                                    substance.purity * rectangular(substance.waterHalfWidth));
    uncertainty.flask_mL = preparation.flask_u_mL;
    uncertainty.temperature_mL = temperatureEffect_mL(preparation.flask_mL, roomWidth_C);
    return strengthMade(weighingOf(substance, preparation), uncertainty);
}

double strengthAt_g_per_L(double made_g_per_L, const Preparation &preparation, const QDateTime &when)
{
    constexpr double ms_per_h = 3'600'000;
    const double age_h = std::max(0.0, static_cast<double>(preparation.madeAt.msecsTo(when)) / ms_per_h);
    return made_g_per_L * std::pow(1 - preparation.lossPerHour, age_h);
}

std::optional<QDateTime> goodUntil(const Preparation &preparation, const evaluation::Rules &rules)
{
    const std::optional<QDateTime> byLoss = useStandardBy(losing(preparation), rules);
    if (!byLoss || !preparation.useBy)
        return byLoss ? byLoss : preparation.useBy;
    return std::min(*byLoss, *preparation.useBy);
}

std::optional<StandardLimit> limitOf(const Preparation &preparation, const evaluation::Rules &rules)
{
    const std::optional<QDateTime> last = goodUntil(preparation, rules);
    if (!last)
        return std::nullopt;
    if (last == preparation.useBy)
        return StandardLimit::OwnRule;
    return standardLife_h(losing(preparation), rules) < rules.maxStandardAge_h ? StandardLimit::Loss
                                                                               : StandardLimit::Age;
}

bool isAlive(const HeldPreparation &held, const QDateTime &now)
{
    const auto last = goodUntil(held.preparation);
    return !held.discarded && (!last || now <= *last);
}

run::Standard standardOf(const HeldPreparation &held)
{
    const StrengthMade made = strengthOf(held.of, held.preparation);
    run::Standard standard;
    standard.id = held.preparation.name;
    standard.concentration_g_per_L = made.concentration_g_per_L;
    standard.measurand = held.preparation.measurand;
    standard.preparedAt = held.preparation.madeAt;
    standard.lossPerHour = held.preparation.lossPerHour;
    if (made.concentration_g_per_L > 0)
        standard.uncertainty_percent = 100 * made.standardUncertainty_g_per_L / made.concentration_g_per_L;
    return standard;
}

bool isStandardOf(const HeldPreparation &held, const run::Standard &standard)
{
    if (standard.id.trimmed().compare(held.preparation.name.trimmed(), Qt::CaseInsensitive) != 0)
        return false;
    constexpr qint64 minute_s = 60;
    return !standard.preparedAt || std::abs(held.preparation.madeAt.secsTo(*standard.preparedAt)) < minute_s;
}

} // namespace plateau::planning
