// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/evaluation/checklines.h"

#include <vector>

namespace plateau::evaluation {

/// What the method asks of every run and this one cannot say, since nothing in it was made for it: the recovery of a
/// standard where it has no tube of one, nor of a control. A run that a standard calibrates has one.
std::vector<CheckLine> checksNotMade(const assay::Method &method, const run::Run &run);

/// The same of a run that is planned, before anything is pipetted: warnings that say what to add, at their place in a
/// plateau-run/1 document.
assay::Problems checksNotPlanned(const assay::Method &method, const run::Run &run);

} // namespace plateau::evaluation
