// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/evaluation/layout.h"

#include <span>
#include <vector>

namespace plateau::evaluation {

/// A standard uncertainty with its degrees of freedom (infinite for what is known from elsewhere).
struct UncertaintyTerm {
    QString term;
    double standardUncertainty = 0;
    double degreesOfFreedom = 0;
};

/// Square root of the sum of squares (JCGM 100, 5.1.2).
double combinedStandardUncertainty(std::span<const UncertaintyTerm> terms);
/// Welch-Satterthwaite (JCGM 100, G.4.1): uc^4 / sum(u_i^4 / nu_i); infinite where no term has finitely many.
double effectiveDegreesOfFreedom(std::span<const UncertaintyTerm> terms);
/// 2 while the degrees of freedom are 30 or more, below that Student's t at 95.45 % (not truncated to a whole
/// number: JCGM 100, G.4.1 allows interpolation, and k does not jump).
double coverageFactor(double degreesOfFreedom);

/// One result of a run, and what it counts in the quantity whose budget is made.
struct Contribution {
    const MeasurandTerms *terms = nullptr;
    double factor = 1;
    /// Those the mean is taken over, all computable, and their values in the result's unit.
    std::vector<int> tubes;
    std::vector<double> values;
};

/// The results of one sample in one run that a quantity is made of. Expects run().uncertainty.
struct RunShare {
    const Layout *layout = nullptr;
    const run::Sample *sample = nullptr;
    std::vector<Contribution> contributions;
};

/// First-order budget (JCGM 100) of the sum of factor x result: the sensitivities come from the Model itself
/// by automatic differentiation. Every input of a run moves all results of that run together, so that what
/// they share adds or cancels with its sign. Between runs only the absorptivity is shared, where chromophore,
/// wavelength and value are the same; then the terms of each run carry its method's id. Terms that contribute
/// nothing are left out.
std::vector<UncertaintyTerm> uncertaintyTerms(std::span<const RunShare> shares);

/// What the budget calls the scatter of a sample's own tubes.
QString repeatabilityName();

/// Fills budget, expanded uncertainty, coverage factor and degrees of freedom of the result.
void applyUncertainty(Result &result, std::vector<UncertaintyTerm> terms);

} // namespace plateau::evaluation
