// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"

namespace plateau::assay {

/// What could be worked and evaluated but is hardly meant, as warnings: a reading with no wait since the last
/// addition, a starter before the first or after the last reading, a signal with nothing added between its
/// readings, a sample range that no diluent makes up for, steps after the last reading, a signal beyond the
/// photometer's limit. A signal whose later reading is taken before the sample is in the tube is an error.
void checkPlausibility(const Method &method, Problems &problems);

} // namespace plateau::assay
