// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/evaluation/evaluation.h"
#include "core/evaluation/reportunit.h"
#include "core/evaluation/specification.h"

#include <QString>

#include <optional>
#include <span>

namespace plateau::evaluation {

/// On which side of a limit a result lies; of a label threshold, inside is below it. Undecided: cannot be
/// decided at this uncertainty, or for another reason that the sentence names.
enum class Standing { Inside, Outside, Undecided };
/// "inside", "outside", "undecided".
QString standingWord(Standing standing);
/// For a person: "inside", "outside", "cannot be decided"; of a label threshold "below the threshold", "at or
/// above the threshold", "cannot be decided".
QString standingName(Standing standing, LimitKind kind);

/// Probability that the true value lies beyond the limit (a range: beyond either), if it is distributed about
/// the result as Student's t with the result's degrees of freedom, or normally where they are infinite (JCGM
/// 106:2012, section 7). Nothing is known beforehand of the product.
struct BeyondLimit {
    double probability = 0;
    /// Infinite: normal.
    double degreesOfFreedom = 0;
    bool operator==(const BeyondLimit &) const = default;
};
/// "probability 3 % that the true value lies beyond the limit, if it is distributed normally about the
/// result".
QString beyondLimitText(const BeyondLimit &beyond);

struct Judgement {
    Standing standing = Standing::Undecided;
    /// "inside: 152.3 ± 9.1 mg/L against at most 200 mg/L (simple acceptance)"; why, where undecided.
    QString sentence;
    /// What was held against the limit, in its unit; absent where the result cannot be given in that unit.
    std::optional<Reported> reported{};
    /// Of one side, in the limit's unit; absent without one, and where it needs an uncertainty that is not
    /// stated.
    std::optional<double> guardBand{};
    /// Absent without an uncertainty, and of a result that is only known to be less or greater than
    /// something.
    std::optional<BeyondLimit> beyond{};
    bool operator==(const Judgement &) const = default;
};

/// Expects a specification that problemsOf finds nothing wrong with, and a result in its unit (else
/// undecided). A result without an uncertainty is decided by simple acceptance, by an absolute guard band and
/// where a rule leaves the guard band out of account, else not at all: never by a laxer rule than the one
/// named. "Less than" and "greater than" are decided where the whole of what they leave open lies on one
/// side.
Judgement judge(const Reported &reported, const Specification &specification);
/// The same of a result in the evaluation's unit; others: as in molarMassOf.
Judgement judge(const Result &result, const assay::Method &method, const Specification &specification,
                std::span<const assay::Method> others = {});

} // namespace plateau::evaluation
