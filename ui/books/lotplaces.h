// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/lot.h"

#include <vector>

namespace plateau::ui {

/// Where these containers are kept, each place once, by name.
std::vector<planning::StoragePlace> placesOf(const std::vector<planning::Lot> &lots);

} // namespace plateau::ui
