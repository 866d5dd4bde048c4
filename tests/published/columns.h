// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <map>
#include <string>
#include <vector>

namespace plateau::published {

/// The columns of tests/published/data/<fileName> by the names in its first line. Throws std::runtime_error
/// where the file is missing or a cell is not a number.
std::map<std::string, std::vector<double>> readColumns(const std::string &fileName);

} // namespace plateau::published
