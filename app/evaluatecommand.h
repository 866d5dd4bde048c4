// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QStringList>

namespace plateau::app {

/// evaluate RUN.json [--with OTHER.json]...: the run's evaluation on standard output; evaluate RUN.json RUN.json...: a line for
/// each run. arguments: as given, with options, in any order. Returns an ExitStatus, the worst of them.
int evaluateRun(const QStringList &arguments);

} // namespace plateau::app
