// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/specification.h"
#include "core/notebook/records.h"
#include "core/planning/laboratory.h"

namespace plateau::notebook {

/// What the results of a run are read against beyond the run itself: for a decided one what held when it was
/// decided, whatever was saved since.
struct DecisionBasis {
    planning::Laboratory laboratory;
    std::vector<evaluation::Specification> specifications;
    /// How the specifications came to be; nothing where nobody had saved any.
    std::optional<LaboratorySaving> specificationsSaving;
};

} // namespace plateau::notebook
