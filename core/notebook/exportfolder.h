// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"
#include "core/notebook/progress.h"

#include <QString>

namespace plateau::notebook {

/// Everything the notebook holds as files that can be read without the program; README.txt among them says
/// how (exportreadme.h), manifest.json what there is, with hashes. folder: a name that is free, or an empty
/// folder. Throws Failure or Stopped; then there is nothing of that name that was not there before.
void exportNotebook(const Session &session, const QString &folder, const Watch &watch = {});

} // namespace plateau::notebook
