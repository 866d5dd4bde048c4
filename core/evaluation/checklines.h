// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"

#include <QString>

#include <optional>
#include <vector>

namespace plateau::evaluation {

/// Where the limit of a check comes from. Laboratory: a rule that differs from the usual one; CommonPractice:
/// the usual one, which nobody published. Noise: the readings themselves, by their uncertainty. Label: what
/// stands on a lot.
enum class LimitOrigin { Method, Laboratory, CommonPractice, Noise, Label };
/// For a person: "method", "laboratory's rule", "common practice", "noise of the readings", "lot's label".
QString limitOriginName(LimitOrigin origin);

/// Repeat: failed, and a repeat is advised. Noted: failed, and yet the result is final (too little to
/// measure). Waiting: readings are missing. NotMade: the method asks for it, and the run has nothing to make it with.
/// NotJudged: nothing to hold it against (a standard that calibrates).
enum class CheckOutcome { Failed, Repeat, Waiting, NotMade, NotJudged, Noted, Passed };

/// One kind of check for a table: what was found, its limit, where the limit comes from. What failed stands
/// alone; what passed alike is gathered, and the number is that of the one nearest its limit.
struct CheckLine {
    CheckId id = CheckId::ReadingMissing;
    CheckOutcome outcome = CheckOutcome::Passed;
    /// "Blank signal", "Recovery of the standard".
    QString what;
    /// "P-104", "P-104 (of 12 nearest its limit)"; empty: the whole run.
    QString where;
    /// "98.2 % of 0.200 g/L", "none"; a dash where there is no number.
    QString found;
    QString limit;
    LimitOrigin origin = LimitOrigin::Method;
    /// Of the check, of several the one nearest its limit.
    QString message;
    /// How many are gathered here.
    int checks = 1;
    bool operator==(const CheckLine &) const = default;
};

/// What failed first, then what was not made, then what passed, each in the order a run is judged in: blanks, standards and controls,
/// replicates, spikes, times, lots, signals, readings. evaluation: of this run by this method and these
/// rules.
std::vector<CheckLine> checkLines(const assay::Method &method, const run::Run &run,
                                  const Evaluation &evaluation, const Rules &rules = {});

/// Failed or to be repeated: the number of checks, not of lines.
int failedChecks(const std::vector<CheckLine> &lines);

} // namespace plateau::evaluation
