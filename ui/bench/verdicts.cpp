// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/verdicts.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

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

bool hasFailed(const evaluation::Evaluation &evaluation, evaluation::Scope::Kind kind, const QString &id,
               bool (*which)(const Check &))
{
    return std::any_of(evaluation.checks.begin(), evaluation.checks.end(), [&](const Check &check) {
        return which(check) && check.scope.kind == kind && (id.isEmpty() || check.scope.id == id);
    });
}

State stateOf(const Check &check)
{
    if (check.passed)
        return State::Good;
    if (isMissing(check))
        return State::Pending;
    return check.advice ? State::Attention : State::Bad;
}

QString scoped(const Check &check)
{
    return check.scope.kind == evaluation::Scope::Kind::Run
               ? check.message
               : Words::tr("%1: %2").arg(evaluation::scopeWord(check.scope), check.message);
}

/// Passed checks of many samples say the same: one sentence for each message, with the number of scopes.
std::vector<Sentence> passedOnce(const std::vector<Check> &checks)
{
    std::vector<std::pair<QString, int>> counted;
    for (const Check &check : checks) {
        if (!check.passed)
            continue;
        const auto known = std::find_if(counted.begin(), counted.end(),
                                        [&check](const auto &entry) { return entry.first == check.message; });
        if (known == counted.end())
            counted.emplace_back(check.message, 1);
        else
            ++known->second;
    }
    std::vector<Sentence> sentences;
    for (const auto &[message, times] : counted)
        sentences.push_back(
            {State::Good, times == 1 ? message : Words::tr("%1 (%2 times)").arg(message).arg(times)});
    return sentences;
}

} // namespace

Sentence verdictOf(const evaluation::Result &result)
{
    if (std::any_of(result.checks.begin(), result.checks.end(), isMissing) || !result.value)
        return {State::Pending, Words::tr("waiting for readings")};
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
    for (const auto which : {isFault, isMissing}) {
        for (const Check &check : evaluation.checks) {
            if (which(check))
                sentences.push_back({stateOf(check), scoped(check)});
        }
    }
    const std::vector<Sentence> passed = passedOnce(evaluation.checks);
    sentences.insert(sentences.end(), passed.begin(), passed.end());
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

std::vector<Sentence> recoverySentences(const evaluation::Evaluation &evaluation)
{
    std::vector<Sentence> sentences;
    const auto percent = [](double value) { return evaluation::significantText(value, value < 100 ? 3 : 4); };
    for (const evaluation::StandardRecovery &standard : evaluation.standards) {
        if (!standard.found_g_per_L || !standard.recovery_percent) {
            sentences.push_back(
                {State::Pending,
                 Words::tr("Standard %1: %2 g/L expected, not found yet")
                     .arg(standard.standard, evaluation::significantText(standard.expected_g_per_L, 4))});
            continue;
        }
        const bool bad = hasFailed(evaluation, evaluation::Scope::Kind::Standard, standard.standard, isFault);
        sentences.push_back(
            {bad ? State::Bad : State::Good,
             Words::tr("Standard %1: %2 g/L found of %3 g/L, recovery %4 %")
                 .arg(standard.standard, evaluation::significantText(*standard.found_g_per_L, 4),
                      evaluation::significantText(standard.expected_g_per_L, 4),
                      percent(*standard.recovery_percent))});
    }
    for (const evaluation::SpikeRecovery &spike : evaluation.spikes) {
        if (spike.recovery_percent)
            sentences.push_back({State::Info, Words::tr("Spike on %1: recovery %2 %")
                                                  .arg(spike.sample, percent(*spike.recovery_percent))});
    }
    return sentences;
}

} // namespace plateau::ui
