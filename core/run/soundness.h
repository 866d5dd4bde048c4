// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/run/run.h"

namespace plateau::run {

/// Everything that would keep the evaluation from using the run with this method (errors) and what an
/// analyst should know (warnings), each with the JSON pointer of its place in a plateau-run/1 document:
/// two samples of one id, a tube naming an absent sample or standard, a take larger than makeUpTo, a solid
/// without mass, a wavelength the method has no absorptivity for, a reading the method does not take, a line
/// through fewer than three levels, usedAt before preparedAt; a sample used by no tube is a warning.
assay::Problems problemsOf(const Run &run, const assay::Method &method);

/// The part of it that can be said before the method is known.
assay::Problems problemsOf(const Run &run);

} // namespace plateau::run
