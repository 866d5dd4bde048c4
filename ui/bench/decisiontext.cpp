// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/decisiontext.h"

#include "ui/bench/waitingwords.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::ui {

namespace {

struct DecisionTextWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::DecisionText)
};

QString withReason(const QString &line, const QString &reason)
{
    return reason.isEmpty() ? line : DecisionTextWords::tr("%1: %2").arg(line, reason);
}

QString roleText(notebook::PersonRole role)
{
    switch (role) {
    case notebook::PersonRole::Analyst:
        return DecisionTextWords::tr("analyst");
    case notebook::PersonRole::Reviewer:
        return DecisionTextWords::tr("reviewer");
    case notebook::PersonRole::Head:
        break;
    }
    return DecisionTextWords::tr("head");
}

QString shelfText(const std::optional<evaluation::Advice> &advice)
{
    return advice ? DecisionTextWords::tr("to be repeated, %1").arg(adviceWords(*advice))
                  : DecisionTextWords::tr("to be repeated");
}

/// Those that somebody, or the evaluation, took out of the run's decision.
void addSamples(const notebook::Decision &decision, std::vector<Sentence> &sentences)
{
    using Kind = notebook::SampleDecisionKind;
    for (const notebook::SampleDecision &own : decision.samples) {
        const QString line = DecisionTextWords::tr("Sample %1: %2");
        if (own.kind == Kind::Repeat)
            sentences.push_back(
                {State::Attention, withReason(line.arg(own.sample, shelfText(own.advice)), own.reason)});
        else if (own.kind == Kind::Rejected)
            sentences.push_back(
                {State::Bad,
                 withReason(line.arg(own.sample, DecisionTextWords::tr("rejected")), own.reason)});
        else
            sentences.push_back(
                {State::Good,
                 withReason(line.arg(own.sample, DecisionTextWords::tr("accepted")), own.reason)});
    }
    for (const QString &sample : decision.repeats) {
        if (std::ranges::find(decision.samples, sample, &notebook::SampleDecision::sample) ==
            decision.samples.end())
            sentences.push_back(
                {State::Attention,
                 DecisionTextWords::tr("Sample %1: to be repeated, as the evaluation advises").arg(sample)});
    }
}

QString decisionLine(const notebook::Decision &decision, int revision)
{
    const QString what = decision.kind == notebook::DecisionKind::Accepted
                             ? DecisionTextWords::tr("Accepted by %1, %2")
                             : DecisionTextWords::tr("Rejected by %1, %2");
    const QString mark = decision.signedAs ? DecisionTextWords::tr("revision %1, signed as %2")
                                                 .arg(revision)
                                                 .arg(roleText(*decision.signedAs))
                                           : DecisionTextWords::tr("revision %1, unsigned").arg(revision);
    return withReason(
        DecisionTextWords::tr("%1 (%2)").arg(what.arg(decision.person, momentText(decision.at)), mark),
        decision.reason);
}

QString reopeningLine(const notebook::Reopening &reopening)
{
    const QString mark = reopening.signedAs
                             ? DecisionTextWords::tr("signed as %1").arg(roleText(*reopening.signedAs))
                             : DecisionTextWords::tr("unsigned");
    return DecisionTextWords::tr("Put back on the bench by %1, %2 (%3); revision %4 begins")
        .arg(reopening.person, momentText(reopening.at), mark)
        .arg(reopening.decision + 2);
}

} // namespace

std::vector<Sentence> decisionSentences(const notebook::StoredRun &stored)
{
    std::vector<Sentence> sentences;
    for (int index = 0; index < static_cast<int>(stored.decisions.size()); ++index) {
        const notebook::Decision &decision = stored.decisions[static_cast<std::size_t>(index)];
        const bool accepted = decision.kind == notebook::DecisionKind::Accepted;
        sentences.push_back({accepted ? State::Good : State::Bad, decisionLine(decision, index + 1)});
        addSamples(decision, sentences);
        for (const notebook::Reopening &reopening : stored.reopenings) {
            if (reopening.decision == index)
                sentences.push_back({State::Info, withReason(reopeningLine(reopening), reopening.reason)});
        }
    }
    return sentences;
}

QString revisionText(const notebook::StoredRun &stored, int revision)
{
    const notebook::Decision &decision = stored.decisions.at(static_cast<std::size_t>(revision - 1));
    const bool stands = stored.summary.state != notebook::RunState::OnBench &&
                        revision == static_cast<int>(stored.decisions.size());
    const QString what = decision.kind == notebook::DecisionKind::Accepted
                             ? DecisionTextWords::tr("accepted")
                             : DecisionTextWords::tr("rejected");
    const QString text = DecisionTextWords::tr("%1: %2 %3 by %4")
                             .arg(revision)
                             .arg(what, momentText(decision.at), decision.person);
    return stands ? DecisionTextWords::tr("%1 (stands)").arg(text) : text;
}

} // namespace plateau::ui
