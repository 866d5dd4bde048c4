// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/sixthschemastep.h"

namespace plateau::notebook {

/// What each subject adds to schema step 7, in a file of its own, in the order they are made.
SchemaPart lotKeepingPart();

} // namespace plateau::notebook
