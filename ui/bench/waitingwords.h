// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/shelf.h"

#include <QString>

namespace plateau::ui {

/// "dilute at least 10-fold", "take 0.5 mL of it".
QString adviceWords(const evaluation::Advice &advice);
/// Why the sample waits, in the middle of a line: "registered, not run yet", "repeat of run 12 (failed: Largest
/// net signal): dilute 10-fold", or both. A reason that was given stands in place of the checks.
QString whyItWaits(const notebook::WaitingSample &waiting);

} // namespace plateau::ui
