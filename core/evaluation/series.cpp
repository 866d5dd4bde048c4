// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/series.h"

#include "core/quality/line.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace plateau::evaluation {

namespace {

constexpr size_t readingsWithoutExtrapolation = 4;
/// Two changes at least can be alike.
constexpr size_t fewestForSteadiness = 3;

std::span<const run::TimedAbsorbance> lastOf(const run::ReadingSeries &series, size_t wanted)
{
    const size_t used = std::min(wanted, series.size());
    return {series.data() + series.size() - used, used};
}

/// Two readings differ by their noise alone up to this, in 95 of 100 cases.
double noiseOfAChange(double absorbanceUncertainty)
{
    return 2 * std::sqrt(2.0) * absorbanceUncertainty;
}

bool changesAreSteady(std::span<const run::TimedAbsorbance> points, double slope_per_min, double noise)
{
    for (size_t i = 1; i < points.size(); ++i) {
        const double change = points[i].absorbance - points[i - 1].absorbance;
        const double expected = slope_per_min * (points[i].at_min - points[i - 1].at_min);
        if (std::abs(change - expected) > noise)
            return false;
    }
    return true;
}

SeriesFit fitSeries(const run::ReadingSeries &series, size_t wanted, bool extrapolated, double noise)
{
    const std::span<const run::TimedAbsorbance> last = lastOf(series, wanted);
    SeriesFit fit;
    fit.points = static_cast<int>(last.size());
    fit.atStart = last.back().absorbance;
    std::vector<double> times;
    std::vector<double> absorbances;
    for (const run::TimedAbsorbance &point : last) {
        times.push_back(point.at_min);
        absorbances.push_back(point.absorbance);
    }
    const std::optional<quality::Line> line = quality::fitLine(times, absorbances);
    if (!line)
        return fit;
    fit.atStart = line->intercept;
    fit.slope_per_min = line->slope;
    fit.slopeStandardError_per_min = line->slopeStandardError;
    const std::span<const run::TimedAbsorbance> judged =
        lastOf(series, std::max(wanted, fewestForSteadiness));
    const double drift = std::abs(line->slope * (times.back() - times.front()));
    const bool enough = judged.size() >= std::max(wanted, fewestForSteadiness);
    fit.ended = changesAreSteady(judged, line->slope, noise) && (extrapolated ? enough : drift <= noise);
    return fit;
}

} // namespace

std::vector<SeriesFit> seriesFits(const assay::Method &method, const run::Run &run,
                                  double absorbanceUncertainty)
{
    std::vector<SeriesFit> fits;
    for (size_t tube = 0; tube < run.tubes.size(); ++tube) {
        for (const auto &[name, reading] : run.tubes[tube].readings) {
            const auto *series = std::get_if<run::ReadingSeries>(&reading);
            if (!series)
                continue;
            const bool extrapolated = method.extrapolate && method.extrapolate->reading == name;
            const size_t wanted = extrapolated ? static_cast<size_t>(method.extrapolate->lastReadings)
                                               : readingsWithoutExtrapolation;
            SeriesFit fit = fitSeries(*series, wanted, extrapolated, noiseOfAChange(absorbanceUncertainty));
            fit.tube = static_cast<int>(tube);
            fit.reading = name;
            fits.push_back(std::move(fit));
        }
    }
    return fits;
}

} // namespace plateau::evaluation
