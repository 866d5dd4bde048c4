// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/problemlist.h"

#include <algorithm>

namespace plateau::ui {

// A view has a State of its own: hence ui::State.
ProblemList::ProblemList(const Theme &theme, const QString &objectName, QWidget *parent)
    : SentenceList(theme, tr("Problems"), objectName, parent)
{
}

void ProblemList::setProblems(const assay::Problems &problems)
{
    std::vector<Sentence> sentences;
    for (const assay::Problem &problem : problems) {
        const bool error = problem.severity == assay::Problem::Severity::Error;
        const QString text =
            problem.pointer.isEmpty() ? problem.message : tr("%1: %2").arg(problem.pointer, problem.message);
        sentences.push_back({error ? ui::State::Bad : ui::State::Attention, text});
    }
    std::stable_partition(sentences.begin(), sentences.end(),
                          [](const Sentence &sentence) { return sentence.state == ui::State::Bad; });
    setSentences(std::move(sentences));
}

} // namespace plateau::ui
