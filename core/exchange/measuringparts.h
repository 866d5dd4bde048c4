// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/jsonfields.h"
#include "core/planning/laboratory.h"

#include <nlohmann/json.hpp>

namespace plateau::exchange {

/// The members of a laboratory's document that say how well it measures: photometer, methodUncertainties.
/// Each may be left out, and is written only where it says something.
void takeMeasuring(Fields &fields, planning::Laboratory &laboratory);
void writeMeasuring(nlohmann::ordered_json &object, const planning::Laboratory &laboratory);

} // namespace plateau::exchange
