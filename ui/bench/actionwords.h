// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/nextaction.h"
#include "ui/shared/theme.h"

namespace plateau::ui {

struct Rack;

/// "Rack B, tube 7: add 20 µL starter", "Rack A, tube 3: key A2 again", "Rack A: review and decide".
QString actionWords(const NextAction &action, const Rack &rack);
/// How pressing it is: open is good, late needs attention.
State stateOf(const NextAction &action);

} // namespace plateau::ui
