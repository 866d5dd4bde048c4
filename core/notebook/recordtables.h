// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/schema.h"

#include <QStringList>

namespace plateau::notebook {

/// The tables whose rows are records, each covered by the audit: all but the audit's own two, what SQLite
/// keeps for itself, and what follows from the records. In alphabetical order.
QStringList recordTables(const Layout &layout);
/// Those and the audit's.
QStringList exportedTables(const Layout &layout);

} // namespace plateau::notebook
