// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "app/commands.h"

namespace plateau::app {

/// plateau import NOTEBOOK FILE ...: runs are put on the bench, methods join the laboratory's. All files are
/// read before the first is stored: what cannot be used leaves the notebook as it was.
int importFiles(const QStringList &arguments);

} // namespace plateau::app
