// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"

namespace plateau::assay {

/// What is wrong with the order of the work: parts played by components that do not exist, steps that add
/// what is unknown or in the tube already, readings before there is anything to read, a tube that runs over.
void checkProcedure(const Method &method, Problems &problems);

/// What is wrong with the readings that signals and the extrapolation ask for.
void checkSignals(const Method &method, Problems &problems);

} // namespace plateau::assay
