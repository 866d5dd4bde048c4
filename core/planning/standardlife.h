// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/run/run.h"

#include <QDateTime>

#include <optional>

namespace plateau::planning {

/// Hours after which the checks call the standard too old: when minStandardRemaining is left of it, and after
/// maxStandardAge_h at the latest. Nothing for one that keeps its strength.
std::optional<double> standardLife_h(const run::Standard &standard, const evaluation::Rules &rules = {});
/// The last whole minute within that life; nothing where it is not known when the standard was made either.
std::optional<QDateTime> useStandardBy(const run::Standard &standard, const evaluation::Rules &rules = {});

} // namespace plateau::planning
