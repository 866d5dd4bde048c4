// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/run/run.h"

namespace plateau::run {

/// Where run and method do not fit together: another method's id, a wavelength without absorptivity,
/// readings, components or measurands the method does not have, a tube that runs over, too few standards for
/// the calibration. Times that contradict the method's order are warnings.
void checkFit(const Run &run, const assay::Method &method, assay::Problems &problems);

} // namespace plateau::run
