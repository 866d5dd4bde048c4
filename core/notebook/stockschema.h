// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/sixthschemastep.h"

namespace plateau::notebook {

/// What the books of the stock add to schema step 6, each in a file of its own.
SchemaPart equipmentTables();
SchemaPart standardTables();

} // namespace plateau::notebook
