// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"

#include <QString>

#include <optional>

namespace plateau::ui {

/// How a sample is to be repeated, as somebody typed it.
struct RepeatHow {
    /// Absent: as the evaluation advises, or it cannot be read.
    std::optional<evaluation::Advice> advice;
    /// Why it cannot be read and what would be right; lower case, the end of a sentence. Empty: it can.
    QString fault;
};

/// "20" or "20-fold" is a dilution by common glassware, "5 to 100" one with 5 mL made up to 100 mL, "1 to 10
/// then 5 to 50" one in two steps, "0.5 mL" the sample in the tube, undiluted; mL may stand behind every
/// volume of a step. Blank: as advised, and where nothing is, as the run had it.
RepeatHow repeatHow(const QString &typed);

/// "dilute 20-fold (5 mL to 100 mL)"; lower case.
QString repeatHowText(const evaluation::Advice &advice);

} // namespace plateau::ui
