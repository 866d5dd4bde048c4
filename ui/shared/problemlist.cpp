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

void ProblemList::setProblems(const assay::Problems &problems, const std::vector<HelpPlace> &places)
{
    std::vector<std::pair<Sentence, HelpPlace>> rows;
    for (std::size_t i = 0; i < problems.size(); ++i) {
        const assay::Problem &problem = problems[i];
        const bool error = problem.severity == assay::Problem::Severity::Error;
        const QString text =
            problem.pointer.isEmpty() ? problem.message : tr("%1: %2").arg(problem.pointer, problem.message);
        rows.push_back({{error ? ui::State::Bad : ui::State::Attention, text},
                        i < places.size() ? places[i] : HelpPlace()});
    }
    std::stable_partition(rows.begin(), rows.end(),
                          [](const auto &row) { return row.first.state == ui::State::Bad; });
    std::vector<Sentence> sentences;
    m_places.clear();
    for (auto &[sentence, place] : rows) {
        sentences.push_back(std::move(sentence));
        m_places.push_back(std::move(place));
    }
    setSentences(std::move(sentences));
}

HelpPlace ProblemList::placeNow() const
{
    const auto row = static_cast<std::size_t>(std::max(0, currentIndex().row()));
    return row < m_places.size() ? m_places[row] : HelpPlace();
}

} // namespace plateau::ui
