// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/sequence.h"

#include <algorithm>

namespace plateau::exchange {

namespace {

/// The longest common sequence as pairs of indices.
std::vector<std::pair<std::size_t, std::size_t>> common(const std::vector<std::string> &before,
                                                        const std::vector<std::string> &after)
{
    // longest[i][j]: of what follows from i and j on
    std::vector<std::vector<std::size_t>> longest(before.size() + 1,
                                                  std::vector<std::size_t>(after.size() + 1, 0));
    for (std::size_t i = before.size(); i-- > 0;) {
        for (std::size_t j = after.size(); j-- > 0;)
            longest[i][j] = before[i] == after[j] ? longest[i + 1][j + 1] + 1
                                                  : std::max(longest[i + 1][j], longest[i][j + 1]);
    }
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    std::size_t i = 0;
    std::size_t j = 0;
    while (i < before.size() && j < after.size()) {
        if (before[i] == after[j])
            pairs.emplace_back(i++, j++);
        else if (longest[i + 1][j] >= longest[i][j + 1])
            ++i;
        else
            ++j;
    }
    return pairs;
}

} // namespace

std::vector<Pairing> aligned(const std::vector<std::string> &before, const std::vector<std::string> &after,
                             const std::function<bool(std::size_t, std::size_t)> &alike)
{
    std::vector<Pairing> lines;
    std::size_t i = 0;
    std::size_t j = 0;
    const auto gap = [&](std::size_t beforeEnd, std::size_t afterEnd) {
        while (i < beforeEnd || j < afterEnd) {
            if (i < beforeEnd && j < afterEnd && alike(i, j)) {
                lines.push_back({i++, j++});
                continue;
            }
            // Alone: the one whose like does not come in what is left of the other.
            const bool earlierComes = i < beforeEnd && std::invoke([&] {
                                          for (std::size_t k = j; k < afterEnd; ++k) {
                                              if (alike(i, k))
                                                  return true;
                                          }
                                          return false;
                                      });
            if (i < beforeEnd && (j == afterEnd || !earlierComes))
                lines.push_back({i++, std::nullopt});
            else
                lines.push_back({std::nullopt, j++});
        }
    };
    for (const auto &[beforeIndex, afterIndex] : common(before, after)) {
        gap(beforeIndex, afterIndex);
        lines.push_back({i++, j++});
    }
    gap(before.size(), after.size());
    return lines;
}

} // namespace plateau::exchange
