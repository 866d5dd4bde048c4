// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/decisionstore.h"
#include "core/notebook/inputs.h"

namespace plateau::notebook {

/// What the search keeps of the decision that stands, read from its evaluation as it was written: rows of
/// search_result, search_flag, search_standard and search_blank, the run first.
struct DecisionFacts {
    using Rows = std::vector<std::vector<Cell>>;
    Rows results;
    Rows flags;
    Rows standards;
    Rows blanks;
};
/// inputs: nullptr where they cannot be read. decision: nullptr on the bench, where only the standards are
/// known.
DecisionFacts factsOf(RunId run, const Inputs *inputs, const DecisionRow *decision);

} // namespace plateau::notebook
