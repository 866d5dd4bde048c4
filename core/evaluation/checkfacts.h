// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/checklines.h"
#include "core/evaluation/checks.h"

namespace plateau::evaluation {

/// What a check found and what it held that against, in words.
struct CheckFact {
    QString found;
    QString limit;
    LimitOrigin origin = LimitOrigin::Method;
    /// How near its limit it is: the larger, the nearer; nothing where there is no number.
    std::optional<double> strain{};
};

/// lot: of a check of lots, the one it is about.
CheckFact factOf(const CheckContext &context, const Check &check, const run::LotUse *lot = nullptr);
/// "Blank signal"
QString checkTitle(CheckId id);
/// What it means for a result that the check failed and the result is reported all the same, as a sentence that
/// follows its finding; empty where the finding says it.
QString checkConsequence(CheckId id);
/// What a check of the run is about, for people: "sample P-104, sulphite", "control C-3". scopeWord says it to
/// programs.
QString scopeText(const Scope &scope, const run::Run &run);
/// For people; verdictWord says it to programs.
QString verdictText(Verdict verdict);
/// The tubes a check is about: its own, or those of its scope that count.
std::vector<int> tubesOf(const CheckContext &context, const Check &check);
/// Index of the measurand of its scope; nothing of a derived quantity.
std::optional<size_t> measurandOf(const CheckContext &context, const Check &check);

/// CommonPractice for the usual rule.
LimitOrigin originOf(bool isUsual);
/// How far so many blanks may be apart: by the rule, or what the noise of the readings makes of it.
struct BlankSpreadLimit {
    double limit = 0;
    LimitOrigin origin = LimitOrigin::CommonPractice;
};
BlankSpreadLimit blankSpreadLimit(const CheckContext &context, int blanks);
/// Held against a largest value.
CheckFact upTo(double value, double limit, int decimals, const QString &unit, LimitOrigin origin);

/// Of replicates and of different sample volumes; of standards, spikes, and a standard's age.
CheckFact agreementFact(const CheckContext &context, const Check &check, size_t measurand);
CheckFact standardFact(const CheckContext &context, const Check &check, size_t measurand);
CheckFact spikeFact(const CheckContext &context, const Check &check, size_t measurand);
CheckFact ageFact(const CheckContext &context, const Check &check);

} // namespace plateau::evaluation
