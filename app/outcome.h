// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "app/commands.h"
#include "core/notebook/notebook.h"

namespace plateau::app {

/// What a command ends in, said on standard error.
ExitStatus wrongUse(const QString &sentence);
ExitStatus unusableNotebook(const QString &path, const notebook::Failure &failure);
/// complete: whether everything went to standard output.
ExitStatus written(bool complete);

} // namespace plateau::app
