// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/jsonfields.h"
#include "core/exchange/readers.h"

#include <QCoreApplication>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using evaluation::Result;
using evaluation::Verdict;

namespace {

struct Wording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::EvaluationReader)
};

const std::vector<std::pair<QString, Verdict>> &verdictWords()
{
    static const std::vector<std::pair<QString, Verdict>> words = [] {
        std::vector<std::pair<QString, Verdict>> list;
        for (const Verdict verdict : {Verdict::Reportable, Verdict::Repeat, Verdict::Investigate})
            list.emplace_back(evaluation::verdictWord(verdict), verdict);
        return list;
    }();
    return words;
}

/// A number, or null where there is none.
void takeNumber(Fields &fields, const QString &key, std::optional<double> &target)
{
    const auto place = fields.find(key);
    if (place && !std::holds_alternative<json::Null>(place->node.value))
        take(*place, target);
}

Result takeResult(const Place &place)
{
    Result result;
    Fields fields(place);
    fields.needed(u"sample"_s, result.sample);
    fields.needed(u"measurand"_s, result.measurand);
    fields.needed(u"unit"_s, result.unit);
    fields.needed(u"n"_s, result.n);
    takeNumber(fields, u"value"_s, result.value);
    takeNumber(fields, u"spread"_s, result.spread);
    takeNumber(fields, u"expandedUncertainty"_s, result.expandedUncertainty);
    takeNumber(fields, u"coverageFactor"_s, result.coverageFactor);
    takeNumber(fields, u"degreesOfFreedom"_s, result.degreesOfFreedom);
    takeNumber(fields, u"lessThan"_s, result.lessThan);
    takeNumber(fields, u"greaterThan"_s, result.greaterThan);
    if (const auto verdict = fields.need(u"verdict"_s))
        takeWord(*verdict, verdictWords(), result.verdict);
    return result; // without done(): what else a result says is not read
}

} // namespace

Read<std::vector<Result>> readResults(const QByteArray &evaluation)
{
    const json::Document document = json::parse(evaluation);
    Findings findings;
    for (const assay::Problem &problem : document.problems)
        findings.remark(problem);
    std::vector<Result> results;
    if (document.root) {
        Fields fields({*document.root, {}, findings});
        if (const auto list = fields.need(u"results"_s))
            forEach(*list, [&](const Place &element) { results.push_back(takeResult(element)); });
        else
            findings.broken(u"/results"_s, Wording::tr("is missing"));
    }
    if (findings.hasErrors())
        return {std::nullopt, findings.problems()};
    return {std::move(results), findings.problems()};
}

} // namespace plateau::exchange
