// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"

#include <QStringList>

namespace plateau::evaluation {

/// Whether every result can be reported but those of these samples, and at least one can: what did not pass
/// is theirs alone, since a failed check of the run or of its standards lets no result be reported.
bool isReportableBut(const Evaluation &evaluation, const QStringList &samples);

} // namespace plateau::evaluation
