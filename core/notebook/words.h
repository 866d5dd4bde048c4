// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/lots.h"
#include "core/notebook/records.h"
#include "core/notebook/reporting.h"

namespace plateau::notebook {

/// The words that stand in the file for what is an enumeration in memory. A word that is none of them throws
/// Failure(Damaged).
QString calibrationWord(run::Calibration calibration);
run::Calibration calibrationOf(const QString &word);
QString formWord(run::Form form);
run::Form formOf(const QString &word);
run::Role roleOf(const QString &word);
QString decisionWord(DecisionKind kind);
DecisionKind decisionKindOf(const QString &word);
QString matrixWord(assay::Matrix matrix);
assay::Matrix matrixOf(const QString &word);
QString markWord(MarkKind kind);
planning::UncertaintyInput inputOf(const QString &word);
MarkKind markKindOf(const QString &word);
/// Not of what was keyed, which has no word.
QString originWord(ReadingOrigin::Kind kind);
ReadingOrigin::Kind originOf(const QString &word);
QString movementWord(LotMovementKind kind);
LotMovementKind movementKindOf(const QString &word);
QString personRoleWord(PersonRole role);
PersonRole personRoleOf(const QString &word);
QString sampleDecisionWord(SampleDecisionKind kind);
SampleDecisionKind sampleDecisionKindOf(const QString &word);
QString reportRuleWord(ReportRule rule);
ReportRule reportRuleOf(const QString &word);
QString methodActWord(MethodActKind kind);
MethodActKind methodActKindOf(const QString &word);

} // namespace plateau::notebook
