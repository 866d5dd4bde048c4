// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

/// What Notebook says of the functions of these names. Each commits the act where there is something to
/// store; an act that is not committed has stored nothing. The method is sound.
MethodOutcome saveMethod(Act &act, const assay::Method &method, const QString &note,
                         const std::vector<assay::Method> &shipped);
MethodOutcome importMethod(Act &act, const assay::Method &method, const QString &fileName,
                           const std::vector<assay::Method> &shipped);
void retireMethod(Act &act, const assay::Method &method, const QString &reason);
void reinstateMethod(Act &act, const assay::Method &method, const QString &reason);

} // namespace plateau::notebook
