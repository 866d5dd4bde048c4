// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"

#include <optional>
#include <vector>

namespace plateau::evaluation {

/// factor x result, as a term of a derived quantity. The result has a value.
struct SumTerm {
    double factor = 1;
    const Result *result = nullptr;
};

/// What is left of a sum of which some terms are only known to be larger (greaterThan).
struct SumBound {
    /// The sum is larger than value; else it is smaller.
    bool isLower = true;
    double value = 0;
};

bool isAnyOnlyKnownToBeLarger(const std::vector<SumTerm> &terms);
/// A lower bound where such terms are added, an upper one where they are taken off. Terms below their limit
/// count as 0 or as the limit, whichever keeps the bound safe; all others with their value, as a result that
/// is greater than does. Nothing where the bound says nothing of an amount: such terms enter with both
/// signs, or it is not above zero.
std::optional<SumBound> boundOf(const std::vector<SumTerm> &terms);

} // namespace plateau::evaluation
