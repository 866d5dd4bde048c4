// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace plateau::exchange {

/// One line of two sequences side by side; at least one index is there.
struct Pairing {
    std::optional<std::size_t> before;
    std::optional<std::size_t> after;
};

/// The two sequences along their longest common one. Between two common items, what is left of both is paired
/// in its order where alike says that one may have become the other, else it stands alone.
std::vector<Pairing> aligned(const std::vector<std::string> &before, const std::vector<std::string> &after,
                             const std::function<bool(std::size_t, std::size_t)> &alike);

} // namespace plateau::exchange
