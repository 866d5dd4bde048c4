// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/exponentialloss.h"

#include "core/quality/distributions.h"

#include <algorithm>
#include <cmath>

namespace plateau::quality {

namespace {

bool isUsable(const AgedValue &value)
{
    const double u = value.standardUncertainty.value_or(1);
    return std::isfinite(value.age_h) && std::isfinite(value.value) && value.value > 0 && std::isfinite(u) &&
           u > 0;
}

/// The line through the logarithms, about the weighted centre.
struct LogLine {
    double weights = 0;
    double age = 0;
    double logarithm = 0;
    double ageSquares = 0;
    double slope = 0;
    /// Weighted sum of the squared residuals.
    double squares = 0;
};

double weightOf(const AgedValue &value, bool isWeighted)
{
    // u(ln c) = u(c) / c
    return isWeighted ? std::pow(value.value / *value.standardUncertainty, 2) : 1;
}

LogLine logLine(std::span<const AgedValue> values, bool isWeighted)
{
    LogLine line;
    for (const AgedValue &value : values) {
        const double weight = weightOf(value, isWeighted);
        line.weights += weight;
        line.age += weight * value.age_h;
        line.logarithm += weight * std::log(value.value);
    }
    line.age /= line.weights;
    line.logarithm /= line.weights;
    double products = 0;
    for (const AgedValue &value : values) {
        const double weight = weightOf(value, isWeighted);
        const double aside = value.age_h - line.age;
        line.ageSquares += weight * aside * aside;
        products += weight * aside * (std::log(value.value) - line.logarithm);
    }
    line.slope = products / line.ageSquares;
    for (const AgedValue &value : values) {
        const double residual =
            std::log(value.value) - line.logarithm - line.slope * (value.age_h - line.age);
        line.squares += weightOf(value, isWeighted) * residual * residual;
    }
    return line;
}

/// p of ln(1 - p).
double lossOf(double slope)
{
    return -std::expm1(slope);
}

} // namespace

std::optional<ExponentialLoss> fitExponentialLoss(std::span<const AgedValue> values)
{
    if (values.size() < 2 || !std::ranges::all_of(values, isUsable))
        return std::nullopt;
    const auto [youngest, oldest] = std::ranges::minmax(values, {}, &AgedValue::age_h);
    if (youngest.age_h == oldest.age_h)
        return std::nullopt;
    ExponentialLoss loss;
    loss.isWeighted =
        std::ranges::all_of(values, [](const AgedValue &v) { return v.standardUncertainty.has_value(); });
    const LogLine line = logLine(values, loss.isWeighted);
    loss.n = static_cast<int>(values.size());
    loss.youngest_h = youngest.age_h;
    loss.oldest_h = oldest.age_h;
    loss.lossPerHour = lossOf(line.slope);
    loss.atStart = std::exp(line.logarithm - line.slope * line.age);
    loss.degreesOfFreedom = loss.n - 2;
    if (loss.n == 2)
        return loss;
    const double variance = line.squares / loss.degreesOfFreedom; // of a value of weight 1
    loss.relativeScatter = std::sqrt(variance * loss.n / line.weights);
    const double slopeUncertainty = std::sqrt(variance / line.ageSquares);
    loss.standardUncertainty = (1 - loss.lossPerHour) * slopeUncertainty;
    const double aside = studentTwoSided(0.95, loss.degreesOfFreedom) * slopeUncertainty;
    loss.interval95 = ExponentialLoss::Interval{lossOf(line.slope + aside), lossOf(line.slope - aside)};
    return loss;
}

} // namespace plateau::quality
