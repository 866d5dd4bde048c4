// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/columnwidths.h"

#include <algorithm>
#include <cstdint>
#include <numeric>

namespace plateau::ui {

namespace {

int sumOf(const std::vector<ColumnNeed> &needs, int ColumnNeed::*width)
{
    return std::accumulate(needs.begin(), needs.end(), 0,
                           [width](int sum, const ColumnNeed &need) { return sum + need.*width; });
}

/// From one width towards another, each by the same part of its own way, as far as the room goes.
std::vector<int> onTheWay(const std::vector<ColumnNeed> &needs, int ColumnNeed::*from, int ColumnNeed::*to, int room)
{
    const int start = sumOf(needs, from);
    const int way = sumOf(needs, to) - start;
    const int gone = std::clamp(room - start, 0, way);
    std::vector<int> widths;
    for (const ColumnNeed &need : needs)
        widths.push_back(need.*from + (way == 0 ? 0 : static_cast<int>((std::int64_t{need.*to} - need.*from) * gone / way)));
    return widths;
}

} // namespace

std::vector<int> columnWidths(std::vector<ColumnNeed> needs, int room, std::size_t flexible)
{
    for (ColumnNeed &need : needs) {
        if (need.isFirst)
            need.usual += std::clamp(room - sumOf(needs, &ColumnNeed::usual), 0, need.wanted - need.usual);
    }
    const bool isShort = sumOf(needs, &ColumnNeed::usual) > room;
    if (isShort && sumOf(needs, &ColumnNeed::least) > room)
        return onTheWay(needs, &ColumnNeed::least, &ColumnNeed::least, room);
    std::vector<int> widths = isShort ? onTheWay(needs, &ColumnNeed::least, &ColumnNeed::usual, room)
                                      : onTheWay(needs, &ColumnNeed::usual, &ColumnNeed::wanted, room);
    // Rounding left a pixel or two over, or there is more room than anybody wants.
    if (flexible < widths.size())
        widths[flexible] += room - std::accumulate(widths.begin(), widths.end(), 0);
    return widths;
}

void shareEqually(std::vector<int> &widths, const std::vector<ColumnNeed> &needs, std::size_t from)
{
    if (from >= widths.size())
        return;
    const auto first = widths.begin() + static_cast<std::ptrdiff_t>(from);
    const int sum = std::accumulate(first, widths.end(), 0);
    const int each = sum / static_cast<int>(widths.size() - from);
    for (std::size_t column = from; column < widths.size(); ++column) {
        if (needs[column].least > each)
            return;
    }
    std::fill(first, widths.end(), each);
    widths.back() += sum - each * static_cast<int>(widths.size() - from);
}

} // namespace plateau::ui
