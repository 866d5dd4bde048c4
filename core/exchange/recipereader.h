// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/exchange/jsonfields.h"

namespace plateau::exchange {

/// What is pipetted, in what order it is worked, and what is taken from the readings: components with their
/// parts, steps and measurands.
void takeRecipe(Fields &fields, assay::Method &method);

} // namespace plateau::exchange
