// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

#include <nlohmann/json.hpp>

namespace plateau::exchange {

/// Adds the parts of a method beside its recipe, each only where there is something to say.
void writeBackground(nlohmann::ordered_json &object, const assay::Method &method);

} // namespace plateau::exchange
