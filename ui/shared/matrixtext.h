// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

#include <QString>

#include <vector>

namespace plateau::ui {

/// For a person, as in "Coloured".
QString matrixText(assay::Matrix matrix);
/// In the order they are offered.
const std::vector<assay::Matrix> &allMatrices();

} // namespace plateau::ui
