// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/run/run.h"

namespace plateau::exchange {

/// SHA-256 of a run with its method, as plateau-run/1; hexadecimal. What a decision in a notebook rests on
/// and `plateau verify` recomputes; two runs that differ in one sign differ in it.
QString runContentHash(const run::Run &run, const assay::Method &method);

} // namespace plateau::exchange
