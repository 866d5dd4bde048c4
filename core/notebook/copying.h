// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"

#include <QString>

#include <functional>

namespace plateau::notebook {

/// Makes a file beside the target, readable by its owner alone, and gives it the target's name when make has
/// returned and it is on the disk. Throws what make throws; then there is no file of either name. What a
/// program that was killed left of an earlier attempt is taken away.
void makeWhole(const QString &target, const std::function<void(const QString &part)> &make);

/// A copy of the notebook, complete and in one file that only its owner may read; checked, with the same
/// audit head, and on the disk before it gets its name. Throws Failure; then there is no file of that name.
void backUp(const Database &database, const QString &target);

/// What is wrong with the file as a notebook, from its bytes to its chain, in one Failure(Damaged); nothing.
void requireWholeNotebook(const Database &database);

} // namespace plateau::notebook
