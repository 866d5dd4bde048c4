// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::notebook {

/// Whether an act on a run (AuditEntry::action) is work at its bench. What is decided on it, and what the
/// program notes by itself, is none. Whoever did any does not review the run where nobody reviews their own.
bool isBenchWork(const QString &action);

} // namespace plateau::notebook
