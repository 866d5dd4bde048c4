// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/reportunit.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

struct ReportUnitWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::evaluation::ReportUnit)
};

/// How many of the unit one unit of the evaluation (g/L, g/100 g) is.
double perEvaluationUnit(ReportUnit unit, double molarMass_g_per_mol)
{
    switch (unit) {
    case ReportUnit::GramPerLitre:
    case ReportUnit::GramPer100g:
        break;
    case ReportUnit::MilligramPerLitre:
        return 1000;
    case ReportUnit::MillimolPerLitre:
        return 1000 / molarMass_g_per_mol;
    case ReportUnit::MilligramPer100mL:
        return 100;
    case ReportUnit::GramPerKilogram:
        return 10;
    case ReportUnit::MilligramPerKilogram:
        return 10000;
    }
    return 1;
}

QString densityObstacle(ReportUnit from, ReportUnit to)
{
    const QString sentence =
        formOf(from) == run::Form::Liquid
            ? ReportUnitWording::tr("a result in %1 cannot be given in %2 without the density, which "
                                    "nobody stated; choose a unit per volume")
            : ReportUnitWording::tr("a result in %1 cannot be given in %2 without the density, which "
                                    "nobody stated; choose a unit per mass");
    return sentence.arg(reportUnitWord(from), reportUnitWord(to));
}

std::optional<double> times(const std::optional<double> &number, double factor)
{
    return number ? std::optional(*number * factor) : std::nullopt;
}

Reported asEvaluated(const Result &result, ReportUnit unit)
{
    return {result.value,
            result.expandedUncertainty,
            result.coverageFactor,
            result.degreesOfFreedom,
            result.lessThan,
            result.greaterThan,
            unit};
}

const assay::Method *methodOf(const assay::DerivedTerm &term, const assay::Method &method,
                              std::span<const assay::Method> others)
{
    if (term.method.isEmpty() || term.method == method.id)
        return &method;
    const auto found = std::ranges::find(others, term.method, &assay::Method::id);
    return found == others.end() ? nullptr : &*found;
}

} // namespace

const std::vector<ReportUnit> &reportUnits()
{
    static const std::vector<ReportUnit> all{ReportUnit::GramPerLitre,        ReportUnit::MilligramPerLitre,
                                             ReportUnit::MillimolPerLitre,    ReportUnit::MilligramPer100mL,
                                             ReportUnit::GramPer100g,         ReportUnit::GramPerKilogram,
                                             ReportUnit::MilligramPerKilogram};
    return all;
}

QString reportUnitWord(ReportUnit unit)
{
    switch (unit) {
    case ReportUnit::GramPerLitre:
        return u"g/L"_s;
    case ReportUnit::MilligramPerLitre:
        return u"mg/L"_s;
    case ReportUnit::MillimolPerLitre:
        return u"mmol/L"_s;
    case ReportUnit::MilligramPer100mL:
        return u"mg/100 mL"_s;
    case ReportUnit::GramPer100g:
        return u"g/100 g"_s;
    case ReportUnit::GramPerKilogram:
        return u"g/kg"_s;
    case ReportUnit::MilligramPerKilogram:
        break;
    }
    return u"mg/kg"_s;
}

std::optional<ReportUnit> reportUnitFromWord(const QString &word)
{
    const QString plain = word.simplified(); // a no-break space is a space to it
    for (const ReportUnit unit : reportUnits()) {
        if (reportUnitWord(unit) == plain)
            return unit;
    }
    return std::nullopt;
}

run::Form formOf(ReportUnit unit)
{
    switch (unit) {
    case ReportUnit::GramPerLitre:
    case ReportUnit::MilligramPerLitre:
    case ReportUnit::MillimolPerLitre:
    case ReportUnit::MilligramPer100mL:
        return run::Form::Liquid;
    case ReportUnit::GramPer100g:
    case ReportUnit::GramPerKilogram:
    case ReportUnit::MilligramPerKilogram:
        break;
    }
    return run::Form::Solid;
}

run::Form formOf(const QString &unitWord)
{
    return formOf(reportUnitFromWord(unitWord).value_or(ReportUnit::GramPerLitre));
}

ReportUnit evaluationUnit(run::Form form)
{
    return form == run::Form::Liquid ? ReportUnit::GramPerLitre : ReportUnit::GramPer100g;
}

std::vector<ReportUnit> unitsFor(run::Form form, bool molarMassKnown)
{
    std::vector<ReportUnit> fitting;
    for (const ReportUnit unit : reportUnits()) {
        if (formOf(unit) == form && (molarMassKnown || unit != ReportUnit::MillimolPerLitre))
            fitting.push_back(unit);
    }
    return fitting;
}

std::optional<double> standardUncertainty(const Reported &reported)
{
    if (!reported.expandedUncertainty || !reported.coverageFactor)
        return std::nullopt;
    return *reported.expandedUncertainty / *reported.coverageFactor;
}

QString reportedText(const Reported &reported)
{
    const QString unit = reportUnitWord(reported.unit);
    QStringList bounds;
    if (reported.greaterThan)
        bounds.append(u"> "_s + withUnit(lowerBoundText(*reported.greaterThan, 3), unit));
    if (reported.lessThan)
        bounds.append(u"< "_s + withUnit(upperBoundText(*reported.lessThan, 2), unit));
    if (!bounds.isEmpty())
        return bounds.join(u", "_s);
    if (!reported.value)
        return ReportUnitWording::tr("no value");
    const QString value = valueText(*reported.value, reported.expandedUncertainty);
    if (!reported.expandedUncertainty)
        return withUnit(value, unit);
    return withUnit(u"%1 \u00b1 %2"_s.arg(value, uncertaintyText(*reported.expandedUncertainty)), unit);
}

Converted<double> conversionFactor(ReportUnit from, ReportUnit to, std::optional<double> molarMass_g_per_mol)
{
    if (from == to)
        return {1.0, {}};
    if (formOf(from) != formOf(to))
        return {std::nullopt, densityObstacle(from, to)};
    const bool molar = from == ReportUnit::MillimolPerLitre || to == ReportUnit::MillimolPerLitre;
    if (molar && !(molarMass_g_per_mol && *molarMass_g_per_mol > 0))
        return {std::nullopt,
                ReportUnitWording::tr("a result in %1 cannot be given in %2, because what is measured has no "
                                      "molar mass of its own; choose a unit of mass")
                    .arg(reportUnitWord(from), reportUnitWord(to))};
    const double molarMass = molarMass_g_per_mol.value_or(1);
    return {perEvaluationUnit(to, molarMass) / perEvaluationUnit(from, molarMass), {}};
}

std::optional<double> molarMassOf(const QString &measurand, const assay::Method &method,
                                  std::span<const assay::Method> others)
{
    if (const assay::Measurand *measured = assay::findMeasurand(method, measurand))
        return measured->molarMass_g_per_mol;
    const auto derived = std::ranges::find(method.derived, measurand, &assay::Derived::id);
    if (derived == method.derived.end())
        return std::nullopt;
    std::optional<double> common;
    for (const assay::DerivedTerm &term : derived->terms) {
        const assay::Method *from = methodOf(term, method, others);
        const assay::Measurand *measured = from ? assay::findMeasurand(*from, term.measurand) : nullptr;
        if (!measured || std::abs(term.factor) != 1)
            return std::nullopt;
        if (common && *common != measured->molarMass_g_per_mol)
            return std::nullopt;
        common = measured->molarMass_g_per_mol;
    }
    return common;
}

Converted<Reported> reportedAs(const Reported &reported, ReportUnit unit,
                               std::optional<double> molarMass_g_per_mol)
{
    if (!reported.value && !reported.lessThan && !reported.greaterThan)
        return {std::nullopt,
                ReportUnitWording::tr("there is no value to report yet; complete the readings first")};
    const Converted<double> factor = conversionFactor(reported.unit, unit, molarMass_g_per_mol);
    if (!factor.value)
        return {std::nullopt, factor.obstacle};
    Reported converted = reported;
    converted.value = times(reported.value, *factor.value);
    converted.expandedUncertainty = times(reported.expandedUncertainty, *factor.value);
    converted.lessThan = times(reported.lessThan, *factor.value);
    converted.greaterThan = times(reported.greaterThan, *factor.value);
    converted.unit = unit;
    return {converted, {}};
}

Converted<Reported> reportedAs(const Result &result, const assay::Method &method, ReportUnit unit,
                               std::span<const assay::Method> others)
{
    const std::optional<ReportUnit> own = reportUnitFromWord(result.unit);
    if (!own)
        return {std::nullopt, ReportUnitWording::tr("a result in \"%1\" cannot be given in %2")
                                  .arg(result.unit, reportUnitWord(unit))};
    return reportedAs(asEvaluated(result, *own), unit, molarMassOf(result.measurand, method, others));
}

} // namespace plateau::evaluation
