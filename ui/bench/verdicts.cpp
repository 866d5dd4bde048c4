// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/verdicts.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <set>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Verdicts)
};

using evaluation::Check;
using evaluation::CheckId;

bool isMissing(const Check &check)
{
    return !check.passed && check.id == CheckId::ReadingMissing;
}

bool isFault(const Check &check)
{
    return !check.passed && check.id != CheckId::ReadingMissing;
}

State stateOf(const Check &check)
{
    if (check.passed)
        return State::Good;
    return check.advice ? State::Attention : State::Bad;
}

QString scoped(const Check &check)
{
    const QString where = check.scope.kind == evaluation::Scope::Kind::Run
                              ? check.scope.measurand
                              : evaluation::scopeWord(check.scope);
    return evaluation::capitalised(where.isEmpty() ? check.message
                                                   : Words::tr("%1: %2").arg(where, check.message));
}

/// Passed checks of many samples say the same: each sentence stands once, with its scope where it has only
/// one.
std::vector<Sentence> passedOnce(const std::vector<Check> &checks)
{
    std::vector<Sentence> sentences;
    std::set<QString> said;
    for (const Check &check : checks) {
        // Where a check failed elsewhere, "passed" without its scope would contradict it.
        const bool failedElsewhere = std::any_of(checks.begin(), checks.end(), [&check](const Check &other) {
            return other.id == check.id && !other.passed;
        });
        if (!check.passed || failedElsewhere || !said.insert(check.message).second)
            continue;
        const auto times = std::count_if(checks.begin(), checks.end(), [&check](const Check &other) {
            return other.message == check.message;
        });
        sentences.push_back(
            {State::Good, times == 1 ? scoped(check) : evaluation::capitalised(check.message)});
    }
    return sentences;
}

} // namespace

Sentence verdictOf(const evaluation::Result &result)
{
    const bool missing = std::any_of(result.checks.begin(), result.checks.end(), isMissing);
    // A reading that cannot be right gives no value either, but nothing comes of waiting.
    const bool faulty = std::any_of(result.checks.begin(), result.checks.end(), isFault);
    if (missing || (!result.value && !faulty))
        return {State::Pending, Words::tr("waiting")};
    switch (result.verdict) {
    case evaluation::Verdict::Reportable:
        return {State::Good, Words::tr("reportable")};
    case evaluation::Verdict::Repeat:
        return {State::Attention, Words::tr("repeat")};
    case evaluation::Verdict::Investigate:
        break;
    }
    return {State::Bad, Words::tr("investigate")};
}

QString resultText(const evaluation::Result &result)
{
    if (!result.value)
        return u"–"_s;
    if (result.lessThan)
        return Words::tr("< %1 %2").arg(evaluation::upperBoundText(*result.lessThan, 2), result.unit);
    if (result.greaterThan)
        return Words::tr("> %1 %2").arg(evaluation::lowerBoundText(*result.greaterThan, 3), result.unit);
    const QString value = evaluation::valueText(*result.value, result.expandedUncertainty);
    if (!result.expandedUncertainty)
        return Words::tr("%1 %2").arg(value, result.unit);
    return Words::tr("%1 ± %2 %3")
        .arg(value, evaluation::uncertaintyText(*result.expandedUncertainty), result.unit);
}

bool readingsAreMissing(const evaluation::Evaluation &evaluation)
{
    return std::any_of(evaluation.checks.begin(), evaluation.checks.end(), isMissing);
}

Sentence overallVerdict(const evaluation::Evaluation &evaluation)
{
    if (readingsAreMissing(evaluation))
        return {State::Pending, Words::tr("Not complete: readings are missing")};
    if (evaluation.acceptable)
        return {State::Good, Words::tr("All results are reportable")};
    std::map<State, int> counts;
    for (const evaluation::Result &result : evaluation.results)
        ++counts[verdictOf(result).state];
    const int repeats = counts[State::Attention];
    const int open = counts[State::Bad] + counts[State::Pending];
    const int all = static_cast<int>(evaluation.results.size());
    if (repeats + open == 0)
        return {State::Bad, Words::tr("The run itself failed a check")};
    if (open == 0)
        return {State::Attention, Words::tr("%1 of %2 to repeat").arg(repeats).arg(all)};
    if (repeats == 0)
        return {State::Bad, Words::tr("%1 of %2 to investigate").arg(open).arg(all)};
    return {State::Bad,
            Words::tr("%1 to investigate and %2 to repeat, of %3").arg(open).arg(repeats).arg(all)};
}

std::vector<Sentence> checkSentences(const evaluation::Evaluation &evaluation)
{
    std::vector<Sentence> sentences;
    QStringList incomplete;
    for (const Check &check : evaluation.checks) {
        if (isFault(check))
            sentences.push_back({stateOf(check), scoped(check)});
        else if (isMissing(check))
            incomplete << evaluation::scopeWord(check.scope);
    }
    incomplete.removeDuplicates();
    if (!incomplete.isEmpty())
        sentences.push_back(
            {State::Pending, Words::tr("Readings are missing of: %1.").arg(incomplete.join(u"; "_s))});
    const std::vector<Sentence> passed = passedOnce(evaluation.checks);
    sentences.insert(sentences.end(), passed.begin(), passed.end());
    return sentences;
}

std::vector<Sentence> derivedToCome(const assay::Method &method, const evaluation::Evaluation &evaluation)
{
    std::vector<Sentence> sentences;
    for (const assay::Derived &derived : method.derived) {
        const bool formed = std::any_of(evaluation.results.begin(), evaluation.results.end(),
                                        [&](const auto &result) { return result.measurand == derived.id; });
        QStringList others;
        for (const assay::DerivedTerm &term : derived.terms) {
            if (!term.method.isEmpty() && term.method != method.id)
                others << term.method;
        }
        others.removeDuplicates();
        if (!formed && !others.isEmpty())
            sentences.push_back(
                {State::Info, Words::tr("%1 is worked out as soon as a run by %2 with the same "
                                        "samples, of the same week, is accepted.")
                                  .arg(derived.name, others.join(Words::tr(" and ")))});
    }
    return sentences;
}

std::vector<Sentence> failuresSoFar(const evaluation::Evaluation &evaluation)
{
    std::vector<Sentence> sentences;
    for (const Check &check : evaluation.checks) {
        if (isFault(check))
            sentences.push_back({stateOf(check), scoped(check)});
    }
    if (sentences.empty())
        sentences.push_back({State::Good, readingsAreMissing(evaluation)
                                              ? Words::tr("No check has failed so far.")
                                              : Words::tr("Every check passed.")});
    return sentences;
}

} // namespace plateau::ui
