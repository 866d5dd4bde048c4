// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/decisionfacts.h"

#include "core/exchange/readers.h"
#include "core/notebook/text.h"
#include "core/notebook/words.h"

#include <map>
#include <set>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

using Rows = DecisionFacts::Rows;

constexpr double msPerHour = 3'600'000;

Cell cell(const std::optional<double> &value)
{
    return value ? Cell(*value + 0.0) : Cell(); // zero has no sign in the file
}

SampleDecisionKind kindOf(const Decision &decision, const evaluation::Result &result)
{
    if (acceptsResult(decision, result))
        return SampleDecisionKind::Accepted;
    const SampleDecisionKind kind = decidedOf(decision, result.sample);
    return kind == SampleDecisionKind::Accepted ? SampleDecisionKind::Repeat : kind;
}

Rows resultRows(RunId run, const Decision &decision, const std::vector<evaluation::Result> &results)
{
    Rows rows;
    for (const evaluation::Result &result : results) {
        const std::optional<double> bound = result.lessThan ? result.lessThan : result.greaterThan;
        const Cell word = result.lessThan      ? Cell(u"less"_s)
                          : result.greaterThan ? Cell(u"greater"_s)
                                               : Cell();
        rows.push_back({run.value, qint64(rows.size()), result.sample, comparisonKey(result.sample),
                        result.measurand, result.unit, cell(result.value), cell(result.expandedUncertainty),
                        word, cell(bound), qint64(result.n), cell(result.spread),
                        evaluation::verdictWord(result.verdict),
                        sampleDecisionWord(kindOf(decision, result))});
    }
    return rows;
}

Rows flagRows(RunId run, const exchange::WrittenEvaluation &written)
{
    const std::set<exchange::WrittenEvaluation::FailedCheck> failed(written.failed.begin(),
                                                                    written.failed.end());
    Rows rows;
    for (const auto &check : failed)
        rows.push_back({run.value, check.id, check.scope});
    return rows;
}

Rows blankRows(RunId run, const exchange::WrittenEvaluation &written)
{
    std::set<QString> seen;
    Rows rows;
    for (const evaluation::BlankMean &blank : written.blanks) {
        if (blank.mean && seen.insert(blank.measurand).second)
            rows.push_back({run.value, blank.measurand, cell(blank.mean), qint64(blank.n)});
    }
    return rows;
}

Rows standardRows(RunId run, const std::vector<run::Standard> &standards,
                  const std::vector<evaluation::StandardRecovery> &recoveries)
{
    Rows rows;
    for (const run::Standard &standard : standards) {
        const Cell prepared = standard.preparedAt ? Cell(momentOf(*standard.preparedAt).utc) : Cell();
        const Cell age_h = standard.preparedAt && standard.usedAt
                               ? Cell(double(standard.preparedAt->msecsTo(*standard.usedAt)) / msPerHour)
                               : Cell();
        std::set<QString> seen;
        for (const evaluation::StandardRecovery &recovery : recoveries) {
            if (recovery.standard == standard.id && seen.insert(recovery.measurand).second)
                rows.push_back({run.value, standard.id, recovery.measurand, prepared, age_h,
                                cell(recovery.expected_g_per_L), cell(recovery.found_g_per_L),
                                cell(recovery.recovery_percent)});
        }
        if (seen.empty())
            rows.push_back({run.value, standard.id, QString(u""_s), prepared, age_h, Cell(), Cell(), Cell()});
    }
    return rows;
}

} // namespace

DecisionFacts factsOf(RunId run, const Inputs *inputs, const DecisionRow *decision)
{
    DecisionFacts facts;
    // Without one the standards are as planned: when they are used shows in the end.
    const std::vector<run::Standard> standards = !inputs    ? std::vector<run::Standard>{}
                                                 : decision ? inputs->runAsOf(decision->lastSeen).standards
                                                            : inputs->plan.standards;
    exchange::WrittenEvaluation written;
    if (decision) {
        auto read = exchange::readEvaluation(decision->decision.evaluation);
        if (read.value)
            written = std::move(*read.value);
        facts.results = resultRows(run, decision->decision, written.results);
        facts.flags = flagRows(run, written);
        facts.blanks = blankRows(run, written);
    }
    facts.standards = standardRows(run, standards, written.standards);
    return facts;
}

} // namespace plateau::notebook
