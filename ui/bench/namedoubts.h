// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/persons.h"

#include <QStringList>

#include <vector>

namespace plateau::ui {

/// What is odd about a name that somebody works under: a figure in it, as of a reading keyed at the wrong place; or
/// nobody of that name among the persons that are set up, or nobody who still signs. Empty: nothing, or no name.
QStringList nameDoubts(const QString &name, const std::vector<notebook::Person> &persons);

/// Those who still sign, as they are offered where a name is asked for.
QStringList namesOffered(const std::vector<notebook::Person> &persons);

} // namespace plateau::ui
