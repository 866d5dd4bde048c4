// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/line.h"

#include "core/quality/statistics.h"

#include <cmath>
#include <cstddef>

namespace plateau::quality {

namespace {

/// Sum of (x - xCentre)(y - yCentre).
double centredProducts(std::span<const double> x, double xCentre, std::span<const double> y, double yCentre)
{
    double sum = 0;
    for (std::size_t i = 0; i < x.size(); ++i)
        sum += (x[i] - xCentre) * (y[i] - yCentre);
    return sum;
}

double sumOfSquaredResiduals(const Line &line, std::span<const double> x, std::span<const double> y)
{
    // From the centre, not from the intercept: far from x = 0 the intercept carries the slope's rounding.
    const double xOrigin = line.throughOrigin ? 0 : line.xMean;
    const double yOrigin = line.throughOrigin ? 0 : line.yMean;
    double sum = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        const double residual = (y[i] - yOrigin) - line.slope * (x[i] - xOrigin);
        sum += residual * residual;
    }
    return sum;
}

std::optional<double> rSquaredOf(double residualSumOfSquares, double totalSumOfSquares)
{
    if (totalSumOfSquares == 0)
        return std::nullopt;
    return 1 - residualSumOfSquares / totalSumOfSquares;
}

/// What both fits share: counts, means and the spread of x.
Line summary(std::span<const double> x, std::span<const double> y)
{
    Line line;
    line.n = static_cast<int>(x.size());
    line.xMean = *mean(x);
    line.yMean = *mean(y);
    line.sxx = centredProducts(x, line.xMean, x, line.xMean);
    return line;
}

} // namespace

std::optional<Line> fitLine(std::span<const double> x, std::span<const double> y)
{
    if (x.size() < 2 || x.size() != y.size() || range(x) == 0)
        return std::nullopt;
    Line line = summary(x, y);
    line.slope = centredProducts(x, line.xMean, y, line.yMean) / line.sxx;
    line.intercept = line.yMean - line.slope * line.xMean;
    line.residualSumOfSquares = sumOfSquaredResiduals(line, x, y);
    if (range(y) > 0)
        line.rSquared = rSquaredOf(line.residualSumOfSquares, centredProducts(y, line.yMean, y, line.yMean));
    if (line.n > 2) {
        const double s = std::sqrt(line.residualSumOfSquares / (line.n - 2));
        line.residualStandardDeviation = s;
        line.slopeStandardError = s / std::sqrt(line.sxx);
        line.interceptStandardError = s * std::sqrt(1.0 / line.n + line.xMean * line.xMean / line.sxx);
    }
    return line;
}

std::optional<Line> fitLineThroughOrigin(std::span<const double> x, std::span<const double> y)
{
    if (x.empty() || x.size() != y.size())
        return std::nullopt;
    const double xSquares = centredProducts(x, 0, x, 0);
    if (xSquares == 0)
        return std::nullopt;
    Line line = summary(x, y);
    line.throughOrigin = true;
    line.slope = centredProducts(x, 0, y, 0) / xSquares;
    line.residualSumOfSquares = sumOfSquaredResiduals(line, x, y);
    line.rSquared = rSquaredOf(line.residualSumOfSquares, centredProducts(y, 0, y, 0));
    if (line.n > 1) {
        const double s = std::sqrt(line.residualSumOfSquares / (line.n - 1));
        line.residualStandardDeviation = s;
        line.slopeStandardError = s / std::sqrt(xSquares);
    }
    return line;
}

std::optional<InversePrediction> readBack(const Line &line, double y, int p)
{
    if (line.slope == 0)
        return std::nullopt;
    InversePrediction prediction;
    prediction.x = (y - line.intercept) / line.slope;
    if (!line.residualStandardDeviation)
        return prediction;
    const double readings = p > 0 ? 1.0 / p : 0;
    const double fromMean = prediction.x - line.xMean;
    const double fit = line.throughOrigin
                           ? prediction.x * prediction.x / (line.sxx + line.n * line.xMean * line.xMean)
                           : 1.0 / line.n + fromMean * fromMean / line.sxx;
    prediction.standardUncertainty =
        *line.residualStandardDeviation / std::abs(line.slope) * std::sqrt(readings + fit);
    return prediction;
}

} // namespace plateau::quality
