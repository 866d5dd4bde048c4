// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/outcome.h"

namespace plateau::equipment {

/// Of a check without problems; without the verdict as a whole.
Outcome volumeOutcome(const Item &item, const Check &check);
/// The finding with its verdict.
Finding held(Finding finding);
/// Where a limit comes from: as it was offered, unless another one was keyed with the check.
QString sourceOf(const Item &item, const Check &check, const QString &key, const QString &offered);

} // namespace plateau::equipment
