// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/plan/feasibility.h"
#include "ui/shared/timechartdata.h"

namespace plateau::ui {

/// The schedule of a rack, and of a second one beside it, as rows of tubes against time. names: of the first
/// rack's tubes in their order. Empty where there is no schedule.
TimeChartData pictureOf(const Feasibility &feasibility, const assay::Method &method, const QStringList &names,
                        const assay::Method *secondMethod = nullptr);

} // namespace plateau::ui
