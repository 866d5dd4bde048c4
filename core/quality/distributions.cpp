// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/distributions.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/tools/roots.hpp>

#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <numbers>

namespace plateau::quality {

namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

bool isPart(double coverage)
{
    return coverage > 0 && coverage < 1;
}

/// The normal distribution function; std::erfc is much quicker than Boost's, which works in long double.
double partBelow(double z)
{
    return std::erfc(-z / std::numbers::sqrt2) / 2;
}

/// Part of the ranges of n standard normal values that is at most w: n times the integral over the smallest
/// value z of pdf(z) (cdf(z + w) - cdf(z))^(n - 1). The integrand and all its derivatives vanish at both
/// ends, where plain equidistant sums are exact to rounding.
double partOfRangesUpTo(double w, int n)
{
    constexpr double end = 9;
    constexpr double step = 1.0 / 16;
    double sum = 0;
    for (double z = -end; z <= end; z += step)
        sum += std::exp(-z * z / 2) * std::pow(partBelow(z + w) - partBelow(z), n - 1);
    return n * sum * step * std::numbers::inv_sqrtpi / std::numbers::sqrt2;
}

} // namespace

double studentTwoSided(double coverage, double degreesOfFreedom)
{
    if (!isPart(coverage) || !(degreesOfFreedom > 0))
        return nan;
    // The tail, not 1 - tail: the complement keeps its digits for coverages near 1.
    const double tail = (1 - coverage) / 2;
    if (std::isinf(degreesOfFreedom))
        return quantile(complement(boost::math::normal(), tail));
    return quantile(complement(boost::math::students_t(degreesOfFreedom), tail));
}

double studentAbove(double t, double degreesOfFreedom)
{
    if (std::isnan(t) || !(degreesOfFreedom > 0))
        return nan;
    if (std::isinf(t))
        return t > 0 ? 0 : 1;
    if (std::isinf(degreesOfFreedom))
        return cdf(complement(boost::math::normal(), t));
    return cdf(complement(boost::math::students_t(degreesOfFreedom), t));
}

double studentisedRange(double coverage, int n)
{
    if (!isPart(coverage) || n < 2)
        return nan;
    constexpr double widest = 40; // no range of normal values that double precision can tell from certain
    std::uintmax_t iterations = 200;
    const auto [lower, upper] =
        boost::math::tools::toms748_solve([&](double w) { return partOfRangesUpTo(w, n) - coverage; }, 0.0,
                                          widest, boost::math::tools::eps_tolerance<double>(48), iterations);
    return (lower + upper) / 2;
}

double criticalRangeFactor(int n)
{
    // studentisedRange(0.95, n) for n = 2 to 30, from a 30-digit integration; the tests compare the two.
    static constexpr std::array factors{
        2.7718076486993559, 3.314493155398121,  3.633159574902629,  3.8576555103786233, 4.0300920531805762,
        4.1695541550065473, 4.2863094093490443, 4.3865091154953694, 4.4741242217259051, 4.5518635840659716,
        4.6216554718685165, 4.6849198473134972, 4.7427317076846974, 4.7959238604311835, 4.84515418395734,
        4.8909511255767866, 4.9337453581269206, 4.9738923487483057, 5.0116887941184409, 5.0473848150087629,
        5.0811931557999089, 5.1132962282719748, 5.1438515772471437, 5.1729961731295897, 5.2008498202803553,
        5.2275178905543982, 5.25309353580552,   5.2776594938382239, 5.3012895740311644,
    };
    constexpr int first = 2;
    if (n >= first && n < first + static_cast<int>(factors.size()))
        return factors[static_cast<std::size_t>(n - first)];
    return studentisedRange(0.95, n);
}

} // namespace plateau::quality
