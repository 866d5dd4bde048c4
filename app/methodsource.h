// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/readers.h"

#include <QString>

namespace plateau::app {

/// What a run file's method may be named after: the shipped methods, or where a notebook is named the shipped
/// ones and those of the laboratory. Nothing of the notebook is changed. Throws notebook::Failure.
exchange::MethodLookup methodsIn(const QString &notebookPath);

} // namespace plateau::app
