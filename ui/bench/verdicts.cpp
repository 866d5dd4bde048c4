// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/verdicts.h"

#include "core/evaluation/checkfacts.h"
#include "core/evaluation/checks.h"
#include "core/evaluation/format.h"
#include "core/planning/rackrepeat.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <utility>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct VerdictsWords {
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

QString scoped(const run::Run &run, const Check &check)
{
    const QString where = check.scope.kind == evaluation::Scope::Kind::Run
                              ? check.scope.measurand
                              : evaluation::scopeText(check.scope, run);
    return evaluation::capitalised(where.isEmpty() ? check.message()
                                                   : VerdictsWords::tr("%1: %2").arg(where, evaluation::afterColon(check.message())));
}

/// Too little to be measured, and no repeat would help: the result is final.
bool isNoted(const Check &check)
{
    return !check.passed && check.id == CheckId::SignalLow && !check.advice;
}

Sentence failureOf(const run::Run &run, const Check &check, const evaluation::Result &result)
{
    const bool isOwn = check.scope.kind == evaluation::Scope::Kind::Sample &&
                       check.scope.id == result.sample &&
                       (check.scope.measurand.isEmpty() || check.scope.measurand == result.measurand);
    State state = stateOf(check);
    if (isMissing(check))
        state = State::Pending;
    else if (isNoted(check))
        state = State::Info;
    return {state, isOwn ? evaluation::capitalised(check.message()) : scoped(run, check)};
}

/// What the method asks for and the run has nothing to make it with: "Recovery of the standard".
QStringList notMade(const std::vector<evaluation::CheckLine> &lines)
{
    QStringList open;
    for (const evaluation::CheckLine &line : lines) {
        if (line.outcome == evaluation::CheckOutcome::NotMade)
            open << (line.where.isEmpty() ? line.what : VerdictsWords::tr("%1 (%2)").arg(line.what, line.where));
    }
    return open;
}

/// What the checks say that were made.
QString textOfMade(const std::vector<evaluation::CheckLine> &lines)
{
    const int failed = evaluation::failedChecks(lines);
    const bool isOpen = std::any_of(lines.begin(), lines.end(), [](const evaluation::CheckLine &line) {
        return line.outcome == evaluation::CheckOutcome::Waiting;
    });
    if (failed == 0 && isOpen)
        return VerdictsWords::tr("No check has failed so far.");
    if (failed == 0)
        return notMade(lines).isEmpty() ? VerdictsWords::tr("Every check passed.")
                                        : VerdictsWords::tr("No check failed.");
    std::vector<std::pair<CheckId, int>> kinds;
    for (const evaluation::CheckLine &line : lines) {
        if (line.outcome != evaluation::CheckOutcome::Failed &&
            line.outcome != evaluation::CheckOutcome::Repeat)
            continue;
        const auto known = std::find_if(kinds.begin(), kinds.end(),
                                        [&line](const auto &kind) { return kind.first == line.id; });
        if (known == kinds.end())
            kinds.emplace_back(line.id, line.checks);
        else
            known->second += line.checks;
    }
    QStringList phrases;
    for (const auto &[id, count] : kinds)
        phrases << (count == 1
                        ? evaluation::checkPhrase(id)
                        : VerdictsWords::tr("%1 (%2 times)").arg(evaluation::checkPhrase(id)).arg(count));
    const QString what = phrases.join(VerdictsWords::tr("; "));
    return failed == 1 ? VerdictsWords::tr("1 check failed: %1.").arg(what)
                       : VerdictsWords::tr("%1 checks failed: %2.").arg(failed).arg(what);
}

} // namespace

Sentence verdictOf(const evaluation::Result &result)
{
    const bool missing = std::any_of(result.checks.begin(), result.checks.end(), isMissing);
    // A reading that cannot be right gives no value either, but nothing comes of waiting.
    const bool faulty = std::any_of(result.checks.begin(), result.checks.end(), isFault);
    if (missing || (!result.value && !faulty))
        return {State::Pending, VerdictsWords::tr("waiting")};
    switch (result.verdict) {
    case evaluation::Verdict::Reportable:
        return {State::Good, VerdictsWords::tr("reportable")};
    case evaluation::Verdict::Repeat:
        return {State::Attention, VerdictsWords::tr("repeat")};
    case evaluation::Verdict::Investigate:
        break;
    }
    return {State::Bad, VerdictsWords::tr("investigate")};
}

Sentence verdictIn(const run::Run &run, const evaluation::Evaluation &evaluation, const evaluation::Result &result)
{
    return planning::repeatedBy(run, evaluation, result).isEmpty()
               ? verdictOf(result)
               : Sentence{State::Info, VerdictsWords::tr("repeated")};
}

QString resultText(const evaluation::Result &result)
{
    if (!result.value)
        return u"–"_s;
    if (result.lessThan)
        return VerdictsWords::tr("< %1 %2").arg(evaluation::upperBoundText(*result.lessThan, 2), result.unit);
    if (result.greaterThan)
        return VerdictsWords::tr("> %1 %2").arg(evaluation::lowerBoundText(*result.greaterThan, 3),
                                                result.unit);
    const QString value = evaluation::valueText(*result.value, result.expandedUncertainty);
    if (!result.expandedUncertainty)
        return VerdictsWords::tr("%1 %2").arg(value, result.unit);
    return VerdictsWords::tr("%1 ± %2 %3")
        .arg(value, evaluation::uncertaintyText(*result.expandedUncertainty), result.unit);
}

bool readingsAreMissing(const evaluation::Evaluation &evaluation)
{
    return std::any_of(evaluation.checks.begin(), evaluation.checks.end(), isMissing);
}

Sentence overallVerdict(const run::Run &run, const evaluation::Evaluation &evaluation,
                        const std::vector<evaluation::CheckLine> &lines)
{
    if (readingsAreMissing(evaluation))
        return {State::Pending, VerdictsWords::tr("Not complete: readings are missing")};
    std::map<State, int> counts;
    for (const evaluation::Result &result : evaluation.results)
        ++counts[verdictIn(run, evaluation, result).state];
    const int repeats = counts[State::Attention];
    const int open = counts[State::Bad] + counts[State::Pending];
    const int repeated = counts[State::Info];
    const int all = static_cast<int>(evaluation.results.size());
    const bool isFine = evaluation.acceptable || (repeated > 0 && repeats + open == 0);
    if (isFine && !notMade(lines).isEmpty())
        return {State::Attention, VerdictsWords::tr("Not every check could be made")};
    if (isFine)
        return {State::Good, repeated == 0 ? VerdictsWords::tr("All results are reportable")
                                           : VerdictsWords::tr("All are reportable, %1 by a repeat in the rack").arg(repeated)};
    if (repeats + open == 0)
        return {State::Bad, VerdictsWords::tr("The run itself failed a check")};
    if (open == 0)
        return {State::Attention, VerdictsWords::tr("%1 of %2 to repeat").arg(repeats).arg(all)};
    if (repeats == 0)
        return {State::Bad, VerdictsWords::tr("%1 of %2 to investigate").arg(open).arg(all)};
    return {State::Bad,
            VerdictsWords::tr("%1 to investigate and %2 to repeat, of %3").arg(open).arg(repeats).arg(all)};
}

QString failureText(const std::vector<evaluation::CheckLine> &lines)
{
    const QString failures = textOfMade(lines);
    const QStringList open = notMade(lines);
    return open.isEmpty() ? failures
                          : VerdictsWords::tr("%1 Not made, though the method asks for it: %2.")
                                .arg(failures, evaluation::afterColon(open.join(VerdictsWords::tr("; "))));
}

std::vector<Sentence> failureSentences(const run::Run &run, const evaluation::Evaluation &evaluation,
                                       const evaluation::Result &result)
{
    std::vector<Sentence> sentences;
    const auto add = [&](const Check &check) {
        const Sentence sentence = failureOf(run, check, result);
        if (!check.passed && std::find(sentences.begin(), sentences.end(), sentence) == sentences.end())
            sentences.push_back(sentence);
    };
    std::for_each(result.checks.begin(), result.checks.end(), add);
    for (const Check &check : evaluation.checks) {
        if (check.scope.kind != evaluation::Scope::Kind::Sample)
            add(check);
    }
    return sentences;
}

std::vector<Sentence> derivedToCome(const assay::Method &method, const evaluation::Evaluation &evaluation,
                                    const std::map<QString, QString> &methodNames)
{
    std::vector<Sentence> sentences;
    for (const assay::Derived &derived : method.derived) {
        const bool formed = std::any_of(evaluation.results.begin(), evaluation.results.end(),
                                        [&](const auto &result) { return result.measurand == derived.id; });
        QStringList others;
        for (const assay::DerivedTerm &term : derived.terms) {
            if (term.method.isEmpty() || term.method == method.id)
                continue;
            const auto known = methodNames.find(term.method);
            others << (known == methodNames.end() ? term.method : known->second);
        }
        others.removeDuplicates();
        if (!formed && !others.isEmpty())
            sentences.push_back(
                {State::Info, VerdictsWords::tr("%1 is worked out as soon as a run by %2 with the same "
                                                "samples, of the same week, is accepted.")
                                  .arg(derived.name, others.join(VerdictsWords::tr(" and ")))});
    }
    return sentences;
}

std::vector<Sentence> failuresSoFar(const run::Run &run, const evaluation::Evaluation &evaluation,
                                    const std::vector<evaluation::CheckLine> &open)
{
    std::vector<Sentence> sentences;
    for (const Check &check : evaluation.checks) {
        if (isFault(check))
            sentences.push_back({stateOf(check), scoped(run, check)});
    }
    for (const evaluation::CheckLine &line : open)
        sentences.push_back({State::Attention, line.message});
    if (sentences.empty())
        sentences.push_back({State::Good, readingsAreMissing(evaluation)
                                              ? VerdictsWords::tr("No check has failed so far.")
                                              : VerdictsWords::tr("Every check passed.")});
    return sentences;
}

} // namespace plateau::ui
