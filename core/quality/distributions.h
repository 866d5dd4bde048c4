// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

namespace plateau::quality {

/// Student's t such that this part of the distribution lies within +-t. degreesOfFreedom > 0, not
/// necessarily whole; infinity gives the normal distribution.
double studentTwoSided(double coverage, double degreesOfFreedom);

/// 95 % critical range factor f(n) of ISO 5725-6: the range of n results under repeatability is at most
/// f(n) s_r in 95 of 100 cases (the 95 % point of the studentised range with infinite degrees of freedom).
/// n >= 2. f(2) = 2.77, printed 2.8.
double criticalRangeFactor(int n);

} // namespace plateau::quality
