// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QStringList>

namespace plateau::app {

/// `plateau export NOTEBOOK FOLDER`, `plateau backup NOTEBOOK [FOLDER]`, `plateau restore BACKUP NOTEBOOK`,
/// `plateau archive NOTEBOOK YEAR FILE`: operands to an exit status.
int exportNotebook(const QStringList &operands);
int backUpNotebook(const QStringList &operands);
int restoreNotebook(const QStringList &operands);
int archiveNotebook(const QStringList &operands);
/// `plateau import NOTEBOOK FOLDER`, where the folder is an export.
int importExport(const QString &notebook, const QString &folder);

} // namespace plateau::app
