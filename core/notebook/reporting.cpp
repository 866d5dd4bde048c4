// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/reporting.h"

#include "core/notebook/sentence.h"

#include <algorithm>
#include <cmath>

namespace plateau::notebook {

namespace {

void report(SampleResults &results, const AcceptedResult &accepted)
{
    results.reported = accepted.result;
    results.reportedFrom = {accepted.from};
}

bool isPlain(const AcceptedResult &accepted)
{
    return accepted.result.value && !accepted.result.lessThan && !accepted.result.greaterThan;
}

/// The mean of what get finds in every result; nothing where one has none.
template <class Get> std::optional<double> meanOf(const std::vector<AcceptedResult> &accepted, Get get)
{
    double sum = 0;
    for (const AcceptedResult &one : accepted) {
        const std::optional<double> value = get(one.result);
        if (!value)
            return std::nullopt;
        sum += *value;
    }
    return sum / double(accepted.size());
}

void reportMean(SampleResults &results)
{
    const std::vector<AcceptedResult> &accepted = results.accepted;
    const auto first = accepted.front().result;
    if (!std::ranges::all_of(accepted, isPlain)) {
        results.obstacle = Sentence::tr("There is no mean of the accepted results, since one of them is only "
                                        "known to be below or above a bound: choose another rule.");
        return;
    }
    if (std::ranges::any_of(accepted, [&](const auto &one) { return one.result.unit != first.unit; })) {
        results.obstacle =
            Sentence::tr("There is no mean of the accepted results, since they are not all in one "
                         "unit: choose another rule.");
        return;
    }
    evaluation::Result mean;
    mean.sample = results.sample;
    mean.measurand = results.measurand;
    mean.unit = first.unit;
    mean.verdict = evaluation::Verdict::Reportable;
    mean.n = int(accepted.size());
    mean.value = meanOf(accepted, [](const evaluation::Result &one) { return one.value; });
    const auto [least, most] = std::ranges::minmax_element(
        accepted, {}, [](const AcceptedResult &one) { return *one.result.value; });
    mean.spread = *most->result.value - *least->result.value;
    mean.expandedUncertainty =
        meanOf(accepted, [](const evaluation::Result &one) { return one.expandedUncertainty; });
    const bool oneFactor = std::ranges::all_of(
        accepted, [&](const auto &one) { return one.result.coverageFactor == first.coverageFactor; });
    if (mean.expandedUncertainty && oneFactor)
        mean.coverageFactor = first.coverageFactor;
    results.reported = mean;
    for (const AcceptedResult &one : accepted)
        results.reportedFrom.push_back(one.from);
}

void reportNamed(SampleResults &results, const ResultSource &named)
{
    const auto found = std::ranges::find(results.accepted, named, &AcceptedResult::from);
    if (found != results.accepted.end())
        report(results, *found);
    else
        results.obstacle =
            Sentence::tr(
                "The result that was named, of run %1 at revision %2, is no longer accepted: choose again.")
                .arg(named.run.value)
                .arg(named.revision);
}

} // namespace

void followRule(SampleResults &results)
{
    results.reported.reset();
    results.reportedFrom.clear();
    results.obstacle.clear();
    if (results.choice && results.rule == ReportRule::Named && results.choice->named)
        reportNamed(results, *results.choice->named);
    else if (results.accepted.empty())
        results.obstacle = Sentence::tr("No result of this sample is accepted yet.");
    else if (results.rule == ReportRule::MeanOfAccepted)
        reportMean(results);
    else
        report(results, results.accepted.back());
}

} // namespace plateau::notebook
