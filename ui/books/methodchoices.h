// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/methodcatalogue.h"
#include "ui/books/cellsmodel.h"

#include <vector>

namespace plateau::ui {

/// What a cell of a table may name: methods by id, and what they measure, by id too. In alphabetical order of
/// the names; where a name stands for several ids, the id stands behind it.
struct MethodChoices {
    std::vector<CellChoice> methods;
    std::vector<CellChoice> measurands;
};
/// Retired methods are left out; of each id the newest version speaks.
MethodChoices methodChoices(const std::vector<notebook::StoredMethod> &catalogue);

} // namespace plateau::ui
