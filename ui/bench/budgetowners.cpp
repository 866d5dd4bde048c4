// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/budgetowners.h"

#include "core/evaluation/format.h"
#include "core/planning/uncertaintyowners.h"
#include "ui/shared/shownnumbers.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct BudgetOwnersWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::BudgetOwners)
};

State stateOf(const planning::OwnedInput &owned)
{
    if (!owned.isKnown)
        return State::Pending;
    return owned.isDefault ? State::Info : State::Good;
}

} // namespace

std::vector<Sentence> budgetOwners(const notebook::StoredRun &stored, const evaluation::Result &result)
{
    std::vector<Sentence> sentences;
    if (result.budget.empty())
        return sentences;
    for (planning::OwnedInput owned : planning::ownersOnRecord(stored.run, stored.plan, result.sample)) {
        owned.source = withDaysShown(owned.source);
        sentences.push_back({stateOf(owned), evaluation::capitalised(planning::ownedText(owned))});
    }
    const bool restsOnAnother = std::ranges::any_of(
        result.terms, [&](const evaluation::ResultTerm &term) { return term.method != stored.method.id; });
    if (restsOnAnother)
        sentences.push_back(
            {State::Info, BudgetOwnersWords::tr("A part that begins with a method's name comes from the run "
                                                "by that method; its own review says whose it is.")});
    return sentences;
}

} // namespace plateau::ui
