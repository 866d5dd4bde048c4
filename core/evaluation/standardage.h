// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/evaluation/evaluation.h"

#include <optional>

namespace plateau::evaluation {

/// A standard of a run when it is used; where nobody said when, when the run starts.
struct StandardAge {
    double age_h = 0;
    /// Of its strength when made, 0 to 1.
    double remaining = 1;
    bool tooOld = false;
    /// "14.0 h old, 75.4 % of its strength left"
    QString facts() const;
};

/// Nothing for a standard that keeps its strength, or of which nobody said when it was made.
std::optional<StandardAge> ageOf(const run::Standard &standard, const run::Run &run, const Rules &rules = {});

/// A warning for each standard that is too old already, at its place in a plateau-run/1 document: to be said
/// before anything is pipetted.
assay::Problems agedStandards(const run::Run &run, const Rules &rules = {});

} // namespace plateau::evaluation
