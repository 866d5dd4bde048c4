// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/checklines.h"
#include "core/evaluation/reportunit.h"

namespace plateau::evaluation {

/// The sentence with every amount that stands in it in one unit given in the other, with as many figures: a laboratory that
/// reports in mg/L reads its checks in mg/L. As it is where the units differ by more than a power of ten.
QString inUnit(const QString &sentence, ReportUnit from, ReportUnit to);
/// The same of all that a check says.
CheckLine inUnit(CheckLine line, ReportUnit from, ReportUnit to);

} // namespace plateau::evaluation
