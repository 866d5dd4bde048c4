// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/library.h"
#include "core/exchange/readers.h"

#include <optional>

namespace plateau::app {

/// The shipped methods, in the language of the window where there is one.
const exchange::MethodLibrary &installedMethods();

/// The bytes of an input file; nothing, after a line on standard error, where there are none.
std::optional<QByteArray> readInput(const QString &path);
/// A line on standard error for each, warnings marked as such.
void reportProblems(const QString &path, const assay::Problems &problems);

/// Reads a run file with its method. Every problem goes to standard error as a line of its own, warnings
/// marked as such; nothing is returned if the file cannot be used.
std::optional<exchange::RunDocument> readRunFile(const QString &path, const exchange::MethodLookup &methods);

} // namespace plateau::app
