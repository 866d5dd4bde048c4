// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/inputs.h"

namespace plateau::notebook {

/// The runs that were planned under this code (run::runCode), newest first. Looks it up in the search, which
/// verify compares with what the plans say.
std::vector<RunId> findRuns(const Database &database, const QString &runCode);
/// The code of that run: of the rack as it was planned, without what was added since.
QString runCodeOf(const Inputs &inputs);

} // namespace plateau::notebook
