// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/library.h"
#include "core/exchange/readers.h"

#include <optional>

namespace plateau::app {

/// The shipped methods.
const exchange::MethodLibrary &installedMethods();

/// Reads a run file with its method. Every problem goes to standard error as a line of its own, warnings
/// marked as such; nothing is returned if the file cannot be used.
std::optional<exchange::RunDocument> readRunFile(const QString &path);

} // namespace plateau::app
