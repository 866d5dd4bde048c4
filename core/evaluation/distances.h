// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/doubts.h"
#include "core/evaluation/othertubes.h"
#include "core/evaluation/sampleview.h"

#include <optional>

namespace plateau::evaluation {

/// How far a reading is from what other tubes show at the same point; the rules stand in doubts.h.
std::optional<Doubt> farInReading(const OtherTubes &others, int tube, const QString &reading,
                                  double absorbance, const Rules &rules);

/// The same where no other tube is read yet, against what blanks of earlier runs showed there.
std::optional<Doubt> farFromUsual(const OtherTubes &others, int tube, const QString &reading, double absorbance,
                                  double usualBlank);

/// The same for the signal that the reading completes. view: of the tube's contents, as one measurand sees
/// them; signals of the tube and of its replicates stand in the view's evaluation.
std::optional<Doubt> farInSignal(const SampleView &view, int tube, const std::vector<int> &replicates);

} // namespace plateau::evaluation
