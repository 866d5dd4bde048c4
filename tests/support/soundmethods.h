// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "tests/support/random.h"

namespace plateau::test {

/// A method that assay::problemsOf finds no error in, otherwise as odd as chance makes it: one to three
/// measurands in one tube, every optional part there or not, texts of many scripts, numbers of full
/// precision.
assay::Method soundMethod(Random &random);

} // namespace plateau::test
