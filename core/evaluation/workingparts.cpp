// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/workingparts.h"

#include "core/assay/listed.h"
#include "core/evaluation/checks.h"
#include "core/evaluation/format.h"
#include "core/quality/line.h"
#include "core/quality/statistics.h"
#include "core/run/volumes.h"

#include <QCoreApplication>

#include <cmath>
#include <functional>
#include <limits>
#include <utility>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

struct WorkingpartsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::evaluation::Working)
};

/// A term's symbol: c1, c2 …
QString termSymbol(size_t number)
{
    return u"c%1"_s.arg(number + 1);
}

QString factorText(double factor)
{
    return plainText(std::abs(factor)) == u"1"_s ? QString() : figures(std::abs(factor)) + u" x "_s;
}

QString inSum(double value)
{
    return value < 0 ? u"(%1)"_s.arg(figures(value)) : figures(value);
}

/// factor x term, added up; in symbols or in numbers.
QString sumText(const std::vector<ResultTerm> &terms, const std::function<QString(size_t)> &termText)
{
    QString sum;
    for (size_t i = 0; i < terms.size(); ++i) {
        const bool negative = terms[i].factor < 0;
        if (i == 0)
            sum = negative ? u"-"_s : QString();
        else
            sum += negative ? u" - "_s : u" + "_s;
        sum += factorText(terms[i].factor) + termText(i);
    }
    return sum;
}

} // namespace

QString readText(double absorbance)
{
    const QString keyed = plainText(absorbance);
    const QString shown = absorbanceText(absorbance);
    return keyed.size() > shown.size() ? keyed : shown;
}

QString figures(double value)
{
    constexpr int workingFigures = 5;
    return significantText(value, workingFigures);
}

/// So many effective degrees of freedom are as good as no end of them.
constexpr double many = 30;

QString coverageFormula(const Result &result)
{
    const double degrees = result.degreesOfFreedom.value_or(std::numeric_limits<double>::infinity());
    if (degrees >= many)
        return WorkingpartsWords::tr("2, for 30 or more effective degrees of freedom");
    return WorkingpartsWords::tr("t at 95.45 % for %1 effective degrees of freedom")
        .arg(significantText(degrees, 3));
}

void addExtrapolation(const run::Tube &tube, const QString &reading, std::size_t points, const QString &value,
                      std::vector<WorkingLine> &lines)
{
    const auto *series = std::get_if<run::ReadingSeries>(&tube.readings.at(reading));
    if (!series || series->size() < points)
        return;
    std::vector<double> times_min;
    std::vector<double> absorbances;
    QStringList read;
    for (std::size_t i = series->size() - points; i < series->size(); ++i) {
        const run::TimedAbsorbance &point = (*series)[i];
        times_min.push_back(point.at_min);
        absorbances.push_back(point.absorbance);
        read << WorkingpartsWords::tr("%1 at %2 min").arg(readText(point.absorbance), figures(point.at_min));
    }
    const auto line = quality::fitLine(times_min, absorbances);
    if (!line)
        return;
    lines.push_back({WorkingpartsWords::tr("%1 as read").arg(reading),
                     WorkingpartsWords::tr("the last %1 readings, t in min after the starter").arg(points),
                     assay::listed(read), {}});
    lines.push_back({WorkingpartsWords::tr("slope b of %1").arg(reading),
                     WorkingpartsWords::tr("straight line by least squares: sum of (t - mean t) (A - mean A) / sum of (t - mean t)²"),
                     {}, withUnit(figures(line->slope), WorkingpartsWords::tr("per min"))});
    lines.push_back({WorkingpartsWords::tr("%1 at the addition of the starter").arg(reading),
                     WorkingpartsWords::tr("the line at 0 min: mean A - b x mean t"),
                     u"%1 - (%2) x %3"_s.arg(figures(*quality::mean(absorbances)), figures(line->slope),
                                           figures(*quality::mean(times_min))),
                     value});
}

WorkingSection uncertaintySection(const Result &result)
{
    WorkingSection section{WorkingpartsWords::tr("Uncertainty"), {}};
    QStringList squares;
    for (const BudgetTerm &budget : result.budget) {
        section.lines.push_back({budget.term,
                                 WorkingpartsWords::tr("standard uncertainty"),
                                 {},
                                 withUnit(significantText(budget.standardUncertainty, 3), result.unit)});
        squares.append(significantText(budget.standardUncertainty, 3) + u"²"_s);
    }
    const double degrees = result.degreesOfFreedom.value_or(std::numeric_limits<double>::infinity());
    const bool isMany = degrees >= many;
    section.lines.push_back({WorkingpartsWords::tr("coverage factor k"),
                             isMany ? u"2"_s : WorkingpartsWords::tr("t(95.45 %, ν)"),
                             isMany ? u"ν ≥ %1"_s.arg(many) : u"ν = %1"_s.arg(significantText(degrees, 3)),
                             significantText(*result.coverageFactor, 3)});
    section.lines.push_back(
        {WorkingpartsWords::tr("expanded uncertainty U"),
         WorkingpartsWords::tr("k x root of the sum of squares"),
         u"%1 x √(%2)"_s.arg(significantText(*result.coverageFactor, 3), squares.join(u" + "_s)),
         withUnit(significantText(*result.expandedUncertainty, 3), result.unit)});
    return section;
}

WorkingSection symbolSection(run::Calibration calibration, const run::Sample &sample, const Result &result)
{
    WorkingSection section{WorkingpartsWords::tr("Symbols"), {}};
    const auto add = [&](const QString &symbol, const QString &meaning, const QString &unit) {
        section.lines.push_back({symbol, meaning, {}, unit});
    };
    const QString none = WorkingpartsWords::tr("no unit");
    add(u"dA"_s, WorkingpartsWords::tr("net signal, a difference of absorbances"), none);
    add(u"v"_s, WorkingpartsWords::tr("sample volume in the tube"), u"mL"_s);
    if (calibration == run::Calibration::Absorptivity) {
        add(u"V"_s, WorkingpartsWords::tr("volume of the tube at the later reading"), u"mL"_s);
        add(u"M"_s, WorkingpartsWords::tr("molar mass"), u"g/mol"_s);
        add(u"e"_s, WorkingpartsWords::tr("molar absorptivity"), u"L/(mol cm)"_s);
        add(u"d"_s, WorkingpartsWords::tr("path length"), u"cm"_s);
        add(u"n"_s, WorkingpartsWords::tr("chromophore molecules formed or used per molecule"), none);
    }
    if (!sample.dilution.empty() || sample.form == run::Form::Solid)
        add(u"F"_s, WorkingpartsWords::tr("dilution factor, made up to / taken"), none);
    add(u"N"_s, WorkingpartsWords::tr("number of tubes in the mean"), none);
    if (result.expandedUncertainty)
        add(u"k"_s, WorkingpartsWords::tr("coverage factor"), none);
    if (result.expandedUncertainty)
        add(u"ν"_s, WorkingpartsWords::tr("effective degrees of freedom (Welch-Satterthwaite)"), none);
    return section;
}

void addBound(const Result &result, WorkingSection &section)
{
    if (result.lessThan)
        section.lines.push_back({WorkingpartsWords::tr("to be reported"),
                                 WorkingpartsWords::tr("less than"),
                                 {},
                                 u"< "_s + withUnit(upperBoundText(*result.lessThan, 2), result.unit)});
    else if (result.greaterThan)
        section.lines.push_back({WorkingpartsWords::tr("to be reported"),
                                 WorkingpartsWords::tr("more than: a reagent was used up"),
                                 {},
                                 u"> "_s + withUnit(lowerBoundText(*result.greaterThan, 3), result.unit)});
}

void addPipetted(const assay::Method &method, const run::Run &run, int tube, std::vector<WorkingLine> &lines)
{
    const run::Tube &content = run.tubes[static_cast<size_t>(tube)];
    const std::vector<run::Addition> planned = run::plannedAdditions(method, content);
    const std::vector<run::Addition> made = run::additions(method, content);
    for (size_t i = 0; i < made.size(); ++i) {
        if (made[i].volume_mL == planned[i].volume_mL)
            continue;
        const QString name = assay::findComponent(method, made[i].component)->name;
        lines.push_back({WorkingpartsWords::tr("volume of %1 in %2").arg(name, tubeName(tube)),
                         WorkingpartsWords::tr("as pipetted, planned %1")
                             .arg(withUnit(plainText(planned[i].volume_mL), u"mL"_s)),
                         {},
                         withUnit(plainText(made[i].volume_mL), u"mL"_s)});
    }
}

std::vector<WorkingSection> derivedWorking(const Result &result)
{
    if (!result.value)
        return {};
    WorkingSection found{WorkingpartsWords::tr("Results it comes from"), {}};
    for (size_t i = 0; i < result.terms.size(); ++i) {
        const ResultTerm &term = result.terms[i];
        found.lines.push_back(
            {u"%1: %2"_s.arg(termSymbol(i), term.measurand),
             WorkingpartsWords::tr("method %1, version %2").arg(term.method).arg(term.methodVersion),
             {},
             withUnit(figures(*term.value), result.unit)});
    }
    WorkingSection sum{WorkingpartsWords::tr("Result"), {}};
    sum.lines.push_back({result.measurand, sumText(result.terms, termSymbol),
                         sumText(result.terms, [&](size_t i) { return inSum(*result.terms[i].value); }),
                         withUnit(figures(*result.value), result.unit)});
    addBound(result, sum);
    std::vector<WorkingSection> sections{std::move(found), std::move(sum)};
    if (result.expandedUncertainty)
        sections.push_back(uncertaintySection(result));
    return sections;
}

} // namespace plateau::evaluation
