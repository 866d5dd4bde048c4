// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/exchange/jsonfields.h"

namespace plateau::exchange {

/// Whether a document names a format at all. False, and a problem, if it does not: then it is most likely no document of
/// ours, and what else it lacks would hide that. unmarked: the sentence, with %1 for the format.
bool isMarked(const Place &place, const QString &format, const QString &unmarked);

/// The format field of a document. False, and a problem, if it names another format: then the rest of the
/// document follows other rules, and judging it would be nonsense.
bool takeFormat(Fields &fields, const QString &format);

/// A method, alone or inside a run: shape and meaning. What could not be read keeps its default; findings say
/// so. False if the document is of another format, so that nothing was read.
bool takeMethod(const Place &place, assay::Method &method);

} // namespace plateau::exchange
