// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/lotplaces.h"

#include <algorithm>

namespace plateau::ui {

std::vector<planning::StoragePlace> placesOf(const std::vector<planning::Lot> &lots)
{
    std::vector<planning::StoragePlace> places;
    for (const planning::Lot &lot : lots) {
        if (lot.place && std::ranges::find(places, *lot.place) == places.end())
            places.push_back(*lot.place);
    }
    std::ranges::sort(places, {}, &planning::StoragePlace::name);
    return places;
}

} // namespace plateau::ui
