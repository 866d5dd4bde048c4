// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/derivedbound.h"

#include <algorithm>

namespace plateau::evaluation {

namespace {

bool isOpen(const SumTerm &term)
{
    return term.result->greaterThan.has_value();
}

} // namespace

bool isAnyOnlyKnownToBeLarger(const std::vector<SumTerm> &terms)
{
    return std::ranges::any_of(terms, isOpen);
}

std::optional<SumBound> boundOf(const std::vector<SumTerm> &terms)
{
    const auto opens = [&](bool added) {
        return std::ranges::any_of(
            terms, [added](const SumTerm &term) { return isOpen(term) && (term.factor > 0) == added; });
    };
    if (opens(true) == opens(false))
        return std::nullopt;
    SumBound bound{opens(true), 0};
    for (const SumTerm &term : terms) {
        const bool atItsLeast = bound.isLower == (term.factor > 0);
        const double belowLimit = atItsLeast ? 0 : term.result->lessThan.value_or(0);
        bound.value += term.factor * (term.result->lessThan ? belowLimit : *term.result->value);
    }
    return bound.value > 0 ? std::optional(bound) : std::nullopt;
}

} // namespace plateau::evaluation
