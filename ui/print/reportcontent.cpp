// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/reportcontent.h"

#include "core/exchange/contenthash.h"
#include "core/run/runcode.h"

#include <algorithm>

namespace plateau::ui {

ReportContent reportOf(const assay::Method &method, const run::Run &run,
                       const std::vector<evaluation::Companion> &companions)
{
    ReportContent content;
    content.method = method;
    content.run = run;
    content.evaluation = evaluation::evaluate(method, run, content.rules, companions);
    for (const evaluation::Companion &companion : companions)
        content.companions.push_back({companion.method,
                                      companion.run,
                                      evaluation::evaluate(companion.method, companion.run, content.rules),
                                      {},
                                      {}});
    content.runCode = run::runCode(run, method.version);
    content.contentHash = exchange::runContentHash(run, method);
    return content;
}

ReportState stateOf(const ReportContent &content)
{
    return content.record ? content.record->state : ReportState::Draft;
}

const ReportDecision *decisionOf(const ReportContent &content)
{
    if (!content.record || content.record->decisions.empty() ||
        content.record->decisions.back().takenBack.has_value())
        return nullptr;
    return &content.record->decisions.back();
}

const ReportedResult *reportedAs(const ReportContent &content, const evaluation::Result &result)
{
    const auto found = std::ranges::find_if(content.reported, [&](const ReportedResult &reported) {
        return reported.sample == result.sample && reported.measurand == result.measurand;
    });
    return found == content.reported.end() ? nullptr : &*found;
}

namespace {

/// What reportedAs() does not refuse, or the result as it is.
evaluation::Reported asItIs(const evaluation::Result &result)
{
    evaluation::Reported reported;
    reported.value = result.value;
    reported.expandedUncertainty = result.expandedUncertainty;
    reported.coverageFactor = result.coverageFactor;
    reported.degreesOfFreedom = result.degreesOfFreedom;
    reported.lessThan = result.lessThan;
    reported.greaterThan = result.greaterThan;
    reported.unit =
        evaluation::reportUnitFromWord(result.unit).value_or(evaluation::ReportUnit::GramPerLitre);
    return reported;
}

std::vector<assay::Method> otherMethods(const ReportContent &content)
{
    std::vector<assay::Method> methods;
    for (const ReportCompanion &companion : content.companions)
        methods.push_back(companion.method);
    return methods;
}

} // namespace

evaluation::Reported reportedOf(const ReportContent &content, const evaluation::Result &result)
{
    const ReportedResult *wanted = reportedAs(content, result);
    if (!wanted || !wanted->unit)
        return asItIs(result);
    return evaluation::reportedAs(result, content.method, *wanted->unit, otherMethods(content))
        .value.value_or(asItIs(result));
}

const evaluation::Result &finalOf(const ReportContent &content, const evaluation::Result &result)
{
    const ReportedResult *reported = reportedAs(content, result);
    return reported && reported->inPlace ? *reported->inPlace : result;
}

double reportingFactor(const ReportContent &content, const evaluation::Result &result)
{
    const auto from = evaluation::reportUnitFromWord(result.unit);
    if (!from)
        return 1;
    return evaluation::conversionFactor(
               *from, reportedOf(content, result).unit,
               evaluation::molarMassOf(result.measurand, content.method, otherMethods(content)))
        .value.value_or(1);
}

const ReportItem *findItem(const ReportContent &content, const QString &sample)
{
    const auto found = std::ranges::find(content.items, sample, &ReportItem::sample);
    return found == content.items.end() ? nullptr : &*found;
}

QString reportNumber(const ReportContent &content)
{
    return run::groupedCode(content.runCode);
}

int revisionOf(const ReportContent &content)
{
    return content.record ? content.record->revision : 1;
}

QStringList namesIn(const run::Run &run)
{
    QStringList names{run.title};
    for (const run::Sample &sample : run.samples)
        names << sample.id;
    for (const run::Standard &standard : run.standards)
        names << standard.id;
    for (const run::LotUse &lot : run.lots)
        names << lot.lot;
    return names;
}

QStringList namesIn(const assay::Method &method)
{
    QStringList names{method.name};
    for (const assay::Component &component : method.components)
        names << component.name;
    return names;
}

QString local(const ReportContent &content, const QString &text)
{
    if (content.decimalSign == DecimalSign::Point)
        return text;
    QStringList names = namesIn(content.run) + namesIn(content.method);
    for (const ReportCompanion &companion : content.companions)
        names += namesIn(companion.run) + namesIn(companion.method);
    return localNumbers(text, content.decimalSign, names);
}

} // namespace plateau::ui
