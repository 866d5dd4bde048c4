// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/jsonfields.h"
#include "core/planning/laboratory.h"

#include <nlohmann/json.hpp>

namespace plateau::exchange {

/// What a laboratory's document says of review and reports; each part may be left out.
void takeReporting(Fields &fields, planning::Laboratory &laboratory);
void writeReporting(nlohmann::ordered_json &object, const planning::Laboratory &laboratory);

} // namespace plateau::exchange
