// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/exchange/jsonfields.h"

namespace plateau::exchange {

/// The parts of a method beside its recipe: derived, standard, reactions, interferences, samplePreparation
/// and cautions. All may be left out.
void takeBackground(Fields &fields, assay::Method &method);

} // namespace plateau::exchange
