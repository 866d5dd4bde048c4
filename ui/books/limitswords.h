// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/specification.h"

namespace plateau::ui {

/// "Maximum", "Label threshold" and so on.
QString limitKindText(evaluation::LimitKind kind);
/// "guard band for acceptance, 1.64 u (one-sided 95 %)": the rule with its guard band, for a cell.
QString decisionRuleText(const evaluation::Specification &limit);
/// "1.64 u (one-sided 95 %)", "times the expanded uncertainty U", "in the unit of the limit": for a choice.
QString guardBandText(evaluation::GuardBand::Kind kind);
/// What the rule does with a result, as a sentence; g is the guard band.
QString decisionRuleMeaning(evaluation::DecisionRule rule);

} // namespace plateau::ui
