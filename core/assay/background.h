// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"

namespace plateau::assay {

/// What is wrong with the parts beside the recipe: typical ranges, derived results, the usual standard,
/// reactions, interferences, sample preparation and cautions.
void checkBackground(const Method &method, Problems &problems);

} // namespace plateau::assay
