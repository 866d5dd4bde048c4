// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/decisiontext.h"

#include "ui/shared/widgets.h"

#include <QCoreApplication>

namespace plateau::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::DecisionText)
};

QString withReason(const QString &line, const QString &reason)
{
    return reason.isEmpty() ? line : Words::tr("%1: %2").arg(line, reason);
}

} // namespace

std::vector<Sentence> decisionSentences(const notebook::StoredRun &stored)
{
    std::vector<Sentence> sentences;
    for (int index = 0; index < static_cast<int>(stored.decisions.size()); ++index) {
        const notebook::Decision &decision = stored.decisions[static_cast<std::size_t>(index)];
        const bool accepted = decision.kind == notebook::DecisionKind::Accepted;
        const QString what = accepted ? Words::tr("Accepted by %1, %2") : Words::tr("Rejected by %1, %2");
        sentences.push_back(
            {accepted ? State::Good : State::Bad,
             withReason(what.arg(decision.person, momentText(decision.at)), decision.reason)});
        for (const notebook::Reopening &reopening : stored.reopenings) {
            if (reopening.decision == index)
                sentences.push_back(
                    {State::Info, withReason(Words::tr("Put back on the bench by %1, %2")
                                                 .arg(reopening.person, momentText(reopening.at)),
                                             reopening.reason)});
        }
    }
    return sentences;
}

} // namespace plateau::ui
