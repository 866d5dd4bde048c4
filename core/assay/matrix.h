// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

#include <QString>

#include <utility>
#include <vector>

namespace plateau::assay {

/// The words of the file contract, in the contract's order: "clear", "coloured", "turbid", "carbonated",
/// "fatty", "proteinRich", "solid".
const std::vector<std::pair<QString, Matrix>> &matrixWords();
QString matrixWord(Matrix matrix);

} // namespace plateau::assay
