// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/planning/laboratory.h"
#include "core/planning/planrecord.h"

#include <optional>
#include <vector>

namespace plateau::planning {

/// What is added to a rack that still stands on the bench, to repeat one of its samples.
struct RackRepeat {
    /// Named after the sample it repeats: "P-104, 10-fold".
    run::Sample sample;
    /// As many as the sample has that count, and its own blanks once more.
    std::vector<run::Tube> tubes;
    PlannedSample planned;
    bool operator==(const RackRepeat &) const = default;
};

/// The repeat of a sample as advised: with the chain of the advice, or where the laboratory has no glass for
/// that, with what its glass makes of the factor, or else of a stronger one whose signal, predicted from the run,
/// is still within the method's window. A larger volume of sample is rounded down to one that a pipette delivers
/// with the diluent beside it. As advised where no glass is listed or none does. What is known of the sample is
/// taken over from plan, which may be nullptr. Nothing where the run has no such sample.
std::optional<RackRepeat> repeatInRack(const assay::Method &method, const run::Run &run, const QString &sample,
                                       const evaluation::Advice &advised, const Glassware &glassware,
                                       const PlanRecord *plan);

/// The advice on a sample that no other sample of the run repeats yet: of the checks that failed. Nothing
/// where there is none.
std::optional<evaluation::Advice> openAdvice(const run::Run &run, const evaluation::Evaluation &evaluation,
                                             const QString &sample);

/// The sample of the same rack that repeats what the result is of and came out reportable; empty: there is none, or
/// not yet.
QString repeatedBy(const run::Run &run, const evaluation::Evaluation &evaluation, const evaluation::Result &result);

} // namespace plateau::planning
