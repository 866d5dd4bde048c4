// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/quality/chartconstants.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace plateau::quality {

namespace {

struct RangeMoments {
    double mean;
    double deviation;
};

/// Of the range of n = 2 to 25 standard normal values, from an integration of its distribution to 15 digits;
/// the tests integrate anew.
constexpr std::array rangeMoments{
    RangeMoments{1.128379167095510, 0.852502466427402}, RangeMoments{1.692568750643267, 0.888368004045199},
    RangeMoments{2.058750746007927, 0.879808202824979}, RangeMoments{2.325928947281038, 0.864081941099503},
    RangeMoments{2.534412721222942, 0.848039686117489}, RangeMoments{2.704356751213806, 0.833205335622283},
    RangeMoments{2.847200612090554, 0.819831489791943}, RangeMoments{2.970026324418473, 0.807834274553323},
    RangeMoments{3.077505461670345, 0.797050673519412}, RangeMoments{3.172872703816001, 0.787314620550326},
    RangeMoments{3.258455279743825, 0.778478341203386}, RangeMoments{3.335980354098255, 0.770416202063754},
    RangeMoments{3.406763108199953, 0.763023095624790}, RangeMoments{3.471826889882075, 0.756211429727944},
    RangeMoments{3.531982786109576, 0.749908089409925}, RangeMoments{3.587883961765383, 0.744051783960740},
    RangeMoments{3.640063757937443, 0.738590853378192}, RangeMoments{3.688963023207649, 0.733481495518877},
    RangeMoments{3.734950119596641, 0.728686345707319}, RangeMoments{3.778335829842621, 0.724173340717512},
    RangeMoments{3.819384643362834, 0.719914808434236}, RangeMoments{3.858323423285007, 0.715886735491833},
    RangeMoments{3.895348148451357, 0.712068175147960}, RangeMoments{3.930629219507114, 0.708440765888675},
};
static_assert(rangeMoments.size() == largestSubgroup - 1);

/// E(s) / sigma of n normal values.
double c4Of(int n)
{
    return std::sqrt(2.0 / (n - 1)) * std::exp(std::lgamma(n / 2.0) - std::lgamma((n - 1) / 2.0));
}

} // namespace

std::optional<ChartConstants> chartConstants(int n)
{
    if (n < 2 || n > largestSubgroup)
        return std::nullopt;
    const RangeMoments &range = rangeMoments[static_cast<std::size_t>(n - 2)];
    const double relativeRange = range.deviation / range.mean;
    const double c4 = c4Of(n);
    const double relativeDeviation = std::sqrt(1 - c4 * c4) / c4;
    return ChartConstants{n,
                          range.mean,
                          range.deviation,
                          c4,
                          3 / (range.mean * std::sqrt(n)),
                          3 / (c4 * std::sqrt(n)),
                          std::max(0.0, 1 - 3 * relativeDeviation),
                          1 + 3 * relativeDeviation,
                          std::max(0.0, 1 - 3 * relativeRange),
                          1 + 3 * relativeRange};
}

std::optional<ChartConstants> printedChartConstants(int n)
{
    static constexpr std::array<ChartConstants, largestPrintedSubgroup - 1> table{{
        {2, 1.128, 0.853, 0.7979, 1.880, 2.659, 0, 3.267, 0, 3.267},
        {3, 1.693, 0.888, 0.8862, 1.023, 1.954, 0, 2.568, 0, 2.574},
        {4, 2.059, 0.880, 0.9213, 0.729, 1.628, 0, 2.266, 0, 2.282},
        {5, 2.326, 0.864, 0.9400, 0.577, 1.427, 0, 2.089, 0, 2.114},
        {6, 2.534, 0.848, 0.9515, 0.483, 1.287, 0.030, 1.970, 0, 2.004},
        {7, 2.704, 0.833, 0.9594, 0.419, 1.182, 0.118, 1.882, 0.076, 1.924},
        {8, 2.847, 0.820, 0.9650, 0.373, 1.099, 0.185, 1.815, 0.136, 1.864},
        {9, 2.970, 0.808, 0.9693, 0.337, 1.032, 0.239, 1.761, 0.184, 1.816},
        {10, 3.078, 0.797, 0.9727, 0.308, 0.975, 0.284, 1.716, 0.223, 1.777},
    }};
    if (n < 2 || n > largestPrintedSubgroup)
        return std::nullopt;
    return table[static_cast<std::size_t>(n - 2)];
}

} // namespace plateau::quality
