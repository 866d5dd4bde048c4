// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/tubeorder.h"

#include <algorithm>

namespace plateau::planning {

std::vector<TubeKey> keysOf(const std::vector<run::Tube> &tubes)
{
    std::vector<TubeKey> keys;
    for (const run::Tube &tube : tubes) {
        TubeKey key{tube.role, tube.sample.isEmpty() ? tube.standard : tube.sample, tube.sampleVolume_mL, 1};
        key.number += static_cast<int>(std::count_if(keys.begin(), keys.end(), [&key](const TubeKey &other) {
            return other.role == key.role && other.content == key.content &&
                   other.sampleVolume_mL == key.sampleVolume_mL;
        }));
        keys.push_back(std::move(key));
    }
    return keys;
}

std::vector<run::Tube> arranged(const std::vector<run::Tube> &tubes, const std::vector<TubeKey> &wanted)
{
    const std::vector<TubeKey> natural = keysOf(tubes);
    const auto placeOf = [](const std::vector<TubeKey> &keys, const TubeKey &key) {
        return std::find(keys.begin(), keys.end(), key);
    };
    std::vector<TubeKey> order;
    for (const TubeKey &key : wanted) {
        if (placeOf(natural, key) != natural.end() && placeOf(order, key) == order.end())
            order.push_back(key);
    }
    for (std::size_t tube = 0; tube < natural.size(); ++tube) {
        if (placeOf(order, natural[tube]) != order.end())
            continue;
        const auto behind = tube == 0 ? order.begin() : placeOf(order, natural[tube - 1]) + 1;
        order.insert(behind, natural[tube]);
    }
    std::vector<run::Tube> result;
    for (const TubeKey &key : order)
        result.push_back(tubes[static_cast<std::size_t>(placeOf(natural, key) - natural.begin())]);
    return result;
}

std::vector<TubeKey> moved(std::vector<TubeKey> keys, int from, int to)
{
    const auto at = [&keys](int index) { return keys.begin() + index; };
    if (from < to)
        std::rotate(at(from), at(from) + 1, at(to) + 1);
    else
        std::rotate(at(to), at(from), at(from) + 1);
    return keys;
}

} // namespace plateau::planning
