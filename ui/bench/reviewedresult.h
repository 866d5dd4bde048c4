// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/reportunit.h"
#include "core/evaluation/compliance.h"
#include "core/notebook/records.h"
#include "ui/bench/reviewbasis.h"
#include "ui/shared/sentencelist.h"

#include <map>
#include <vector>

namespace plateau::ui {

/// A result held against one of the laboratory's limits.
struct JudgedLimit {
    evaluation::Specification specification;
    evaluation::Judgement judgement;
    bool operator==(const JudgedLimit &) const = default;
};

/// A result as it is reviewed: in the unit that the laboratory reports the product in, with its limits. Words
/// only; every number is the evaluation's.
struct ReviewedResult {
    evaluation::Result result;
    Sentence verdict;
    /// "152.3 ± 9.1 mg/L"; a dash while there is no value.
    QString value;
    /// "9.1", in the unit of the value; a dash where there is one tube.
    QString spread;
    /// "10-fold", "undiluted".
    QString dilution;
    /// Why it is not in the unit that the laboratory reports in; empty where it is.
    QString obstacle;
    std::vector<JudgedLimit> limits;
    /// That the value stands in, or will; the evaluation's where the laboratory names none.
    std::optional<evaluation::ReportUnit> unit{};
    bool operator==(const ReviewedResult &) const = default;
};

/// In the evaluation's unit, without limits.
ReviewedResult plainlyReviewed(const run::Run &run, const evaluation::Evaluation &evaluation,
                               const evaluation::Result &result);
ReviewedResult reviewed(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
                        const evaluation::Result &result, const ReviewBasis &basis);

/// The one of its limits that speaks most against it, in a word: "outside", "cannot be decided", "inside". A
/// dash where there is none.
Sentence standingOf(const ReviewedResult &reviewed);

/// The unit that all results per volume stand in, and the one that all per mass do; of either none where they differ.
std::vector<evaluation::ReportUnit> commonUnits(const std::vector<ReviewedResult> &results);

/// Sentences about the run, in those units.
std::vector<Sentence> inUnitOf(const std::vector<ReviewedResult> &results, std::vector<Sentence> sentences);

/// Those that do not lie inside their limits: "Against the limits of the products: outside: P-104; cannot be
/// decided: P-105."; at most three by name; empty where all do, or there are no limits.
QString beyondLimitsText(const std::vector<ReviewedResult> &results);

/// All that is to be said of the result: what failed and what to do, its limits, its unit, and what the run
/// leaves open. methodNames: those of other methods, by their ids.
std::vector<Sentence> sentencesAbout(const ReviewedResult &reviewed, const assay::Method &method, const run::Run &run,
                                     const evaluation::Evaluation &evaluation,
                                     const std::map<QString, QString> &methodNames);

} // namespace plateau::ui
