// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"

namespace plateau::assay {

/// Everything that would keep the evaluation from using the method, each with the JSON pointer of its place
/// in a plateau-method/1 document: empty ids, ids used twice, volumes that are not positive, a step that
/// adds an unknown component or one added already, a sample that is never added, a reading before any
/// addition, a signal that uses a reading which is never taken or in the wrong order, a wavelength without
/// absorptivity, a window that is upside down, a derived result without terms or of a measurand this method
/// does not have, and the like.
Problems problemsOf(const Method &method);

/// What a template says of itself and a method of the laboratory would not: warnings at /source and /name. A
/// template is sound all the same, so these are for whoever writes the method, not among problemsOf. Empty if
/// and only if the method is no template (isTemplate).
Problems templateRemarks(const Method &method);

} // namespace plateau::assay
