// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audittrail.h"

#include <QString>

namespace plateau::ui {

/// "reading corrected": an audit entry's action for a person; one that this page does not know in the words
/// it is made of.
QString actText(const QString &action);
/// Whether it has words of its own here.
bool hasActText(const QString &action);

/// The act's own words as they were written, with the decimal signs of the window; what only names a file's insides is said
/// otherwise, or not at all.
QString detailsText(const notebook::AuditEntry &entry);

/// "use-by date: 2026-09-30", "0,631": numbers with the decimal sign of the window.
QString valueText(const notebook::AuditValue &value);

} // namespace plateau::ui
