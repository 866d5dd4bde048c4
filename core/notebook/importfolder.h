// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/progress.h"

#include <QString>

namespace plateau::notebook {

/// The notebook that an export (exportfolder.h) was made of, row by row with its audit chain, under a name
/// that is free. Everything is checked before the file gets its name: hashes of the files, schema, chain,
/// every row's own hash, the audit head. Of an older schema it is brought up when it is opened. Throws
/// Failure or Stopped.
void importNotebook(const QString &folder, const QString &target, const Watch &watch = {});

/// Whether a folder looks like an export: there is a manifest in it.
bool isExport(const QString &folder);

} // namespace plateau::notebook
