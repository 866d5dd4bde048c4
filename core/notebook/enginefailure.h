// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"

#include <QSqlError>

namespace plateau::notebook {

/// What SQLite reports, in words for a person. The kind follows from the numeric result code
/// (https://www.sqlite.org/rescode.html), never from the English text, which goes into the details.
Failure engineFailure(const QSqlError &error, const QString &path, const QString &statement);
/// What the engine says of a file that another program holds.
Failure inUseElsewhere(const QString &path);

/// The engine was asked to stop in the middle of a statement (stopping.h).
bool wasStopped(const QSqlError &error);

} // namespace plateau::notebook
