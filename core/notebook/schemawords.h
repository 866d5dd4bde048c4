// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/schema.h"

namespace plateau::notebook {

/// A statement of a schema step with its @ID, @UTC and so on written out. Shipped steps are made of these: a
/// word that stands in one never changes.
QString writtenOut(const char *statement);

/// What protectionOf is asked for.
struct ProtectedTable {
    QString table;
    QStringList keys;
};

} // namespace plateau::notebook
