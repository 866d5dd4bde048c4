// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <optional>
#include <span>

namespace plateau::quality {

/// Arithmetic mean; nothing for an empty list.
std::optional<double> mean(std::span<const double> values);
/// Standard deviation with n - 1, two-pass; nothing for fewer than two.
std::optional<double> standardDeviation(std::span<const double> values);
/// max - min; 0 for an empty list.
double range(std::span<const double> values);
/// Lag-1 autocorrelation sum (y_i - m)(y_{i+1} - m) / sum (y_i - m)^2; nothing where the sum is zero.
std::optional<double> lag1Autocorrelation(std::span<const double> values);

} // namespace plateau::quality
