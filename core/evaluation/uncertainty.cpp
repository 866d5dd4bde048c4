// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/uncertainty.h"

#include "core/quality/distributions.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace plateau::evaluation {

double combinedStandardUncertainty(std::span<const UncertaintyTerm> terms)
{
    double variance = 0;
    for (const UncertaintyTerm &term : terms)
        variance += term.standardUncertainty * term.standardUncertainty;
    return std::sqrt(variance);
}

double effectiveDegreesOfFreedom(std::span<const UncertaintyTerm> terms)
{
    double sum = 0;
    for (const UncertaintyTerm &term : terms) {
        if (std::isfinite(term.degreesOfFreedom))
            sum += std::pow(term.standardUncertainty, 4) / term.degreesOfFreedom;
    }
    if (sum == 0)
        return std::numeric_limits<double>::infinity();
    return std::pow(combinedStandardUncertainty(terms), 4) / sum;
}

double coverageFactor(double degreesOfFreedom)
{
    constexpr double manyDegreesOfFreedom = 30;
    constexpr double coverage = 0.9545;
    return degreesOfFreedom >= manyDegreesOfFreedom ? 2.0
                                                    : quality::studentTwoSided(coverage, degreesOfFreedom);
}

void applyUncertainty(Result &result, std::vector<UncertaintyTerm> terms)
{
    std::ranges::stable_sort(terms, std::ranges::greater{}, &UncertaintyTerm::standardUncertainty);
    const double combined = combinedStandardUncertainty(terms);
    const double degreesOfFreedom = effectiveDegreesOfFreedom(terms);
    if (!std::isfinite(combined))
        return;
    result.coverageFactor = coverageFactor(degreesOfFreedom);
    result.expandedUncertainty = *result.coverageFactor * combined;
    result.degreesOfFreedom = degreesOfFreedom;
    result.budget.clear();
    for (const UncertaintyTerm &term : terms) {
        const double share = term.standardUncertainty * term.standardUncertainty / (combined * combined);
        result.budget.push_back({term.term, term.standardUncertainty, share});
    }
}

} // namespace plateau::evaluation
