// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

namespace plateau::quality {

/// Student's t such that this part of the distribution lies within +-t. 0 < coverage < 1; degreesOfFreedom >
/// 0, not necessarily whole; infinity gives the normal distribution. NaN for anything else.
double studentTwoSided(double coverage, double degreesOfFreedom);

/// The part of Student's t distribution that lies above t. degreesOfFreedom as above; t may be infinite.
double studentAbove(double t, double degreesOfFreedom);

/// The point below which this part of all ranges of n independent standard normal values lies: the
/// studentised range with infinite degrees of freedom. 0 < coverage < 1, n >= 2; NaN for anything else.
/// Solved by integration, some 0.1 ms a call.
double studentisedRange(double coverage, int n);

/// 95 % critical range factor f(n) of ISO 5725-6: the range of n results under repeatability is at most
/// f(n) s_r in 95 of 100 cases (the 95 % point of the studentised range with infinite degrees of freedom).
/// n >= 2, NaN below. f(2) = 2.77, printed 2.8. A table up to n = 30.
double criticalRangeFactor(int n);

} // namespace plateau::quality
