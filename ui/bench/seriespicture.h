// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/bench/places.h"
#include "ui/shared/absorbancechart.h"

namespace plateau::ui {

/// What was read again and again at that point, with the line the evaluation fitted; nothing where it was
/// read once at most.
std::optional<AbsorbanceSeries> seriesAt(const notebook::StoredRun &stored,
                                         const evaluation::Evaluation &evaluation, const Place &place);

} // namespace plateau::ui
