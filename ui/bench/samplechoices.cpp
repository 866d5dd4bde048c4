// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/samplechoices.h"

#include "core/evaluation/format.h"
#include "ui/bench/repeathow.h"
#include "ui/bench/verdicts.h"
#include "ui/bench/waitingwords.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct SampleChoicesWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::SampleChoices)
};

using notebook::DecisionKind;

bool hasVerdict(const evaluation::Evaluation &evaluation, const QString &sample, evaluation::Verdict verdict)
{
    return std::ranges::any_of(evaluation.results, [&](const evaluation::Result &result) {
        return result.sample == sample && result.verdict == verdict;
    });
}

int rank(State state)
{
    switch (state) {
    case State::Bad:
        return 3;
    case State::Pending:
        return 2;
    case State::Attention:
        return 1;
    default:
        return 0;
    }
}

Sentence worstVerdict(const run::Run &run, const evaluation::Evaluation &evaluation, const QString &sample)
{
    Sentence worst{State::Info, SampleChoicesWords::tr("no result")};
    bool first = true;
    for (const evaluation::Result &result : evaluation.results) {
        if (result.sample != sample)
            continue;
        Sentence verdict = verdictIn(run, evaluation, result);
        if (first || rank(verdict.state) > rank(worst.state))
            worst = std::move(verdict);
        first = false;
    }
    return worst;
}

QString adviceFor(const evaluation::Evaluation &evaluation, const QString &sample)
{
    QStringList advices;
    for (const evaluation::Check &check : evaluation.checks) {
        if (check.passed || !check.advice || check.scope.kind != evaluation::Scope::Kind::Sample ||
            check.scope.id != sample)
            continue;
        if (const QString words = adviceWords(*check.advice); !advices.contains(words))
            advices << words;
    }
    return advices.join(SampleChoicesWords::tr(", "));
}

/// The sample of the same rack that repeats it; nullptr where none does.
const run::Sample *repeatOf(const run::Run &run, const QString &sample)
{
    const auto found = std::ranges::find_if(
        run.samples, [&](const run::Sample &other) { return other.repeats == sample && other.id != sample; });
    return found == run.samples.end() ? nullptr : &*found;
}

QString shelfText(const QStringList &advices)
{
    return advices.isEmpty() ? SampleChoicesWords::tr("back to the samples that wait")
                             : SampleChoicesWords::tr("back to the samples that wait: %1")
                                   .arg(advices.join(SampleChoicesWords::tr("; ")));
}

/// What the row says of how it is repeated; empty where nobody does.
QString howText(const SampleChoiceRow &row)
{
    const auto typed = row.choice == SampleChoice::Repeat ? repeatHow(row.how).advice : std::nullopt;
    return typed ? repeatHowText(*typed) : row.advice;
}

/// Whole sentences, a kind each: what is put together of parts cannot be said well in every language.
QString repeatedText(int count, const QStringList &advices)
{
    if (advices.isEmpty())
        return SampleChoicesWords::tr("%n sample(s) will go back to those that wait, to be repeated.",
                                      nullptr, count);
    return SampleChoicesWords::tr("%n sample(s) will go back to those that wait, to be repeated: %1.",
                                  nullptr, count)
        .arg(advices.join(SampleChoicesWords::tr("; ")));
}

} // namespace

std::vector<SampleChoiceRow> startingChoices(const run::Run &run, const evaluation::Evaluation &evaluation)
{
    std::vector<SampleChoiceRow> rows;
    for (const run::Sample &sample : run.samples) {
        SampleChoiceRow row{sample.id, worstVerdict(run, evaluation, sample.id)};
        row.repeatAdvised = hasVerdict(evaluation, sample.id, evaluation::Verdict::Repeat);
        row.advice = adviceFor(evaluation, sample.id);
        const run::Sample *repeat = repeatOf(run, sample.id);
        if (hasVerdict(evaluation, sample.id, evaluation::Verdict::Investigate)) {
            row.choice = SampleChoice::Undecided;
        } else if (row.repeatAdvised && repeat) {
            row.choice = SampleChoice::Rejected;
            row.reason = SampleChoicesWords::tr("repeated in this rack as %1").arg(repeat->id);
        } else if (row.repeatAdvised) {
            row.choice = SampleChoice::Repeat;
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<SampleChoiceRow> withKept(std::vector<SampleChoiceRow> fresh,
                                      const std::vector<SampleChoiceRow> &kept)
{
    for (SampleChoiceRow &row : fresh) {
        const auto before = std::ranges::find(kept, row.sample, &SampleChoiceRow::sample);
        if (before == kept.end() || !before->touched)
            continue;
        row.choice = before->choice;
        row.reason = before->reason;
        row.how = before->how;
        row.touched = true;
    }
    return fresh;
}

SampleChoice outcomeOf(const SampleChoiceRow &row, DecisionKind ofRun)
{
    const bool left = row.choice == SampleChoice::AsRun || row.choice == SampleChoice::Undecided;
    if (!left)
        return row.choice;
    if (ofRun == DecisionKind::Rejected)
        return SampleChoice::Rejected;
    if (row.choice == SampleChoice::Undecided)
        return SampleChoice::Undecided;
    return row.repeatAdvised ? SampleChoice::Repeat : SampleChoice::Accepted;
}

QStringList undecidedSamples(const std::vector<SampleChoiceRow> &rows)
{
    QStringList names;
    for (const SampleChoiceRow &row : rows) {
        if (row.choice == SampleChoice::Undecided)
            names << row.sample;
    }
    return names;
}

QStringList answeredSamples(const std::vector<SampleChoiceRow> &rows)
{
    QStringList names;
    for (const SampleChoiceRow &row : rows) {
        const SampleChoice outcome = outcomeOf(row, DecisionKind::Accepted);
        const bool isForAReason = row.choice == SampleChoice::Accepted && !row.reason.trimmed().isEmpty();
        if (outcome == SampleChoice::Repeat || outcome == SampleChoice::Rejected || isForAReason)
            names << row.sample;
    }
    return names;
}

int unreadableRepeat(const std::vector<SampleChoiceRow> &rows)
{
    const auto found = std::ranges::find_if(rows, [](const SampleChoiceRow &row) {
        return row.choice == SampleChoice::Repeat && !repeatHow(row.how).fault.isEmpty();
    });
    return found == rows.end() ? -1 : static_cast<int>(found - rows.begin());
}

std::vector<notebook::SampleDecision> sampleDecisions(const std::vector<SampleChoiceRow> &rows)
{
    using Kind = notebook::SampleDecisionKind;
    std::vector<notebook::SampleDecision> decisions;
    for (const SampleChoiceRow &row : rows) {
        // The reason belongs to what was chosen, and is not said of what follows the run.
        if (row.choice == SampleChoice::Accepted)
            decisions.push_back({row.sample, Kind::Accepted, row.reason, {}});
        else if (row.choice == SampleChoice::Rejected)
            decisions.push_back({row.sample, Kind::Rejected, row.reason, {}});
        else if (row.choice == SampleChoice::Repeat)
            decisions.push_back({row.sample, Kind::Repeat, row.reason, repeatHow(row.how).advice});
    }
    return decisions;
}

QString choiceText(SampleChoice choice)
{
    switch (choice) {
    case SampleChoice::Undecided:
        return SampleChoicesWords::tr("undecided");
    case SampleChoice::AsRun:
        return SampleChoicesWords::tr("as the run");
    case SampleChoice::Accepted:
        return SampleChoicesWords::tr("accepted");
    case SampleChoice::Rejected:
        return SampleChoicesWords::tr("rejected");
    case SampleChoice::Repeat:
        break;
    }
    return SampleChoicesWords::tr("repeat");
}

QString consequenceText(const SampleChoiceRow &row)
{
    switch (outcomeOf(row, DecisionKind::Accepted)) {
    case SampleChoice::Undecided:
        return row.verdict.state == State::Pending
                   ? SampleChoicesWords::tr("read it, then decide")
                   : SampleChoicesWords::tr("look into its checks, then decide");
    case SampleChoice::Rejected:
        return SampleChoicesWords::tr("not reported");
    case SampleChoice::Repeat: {
        if (const QString fault = repeatHow(row.how).fault;
            row.choice == SampleChoice::Repeat && !fault.isEmpty())
            return fault;
        const QString how = howText(row);
        return shelfText(how.isEmpty() ? QStringList() : QStringList{how});
    }
    default:
        return SampleChoicesWords::tr("reported");
    }
}

QString whatHappens(const std::vector<SampleChoiceRow> &rows, DecisionKind ofRun)
{
    int accepted = 0;
    int rejected = 0;
    int repeated = 0;
    int open = 0;
    QStringList advices;
    for (const SampleChoiceRow &row : rows) {
        const SampleChoice outcome = outcomeOf(row, ofRun);
        accepted += outcome == SampleChoice::Accepted;
        rejected += outcome == SampleChoice::Rejected;
        repeated += outcome == SampleChoice::Repeat;
        open += outcome == SampleChoice::Undecided;
        const QString how = howText(row);
        if (outcome == SampleChoice::Repeat && !how.isEmpty() && !advices.contains(how))
            advices << how;
    }
    QStringList sentences;
    if (accepted > 0)
        sentences << SampleChoicesWords::tr("%n sample(s) will be reported.", nullptr, accepted);
    if (repeated > 0)
        sentences << repeatedText(repeated, advices);
    if (rejected > 0)
        sentences << SampleChoicesWords::tr("%n sample(s) will be rejected.", nullptr, rejected);
    if (open > 0)
        sentences << SampleChoicesWords::tr("%n sample(s) will stay undecided.", nullptr, open);
    if (sentences.isEmpty())
        return SampleChoicesWords::tr("There is no sample in this run.");
    return (ofRun == DecisionKind::Accepted ? SampleChoicesWords::tr("If the run is accepted: %1")
                                            : SampleChoicesWords::tr("If the run is rejected: %1"))
        .arg(sentences.join(u' '));
}

} // namespace plateau::ui
