// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <optional>
#include <span>

namespace plateau::quality {

/// Ordinary least squares y = intercept + slope x, centred formulas.
/// Formulas: Harvey, Analytical Chemistry 2.1, section 5.4 (from memory); tests/published holds them against
/// certified and printed values.
struct Line {
    /// Fitted without an intercept.
    bool throughOrigin = false;
    double intercept = 0;
    double slope = 0;
    int n = 0;
    double xMean = 0;
    double yMean = 0;
    /// Sum of squared deviations of x.
    double sxx = 0;
    double residualSumOfSquares = 0;
    /// n - 2 degrees of freedom (n - 1 through the origin); absent where none is left, and so are the
    /// standard errors. The intercept of a line through the origin has no standard error.
    std::optional<double> residualStandardDeviation;
    std::optional<double> interceptStandardError;
    std::optional<double> slopeStandardError;
    /// 1 - residual / total sum of squares; absent where y does not vary.
    std::optional<double> rSquared;
};

/// Nothing for fewer than two points, unequal lengths, or an x that does not vary.
std::optional<Line> fitLine(std::span<const double> x, std::span<const double> y);
/// Line through the origin (intercept 0; n - 1 degrees of freedom; rSquared against the uncorrected sum).
/// Nothing for no point, unequal lengths, or an x that is 0 throughout.
std::optional<Line> fitLineThroughOrigin(std::span<const double> x, std::span<const double> y);

/// x at which the line has this y, and its standard uncertainty s/b sqrt(1/p + 1/n + (x0 - xMean)^2 / sxx)
/// for y the mean of p readings; with p = 0 the 1/p term is left out (the line's own part). Through the
/// origin the terms after 1/p are x0^2 / sum x^2. Nothing for a level line; no uncertainty without a residual
/// deviation.
struct InversePrediction {
    double x = 0;
    std::optional<double> standardUncertainty;
};
std::optional<InversePrediction> readBack(const Line &line, double y, int p);

} // namespace plateau::quality
