// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "tests/support/print.h"

#include <algorithm>

namespace plateau::test {

/// The check of that id about that scope; nullptr if it was not made.
inline const evaluation::Check *find(const std::vector<evaluation::Check> &checks, evaluation::CheckId id,
                                     const QString &scope)
{
    const auto found = std::ranges::find_if(checks, [&](const evaluation::Check &check) {
        return check.id == id && evaluation::scopeWord(check.scope) == scope;
    });
    return found == checks.end() ? nullptr : &*found;
}

/// Words of the checks that failed, in order.
inline std::vector<QString> failedWords(const std::vector<evaluation::Check> &checks)
{
    std::vector<QString> words;
    for (const evaluation::Check &check : checks) {
        if (!check.passed)
            words.push_back(evaluation::checkWord(check.id));
    }
    return words;
}

/// The scope of what is said about the sample of test::plainRun.
inline const QString sampleS = QStringLiteral("sample S");

/// Standard uncertainty of a result's term; 0 if the budget has none of that name.
inline double termOf(const evaluation::Result &result, const QString &name)
{
    const auto found = std::ranges::find(result.budget, name, &evaluation::BudgetTerm::term);
    return found == result.budget.end() ? 0 : found->standardUncertainty;
}

} // namespace plateau::test
