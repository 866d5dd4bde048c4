// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QStringList>

namespace plateau::app {

/// `plateau report`: the report of results or the run record of a run file, or of a run in a notebook, which
/// is only read; and its results as CSV.
int writeReport(const QStringList &arguments);

} // namespace plateau::app
