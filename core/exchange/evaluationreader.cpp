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

struct EvaluationReaderWording {
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

evaluation::BlankMean takeBlank(const Place &place)
{
    evaluation::BlankMean blank;
    Fields fields(place);
    fields.needed(u"measurand"_s, blank.measurand);
    fields.needed(u"n"_s, blank.n);
    takeNumber(fields, u"mean"_s, blank.mean);
    return blank;
}

evaluation::StandardRecovery takeRecovery(const Place &place)
{
    evaluation::StandardRecovery standard;
    Fields fields(place);
    fields.needed(u"standard"_s, standard.standard);
    fields.needed(u"measurand"_s, standard.measurand);
    fields.needed(u"expected_g_per_L"_s, standard.expected_g_per_L);
    takeNumber(fields, u"found_g_per_L"_s, standard.found_g_per_L);
    takeNumber(fields, u"recovery_percent"_s, standard.recovery_percent);
    return standard;
}

void takeCheck(const Place &place, std::vector<WrittenEvaluation::FailedCheck> &failed)
{
    WrittenEvaluation::FailedCheck check;
    bool passed = true;
    Fields fields(place);
    fields.needed(u"id"_s, check.id);
    fields.needed(u"scope"_s, check.scope);
    fields.needed(u"passed"_s, passed);
    if (!passed)
        failed.push_back(check);
}

/// Of a document: read is handed its fields, and the findings are what it did not like.
template <class T, class ReadFields> Read<T> readDocument(const QByteArray &text, ReadFields read)
{
    const json::Document document = json::parse(text);
    Findings findings;
    for (const assay::Problem &problem : document.problems)
        findings.remark(problem);
    T found;
    if (document.root) {
        Fields fields({*document.root, {}, findings});
        read(fields, findings, found);
    }
    if (findings.hasErrors())
        return {std::nullopt, findings.problems()};
    return {std::move(found), findings.problems()};
}

/// Calls each for the elements of a list that has to be there.
template <class Each> void readList(Fields &fields, Findings &findings, const QString &key, Each each)
{
    if (const auto list = fields.need(key))
        forEach(*list, each);
    else
        findings.broken(u'/' + key, EvaluationReaderWording::tr("is missing"));
}

} // namespace

Read<std::vector<Result>> readResults(const QByteArray &evaluation)
{
    return readDocument<std::vector<Result>>(
        evaluation, [](Fields &fields, Findings &findings, std::vector<Result> &results) {
            readList(fields, findings, u"results"_s,
                     [&](const Place &element) { results.push_back(takeResult(element)); });
        });
}

Read<WrittenEvaluation> readEvaluation(const QByteArray &evaluation)
{
    return readDocument<WrittenEvaluation>(
        evaluation, [](Fields &fields, Findings &findings, WrittenEvaluation &written) {
            readList(fields, findings, u"results"_s,
                     [&](const Place &element) { written.results.push_back(takeResult(element)); });
            readList(fields, findings, u"blanks"_s,
                     [&](const Place &element) { written.blanks.push_back(takeBlank(element)); });
            readList(fields, findings, u"standards"_s,
                     [&](const Place &element) { written.standards.push_back(takeRecovery(element)); });
            readList(fields, findings, u"checks"_s,
                     [&](const Place &element) { takeCheck(element, written.failed); });
        });
}

} // namespace plateau::exchange
